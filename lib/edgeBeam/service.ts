import {soffitNearEndKsi} from "../beams/pressedFace.js";
import type {Design} from "../design/design.js";
import {elasticModulusKsi, ruptureModulusKsi} from "../materials/concrete.js";
import {BAR_MODULUS_KSI} from "../materials/reinforcement.js";
import {camber, type Camber} from "../member/camber.js";
import {liveDeflection} from "../member/deflection.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {SAG_LIMITS, allowedSagIn, countedMovementIn} from "../member/sagLimit.js";
import {fiberStresses, type FiberStresses} from "../member/stress.js";
import {transfer, type Transfer} from "../member/transfer.js";
import {IN_PER_FT} from "../units.js";
import {STIRRUP_DIAMETER_IN} from "./bars.js";
import type {EdgeBeamBending, EdgeBeamStrands} from "./bending.js";
import type {EdgeBeamDemand} from "./demand.js";
import type {EdgeBeamLoads} from "./loads.js";
import type {EdgeBeamSection} from "./section.js";

/** How far the beam moves. */
interface Movement {
  /** Deflection that the floor's sag limit counts, and the most it allows, in. */
  readonly countedIn: number;
  readonly allowedIn: number;
  /** Immediate sag under live load, in. */
  readonly liveIn: number;
}

/** The beam with bars in service. */
export interface BarService extends Movement {
  readonly steel: "bars";
  /** Moment that cracks the soffit, kip-in. */
  readonly crackingKipIn: number;
  readonly crackedInertiaIn4: number;
  /** Effective second moment under dead load, and under all load, in4. */
  readonly deadInertiaIn4: number;
  readonly effectiveInertiaIn4: number;
  /** Immediate sag under dead load, in. */
  readonly deadIn: number;
  /** Stress of the bars under all load in service, ksi. */
  readonly steelKsi: number;
  /** Bars of the lowest row, center to center, and the most that keeps cracks fine, in. */
  readonly spacingIn: number;
  readonly greatestSpacingIn: number;
}

/** The beam with strands in service. */
export interface StrandService extends Movement {
  readonly steel: "strands";
  readonly transfer: Transfer;
  /** At midspan under all load, and under what stays. */
  readonly total: FiberStresses;
  readonly sustained: FiberStresses;
  /** Compression of the soffit near the ends under dead load, after all losses, ksi. */
  readonly soffitNearEndKsi: number;
  readonly camber: Camber;
}

export type EdgeBeamService = BarService | StrandService;

/** Growth of a lasting load's sag in the long term without steel in the compressed side (ACI 318-19 24.2.4.1.1, 24.2.4.1.3). */
export const CREEP_FACTOR = 2;

/** The beam with bars in service: cracks and sag. The floor's own sag limit holds for it too. */
export function barService(design: Design, section: EdgeBeamSection, demand: EdgeBeamDemand, {bars, effectiveDepthIn: d}: EdgeBeamBending): BarService {
  const {edgeBeam: {coverIn, webWidthIn}, criteria, bay} = design;
  const {concrete: material, shape} = section;
  const {inertiaIn4, sbIn3} = shape.section;
  const modulusKsi = elasticModulusKsi(material.unitWeightPcf, material.strengthPsi);
  const n = BAR_MODULUS_KSI / modulusKsi;
  const share = (n * bars.areaIn2) / (webWidthIn * d);
  const axisIn = d * (Math.sqrt(share ** 2 + 2 * share) - share);
  const crackedInertiaIn4 = Math.min(inertiaIn4, (webWidthIn * axisIn ** 3) / 3 + n * bars.areaIn2 * (d - axisIn) ** 2);
  const crackingKipIn = ruptureModulusKsi(material) * sbIn3;
  const inertia = (momentKipIn: number) => effectiveInertiaIn4(momentKipIn, crackingKipIn, inertiaIn4, crackedInertiaIn4);
  const [deadInertiaIn4, allInertiaIn4] = [inertia(demand.deadKipIn), inertia(demand.serviceKipIn)];
  // The course of the moment is taken as that of an even load: 5/48 M L^2 / (E I).
  const sagIn = (momentKipIn: number, inertiaIn4: number) => (5 * momentKipIn * (bay.beamSpanFt * IN_PER_FT) ** 2) / (48 * modulusKsi * inertiaIn4);
  const deadIn = sagIn(demand.deadKipIn, deadInertiaIn4);
  const liveIn = Math.max(0, sagIn(demand.serviceKipIn, allInertiaIn4) - deadIn);
  const {sagLimit, sustainedLiveShare} = criteria;
  const steelKsi = demand.serviceKipIn / (bars.areaIn2 * (d - axisIn / 3));
  const clearCoverIn = coverIn + STIRRUP_DIAMETER_IN;
  const lowest = bars.rows[0] as number;
  const betweenIn = webWidthIn - 2 * clearCoverIn - bars.bar.diameterIn;
  return {
    steel: "bars", crackingKipIn, crackedInertiaIn4, deadInertiaIn4, effectiveInertiaIn4: allInertiaIn4, deadIn, liveIn, steelKsi,
    countedIn: SAG_LIMITS[sagLimit].counts === "live" ? liveIn : liveIn + CREEP_FACTOR * (deadIn + sustainedLiveShare * liveIn),
    allowedIn: allowedSagIn(sagLimit, bay.beamSpanFt),
    spacingIn: lowest > 1 ? betweenIn / (lowest - 1) : webWidthIn,
    greatestSpacingIn: Math.max(0, Math.min(600 / steelKsi - 2.5 * clearCoverIn, 480 / steelKsi)),
  };
}

