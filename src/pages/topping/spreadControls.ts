import {requireNumber} from "../../lib/check.js";
import type {SpreadChoices} from "../../lib/topping/floorSpread.js";
import {SCATTER, SCATTER_RULES, type Scatter} from "../../lib/topping/scatter.js";
import {button} from "../../components/controls.js";
import {numberBox} from "../../components/controls/numberBox.js";
import {element} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";
import type {Observe} from "../../components/shared/deckSearch.js";

/** How much the pieces stray, how many are tried and by which seed. It belongs to the page, not to the design. */
export interface SpreadControls {
  readonly node: HTMLElement;
  get(): SpreadChoices;
  /** Sets how far the finished surface is raised, in. */
  raise(raisedIn: number): void;
  /** Fits `Generators.observe`. */
  readonly observe: Observe<SpreadChoices>;
}

/** Pieces that are tried at first, and at most. */
const USUAL_COUNT = 5000;
const MOST_COUNT = 20_000;
const MOST_RAISED_IN = 3;
const MOST_SEED = 999_999;

/** A box: what it is called, its unit as shown, its range and step in that unit, and how it is read and written. */
interface Entry {
  readonly words: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly whole?: boolean;
  read(choices: SpreadChoices): number;
  write(choices: SpreadChoices, value: number): SpreadChoices;
}

const SCATTERS: readonly (readonly [keyof Scatter, string])[] = [
  ["stiffness", "stiffness"], ["releaseStrength", "strength at release"], ["force", "force in the strands"],
  ["age", "age when set"], ["weight", "weight"], ["lengthIn", "length"], ["likeness", "likeness of neighbors"],
];

function scatterEntry([name, words]: readonly [keyof Scatter, string]): Entry {
  const {unit, min, max} = SCATTER_RULES[name];
  // Shares are shown in percent.
  const scale = unit === "" ? 100 : 1;
  return {
    words, unit: unit === "" ? "%" : unit, min: min * scale, max: max * scale, step: scale === 100 ? 1 : 0.1,
    read: ({scatter}) => Number((scatter[name] * scale).toFixed(6)),
    write: (choices, value) => ({...choices, scatter: {...choices.scatter, [name]: value / scale}}),
  };
}

const raisedEntry: Entry = {
  words: "surface raised by", unit: "in", min: 0, max: MOST_RAISED_IN, step: 0.125,
  read: ({raisedIn}) => raisedIn, write: (choices, raisedIn) => ({...choices, raisedIn}),
};
const countEntry: Entry = {
  words: "pieces", unit: "", min: 100, max: MOST_COUNT, step: 1000, whole: true,
  read: ({count}) => count, write: (choices, count) => ({...choices, count}),
};
const seedEntry: Entry = {
  words: "seed", unit: "", min: 0, max: MOST_SEED, step: 1, whole: true,
  read: ({seed}) => seed, write: (choices, seed) => ({...choices, seed}),
};

/** Boxes for the scatter of each cause, the number of pieces, the seed, and the raising of the surface. */
export function spreadControls(store: DesignStore): SpreadControls {
  let choices: SpreadChoices = {scatter: SCATTER, seed: 1, count: USUAL_COUNT, raisedIn: 0};
  const listeners = new Set<(choices: SpreadChoices) => void>();
  const rows: {node: HTMLElement; show: () => void}[] = [];
  const take = (next: SpreadChoices) => {
    choices = next;
    for (const row of rows) row.show();
    for (const tell of listeners) tell(choices);
  };
  const row = (entry: Entry) => {
    const made = entryRow(entry, () => choices, take);
    rows.push(made);
    return made.node;
  };
  const raised = row(raisedEntry);
  const again = button("Draw again", () => take({...choices, seed: choices.seed >= MOST_SEED ? 0 : choices.seed + 1}));
  const usual = button("Usual scatter", () => take({...choices, scatter: SCATTER}));
  const node = element("div", {class: "spread-controls"},
    element("fieldset", {class: "control"},
      element("legend", {class: "control-label"}, "Pieces to try"),
      row(countEntry), row(seedEntry), raised,
      element("p", {class: "control-help"}, "The same seed gives the same pieces, today and on every machine."),
      again),
    element("fieldset", {class: "control"},
      element("legend", {class: "control-label"}, "How much they vary"),
      element("div", {class: "spread-scatter"}, ...SCATTERS.map((scatter) => row(scatterEntry(scatter)))),
      element("p", {class: "control-help"}, "Standard deviations: for the length in inches, for the others as a share of the mean. They begin at common practice, from memory. A likeness of 0 means that neighbors share nothing. These values belong to this page and are not saved with the design."),
      usual));
  store.observe(({deck}) => (raised.hidden = deck.toppingIn <= 0));
  return {
    node,
    get: () => choices,
    raise: (raisedIn) => take({...choices, raisedIn: Math.min(MOST_RAISED_IN, raisedIn)}),
    observe(change) {
      listeners.add(change);
      change(choices);
      return () => void listeners.delete(change);
    },
  };
}

/** One box with its label and unit, and the reason where a value is impossible. */
function entryRow(entry: Entry, choices: () => SpreadChoices, take: (next: SpreadChoices) => void): {node: HTMLElement; show: () => void} {
  const {words, unit, min, max, step, whole} = entry;
  const rule = {path: "", label: words, unit, min, max, step, ...(whole ? {integer: true} : {})};
  const {input, entry: box, message, show} = numberBox({
    rule, get: () => entry.read(choices()), set: (value) => take(entry.write(choices(), requireNumber(value, rule))), name: unit ? `${words}, ${unit}` : words,
  });
  return {
    show,
    node: element("div", {class: "age"}, element("label", {for: input.id}, words), box, message.node),
  };
}
