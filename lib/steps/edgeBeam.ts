import type {EdgeBeamSection} from "../edgeBeam/section.js";
import type {Evaluation} from "../evaluate.js";
import {ownPsf} from "../member/member.js";
import {given, type Step, type StepValue, type Working} from "../step.js";

/** The beam's depth from ledge, deck and upstand. */
export function beamDepthWorking({design, edgeBeam}: Pick<Evaluation, "design"> & {readonly edgeBeam: Pick<EdgeBeamSection, "kind" | "depthIn" | "deckDepthIn">}): Working {
  const below = edgeBeam.kind === "below";
  return {title: "Depth of the edge beam", steps: [{
    symbol: "h", label: "depth of the beam", expression: below ? "h_b" : "h_l + h_d + h_u",
    values: below
      ? {h_b: given(edgeBeam.depthIn, "in", "least depth, in steps of 2 in, at which strength and sag hold")}
      : {
        h_l: given(design.edgeBeam.ledgeDepthIn, "in", edgeBeam.kind === "ledge" ? "ledge" : "foot below the pockets"), h_d: given(edgeBeam.deckDepthIn, "in", "deck and topping"),
        h_u: given(design.edgeBeam.upstandIn, "in", "upstand"),
      },
    result: edgeBeam.depthIn, unit: "in", source: below ? "trial" : "geometry",
  }]};
}

/** The seat that is left on the ledge after joint and tolerances, and what is needed. */
export function seatWorking({design, edgeBeam, member}: Pick<Evaluation, "design" | "member"> & {readonly edgeBeam: Pick<EdgeBeamSection, "kind" | "reachIn" | "seat">}): Working {
  const {seat} = edgeBeam;
  const [length, place, sweep] = seat.losses.map(({lossIn}) => lossIn);
  return {title: "The deck's seat on the beam", steps: [
    {
      symbol: "l_b", label: "deck on the beam, after tolerances", expression: "p - g - (t_l + t_p + t_s)",
      values: {
        p: given(edgeBeam.reachIn, "in", {ledge: "ledge projection", pockets: "reach of a pocket into the web", below: "width of the beam's top"}[edgeBeam.kind]),
        g: given(design.edgeBeam.jointGapIn, "in", "joint"),
        t_l: given(length as number, "in", "tolerance on the deck's length"), t_p: given(place as number, "in", "tolerance on the bearing's place"),
        t_s: given(sweep as number, "in", "sweep of the beam"),
      },
      result: seat.afterToleranceIn, unit: "in", source: "geometry; PCI MNL-135-00 (from memory)",
    },
    {
      symbol: "l_n", label: "least length of bearing", expression: "max(12 * L / 180, l_o)",
      values: {L: given(design.bay.spanFt, "ft", "span of the deck"), l_o: given(member.shape.family === "double tee" ? 3 : 2, "in", "least bearing for this kind of member")},
      result: seat.neededIn, unit: "in", source: "ACI 318-19 16.2.6.2",
    },
  ]};
}

