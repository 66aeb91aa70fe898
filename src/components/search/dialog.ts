import MiniSearch from "minisearch";
import {FileAttachment} from "observablehq:stdlib";
import {element, uniqueId} from "../dom.js";
import {hrefOf} from "../shared/pageList.js";
import type {SymbolMeaning} from "../shared/symbolMeanings.js";
import {anchorOf} from "./anchors.js";
import {landAt} from "./landing.js";
import {GROUPS, INDEX_OPTIONS, search, type Document, type Found, type FoundGroup} from "./searchIndex.js";

/** Words to try, for one who has nothing in mind. */
const TRY = ["camber", "ledge", "punching", "no-sky line", "f_se", "duct"];

/** The index, fetched when it is first looked into; asked for again where it did not come. */
let fetched: Promise<MiniSearch<Document>> | undefined;

function wholeIndex(): Promise<MiniSearch<Document>> {
  fetched ??= Promise.all([FileAttachment("../../data/search.json").text(), FileAttachment("../../data/symbols.json").json() as Promise<SymbolMeaning[]>]).then(([text, symbols]) => {
    const index = MiniSearch.loadJSON<Document>(text, INDEX_OPTIONS);
    index.addAll(symbols.map(({name, meanings, units}): Document => ({
      id: `symbol ${name}`, group: "symbol", title: name, beside: meanings.map(({words}) => words).join("; "), page: "glossary", anchor: anchorOf.symbol(name), also: units.join(" "), text: "",
    })));
    return index;
  });
  fetched.catch(() => (fetched = undefined));
  return fetched;
}

let open: ((typed: string) => void) | undefined;

/**
 * Opens the search over pages, words, symbols, checks and inputs; its keys are those of a list under a box.
 *
 * @param typed - what was typed before it could be opened
 */
export function searchDialog(typed: string): void {
  (open ??= makeDialog())(typed);
}

function makeDialog(): (typed: string) => void {
  const listId = uniqueId("found");
  const input = element("input", {
    type: "text", role: "combobox", class: "search-box", autocomplete: "off", spellcheck: "false", enterkeyhint: "go", placeholder: "A word, a symbol, a check",
    "aria-label": "Search the notebook", "aria-expanded": "false", "aria-controls": listId, "aria-autocomplete": "list",
  });
  const list = element("div", {id: listId, role: "listbox", "aria-label": "Found", class: "search-list"});
  const status = element("p", {role: "status", class: "search-status"});
  const close = element("button", {type: "button", class: "button quiet"}, "Close");
  const dialog = element("dialog", {class: "search", "aria-label": "Search"},
    element("div", {class: "search-head"}, input, close), status, list);
  document.body.append(dialog);
  let options: HTMLElement[] = [];
  let at = -1;

  const choose = (index: number) => {
    options[at]?.setAttribute("aria-selected", "false");
    at = options.length === 0 ? -1 : (index + options.length) % options.length;
    const option = options[at];
    option?.setAttribute("aria-selected", "true");
    option?.scrollIntoView({block: "nearest"});
    if (option) input.setAttribute("aria-activedescendant", option.id);
    else input.removeAttribute("aria-activedescendant");
  };
  const show = async () => {
    const query = input.value;
    let groups: readonly FoundGroup[];
    try {
      if (!fetched) status.textContent = "The index is on its way.";
      groups = search(await wholeIndex(), query);
    } catch {
      status.textContent = "The index could not be fetched. Type again to try once more.";
      return;
    }
    if (query !== input.value) return;
    list.replaceChildren(...groups.map(groupNode));
    options = [...list.querySelectorAll<HTMLElement>("[role=option]")];
    input.setAttribute("aria-expanded", String(options.length > 0));
    status.replaceChildren(...words(query, options.length));
    choose(0);
  };
  const words = (query: string, count: number): (string | Node)[] => {
    if (count > 0) return [`${count} shown. Arrow keys move, Enter opens.`];
    const tries = TRY.flatMap((word, i) => [i > 0 ? ", " : "", element("button", {type: "button", class: "search-try", onclick: () => {
      input.value = word;
      input.focus();
      void show();
    }}, word)]);
    return query.trim() === ""
      ? ["Try ", ...tries, "."]
      : [`Nothing is called \u201c${query.trim()}\u201d here. Try one word of it, only how it begins, or a symbol as the steps write it: `, ...tries, "."];
  };
  const go = (option: HTMLElement | undefined) => {
    if (!(option instanceof HTMLAnchorElement)) return;
    dialog.close();
    const {href, hash} = option;
    // The address of this very place would not be followed.
    if (href === location.href) landAt(hash);
    else location.href = href;
  };

  input.addEventListener("input", (event) => {
    // No change of the design.
    event.stopPropagation();
    void show();
  });
  input.addEventListener("keydown", (event) => {
    const steps: Readonly<Record<string, () => void>> = {
      ArrowDown: () => choose(at + 1), ArrowUp: () => choose(at - 1), PageDown: () => choose(Math.min(options.length - 1, at + 5)), PageUp: () => choose(Math.max(0, at - 5)), Enter: () => go(options[at]),
    };
    const step = steps[event.key];
    if (!step || event.isComposing) return;
    event.preventDefault();
    step();
  });
  list.addEventListener("click", (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey || !(event.target instanceof Element)) return;
    const option = event.target.closest<HTMLElement>("[role=option]");
    if (!option) return;
    event.preventDefault();
    go(option);
  });
  close.addEventListener("click", () => dialog.close());
  dialog.addEventListener("click", (event) => event.target === dialog && dialog.close());
  return (typed) => {
    if (!dialog.open) dialog.showModal();
    if (typed === "") input.select();
    else input.value = typed;
    void show();
  };
}

function groupNode({name, found, more}: FoundGroup): HTMLElement {
  const id = uniqueId("group");
  return element("div", {role: "group", "aria-labelledby": id, class: "search-group"},
    element("div", {id, class: "search-group-name", role: "presentation"}, GROUPS[name], more > 0 ? element("span", {}, ` and ${more} more`) : null),
    ...found.map(optionNode));
}

function optionNode({title, beside, page, anchor}: Found): HTMLElement {
  return element("a", {role: "option", id: uniqueId("option"), "aria-selected": "false", tabindex: -1, class: "search-option", href: `${hrefOf(page)}${anchor ? `#${anchor}` : ""}`},
    element("span", {class: "search-title"}, title), " ", element("span", {class: "search-beside"}, beside));
}
