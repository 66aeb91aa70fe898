import {withValue} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import type {Design} from "../../lib/design/design.js";
import type {NumberField} from "../../lib/design/entries.js";
import {fieldAt} from "../../lib/design/fields.js";
import {countsOf} from "./counts.js";
import type {Fault} from "./laws.js";
import {outcomeOf, type Outcome} from "./results.js";

type Results = Extract<Outcome, {kind: "results"}>;

/** The move, as a share of the field's range. */
const MILLIONTH = 1e-6;
/** Halvings of the move after which what is left of a change is a jump and no steep slope. */
const HALVINGS = 12;
/**
 * A check that the code itself lets step: from the limit of 6.2.5.1 on a column's moments are enlarged, by more than
 * nothing at once, and below it there is nothing to check.
 */
const STEPS = /column magnifier$/;
/** Change that is looked into, of a use u put as u/(1+u), which goes from 0 to 1. */
const NOTICED = 2e-3;

/**
 * A check that jumps as a field moves by a millionth of its range, or one that is there on one side only. A jump where a
 * count changes is none: a count is whole, and its neighbors differ. The move is halved toward the jump, so that a
 * steep slope is not taken for one.
 */
export function jumpOf(design: Design, results: Results, path: string): Fault | undefined {
  const value = valueAt(design, path);
  if (typeof value !== "number") return undefined;
  const {min, max} = fieldAt(path) as NumberField;
  const step = MILLIONTH * (max - min);
  let [here, there] = [{value, results}, at(design, path, value + step <= max ? value + step : value - step)];
  let found = changed(here, there);
  for (let i = 0; found && there && i < HALVINGS; i++) {
    const middle = at(design, path, (here.value + there.value) / 2);
    const [first, second] = [changed(here, middle), changed(middle, there)];
    if (first) there = middle;
    else if (second && middle) here = middle;
    found = first ?? second;
  }
  return found && {kind: "jump", where: found.id, detail: `${path} at ${here.value}: ${found.words}`};
}

interface Place {
  readonly value: number;
  readonly results: Results;
}

function at(design: Design, path: string, value: number): Place | undefined {
  const outcome = outcomeOf(withValue(design, path, value));
  return outcome.kind === "results" ? {value, results: outcome} : undefined;
}

/** The check that differs most between two places without a count that changes; undefined where there is none. */
function changed(here: Place | undefined, there: Place | undefined): {readonly id: string; readonly words: string} | undefined {
  // The end of what the parts of a design allow each other is an edge, not a jump.
  if (!here || !there) return undefined;
  const uses = new Map(there.results.checks.map((check) => [check.id, check]));
  let most: {id: string; change: number; words: string} | undefined;
  for (const check of here.results.checks) {
    const other = uses.get(check.id);
    uses.delete(check.id);
    if (STEPS.test(check.id)) continue;
    // What no method covers has no use that could jump.
    if (check.verdict === "out of range" && other?.verdict === "out of range") continue;
    const change = other ? Math.abs(share(check.utilization) - share(other.utilization)) : 1;
    if (change > (most?.change ?? NOTICED)) {
      most = {id: check.id, change, words: other ? `${check.verdict} ${check.utilization} (${check.demand} of ${check.capacity}), and ${other.verdict} ${other.utilization} (${other.demand} of ${other.capacity})` : `"${check.label}" is there on one side only`};
    }
  }
  for (const check of uses.values()) if (!STEPS.test(check.id)) most ??= {id: check.id, change: 1, words: `"${check.label}" is there on one side only`};
  // Counts are compared last: that takes longer than all checks.
  return most && countsOf(here.results) === countsOf(there.results) ? most : undefined;
}

function share(utilization: number): number {
  return utilization / (1 + utilization);
}
