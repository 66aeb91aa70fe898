import {element, uniqueId} from "../../components/dom.js";
import {anchorOf} from "../../components/search/anchors.js";
import {wordsWanted} from "../../components/words/wanted.js";
import {unitText} from "../../components/symbols.js";
import {hrefOf, type PageEntry} from "../../components/shared/pageList.js";
import type {SymbolMeaning} from "../../components/shared/symbolMeanings.js";

/** A row of `data/glossary.csv`. */
export interface Term {
  readonly term: string;
  readonly meaning: string;
  /** File name of the page where it is first met. */
  readonly page: string;
  readonly source: string;
}

/** A symbol with its meanings, set as MathML. */
export interface SetSymbol extends SymbolMeaning {
  readonly markup: string;
}

/** Terms under their initials, and symbols as the worked steps write them, with one box that finds in both. */
export function glossary(terms: readonly Term[], symbols: readonly SetSymbol[], pages: readonly PageEntry[]): HTMLElement {
  const id = uniqueId("find");
  const input = element("input", {id, type: "text", autocomplete: "off", placeholder: "ledge, camber, f_se"});
  const count = element("span", {class: "find-count", role: "status"});
  const termEntries = terms.map((term) => ({node: termNode(term, pages), text: `${term.term} ${term.meaning} ${term.source}`.toLowerCase()}));
  const symbolEntries = symbols.map((symbol) => ({node: symbolNode(symbol), text: `${symbol.name} ${symbol.meanings.map(({words, subjects}) => `${words} ${subjects.join(" ")}`).join(" ")} ${symbol.units.join(" ")}`.toLowerCase()}));
  const initials = [...new Set(terms.map(({term}) => initialOf(term)))];
  const groups = initials.map((initial) => {
    const entries = termEntries.filter((_, i) => initialOf((terms[i] as Term).term) === initial);
    return {entries, node: element("section", {class: "glossary-group", "aria-label": initial}, element("h3", {id: `letter-${initial.toLowerCase()}`}, initial), element("dl", {}, ...entries.map((entry) => entry.node)))};
  });
  const letters = element("nav", {class: "letters no-print", "aria-label": "Initials"}, ...initials.map((initial) => element("a", {href: `#letter-${initial.toLowerCase()}`}, initial)), element("a", {href: "#symbols"}, "Symbols"));
  const symbolTable = element(
    "table",
    {class: "symbols"},
    element("thead", {}, element("tr", {}, ...["Symbol", "Meaning", "Unit"].map((head) => element("th", {scope: "col"}, head)))),
    element("tbody", {}, ...symbolEntries.map((entry) => entry.node)),
  );
  const show = () => {
    const words = input.value.toLowerCase().split(/\s+/).filter(Boolean);
    let found = 0;
    for (const entry of [...termEntries, ...symbolEntries]) {
      entry.node.hidden = !words.every((word) => entry.text.includes(word));
      if (!entry.node.hidden) found += 1;
    }
    for (const group of groups) group.node.hidden = group.entries.every((entry) => entry.node.hidden);
    letters.hidden = words.length > 0;
    symbolTable.hidden = symbolEntries.every((entry) => entry.node.hidden);
    count.textContent = words.length ? `${found} found` : `${terms.length} words, ${symbols.length} symbols`;
  };
  input.addEventListener("input", show);
  show();
  return element(
    "div",
    {class: "finder", "data-no-terms": true},
    element("div", {class: "control text compact finder-box no-print"}, element("label", {for: id, class: "control-label"}, "Find a word or symbol"), input, count),
    markSwitch(),
    element("h2", {id: "words"}, "Words"),
    letters,
    ...groups.map((group) => group.node),
    element("h2", {id: "symbols"}, "Symbols"),
    element("p", {}, "As written in the worked steps. One letter may stand for several things, as in the codes; beside each stands what is computed where it means that."),
    element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": "Symbols"}, symbolTable),
  );
}

/** Whether these words are marked in the text of the other pages, where each opens what it means. */
function markSwitch(): HTMLElement {
  const id = uniqueId("mark-words");
  const box = element("input", {id, type: "checkbox", role: "switch", class: "switch", checked: wordsWanted.get()});
  box.addEventListener("change", (event) => {
    event.stopPropagation();
    wordsWanted.set(box.checked);
  });
  return element("div", {class: "control compact no-print"}, element("span", {class: "switch-line"}, box, element("label", {for: id, class: "control-label"}, "Mark these words in the text of all pages")));
}

function initialOf(term: string): string {
  return term.charAt(0).toUpperCase();
}

function termNode({term, meaning, page, source}: Term, pages: readonly PageEntry[]): HTMLElement {
  const name = pages.find(({name}) => name === page)?.title;
  return element(
    "div",
    {class: "glossary-term", id: anchorOf.word(term)},
    element("dt", {}, term),
    element("dd", {}, meaning, " ", name ? element("a", {href: hrefOf(page), class: "glossary-page"}, name) : null, " ", element("span", {class: "step-source"}, source)),
  );
}

function symbolNode({name, markup, meanings, units}: SetSymbol): HTMLElement {
  const symbol = element("td", {class: "symbol"}, element("span", {class: "math"}));
  (symbol.firstChild as HTMLElement).innerHTML = markup;
  return element(
    "tr",
    {id: anchorOf.symbol(name)},
    symbol,
    element("td", {}, ...meanings.map(({words, subjects}) => element("div", {}, words, ...(subjects.length > 0 ? [" ", element("span", {class: "symbol-subject"}, subjects.join(", "))] : [])))),
    element("td", {"data-units": "as is"}, units.map((unit) => unitText(unit) || "a number").join(", ")),
  );
}
