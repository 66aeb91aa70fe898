import {deckRow} from "../../lib/deck/deckMember.js";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {strengthShares, safeLoad} from "../../lib/deck/safeLoad.js";
import {safeLoadTable, usualPatterns} from "../../lib/deck/table.js";
import {candidates, evaluate} from "../../lib/evaluate.js";
import type {Member} from "../../lib/member/member.js";
import {catalogue, seeds} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {ms, perSecond, spread, timesMs, whole, type Line} from "./measure.js";

/** Keeps results in use, so that no work is dropped as idle. */
let kept = 0;

const CRITERIA: Criteria = {...handbookCriteria(false), sustainedLiveShare: 0.5};
const GOAL = "200,000/s";

/** Members that a floor of tees and planks would bring up, and how their strands run. */
const MEMBERS: readonly (readonly [string, string, number])[] = [
  ["10DT24", "68-S", 0], ["10DT24", "108-S", 2], ["12DT32", "188-S", 0], ["4HC8", "76-S", 2],
  ["10DT32", "128-D1", 2], ["12DT32", "188-D1", 0], ["12DT32", "148-D2", 2], ["15DT34", "208-D1", 0],
];

function rateOf(members: readonly Member[]): number {
  return perSecond((i) => {
    kept += safeLoad(members[i % members.length] as Member, 24 + (i % 49), CRITERIA).safeLoadPsf;
  }, 40_000);
}

/** One safe load: losses, strength and service at every place that may govern. */
export function safeLoadLines(): Line[] {
  const made = MEMBERS.map(([designation, text, toppingIn]) => ({name: `${designation}${toppingIn ? `+${toppingIn}` : ""} ${text}`, member: memberWith(designation, text, {toppingIn})}));
  const named = made.map(({name, member}): Line => {
    const limits = Object.keys(safeLoad(member, 40, CRITERIA).limitsPsf).join(", ");
    const places = strengthShares(member).length;
    return {what: `safe loads, ${name}`, value: `${whole(rateOf([member]))}/s`, goal: GOAL, note: `${places === 1 ? "1 place" : `${places} places`}, strand rows: ${member.layout.rows.length}; losses, ${limits}`};
  });
  return [...named, {what: "safe loads, all of these in turn", value: `${whole(rateOf(made.map(({member}) => member)))}/s`, goal: GOAL}];
}

/** Whole tables of 12 patterns by 25 spans, members made anew. */
export function tableLines(): Line[] {
  const conditions = {concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn: 2, toppingStrengthPsi: 3000, humidityPercent: 70} as const;
  const spans = Array.from({length: 25}, (_, i) => 30 + 2 * i);
  return ["10DT32", "12DT32"].map((designation) => {
    const row = deckRow(catalogue, designation);
    const all = usualPatterns(row);
    const patterns = [...all.filter((text) => text.endsWith("S")).slice(-6), ...all.filter((text) => !text.endsWith("S")).slice(-6)];
    const {medianMs, p95Ms} = spread(timesMs(() => {
      kept += safeLoadTable(catalogue, row, patterns, spans, conditions, CRITERIA).length;
    }, 400));
    return {what: `table of ${patterns.length} patterns x ${spans.length} spans, ${designation}+2`, value: ms(medianMs), goal: "5 ms", note: `p95 ${ms(p95Ms)}; half of the patterns depressed`};
  });
}

/** The whole pipeline and the deck search, for each starter design. */
export function designLines(): Line[] {
  return seeds.flatMap(({id, design}) => {
    const all = {...design, consider: {fieldToppedTees: true, pretoppedTees: true, planks: true}};
    const once = spread(timesMs(() => {
      kept += evaluate(design, catalogue).checks.length;
    }, 300));
    const search = spread(timesMs(() => {
      kept += candidates(all, catalogue).length;
    }, 100));
    return [
      {what: `evaluate, ${id}`, value: ms(once.medianMs), note: `p95 ${ms(once.p95Ms)}`},
      {what: `deck search, all kinds, ${id}`, value: ms(search.medianMs), note: `p95 ${ms(search.p95Ms)}`},
    ];
  });
}

/** Memory after all of the above. */
export function memoryLines(): Line[] {
  const {heapUsed, rss} = process.memoryUsage();
  return [{what: "memory", value: `${whole(heapUsed / 2 ** 20)} MiB`, note: `heap in use; ${whole(rss / 2 ** 20)} MiB for the process; checksum ${kept > 0 ? "kept" : "lost"}`}];
}
