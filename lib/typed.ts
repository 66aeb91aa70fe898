import {allowedWords, requireNumber, type NumberRule} from "./check.js";
import {InputError} from "./errors.js";
import {IN_PER_FT, SI, feetAndInches} from "./units.js";

/** Smallest fraction of an inch in which a length in feet is written into its box. */
const SIXTEENTHS = 16;
const FOOT_MARK = /^(.*?)(?:'|ft\.?|feet|foot)(.*)$/;
const INCH_MARK = /(?:"|in\.?|inch|inches)$/;
const DECIMAL = /^(?:\d+|\d{1,3}(?:,\d{3})+)(?:\.\d*)?$|^\.\d+$/;
/** `8 1/2`, `8-1/2` or `1/2`. */
const FRACTION = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/;
/** Feet and inches with nothing but a hyphen between them: `14-8`, `14-8 1/2`. */
const HYPHENATED = /^(\d+) ?- ?(\d+(?:\.\d*)?(?:[ -]\d+\/\d+)?)$/;

/**
 * A length as people type it: `14'-8"`, `14' 8`, `14-8`, `14.667`, `176in`, `14 ft 8 1/2 in`, with straight or curly marks.
 *
 * @param unit - what a number without a mark is in. A fraction without a mark means inches in an inch's box; in a foot's
 *   box it could mean either, and is not read. Inches beside feet are fewer than 12.
 * @returns the length in that unit, or undefined where the text is none or could mean two things
 */
export function readLength(text: string, unit: "ft" | "in"): number | undefined {
  const plain = plainMarks(text);
  const sign = plain.startsWith("-") ? -1 : 1;
  const read = feetPlusInches(sign < 0 ? plain.slice(1).trim() : plain, unit);
  if (!read) return undefined;
  const {ft, inch} = read;
  const value = unit === "in" ? ft * IN_PER_FT + inch : inch === 0 ? ft : (ft * IN_PER_FT + inch) / IN_PER_FT;
  return sign * value;
}

/** A number with its unit in SI. */
const METRIC = /^(-? ?[\d.,]+) ?(mm|cm|m|kpa|mpa|kn|kn\/m|kn[ -]?m|m2|mm2|m3|kg\/m3)$/;
/** Metric units by what {@link SI} has: how many of that one they are. */
const METRIC_OF: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mm: {mm: 1, cm: 10, m: 1000}, m: {mm: 0.001, cm: 0.01, m: 1}, kpa: {kpa: 1, mpa: 1000}, mpa: {kpa: 0.001, mpa: 1},
};

/** The number in a rule's own unit that a text with an SI unit means, `18.3 m` or `4 kPa`; undefined where it is none of the kind. */
function readMetric(text: string, unit: string): number | undefined {
  const [, amount = "", named = ""] = METRIC.exec(text.replace(/\u00b2/g, "2").replace(/\u00b3/g, "3")) ?? [];
  const row = Object.hasOwn(SI, unit) ? SI[unit] : undefined;
  const value = decimal(amount);
  if (!row || value === undefined) return undefined;
  const own = row.unit.toLowerCase();
  const times = METRIC_OF[own]?.[named] ?? (own.replace(/[ -]/g, "") === named.replace(/[ -]/g, "") ? 1 : undefined);
  return times === undefined ? undefined : (value * times) / row.factor;
}

/**
 * The number that a text in a box means: a length where the rule's unit is one ({@link readLength}), else a decimal number. A number with its
 * SI unit is read as well, whatever the box shows.
 *
 * @param siFactor - where the box shows SI, how many of its units are in one of the rule's: a number without a unit is in them
 * @throws InputError that shows the text as it was typed, where it means no number or one that the rule does not allow
 */
export function readTyped(text: string, rule: NumberRule, siFactor?: number): number {
  const {path, label, unit} = rule;
  const typed = text.trim();
  const plain = plainMarks(typed);
  const bare = decimal(plain);
  const own = unit !== "" && plain.endsWith(unit.toLowerCase()) ? decimal(plain.slice(0, -unit.length).trim()) : undefined;
  const value = readMetric(plain, unit) ?? (siFactor !== undefined && bare !== undefined ? bare / siFactor
    : unit === "ft" || unit === "in" ? readLength(typed, unit) : bare ?? own);
  const refusal = {path, label, value: typed === "" ? undefined : typed, reads: typed};
  if (value === undefined) {
    const such = unit === "ft" ? ", such as 14'-8\", 14-8, 14.667 or 176in" : unit === "in" ? ", such as 8 1/2 or 0'-8\"" : "";
    throw new InputError({...refusal, allowed: `${allowedWords(rule, unit === "ft" || unit === "in" ? "a length, " : "a number, ")}${such}`});
  }
  try {
    return requireNumber(value, rule);
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    // A reason is in the rule's own unit, and so is the number in it.
    if (siFactor !== undefined && bare !== undefined) throw new InputError({...refusal, value, reads: String(Number(value.toPrecision(4))), unit, allowed: problem.allowed});
    throw new InputError({...refusal, unit: String(Number(typed)) === typed ? unit : undefined, allowed: problem.allowed});
  }
}

/** A number as it stands in its box: feet as drawings write them, all else with no more digits than it has. */
export function typedText(value: number, unit: string): string {
  return unit === "ft" ? feetAndInches(value * IN_PER_FT, SIXTEENTHS, true) : formatPlain(value);
}

/** A number as it is typed: no more digits than it has, six decimals at most. */
export function formatPlain(value: number): string {
  return Number(value.toFixed(6)).toString();
}

/** The text in lower case, with one kind of mark, of hyphen and of space, and fractions written out. */
function plainMarks(text: string): string {
  return text
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (sign) => ` ${sign.normalize("NFKD").replace("\u2044", "/")}`)
    .replace(/[\u2018\u2019\u2032]/g, "'").replace(/[\u201c\u201d\u2033]|''/g, "\"").replace(/[\u2010-\u2014\u2212]/g, "-")
    .replace(/\s+/g, " ").trim().toLowerCase();
}

