import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import {SPAN_RANGE_FT} from "../deck/safeLoad.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import {shearRootPsi} from "../materials/shearRoot.js";
import {camber, type Camber} from "../member/camber.js";
import {crackedStateAt, CRACK_CONTROL_KSI} from "../member/crackedSection.js";
import {liveDeflection, type LiveDeflection} from "../member/deflection.js";
import {developmentShares, partlyDevelopedStrength} from "../member/development.js";
import type {FlexuralStrength} from "../member/flexure.js";
import {handling, type Handling} from "../member/handling.js";
import type {Member} from "../member/member.js";
import {crackingMomentKipIn} from "../member/minimumStrength.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {allowedSagIn, countedMovementIn} from "../member/sagLimit.js";
import {HIGHLY_PRESTRESSED_FLOOR, designShearKip, shearAt, type ShearAt} from "../member/shear.js";
import {shearShares} from "../member/shearPlace.js";
import {stirrups, type PlacedStirrups} from "../member/stirrups.js";
import {memberStrength} from "../member/strength.js";
import {fiberStresses, type FiberStresses} from "../member/stress.js";
import {handled, type Handled} from "../member/stripping.js";
import {transfer, type Transfer} from "../member/transfer.js";
import {LB_PER_KIP} from "../units.js";
import {beamCapacity, type BeamCapacity} from "../beams/beamCapacity.js";
import {soffitNearEndKsi} from "../beams/pressedFace.js";
import {ownBeamCriteria, type BeamCriteria} from "../beams/beamCriteria.js";
import {LEAST_GLOBAL_STRESS_FACTOR, globalStressFactor} from "../beams/ledgePunching.js";
import {factored, factoredShearKip, girderLoads, type GirderLoads} from "./loads.js";
import {girderSeat, type GirderSeat} from "./seat.js";
import {girderSection, type GirderSection} from "./section.js";
import {girderTwist, type GirderTwist} from "./twist.js";

/** Shear at the place where it comes nearest to what the girder carries. */
export interface GirderShear {
  readonly share: number;
  readonly strength: ShearAt;
  readonly factoredKip: number;
  /** With as many stirrups as the code allows, kip. */
  readonly designKip: number;
  /** Where the shear requires most of the stirrups, with the shear and the strength of that place; the least of any place counts too. */
  readonly stirrups: PlacedStirrups & {readonly strength: ShearAt; readonly factoredKip: number};
}

/** Bending of the girder between two bays, its stresses and how far it moves: all that its number of strands answers for. */
export interface GirderBending extends GirderSection {
  readonly kind: Design["girder"]["kind"];
  readonly deckDepthIn: number;
  readonly spanFt: number;
  readonly loads: GirderLoads;
  readonly criteria: BeamCriteria;
  /** Safe load beyond the girder's own weight, and what the deck requires, with the stems' part in it, plf. */
  readonly capacity: BeamCapacity;
  readonly demandPlf: number;
  readonly momentKipIn: number;
  /** Factored reaction of one end, kip. */
  readonly reactionKip: number;
  readonly midspan: PrestressState;
  readonly strength: FlexuralStrength;
  readonly crackingMomentKipIn: number;
  /** Strength where strands take hold, at the place where the moment comes nearest to it. */
  readonly development: {readonly share: number; readonly strength: FlexuralStrength; readonly factoredMomentKipIn: number};
  readonly totalStresses: FiberStresses;
  readonly sustainedStresses: FiberStresses;
  /** Compression of the soffit near the ends under dead load, after all losses, ksi. */
  readonly soffitNearEndKsi: number;
  readonly serviceMomentKipIn: number;
  /** Moment at which the strands of a cracked section are stretched as far as crack control allows, kip-in. */
  readonly crackControlKipIn: number;
  readonly transfer: Transfer;
  readonly camber: Camber;
  readonly live: LiveDeflection;
  readonly movementIn: number;
  readonly allowedMovementIn: number;
}

