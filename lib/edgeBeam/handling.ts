import {exceeds} from "../checks.js";
import type {Design} from "../design/design.js";
import {PAYLOAD_KIP} from "../member/handling.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {JOLT, LIFT_SHARE, handled, type Handled} from "../member/stripping.js";
import {RELEASE_SHARE, type EdgeBeamStrands} from "./bending.js";
import type {EdgeBeamSection} from "./section.js";

/** The beam on its way from the form to the building. */
export interface EdgeBeamHandling {
  readonly weightKip: number;
  /** Usual payload of a legal truck, kip. */
  readonly payloadKip: number;
  /** Stresses of its concrete in the plant and on the road: with strands face by face, as of a deck. */
  readonly way: {readonly steel: "bars"; readonly steps: readonly BarStep[]} | {readonly steel: "strands"; readonly steps: readonly Handled[]};
}

/** Greatest tension and compression of a beam with bars at one step, and what they may be, ksi. */
export type BarStep = Pick<Handled, "moment" | "tensionKsi" | "compressionKsi" | "allowedTensionKsi" | "allowedCompressionKsi">;

/**
 * Weight and stresses as the beam is stripped and hauled, upright, hung or carried near its ends. A beam with strands is
 * looked at as any pretensioned piece ({@link handled}). One with bars is held to 7.5 sqrt(f'c) / 1.5 at its strength of
 * that day, so that it does not crack (PCI Design Handbook, 7th ed., ch. 8; from memory).
 */
export function edgeBeamHandling(design: Design, section: EdgeBeamSection, selfPlf: number, strands: EdgeBeamStrands | undefined): EdgeBeamHandling {
  const spanFt = design.bay.beamSpanFt;
  const moments = ["stripping", "hauling"] as const;
  return {
    weightKip: (selfPlf * spanFt) / 1000, payloadKip: PAYLOAD_KIP,
    way: strands
      ? {steel: "strands", steps: moments.map((moment) => handled(strands.member, spanFt, moment))}
      : {steel: "bars", steps: moments.map((moment) => withBars(section, selfPlf, spanFt, moment))},
  };
}

/** Whether a beam with bars of a section would crack on its way, whatever else is known of it. */
export function failsOnItsWay(section: EdgeBeamSection, selfPlf: number, spanFt: number): boolean {
  return (["stripping", "hauling"] as const).some((moment) => {
    const {tensionKsi, allowedTensionKsi} = withBars(section, selfPlf, spanFt, moment);
    return exceeds(tensionKsi, allowedTensionKsi);
  });
}

function withBars({shape, concrete}: EdgeBeamSection, selfPlf: number, spanFt: number, moment: keyof typeof JOLT): BarStep {
  const momentKipIn = uniformMomentKipIn(JOLT[moment] * selfPlf, spanFt, 0.5) * (1 - 4 * LIFT_SHARE);
  const strengthPsi = (moment === "stripping" ? RELEASE_SHARE : 1) * concrete.strengthPsi;
  return {
    moment,
    tensionKsi: momentKipIn / shape.section.sbIn3, compressionKsi: momentKipIn / shape.section.stIn3,
    // Stryker disable next-line ArithmeticOperator: these beams are of normalweight concrete, whose lambda is 1
    allowedTensionKsi: (5 * concrete.lambda * Math.sqrt(strengthPsi)) / 1000, allowedCompressionKsi: (0.6 * strengthPsi) / 1000,
  };
}
