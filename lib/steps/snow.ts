import type {Evaluation} from "../evaluate.js";
import type {Reduction} from "../loads/reduction.js";
import {LIGHT_SNOW_PSF} from "../snow/balanced.js";
import {SHORTEST_FETCH_FT, WINDWARD_SHARE, type Drift} from "../snow/drift.js";
import type {SnowPlace} from "../snow/elementSnow.js";
import type {RoofElementLoad, RoofLoads} from "../snow/roofLoads.js";
import {deepestDrift} from "../snow/deepest.js";
import {roofLoadOn} from "../snow/roofLoads.js";
import type {SpanUnderLine} from "../snow/simpleSpan.js";
import {given, type Step, type Working} from "../step.js";

/** Balanced snow, the minimum, and what rain adds. */
export function balancedSnowWorking({roofLoads: {snow, riseInPerFt, eaveToRidgeFt}}: {readonly roofLoads: Pick<RoofLoads, "snow" | "riseInPerFt" | "eaveToRidgeFt">}): Working {
  const {site, flatPsf, minimumPsf, densityPcf, depthFt, rainOnSnowPsf} = snow;
  const p_g = given(site.groundPsf, "psf", "ground snow load");
  const I_s = given(site.importance, "", "importance factor for snow");
  const steps: Step[] = [
    {
      symbol: "p_f", label: "balanced snow on a flat roof", expression: "0.7 * C_e * C_t * I_s * p_g", unit: "psf", source: "ASCE 7-16 Eq. 7.3-1",
      values: {C_e: given(site.exposureFactor, "", "exposure factor"), C_t: given(site.thermalFactor, "", "thermal factor"), I_s, p_g}, result: flatPsf,
      note: "The slope factor is 1 on a roof as flat as this (7.4), so the sloped-roof load is the same.",
    },
    {
      symbol: "p_m", label: "minimum for low slopes, by itself", expression: "I_s * min(p_g, 20)", unit: "psf", source: "ASCE 7-16 7.3.4",
      values: {I_s, p_g}, result: minimumPsf,
    },
    {
      symbol: "gamma", label: "unit weight of the snow", expression: "min(30, 0.13 * p_g + 14)", unit: "pcf", source: "ASCE 7-16 Eq. 7.7-1",
      values: {p_g}, result: densityPcf,
    },
    {
      symbol: "h_b", label: "height of the balanced snow", expression: "p_f / gamma", unit: "ft", source: "ASCE 7-16 7.7.1",
      values: {p_f: given(flatPsf, "psf", "balanced snow"), gamma: given(densityPcf, "pcf", "unit weight of the snow")}, result: depthFt,
    },
  ];
  if (site.groundPsf > 0 && site.groundPsf <= LIGHT_SNOW_PSF) {
    steps.push({
      symbol: "theta_W", label: "slope from which rain drains out of the snow", expression: "W / 50", unit: "deg", source: "ASCE 7-16 7.10",
      values: {W: given(eaveToRidgeFt, "ft", "from the drain to the high line")}, result: snow.drainsFromDeg,
      note: `The roof falls ${riseInPerFt} in per ft, which is ${snow.slopeDeg.toFixed(2)} degrees: ${rainOnSnowPsf > 0 ? "less, so that 5 psf of rain is added to the balanced snow." : "enough, so that no rain is added."}`,
    });
  }
  return {title: "Snow that lies evenly", steps};
}

/** The drift that weighs most at its deepest; where none counts, why the first does not. */
export function snowDriftWorking({roofLoads}: Evaluation): Working {
  const found = deepestDrift(roofLoads) ?? roofLoads.drifts[0];
  return found ? driftWorking(roofLoads, found.drift) : {title: "No drift: nothing rises above the roof", steps: []};
}

