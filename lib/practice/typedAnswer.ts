import {readLength} from "../typed.js";
import {toSi} from "../units.js";
import type {UnitSystem} from "../reader/system.js";
import {converted, dimensionWords, unitNamed, unitOf, type AnswerUnit} from "./units.js";

/** What a typed answer means. */
export type ReadAnswer =
  | {readonly state: "missing"}
  /** A text that is no number, or whose unit is not known. */
  | {readonly state: "unreadable"; readonly says: string}
  /** A unit of another kind, such as psf where plf are asked. */
  | {readonly state: "other dimension"; readonly says: string}
  | {
    readonly state: "read";
    /** In the part's unit. */
    readonly value: number;
    /** Whether the reader wrote a unit. */
    readonly stated: boolean;
  };

/** A number, with thousands parted by commas or not, then its unit. */
const NUMBER_AND_UNIT = /^([-\u2212+]?\s*(?:\d[\d,]*(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?)\s*([^\d\s].*)?$/i;

/**
 * Reads a number as people type it, with a unit or without: `4.57 m`, `15 ft`, `180 in`, `15'-6"`, `1,200 plf`, `1.2 kip/ft`.
 * Without one it is in the part's unit, in its SI equivalent for who works in SI.
 *
 * @param unit - id of the part's unit
 */
export function readAnswer(text: string, unit: string, system: UnitSystem = "US"): ReadAnswer {
  const typed = text.trim();
  if (typed === "") return {state: "missing"};
  const asked = unitOf(unit);
  const bare = system === "SI" ? siLike(asked) : asked;
  const match = NUMBER_AND_UNIT.exec(typed);
  if (match) {
    const value = Number((match[1] as string).replace(/[,\s]/g, "").replace("\u2212", "-"));
    const named = match[2] === undefined ? bare : unitNamed(match[2]);
    if (named && Number.isFinite(value)) return inUnit(value, named, asked, match[2] !== undefined);
  }
  const length = asked.dimension === "length" ? lengthIn(typed, bare) : undefined;
  if (length !== undefined) return {state: "read", value: converted(length, unitOf("in"), asked), stated: /['"\u2019\u201d\u2032\u2033a-z]/i.test(typed)};
  if (match?.[2] !== undefined) return {state: "unreadable", says: `\u201c${match[2].slice(0, 20)}\u201d is no unit that is known here.`};
  return {state: "unreadable", says: `\u201c${typed.slice(0, 20)}\u201d is no number.`};
}

function inUnit(value: number, named: AnswerUnit, asked: AnswerUnit, stated: boolean): ReadAnswer {
  if (named.dimension === asked.dimension) return {state: "read", value: converted(value, named, asked), stated};
  // 80 % is 0.8.
  if (named.dimension === "share" && asked.dimension === "number") return {state: "read", value: value * named.factor, stated};
  return {state: "other dimension", says: `${named.id} is the unit of ${dimensionWords(named)}; the question asks for ${dimensionWords(asked)}, in ${asked.id || "no unit"}.`};
}

/** Feet and inches as an architect writes them, in. */
function lengthIn(text: string, bare: AnswerUnit): number | undefined {
  const unit = bare.id === "ft" ? "ft" : "in";
  const value = readLength(text, unit);
  return value === undefined ? undefined : value * (unit === "ft" ? 12 : 1);
}

/** The unit that a reader in SI types a number in who names none. */
function siLike(asked: AnswerUnit): AnswerUnit {
  return unitOf(toSi(1, asked.id).unit);
}
