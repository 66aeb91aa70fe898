/**
 * Units. Inside the library lengths are inches, forces kips, stresses ksi; psf, plf, psi and ft stand where the trade
 * speaks so, and every name ends in its unit. Conversion to SI happens only where something is shown.
 */

/** Inches in a foot. */
export const IN_PER_FT = 12;
/** Pounds in a kip. */
export const LB_PER_KIP = 1000;
/** Square inches in a square foot. */
export const IN2_PER_FT2 = 144;
/** Cubic inches in a cubic yard, the unit in which concrete is ordered. */
export const IN3_PER_YD3 = 46656;

/** Feet to inches. */
export const inches = (feet: number): number => feet * IN_PER_FT;
/** Inches to feet. */
export const feet = (lengthIn: number): number => lengthIn / IN_PER_FT;
/** A line load in pounds per foot as kips per inch. */
export const kipPerIn = (loadPlf: number): number => loadPlf / (LB_PER_KIP * IN_PER_FT);
/** A moment in kip-inches as kip-feet. */
export const kipFt = (momentKipIn: number): number => momentKipIn / IN_PER_FT;

/** One row of the table of SI equivalents: the SI unit, and the factor from the customary unit to it. */
interface SiUnit {
  readonly unit: string;
  readonly factor: number;
}

/** Customary unit to SI. The factors are exact where the definition is (1 in = 25.4 mm, 1 lbf = 4.4482216152605 N). */
export const SI: Readonly<Record<string, SiUnit>> = {
  "in": {unit: "mm", factor: 25.4},
  "ft": {unit: "m", factor: 0.3048},
  "in2": {unit: "mm2", factor: 25.4 ** 2},
  "ft2": {unit: "m2", factor: 0.3048 ** 2},
  "in3": {unit: "mm3", factor: 25.4 ** 3},
  "yd3": {unit: "m3", factor: 0.9144 ** 3},
  "in4": {unit: "mm4", factor: 25.4 ** 4},
  "lb": {unit: "kN", factor: 4.4482216152605e-3},
  "kip": {unit: "kN", factor: 4.4482216152605},
  "psf": {unit: "kPa", factor: 4.4482216152605e-3 / 0.3048 ** 2},
  "plf": {unit: "kN/m", factor: 4.4482216152605e-3 / 0.3048},
  "psi": {unit: "MPa", factor: 4.4482216152605 / 25.4 ** 2},
  "ksi": {unit: "MPa", factor: 4448.2216152605 / 25.4 ** 2},
  "kip-in": {unit: "kN m", factor: 4.4482216152605 * 0.0254},
  "kip-ft": {unit: "kN m", factor: 4.4482216152605 * 0.3048},
  "pcf": {unit: "kg/m3", factor: 0.45359237 / 0.3048 ** 3},
};

const RAISED: Readonly<Record<string, string>> = {"2": "\u00b2", "3": "\u00b3", "4": "\u2074"};

/** A unit as it is written in text: `in2` and `in^2` are in², `kip-in` is kip-in. */
export function unitText(unit: string): string {
  return unit.replace(/(?<=[a-z])\^?([234])(?![\d.])/gi, (_, digit: string) => RAISED[digit] as string);
}

/** A value in a customary unit of {@link SI} as its SI value; units without a row are returned unchanged. */
export function toSi(value: number, unit: string): {value: number; unit: string} {
  const si = siOf(unit);
  return si ? {value: value * si.factor, unit: si.unit} : {value, unit};
}

function siOf(unit: string): SiUnit | undefined {
  return Object.hasOwn(SI, unit) ? SI[unit] : undefined;
}

/**
 * A length as an architect writes it: `2'-10"`, `11'-2 1/2"`, `8"` below a foot unless `always` asks for feet.
 *
 * @param lengthIn - length in inches
 * @param denominator - smallest fraction of an inch: 1, 2, 4, 8 or 16
 */
export function feetAndInches(lengthIn: number, denominator: 1 | 2 | 4 | 8 | 16 = 4, always = false): string {
  const parts = Math.round(Math.abs(lengthIn) * denominator);
  const sign = lengthIn < 0 && parts > 0 ? "-" : "";
  const wholeIn = Math.floor(parts / denominator);
  const fraction = fractionText(parts % denominator, denominator);
  const ft = Math.floor(wholeIn / IN_PER_FT);
  const inch = wholeIn % IN_PER_FT;
  const withFeet = ft > 0 || always;
  const inchText = !fraction ? String(inch) : inch > 0 || withFeet ? `${inch} ${fraction}` : fraction;
  return withFeet ? `${sign}${ft}'-${inchText}"` : `${sign}${inchText}"`;
}

/** A length in a sentence: whole feet as `60 ft`, any other as it is drawn, `57'-6 1/2"`. */
export function feetText(lengthFt: number): string {
  return Number.isInteger(lengthFt) ? `${lengthFt} ft` : feetAndInches(lengthFt * IN_PER_FT, 16, true);
}

function fractionText(numerator: number, denominator: number): string {
  if (numerator === 0) return "";
  while (numerator % 2 === 0 && denominator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  return `${numerator}/${denominator}`;
}

/** A number with a fixed count of decimals, thousands separated, and a true minus sign: `-1,234.5` reads "−1,234.5". */
export function decimals(value: number, places = 0): string {
  // The language's own formatter sets itself up at every call, which a page of live numbers cannot afford.
  const [whole = "0", fraction] = Math.abs(value).toFixed(places).split(".");
  const text = `${whole.replace(/\B(?=(\d{3})+$)/g, ",")}${fraction ? `.${fraction}` : ""}`;
  return Number(value.toFixed(places)) < 0 ? `\u2212${text}` : text;
}

/** A ratio as a whole percentage: 0.482 reads "48 %". */
export function percent(ratio: number): string {
  return `${decimals(ratio * 100)}\u00a0%`;
}

/**
 * Parts of a whole, rounded so that they still add up to the whole's own rounded value (the largest remainder): three
 * thirds of 100 are 34, 33 and 33. What is cut off each part is given back, one last digit at a time, to those that lost most.
 *
 * @param parts - 0 or more each, in any unit
 * @param places - decimals that are kept, 0 to 6
 */
export function roundedParts(parts: readonly number[], places = 0): number[] {
  const scale = 10 ** places;
  const exact = parts.map((part) => part * scale);
  const whole = exact.map(Math.floor);
  const missing = Math.round(exact.reduce((sum, part) => sum + part, 0)) - whole.reduce((sum, part) => sum + part, 0);
  const byLoss = exact.map((part, i) => ({i, lost: part - (whole[i] as number)})).sort((a, b) => b.lost - a.lost || a.i - b.i);
  for (const {i} of byLoss.slice(0, missing)) whole[i] = (whole[i] as number) + 1;
  return whole.map((part) => part / scale);
}