function feetPlusInches(text: string, unit: "ft" | "in"): {ft: number; inch: number} | undefined {
  const marked = FOOT_MARK.exec(text);
  if (marked) {
    const [feet = "", rest = ""] = marked.slice(1).map((part) => part.trim());
    if (rest === "") return both(amount(feet), 0);
    return whole(feet, rest.replace(/^- ?/, "").replace(INCH_MARK, "").trim());
  }
  const inches = text.replace(INCH_MARK, "").trim();
  const joined = HYPHENATED.exec(inches);
  if (inches !== text || unit === "in") return joined && inches !== text ? whole(joined[1], joined[2]) : both(0, amount(inches));
  return joined ? whole(joined[1], joined[2]) : both(unsigned(text), 0);
}

/** Whole feet and fewer than 12 inches. */
function whole(feet = "", inches = ""): {ft: number; inch: number} | undefined {
  const inch = amount(inches);
  return /^\d+$/.test(feet) && inch !== undefined && inch < IN_PER_FT ? {ft: Number(feet), inch} : undefined;
}

function both(ft: number | undefined, inch: number | undefined): {ft: number; inch: number} | undefined {
  return ft === undefined || inch === undefined ? undefined : {ft, inch};
}

/** A number with a fraction, or a decimal one. */
function amount(text: string): number | undefined {
  const fraction = FRACTION.exec(text);
  if (!fraction) return unsigned(text);
  const [over, top, bottom] = fraction.slice(1).map((part) => Number(part ?? 0)) as [number, number, number];
  return top < bottom ? over + top / bottom : undefined;
}

function decimal(text: string): number | undefined {
  const size = unsigned(text.replace(/^- ?/, ""));
  return size !== undefined && text.startsWith("-") ? -size : size;
}

/** A decimal number without a sign; commas only where they part thousands, as a comma elsewhere may be meant for a point. */
function unsigned(text: string): number | undefined {
  return DECIMAL.test(text) ? Number(text.replace(/,/g, "")) : undefined;
}