/** One drift: its height by the figure, what stands against it, its width and its load. */
export function driftWorking({snow}: Pick<RoofLoads, "snow">, drift: Drift): Working {
  const {site, densityPcf, depthFt} = snow;
  const {kind, figure, wantsFt, clearFt, gapFt, heightFt, wholeWidthFt, widthFt, peakPsf} = drift;
  const title = {leeward: "The drift in the lee of the higher part", windward: "The drift that the wind builds against the higher part", parapet: "The drift at the parapet"}[kind];
  if (drift.state === "no snow") return {title, steps: []};
  const I_s = given(site.importance, "", "importance factor for snow");
  const p_g = given(site.groundPsf, "psf", "ground snow load");
  const l_u = given(figure.fetchFt, "ft", kind === "leeward" ? "length of the higher roof" : "length of this roof upwind");
  const gamma = given(densityPcf, "pcf", "unit weight of the snow");
  const h_b = given(depthFt, "ft", "height of the balanced snow");
  const short = figure.sourceFt !== undefined;
  const steps: Step[] = [
    {
      symbol: "h_d", label: "height of the drift by the figure", unit: "ft", source: "ASCE 7-16 Figure 7.6-1",
      expression: short ? "min(sqrt(I_s) * (0.43 * 20^(1/3) * (p_g + 10)^(1/4) - 1.5), sqrt(I_s * p_g * l_u / (4 * gamma)))" : "sqrt(I_s) * (0.43 * l_u^(1/3) * (p_g + 10)^(1/4) - 1.5)",
      values: short ? {I_s, p_g, l_u, gamma} : {I_s, p_g, l_u}, result: figure.heightFt,
      ...(short ? {note: `Below ${SHORTEST_FETCH_FT} ft of fetch the curve stays where it is at ${SHORTEST_FETCH_FT} ft, or what half of the fetch's snow fills.`} : {}),
    },
    {
      symbol: "h_c", label: "clear height above the balanced snow", expression: "h - h_b", unit: "ft", source: "ASCE 7-16 7.7.1",
      values: {h: given(drift.wallFt, "ft", kind === "parapet" ? "height of the parapet above the roof" : "height of the higher part above the roof"), h_b}, result: clearFt,
    },
  ];
  if (drift.state !== "counts") {
    const why = {
      "snow to the top": "The balanced snow reaches the top: nothing is left to drift against.",
      "too little height": "That is less than a fifth of the balanced snow's height: no drift need be counted.",
      "too far": "The higher part stands too far away: 20 ft, six times its height, or beyond the drift's foot.",
    }[drift.state as "snow to the top" | "too little height" | "too far"];
    return {title: `${title}: it does not count`, steps: steps.map((step, i) => (i === 1 ? {...step, note: why} : step))};
  }
  const h_d = given(figure.heightFt, "ft", "height by the figure");
  if (kind !== "leeward") {
    steps.push({
      symbol: "h_w", label: "height of the drift where the wind blows toward the wall, three quarters of the figure's", expression: "0.75 * h_d", unit: "ft",
      source: kind === "parapet" ? "ASCE 7-16 7.8" : "ASCE 7-16 7.7.1", values: {h_d}, result: WINDWARD_SHARE * figure.heightFt,
    });
  } else if (wantsFt < figure.heightFt) {
    steps.push({symbol: "h_w", label: "no more than 60 % of this roof\u2019s length", expression: "min(h_d, 0.6 * L)", unit: "ft", source: "ASCE 7-16 7.7.1", values: {h_d, L: given(wantsFt / 0.6, "ft", "length of this roof")}, result: wantsFt});
  }
  const own = given(wantsFt, "ft", kind === "leeward" ? "height of the drift by itself" : "three quarters of the figure\u2019s height");
  const h_c = given(clearFt, "ft", "clear height");
  const across = gapFt > 0 && kind === "leeward";
  // Stryker disable next-line EqualityOperator: both widths are equal where they meet
  const cut = wantsFt > clearFt;
  const lee = {h: given(drift.wallFt, "ft", "height of the higher part"), s: given(gapFt, "ft", "gap to the higher part")};
  steps.push(across ? {
    symbol: "h_x", label: "height of the drift across the gap", expression: "min(h_w, (6 * h - s) / 6, h_c)", unit: "ft", source: "ASCE 7-16 7.7.2",
    values: {h_w: own, ...lee, h_c}, result: heightFt,
  } : {
    symbol: "h_x", label: "height of the drift", expression: "min(h_w, h_c)", unit: "ft", source: "ASCE 7-16 7.7.1", values: {h_w: own, h_c}, result: heightFt,
  });
  steps.push(across ? {
    symbol: "w", label: "width of the drift", expression: "min(6 * h_w, 6 * h - s)", unit: "ft", source: "ASCE 7-16 7.7.2", values: {h_w: own, ...lee}, result: wholeWidthFt,
  } : {
    symbol: "w", label: "width of the drift", unit: "ft", source: "ASCE 7-16 7.7.1",
    ...(cut
      ? {expression: "min(4 * h_w^2 / h_c, 8 * h_c)", values: {h_w: own, h_c}, note: "What the height cuts off spreads out, until the drift is eight times as wide as high."}
      : {expression: "4 * h_w", values: {h_w: own}}),
    result: wholeWidthFt,
  });
  const w = given(wholeWidthFt, "ft", "width of the whole drift");
  if (widthFt < wholeWidthFt) {
    steps.push({symbol: "w_r", label: "width on the roof", expression: "w - s", unit: "ft", source: "ASCE 7-16 7.7.2", values: {w, s: lee.s}, result: widthFt, note: "What lies in the gap is cut off."});
  }
  steps.push({
    symbol: "p_d", label: "greatest load of the drift, on top of the balanced snow", unit: "psf", source: "ASCE 7-16 7.7.1",
    expression: widthFt < wholeWidthFt ? "gamma * h_x * w_r / w" : "gamma * h_x",
    values: {gamma, h_x: given(heightFt, "ft", "height of the drift"), ...(widthFt < wholeWidthFt ? {w, w_r: given(widthFt, "ft", "width on the roof")} : {})}, result: peakPsf,
  });
  return {title, steps};
}

