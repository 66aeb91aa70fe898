import type {Evaluation} from "../evaluate.js";
import {given, type Working} from "./step.js";

/** The beam's depth from ledge, deck and upstand. */
export function beamDepthWorking({design, edgeBeam}: Evaluation): Working {
  return {title: "Depth of the edge beam", steps: [{
    symbol: "h", label: "depth of the beam", expression: "h_l + h_d + h_u",
    values: {
      h_l: given(design.edgeBeam.ledgeDepthIn, "in", "ledge"), h_d: given(edgeBeam.deckDepthIn, "in", "deck and topping"),
      h_u: given(design.edgeBeam.upstandIn, "in", "upstand"),
    },
    result: edgeBeam.depthIn, unit: "in", source: "geometry",
  }]};
}

/** The seat that is left on the ledge after joint and tolerance, and what is needed. */
export function seatWorking({design, edgeBeam, member}: Evaluation): Working {
  const {seat} = edgeBeam;
  return {title: "The deck's seat on the ledge", steps: [
    {
      symbol: "l_b", label: "deck on the ledge, after tolerances", expression: "p - g - t",
      values: {
        p: given(design.edgeBeam.ledgeProjectionIn, "in", "ledge projection"), g: given(design.edgeBeam.jointGapIn, "in", "joint"),
        t: given(seat.nominalIn - seat.afterToleranceIn, "in", "tolerance on length"),
      },
      result: seat.afterToleranceIn, unit: "in", source: "geometry",
    },
    {
      symbol: "l_n", label: "least bearing", expression: "max(12 * L / 180, l_o)",
      values: {L: given(design.bay.spanFt, "ft", "span of the deck"), l_o: given(member.shape.family === "double tee" ? 3 : 2, "in", "least for this kind of member")},
      result: seat.neededIn, unit: "in", source: "ACI 318-19 16.2.6.2",
    },
  ]};
}

