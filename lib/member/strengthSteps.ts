import {STRAND_MODULUS_KSI, strandStressKsi} from "../materials/strand.js";
import {given, type Step, type StepValue} from "../step.js";
import {compressionMomentKipIn} from "./compressionZone.js";
import {strainAt, type FlexuralStrength} from "./flexure.js";
import type {Member} from "./member.js";
import type {PrestressState} from "./prestressState.js";
import {decompressionStrain, strandLayers} from "./strength.js";

/** Strength in bending by strain compatibility at one place, row of strands by row. */
export function strengthSteps(member: Member, state: PrestressState, strength: FlexuralStrength): Step[] {
  const {effectiveStressKsi} = state.losses;
  const layers = strandLayers(member, state.share, effectiveStressKsi);
  const c = given(strength.neutralAxisIn, "in", "neutral axis depth");
  const before = layers[0]?.strainBefore ?? 0;
  const decompression = decompressionStrain(member, state.share, effectiveStressKsi);
  const steps: Step[] = [{
    symbol: "epsilon_1", label: "strain in the strands before the load", expression: "f_se / E_ps + epsilon_ce",
    values: {
      f_se: given(effectiveStressKsi, "ksi", "effective prestress"), E_ps: given(STRAND_MODULUS_KSI, "ksi", "modulus of the strand"),
      epsilon_ce: given(decompression, "", "concrete's own strain at the strands"),
    },
    result: before, unit: "", source: "ACI 318-19 22.3.2",
  }];
  const forces: Record<string, StepValue> = {};
  const arms: Record<string, StepValue> = {};
  layers.forEach((layer, index) => {
    const n = index + 1;
    const strain = strainAt(layer, strength.neutralAxisIn);
    const stress = strandStressKsi(strain);
    steps.push(
      {
        symbol: `epsilon_ps${n}`, label: `strain of row ${n}`, expression: `epsilon_1 + 0.003 * (d_${n} - c) / c`,
        values: {epsilon_1: given(before, "", "strain before the load"), [`d_${n}`]: given(layer.depthIn, "in", "depth of the row"), c},
        result: strain, unit: "", source: "ACI 318-19 22.2.1, 22.2.2.1",
        note: index === 0 ? "c is found by trial, so that the compression in the concrete equals the tension in the strands." : undefined,
      },
      {
        symbol: `f_ps${n}`, label: `stress of row ${n}`, ...curveAt(strain, stress, n),
        result: stress, unit: "ksi", source: "trade handbook's strand curve",
      },
    );
    forces[`A_${n}`] = arms[`A_${n}`] = given(layer.areaIn2, "in2", `area of row ${n}`);
    forces[`f_ps${n}`] = arms[`f_ps${n}`] = given(stress, "ksi", `stress of row ${n}`);
    arms[`d_${n}`] = given(layer.depthIn, "in", `depth of row ${n}`);
  });
  const pull = layers.map((_, i) => `A_${i + 1} * f_ps${i + 1}`).join(" + ");
  const arm = layers.map((_, i) => `A_${i + 1} * f_ps${i + 1} * d_${i + 1}`).join(" + ");
  steps.push(
    {symbol: "T", label: "tension in the strands, equal to the compression in the concrete", expression: pull, values: forces, result: strength.compressionKip, unit: "kip", source: "equilibrium"},
    {
      symbol: "M_n", label: "nominal strength", expression: `${arm} - M_C`,
      values: {...arms, M_C: given(compressionMomentKipIn(member.compression, strength.neutralAxisIn), "kip-in", "moment of the concrete compression about the top")},
      result: strength.nominalMomentKipIn, unit: "kip-in", source: "ACI 318-19 22.2.2.4",
    },
    {
      symbol: "epsilon_t", label: "net tensile strain of the lowest row", expression: "0.003 * (d_t - c) / c",
      values: {d_t: given(Math.max(...layers.map((layer) => layer.depthIn)), "in", "depth of the lowest row"), c},
      result: strength.tensileStrain, unit: "", source: "ACI 318-19 21.2.2",
    },
    {
      symbol: "phi", label: "strength reduction factor", expression: "0.65 + 0.25 * max(0, min(1, (epsilon_t - 0.002) / 0.003))",
      values: {epsilon_t: given(strength.tensileStrain, "", "net tensile strain")},
      result: strength.phi, unit: "", source: "ACI 318-19 Table 21.2.2",
    },
    {
      symbol: "M_d", label: "design strength", expression: "phi * M_n",
      values: {phi: given(strength.phi, "", "strength reduction factor"), M_n: given(strength.nominalMomentKipIn, "kip-in", "nominal strength")},
      result: strength.designMomentKipIn, unit: "kip-in", source: "ACI 318-19 21.2",
    },
  );
  return steps;
}

/** The piece of the strand curve that a strain falls on. */
function curveAt(strain: number, stress: number, n: number): Pick<Step, "expression" | "values" | "note"> {
  const values = {[`epsilon_ps${n}`]: given(strain, "", `strain of row ${n}`)};
  if (strain <= 0.0085) return {expression: `${STRAND_MODULUS_KSI} * epsilon_ps${n}`, values};
  if (stress > STRAND_MODULUS_KSI * 0.0085) return {expression: `270 - 0.04 / (epsilon_ps${n} - 0.007)`, values};
  return {expression: `${STRAND_MODULUS_KSI} * 0.0085`, values: {}, note: "Between the two pieces of the curve the stress is held level."};
}
