import {STIRRUP_DIAMETER_IN} from "../edgeBeam/bars.js";
import {edgeBeamBearing} from "../edgeBeam/ledgeChecks.js";
import type {LedgePlace, PunchingPlace} from "../edgeBeam/ledge.js";
import type {Ledge} from "../beams/ledge.js";
import {ledgeEffectiveDepthIn} from "../beams/ledge.js";
import type {PunchingView} from "../beams/ledgePunching.js";
import type {Check} from "../checks.js";
import type {Evaluation} from "../evaluate.js";
import {ownPsf} from "../member/member.js";
import {given, type Step, type StepValue, type Working} from "../step.js";

/** What one stem, or a foot of planks, presses on its seat: the deck member's own reduced live load. */
function seatLoadSteps({loads, laid, edgeBeam: {loads: {seat}, demand}}: Evaluation): Step[] {
  const w_D = given(seat.deadPsf, "psf", "dead load of the floor");
  const w_L = given(seat.livePsf, "psf", "live load reduced for one deck member");
  const A = given(seat.areaFt2, "ft2", demand.stemmed ? "floor of one stem: half a tee's width by half its span" : "floor of a foot of planks: half their span");
  const what = demand.stemmed ? "one stem" : "a foot of planks";
  return [
    {
      symbol: "w_D", label: "dead load of the floor", expression: "w_o + w_sd",
      values: {w_o: given(ownPsf(laid), "psf", "deck, with the topping that fills its camber"), w_sd: given(loads.superimposedDeadPsf, "psf", "superimposed dead load")},
      result: seat.deadPsf, unit: "psf", source: "sum",
    },
    {
      symbol: "P", label: `service load of ${what}`, expression: "(w_D + w_L) * A / 1000", values: {w_D, w_L, A}, result: seat.serviceKip, unit: "kip", source: "ASCE 7-16 4.7.2",
      note: "One deck member loads its seat, so its own area reduces the live load, not all that the beam carries.",
    },
    {
      symbol: "P_u", label: `factored load of ${what}`, expression: "max(1.4 * w_D, 1.2 * w_D + 1.6 * w_L) * A / 1000", values: {w_D, w_L, A},
      result: seat.factoredKip, unit: "kip", source: "ASCE 7-16 2.3.1",
    },
  ];
}

/** A load punching out of the ledge, by three views, at the stem where the ledge is weakest; planks shear it off instead. */
export function ledgePunchingWorking(evaluation: Evaluation): Working {
  const {design, edgeBeam} = evaluation;
  const {ledge} = edgeBeam;
  const title = "The ledge under its load";
  if (!ledge) return {title, steps: []};
  const f_cprime = given(design.edgeBeam.strengthPsi, "psi", "concrete strength");
  if (ledge.linePlf !== undefined) {
    return {title, steps: [...seatLoadSteps(evaluation), {
      symbol: "P_l", label: "line load that the ledge carries, per foot", expression: "0.75 * 24 * min(sqrt(f_cprime), 100) * h_l / 1000",
      values: {f_cprime, h_l: given(design.edgeBeam.ledgeDepthIn, "in", "ledge depth")},
      result: ledge.linePlf / 1000, unit: "kip", source: "PCI Design Handbook, 6th ed., 4.5.1 (from memory)",
    }]};
  }
  // Stryker disable next-line EqualityOperator: of two alike either may be told
  const weakest = ledge.punching.reduce((least, one) => (one.punching.designKip < least.punching.designKip ? one : least));
  const {ledge: at} = weakest;
  return {title: weakest.place === "end" ? "A stem near the beam's end, punching through the ledge" : "A stem punching through the ledge", steps: [
    ...seatLoadSteps(evaluation),
    handbookStep(at, f_cprime, weakest), ...cautionSteps(at, f_cprime, weakest), ...twoWaySteps(at, f_cprime, weakest),
    {
      symbol: "P_n", label: "the least of the three counts", expression: "min(P_h, P_c, P_t)",
      values: {P_h: given(viewOf(weakest, "handbook").designKip, "kip", "trade handbook"), P_c: given(viewOf(weakest, "caution").designKip, "kip", "our caution"), P_t: given(viewOf(weakest, "two-way").designKip, "kip", "two-way shear")},
      result: weakest.punching.designKip, unit: "kip", source: "the safest view",
    },
  ]};
}

