import type {Camber} from "../member/camber.js";
import {WATER_PCF, fillRatio} from "../member/fillRatio.js";
import type {Member} from "../member/member.js";
import type {EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import type {GirderResult} from "../girder/girder.js";
import type {Design} from "../design/design.js";
import {elasticModulusKsi} from "../materials/concrete.js";
import {inches} from "../units.js";
import type {FallPlan} from "./fallPlan.js";
import {standingWater, type StandingWater} from "./standingWater.js";
import {ROOF_AGES, roofSurface, type RoofAge, type SurfacePoint} from "./surface.js";

/** A roof's surface at one age, with the water that stays on it when it has rained, and while its drains are blocked. */
export interface PondingState {
  readonly age: RoofAge;
  readonly surface: readonly (readonly SurfacePoint[])[];
  readonly after: StandingWater;
  readonly blocked: StandingWater;
}

/** A beam of the roof and how it takes part in ponding. */
export interface BeamFlexibility {
  readonly beam: "edge beam" | "girder";
  readonly spanFt: number;
  /** Width of roof whose water it carries, in. */
  readonly widthIn: number;
  readonly modulusKsi: number;
  readonly inertiaIn4: number;
  /** Cp: flexibility ratio of the beam under all the water of its width. */
  readonly ratio: number;
}

/** How a roof stands against water. */
export interface Ponding {
  /** Cs: flexibility ratio of the deck member; the water on a span grows by 1/(1 - Cs). */
  readonly ratio: number;
  /** 1/(1 - Cs); undefined from Cs = 1 on, where water would gather without end. */
  readonly amplification: number | undefined;
  /** The more flexible beam first. */
  readonly beams: readonly BeamFlexibility[];
  /** Cp + 0.9 Cs of the bay on the most flexible beam. */
  readonly combined: number;
  readonly states: readonly PondingState[];
  /** The greatest depth that stays once it has rained, in, at whatever age. */
  readonly trappedIn: number;
  /** Load of water while the drains are blocked, at the bay and age where it bends the deck most, psf; undefined where it grows without end. */
  readonly blockedPsf: number | undefined;
}

/** Share of the deck's flexibility that counts besides the beam's (AISC 360-16 Appendix 2.1). */
export const DECK_PART = 0.9;

/**
 * A roof against ponding: its deck and beams by their flexibility, and the water that stays on it, from first principles.
 * Sections are uncracked but that of an edge beam with bars, which counts as it is cracked under all load.
 *
 * @param headIn - depth of water above the drains while they are blocked, up to the overflow and over it, in
 */
export function ponding(
  design: Design, plan: FallPlan, of: {readonly member: Member; readonly camber: Camber; readonly edgeBeam: EdgeBeamResult; readonly girder: GirderResult | undefined}, headIn: number,
): Ponding {
  const {bay} = design;
  const {member} = of;
  const ratio = fillRatio(WATER_PCF, member.shape.widthIn, bay.spanFt, member.modulusKsi, member.full.inertiaIn4);
  const beams = [edgeFlexibility(design, of.edgeBeam), ...(of.girder ? [girderFlexibility(design, of.girder)] : [])].sort((a, b) => b.ratio - a.ratio);
  const states = ROOF_AGES.map((age): PondingState => {
    const surface = roofSurface(plan, bay, member, of.camber, age);
    return {age, surface, after: standingWater(surface, member, bay.spanFt, 0), blocked: standingWater(surface, member, bay.spanFt, headIn)};
  });
  return {
    ratio, beams, states,
    amplification: ratio < 1 ? 1 / (1 - ratio) : undefined,
    combined: (beams[0] as BeamFlexibility).ratio + DECK_PART * ratio,
    trappedIn: Math.max(...states.map(({after}) => after.greatestIn)),
    blockedPsf: states.every(({blocked}) => blocked.settled) ? Math.max(...states.map(({blocked}) => blocked.momentPsf)) : undefined,
  };
}

function edgeFlexibility({bay}: Design, {concrete, section, service, strands}: EdgeBeamResult): BeamFlexibility {
  const inertiaIn4 = service.steel === "bars" ? service.effectiveInertiaIn4 : (strands?.member.full.inertiaIn4 ?? section.inertiaIn4);
  return flexibility("edge beam", bay.beamSpanFt, inches(bay.spanFt / 2), elasticModulusKsi(concrete.unitWeightPcf, concrete.strengthPsi), inertiaIn4);
}

function girderFlexibility({bay}: Design, {member}: GirderResult): BeamFlexibility {
  return flexibility("girder", bay.beamSpanFt, inches(bay.spanFt), member.modulusKsi, member.full.inertiaIn4);
}

function flexibility(beam: BeamFlexibility["beam"], spanFt: number, widthIn: number, modulusKsi: number, inertiaIn4: number): BeamFlexibility {
  return {beam, spanFt, widthIn, modulusKsi, inertiaIn4, ratio: fillRatio(WATER_PCF, widthIn, spanFt, modulusKsi, inertiaIn4)};
}

