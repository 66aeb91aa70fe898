import type {GirderResult} from "../girder/girder.js";
import {deckShearKipPerPlf, type GirderLoads} from "../girder/loads.js";
import type {Evaluation} from "../evaluate.js";
import {allowables} from "../member/allowables.js";
import {ownPsf} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {given, type Step, type StepValue, type Working} from "../step.js";
import {strengthSteps} from "../member/strengthSteps.js";

/** A working of the girder; without steps where the floor has none. */
function ofGirder(title: string, steps: (girder: GirderResult, evaluation: Evaluation) => Step[]): (evaluation: Evaluation) => Working {
  return (evaluation) => ({title, steps: evaluation.girder ? steps(evaluation.girder, evaluation) : []});
}

/** The girder's depth, and what of it hangs below the deck. */
export const girderDepthWorking = ofGirder("Depth of the girder", (girder, {design}): Step[] => [
  girder.kind === "inverted tee"
    ? {
      symbol: "h", label: "depth of the girder", expression: "h_l + h_d",
      values: {h_l: given(design.girder.ledgeDepthIn, "in", "ledge"), h_d: given(girder.deckDepthIn, "in", "deck and topping")},
      result: girder.depthIn, unit: "in", source: "geometry",
    }
    : {
      symbol: "h_b", label: "height under the deck that the girder takes", expression: "h",
      values: {h: given(design.girder.depthIn, "in", "depth of the girder")}, result: girder.belowDeckIn, unit: "in", source: "geometry",
    },
]);

/** Loads from both bays, and the factored moment and reaction. */
export const girderLoadsWorking = ofGirder("Load and demand on the girder", (girder, {loads, laid}): Step[] => {
  const {loads: on} = girder;
  const b = given(on.tributaryWidthFt, "ft", "width of floor carried: half a span on each side");
  const L = given(girder.spanFt, "ft", "span of the girder");
  const parts = {
    w_b: given(on.selfPlf, "plf", "the girder itself"), w_d: given(on.deckDeadPlf, "plf", "dead load of the deck"), w_l: given(on.livePlf, "plf", "live load"),
  };
  const both = (factor: string) => `max(1.4 * (w_b + ${factor} * w_d), 1.2 * (w_b + ${factor} * w_d) + 1.6 * ${factor} * w_l)`;
  const stems = "The stems act where they are; where they govern over the same load spread evenly, the deck's part grows by the factor r.";
  return [
    {
      symbol: "w_d", label: "dead load of the deck, both sides", expression: "(w_o + w_sd) * b",
      values: {
        w_o: given(ownPsf(laid), "psf", "deck, with the topping that fills its camber"),
        w_sd: given(loads.superimposedDeadPsf, "psf", "superimposed dead load"), b,
      },
      result: on.deckDeadPlf, unit: "plf", source: "sum",
    },
    {
      symbol: "w_l", label: "live load, both sides", expression: "L_i * b",
      values: {L_i: given(on.load.governing.totalPsf, "psf", "reduced live load of an interior beam"), b},
      result: on.livePlf, unit: "plf", source: "ASCE 7-16 4.7",
    },
    {
      symbol: "M_u", label: "factored moment", expression: `${both("r_m")} * L^2 / 8 * 12 / 1000`,
      values: {...parts, r_m: given(on.stems.momentFactor, "", "bending by stems over bending by an even load"), L},
      result: girder.momentKipIn, unit: "kip-in", source: "ASCE 7-16 2.3.1, statics", note: stems,
    },
    {
      symbol: "V_u", label: "factored reaction of one end", expression: `${both("r_v")} * L / 2 / 1000`,
      values: {...parts, r_v: given(on.stems.reactionFactor, "", "reaction by stems over reaction by an even load"), L},
      result: girder.reactionKip, unit: "kip", source: "ASCE 7-16 2.3.1, statics",
    },
  ];
});

/** Strength in bending by strain compatibility. */
export const girderStrengthWorking = ofGirder("The girder's strength in bending", (girder) => strengthSteps(girder.member, girder.midspan, girder.strength));

