import type {Evaluation} from "../../lib/evaluate.js";
import {storyParts} from "../../lib/story/parts.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {element} from "../../components/dom.js";

/** The story's height part by part, from the floor above down; the sum stands below. */
export function stackTable({design, story}: Evaluation): HTMLElement {
  const row = (name: string, heightIn: number, part?: string) =>
    element("tr", {"data-part": part}, element("th", {scope: "row"}, name), element("td", {class: "numeric"}, decimals(heightIn, 2)), element("td", {class: "numeric"}, feetAndInches(heightIn)));
  return element(
    "table",
    {class: "sums"},
    element("thead", {}, element("tr", {}, ...["Part", "in", "ft, in"].map((head, i) => element("th", {scope: "col", class: i ? "numeric" : undefined}, head)))),
    element("tbody", {}, ...storyParts(design, story).map(({name, heightIn, part}) => row(name, heightIn, part))),
    element("tfoot", {}, row("floor to floor", story.floorToFloorIn, "story")),
  );
}

/** The story's stack in one sentence. */
export function stackSentence({design, story}: Evaluation): string {
  const parts = storyParts(design, story).filter(({part}) => part !== "room");
  const taken = parts.map(({name, heightIn}) => `${decimals(heightIn, heightIn % 1 ? 2 : 0)} in of ${SHORT[name] ?? name}`);
  const list = taken.length > 1 ? `${taken.slice(0, -1).join(", ")} and ${taken.at(-1)}` : taken.join("");
  return `Of ${feetAndInches(story.floorToFloorIn)} from floor to floor, ${list} ${taken.length > 1 ? "are" : "is"} taken; ${feetAndInches(story.ceilingHeightIn)} ${design.story.ceiling === "none" ? "under the deck" : "under the ceiling"} ${story.ceilingHeightIn < 0 ? "would be" : "is"} left.`;
}

/** Names as they stand after "10 in of". */
const SHORT: Readonly<Record<string, string>> = {
  "beside the ledge, above the ceiling": "ledge",
  "below the ledge, above the ceiling": "ceiling space below it",
};