function viewOf({punching}: PunchingPlace, id: PunchingView["id"]): PunchingView {
  return punching.views.find((view) => view.id === id) as PunchingView;
}

type Values = Record<string, StepValue>;

function measures(at: Ledge): Values {
  return {
    h_l: given(at.ledgeDepthIn, "in", "ledge depth"), l_p: given(at.ledgeProjectionIn, "in", "ledge projection"),
    b_t: given(at.bearingWidthIn, "in", "width of the bearing"),
    s: given(at.spacingIn, "in", "distance to the next stem"),
    // No expression names it where the stem is near no end.
    d_e: given(at.endDistanceIn as number, "in", "stem to the beam's end"),
  };
}

/** The values that an expression names. */
function named(expression: string, values: Values): Values {
  return Object.fromEntries(Object.entries(values).filter(([name]) => new RegExp(`\\b${name}\\b`).test(expression)));
}

function handbookStep(at: Ledge, f_cprime: StepValue, weakest: PunchingPlace): Step {
  const alone = at.spacingIn > at.bearingWidthIn + at.ledgeDepthIn;
  const inner = alone ? "3 * (2 * l_p + b_t + h_l)" : "1.5 * (2 * l_p + b_t + h_l + s)";
  const end = alone ? "2 * l_p + b_t + h_l + 2 * d_e" : "l_p + (b_t + h_l) / 2 + d_e + s";
  const expression = `0.75 * min(sqrt(f_cprime), 100) * h_l / 1000 * ${at.endDistanceIn === undefined ? inner : `min(${inner}, ${end})`}`;
  return {
    symbol: "P_h", label: "design strength by the trade handbook", expression, values: {f_cprime, ...named(expression, measures(at))},
    result: viewOf(weakest, "handbook").designKip, unit: "kip", source: "PCI Design Handbook, 7th ed., 5.5.1 (from memory)",
  };
}

function cautionSteps(at: Ledge, f_cprime: StepValue, weakest: PunchingPlace): Step[] {
  const {punching, use, centroidStressKsi} = weakest;
  const half = "min(b_t / 2 + 2 * h_l, s / 2)";
  const length = at.endDistanceIn === undefined ? `2 * ${half}` : `(${half} + min(${half}, d_e))`;
  const expression = `0.75 * 2 * beta_g * sqrt(1 + 10000 * f_pc / f_cprime) * min(sqrt(f_cprime), 100) * h_l / 1000 * ${length}`;
  return [
    {
      symbol: "beta_g", label: "factor for the beam's own stress at the stem", expression: "min(1, max(0.5, 1 - 0.5 * (u - 0.2) / 0.4))",
      values: {u: given(Math.min(100, use), "", "use of the beam's own strength at the stem")}, result: punching.globalStressFactor, unit: "", source: "our own caution, from memory; unconfirmed",
    },
    {
      symbol: "P_c", label: "design strength by our caution", expression,
      values: {f_cprime, beta_g: given(punching.globalStressFactor, "", "factor for stress"), f_pc: given(centroidStressKsi, "ksi", "prestress at the centroid"), ...named(expression, measures(at))},
      result: viewOf(weakest, "caution").designKip, unit: "kip", source: "our own caution, after published tests",
    },
  ];
}

