import {crackingLoad} from "../deck/beyondCracking.js";
import {cellOf, prestressAt} from "../deck/cell.js";
import {strengthShares} from "../deck/shares.js";
import {bearingStrengthKip, bearingWidthIn} from "../member/endBearing.js";
import {developedStressKsi, developmentShares, partlyDevelopedStrength} from "../member/development.js";
import {CONTACT_STRENGTH_PSI, contactDepthIn, horizontalShearKip} from "../member/horizontalShear.js";
import {CRACKING_MARGIN, crackingMomentKipIn} from "../member/minimumStrength.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {SHEAR_PHI} from "../member/shear.js";
import {nearestShearShare, weakestShear} from "../member/shearPlace.js";
import {memberStrength} from "../member/strength.js";
import {transferLengthIn} from "../member/transfer.js";
import {ruptureModulusKsi} from "../materials/concrete.js";
import {IN_PER_FT} from "../units.js";
import {UNIT_MOMENT, common, unfactored, type LimitCase} from "./limitSteps.js";
import {shearSteps} from "../member/shearSteps.js";
import {given, type Step} from "../step.js";
import {strengthSteps} from "../member/strengthSteps.js";

/** Bending: the strength where the moment comes nearest to it. */
export function strengthLimit(limit: LimitCase): Step[] {
  const {state, strength} = weakest(limit, strengthShares(limit.member));
  const {step, factoredPsf} = momentLoad(limit, strength.designMomentKipIn, state.share);
  return [...strengthSteps(limit.member, state, strength), step, unfactored(limit, factoredPsf)];
}

/** Twice the factored moment is asked of a member that would break soon after it cracks. */
export function minimumStrengthLimit(limit: LimitCase): Step[] {
  const {member, spanFt} = limit;
  const {section, full} = member;
  const {state, strength} = weakest(limit, strengthShares(member));
  const {share, psf: crackingPsf} = crackingLoad(cellOf(member, spanFt, limit.criteria));
  const cracked = prestressState(member, spanFt, share, limit.criteria.superimposedDeadPsf * member.widthFt);
  const cracking: Step = {
    symbol: "M_cr", label: "moment that cracks the soffit", expression: "M_o + S_bf * (f_r + f_pe - M_o / S_b)",
    values: {
      M_o: given(uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, spanFt, share), "kip-in", "moment of member and topping"),
      S_b: given(section.sbIn3, "in3", "modulus of the member"), S_bf: given(full.sbIn3, "in3", "modulus of the full section"),
      f_r: given(ruptureModulusKsi(member.concrete), "ksi", "rupture modulus"),
      f_pe: given(cracked.effectiveForceKip * (1 / section.areaIn2 + cracked.eccentricityIn / section.sbIn3), "ksi", "compression in the soffit from the strands"),
    },
    result: crackingMomentKipIn(member, spanFt, cracked), unit: "kip-in", source: "ACI 318-19 24.2.3.9",
  };
  const {b, L, s} = common(limit, share);
  const cracks: Step = {
    symbol: "w_cr", label: "load that cracks the soffit, own weight included", expression: `M_cr / ${UNIT_MOMENT}`,
    values: {M_cr: given(cracking.result, "kip-in", "moment that cracks the soffit"), b, L, s}, result: crackingPsf, unit: "psf", source: "statics",
    note: `Strength holds less than ${CRACKING_MARGIN} times as much, so half of what it holds counts.`,
  };
  const {step, factoredPsf} = momentLoad(limit, strength.designMomentKipIn, state.share, 2);
  return [cracking, cracks, step, unfactored(limit, factoredPsf)];
}

/** Bending near the ends, where bond bounds the strands' stress. */
export function developmentLimit(limit: LimitCase): Step[] {
  const {member, spanFt, criteria} = limit;
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  const fse = prestressState(member, spanFt, 0.5, deadPlf).losses.effectiveStressKsi;
  const developed = memberStrength(member, 0.5, fse);
  const places = developmentShares(member, spanFt, fse, developed).map((share) => {
    const state = prestressState(member, spanFt, share, deadPlf);
    return {state, strength: partlyDevelopedStrength(member, spanFt, state, developed)};
  });
  const {state, strength} = places.reduce((least, place) => (ratio(place) < ratio(least) ? place : least));
  const {diameterIn} = member.layout.strand;
  const {effectiveStressKsi} = state.losses;
  const distanceIn = Math.min(state.share, 1 - state.share) * spanFt * IN_PER_FT;
  const within = distanceIn < transferLengthIn(effectiveStressKsi, diameterIn);
  const {L, s} = common(limit, state.share);
  const f_se = given(effectiveStressKsi, "ksi", "effective prestress");
  const d_b = given(diameterIn, "in", "strand diameter");
  const reach: Step = {
    symbol: "f_d", label: "stress that bond can develop there",
    expression: within ? "f_se * 12 * L * s / (f_se / 3 * d_b)" : "f_se + (12 * L * s - f_se / 3 * d_b) / d_b",
    values: {f_se, L, s, d_b}, result: developedStressKsi(distanceIn, effectiveStressKsi, diameterIn), unit: "ksi", source: "ACI 318-19 25.4.8",
  };
  const {step, factoredPsf} = momentLoad(limit, strength.designMomentKipIn, state.share);
  return [reach, step, unfactored(limit, factoredPsf)];
}

