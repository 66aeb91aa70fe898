import {FileAttachment} from "observablehq:stdlib";
import {element, uniqueId} from "../dom.js";
import {hrefOf, type PageEntry} from "../shared/pageList.js";
import {unitText} from "../symbols.js";
import {findTerms, termIndex, type TermIndex} from "./findTerms.js";
import {wordPicture} from "./pictures.js";
import type {TermForms} from "./termList.js";

/** A term as `data/glossary.json` has it. */
interface Meaning {
  readonly term: string;
  readonly meaning: string;
  readonly page: string;
  /** MathML. */
  readonly symbol?: string;
  readonly unit?: string;
  readonly drawing?: string;
}

/** What all cards show, fetched when the first one opens; asked for again where it did not come. */
let fetched: Promise<{readonly meanings: ReadonlyMap<string, Meaning>; readonly pages: readonly PageEntry[]}> | undefined;

function meanings() {
  fetched ??= Promise.all([FileAttachment("../../data/glossary.json").json() as Promise<Meaning[]>, FileAttachment("../../data/pages.json").json() as Promise<PageEntry[]>])
    .then(([terms, pages]) => ({meanings: new Map(terms.map((each) => [each.term, each])), pages}));
  fetched.catch(() => (fetched = undefined));
  return fetched;
}

/** The one card of the page: what a term means, beside the word that was pointed at. */
export interface Card {
  readonly node: HTMLElement;
  /** What describes a word while the card is open. */
  readonly meaningId: string;
  /** Fills the card; resolves once it stands. */
  show(term: string): Promise<void>;
  focus(): void;
}

/**
 * Makes the card.
 *
 * @param off - called where the reader wants no words marked
 */
export function makeCard(terms: readonly TermForms[], off: () => void, changed: () => void): Card {
  const all: TermIndex = termIndex(terms.filter(({page}) => page === undefined), "");
  const [titleId, meaningId] = [uniqueId("word"), uniqueId("word-meaning")];
  const title = element("h2", {id: titleId, class: "popover-title", tabindex: -1});
  const picture = element("div", {class: "word-picture"});
  const meaning = element("p", {id: meaningId, class: "word-meaning"});
  const symbol = element("p", {class: "word-symbol"});
  const more = element("p", {class: "word-more"});
  const stop = element("button", {type: "button", class: "button quiet word-stop", onclick: off}, "Mark no words");
  const node = element("div", {popover: "manual", role: "dialog", "aria-labelledby": titleId, class: "popover word-card"}, title, picture, meaning, symbol, element("div", {class: "word-foot"}, more, stop));
  document.body.append(node);
  let asked = "";

  const show = async (term: string) => {
    asked = term;
    title.textContent = capitalized(term);
    meaning.textContent = "Its meaning is on the way.";
    for (const part of [picture, symbol, more]) part.replaceChildren();
    try {
      const {meanings: known, pages} = await meanings();
      const entry = known.get(term);
      if (!entry || asked !== term) return;
      const drawn = entry.drawing === undefined ? undefined : await wordPicture(entry.drawing);
      if (asked !== term) return;
      picture.replaceChildren(...(drawn ? [drawn] : []));
      meaning.replaceChildren(...linked(entry, all, (other) => void show(other).then(() => {
        changed();
        title.focus();
      })));
      symbol.replaceChildren(...symbolWords(entry));
      const page = pages.find(({name}) => name === entry.page);
      if (page) more.replaceChildren("Where it matters: ", element("a", {href: hrefOf(page.name)}, page.title));
    } catch {
      if (asked === term) meaning.textContent = "Its meaning could not be fetched. Close this and open it again to try once more.";
    }
  };
  return {node, meaningId, show, focus: () => title.focus()};
}

const capitalized = (term: string) => term.charAt(0).toUpperCase() + term.slice(1);

/** A meaning in which every other term leads on to its own, the term itself never. */
function linked({term, meaning}: Meaning, index: TermIndex, open: (term: string) => void): (string | Node)[] {
  let at = 0;
  const seen = new Set([term]);
  const parts = findTerms(meaning, index).flatMap(({term: other, from, to}) => {
    if (seen.has(other)) return [];
    seen.add(other);
    const part = [meaning.slice(at, from), element("button", {type: "button", class: "word-other", onclick: () => open(other)}, meaning.slice(from, to))];
    at = to;
    return part;
  });
  return [...parts, meaning.slice(at)];
}

function symbolWords({symbol, unit}: Meaning): (string | Node)[] {
  const set = element("span", {class: "math"});
  set.innerHTML = symbol ?? "";
  return [...(symbol ? ["Symbol: ", set] : []), ...(unit ? [symbol ? "; unit: " : "Unit: ", unitText(unit)] : [])];
}
