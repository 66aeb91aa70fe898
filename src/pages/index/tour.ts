import {element} from "../../components/dom.js";
import {hrefOf, stepsOf, type PageName} from "../../components/shared/pageNames.js";

/** What each page is about, in half a sentence, by its file name. */
const ABOUT: Readonly<Record<string, string>> = {
  loads: "Rooms, layers, and the load of one square foot.",
  reduction: "Why columns are designed for less than their floors could hold.",
  deck: "Every member in the catalog against your load, and why the losers lost.",
  tables: "Whole tables for any rules, sorted, filtered, each cell with its reasons.",
  "trade-offs": "What a shallower, lighter or leaner deck gives up, and its embodied carbon.",
  member: "What the strands do to the concrete, from casting to full load.",
  limits: "Every limit's own curve, switched on and off: what governs, and what comes next.",
  camber: "What lifts a member, what presses it down, and what time does to both.",
  topping: "Concrete by the truckload, and pieces of which no two are alike.",
  "edge-beam": "Ledge, seat, upstand, and a beam that bends and twists.",
  girder: "The beam between two bays, beside the deck or below it.",
  columns: "The load of one square foot, from the deck to the ground.",
  story: "Ducts, ceiling and glass, down to the inch.",
  daylight: "How deep into the floor the sky reaches.",
  record: "The record, ready to print.",
  trust: "Published values beside ours.",
  methods: "What is computed, how, and what is not.",
  glossary: "The trade's words and the codes' letters.",
};

/** The pages with their questions, in reading order, and those to consult. */
export function tour(pages: readonly PageName[]): HTMLElement {
  const item = ({path, name}: PageName) => {
    const file = path.slice(1);
    return element("li", {}, element("a", {href: hrefOf(file)}, name), " ", ABOUT[file] ?? null);
  };
  return element(
    "div",
    {},
    // Numbered as in the list of pages, where the first page is the first.
    element("ol", {class: "tour", start: 1 + pages.findIndex(({path}) => path === stepsOf(pages)[0]?.path)}, ...stepsOf(pages).map(item)),
    element("p", {}, "And to consult at any time:"),
    element("ul", {class: "tour"}, ...pages.filter((page) => page.reference).map(item)),
  );
}
