import {atLeast, atMost} from "../../checks.js";
import {LEAST_FREQUENCY_HZ, vibration as walkedOn, type Vibration} from "../../member/vibration.js";
import {given} from "../../step.js";
import type {Cell} from "../cell.js";
import {GATE_LOOK, type Gate} from "../limit.js";
import {overAllowed} from "../limitSteps.js";

/** People who sit still do not feel others walk, and steps cannot drive the floor. */
export const vibrationLimit: Gate<"vibration"> = {
  name: "vibration", kind: "gate", setting: "walking",
  clause: "AISC Design Guide 11, 1997, Table 4.1 (from memory)",
  asks: "Would people feel others walk?",
  look: {letter: "W", ...GATE_LOOK},

  use(cell) {
    const found = here(cell);
    return found && Math.max(LEAST_FREQUENCY_HZ / found.frequencyHz, found.acceleration / found.allowedAcceleration);
  },

  checks: (_, {service: {vibration: found}}) => (found ? [
    atMost({
      id: "deck walking", label: "Vibration from walking, share of gravity", unit: "%", clause: vibrationLimit.clause,
      holds: "People sitting still do not feel others walk.",
      fails: "People sitting still feel others walk: a thicker topping, a deeper member or a shorter span.",
    }, 100 * found.acceleration, 100 * found.allowedAcceleration),
    atLeast({
      id: "deck frequency", label: "First natural frequency", unit: "Hz", clause: vibrationLimit.clause,
      holds: "It vibrates too fast for footsteps to drive it.",
      fails: "It vibrates as slowly as people step, and a few of them can drive it: a deeper member or a shorter span.",
    }, found.frequencyHz, LEAST_FREQUENCY_HZ),
  ] : []),

  measure(cell, use) {
    const {frequencyHz, acceleration, allowedAcceleration} = here(cell) as Vibration;
    return overAllowed(`max(${LEAST_FREQUENCY_HZ} / f, a / a_0)`, {
      f: given(frequencyHz, "Hz", "first natural frequency"), a: given(acceleration, "", "acceleration by a walker, share of gravity"),
      a_0: given(allowedAcceleration, "", "acceleration that is tolerated"),
    }, use, vibrationLimit.clause);
  },

  loses: () => "Carries the load, but people would feel others walk.",
};

function here({member, spanFt, deadPlf, rules: {walking}}: Cell): Vibration | undefined {
  return walking && walkedOn(member, spanFt, deadPlf, walking);
}
