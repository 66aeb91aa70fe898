import {NEAR, worst, type Check} from "../../lib/checks.js";
import {positionsOf} from "../../lib/columns/frame.js";
import type {Design} from "../../lib/design/design.js";
import {candidates, framingOf} from "../../lib/evaluate.js";
import {catalog} from "../support/designs.js";
import {jumpOf} from "./jumps.js";
import {namesAField, outcomeOf, someNumber, type Outcome} from "./results.js";

/** A law that a design breaks. */
export interface Fault {
  readonly kind: "fault of the engine" | "refusal without a field" | "not finite" | "verdict" | "column lost" | "search aborted" | "jump";
  /** What it is about, the same for every design that breaks the law alike. */
  readonly where: string;
  readonly detail: string;
}

/**
 * The first law that a design breaks, or undefined.
 *
 * @param moved - the field that is moved by a millionth
 * @param searched - whether its deck is searched for as well, which takes longer than all else
 * @param outcome - what the engine makes of the design, where it is known already
 */
export function faultOf(design: Design, {moved, searched}: {readonly moved: string; readonly searched: boolean}, outcome: Outcome = outcomeOf(design)): Fault | undefined {
  if (outcome.kind === "fault") {
    const {error} = outcome;
    const stack = error instanceof Error ? (error.stack ?? "") : "";
    return {kind: "fault of the engine", where: /at (\S+ \(\S*lib\/\S+)/.exec(stack)?.[1] ?? "", detail: String(error)};
  }
  if (outcome.kind === "refusal") {
    if (namesAField(outcome.error)) return undefined;
    const {path, message} = outcome.error;
    return {kind: "refusal without a field", where: `${path} as "${message.split(":")[0]}"`, detail: message};
  }
  return notFinite(outcome) ?? wrongVerdict(outcome) ?? lostColumn(outcome) ?? (searched ? abortedSearch(design) : undefined) ?? jumpOf(design, outcome, moved);
}

type Results = Extract<Outcome, {kind: "results"}>;

function notFinite({evaluation, columns}: Results): Fault | undefined {
  let found: Fault | undefined;
  someNumber({evaluation, columns}, (path, value) => {
    if (!Number.isFinite(value)) found = {kind: "not finite", where: path.replace(/\.\d+/g, ".*"), detail: `${path} is ${value}`};
    return found !== undefined;
  });
  return found;
}

function wrongVerdict({evaluation, columns, checks}: Results): Fault | undefined {
  for (const check of checks) {
    const wrong = inconsistency(check);
    if (wrong) return {kind: "verdict", where: check.id, detail: `${check.label}: ${wrong}`};
  }
  if (evaluation.verdict !== worst(evaluation.checks)) return {kind: "verdict", where: "the whole", detail: `${evaluation.verdict} is not the worst of its checks`};
  const own = columns.columns.flatMap((column) => column.checks);
  return own.every((check) => columns.checks.includes(check)) ? undefined : {kind: "verdict", where: "columns", detail: "a column's check is not among those of all"};
}

/** What does not go together in a check; undefined where all does. */
export function inconsistency({verdict, utilization, demand, capacity, word, message}: Check): string | undefined {
  const all = `${verdict} at ${utilization}, ${demand} of ${capacity}`;
  if (message === "") return `no words: ${all}`;
  // A tied limit may be passed by rounding in the last digit.
  const above = utilization > 1 + 1e-9;
  if (verdict === "fails" && !above) return all;
  if (verdict === "ok" && (above || demand > capacity * (1 + 1e-9) + 1e-9)) return all;
  if (verdict === "near" && !word && (above || utilization < NEAR)) return all;
  return undefined;
}

function lostColumn({evaluation, columns}: Results): Fault | undefined {
  const told = new Set([...columns.columns, ...columns.unsized].map(({position}) => position));
  const lost = positionsOf(framingOf(evaluation)).filter((position) => !told.has(position));
  if (lost.length > 0) return {kind: "column lost", where: lost.join(", "), detail: "neither sized nor told of"};
  const silent = columns.unsized.find(({position}) => !columns.checks.some((check) => check.id.startsWith(`${position}: `) && check.verdict === "out of range"));
  return silent && {kind: "column lost", where: silent.position, detail: "no check says so"};
}

function abortedSearch(design: Design): Fault | undefined {
  try {
    candidates(design, catalog);
    return undefined;
  } catch (error) {
    return {kind: "search aborted", where: String(error).replace(/[\d.]+/g, "#"), detail: String(error)};
  }
}
