import type {Catalogue, Occupancy, ReductionRule} from "../../lib/catalogue.js";
import {decimals} from "../../lib/units.js";
import {element, uniqueId} from "../dom.js";

const REDUCTION: Readonly<Record<ReductionRule, string>> = {
  yes: "yes",
  no: "no: it fills up",
  heavy: "by 20 % under two floors and more",
  garage: "by 20 % under two floors and more",
};

/** The table of live loads, with a box that finds rows by any of their words. */
export function occupancyTable(catalogue: Catalogue): HTMLElement {
  const id = uniqueId("find");
  const body = element("tbody", {});
  const count = element("span", {class: "find-count", role: "status"});
  const input = element("input", {id, type: "text", autocomplete: "off", placeholder: "library, 100, garage"});
  const show = () => {
    const words = input.value.toLowerCase().split(/\s+/).filter(Boolean);
    const found = catalogue.occupancies.filter((row) => words.every((word) => textOf(row).includes(word)));
    body.replaceChildren(...found.map(rowOf));
    count.textContent = `${found.length} of ${catalogue.occupancies.length}`;
  };
  input.addEventListener("input", show);
  show();
  const heads = ["Use", "Live load, psf", "Concentrated, lb", "May be reduced", "Source"];
  const table = element(
    "table",
    {class: "wide-table"},
    element("thead", {}, element("tr", {}, ...heads.map((head, i) => element("th", {scope: "col", class: i === 1 || i === 2 ? "numeric" : undefined}, head)))),
    body,
  );
  return element(
    "div",
    {class: "finder"},
    element("div", {class: "control text compact finder-box no-print"}, element("label", {for: id, class: "control-label"}, "Find a use"), input, count),
    element("div", {class: "scrolls tall", tabindex: 0, role: "region", "aria-label": "Table of live loads"}, table),
  );
}

function rowOf(row: Occupancy): HTMLElement {
  return element(
    "tr",
    {},
    element("th", {scope: "row"}, row.name),
    element("td", {class: "numeric"}, decimals(row.livePsf)),
    element("td", {class: "numeric"}, row.concentratedLb === undefined ? "—" : decimals(row.concentratedLb)),
    element("td", {}, REDUCTION[row.reduction]),
    element("td", {class: "table-source"}, row.source),
  );
}

function textOf(row: Occupancy): string {
  return `${row.name} ${row.group} ${row.livePsf} ${row.concentratedLb ?? ""} ${REDUCTION[row.reduction]} ${row.source}`.toLowerCase();
}
