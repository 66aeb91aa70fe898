import type {UnitSystem} from "../reader/system.js";
import {formatPlain} from "../typed.js";
import {decimals, feetText, toSi, unitText} from "../units.js";

/** A quantity in words or among what is given: held as a number, shown in the reader's units. */
export interface Measure {
  readonly value: number;
  /** Customary unit, such as `ft`, `psf`, `kip-ft`; empty for a pure number. */
  readonly unit: string;
}

/** A sentence, in pieces where it holds quantities. */
export type Prose = readonly (string | Measure)[];

/** A quantity for a sentence. */
export function measure(value: number, unit: string): Measure {
  return {value, unit};
}

/** A sentence with quantities in it: prose`A plank spans ${measure(24, "ft")}.` */
export function prose(words: TemplateStringsArray, ...values: readonly (string | number | Measure | Prose)[]): Prose {
  return words.flatMap((text, i): (string | Measure)[] => {
    const value = values[i];
    const pieces = value === undefined ? [] : typeof value === "number" ? [formatPlain(value)] : isProse(value) ? value : [value];
    return [text, ...pieces];
  }).filter((piece) => piece !== "");
}

function isProse(value: string | Measure | Prose): value is Prose {
  return Array.isArray(value);
}

/** A sentence as text in the reader's units. */
export function proseText(sentence: Prose, system: UnitSystem = "US"): string {
  return sentence.map((piece) => (typeof piece === "string" ? piece : measureText(piece, system))).join("");
}

/** A quantity as text: `40 ft`, in SI `12.19 m`, in both `40 ft (12.19 m)`. */
export function measureText({value, unit}: Measure, system: UnitSystem = "US"): string {
  const us = unit === "ft" && isSixteenths(value) ? feetText(value) : withUnit(value, unit);
  if (system === "US") return us;
  const si = toSi(value, unit);
  if (si.unit === unit) return us;
  const other = withUnit(Number(si.value.toPrecision(4)), si.unit);
  return system === "SI" ? other : `${us} (${other})`;
}

function withUnit(value: number, unit: string): string {
  return unit === "" ? numberText(value) : `${numberText(value)} ${unitText(unit)}`;
}

/** A number with the digits that it has, up to three decimals; what has more is written to four digits. */
export function numberText(value: number): string {
  const short = Math.abs(value * 1000 - Math.round(value * 1000)) < 1e-6;
  const [, fraction = ""] = formatPlain(short ? value : Number(value.toPrecision(4))).split(".");
  return decimals(short ? value : Number(value.toPrecision(4)), fraction.length);
}

function isSixteenths(lengthFt: number): boolean {
  const parts = lengthFt * 12 * 16;
  return Math.abs(parts - Math.round(parts)) < 1e-9;
}
