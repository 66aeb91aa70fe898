/** Significant digits of a number that goes into an equation: enough to follow it with a pocket calculator. */
const DIGITS = 5;

/**
 * A number for an equation: five significant digits, whole numbers in full, thousands set off by commas, and a power of
 * ten only where the number would otherwise be all zeros. The text before the power can be read back as a number.
 */
export function formatForEquation(value: number, digits = DIGITS): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size < 1e-4 || size >= 1e9) return Number(value.toPrecision(digits)).toExponential();
  if (Number.isInteger(value)) return withCommas(String(value));
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  return withCommas(String(Number(value.toFixed(Math.min(decimals, 12)))));
}

function withCommas(text: string): string {
  const [whole = "", fraction] = text.split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}

/** A formatted number as TeX: commas that do not space, a true minus, a power of ten. */
export function numberTex(text: string): string {
  const [mantissa = "", exponent] = text.split("e");
  const plain = (mantissa.includes(",") ? mantissa : withCommas(mantissa)).replace(/,/g, "{,}");
  if (exponent === undefined) return plain;
  const power = `10^{${Number(exponent)}}`;
  return plain === "1" ? power : `${plain} \\times ${power}`;
}
