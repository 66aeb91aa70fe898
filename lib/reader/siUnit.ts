import {SI} from "../units.js";

/** A US unit in SI, as a text is written. */
export interface TextUnit {
  /** How the SI unit is written. */
  readonly si: string;
  /** SI value of one of the US unit. */
  readonly factor: number;
  /** Decimals that a whole number of the US unit can justify in SI, at the most. */
  readonly places: number;
}

const of = (unit: string): number => {
  const row = SI[unit];
  if (!row) throw new RangeError(`no SI equivalent of ${unit}`);
  return row.factor;
};
const M = of("ft");
const MM = of("in");
const KN = of("kip");
/** Kilograms in a pound: exact by definition. */
const KG = 0.45359237;
/** Pascals in an inch of water; a friction rate is one over 100 ft of duct. */
export const PA_IN_WATER = 249.089;
const M2 = M * M;
const M3 = M2 * M;

const unit = (si: string, factor: number, places: number): TextUnit => ({si, factor, places});

/**
 * US units by how texts write them, in lower case without spaces, `2` and `3` for raised figures; words are in
 * `unitWords.ts`. A pound that stands over an area or a volume is a mass (strand by floor area, a material's density) where the
 * trade writes `lb`, and a load where it writes `psf`.
 */
export const TEXT_UNITS: Readonly<Record<string, TextUnit>> = {
  "ft": unit("m", M, 2),
  "in": unit("mm", MM, 0),
  "yd": unit("m", 3 * M, 1),
  "in2": unit("mm\u00b2", MM ** 2, 0),
  "ft2": unit("m\u00b2", M2, 1),
  "yd2": unit("m\u00b2", 9 * M2, 1),
  "in3": unit("mm\u00b3", MM ** 3, 0),
  "ft3": unit("m\u00b3", M3, 2),
  "yd3": unit("m\u00b3", 27 * M3, 2),
  "in4": unit("mm\u2074", MM ** 4, 0),
  "lb": unit("kN", KN / 1000, 4),
  "kip": unit("kN", KN, 2),
  "ton": unit("t", 2 * KG, 2),
  "psf": unit("kPa", of("psf"), 2),
  "ksf": unit("kPa", 1000 * of("psf"), 0),
  "plf": unit("kN/m", of("plf"), 2),
  "klf": unit("kN/m", 1000 * of("plf"), 1),
  "in/100ft": unit("Pa/m", PA_IN_WATER / (100 * M), 2),
  "lb/in": unit("kN/m", 12 * of("plf"), 2),
  "kip/in": unit("kN/m", 12000 * of("plf"), 0),
  "psi": unit("MPa", of("psi"), 3),
  "ksi": unit("MPa", of("ksi"), 0),
  "psf/ft": unit("kPa/m", of("psf") / M, 2),
  "lb/in3": unit("MN/m\u00b3", (KN / 1000 / MM ** 3) * 1e6, 1),
  "kip-ft": unit("kN\u00b7m", of("kip-ft"), 1),
  "kip-in": unit("kN\u00b7m", of("kip-in"), 2),
  "lb-ft": unit("kN\u00b7m", of("kip-ft") / 1000, 3),
  "lb-in": unit("kN\u00b7m", of("kip-in") / 1000, 4),
  "kip-ft/ft": unit("kN\u00b7m/m", KN, 1),
  "kip-in/ft": unit("kN\u00b7m/m", KN / 12, 1),
  "kip-in/in": unit("kN\u00b7m/m", KN, 1),
  "pcf": unit("kg/m\u00b3", of("pcf"), 0),
  "lb/yd3": unit("kg/m\u00b3", KG / (27 * M3), 1),
  "lb/ft2": unit("kg/m\u00b2", KG / M2, 2),
  "cfm": unit("L/s", (1000 * M3) / 60, 1),
  "cfm/ft2": unit("L/s per m\u00b2", (1000 * M3) / 60 / M2, 2),
  "ft/min": unit("m/s", M / 60, 2),
  "ft/s": unit("m/s", M, 2),
  "ft/s2": unit("m/s\u00b2", M, 2),
  "in/s2": unit("mm/s\u00b2", MM, 0),
  "mph": unit("km/h", 1.609344, 0),
  "in/h": unit("mm/h", MM, 0),
  "in/ft": unit("mm/m", MM / M, 1),
  "in2/ft": unit("mm\u00b2/m", MM ** 2 / M, 0),
  "in2/in": unit("mm\u00b2/m", (MM ** 2 / MM) * 1000, 0),
  "ft2/ft2": unit("m\u00b2/m\u00b2", 1, 2),
  "ft3/ft2": unit("m\u00b3/m\u00b2", M, 3),
  "kg/ft2": unit("kg/m\u00b2", 1 / M2, 1),
  "kg/yd3": unit("kg/m\u00b3", 1 / (27 * M3), 1),
  "kgco2e/ft2": unit("kg CO\u2082e/m\u00b2", 1 / M2, 1),
  "kgco2e/yd3": unit("kg CO\u2082e/m\u00b3", 1 / (27 * M3), 1),
  "$/ft2": unit("$/m\u00b2", 1 / M2, 1),
  "$/ft": unit("$/m", 1 / M, 1),
  "1/ft2": unit("1/m\u00b2", 1 / M2, 2),
  "1/ft": unit("1/m", 1 / M, 2),
  "1/in": unit("1/mm", 1 / MM, 4),
};

