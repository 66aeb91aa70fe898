import {COMPARED_MEASURES} from "../../lib/compare/measures.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {element} from "../../components/dom.js";

/** What "better" means on this page, measure by measure. */
export function betterWords(): HTMLElement {
  const names = (better: MeasureEntry["better"]) => COMPARED_MEASURES.filter((measure) => measure.better === better && measure.partOf === undefined).map(({name}) => name).join(", ");
  return element("div", {},
    element("p", {class: "after-table"}, "\u201cBetter\u201d is said of one measure at a time, all else left aside, and of the numbers as they are shown: what reads alike is alike. Which measure matters most is for you to say. Counting how many are better is no way to choose: one that fails a check, or a story that the zoning does not allow, outweighs all the rest."),
    element("details", {class: "fold"}, element("summary", {}, "Which way each measure is better"),
      element("p", {}, element("strong", {}, "Less is better: "), `${names("less")}.`),
      element("p", {}, element("strong", {}, "More is better: "), `${names("more")}.`),
      element("p", {}, element("strong", {}, "Neither, only different: "), `${names("neither")}; a longer span or a fuller use of a limit is a choice, not a merit.`)));
}
