import type {Candidate} from "../../lib/deck/search.js";
import {changesForCandidate} from "../../lib/deck/choose.js";
import type {Preferences} from "../../lib/design/design.js";
import type {GuessName} from "../../lib/exercises/guesses.js";
import {pairText} from "../../lib/pair.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {button} from "../controls.js";
import {element} from "../dom.js";
import type {DesignStore} from "../store.js";
import {patternWords} from "./deckWords.js";
import {untilGuessed} from "../veil.js";

/** A preference in the bars: one letter, one look. */
export interface PreferenceLook {
  readonly key: keyof Preferences;
  readonly letter: string;
  readonly word: string;
}

/** The preferences in the order in which they are stacked. */
export const PREFERENCES: readonly PreferenceLook[] = [
  {key: "shallow", letter: "D", word: "depth"},
  {key: "fewStrands", letter: "S", word: "strand"},
  {key: "straight", letter: "B", word: "bent strand"},
  {key: "light", letter: "W", word: "weight"},
  {key: "wide", letter: "P", word: "pieces"},
];

/** The list of candidates; it stays in place while its rows change. */
export interface Shortlist {
  readonly node: HTMLElement;
  /** Shows the candidates of a search; `askedPsf` is what the floor requires of a member of a width. */
  show(found: readonly Candidate[], ownId: string, askedPsf: (candidate: Candidate) => number): void;
}

/** Candidates that stand open; the rest are folded. */
const MOST_OPEN = 7;

/** What a list of candidates is for: the floor's deck if nothing is said. */
export interface ShortlistOptions {
  /** The changes that put a candidate into the design. */
  readonly changes: (candidate: Candidate) => Readonly<Record<string, unknown>>;
  /** Where the candidate goes, within a sentence. */
  readonly into: string;
  /** The question that hides the candidates' depths, where the page asks one. */
  readonly hiddenBy?: GuessName;
}

const FOR_FLOOR: ShortlistOptions = {changes: changesForCandidate, into: "the design", hiddenBy: "deckDepth"};

/** The search's candidates with their scores, and with one press into the design. */
export function deckShortlist(store: DesignStore, options: ShortlistOptions = FOR_FLOOR): Shortlist {
  const body = element("tbody");
  const rest = element("details", {class: "fold"}, element("summary"), element("div"));
  const table = element("table", {class: "shortlist"}, head(), body);
  const node = element("div", {}, element("div", {class: "scrolls", role: "region", tabindex: 0, "aria-label": "Candidates, best first"}, table), rest);
  let fillRest = () => {};
  rest.addEventListener("toggle", () => fillRest());

  return {
    node,
    show(found, ownId, askedPsf) {
      const focused = document.activeElement instanceof HTMLElement && node.contains(document.activeElement) ? document.activeElement.dataset["id"] : undefined;
      const working = found.filter((candidate) => candidate.works);
      const most = Math.max(1, ...working.map((candidate) => candidate.score));
      const row = (candidate: Candidate, rank: number | undefined) => candidateRow(store, candidate, {options, rank, own: candidate.id === ownId, most, askedPsf: askedPsf(candidate)});
      const open = working.filter((candidate, index) => index < MOST_OPEN || candidate.id === ownId);
      body.replaceChildren(...open.map((candidate) => row(candidate, working.indexOf(candidate) + 1)));
      if (open.length === 0) {
        body.append(element("tr", {}, element("td", {colspan: 8}, "No member of the kinds considered works here: shorten the span, specify more release strength, or consider other kinds.")));
      }
      const hidden = found.filter((candidate) => !open.includes(candidate));
      const failing = hidden.filter((candidate) => !candidate.works).length;
      const more = hidden.length - failing;
      rest.hidden = hidden.length === 0;
      (rest.firstChild as HTMLElement).textContent = [more > 0 ? `${more} more that work${more === 1 ? "s" : ""}` : "", failing > 0 ? `${failing} that fail${failing === 1 ? "s" : ""}` : ""].filter(Boolean).join(", ") + ", each with its reason";
      fillRest = () => {
        (rest.lastChild as HTMLElement).replaceChildren(...(rest.open
          ? [element("ul", {class: "losers"}, ...hidden.map((candidate) => element("li", {}, element("strong", {}, candidate.id), ` ${candidate.reason}`, ...(candidate.works ? [" ", putIn(store, candidate, options)] : []))))]
          : []));
      };
      fillRest();
      if (focused) node.querySelector<HTMLElement>(`[data-id="${CSS.escape(focused)}"]`)?.focus({preventScroll: true});
    },
  };
}

