import {atMost, type Check} from "../../checks.js";
import {stressesAllowed} from "../cell.js";
import type {LoadLimit} from "../limit.js";
import {allows} from "../limitSteps.js";
import {pressedWords, squeezed, squeezedSteps, type Squeezed} from "../topCompression.js";

/** The top is compressed as hard as is allowed by all of the load. */
export const totalCompressionLimit: LoadLimit<"total compression", Squeezed> = {
  name: "total compression", kind: "load", handbook: true,
  clause: "ACI 318-19 24.5.4.1",
  asks: "Is the concrete compressed too hard under full load?",
  look: {letter: "C", line: "dash and dot", dash: "8 3 1.5 3", color: "concrete-plant-edge"},

  reached(cell) {
    const {totalCompressionKsi, toppingTotalKsi} = stressesAllowed(cell);
    return squeezed(cell, totalCompressionKsi, toppingTotalKsi, false);
  },

  checks(cell, {totalCompression: most, totalStresses}): Check[] {
    const {totalCompressionKsi, toppingTotalKsi} = stressesAllowed(cell);
    const where = pressedWords(most, cell.spanFt);
    return [
      atMost({
        id: "deck total compression", label: "Compression under total load", unit: "ksi", clause: totalCompressionLimit.clause,
        holds: `It can take the full load; compression is greatest in the ${where}.`,
        fails: `The ${where}, is compressed too hard: stronger concrete, a deeper member or a shorter span.`,
      }, most.stressKsi, totalCompressionKsi),
      ...(totalStresses.toppingTopKsi === undefined ? [] : [atMost({
        id: "topping compression", label: "Compression in the topping", unit: "ksi", clause: totalCompressionLimit.clause,
        holds: "The topping can take its share of the full load.",
        fails: "The topping is compressed too hard under the full load: stronger topping, a deeper member or a shorter span.",
      }, totalStresses.toppingTopKsi, toppingTotalKsi as number)]),
    ];
  },

  steps: (limit, at) => squeezedSteps(limit, at, 0.6, (expression, values) => allows(limit, expression, values)),
};
