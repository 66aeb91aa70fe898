import type {Design} from "../../lib/design/design.js";
import {valueAt} from "../../lib/design/plain.js";
import {fieldAt} from "../../lib/design/fields.js";
import {seeds} from "../support/designs.js";
import {designOf, type Case} from "./designs.js";
import {faultOf, type Fault} from "./laws.js";

/** Rounds of leaving out and of halving; each ends early where nothing more can be had. */
const ROUNDS = 4;
/** Digits to which a number is cut while the fault stays. */
const DIGITS = [1, 2, 3, 4, 6];

/** What breaks a law in a design; {@link faultOf} but in tests of the shrinking itself. */
type Law = (design: Design, of: Case) => Fault | undefined;

/** The same fault with as few changes from the starter as can be found, and as plain numbers. */
export function shrunk(found: Case, fault: Fault, law: Law = (design, of) => faultOf(design, of)): {readonly least: Case; readonly fault: Fault} {
  let least = found;
  let last = fault;
  const holds = (changes: Case["changes"]): boolean => {
    const next = attempt({...least, changes}, law);
    if (!next || next.kind !== fault.kind || next.where !== fault.where) return false;
    least = {...least, changes};
    last = next;
    return true;
  };
  for (let round = 0; round < ROUNDS; round++) {
    const before = least;
    for (const path of Object.keys(least.changes)) holds(without(least.changes, path));
    for (const path of Object.keys(least.changes)) plainer(least, path, holds);
    if (least === before) break;
  }
  return {least, fault: last};
}

function attempt(next: Case, law: Law): Fault | undefined {
  try {
    return law(designOf(next), next);
  } catch {
    return undefined;
  }
}

/** Tries fewer digits of a number, or one entry of a list. A jump stands where it stands: the field that is moved keeps its digits. */
function plainer({changes, starter, moved}: Case, path: string, holds: (changes: Case["changes"]) => boolean): void {
  const value = changes[path];
  if (Array.isArray(value) && value.length > 1) {
    for (const entry of value) if (holds({...changes, [path]: [entry]})) return;
  }
  if (typeof value !== "number" || path === moved) return;
  const own = valueAt(seeds.find(({id}) => id === starter)?.design as never, path);
  if (typeof own === "number" && fieldAt(path) && holds({...changes, [path]: Math.round((own + value) / 2)})) return;
  for (const digits of DIGITS) if (holds({...changes, [path]: Number(value.toPrecision(digits))})) return;
}

function without(changes: Case["changes"], path: string): Case["changes"] {
  return Object.fromEntries(Object.entries(changes).filter(([key]) => key !== path));
}
