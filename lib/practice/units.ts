import {SI} from "../units.js";

/** What a unit measures. */
type Dimension =
  | "number" | "share" | "length" | "area" | "volume" | "force" | "load per length" | "load per area" | "moment" | "moment of inertia" | "unit weight" | "air flow" | "velocity"
  | "slope" | "time" | "frequency" | "carbon" | "carbon per area" | "angle";

/** A unit that an answer may be typed in. */
export interface AnswerUnit {
  readonly id: string;
  readonly dimension: Dimension;
  /** How much of its dimension's base it is; bases are SI. */
  readonly factor: number;
  /** How people write it, in lower case without spaces, besides its id. */
  readonly spellings: readonly string[];
}

const factorOf = (unit: string): number => {
  const row = SI[unit];
  if (!row) throw new RangeError(`no SI equivalent of ${unit}`);
  return row.factor;
};

const unit = (id: string, dimension: Dimension, factor: number, ...spellings: string[]): AnswerUnit => ({id, dimension, factor, spellings});

/** Weight of a cubic meter of what has a mass of 1 kg/m3, kN. */
const KN_PER_KG = 9.80665e-3;
const M = factorOf("ft");
const KN = factorOf("kip");

/** Every unit that an answer is read in. Lengths in m, forces in kN, moments in kN m, loads in kN/m and kPa (stresses are loads per area as well). */
const UNITS: readonly AnswerUnit[] = [
  unit("", "number", 1),
  unit("%", "share", 0.01, "percent", "pct"),
  unit("ft", "length", M, "foot", "feet", "'"),
  unit("in", "length", M / 12, "inch", "inches", "\""),
  unit("m", "length", 1, "meter", "meters", "metre", "metres"),
  unit("cm", "length", 0.01),
  unit("mm", "length", 0.001),
  unit("ft2", "area", M ** 2, "sqft", "sf", "squarefeet"),
  unit("in2", "area", (M / 12) ** 2, "sqin", "squareinches"),
  unit("m2", "area", 1, "sqm"),
  unit("mm2", "area", 1e-6),
  unit("yd3", "volume", (3 * M) ** 3, "cuyd", "cy", "cubicyards"),
  unit("ft3", "volume", M ** 3, "cuft", "cf", "cubicfeet"),
  unit("in3", "volume", (M / 12) ** 3, "cuin"),
  unit("m3", "volume", 1),
  unit("mm3", "volume", 1e-9),
  unit("in4", "moment of inertia", (M / 12) ** 4),
  unit("mm4", "moment of inertia", 1e-12),
  unit("kip", "force", KN, "kips", "k"),
  unit("lb", "force", factorOf("lb"), "lbs", "lbf", "pound", "pounds", "#"),
  unit("ton", "force", 2 * KN, "tons"),
  unit("kN", "force", 1),
  unit("plf", "load per length", factorOf("plf"), "lb/ft", "lbs/ft", "lbf/ft", "poundsperfoot", "#/ft"),
  unit("klf", "load per length", 1000 * factorOf("plf"), "kip/ft", "kips/ft", "k/ft"),
  unit("kN/m", "load per length", 1),
  unit("psf", "load per area", factorOf("psf"), "lb/ft2", "lbs/ft2", "lbf/ft2", "lb/sqft", "poundspersquarefoot", "#/ft2"),
  unit("ksf", "load per area", 1000 * factorOf("psf"), "kip/ft2", "kips/ft2"),
  unit("psi", "load per area", 1000 * factorOf("psi"), "lb/in2", "lbs/in2"),
  unit("ksi", "load per area", 1000 * factorOf("ksi"), "kip/in2"),
  unit("kPa", "load per area", 1, "kn/m2"),
  unit("MPa", "load per area", 1000, "n/mm2"),
  unit("kip-ft", "moment", factorOf("kip-ft"), "kipft", "kips-ft", "k-ft", "kft", "ft-kip", "ft-kips", "ft-k"),
  unit("kip-in", "moment", factorOf("kip-in"), "kipin", "kips-in", "k-in", "kin", "in-kip"),
  unit("lb-ft", "moment", factorOf("kip-ft") / 1000, "lbft", "ft-lb", "ft-lbs", "lbs-ft"),
  unit("kN m", "moment", 1, "kn-m", "knm"),
  unit("pcf", "unit weight", factorOf("pcf") * KN_PER_KG, "lb/ft3", "lbs/ft3"),
  unit("kg/m3", "unit weight", KN_PER_KG),
  unit("kN/m3", "unit weight", 1),
  unit("cfm", "air flow", M ** 3 / 60, "ft3/min"),
  unit("m3/s", "air flow", 1),
  unit("L/s", "air flow", 0.001),
  unit("m3/h", "air flow", 1 / 3600),
  unit("ft/min", "velocity", M / 60, "fpm", "feetperminute"),
  unit("m/s", "velocity", 1),
  unit("in/ft", "slope", 1 / 12),
  unit("ft/ft", "slope", 1),
  unit("h", "time", 3600, "hr", "hrs", "hour", "hours"),
  unit("min", "time", 60, "minute", "minutes"),
  unit("Hz", "frequency", 1),
  unit("deg", "angle", Math.PI / 180, "\u00b0", "degree", "degrees"),
  unit("kg", "carbon", 1, "kgco2e"),
  unit("t", "carbon", 1000, "tonne", "tonnes", "metricton", "metrictons"),
  unit("kg/ft2", "carbon per area", 1 / M ** 2, "kgco2e/ft2"),
  unit("kg/m2", "carbon per area", 1, "kgco2e/m2"),
];

const BY_NAME = new Map(UNITS.flatMap((each) => [each.id.toLowerCase().replace(/ /g, ""), ...each.spellings].map((name) => [name, each] as const)));

/** The unit that a text names, however it is written; undefined where none is known by it. */
export function unitNamed(text: string): AnswerUnit | undefined {
  const plain = text.toLowerCase().replace(/\u00b2|\^2/g, "2").replace(/\u00b3|\^3/g, "3").replace(/\u2074|\^4/g, "4").replace(/[\u00b7\u22c5*]/g, "-").replace(/\s*-\s*/g, "-").replace(/[\s.]/g, "");
  return BY_NAME.get(plain) ?? BY_NAME.get(plain.replace(/sq(?:uare)?(ft|in|m)/, "$12")) ?? BY_NAME.get(plain.replace(/-/g, ""));
}

/** The unit of a part. */
export function unitOf(id: string): AnswerUnit {
  const found = UNITS.find((each) => each.id === id);
  if (!found) throw new RangeError(`no unit ${id}`);
  return found;
}

/** A number of one unit in another of the same dimension. */
export function converted(value: number, from: AnswerUnit, to: AnswerUnit): number {
  return from.id === to.id ? value : (value * from.factor) / to.factor;
}

/** Units of one dimension, such as all lengths. */
export function unitsLike({dimension}: AnswerUnit): AnswerUnit[] {
  return UNITS.filter((each) => each.dimension === dimension);
}

/** What a unit measures, in words: "a load per foot". */
export function dimensionWords({dimension}: AnswerUnit): string {
  const words: Partial<Record<Dimension, string>> = {
    "number": "a pure number", "share": "a percentage", "load per length": "a load per foot of length", "load per area": "a load per square foot, or a stress",
  };
  return words[dimension] ?? `${/^[aeiou]/.test(dimension) ? "an" : "a"} ${dimension}`;
}