/** Soffit stress at midspan under full service load. */
export const girderServiceWorking = ofGirder("Tension in the girder's soffit", (girder, {design}): Step[] => {
  const {member, midspan, loads: on} = girder;
  const {section} = member;
  return [
    {
      symbol: "M_s", label: "moment under full service load", expression: "(w_b + r_m * (w_d + w_l)) * L^2 / 8 * 12 / 1000",
      values: {
        w_b: given(on.selfPlf, "plf", "the girder itself"), w_d: given(on.deckDeadPlf, "plf", "dead load of the deck"), w_l: given(on.livePlf, "plf", "live load"),
        r_m: given(on.stems.momentFactor, "", "bending by stems over bending by an even load"), L: given(girder.spanFt, "ft", "span of the girder"),
      },
      result: girder.serviceMomentKipIn, unit: "kip-in", source: "statics",
    },
    {
      symbol: "f_b", label: "stress in the soffit, compression positive", expression: "P / A + P * e / S_b - M_s / S_b",
      values: {
        P: given(midspan.effectiveForceKip, "kip", "prestress after losses"), A: given(section.areaIn2, "in2", "area"), e: given(midspan.eccentricityIn, "in", "strands below the centroid"),
        S_b: given(section.sbIn3, "in3", "section modulus at the soffit"), M_s: given(girder.serviceMomentKipIn, "kip-in", "service moment"),
      },
      result: girder.totalStresses.bottomKsi, unit: "ksi", source: "elastic theory",
    },
    {
      symbol: "f_t", label: "tension that its class allows", expression: `${design.criteria.tensionClass === "U" ? "7.5" : "12"} * sqrt(f_cprime) / 1000`,
      values: {f_cprime: given(design.girder.strengthPsi, "psi", "concrete strength")},
      result: allowables(member, design.criteria.tensionClass).serviceTensionKsi, unit: "ksi", source: "ACI 318-19 24.5.2.1",
    },
  ];
});

/** Shear where it comes nearest to what the girder carries. */
export const girderShearWorking = ofGirder("The girder's shear", ({member, shear}): Step[] => {
  const {strength, stirrups: most} = shear;
  return [
    {
      symbol: "V_c", label: "shear that the concrete carries", expression: "min(V_ci, V_cw)",
      values: {
        V_ci: given(strength.flexureShearKip, "kip", "flexure-shear strength: a bending crack that turns"), V_cw: given(strength.webShearKip, "kip", "web-shear strength: a crack in the web alone"),
      },
      result: strength.concreteKip, unit: "kip", source: "ACI 318-19 22.5.6.3", note: `Looked at ${(100 * shear.share).toFixed(0)} % of the span from the support, where shear comes nearest to its limit.`,
    },
    {
      symbol: "V_d", label: "shear that the section can carry with stirrups", expression: "0.75 * (V_c + 8 * sqrt(f_cprime) * b_w * d / 1000)",
      values: {
        V_c: given(strength.concreteKip, "kip", "shear that the concrete carries"), f_cprime: given(member.concrete.strengthPsi, "psi", "concrete strength"),
        b_w: given(member.shape.webWidthIn, "in", "web width"), d: given(strength.depthIn, "in", "depth for shear"),
      },
      result: shear.designKip, unit: "kip", source: "ACI 318-19 22.5.1.2",
    },
    {
      symbol: "A_v", label: "stirrups where shear asks most of them, per foot", expression: "12 * max(0, V_u / 0.75 - V_c) / (60 * d)",
      values: {
        V_u: given(most.factoredKip, "kip", "factored shear where it is worst"), V_c: given(most.strength.concreteKip, "kip", "shear that the concrete carries where it is worst"),
        d: given(most.strength.depthIn, "in", "depth for shear"),
      },
      result: most.forShearIn2PerFt, unit: "in2/ft", source: "ACI 318-19 22.5.8.5", note: `At ${(100 * most.share).toFixed(0)} % of the span from the support.`,
    },
  ];
});