/**
 * Effective second moment, in4: the whole section's up to two thirds of the cracking moment, then
 * Icr / (1 - (2/3 Mcr/Ma)^2 (1 - Icr/Ig)) (ACI 318-19 24.2.3.5).
 */
export function effectiveInertiaIn4(momentKipIn: number, crackingKipIn: number, wholeIn4: number, crackedIn4: number): number {
  const reducedKipIn = (2 / 3) * crackingKipIn;
  // Stryker disable next-line EqualityOperator: the two meet there
  if (momentKipIn <= reducedKipIn) return wholeIn4;
  return crackedIn4 / (1 - (reducedKipIn / momentKipIn) ** 2 * (1 - crackedIn4 / wholeIn4));
}

/** Stresses of a beam with strands at midspan under a moment, its own included, after all losses. */
function stressesUnder(momentKipIn: number, {bay}: Design, {member, state}: EdgeBeamStrands): FiberStresses {
  const selfKipIn = uniformMomentKipIn(member.selfWeightPlf, bay.beamSpanFt, 0.5);
  return fiberStresses(member, state, state.effectiveForceKip, {precastKipIn: selfKipIn, fullKipIn: momentKipIn - selfKipIn});
}

/** Tension of the soffit of a beam with strands under all load, ksi; 0 where it is compressed. */
export function soffitTensionKsi(design: Design, {serviceKipIn}: EdgeBeamDemand, strands: EdgeBeamStrands): number {
  return Math.max(0, -stressesUnder(serviceKipIn, design, strands).bottomKsi);
}

/** The beam with strands in service: stresses, camber and sag, which hang on no bars beside them. */
export function strandService(design: Design, loads: EdgeBeamLoads, demand: EdgeBeamDemand, strands: EdgeBeamStrands): StrandService {
  const {member, state} = strands;
  const {beamSpanFt} = design.bay;
  const {sagLimit, sustainedLiveShare} = design.criteria;
  const laterPlf = loads.deadPlf - loads.selfPlf;
  const rise = camber(member, beamSpanFt, laterPlf);
  const liveIn = liveDeflection(member, beamSpanFt, state, laterPlf, loads.livePlf).deflectionIn;
  const cut = transfer(member, beamSpanFt);
  return {
    steel: "strands", transfer: cut, camber: rise, liveIn,
    soffitNearEndKsi: soffitNearEndKsi(member, beamSpanFt, laterPlf, cut.transferLengthIn),
    total: stressesUnder(demand.serviceKipIn, design, strands),
    sustained: stressesUnder(demand.deadKipIn + sustainedLiveShare * (demand.serviceKipIn - demand.deadKipIn), design, strands),
    countedIn: countedMovementIn(sagLimit, rise, liveIn, sustainedLiveShare),
    allowedIn: allowedSagIn(sagLimit, beamSpanFt),
  };
}
