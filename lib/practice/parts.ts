import type {Step, Working} from "../step.js";
import type {ChoicePart, Earlier, MistakePart, NumberPart, Option, OrderPart, Slip, Tolerance} from "./item.js";
import {READ_OFF} from "./keys.js";
import type {Prose} from "./prose.js";

/** A value that may depend on the answers before it. */
type From<T> = T | ((earlier: Earlier) => T);

function from<T>(value: From<T>): (earlier: Earlier) => T {
  return typeof value === "function" ? (value as (earlier: Earlier) => T) : () => value;
}

/** Common to the makers below. */
interface PartInput {
  readonly ask: Prose;
  readonly points?: number;
  readonly because?: Prose;
}

const base = ({ask, points = 1, because}: PartInput) => ({ask, points, ...(because ? {because} : {})});

/** How far off a computed number may be where nothing else is said. */
const USUAL: Tolerance = {percent: 2};

/** A part that asks for a number; its tolerance is 2 % where none is given. */
export function numberPart(input: PartInput & {
  readonly label: string;
  readonly unit: string;
  readonly tolerance?: Tolerance;
  readonly key: From<number>;
  readonly slips: From<readonly Slip[]>;
  readonly working?: From<Working>;
}): NumberPart {
  const {label, unit, tolerance = USUAL, key, slips, working = READ_OFF} = input;
  return {type: "number", ...base(input), label, unit, tolerance, key: from(key), slips: from(slips), working: from(working)};
}

/** A part that asks for one of several. */
export function choicePart(input: PartInput & {readonly options: readonly Option[]; readonly key: From<string>; readonly working?: From<Working>}): ChoicePart {
  const {options, key, working = READ_OFF} = input;
  return {type: "choice", ...base(input), options, key: from(key), working: from(working)};
}

/** A part that asks for an order; of usual wrong orders those that these numbers make right, or the same as another, are left out. */
export function orderPart(input: PartInput & {readonly by: string; readonly options: readonly Option[]; readonly key: string; readonly slips?: OrderPart["slips"]; readonly working?: From<Working>}): OrderPart {
  const {by, options, key, working = READ_OFF} = input;
  const slips = (input.slips ?? []).filter(({order}, i, all) => order !== key && all.findIndex((other) => other.order === order) === i);
  return {type: "order", ...base(input), by, options, key: () => key, slips, working: from(working)};
}

/** A part that shows a calculation with one wrong line. */
export function mistakePart(input: PartInput & {readonly lines: readonly Step[]; readonly wrong: number; readonly says?: Readonly<Record<string, string>>; readonly working: From<Working>}): MistakePart {
  const {lines, wrong, says = {}, working} = input;
  return {type: "mistake", ...base(input), lines, key: () => String(wrong), says, working: from(working)};
}

/** A usual mistake with the number that it gives. */
export function slip(name: string, value: number, says: string): Slip {
  return {name, value, says};
}

/** A number among the answers before a part. */
export function numberAt(earlier: Earlier, index: number): number {
  return Number(earlier[index]);
}
