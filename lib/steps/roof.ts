import type {Evaluation} from "../evaluate.js";
import {WATER_PCF} from "../member/fillRatio.js";
import {DECK_PART, type BeamFlexibility} from "../roof/ponding.js";
import type {RoofResult} from "../roof/roof.js";
import {variablePsf} from "../roof/roofFloor.js";
import {roofLoadOn} from "../snow/roofLoads.js";
import {given, type Step, type StepValue, type Working} from "../step.js";
import {cellWorking} from "./cell.js";
import {sagWorking} from "./service.js";

const none = (title: string): Working => ({title, steps: []});
/** A working of a design's roof; no steps where it is two loads. */
const ofRoof = (title: string, steps: (roof: RoofResult, evaluation: Evaluation) => readonly Step[]) =>
  (evaluation: Evaluation): Working => (evaluation.roof ? {title, steps: steps(evaluation.roof, evaluation)} : none(title));

/** Live load and snow on the open top level, as one live load, and what its deck must carry with it; no steps where it has none. */
export function openTopWorking({openTop}: Evaluation): Working {
  if (!openTop) return none("No open top level under snow");
  const {loads, asLivePsf, asServiceLivePsf} = roofLoadOn(openTop.snow, "deck member");
  const [L, X] = [given(loads.L, "psf", "live load"), given(Math.max(loads.S, loads.R), "psf", "greater of snow and rain")];
  return {title: "Live load and snow on the open top level", steps: [
    {
      symbol: "X", label: "greater of snow and rain", expression: "max(S, R)", values: {S: given(loads.S, "psf", "snow"), R: given(loads.R, "psf", "rain")},
      result: X.value, unit: "psf", source: "ASCE 7-16 chapters 7 and 8",
    },
    {
      symbol: "w_v", label: "as one live load, no less than any combination", expression: "max((1.6 * L + 0.5 * X) / 1.6, (1.6 * X + L) / 1.6, L, X, 0.75 * (L + X))",
      values: {L, X}, result: Math.max(asLivePsf, asServiceLivePsf), unit: "psf", source: "ASCE 7-16 2.3.1, 2.4.1", note: "In a garage the live load enters the third combination in full.",
    },
    {
      symbol: "w", label: "load that the deck of the top level must carry", expression: "w_d + w_v", unit: "psf", source: "definition", result: openTop.deck.demandPsf,
      values: {w_d: given(openTop.loads.superimposedDeadPsf, "psf", "superimposed dead load"), w_v: given(openTop.deck.livePsf, "psf", "live load with snow or rain")},
    },
  ]};
}

/** From the layers and what comes and goes to what the roof's deck must carry beside itself. */
export const roofDemandWorking = ofRoof("Load on the roof's deck", ({layers, snow, deck}) => {
  const {loads, asLivePsf, asServiceLivePsf} = roofLoadOn(snow, "deck member");
  const {carried} = layers;
  const L = given(loads.L, "psf", "live load of the roof's use");
  const most = given(Math.max(loads.Lr, loads.S, loads.R), "psf", "greatest of roof live load, snow and rain");
  const occupied = loads.L > 0;
  return [
    {
      symbol: "w_d", label: "layers on the roof's deck", expression: carried.length > 0 ? carried.map((_, i) => `w_${i + 1}`).join(" + ") : "0",
      values: Object.fromEntries(carried.map(({name, loadPsf}, i): [string, StepValue] => [`w_${i + 1}`, given(loadPsf, "psf", name)])),
      result: layers.psf, unit: "psf", source: "definition",
    },
    {
      symbol: "X", label: "greatest of roof live load, snow and rain", expression: "max(L_r, S, R)",
      values: {L_r: given(loads.Lr, "psf", "roof live load"), S: given(loads.S, "psf", "snow"), R: given(loads.R, "psf", "rain")},
      result: most.value, unit: "psf", source: "ASCE 7-16 4.8, chapters 7 and 8", note: "One of them at a time stands in a combination.",
    },
    {
      symbol: "w_v", label: "as one live load, no less than any combination", expression: occupied ? "max((1.6 * L + 0.5 * X) / 1.6, (1.6 * X + L) / 1.6, L, X, 0.75 * (L + X))" : "X",
      values: occupied ? {L, X: most} : {X: most}, result: Math.max(asLivePsf, asServiceLivePsf), unit: "psf", source: "ASCE 7-16 2.3.1, 2.4.1",
    },
    {
      symbol: "w", label: "load that the deck must carry", expression: "w_d + w_v",
      values: {w_d: given(layers.psf, "psf", "layers"), w_v: given(variablePsf({asLivePsf, asServiceLivePsf}), "psf", "what comes and goes")},
      result: deck.demandPsf, unit: "psf", source: "definition",
    },
  ];
});