function twoWaySteps(at: Ledge, f_cprime: StepValue, weakest: PunchingPlace): Step[] {
  const depthIn = ledgeEffectiveDepthIn(at);
  const clear = at.bearingWidthIn + depthIn < at.spacingIn;
  const inner = clear ? "b_t + d + 2 * (l_t + d / 2)" : "s";
  const end = `min(b_t + d, s) / 2 + d_e${clear ? " + l_t + d / 2" : ""}`;
  const {atEnd, designKip} = viewOf(weakest, "two-way");
  const expression = at.endDistanceIn === undefined ? inner : `min(${inner}, ${end})`;
  const values: Values = {...measures(at), d: given(depthIn, "in", "effective depth of the ledge"), l_t: given(at.bearingLengthIn, "in", "length of the bearing")};
  const innerIn = clear ? at.bearingWidthIn + 2 * depthIn + 2 * at.bearingLengthIn : at.spacingIn;
  const endIn = at.endDistanceIn === undefined ? Infinity
    : Math.min(at.bearingWidthIn + depthIn, at.spacingIn) / 2 + at.endDistanceIn + (clear ? at.bearingLengthIn + depthIn / 2 : 0);
  const perimeterIn = Math.min(innerIn, endIn);
  return [
    {symbol: "b_o", label: "length round the load, half the depth away", expression, values: named(expression, values), result: perimeterIn, unit: "in", source: "ACI 318-19 22.6.4"},
    {
      symbol: "P_t", label: "design strength by two-way shear",
      expression: "0.75 * min(4, 2 + 4 / r, 2 + a * d / b_o) * min(1, sqrt(2 / (1 + d / 10))) * min(sqrt(f_cprime), 100) * b_o * d / 1000",
      values: {
        r: given(Math.max(at.bearingWidthIn, at.bearingLengthIn) / Math.min(at.bearingWidthIn, at.bearingLengthIn), "", "longer over shorter side of the bearing"),
        a: given(atEnd ? 20 : 30, "", atEnd ? "factor for a stem at the end of the ledge" : "factor for a stem along the ledge"), d: values["d"] as StepValue, b_o: given(perimeterIn, "in", "length round the load"), f_cprime,
      },
      result: designKip, unit: "kip", source: "ACI 318-19 22.6.5.2",
    },
  ];
}

/** Bars across the ledge and hangers beside it, where they are needed closest. */
export function ledgeSteelWorking({design, edgeBeam}: Evaluation): Working {
  const {ledge} = edgeBeam;
  const title = "Bars across the ledge, and hangers";
  if (!ledge) return {title, steps: []};
  // Beside an end less of the ledge works with the load than within the span, or as much: the last place needs most.
  const {ledge: at, steel, hanger} = ledge.places.at(-1) as LedgePlace;
  const V_u = given(ledge.loadKip, "kip", ledge.linePlf === undefined ? "factored load of one stem" : "factored load of a foot of planks");
  const a = given(at.shearSpanIn, "in", "web's face to the load");
  const i = given(design.edgeBeam.coverIn + STIRRUP_DIAMETER_IN / 2, "in", "web's face to the hanger");
  const h_l = given(at.ledgeDepthIn, "in", "ledge depth");
  const d = given(steel.effectiveDepthIn, "in", "effective depth of the ledge");
  const l_w = given(steel.workingLengthIn, "in", "length of ledge that works with the load");
  const f_cprime = given(design.edgeBeam.strengthPsi, "psi", "concrete strength");
  const N_u = given(steel.pullKip, "kip", "pull");
  const b_w = given(at.webWidthIn, "in", "web width");
  return {title, steps: [
    {symbol: "N_u", label: "horizontal force on the ledge", expression: "0.2 * V_u", values: {V_u}, result: steel.pullKip, unit: "kip", source: "ACI 318-19 16.5.3.5"},
    {symbol: "M_u", label: "moment about the hanger", expression: "V_u * (a + i) + N_u * (h_l - d)", values: {V_u, a, i, N_u, h_l, d}, result: steel.momentKipIn, unit: "kip-in", source: "ACI 318-19 16.5.3.1"},
    {
      symbol: "A_f", label: "bars for bending", expression: "M_u / (0.75 * 60 * (d / 2 + sqrt(max(0, d^2 / 4 - M_u / (0.75 * 1.7 * f_cprime / 1000 * l_w)))))",
      values: {M_u: given(steel.momentKipIn, "kip-in", "moment"), d, f_cprime, l_w}, result: steel.bendingIn2, unit: "in2", source: "ACI 318-19 16.5.4.3",
    },
    {symbol: "A_n", label: "bars for the horizontal force", expression: "N_u / (0.75 * 60)", values: {N_u}, result: steel.pullIn2, unit: "in2", source: "ACI 318-19 16.5.4.2"},
    {symbol: "A_vf", label: "bars for shear friction", expression: "V_u / (0.75 * 60 * 1.4)", values: {V_u}, result: steel.frictionIn2, unit: "in2", source: "ACI 318-19 16.5.4.4"},
    {
      symbol: "A_sc", label: "bars at the ledge's top, for one load", expression: "max(A_f + A_n, 2 / 3 * A_vf + A_n, 0.04 * f_cprime / 60000 * l_w * d)",
      values: {A_f: given(steel.bendingIn2, "in2", "for bending"), A_n: given(steel.pullIn2, "in2", "for the pull"), A_vf: given(steel.frictionIn2, "in2", "for shear friction"), f_cprime, l_w, d},
      result: steel.topIn2, unit: "in2", source: "ACI 318-19 16.5.5.1",
    },
    {
      symbol: "m", label: "hanger's factor for the load's lever", expression: "max(1, (b_w + a - (3 - 2 * h_l / h) * (h_l / h)^2 * (b_w + l_p) / 2) / (b_w - i))",
      values: {b_w, a, h_l, h: given(at.depthIn, "in", "depth of the beam"), l_p: given(at.ledgeProjectionIn, "in", "ledge projection"), i},
      result: Math.max(1, hanger.leverFactor), unit: "", source: "PCI Design Handbook, 7th ed., 5.5.4 (from memory)",
    },
    {
      symbol: "A_sh", label: "hangers, for one load", expression: "m * V_u / (0.75 * 60)", values: {m: given(Math.max(1, hanger.leverFactor), "", "factor"), V_u},
      result: hanger.hangerIn2, unit: "in2", source: "PCI Design Handbook, 7th ed., 5.5.4 (from memory)",
    },
  ]};
}

