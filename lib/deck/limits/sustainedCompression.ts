import {atMost, type Check} from "../../checks.js";
import {stressesAllowed} from "../cell.js";
import type {LoadLimit} from "../limit.js";
import {lasting} from "../limitSteps.js";
import {pressedWords, squeezed, squeezedSteps, type Squeezed} from "../topCompression.js";

/** The top is compressed as hard as is allowed for years, by the dead load and what stays of the live load. */
export const sustainedCompressionLimit: LoadLimit<"sustained compression", Squeezed> = {
  name: "sustained compression", kind: "load", handbook: true,
  clause: "ACI 318-19 24.5.4.1",
  asks: "Would sustained load compress the concrete until creep runs away?",
  look: {letter: "L", line: "dotted", dash: "1.5 3", color: "concrete-plant-edge"},

  reached(cell) {
    const {sustainedCompressionKsi, toppingSustainedKsi} = stressesAllowed(cell);
    return squeezed(cell, sustainedCompressionKsi, toppingSustainedKsi, true);
  },

  checks(cell, {heldCompression: held, sustainedStresses}): Check[] {
    const {sustainedCompressionKsi, toppingSustainedKsi} = stressesAllowed(cell);
    const where = pressedWords(held, cell.spanFt);
    return [
      atMost({
        id: "deck sustained compression", label: "Compression under sustained load", unit: "ksi", clause: sustainedCompressionLimit.clause,
        holds: `Nowhere is it compressed so hard that creep runs away; the most in the ${where}.`,
        fails: `The ${where}, stays compressed so hard that creep would run away: ${held.face === "top" ? "stronger concrete, a deeper member or a shorter span" : "fewer strands, depressed ones, or stronger concrete"}.`,
      }, held.stressKsi, sustainedCompressionKsi),
      ...(sustainedStresses.toppingTopKsi === undefined ? [] : [atMost({
        id: "topping sustained compression", label: "Compression in the topping under sustained load", unit: "ksi", clause: sustainedCompressionLimit.clause,
        holds: "The topping is not compressed so hard that creep runs away.",
        fails: "The topping stays compressed so hard that creep would run away: stronger topping, a deeper member or a shorter span.",
      }, sustainedStresses.toppingTopKsi, toppingSustainedKsi as number)]),
    ];
  },

  steps: (limit, at) => [
    ...squeezedSteps(limit, at, 0.45, (expression, values) => ({
      symbol: "w_s", label: "lasting load at the limit", expression, values, result: at.pressingPsf, unit: "psf", source: "elastic theory",
    })),
    lasting(limit, at.pressingPsf),
  ],
};
