import {element} from "../../components/dom.js";
import {chapters, hrefOf, type PageEntry} from "../../components/shared/pageList.js";

/** The pages with their questions, chapter by chapter in reading order, and those to consult. */
export function tour(pages: readonly PageEntry[]): HTMLElement {
  const item = ({name, title, description}: PageEntry) => element("li", {}, element("a", {href: hrefOf(name)}, title), " ", description);
  // Numbered as in the list of pages, where the first page, which this one is, is the first.
  return element("div", {class: "tour"}, ...chapters(pages).map(({title, first, pages: own}) => {
    const told = own.filter(({name}) => name !== "index");
    const list = first === undefined ? element("ul", {}, ...told.map(item)) : element("ol", {start: first + own.length - told.length}, ...told.map(item));
    return element("section", {}, element("h3", {}, title), list);
  }));
}