/** Torsion by live load on one bay alone. */
export const girderTwistWorking = ofGirder("Torsion of the girder by one bay's load", (girder, {design}): Step[] => {
  const {loads: on, twist, seat, member} = girder;
  const {outline, negligibleKipIn} = twist.design;
  const tee = girder.kind === "inverted tee";
  const lever: {expression: string; values: Record<string, StepValue>} = tee
    ? {
      expression: "b_w / 2 + max(0.75 * p, (g + p) / 2)",
      values: {
        b_w: given(design.girder.webWidthIn, "in", "web width"), p: given(design.girder.ledgeProjectionIn, "in", "ledge projection"), g: given(design.edgeBeam.jointGapIn, "in", "joint"),
      },
    }
    : {
      expression: "max(0.75 * b_w / 2, (g / 2 + b_w / 2) / 2)",
      values: {b_w: given(design.girder.webWidthIn, "in", "girder width"), g: given(design.edgeBeam.jointGapIn, "in", "joint between the two decks")},
    };
  const endKip = deckShearKipPerPlf(on, girder.spanFt, 0);
  return [
    {symbol: "e", label: "one bay's load to the girder's center line", ...lever, result: seat.eccentricityIn, unit: "in", source: "PCI Design Handbook, 7th ed., ch. 5, examples (from memory)"},
    {
      symbol: "w_1", label: "live load of one bay", expression: "L_1 * b / 2",
      values: {L_1: given(on.oneBay.governing.totalPsf, "psf", "live load reduced for one bay"), b: given(on.tributaryWidthFt, "ft", "width of floor carried from both bays")},
      result: on.oneBayLivePlf, unit: "plf", source: "ASCE 7-16 4.7, 4.3.3",
    },
    {
      symbol: "T_u", label: "factored torsion at the support", expression: "1.6 * w_1 * k_e * e",
      values: {w_1: given(on.oneBayLivePlf, "plf", "live load of one bay"), k_e: given(endKip, "kip/plf", "shear at the support for each plf of deck"), e: given(seat.eccentricityIn, "in", "lever")},
      result: twist.torsionKipIn, unit: "kip-in", source: "statics",
    },
    {
      symbol: "T_th", label: "torsion that may be neglected", expression: "0.75 * min(100, sqrt(f_cprime)) / 1000 * A_cp^2 / p_cp",
      values: {
        f_cprime: given(member.concrete.strengthPsi, "psi", "concrete strength"), A_cp: given(outline.areaIn2, "in2", "area of the outline"), p_cp: given(outline.perimeterIn, "in", "length of the outline"),
      },
      result: negligibleKipIn, unit: "kip-in", source: "ACI 318-19 22.7.4.1", note: "At the support itself no prestress has built up yet.",
    },
  ];
});

/** Rise and fall of the girder. */
export const girderCamberWorking = ofGirder("Camber and movement of the girder", ({camber: c, member, loads: on, spanFt, midspan, live}): Step[] => [
  {
    symbol: "d_e", label: "camber when set", expression: "m_p * d_p + m_o * d_o",
    values: {
      m_p: given(c.multipliers.erectionPrestress, "", "growth of the strands' lift"), d_p: given(c.prestressIn, "in", "lift by the strands"),
      m_o: given(c.multipliers.erectionSelf, "", "growth of the own weight's sag"), d_o: given(c.selfIn, "in", "movement by own weight"),
    },
    result: c.erectionIn, unit: "in", source: "Martin 1977",
  },
  {
    symbol: "M_l", label: "live moment at midspan", expression: "r_m * w_l * L^2 / 8 * 12 / 1000",
    values: {r_m: given(on.stems.momentFactor, "", "bending by stems over bending by an even load"), w_l: given(on.livePlf, "plf", "live load"), L: given(spanFt, "ft", "span")},
    result: liveMoment(on, spanFt), unit: "kip-in", source: "statics",
  },
  {
    symbol: "d_l", label: "sag under live load", expression: "5 * M_l * (12 * L)^2 / (48 * E) * (u / I + (1 - u) / I_cr)",
    values: {
      M_l: given(liveMoment(on, spanFt), "kip-in", "live moment"), L: given(spanFt, "ft", "span"), E: given(member.modulusKsi, "ksi", "modulus"),
      u: given(live.uncrackedShare, "", "share of the live load that the section takes before it cracks"), I: given(member.section.inertiaIn4, "in4", "second moment of the whole section"),
      I_cr: given(live.crackedInertiaIn4, "in4", "second moment of the cracked section"),
    },
    result: live.deflectionIn, unit: "in", source: "ACI 318-19 24.2.3.9", note: `Prestress after losses: ${midspan.losses.effectiveStressKsi.toFixed(0)} ksi.`,
  },
]);

function liveMoment(on: GirderLoads, spanFt: number): number {
  return on.stems.momentFactor * uniformMomentKipIn(on.livePlf, spanFt, 0.5);
}