/** The webs, with the stirrups that stems may have, where the load comes nearest to what they may carry. */
export function shearLimit(limit: LimitCase): Step[] {
  const {member, spanFt, criteria} = limit;
  const {state, strength, designKip} = weakestShear(member, spanFt, nearestShearShare(member, spanFt), cellOf(member, spanFt, criteria), prestressAt);
  return [...shearSteps(member, spanFt, state, strength), ...endLoad(limit, designKip, "V_d", "what webs may carry", state.share)];
}

/** The rough face between member and topping. */
export function contactLimit(limit: LimitCase): Step[] {
  const {member, spanFt} = limit;
  const capacityKip = horizontalShearKip(member) as number;
  const share = nearestShearShare(member, spanFt);
  const strength: Step = {
    symbol: "V_h", label: "shear that the interface can transfer", expression: `${SHEAR_PHI} * ${CONTACT_STRENGTH_PSI} * b_v * d / 1000`,
    values: {b_v: given(member.topping?.widthIn ?? 0, "in", "width of the interface"), d: given(contactDepthIn(member), "in", "depth to the strands, at least 0.8 h")},
    result: capacityKip, unit: "kip", source: "ACI 318-19 16.4.4.2",
  };
  return [strength, ...endLoad(limit, capacityKip, "V_h", "what the interface can transfer", share)];
}

/** The concrete of an end on its seat. */
export function bearingLimit(limit: LimitCase): Step[] {
  const {member, criteria} = limit;
  const capacityKip = bearingStrengthKip(member, criteria.seatIn);
  const strength: Step = {
    symbol: "B", label: "reaction that one end can take", expression: "0.65 * 0.85 * f_cprime * b_w * l_s / 1000",
    values: {
      f_cprime: given(member.concrete.strengthPsi, "psi", "concrete strength"), b_w: given(bearingWidthIn(member), "in", "width that bears on the seat"),
      l_s: given(criteria.seatIn, "in", "length of the seat"),
    },
    result: capacityKip, unit: "kip", source: "ACI 318-19 22.8.3.2",
  };
  return [strength, ...endLoad(limit, capacityKip, "B", "reaction that one end can take", 0)];
}

type Place = {readonly state: PrestressState; readonly strength: ReturnType<typeof memberStrength>};

const ratio = ({state, strength}: Place) => strength.designMomentKipIn / (state.share * (1 - state.share));

/** The place where the moment of a uniform load comes nearest to the strength. */
function weakest({member, spanFt, criteria}: LimitCase, shares: readonly number[]): Place {
  const places = shares.map((share): Place => {
    const state = prestressState(member, spanFt, share, criteria.superimposedDeadPsf * member.widthFt);
    return {state, strength: memberStrength(member, share, state.losses.effectiveStressKsi)};
  });
  return places.reduce((least, place) => (ratio(place) < ratio(least) ? place : least));
}

/** The factored load whose moment is the strength at a place, or a part of it. */
function momentLoad(limit: LimitCase, designMomentKipIn: number, share: number, over = 1): {step: Step; factoredPsf: number} {
  const {b, L, s} = common(limit, share);
  const factoredPsf = designMomentKipIn / over / (uniformMomentKipIn(1, limit.spanFt, share) * limit.member.widthFt);
  return {
    factoredPsf,
    step: {
      symbol: "w_n", label: "factored load that the strength holds", expression: over === 1 ? `M_d / ${UNIT_MOMENT}` : `M_d / ${over} / ${UNIT_MOMENT}`,
      values: {M_d: given(designMomentKipIn, "kip-in", "design strength"), b, L, s}, result: factoredPsf, unit: "psf", source: "statics",
    },
  };
}

/** The factored load whose shear at a place, or reaction, is a strength; and the superimposed load within it. */
function endLoad(limit: LimitCase, capacityKip: number, symbol: string, label: string, share: number): Step[] {
  const {b, L, s} = common(limit, share);
  const factoredPsf = (capacityKip * 1000) / (limit.spanFt * (0.5 - share) * limit.member.widthFt);
  const place: Step["values"] = share > 0 ? {s} : {};
  return [
    {
      symbol: "w_n", label: "factored load that the strength holds", expression: `1000 * ${symbol} / (L * ${share > 0 ? "(0.5 - s)" : "0.5"} * b)`,
      values: {[symbol]: given(capacityKip, "kip", label), L, b, ...place}, result: factoredPsf, unit: "psf", source: "statics",
    },
    unfactored(limit, factoredPsf),
  ];
}
