import {element} from "../../components/dom.js";
import {hrefOf, type PageEntry} from "../../components/shared/pageList.js";

/** The pages with their questions, in reading order, and those to consult. */
export function tour(pages: readonly PageEntry[]): HTMLElement {
  const item = ({name, title, description}: PageEntry) => element("li", {}, element("a", {href: hrefOf(name)}, title), " ", description);
  // Numbered as in the list of pages, where the first page, which this one is, is the first.
  const steps = pages.filter(({kind}) => kind === "step").slice(1);
  return element(
    "div",
    {},
    element("ol", {class: "tour", start: 2}, ...steps.map(item)),
    element("p", {}, "And for reference at any time:"),
    element("ul", {class: "tour"}, ...pages.filter(({kind}) => kind === "reference").map(item)),
  );
}