/** The first size of the girder between two bays, before it is checked. */
export interface UncheckedGirder extends GirderBending {
  readonly shear: GirderShear;
  readonly twist: GirderTwist;
  readonly seat: GirderSeat;
  readonly stripping: Handled;
  readonly onTheRoad: Handled;
  readonly handling: Handling;
}

/** A girder at midspan under its loads: what its number of strands is judged by first. */
export type GirderAtMidspan = GirderSection & Pick<GirderBending, "kind" | "deckDepthIn" | "spanFt" | "loads" | "momentKipIn" | "midspan" | "totalStresses">;
/** The same with its strength there. */
export type GirderStrength = Pick<GirderBending, "strength" | "crackingMomentKipIn">;

/**
 * The girder of a design with more than one bay across at midspan.
 *
 * @param like - one of the same size and concrete with another number of strands, whose outline and loads are the same
 */
export function girderAtMidspan(design: Design, catalog: Catalog, deck: Member, loads: FloorLoads, like?: GirderAtMidspan): GirderAtMidspan {
  const {bay: {beamSpanFt: spanFt}, girder: {kind}} = design;
  const deckDepthIn = deck.compression.depthIn;
  const {member, depthIn, strandsMost, strandsAsked, belowDeckIn} = girderSection(design, catalog, deckDepthIn, like);
  const on = like?.loads ?? girderLoads(design, deck, loads, member.selfWeightPlf);
  const {momentFactor} = on.stems;
  const midspan = prestressState(member, spanFt, 0.5, momentFactor * on.deckDeadPlf);
  return {
    member, depthIn, strandsMost, strandsAsked, belowDeckIn, kind, deckDepthIn, spanFt, loads: on, midspan,
    momentKipIn: factored(on.selfPlf, {deadPlf: on.deckDeadPlf, livePlf: on.livePlf}, momentFactor) * uniformMomentKipIn(1, spanFt, 0.5),
    totalStresses: inService(member, spanFt, on, midspan, 1),
  };
}

/** Stresses of a girder at midspan under dead load and a share of live load. */
function inService(member: Member, spanFt: number, {deckDeadPlf, livePlf, stems: {momentFactor}}: GirderLoads, midspan: PrestressState, share: number): FiberStresses {
  const unitKipIn = uniformMomentKipIn(1, spanFt, 0.5);
  return fiberStresses(member, midspan, midspan.effectiveForceKip, {
    precastKipIn: member.selfWeightPlf * unitKipIn, fullKipIn: (momentFactor * deckDeadPlf + share * (momentFactor * livePlf)) * unitKipIn,
  });
}

/** The strength of a girder at midspan. */
export function girderStrength({member, spanFt, midspan}: GirderAtMidspan): GirderStrength {
  return {strength: memberStrength(member, 0.5, midspan.losses.effectiveStressKsi), crackingMomentKipIn: crackingMomentKipIn(member, spanFt, midspan)};
}

/** Moment at which the strands of a cracked girder are stretched as far as crack control allows, kip-in. */
export function crackControlKipIn({member, midspan}: GirderAtMidspan): number {
  return crackedStateAt(member, midspan, CRACK_CONTROL_KSI.most).momentKipIn;
}

/** Moment of a girder at midspan in service, kip-in. */
export function serviceMomentKipIn({member, spanFt, loads: {deckDeadPlf, livePlf, stems: {momentFactor}}}: GirderAtMidspan): number {
  return (member.selfWeightPlf + momentFactor * deckDeadPlf + momentFactor * livePlf) * uniformMomentKipIn(1, spanFt, 0.5);
}

/** How a girder moves: its camber, its deflection under live load, and what of both counts, in. */
export function girderMovement({criteria: {sagLimit, sustainedLiveShare}}: Design, {member, spanFt, loads: {deckDeadPlf, livePlf, stems: {momentFactor}}, midspan}: GirderAtMidspan): Pick<GirderBending, "camber" | "live" | "movementIn" | "allowedMovementIn"> {
  const shape = camber(member, spanFt, momentFactor * deckDeadPlf);
  const live = liveDeflection(member, spanFt, midspan, momentFactor * deckDeadPlf, momentFactor * livePlf);
  return {camber: shape, live, movementIn: countedMovementIn(sagLimit, shape, live.deflectionIn, sustainedLiveShare), allowedMovementIn: allowedSagIn(sagLimit, spanFt)};
}