/** Load, moment and shear of the beam. */
export function beamLoadsWorking({design, edgeBeam, loads, member}: Evaluation): Working {
  const {loads: on} = edgeBeam;
  const b = given(on.tributaryWidthFt, "ft", "width of floor carried: half the deck's span");
  const l = given(edgeBeam.spanFt, "ft", "span of the beam");
  return {title: "Load and demand on the edge beam", steps: [
    {
      symbol: "w_D", label: "dead load", expression: "(w_o + w_sd) * b + w_b + w_c",
      values: {
        w_o: given((member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt, "psf", "deck and topping"),
        w_sd: given(loads.superimposedDeadPsf, "psf", "superimposed dead load"), b,
        w_b: given(on.selfPlf, "plf", "the beam itself"), w_c: given(design.edgeBeam.claddingPlf, "plf", "cladding and glass"),
      },
      result: on.deadPlf, unit: "plf", source: "sum",
    },
    {
      symbol: "w_L", label: "live load", expression: "L * b",
      values: {L: given(on.load.governing.totalPsf, "psf", "reduced live load of the beam"), b},
      result: on.livePlf, unit: "plf", source: "ASCE 7-16 4.7",
    },
    {
      symbol: "w_u", label: "factored load", expression: "max(1.4 * w_D, 1.2 * w_D + 1.6 * w_L)",
      values: {w_D: given(on.deadPlf, "plf", "dead load"), w_L: given(on.livePlf, "plf", "live load")},
      result: on.factoredPlf, unit: "plf", source: "ASCE 7-16 2.3.1",
    },
    {
      symbol: "M_u", label: "factored moment", expression: "w_u * L^2 / 8 * 12 / 1000",
      values: {w_u: given(on.factoredPlf, "plf", "factored load"), L: l}, result: edgeBeam.momentKipIn, unit: "kip-in", source: "statics",
    },
    {
      symbol: "V_u", label: "factored shear at the support", expression: "w_u * L / 2 / 1000",
      values: {w_u: given(on.factoredPlf, "plf", "factored load"), L: l},
      result: edgeBeam.shearKip, unit: "kip", source: "ACI 318-19 9.4.3.2",
      note: "The load hangs on the ledge near the bottom, so the stretch beside the support is not spared.",
    },
  ]};
}

/** Strength of the beam with its bars. */
export function beamStrengthWorking({design, edgeBeam}: Evaluation): Working {
  const {bars, strength} = edgeBeam;
  return {title: "Bars in the edge beam", steps: [
    {
      symbol: "A_s", label: "steel in the bottom", expression: "n * A_b",
      values: {n: given(bars.count, "", "bars"), A_b: given(bars.bar.areaIn2, "in2", `area of one ${bars.bar.size}`)},
      result: bars.areaIn2, unit: "in2", source: "ASTM A615",
    },
    {
      symbol: "A_smin", label: "least steel", expression: "max(3 * sqrt(f_cprime), 200) / 60000 * b_w * d",
      values: {
        f_cprime: given(design.edgeBeam.strengthPsi, "psi", "concrete strength"), b_w: given(design.edgeBeam.webWidthIn, "in", "web width"),
        d: given(edgeBeam.effectiveDepthIn, "in", "effective depth"),
      },
      result: edgeBeam.leastSteelIn2, unit: "in2", source: "ACI 318-19 9.6.1.2",
    },
    {
      symbol: "M_d", label: "design strength, against the factored moment", expression: "phi * M_n",
      values: {phi: given(strength.phi, "", "strength reduction factor"), M_n: given(strength.nominalMomentKipIn, "kip-in", "nominal strength by strain compatibility")},
      result: strength.designMomentKipIn, unit: "kip-in", source: "ACI 318-19 22.3, 21.2.2",
    },
    {
      symbol: "phi_Vc", label: "shear that the concrete carries", expression: "0.75 * 2 * sqrt(f_cprime) * b_w * d / 1000",
      values: {
        f_cprime: given(design.edgeBeam.strengthPsi, "psi", "concrete strength"), b_w: given(design.edgeBeam.webWidthIn, "in", "web width"),
        d: given(edgeBeam.effectiveDepthIn, "in", "effective depth"),
      },
      result: edgeBeam.concreteShearKip, unit: "kip", source: "ACI 318-19 Table 22.5.5.1(a)",
    },
  ]};
}

/** The twist that the ledge brings, against the twist that may be left out. */
export function torsionWorking({design, edgeBeam}: Evaluation): Working {
  const {loads: on} = edgeBeam;
  const perimeterIn = 2 * (edgeBeam.shape.widthIn + edgeBeam.depthIn);
  return {title: "Twist of the edge beam", steps: [
    {
      symbol: "e", label: "load on the ledge to the web's centre line", expression: "b_w / 2 + g + l_b / 2",
      values: {
        b_w: given(design.edgeBeam.webWidthIn, "in", "web width"), g: given(design.edgeBeam.jointGapIn, "in", "joint"),
        l_b: given(edgeBeam.seat.nominalIn, "in", "deck on the ledge"),
      },
      result: edgeBeam.eccentricityIn, unit: "in", source: "geometry",
    },
    {
      symbol: "T_u", label: "factored twist at the support", expression: "w_u * L / 2 / 1000 * e",
      values: {
        w_u: given(on.factoredLedgePlf, "plf", "factored load on the ledge"), L: given(edgeBeam.spanFt, "ft", "span of the beam"),
        e: given(edgeBeam.eccentricityIn, "in", "eccentricity"),
      },
      result: edgeBeam.torsionKipIn, unit: "kip-in", source: "statics",
    },
    {
      symbol: "T_th", label: "twist that may be left out", expression: "0.75 * sqrt(f_cprime) / 1000 * A_cp^2 / p_cp",
      values: {
        f_cprime: given(design.edgeBeam.strengthPsi, "psi", "concrete strength"), A_cp: given(edgeBeam.section.areaIn2, "in2", "area of the outline"),
        p_cp: given(perimeterIn, "in", "length of the outline"),
      },
      result: edgeBeam.torsionThresholdKipIn, unit: "kip-in", source: "ACI 318-19 22.7.4.1",
    },
  ]};
}
