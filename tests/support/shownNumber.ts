/** A number as a page shows it: its size, and by how little it may differ from another without reading otherwise. */
export interface ShownNumber {
  readonly size: number;
  /** Worth of the last digit, or of the smallest fraction, that is written. */
  readonly step: number;
}

const FEET_AND_INCHES = /^-?(?:(\d+)'-)?(?:(\d+)(?:\s(?=\d+\/))?)?(?:(\d+)\/(\d+))?"$/;
/** Lengths are written to a quarter inch unless they say otherwise. */
const QUARTER = 0.25;

/**
 * Reads a text such as `4'-10 3/4"`, `0.71 in`, `40 ft`, `1,234 plf`, `12.8 cubic yards`. Its sign is left out: pages tell
 * it in words, sag and camber, below and above.
 *
 * @param unit - unit of the quantity; feet are turned into inches where it is in
 */
export function readShown(text: string, unit: string): ShownNumber {
  const plain = text.trim().replace(/\u00a0/g, " ").replace(/\u2212/g, "-");
  const length = FEET_AND_INCHES.exec(plain);
  if (length) {
    const [feet, whole, top, bottom] = length.slice(1).map((part) => Number(part ?? 0)) as [number, number, number, number];
    return {size: feet * 12 + whole + (bottom ? top / bottom : 0), step: QUARTER};
  }
  const number = /^-?([\d,]+(?:\.(\d+))?)(?:\s*(\D.*))?$/.exec(plain);
  if (!number) throw new Error(`"${text}" is no number.`);
  const times = unit === "in" && number[3] === "ft" ? 12 : 1;
  return {size: times * Number((number[1] as string).replace(/,/g, "")), step: times * 10 ** -(number[2]?.length ?? 0)};
}

/** Whether a shown number reads as a value rounded to what it shows. */
export function reads({size, step}: ShownNumber, value: number): boolean {
  return Math.abs(size - Math.abs(value)) <= step / 2 + 1e-9 * Math.max(1, size);
}
