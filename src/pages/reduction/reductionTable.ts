import type {FloorLoads} from "../../lib/loads/floorLoads.js";
import {influenceOf} from "../../lib/loads/reductionCurve.js";
import {decimals} from "../../lib/units.js";
import {element} from "../../components/dom.js";
import {elementPart} from "./reductionFinding.js";
import {CASE_WORDS} from "./reductionWords.js";

/** Every element with every room: area, factor, the load that is left, and what decided. The heaviest room is marked. */
export function reductionTable(loads: FloorLoads): HTMLElement {
  const heads = ["Element", "Influence area, ft²", "Room", "Factor", "Live load, psf", "What decides"];
  const numeric = [1, 3, 4];
  const body = loads.elements.flatMap((entry) =>
    entry.rooms.map((room, index) => {
      const governs = room === entry.governing;
      return element(
        "tr",
        {class: governs ? "governs" : undefined, "data-part": elementPart(loads, entry)},
        index === 0 ? element("th", {scope: "rowgroup", rowspan: entry.rooms.length}, entry.element) : null,
        index === 0 ? element("td", {class: "numeric", rowspan: entry.rooms.length}, decimals(influenceOf(entry))) : null,
        element("td", {}, room.room.name, governs && entry.rooms.length > 1 ? element("span", {class: "governs-word"}, " governs") : null),
        element("td", {class: "numeric"}, decimals(room.reduction.factor, 2)),
        element("td", {class: "numeric"}, decimals(room.totalPsf)),
        element("td", {}, CASE_WORDS[room.reduction.decides]),
      );
    }));
  return element(
    "div",
    {class: "scrolls", tabindex: 0, role: "region", "aria-label": "Reduction of every room's live load on every element"},
    element(
      "table",
      {class: "wide-table grouped"},
      element("thead", {}, element("tr", {}, ...heads.map((head, i) => element("th", {scope: "col", class: numeric.includes(i) ? "numeric" : undefined}, head)))),
      element("tbody", {}, ...body),
    ),
  );
}
