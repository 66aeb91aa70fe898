import type {Evaluation} from "../evaluate.js";
import type {ElementLoad, ElementRoomLoad} from "../loads/floorLoads.js";
import {liveName} from "../loads/liveWords.js";
import {LEAST_INFLUENCE_FT2, SEVERAL_FLOORS_FACTOR} from "../loads/reduction.js";
import {given, type Step, type StepValue, type Working} from "../step.js";

/** How the layers of superimposed dead load add up. */
export function deadLoadWorking({design, loads}: Evaluation): Working {
  const layers = design.loads.layers.map((layer, i) => [`w_${i + 1}`, given(layer.loadPsf, "psf", layer.name)] as const);
  const values: Record<string, StepValue> = Object.fromEntries(layers);
  return {title: "Superimposed dead load", steps: [{
    symbol: "w_sd", label: "superimposed dead load", expression: layers.length > 0 ? layers.map(([name]) => name).join(" + ") : "0",
    values, result: loads.superimposedDeadPsf, unit: "psf", source: "sum of the layers",
  }]};
}

/** How the load on the deck member comes about: reduced live load, partitions, dead load. */
export function demandWorking(evaluation: Evaluation): Working {
  const {deck} = evaluation;
  const {room} = deck.load.governing;
  return {title: "What the deck must carry", steps: [
    ...reductionSteps(deck.load, deck.load.governing),
    {
      symbol: "w_L", label: `${liveName(deck.load.governing)} of ${room.name.toLowerCase()}, the heaviest room`, expression: "L + w_p",
      values: {
        L: given(deck.load.governing.reduction.reducedPsf, "psf", "live load after reduction"),
        w_p: given(room.partitionPsf, "psf", "movable partitions"),
      },
      result: deck.livePsf, unit: "psf", source: "ASCE 7-16 4.3.2",
    },
    {
      symbol: "w", label: "superimposed load", expression: "w_sd + w_L",
      values: {w_sd: given(deck.superimposedDeadPsf, "psf", "superimposed dead load"), w_L: given(deck.livePsf, "psf", liveName(deck.load.governing))},
      result: deck.demandPsf, unit: "psf", source: "definition",
    },
  ]};
}

/** How far the live load of one room may be reduced on one element. */
export function reductionWorking(element: ElementLoad, roomLoad: ElementRoomLoad = element.governing): Working {
  return {title: `Live load of ${roomLoad.room.name.toLowerCase()} on the ${element.element}`, steps: reductionSteps(element, roomLoad)};
}

function reductionSteps(element: ElementLoad, {room, reduction}: ElementRoomLoad): Step[] {
  const influence: Step = {
    symbol: "A_I", label: "influence area", expression: "K_LL * A_T * n",
    values: {
      K_LL: given(element.elementFactor, "", "live load element factor"),
      A_T: given(element.tributaryFt2, "ft2", "tributary area on one floor"),
      n: given(element.floors, "", "floors whose load the member carries"),
    },
    result: element.influenceFt2 * element.floors, unit: "ft2", source: "ASCE 7-16 Table 4.7-1",
  };
  const lo = given(room.livePsf, "psf", room.own ? "live load of one\u2019s own" : "live load of the table");
  const whole = (note: string): Step => ({
    symbol: "L", label: "live load", expression: "L_o", values: {L_o: lo},
    result: reduction.reducedPsf, unit: "psf", source: reduction.clause, note,
  });
  const formula: Step = {
    symbol: "R", label: "factor of the formula", expression: "0.25 + 15 / sqrt(A_I)",
    values: {A_I: given(element.influenceFt2 * element.floors, "ft2", "influence area")},
    result: reduction.formulaFactor, unit: "", source: "ASCE 7-16 4.7.2",
  };
  const r = given(reduction.formulaFactor, "", "factor of the formula");
  switch (reduction.decides) {
    case "taken in full":
      return [whole("It is taken in full, as it was entered.")];
    case "no reduction":
      return [whole("Assembly rooms do fill up: no reduction.")];
    case "heavy load":
      return [whole("Above 100 psf a floor is meant to be full: no reduction for one floor.")];
    case "garage":
      return [whole("A garage does fill up: no reduction for one floor.")];
    case "area too small":
      return [influence, whole(`Below ${LEAST_INFLUENCE_FT2} ft2 of influence area: no reduction.`)];
    case "formula":
    case "lower limit":
      return [influence, formula, {
        symbol: "L", label: "live load after reduction", expression: "L_o * min(1, max(R_min, R))",
        values: {L_o: lo, R_min: given(reduction.leastFactor, "", "least reduction factor"), R: r},
        result: reduction.reducedPsf, unit: "psf", source: reduction.clause,
      }];
    default:
      return [influence, formula, {
        symbol: "L", label: "live load after reduction", expression: "L_o * max(0.8, min(1, max(R_min, R)))",
        values: {L_o: lo, R_min: given(reduction.leastFactor, "", "least reduction factor"), R: r},
        result: reduction.reducedPsf, unit: "psf", source: reduction.clause,
        note: `At most ${Math.round(100 * (1 - SEVERAL_FLOORS_FACTOR))} % off, and only because it carries several floors.`,
      }];
  }
}
