import type {Catalog} from "../catalog.js";
import type {Design, ReasonName} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import {feetText, decimals} from "../units.js";
import type {FirstAsked} from "./firstAsked.js";
import {firstBrief} from "./firstBrief.js";
import {rowOf} from "./row.js";
import {designWithReasons, ruleWords} from "./ruleWords.js";
import {MEASURE_LIST} from "./measures/measureList.js";
import {withOwnFactors} from "../materials/carbon.js";
import {schemesOf, type Scheme} from "./scheme.js";
import {failsOf, isMade, valueOf, type SchemeRow} from "./schemeRow.js";
import {nothingHolds} from "./stops.js";

/** What a first design is made from. */
export interface FirstInput {
  readonly asked: FirstAsked;
  /** The reader's own carbon factors by id, in place of the table's. */
  readonly ownFactors: Readonly<Record<string, number>>;
}

/** How far the search is. */
export interface FirstProgress {
  readonly made: number;
  readonly of: number;
}

/** The first design of a brief, as plain data. */
export interface FirstDesign {
  /** The best scheme's design with its rules' words as reasons; undefined where no deck of any kind carries the spans. */
  readonly design: Design | undefined;
  /** How many schemes were tried, and of how many all checks hold. */
  readonly tried: number;
  readonly holding: number;
  /** What was chosen of how many, and by what; or what stops the most where nothing holds. */
  readonly finding: string;
  /** What each rule chose, decision by decision. */
  readonly rules: readonly {readonly decision: string; readonly words: string}[];
  /** What fails in the design, in the words of its checks. */
  readonly fails: readonly {readonly label: string; readonly words: string}[];
}

const MEASURES = MEASURE_LIST.filter(({key}) => key === "carbonKgPerFt2" || key === "carbonWithoutColumnsKgPerFt2");

/**
 * Makes the first design of a brief: of all its schemes, columns and footings sized too, the one with the fewest failing
 * checks, which is one with none where there is such; of equals the one with the least embodied carbon per square foot, columns
 * and footings counted; of equals still the first by number. Yields how far it is.
 *
 * @throws InputError naming what of the brief is out of range
 */
export function* firstDesign(catalog: Catalog, {asked, ownFactors}: FirstInput): Generator<FirstProgress, FirstDesign> {
  const schemes = schemesOf(firstBrief(asked, catalog), catalog, {columns: true});
  const by = {factors: withOwnFactors(catalog.carbonFactors, ownFactors), prices: {}};
  const rows: SchemeRow[] = [];
  let best: {readonly scheme: Scheme; readonly row: SchemeRow} | undefined;
  for (let index = 0; index < schemes.count; index += 1) {
    const scheme = schemes.at(index);
    const row = rowOf(scheme, by, MEASURES);
    rows.push(row);
    if (!("none" in scheme) && (!best || comesBefore(row, best.row))) best = {scheme, row};
    yield {made: index + 1, of: schemes.count};
  }
  const holding = rows.filter((row) => isMade(row) && row.fails === "").length;
  const shared = {tried: rows.length, holding};
  const stopped = nothingHolds(rows);
  if (!best) return {...shared, design: undefined, finding: stopped ?? "", rules: [], fails: []};
  const {scheme, row} = best;
  return {
    ...shared,
    design: designWithReasons(scheme),
    finding: stopped ?? chosenWords(row, shared),
    rules: Object.entries(ruleWords(scheme)).map(([name, words]) => ({decision: decisionName(name as ReasonName), words: sentence(words.replace(/^By rule: /, ""))})),
    fails: scheme.fails.map(({label, message}) => ({label, words: message})),
  };
}

/** Whether a scheme is better than the best so far; one that is only as good is not. */
export function comesBefore(row: SchemeRow, best: SchemeRow): boolean {
  const keys = (of: SchemeRow) => [failsOf(of).length, valueOf(of, "carbonKgPerFt2") ?? Infinity, valueOf(of, "carbonWithoutColumnsKgPerFt2") ?? Infinity];
  const [ours, theirs] = [keys(row), keys(best)];
  const at = ours.findIndex((key, i) => key !== theirs[i]);
  return at >= 0 && (ours[at] as number) < (theirs[at] as number);
}

function chosenWords(row: SchemeRow, {tried, holding}: Pick<FirstDesign, "tried" | "holding">): string {
  const carbon = valueOf(row, "carbonKgPerFt2");
  const bays = `${row.bays_across === 1 ? "one bay" : `${row.bays_across} bays`} across and ${row.bays_along} along`;
  const of = holding === 1
    ? `Of ${tried} whole buildings, all sized by the same rules, one passes all checks`
    : `Of ${tried} whole buildings, all sized by the same rules, ${holding} pass all checks; the one with the least embodied carbon${carbon === undefined ? "" : ", columns and footings counted,"} is chosen`;
  return `${of}: ${row.deck} spans ${feetText(row.span_ft)} onto beams of ${feetText(row.beam_span_ft)}, ${bays}${carbon === undefined ? "" : `, at ${decimals(carbon, 1)} kg of CO\u2082e per square foot`}.`;
}

/** What is decided, by the name of its reason: "deck", "girders and columns". */
function decisionName(name: ReasonName): string {
  return fieldOf(`reasons.${name}`).label.replace(/^why th(is|ese) /, "");
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