/** The girder as it bends, without its shear, its seat and its way. */
export function girderBending(design: Design, at: GirderAtMidspan, strong = girderStrength(at), moves = girderMovement(design, at), cut = transfer(at.member, at.spanFt)): GirderBending {
  const {criteria: rules} = design;
  const {member, spanFt, loads: on, midspan} = at;
  const {momentFactor, reactionFactor} = on.stems;
  const criteria: BeamCriteria = {
    ...ownBeamCriteria(on.deckDeadPlf / on.superimposedPlf, rules.sustainedLiveShare), tensionClass: rules.tensionClass,
  };
  const capacity = beamCapacity(member, Math.max(SPAN_RANGE_FT.min, spanFt), criteria);
  const deckPlf = {deadPlf: on.deckDeadPlf, livePlf: on.livePlf};
  const factoredPlf = factored(on.selfPlf, deckPlf, momentFactor);
  return {
    ...at, ...strong, ...moves, criteria, capacity,
    demandPlf: on.superimposedPlf * (capacity.governs === "shear" ? reactionFactor : momentFactor),
    reactionKip: (factored(on.selfPlf, deckPlf, reactionFactor) * spanFt) / 2 / LB_PER_KIP,
    development: weakestDevelopment(member, spanFt, momentFactor * on.deckDeadPlf, factoredPlf, midspan, strong.strength),
    sustainedStresses: inService(member, spanFt, on, midspan, rules.sustainedLiveShare),
    serviceMomentKipIn: serviceMomentKipIn(at),
    crackControlKipIn: crackControlKipIn(at),
    soffitNearEndKsi: soffitNearEndKsi(member, spanFt, on.deckDeadPlf, cut.transferLengthIn),
    transfer: cut,
  };
}

/** Shear of a girder at the place where it comes nearest to what the girder carries. */
export function girderShear({member, spanFt, loads: on}: GirderAtMidspan): GirderShear {
  return mostSheared(member, spanFt, on.stems.momentFactor * on.deckDeadPlf, on);
}

/** The deck's seat on a girder, with its ledges. Of shear no more is asked where the moment alone takes from the ledges all that use of the girder's strength can. */
export function girderSeatOn(design: Design, deck: Member, loads: FloorLoads, at: GirderAtMidspan, strong: () => Pick<GirderStrength, "strength">, sheared: () => GirderShear): GirderSeat {
  const {member, loads: on, midspan, momentKipIn} = at;
  const use = (): number => {
    const bent = momentKipIn / strong().strength.designMomentKipIn;
    if (globalStressFactor(bent) === LEAST_GLOBAL_STRESS_FACTOR) return bent;
    const {factoredKip, designKip} = sheared();
    return Math.max(bent, factoredKip / designKip);
  };
  return girderSeat(design, deck, member, loads, on, {use, centroidStressKsi: midspan.effectiveForceKip / member.section.areaIn2});
}

/**
 * A girder whose bending is known, with its shear, the deck's seat and its way.
 *
 * @param known - what of these was made already
 */
export function wholeGirder(design: Design, deck: Member, loads: FloorLoads, bending: GirderBending, known: Partial<Pick<UncheckedGirder, "shear" | "seat" | "stripping">> = {}): UncheckedGirder {
  const {member, spanFt, loads: on} = bending;
  const {shear = girderShear(bending)} = known;
  const {seat = girderSeatOn(design, deck, loads, bending, () => bending, () => shear), stripping = handled(member, spanFt, "stripping")} = known;
  return {
    ...bending, shear, seat,
    twist: girderTwist(member, spanFt, on, deck, shear, seat.eccentricityIn),
    stripping, onTheRoad: handled(member, spanFt, "hauling"), handling: handling(member, spanFt),
  };
}

