import type {Catalog, Occupancy, ReductionRule} from "../../lib/catalog.js";
import type {Design, Room} from "../../lib/design/design.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {HEAVY_LIVE_PSF} from "../../lib/loads/reduction.js";
import {decimals} from "../../lib/units.js";
import {follow} from "../../components/controls/follow.js";
import {element, uniqueId} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";

const REDUCTION: Readonly<Record<ReductionRule, string>> = {
  yes: "yes",
  no: "no: it does fill up",
  heavy: "by 20 %, for two floors or more",
  garage: "by 20 %, for two floors or more",
};

/** The table of live loads, with a box that finds rows by any of their words; loads of the reader's own stand first. */
export function occupancyTable(store: DesignStore, catalog: Catalog): HTMLElement {
  const id = uniqueId("find");
  const body = element("tbody", {});
  const count = element("span", {class: "find-count", role: "status"});
  const input = element("input", {id, type: "text", autocomplete: "off", placeholder: "library, 100, garage"});
  const show = () => {
    const words = input.value.toLowerCase().split(/\s+/).filter(Boolean);
    const all = [...ownRows(store.get(), catalog), ...catalog.occupancies.map(tableRow)];
    const found = all.filter((row) => words.every((word) => textOf(row).includes(word)));
    body.replaceChildren(...found.map(rowOf));
    count.textContent = `${found.length} of ${all.length}`;
  };
  input.addEventListener("input", show);
  let rooms: readonly Room[] | undefined;
  follow(store, body, (design) => {
    if (design.loads.rooms === rooms) return;
    rooms = design.loads.rooms;
    show();
  });
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

/** A row as it is shown. */
interface Row {
  readonly name: string;
  readonly group: string;
  readonly livePsf: number;
  readonly concentratedLb: number | undefined;
  readonly reduced: string;
  readonly source: string;
  /** Entered by the reader. */
  readonly own: boolean;
}

function tableRow({name, group, livePsf, concentratedLb, reduction, source}: Occupancy): Row {
  return {name, group, livePsf, concentratedLb, reduced: REDUCTION[reduction], source, own: false};
}

/** Rooms with a load of the reader's own: what the table has for their use holds for the rest. */
function ownRows(design: Design, catalog: Catalog): Row[] {
  return floorLoads(design, catalog, 1).rooms.flatMap(({name, occupancy, own, rule}) => (own ? [{
    name: `${name}, entered here`, group: occupancy.group, livePsf: own.livePsf, concentratedLb: occupancy.concentratedLb,
    reduced: rule === "in full" ? "no: taken in full" : REDUCTION[rule === "yes" && own.livePsf > HEAVY_LIVE_PSF ? "heavy" : rule],
    source: `${own.reason.trim() || "No reason is given."} In place of ${decimals(occupancy.livePsf)} psf for ${occupancy.name}`, own: true,
  }] : []));
}

function rowOf(row: Row): HTMLElement {
  return element(
    "tr",
    {class: row.own ? "governs" : undefined},
    element("th", {scope: "row"}, row.name),
    element("td", {class: "numeric"}, decimals(row.livePsf)),
    element("td", {class: "numeric"}, row.concentratedLb === undefined ? "—" : decimals(row.concentratedLb)),
    element("td", {}, row.reduced),
    element("td", {class: "table-source"}, row.source),
  );
}

function textOf(row: Row): string {
  return `${row.name} ${row.group} ${row.livePsf} ${row.concentratedLb ?? ""} ${row.reduced} ${row.source}`.toLowerCase();
}