/** Load, moment and shear of the beam. */
export function beamLoadsWorking(evaluation: Evaluation): Working {
  const {edgeBeam, loads, laid} = evaluation;
  const {loads: on} = edgeBeam;
  const b = given(on.tributaryWidthFt, "ft", "width of floor carried: half the deck's span");
  return {title: "Load and demand on the edge beam", steps: [
    {
      symbol: "w_D", label: "dead load", expression: "(w_o + w_sd) * b + w_b + w_c",
      values: {
        w_o: given(ownPsf(laid), "psf", "deck, with the topping that fills its camber"),
        w_sd: given(loads.superimposedDeadPsf, "psf", "superimposed dead load"), b,
        w_b: given(on.selfPlf, "plf", "the beam itself"), w_c: given(on.claddingPlf, "plf", "cladding and glass"),
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
    ...momentSteps(evaluation), shearStep(evaluation),
  ]};
}

const DEEP_DOWN = "The deck loads the beam low down, so the stretch beside the support is not spared.";

/** The stems of the beam with the worse end, and the sum of their distances from it. */
export function stemsFromEnd({edgeBeam: {demand}}: Evaluation): {readonly count: number; readonly sumFt: number} {
  const {beam: {points, spanFt}, diagrams} = demand.end.stems;
  // Stryker disable next-line EqualityOperator: where both ends are alike, either is told
  const right = diagrams.rightKip > diagrams.leftKip;
  return {count: points.length, sumFt: points.reduce((sum, {atFt}) => sum + (right ? spanFt - atFt : atFt), 0)};
}

/** What one stem brings to the beam, whose live load is reduced for all that the beam carries. */
export function beamStem({edgeBeam: {demand}}: Evaluation): StepValue {
  return given(demand.end.stems.stemKip, "kip", "factored load of one stem, its live load reduced for all that the beam carries");
}

/** Moment where it is greatest, by the stems where they stand; of an even load at midspan. */
function momentSteps(evaluation: Evaluation): Step[] {
  const {edgeBeam: {demand: {bending}, loads: on, momentKipIn, spanFt}} = evaluation;
  const {beam: {points}, diagrams} = bending.stems;
  const L = given(spanFt, "ft", "span of the beam");
  if (points.length === 0) {
    return [{
      symbol: "M_u", label: "factored moment", expression: "w_u * L^2 / 8 * 12 / 1000", values: {w_u: given(on.factoredPlf, "plf", "factored load"), L},
      result: momentKipIn, unit: "kip-in", source: "statics",
    }];
  }
  const P_u = beamStem(evaluation);
  const w_o = given(on.factoredOwnPlf, "plf", "factored load of the beam itself and the cladding");
  const xFt = diagrams.greatestMomentAtFt;
  const before = points.filter(({atFt}) => atFt < xFt);
  return [
    {
      symbol: "R_u", label: `reaction at the left support of the beam that bends most, bay ${bending.bay}`, expression: "w_o * L / 2 / 1000 + P_u * (n - s / L)",
      values: {
        w_o, L, P_u, n: given(points.length, "", "stems on the span"),
        s: given(points.reduce((sum, {atFt}) => sum + atFt, 0), "ft", "sum of the stems' distances from the support"),
      },
      result: diagrams.leftKip, unit: "kip", source: "statics",
    },
    {
      symbol: "M_u", label: "factored moment where it is greatest", expression: "12 * (R_u * x - w_o * x^2 / 2000 - P_u * (n * x - s))",
      values: {
        R_u: given(diagrams.leftKip, "kip", "left reaction"), w_o, P_u, x: given(xFt, "ft", "place along the beam"),
        n: given(before.length, "", "stems before the place of the greatest moment"), s: given(before.reduce((sum, {atFt}) => sum + atFt, 0), "ft", "sum of the stems' distances from the support"),
      },
      result: momentKipIn, unit: "kip-in", source: "statics",
    },
  ];
}

/** Shear at the worse end, by the stems where they stand. */
function shearStep(evaluation: Evaluation): Step {
  const {edgeBeam: {demand, loads: on, shearKip, spanFt}} = evaluation;
  const L = given(spanFt, "ft", "span of the beam");
  if (demand.end.stems.beam.points.length === 0) {
    return {
      symbol: "V_u", label: "factored shear at the support", expression: "w_u * L / 2 / 1000", values: {w_u: given(on.factoredPlf, "plf", "factored load"), L},
      result: shearKip, unit: "kip", source: "ACI 318-19 9.4.3.2", note: DEEP_DOWN,
    };
  }
  const end = stemsFromEnd(evaluation);
  return {
    symbol: "V_u", label: `factored shear at the support of the worse end, bay ${demand.end.bay}`, expression: "w_o * L / 2 / 1000 + P_u * (n - s / L)",
    values: {
      w_o: given(on.factoredOwnPlf, "plf", "factored load of the beam itself and the cladding"), L, P_u: beamStem(evaluation),
      n: given(end.count, "", "stems on the span"), s: given(end.sumFt, "ft", "sum of the stems' distances from the support"),
    },
    result: shearKip, unit: "kip", source: "ACI 318-19 9.4.3.2", note: DEEP_DOWN,
  };
}

/** Strength of the beam with its steel. */
export function beamStrengthWorking({design, edgeBeam}: Evaluation): Working {
  const {bars, strands, strength} = edgeBeam;
  const f_cprime = given(design.edgeBeam.strengthPsi, "psi", "concrete strength");
  const d = given(edgeBeam.effectiveDepthIn, "in", "effective depth");
  const steel: Step[] = strands
    ? [{
      symbol: "A_ps", label: "strands in the bottom", expression: "n * A_b",
      values: {n: given(strands.member.layout.count, "", "strands in the bottom"), A_b: given(strands.member.layout.strand.areaIn2, "in2", "area of one strand")},
      result: strands.member.layout.areaIn2, unit: "in2", source: "ASTM A416",
    }]
    : [{
      symbol: "A_s", label: "steel in the bottom", expression: "n * A_b",
      values: {n: given(bars.count, "", "bars in the bottom"), A_b: given(bars.bar.areaIn2, "in2", `area of one ${bars.bar.size}`)},
      result: bars.areaIn2, unit: "in2", source: "ASTM A615",
    }, ...leastSteelSteps({design, edgeBeam})];
  return {title: "Steel for bending in the edge beam", steps: [
    ...steel,
    {
      symbol: "M_d", label: "design strength, against the factored moment", expression: "phi * M_n",
      values: {phi: given(strength.phi, "", "strength reduction factor"), M_n: given(strength.nominalMomentKipIn, "kip-in", "nominal strength by strain compatibility")},
      result: strength.designMomentKipIn, unit: "kip-in", source: "ACI 318-19 22.3, 21.2.2",
      ...(strands && bars.count > 0 ? {note: `${bars.count} ${bars.bar.size} bars besides the strands are counted with them.`} : {}),
    },
    {
      symbol: "phi_Vc", label: "shear that the concrete carries", expression: "0.75 * 2 * min(sqrt(f_cprime), 100) * b_n * d / 1000",
      values: {f_cprime, b_n: given(edgeBeam.netWebIn, "in", edgeBeam.kind === "pockets" ? "web behind a pocket" : "web width"), d},
      result: edgeBeam.concreteShearKip, unit: "kip", source: "ACI 318-19 Table 22.5.5.1(a)",
    },
  ]};
}

/** The minimum bars: against sudden breaking, or a third more than the moment needs. */
function leastSteelSteps({design, edgeBeam: {leastSteel, effectiveDepthIn, momentKipIn}}: Pick<Evaluation, "design" | "edgeBeam">): Step[] {
  const f_cprime = given(design.edgeBeam.strengthPsi, "psi", "concrete strength");
  const d = given(effectiveDepthIn, "in", "effective depth");
  const {crackingIn2, neededIn2, widthIn, areaIn2} = leastSteel;
  const least: Step = {
    symbol: "A_scr", label: "steel that keeps the beam from breaking as it cracks", expression: "max(3 * sqrt(f_cprime), 200) / 60000 * b * d",
    values: {f_cprime, b: given(widthIn, "in", "width in tension with its ledge, twice the web's at most"), d},
    result: crackingIn2, unit: "in2", source: "ACI 318-19 9.6.1.2",
  };
  if (neededIn2 === undefined) return [least];
  return [least, {
    symbol: "A_sreq", label: "steel that the moment needs", expression: "0.85 * f_cprime * b_w * d / 60000 * (1 - sqrt(1 - 2 * M_u / (0.9 * 0.85 * f_cprime / 1000 * b_w * d^2)))",
    values: {f_cprime, b_w: given(design.edgeBeam.webWidthIn, "in", "web width"), d, M_u: given(momentKipIn, "kip-in", "factored moment")},
    result: neededIn2, unit: "in2", source: "ACI 318-19 22.2",
  }, {
    symbol: "A_smin", label: "minimum steel", expression: "min(A_scr, 4 / 3 * A_sreq)",
    values: {A_scr: given(crackingIn2, "in2", "against sudden breaking"), A_sreq: given(neededIn2, "in2", "needed for the moment")},
    result: areaIn2, unit: "in2", source: "ACI 318-19 9.6.1.3",
  }];
}