/**
 * The place where the factored shear comes nearest to what the section may carry: from the support itself where the
 * deck hangs on ledges near the bottom (ACI 318-19 9.4.3.2), else from half the depth on.
 */
function mostSheared(member: Member, spanFt: number, deadPlf: number, on: GirderLoads): GirderShear {
  const [firstShare, ...shares] = [...(member.shape.family === "inverted tee" ? [0] : []), ...shearShares(member, spanFt)] as [number, ...number[]];
  const shearedAt = (share: number, factoredKip: number) => {
    const strength = shearAt(member, spanFt, prestressState(member, spanFt, share, deadPlf));
    const {forShearIn2PerFt, leastIn2PerFt} = stirrups(member, strength, factoredKip);
    return {share, strength, factoredKip, designKip: designShearKip(member, strength), forShearIn2PerFt, leastIn2PerFt};
  };
  const first = shearedAt(firstShare, factoredShearKip(on, spanFt, firstShare));
  const least = leastStrength(member, first.strength);
  const leastDesignKip = least && designShearKip(member, least);
  let [nearest, most] = [first, first];
  let {leastIn2PerFt} = first;
  for (const share of shares) {
    const factoredKip = factoredShearKip(on, spanFt, share);
    // Most places further in carry so little that not even the least strength of any makes them count.
    if (least && leastDesignKip && leastIn2PerFt > 0 && factoredKip / leastDesignKip <= nearest.factoredKip / nearest.designKip && stirrups(member, least, factoredKip).forShearIn2PerFt <= most.forShearIn2PerFt) continue;
    const place = shearedAt(share, factoredKip);
    if (place.factoredKip / place.designKip > nearest.factoredKip / nearest.designKip) nearest = place;
    if (place.forShearIn2PerFt > most.forShearIn2PerFt) most = place;
    leastIn2PerFt = Math.max(leastIn2PerFt, place.leastIn2PerFt);
  }
  const {share, strength, factoredKip, designKip} = nearest;
  return {share, strength, factoredKip, designKip, stirrups: {share: most.share, strength: most.strength, factoredKip: most.factoredKip, forShearIn2PerFt: most.forShearIn2PerFt, leastIn2PerFt}};
}

/**
 * A shear strength that no place further in falls below: lambda sqrt(f'c) bw d times what highly prestressed concrete has
 * at least (ACI 318-19 22.5.6.3.1). Level strands lie at one depth, and below the centroid they lose most where own weight
 * relieves them least, so that all places are prestressed as highly as one near the end. Undefined where that one is not.
 */
function leastStrength({concrete, shape, layout, section, compression}: Member, nearEnd: ShearAt): ShearAt | undefined {
  const {depthIn, highlyPrestressed} = nearEnd;
  if (!highlyPrestressed || layout.profile !== "straight" || layout.centroidCenterIn > section.ybIn || compression.depthIn > section.depthIn) return undefined;
  const leastKip = (HIGHLY_PRESTRESSED_FLOOR * shearRootPsi(concrete) * shape.webWidthIn * depthIn) / 1000;
  return {...nearEnd, flexureShearKip: leastKip, webShearKip: leastKip, concreteKip: leastKip};
}

/** The place near the ends where the factored moment comes nearest to what partly developed strands carry. */
function weakestDevelopment(
  member: Member, spanFt: number, deadPlf: number, factoredPlf: number, midspan: PrestressState, developed: FlexuralStrength,
): UncheckedGirder["development"] {
  const places = developmentShares(member, spanFt, midspan.losses.effectiveStressKsi, developed).map((share) => ({
    share,
    strength: partlyDevelopedStrength(member, spanFt, prestressState(member, spanFt, share, deadPlf), developed),
    factoredMomentKipIn: uniformMomentKipIn(factoredPlf, spanFt, share),
  }));
  const used = (place: (typeof places)[number]) => place.factoredMomentKipIn / place.strength.designMomentKipIn;
  // Stryker disable next-line EqualityOperator: of two alike either is the weakest
  return places.reduce((weakest, place) => (used(place) > used(weakest) ? place : weakest));
}