/** Stress of the pad, and of the concrete beneath it. */
export function padWorking(evaluation: Evaluation): Working {
  const {design, edgeBeam, member} = evaluation;
  const {demand, checks} = edgeBeam;
  const bearing = edgeBeamBearing(design, member, edgeBeam);
  const of = (id: string) => checks.find((check) => check.id === id);
  const stress = of("pad stress");
  const crushing = of("ledge bearing") as Check;
  const w = given(bearing.loadedWidthIn, "in", demand.stemmed ? "width that bears, along the beam" : "a foot of beam");
  const l = given(bearing.loadedLengthIn, "in", "length that bears");
  const pad: Step[] = stress ? [
    {symbol: "f_p", label: "pad's stress in service", expression: "1000 * P / (w * l)", values: {P: given(demand.stemServiceKip, "kip", "service load of one stem"), w, l}, result: stress.demand, unit: "psi", source: "definition"},
    {
      symbol: "f_pa", label: "stress that the pad may carry", expression: "min(1500, 1000 + 100 * w * l / (2 * t * (w + l)))",
      values: {w, l, t: given(design.edgeBeam.padThicknessIn, "in", "thickness of the pad")}, result: stress.capacity, unit: "psi", source: "PCI Design Handbook, 7th ed., ch. 6 (from memory)",
    },
  ] : [];
  return {title: "The pad and the concrete beneath it", steps: [...seatLoadSteps(evaluation), ...pad, {
    symbol: "P_b", label: "load that the concrete bears", expression: "0.65 * 0.85 * f_cprime / 1000 * w * l * min(2, sqrt(A_2 / (w * l)))",
    values: {f_cprime: given(bearing.strengthPsi, "psi", "weaker concrete of deck and beam"), w, l, A_2: given(bearing.supportIn2, "in2", "area of the support that the load spreads to")},
    result: crushing.capacity, unit: "kip", source: "ACI 318-19 22.8.3.2",
  }]};
}
