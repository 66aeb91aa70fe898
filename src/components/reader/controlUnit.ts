import {textUnit} from "../../lib/reader/siUnit.js";
import type {ShownUnit} from "./system.js";

/** The step that people set a quantity by, and the decimals that its box keeps, by SI unit. */
const STEPS: Readonly<Record<string, readonly [step: number, places: number]>> = {
  "m": [0.1, 3], "mm": [10, 1], "kPa": [0.1, 3], "kN/m": [0.1, 3], "MPa": [1, 2], "kN": [1, 2], "kN\u00b7m": [1, 2], "m\u00b2": [1, 2], "m\u00b3": [0.1, 3],
  "kg/m\u00b3": [10, 1], "m/s": [0.1, 3], "L/s": [10, 1], "L/s per m\u00b2": [0.1, 3], "mm/m": [1, 2], "Pa/m": [0.1, 3], "t": [0.1, 3],
};
/** A usual step is too coarse for a number whose own step is less than this part of it. */
const FINE = 0.4;

/** How a box in a unit shows its number in SI. */
export function controlUnit(unit: string, step: number, beside: boolean): ShownUnit | undefined {
  const found = textUnit(unit);
  if (!found) return undefined;
  const own = step * found.factor;
  const [usual, places] = STEPS[found.si] ?? [roundStep(own), 3];
  const taken = own < FINE * usual ? roundStep(own) : usual;
  return {unit: found.si, factor: found.factor, places: Math.max(places, Math.ceil(-Math.log10(taken) - 1e-9)), step: taken, beside};
}

/** The nearest of 1, 2 and 5 times a power of ten. */
function roundStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step));
  const times = [1, 2, 5, 10].reduce((best, each) => (Math.abs(Math.log((each * power) / step)) < Math.abs(Math.log((best * power) / step)) ? each : best));
  return Number((times * power).toPrecision(6));
}