/** The drifted snow on a deck member as a uniform load that bends it, and loads its support, as much. */
export function snowSpanWorking(evaluation: Evaluation): Working {
  const {snow} = roofLoadOn(evaluation.roofLoads, "deck member");
  const {worst} = snow;
  const {span} = worst;
  if (!span || snow.case !== "drift") return {title: "No drift governs the deck member", steps: []};
  const L = given(span.lengthFt, "ft", "span");
  const nearPsfFt = Math.max(span.firstReaction, span.secondReaction);
  return {title: "A drift as a uniform load", steps: [
    ...triangleSteps(evaluation, worst.sides, span),
    {
      symbol: "p_M", label: "uniform load that bends as much", expression: "8 * M / L^2", unit: "psf", source: "statics",
      values: {M: given(span.moment, "lb-ft/ft", "greatest moment, per foot of width"), L}, result: worst.momentPsf,
      note: "The moment is that of a simple span under the load drawn, where its shear is spent.",
    },
    {
      symbol: "p_V", label: "uniform load that presses as much on the nearer support", expression: "2 * R_n / L", unit: "psf", source: "statics",
      values: {R_n: given(nearPsfFt, "lb/ft", "reaction beside the drift, per foot of width"), L}, result: worst.shearPsf,
    },
    {
      symbol: "S", label: "snow on the deck member as one uniform load", expression: "max(p_M, p_V)", unit: "psf", source: "definition",
      values: {p_M: given(worst.momentPsf, "psf", "by bending"), p_V: given(worst.shearPsf, "psf", "by its support")}, result: snow.psf,
    },
  ]};
}

/** Reactions by statics, where one triangle lies at one end of the member; elsewhere they are summed along it. */
function triangleSteps({roofLoads}: Evaluation, sides: SnowPlace["sides"], span: SpanUnderLine): Step[] {
  const [side] = sides;
  if (sides.length !== 1 || (side !== "south" && side !== "north")) return [];
  const drifts = roofLoads.surface.drifts.filter((one) => one.side === side).map(({drift}) => drift);
  // Stryker disable next-line EqualityOperator: of two alike either may be told
  const deepest = drifts.reduce((most, drift) => (most.peakPsf >= drift.peakPsf ? most : drift));
  // Where it passes the span, or another drift of the side reaches further, the load is no one triangle.
  // Stryker disable next-line EqualityOperator: no drift is as wide as its span to the last digit
  if (deepest.widthFt > span.lengthFt || drifts.some(({widthFt}) => widthFt > deepest.widthFt)) return [];
  const values = {
    p_f: given(roofLoads.snow.flatPsf, "psf", "balanced snow"), L: given(span.lengthFt, "ft", "span"),
    p_d: given(deepest.peakPsf, "psf", "greatest load of the drift"), w: given(deepest.widthFt, "ft", "width of the drift"),
  };
  return [
    {symbol: "R_f", label: "reaction away from the drift, per foot of width", expression: "p_f * L / 2 + p_d * w^2 / (6 * L)", unit: "lb/ft", source: "statics", values, result: Math.min(span.firstReaction, span.secondReaction)},
    {symbol: "R_n", label: "reaction beside the drift", expression: "p_f * L + p_d * w / 2 - R_f", unit: "lb/ft", source: "statics", values: {...values, R_f: given(Math.min(span.firstReaction, span.secondReaction), "lb/ft", "reaction away from the drift")}, result: Math.max(span.firstReaction, span.secondReaction)},
  ];
}

