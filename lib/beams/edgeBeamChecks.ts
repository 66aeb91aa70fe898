import {atLeast, atMost, outOfRange, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {EdgeBeamResult} from "./edgeBeam.js";

/** Least ledge projection and depth, in (common practice). */
export const LEAST_LEDGE_IN = 8;
/** Usual and greatest upstand above the structural floor, in (common practice): above it daylight and view suffer. */
export const UPSTAND_IN = {usual: 30, most: 36} as const;

/** First checks of the edge beam; the ledge's own strength and the torsion steel are beyond a first size. */
export function edgeBeamChecks(design: Design, beam: Omit<EdgeBeamResult, "checks">): Check[] {
  const {edgeBeam: input} = design;
  return [
    atLeast({
      id: "ledge projection", label: "Ledge, how far out", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The ledge is wide enough for pad, joint and tolerances.",
      fails: "The ledge is too narrow to seat the deck with its pad, joint and tolerances.",
    }, input.ledgeProjectionIn, LEAST_LEDGE_IN),
    atLeast({
      id: "ledge depth", label: "Ledge, how deep", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The ledge is deep enough for its first size.",
      fails: "The ledge is too shallow to carry the deck.",
    }, input.ledgeDepthIn, LEAST_LEDGE_IN),
    atLeast({
      id: "seat", label: "Deck on the ledge, after tolerances", unit: "in", clause: "ACI 318-19 16.2.6.2",
      holds: "Even the shortest deck member keeps its seat.",
      fails: "A short deck member could lose its seat: widen the ledge or narrow the joint.",
    }, beam.seat.afterToleranceIn, beam.seat.neededIn),
    atMost({
      id: "upstand", label: "Upstand", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The upstand leaves the window low enough to see out when seated.",
      fails: "The upstand hides the view of those who sit and shades the desk inside it.",
    }, input.upstandIn, UPSTAND_IN.most),
    atMost({
      id: "beam strength", label: "Beam in bending", unit: "kip-in", clause: "ACI 318-19 22.3, 21.2.2",
      holds: `${beam.bars.count} ${beam.bars.bar.size} bars carry the factored moment.`,
      fails: "No practical number of bars carries the factored moment: make the beam deeper or its bars larger.",
    }, beam.momentKipIn, beam.strength.designMomentKipIn),
    atLeast({
      id: "beam least steel", label: "Least steel in the beam", unit: "in2", clause: "ACI 318-19 9.6.1.2",
      holds: "The beam would crack before it breaks.",
      fails: "The beam could break as it first cracks.",
    }, beam.bars.areaIn2, beam.leastSteelIn2),
    atMost({
      id: "beam shear", label: "Beam in shear, with stirrups", unit: "kip", clause: "ACI 318-19 22.5.1.2",
      holds: beam.shearKip > beam.concreteShearKip ? "Stirrups can carry what the concrete does not." : "The concrete carries the shear; least stirrups suffice.",
      fails: "The web is too small for the shear, whatever the stirrups: widen or deepen it.",
    }, beam.shearKip, beam.greatestShearKip),
    beam.torsionKipIn <= beam.torsionThresholdKipIn
      ? atMost({
        id: "beam torsion", label: "Twist from the ledge", unit: "kip-in", clause: "ACI 318-19 22.7.4.1",
        holds: "The twist is small enough to leave out of the count.", fails: "",
      }, beam.torsionKipIn, beam.torsionThresholdKipIn)
      : outOfRange({
        id: "beam torsion", label: "Twist from the ledge", unit: "kip-in", clause: "ACI 318-19 22.7.4.1",
        message: "The deck stands off the web's centre and twists the beam more than may be left out. Closed stirrups and bars along all sides are needed; this first size does not design them, nor the ledge's own steel.",
      }, beam.torsionKipIn, beam.torsionThresholdKipIn),
  ];
}
