import type {LimitName} from "../../lib/deck/limits.js";
import {decimals, feetText, percent} from "../../lib/units.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import type {Chosen, Rules} from "./choices.js";
import type {GovernCount} from "./data.js";

/** What stands in the table now: what the chart and the sentences are made from. */
export interface TableView {
  readonly chosen: Chosen;
  readonly counts: readonly GovernCount[];
  readonly rowsShown: number;
  readonly rowsMade: number;
}

/** Whose rules a table is made by, in words. */
export const RULE_WORDS: Readonly<Record<Rules, string>> = {floor: "this floor\u2019s rules", handbook: "the rules of the handbook\u2019s tables"};

/** The limits by how many cells they govern, the most first; `undefined` stands for cells that carry nothing. */
export function governShares(counts: readonly GovernCount[]): {readonly governs: LimitName | undefined; readonly count: number}[] {
  const sums = new Map<LimitName | undefined, number>();
  for (const {governs, count} of counts) sums.set(governs, (sums.get(governs) ?? 0) + count);
  return [...sums].map(([governs, count]) => ({governs, count})).sort((a, b) => b.count - a.count);
}

/** Limits that the sentence names before it sums up the others. */
const MOST_NAMED = 4;

/** "Of 412 cells strength governs 63 %, service tension 30 %; 7 % carry nothing." */
export function summarySentence({counts}: TableView): string {
  const shares = governShares(counts);
  const all = shares.reduce((sum, {count}) => sum + count, 0);
  if (all === 0) return "Nothing to show: no deck passes the filters above.";
  const none = shares.find(({governs}) => governs === undefined)?.count ?? 0;
  const governing = shares.filter(({governs}) => governs !== undefined);
  if (governing.length === 0) return `Of ${decimals(all)} cells none carries anything.`;
  const named = governing.slice(0, MOST_NAMED).map(({governs, count}, index) => `${governs} ${index === 0 ? "governs " : ""}${percent(count / all)}`);
  const others = governing.slice(MOST_NAMED).reduce((sum, {count}) => sum + count, 0);
  const first = `Of ${decimals(all)} cells ${[...named, ...(others > 0 ? [`other limits ${percent(others / all)}`] : [])].join(", ")}`;
  return none > 0 ? `${first}; ${percent(none / all)} carry nothing.` : `${first}.`;
}

/** What governs most decks, span after span: the title of the chart. */
export function governsFinding({counts}: TableView): string {
  const spans = [...new Set(counts.map(({spanFt}) => spanFt))];
  const runs: {governs: LimitName | undefined; fromFt: number; toFt: number}[] = [];
  for (const spanFt of spans) {
    const [most] = counts.filter((entry) => entry.spanFt === spanFt).sort((a, b) => b.count - a.count);
    const last = runs.at(-1);
    if (!most) continue;
    if (last && last.governs === most.governs) last.toFt = spanFt;
    else runs.push({governs: most.governs, fromFt: spanFt, toFt: spanFt});
  }
  const [first, ...rest] = runs;
  if (!first) return "What governs at each span";
  const says = (governs: LimitName | undefined) => (governs ? `${governs} governs most decks` : "most decks carry nothing");
  const turns = rest.slice(0, 2).map(({governs, fromFt}) => `from ${feetText(fromFt)} ${governs ?? "most carry nothing"}`);
  const start = turns.length === 0 ? `At every span ${says(first.governs)}` : `Up to ${feetText(first.toFt)} ${says(first.governs)}`;
  return [start, ...turns].join(", ");
}

/** The letters of the table with their meaning. */
export function letterKey(counts: readonly GovernCount[]): string {
  return governShares(counts).flatMap(({governs}) => (governs ? [`${LIMIT_LOOKS[governs].letter} ${governs}`] : [])).join(", ");
}

/** What the table's limits leave out, and what that means. */
export function leftOutSentence({chosen: {rules, leftOut}}: TableView): string {
  const by = `By ${RULE_WORDS[rules]}`;
  return leftOut.length === 0 ? `${by}, with every limit.` : `${by}; left out here: ${leftOut.join(", ")}. For learning: a real floor has to meet them all.`;
}