/** Roof live load of an element, or the live load of a roof that is used. */
export function roofLiveWorking({roofLoads: {riseInPerFt}}: Evaluation, {area, roofLive, usePsf, reduction, loads}: RoofElementLoad): Working {
  if (!roofLive) {
    // What is used has a use, and that a rule for its reduction.
    const {factor, clause} = reduction as Reduction;
    return {title: `Live load of the roof on the ${area.element}`, steps: [{
      symbol: "L", label: "live load of the roof\u2019s use", expression: "L_o * R", unit: "psf", source: clause, result: loads.L,
      values: {L_o: given(usePsf as number, "psf", "live load before reduction"), R: given(factor, "", "reduction, as for a floor")},
    }]};
  }
  return {title: `Roof live load on the ${area.element}`, steps: [
    {symbol: "R_1", label: "factor for the area", expression: "min(1, max(0.6, 1.2 - 0.001 * A_t))", unit: "", source: "ASCE 7-16 4.8.2", values: {A_t: given(roofLive.tributaryFt2, "ft2", "tributary area")}, result: roofLive.areaFactor},
    {symbol: "R_2", label: "factor for the slope", expression: "min(1, max(0.6, 1.2 - 0.05 * F))", unit: "", source: "ASCE 7-16 4.8.2", values: {F: given(riseInPerFt, "in/ft", "rise of the roof")}, result: roofLive.slopeFactor},
    {symbol: "L_r", label: "roof live load", expression: "max(12, 20 * R_1 * R_2)", unit: "psf", source: "ASCE 7-16 Eq. 4.8-1", values: {R_1: given(roofLive.areaFactor, "", "factor for the area"), R_2: given(roofLive.slopeFactor, "", "factor for the slope")}, result: roofLive.psf},
  ]};
}

/** Water on the roof when the primary drains are blocked. */
export function rainWorking({design, roofLoads}: Evaluation): Working {
  return {title: "Rain", steps: [{
    symbol: "R", label: "rain load", expression: "5.2 * (d_s + d_h)", unit: "psf", source: "ASCE 7-16 Eq. 8.3-1", result: roofLoads.rainPsf,
    values: {d_s: given(design.snow.rainStaticIn, "in", "depth up to the overflow"), d_h: given(design.snow.rainHydraulicIn, "in", "depth of water above the overflow at its design flow")},
    note: "An inch of water weighs 5.2 psf.",
  }]};
}

/** The governing combinations of an element, with and without factors. */
export function roofCombinationWorking({area, loads, governing, governingService}: RoofElementLoad): Working {
  const step = (symbol: string, label: string, {combination, psf}: RoofElementLoad["governing"], source: string): Step => {
    const {dead, live, roof, kind} = combination;
    const terms = [[dead, "D"], [live, "L"], ...(kind ? [[roof, NAME[kind]] as const] : [])] as const;
    const used = terms.filter(([factor]) => factor > 0);
    const values: Record<string, ReturnType<typeof given>> = {D: given(loads.D, "psf", "dead load"), L: given(loads.L, "psf", "live load of the roof\u2019s use"), L_r: given(loads.Lr, "psf", "roof live load"), S: given(loads.S, "psf", "snow"), R: given(loads.R, "psf", "rain")};
    return {
      symbol, label, expression: used.map(([factor, name]) => (factor === 1 ? name : `${factor} * ${name}`)).join(" + "), unit: "psf", source, result: psf,
      values: Object.fromEntries(used.map(([, name]) => [name, values[name] as ReturnType<typeof given>])),
    };
  };
  return {title: `What governs on the ${area.element}`, steps: [
    step("p_u", `factored: ${governing.combination.name}`, governing, "ASCE 7-16 2.3.1"),
    step("p", `without factors: ${governingService.combination.name}`, governingService, "ASCE 7-16 2.4.1"),
  ]};
}

const NAME = {Lr: "L_r", S: "S", R: "R"} as const;
