import {decimals} from "../units.js";
import type {TextUnit} from "./siUnit.js";

/** A number as a text has it. */
export interface ReadNumber {
  readonly value: number;
  /** Digits that count: without zeros in front, or behind a whole number. */
  readonly digits: number;
  /** Digits behind the point. */
  readonly decimals: number;
}

/** Significant figures that each converted number keeps: 60 ft is 18.3 m, not 20 m; and the most that one keeps. */
const KEPT_DIGITS = 3;
const MOST_DIGITS = 4;
const VULGAR: Readonly<Record<string, number>> = {"\u00bc": 1 / 4, "\u00bd": 1 / 2, "\u00be": 3 / 4, "\u2153": 1 / 3, "\u2154": 2 / 3, "\u215b": 1 / 8, "\u215c": 3 / 8, "\u215d": 5 / 8, "\u215e": 7 / 8};

/** Reads `1,234.5`, `\u22123`, `8 1/2`, `8-1/2`, `1/2`, `1\u00bd`. */
export function readNumber(text: string): ReadNumber {
  const negative = /^[-\u2212]/.test(text);
  const plain = text.replace(/^[-\u2212]/, "").replace(/,/g, "");
  const vulgar = /^(\d*)\s?([\u00bc-\u00be\u2153\u2154\u215b-\u215e])$/.exec(plain);
  const fraction = /^(?:(\d+)[ \u00a0-])?(\d+)\/(\d+)$/.exec(plain);
  const size = vulgar ? Number(vulgar[1] || 0) + (VULGAR[vulgar[2] as string] as number)
    : fraction ? Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]) : Number(plain);
  const [whole = "", after = ""] = vulgar || fraction ? [""] : plain.split(".");
  const digits = after ? (whole + after).replace(/^0+/, "").length : whole.replace(/^0+/, "").replace(/0+$/, "").length;
  return {value: negative ? -size : size, digits, decimals: after.length};
}

/**
 * A number of a US unit as an SI text: as many significant figures as the US text has, but three or four, and no finer than the
 * unit justifies (a whole number of inches gives whole millimeters).
 */
export function siText({value, digits, decimals: given}: ReadNumber, {factor, places}: TextUnit): string {
  const si = value * factor;
  if (si === 0) return "0";
  const keep = Math.min(MOST_DIGITS, Math.max(KEPT_DIGITS, digits));
  const wanted = keep - 1 - Math.floor(Math.log10(Math.abs(si)) + 1e-9);
  // What is written to tenths in the US unit may go one place finer where the SI unit is about as large or larger.
  const most = places + (factor > 5 ? Math.max(0, given - 1) : given);
  if (wanted < 0) return decimals(Number(si.toPrecision(keep)));
  return decimals(si, Math.min(wanted, most));
}

/** Meters of a length that the US text has in feet and inches: to the centimeter, about the half inch to which such lengths are drawn. */
export function metersText(lengthIn: number): string {
  return decimals(lengthIn * 0.0254, 2);
}

/** Millimeters of a length that the US text has in inches and their fractions. */
export function millimetersText(lengthIn: number): string {
  return decimals(lengthIn * 25.4);
}
