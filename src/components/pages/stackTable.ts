import type {Evaluation} from "../../lib/evaluate.js";
import {storeyParts} from "../../lib/storey/parts.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {element} from "../dom.js";

/** The storey's height part by part, from the floor above down; the sum stands below. */
export function stackTable({design, storey}: Evaluation): HTMLElement {
  const row = (name: string, heightIn: number, part?: string) =>
    element("tr", {"data-part": part}, element("th", {scope: "row"}, name), element("td", {class: "numeric"}, decimals(heightIn, 2)), element("td", {class: "numeric"}, feetAndInches(heightIn)));
  return element(
    "table",
    {class: "sums"},
    element("thead", {}, element("tr", {}, ...["Part", "in", "ft, in"].map((head, i) => element("th", {scope: "col", class: i ? "numeric" : undefined}, head)))),
    element("tbody", {}, ...storeyParts(design, storey).map(({name, heightIn, part}) => row(name, heightIn, part))),
    element("tfoot", {}, row("floor to floor", storey.floorToFloorIn, "storey")),
  );
}

/** The storey's stack in one sentence. */
export function stackSentence({design, storey}: Evaluation): string {
  const parts = storeyParts(design, storey).filter(({part}) => part !== "room");
  const taken = parts.map(({name, heightIn}) => `${decimals(heightIn, heightIn % 1 ? 2 : 0)} in of ${SHORT[name] ?? name}`);
  const list = taken.length > 1 ? `${taken.slice(0, -1).join(", ")} and ${taken.at(-1)}` : taken.join("");
  return `Of ${feetAndInches(storey.floorToFloorIn)} from floor to floor, ${list} ${taken.length > 1 ? "are" : "is"} taken; ${feetAndInches(storey.ceilingHeightIn)} ${design.storey.ceiling === "none" ? "under the deck" : "under the ceiling"} ${storey.ceilingHeightIn < 0 ? "would be" : "is"} left.`;
}

/** Names as they stand after "10 in of". */
const SHORT: Readonly<Record<string, string>> = {
  "beside the ledge, above the ceiling": "ledge",
  "below the ledge, above the ceiling": "ceiling space below it",
};