function head(): HTMLElement {
  const column = (words: string, className?: string) => element("th", {scope: "col", class: className}, words);
  return element("thead", {}, element("tr", {}, element("th", {scope: "col", class: "rank"}, element("span", {class: "for-listeners"}, "Rank")), column("Deck, and why it ranks here"), column("Depth", "numeric"), column("Weight, psf", "numeric"), column("Strands"),
    column("Carries, of required, psf", "numeric"), column("What counts against it"), element("th", {scope: "col"}, element("span", {class: "for-listeners"}, "In the design"))));
}

function candidateRow(store: DesignStore, candidate: Candidate, {options, rank, own, most, askedPsf}: {options: ShortlistOptions; rank: number | undefined; own: boolean; most: number; askedPsf: number}): HTMLElement {
  const {id, measures, safe, pattern, reason, member} = candidate;
  const load = pairText(askedPsf, safe.safeLoadPsf);
  const depth = element("td", {class: "numeric", "data-name": "depth"}, feetAndInches(measures.depthIn));
  return element(
    "tr", {class: own ? "is-own" : undefined},
    element("td", {class: "rank numeric"}, rank ?? ""),
    element("th", {scope: "row"}, element("span", {class: "candidate-name", title: patternWords(pattern)}, id), element("span", {class: "candidate-reason"}, reason)),
    options.hiddenBy ? untilGuessed(options.hiddenBy, depth) : depth,
    element("td", {class: "numeric", "data-name": "weight, psf"}, decimals(measures.weightPsf)),
    element("td", {"data-name": "strands"}, `${member.layout.count}${measures.depressed ? ", depressed" : ""}`),
    element("td", {class: "numeric", "data-name": "carries, psf"}, `${load.given} of ${load.asked}`),
    element("td", {class: "score"}, penaltyBar(candidate, most)),
    element("td", {class: "pick"}, own ? element("span", {class: "in-design"}, `in ${options.into}`) : putIn(store, candidate, options)),
  );
}

function putIn(store: DesignStore, candidate: Candidate, {changes, into}: ShortlistOptions): HTMLElement {
  const node = button("Put it in", () => store.setMany(changes(candidate)), {quiet: true, name: `Put it in ${into}: ${candidate.id}`});
  node.dataset["id"] = candidate.id;
  return node;
}

/** A candidate's penalties side by side, to one scale for all; each has its letter where there is room. */
function penaltyBar({penalties, score}: Candidate, most: number): HTMLElement {
  const parts = PREFERENCES.filter(({key}) => penalties[key] > 0.005);
  const words = parts.map(({key, word}) => `${word} ${decimals(penalties[key], 1)}`).join(", ");
  return element(
    "span", {class: "penalties", role: "img", "aria-label": `${decimals(score, 1)} in all${words ? `: ${words}` : ""}`, title: words || "nothing"},
    element("span", {class: "penalty-track"}, ...parts.map(({key, letter}) => {
      const share = (100 * penalties[key]) / most;
      const part = element("span", {class: "penalty", "data-preference": key}, share > 7 ? letter : "");
      part.style.setProperty("width", `${share}%`);
      return part;
    })),
    element("span", {class: "penalty-score"}, decimals(score, 1)),
  );
}
