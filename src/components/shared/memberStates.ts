import type {Evaluation} from "../../lib/evaluate.js";
import {allowables} from "../../lib/member/allowables.js";
import type {FiberStresses} from "../../lib/member/stress.js";
import {centroidAt, TWO_POINT_SHARE, type StrandLayout} from "../../lib/prestress/layout.js";
import {percent} from "../../lib/units.js";
import type {StressState} from "../drawings/stressDiagrams.js";

const PSI_PER_KSI = 1000;

/** The stress diagrams of a design's deck: at its two places when the strands are cut, and in service at midspan. */
export function stressStates({member, deck}: Evaluation): StressState[] {
  const allowed = allowables(member, deck.criteria.tensionClass);
  const {end, midspan} = deck.transfer;
  const share = deck.criteria.sustainedLiveShare;
  return [
    state("strands just cut, near the end", end.stresses, -allowed.transferTensionEndKsi, allowed.transferCompressionEndKsi),
    state("strands just cut, at midspan", midspan.stresses, -allowed.transferTensionKsi, allowed.transferCompressionKsi),
    state(share > 0 ? `dead load and ${percent(share)} of live, midspan` : "dead load alone, at midspan", deck.sustainedStresses, allowed.sustainedCompressionKsi, undefined),
    state("full load, at midspan", deck.totalStresses, allowed.totalCompressionKsi, -allowed.serviceTensionKsi),
  ];
}

function state(label: string, stresses: FiberStresses, limitTopKsi: number | undefined, limitBottomKsi: number | undefined): StressState {
  const psi = (ksi: number | undefined) => (ksi === undefined ? undefined : ksi * PSI_PER_KSI);
  return {
    label,
    topPsi: stresses.topKsi * PSI_PER_KSI, bottomPsi: stresses.bottomKsi * PSI_PER_KSI,
    toppingTopPsi: psi(stresses.toppingTopKsi), toppingBottomPsi: psi(stresses.toppingBottomKsi),
    limitTopPsi: psi(limitTopKsi), limitBottomPsi: psi(limitBottomKsi),
  };
}

/** The course of the strands' centroid, for the elevation. */
export function strandPath(layout: StrandLayout): {share: number; heightIn: number}[] {
  const shares = layout.profile === "straight" ? [0, 1] : layout.profile === "one-point" ? [0, 0.5, 1] : [0, TWO_POINT_SHARE, 1 - TWO_POINT_SHARE, 1];
  return shares.map((share) => ({share, heightIn: centroidAt(layout, share)}));
}
