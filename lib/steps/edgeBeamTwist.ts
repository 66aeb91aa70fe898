import {STIRRUP_DIAMETER_IN} from "../edgeBeam/bars.js";
import type {ClosedStirrups} from "../edgeBeam/twist.js";
import type {Evaluation} from "../evaluate.js";
import {beamStem, stemsFromEnd} from "./edgeBeam.js";
import {given, type Step, type Working} from "../step.js";

/** The torsion that the deck brings, against the torsion that may be neglected. */
export function torsionWorking(evaluation: Evaluation): Working {
  const {design, edgeBeam} = evaluation;
  const {demand, loads: on, twist} = edgeBeam;
  const b_w = given(design.edgeBeam.webWidthIn, "in", "web width");
  const p = given(design.edgeBeam.ledgeProjectionIn, "in", edgeBeam.kind === "pockets" ? "reach of a pocket into the web" : "ledge projection");
  const g = given(design.edgeBeam.jointGapIn, "in", "joint");
  const levers: Record<typeof edgeBeam.kind, Step["expression"]> = {ledge: "b_w / 2 + max(0.75 * p, (g + p) / 2)", pockets: "b_w / 2 - p + max(0.75 * p, (g + p) / 2)", below: "0 * b_w"};
  const lever: Step = {
    symbol: "e", label: "deck's load to the web's center line", expression: levers[edgeBeam.kind],
    values: edgeBeam.kind === "below" ? {b_w} : {b_w, p, g},
    result: edgeBeam.eccentricityIn, unit: "in", source: edgeBeam.kind === "below" ? "geometry" : "PCI Design Handbook, 7th ed., ch. 5, examples (from memory)",
    note: edgeBeam.kind === "below"
      ? "The pads stand over the web's middle, so the deck does not twist the beam."
      : "The deck's end turns as it sags and presses toward the outer edge, so the load is taken at the outer quarter, not at the seat's middle.",
  };
  const e = given(edgeBeam.eccentricityIn, "in", "eccentricity of the deck's load");
  const L = given(edgeBeam.spanFt, "ft", "span of the beam");
  const own = {
    w_o: given(on.factoredOwnPlf, "plf", "factored load of the beam itself and the cladding"), e_o: given(on.ownEccentricityIn, "in", "eccentricity of the beam's own load: the ledge lies off the web"), L,
  };
  const end = stemsFromEnd(evaluation);
  const torsion: Step = demand.end.stems.beam.points.length > 0
    ? {
      symbol: "T_u", label: "factored torsion at the support", expression: "P_u * e * (n - s / L) + w_o * e_o * L / 2 / 1000",
      values: {
        P_u: beamStem(evaluation), e, n: given(end.count, "", "stems on the span"),
        s: given(end.sumFt, "ft", "sum of the stems' distances from the support"), ...own,
      },
      result: edgeBeam.torsionKipIn, unit: "kip-in", source: "statics",
    }
    : {
      symbol: "T_u", label: "factored torsion at the support", expression: "(w_d * e + w_o * e_o) * L / 2 / 1000",
      values: {w_d: given(on.factoredLedgePlf, "plf", "factored load of the deck"), e, ...own},
      result: edgeBeam.torsionKipIn, unit: "kip-in", source: "statics",
    };
  return {title: "Torsion of the edge beam", steps: [
    lever, torsion,
    ...(twist ? [{
      symbol: "T_th", label: "torsion that may be neglected", expression: "0.75 * min(sqrt(f_cprime), 100) / 1000 * A_cp^2 / p_cp",
      values: {
        f_cprime: given(design.edgeBeam.strengthPsi, "psi", "concrete strength"), A_cp: given(twist.design.outline.areaIn2, "in2", "area of the outline"),
        p_cp: given(twist.design.outline.perimeterIn, "in", "length of the outline"),
      },
      result: edgeBeam.torsionThresholdKipIn, unit: "kip-in", source: "ACI 318-19 22.7.4.1",
      ...(twist.design.outline.countedLedgeIn === 0 && edgeBeam.kind === "ledge" ? {note: "The web alone makes the better outline, so the ledge is not counted."} : {}),
    }] : []),
  ]};
}

