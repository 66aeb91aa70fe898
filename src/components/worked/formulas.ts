import type {Evaluation} from "../../lib/evaluate.js";
import {WORKINGS} from "../../lib/steps/workings.js";
import type {Step} from "../../lib/step.js";
import {symbolTex} from "../symbols.js";
import {mathMarkup} from "../worked.js";
import {parseExpression} from "./expression.js";
import {treeTex} from "./tex.js";

/** A formula in symbols, set as MathML: the same text that the worked steps show with numbers, so that the two cannot differ. */
export interface Formula {
  readonly label: string;
  readonly source: string;
  readonly symbol: string;
  /** The right-hand side, with its equals sign. */
  readonly value: string;
}

/** The workings whose formulas the methods page shows: all of a working's, or those of some of its symbols. */
const SHOWN = {
  section: undefined, losses: undefined, timeSteps: ["f_p0", "C_1", "epsilon_s1", "f_p1"],
  strength: ["epsilon_1", "epsilon_ps1", "epsilon_t", "phi"], shear: ["V_ci", "V_cw"], camber: ["d_p", "d_o", "d_2", "d_4"],
  roofFall: ["h", "A_d"], ponding: ["C_s", "m", "C"], topping: ["t_s", "V"], extraWeight: ["w_m", "C"], spread: ["s_E", "s_P", "s_t", "m_d"], seat: undefined, torsion: undefined,
  torsionDesign: undefined, ledgePunching: undefined, ledgeSteel: undefined, girderLoads: undefined, girderTwist: undefined, diaphragm: undefined,
  snow: undefined, snowDrift: ["h_d", "h_x", "w", "p_d"], rain: undefined,
  skyComponent: ["S_b", "SC"], averageDaylight: ["T", "DF"],
} as const satisfies Partial<Record<keyof typeof WORKINGS, readonly string[] | undefined>>;

/** Formulas of the methods page by the working they are from. */
export type Formulas = Readonly<Record<keyof typeof SHOWN, readonly Formula[]>>;

/** The formulas as the design with most of them has them: what a design leaves out, such as a topping, has formulas all the same. */
export function formulasOf(results: readonly Evaluation[]): Formulas {
  return Object.fromEntries(Object.entries(SHOWN).map(([name, symbols]) => {
    const each = results.map((result) => chosen(WORKINGS[name as keyof typeof SHOWN](result).steps, symbols));
    const fullest = each.reduce((most, steps) => (steps.length > most.length ? steps : most));
    return [name, fullest.map(formula)];
  })) as unknown as Formulas;
}

function chosen(steps: readonly Step[], symbols: readonly string[] | undefined): readonly Step[] {
  return symbols ? symbols.flatMap((symbol) => steps.filter((step) => step.symbol === symbol).slice(0, 1)) : steps;
}

function formula({label, source, symbol, expression}: Step): Formula {
  return {label, source, symbol: mathMarkup(symbolTex(symbol)), value: mathMarkup(`\\displaystyle = ${treeTex(parseExpression(expression))}`)};
}