/** Other spellings of the units of {@link TEXT_UNITS}, each as it stands there. */
export const SPELLED: Readonly<Record<string, string>> = {
  "foot": "ft", "feet": "ft", "inch": "in", "inches": "in", "yard": "yd", "yards": "yd",
  "sqft": "ft2", "squarefoot": "ft2", "squarefeet": "ft2", "sqin": "in2", "squareinch": "in2", "squareinches": "in2", "squareyard": "yd2", "squareyards": "yd2",
  "cubicfoot": "ft3", "cubicfeet": "ft3", "cubicyard": "yd3", "cubicyards": "yd3", "cubicinch": "in3", "cubicinches": "in3", "cuyd": "yd3",
  "lbs": "lb", "lbf": "lb", "pound": "lb", "pounds": "lb", "kips": "kip", "k": "kip", "tons": "ton",
  "poundspersquarefoot": "psf", "poundpersquarefoot": "psf", "poundsasquarefoot": "psf", "poundsonasquarefoot": "psf", "poundsoneachsquarefoot": "psf", "kipspersquarefoot": "ksf", "kippersquarefoot": "ksf",
  "kip/ft2": "ksf", "lb/ft": "plf", "lbperft": "plf", "lbperfoot": "plf", "poundsperfoot": "plf", "poundperfoot": "plf", "kip/ft": "klf", "kips/ft": "klf", "kipperfoot": "klf", "kipsperfoot": "klf", "kipperft": "klf",
  "lbperinch": "lb/in", "poundsperinch": "lb/in", "kipperinch": "kip/in", "kipsperinch": "kip/in", "poundspersquareinch": "psi", "pci": "lb/in3",
  "ft-kip": "kip-ft", "ft-kips": "kip-ft", "kip-feet": "kip-ft", "kips-ft": "kip-ft", "kip\u00b7ft": "kip-ft", "kip\u00b7in": "kip-in", "kip-inches": "kip-in", "ft-lb": "lb-ft", "in-lb": "lb-in",
  "kip-ftperfoot": "kip-ft/ft", "kip-ftperft": "kip-ft/ft", "kip-inperft": "kip-in/ft", "kip-inperfoot": "kip-in/ft",
  "lb/ft3": "pcf", "lbpercubicfoot": "pcf", "poundspercubicfoot": "pcf", "lbpercubicyard": "lb/yd3", "poundspercubicyard": "lb/yd3", "lbpersquarefoot": "lb/ft2",
  "ft3/min": "cfm", "cubicfeetaminute": "cfm", "cubicfeetperminute": "cfm", "cfmpersquarefoot": "cfm/ft2", "cfmperft2": "cfm/ft2", "fpm": "ft/min", "feetperminute": "ft/min", "feetaminute": "ft/min", "ftperminute": "ft/min",
  "feetpersecond": "ft/s", "miles/h": "mph", "milesperhour": "mph", "in/hr": "in/h", "inanhour": "in/h", "inperhour": "in/h", "inchesanhour": "in/h", "inchesperhour": "in/h",
  "inperfoot": "in/ft", "inchperfoot": "in/ft", "inchesperfoot": "in/ft", "inperft": "in/ft",
  "in2perfoot": "in2/ft", "in2perft": "in2/ft", "squareinchesperfoot": "in2/ft", "squareinchperfoot": "in2/ft", "in2perinch": "in2/in", "in2perin": "in2/in",
  "kgpersquarefoot": "kg/ft2", "kgperft2": "kg/ft2", "kgco2epersquarefoot": "kgco2e/ft2", "kgco2eperft2": "kgco2e/ft2", "kgpercubicyard": "kg/yd3", "kgco2epercubicyard": "kgco2e/yd3",
  "perft2": "1/ft2", "/ft": "1/ft", "/in": "1/in",
};

/** The unit that a text names; undefined where it names none of the US units. */
export function textUnit(words: string): TextUnit | undefined {
  const plain = words.toLowerCase().replace(/\u00b2|\^2/g, "2").replace(/\u00b3|\^3/g, "3").replace(/\u2074|\^4/g, "4").replace(/\u2082/g, "2").replace(/[\s.]/g, "");
  for (const name of [plain, plain.replace(/^-/, "")]) {
    const key = Object.hasOwn(SPELLED, name) ? (SPELLED[name] as string) : name;
    if (Object.hasOwn(TEXT_UNITS, key)) return TEXT_UNITS[key];
  }
  return undefined;
}