/** Closed stirrups and bars along the beam for shear and torsion together. */
export function torsionDesignWorking({design, edgeBeam}: Evaluation): Working {
  const {twist, stirrups} = edgeBeam;
  const title = "Stirrups and bars for shear and twist";
  if (!twist) return {title, steps: []};
  const {outerIn2PerIn, innerIn2PerIn} = stirrups as ClosedStirrups;
  const {design: torsion} = twist;
  const {webWidthIn, coverIn, strengthPsi} = design.edgeBeam;
  const b_w = given(webWidthIn, "in", "web width");
  const d = given(edgeBeam.effectiveDepthIn, "in", "effective depth");
  const f_cprime = given(strengthPsi, "psi", "concrete strength");
  const counted = given(torsion.negligible ? 0 : edgeBeam.torsionKipIn, "kip-in", torsion.negligible ? "factored twist, which may be left out" : "factored twist");
  const V_u = given(edgeBeam.shearKip, "kip", "factored shear");
  const inside = {b_w, h: given(edgeBeam.depthIn, "in", "depth"), c: given(coverIn, "in", "cover of the stirrups"), d_s: given(STIRRUP_DIAMETER_IN, "in", "stirrup's diameter")};
  const A_oh = given(torsion.stirrupAreaIn2, "in2", "area inside the stirrup");
  const p_h = given(torsion.stirrupPerimeterIn, "in", "length round the stirrup");
  return {title, steps: [
    {symbol: "A_oh", label: "area inside the stirrup's center line", expression: "(b_w - 2 * c - d_s) * (h - 2 * c - d_s)", values: inside, result: torsion.stirrupAreaIn2, unit: "in2", source: "ACI 318-19 22.7.6.1.1"},
    {symbol: "p_h", label: "length round it", expression: "2 * (b_w + h - 2 * (2 * c + d_s))", values: inside, result: torsion.stirrupPerimeterIn, unit: "in", source: "geometry"},
    {
      symbol: "v_u", label: "stress of shear and torsion together", expression: "sqrt((1000 * V_u / (b_w * d))^2 + (1000 * T_u * p_h / (1.7 * A_oh^2))^2)",
      values: {V_u, b_w, d, T_u: counted, p_h, A_oh}, result: torsion.stressPsi, unit: "psi", source: "ACI 318-19 22.7.7.1",
    },
    {symbol: "v_max", label: "most that the web may take", expression: "0.75 * (2 + 8) * min(sqrt(f_cprime), 100)", values: {f_cprime}, result: torsion.greatestStressPsi, unit: "psi", source: "ACI 318-19 22.7.7.1"},
    {
      symbol: "A_t", label: "one stirrup leg for torsion, per inch of beam", expression: "T_u / (0.75 * 2 * 0.85 * A_oh * 60)",
      values: {T_u: counted, A_oh}, result: torsion.torsionLegIn2PerIn, unit: "in2", source: "ACI 318-19 22.7.6.1",
    },
    {
      symbol: "A_v", label: "all stirrup legs for shear, per inch of beam", expression: "max(0, V_u / 0.75 - 2 * min(sqrt(f_cprime), 100) * b_w * d / 1000) / (60 * d)",
      values: {V_u, f_cprime, b_w, d}, result: torsion.shearLegsIn2PerIn, unit: "in2", source: "ACI 318-19 22.5.8.5",
    },
    {
      symbol: "A_leg", label: "one leg for both, not below the least, per inch of beam", expression: "max(max(0.75 * min(sqrt(f_cprime), 100), 50) * b_w / 60000 / 2, A_t + A_v / 2)",
      values: {f_cprime, b_w, A_t: given(torsion.torsionLegIn2PerIn, "in2", "leg for torsion"), A_v: given(torsion.shearLegsIn2PerIn, "in2", "legs for shear")},
      result: outerIn2PerIn, unit: "in2", source: "ACI 318-19 9.5.4.3, 9.6.3.4, 9.6.4.2",
      ...(innerIn2PerIn > outerIn2PerIn ? {note: "The leg on the ledge's side must also hang up the ledge, which requires more."} : {}),
    },
    {
      symbol: "A_l", label: "bars along the beam, round the stirrup", expression: "max(A_lmin, T_u * p_h / (0.75 * 2 * 0.85 * A_oh * 60))",
      values: {A_lmin: given(torsion.leastLengthwiseIn2, "in2", "least by 9.6.4.3"), T_u: counted, p_h, A_oh},
      result: torsion.lengthwiseIn2, unit: "in2", source: "ACI 318-19 22.7.6.1, 9.6.4.3",
    },
  ]};
}
