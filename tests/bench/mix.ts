import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {HANDBOOK_LIMITS, LOAD_LIMITS} from "../../lib/deck/limits.js";

/** Member-spans of one run: as many cells as the largest sweep. */
export const MEMBER_SPANS = 100_000;
/** Spans that a run goes through, ft: 24, 25, ... 72. */
export const SPANS = {fromFt: 24, count: 49};

/** Members that a floor of tees and planks would bring up: pattern, topping in inches; half of them depressed, half topped. */
export const MIX: readonly (readonly [member: string, pattern: string, toppingIn: number])[] = [
  ["10DT24", "68-S", 0], ["10DT24", "108-S", 2], ["12DT32", "188-S", 0], ["4HC8", "76-S", 2],
  ["10DT32", "128-D1", 2], ["12DT32", "188-D1", 0], ["12DT32", "148-D2", 2], ["15DT34", "208-D1", 0],
];

/** The mix in words, so that a rate can be judged. */
export const MIX_WORDS = ((): string => {
  const depressed = MIX.filter(([, pattern]) => !pattern.endsWith("S")).length;
  const topped = MIX.filter(([, , toppingIn]) => toppingIn > 0).length;
  const planks = MIX.filter(([member]) => /HC|FS/.test(member)).length;
  return `${MIX.length} members in turn: ${MIX.length - depressed} straight, ${depressed} depressed, ${topped} topped, ${planks} plank; ${SPANS.count} spans`;
})();

/** Strength and stresses in service, half of the live load lasting; then with the handbook's shear; then every limit on the load. */
export const STRENGTH_AND_SERVICE: Criteria = {
  ...handbookCriteria(false), sustainedLiveShare: 0.5, limits: ["strength", "service tension", "sustained compression", "total compression"],
};
export const HANDBOOK: Criteria = {...STRENGTH_AND_SERVICE, limits: HANDBOOK_LIMITS};
export const EVERY_LIMIT: Criteria = {...STRENGTH_AND_SERVICE, limits: LOAD_LIMITS};

/** What a run evaluates, with its goal where there is one. */
export const RUNS: readonly {readonly words: string; readonly criteria: Criteria; readonly goal?: {readonly node: string; readonly browser: string}}[] = [
  {words: "losses, strength and stresses in service", criteria: STRENGTH_AND_SERVICE, goal: {node: "0.25 s", browser: "0.4 s"}},
  {words: "the handbook's limits: the same and shear", criteria: HANDBOOK},
  {words: "every limit on the load", criteria: EVERY_LIMIT},
];

/** How many limits a member-span has on the mean of a run, from their sum. */
export const perCell = (limits: number): string => (limits / MEMBER_SPANS).toFixed(1);