/** How high the roof's surface rises from its drains, and what one drain serves. */
export const roofFallWorking = ofRoof("Fall of the roof", ({plan}, {design: {roof}}): Step[] => [
  ...(roof.drainage === "camber" ? [] : [{
    symbol: "h", label: "height of the surface above the drains", expression: "s * r",
    values: {s: given(roof.slopeInPerFt, "in/ft", "fall of the roof"), r: given(plan.runFt, "ft", "longest way down")}, result: plan.riseIn, unit: "in", source: "geometry",
  } satisfies Step]),
  {
    symbol: "n", label: "drains in one line", expression: "max(1, ceil(L / s_d - 1e-9))",
    values: {L: given(plan.lengthFt, "ft", "length of the building"), s_d: given(roof.drainSpacingFt, "ft", "spacing of drains")}, result: plan.drainsPerLine, unit: "", source: "geometry",
  },
  {
    symbol: "A_d", label: "roof that one drain serves", expression: "b * L / n",
    values: {b: given((plan.drainFt2 * plan.drainsPerLine) / plan.lengthFt, "ft", "width of roof whose water comes to the line"), L: given(plan.lengthFt, "ft", "length of the building"), n: given(plan.drainsPerLine, "", "drains in one line")},
    result: plan.drainFt2, unit: "ft2", source: "geometry",
  },
]);

/** Flexibility of the roof's deck and beams against water that gathers in their sag. */
export const pondingWorking = ofRoof("Ponding", ({ponding, member}, {design: {bay}}) => {
  const beam = ponding.beams[0] as BeamFlexibility;
  const gamma = given(WATER_PCF, "pcf", "unit weight of water");
  const pi = given(Math.PI, "", "circumference of a circle over its diameter");
  const ratio = (symbol: string, label: string, values: Record<string, StepValue>, result: number): Step => ({
    symbol, label, expression: "gamma / (1000 * 12^3) * b * (12 * L)^4 / (pi^4 * E * I)", values: {gamma, pi, ...values}, result, unit: "",
    source: "first principles: a half wave of sag under a half wave of water",
  });
  const amplified: Step[] = ponding.amplification === undefined ? [] : [{
    symbol: "m", label: "growth of a sag that water fills", expression: "1 / (1 - C_s)", values: {C_s: given(ponding.ratio, "", "flexibility of the deck")}, result: ponding.amplification, unit: "",
    source: "first principles: C + C^2 + C^3 and so on",
  }];
  return [
    ratio("C_s", "flexibility of the deck member", {
      b: given(member.shape.widthIn, "in", "width of the member"), L: given(bay.spanFt, "ft", "span of the deck"), E: given(member.modulusKsi, "ksi", "modulus of the member"), I: given(member.full.inertiaIn4, "in4", "second moment of area"),
    }, ponding.ratio),
    ...amplified,
    ratio("C_p", `flexibility of the ${beam.beam}`, {
      b: given(beam.widthIn, "in", "width of roof on the beam"), L: given(beam.spanFt, "ft", "span of the beam"), E: given(beam.modulusKsi, "ksi", "modulus of the beam"), I: given(beam.inertiaIn4, "in4", "second moment of area in service"),
    }, beam.ratio),
    {
      symbol: "C", label: "flexibility of both", expression: `C_p + ${DECK_PART} * C_s`,
      values: {C_p: given(beam.ratio, "", "flexibility of the beam"), C_s: given(ponding.ratio, "", "flexibility of the deck")}, result: ponding.combined, unit: "",
      source: "AISC 360-16 Appendix 2.1", note: "Up to 0.25 no closer look is needed.",
    },
  ];
});

/** The safe load of the roof's deck, limit by limit. */
export function roofSafeLoadWorking({roof, design: {bay}}: Evaluation): Working {
  return roof ? cellWorking(roof.member, bay.spanFt, roof.deck.criteria) : none("Safe load of the roof's deck");
}

/** The roof deck's sag under what comes and goes. */
export function roofSagWorking({roof, design: {bay}}: Evaluation): Working {
  return roof ? sagWorking(roof.member, bay.spanFt, roof.deck) : none("Sag of the roof's deck");
}
