import {InputError} from "../errors.js";
import {CONCRETE_CRUSHING_STRAIN} from "../materials/concrete.js";
import {barStressKsi} from "../materials/reinforcement.js";
import {strengthReduction, TENSION_CONTROLLED_STRAIN} from "../member/flexure.js";
import {clipped, integrate, type Ring} from "../sections/polygon.js";
import {axialCapKip, BAR_YIELD_STRAIN, capacityAlong} from "./interaction.js";
import {fallsThroughZero} from "./root.js";
import type {ColumnSection} from "./section.js";

/** Axial load, compression positive, and moments about the middle: bending in the direction of depth, and of width. */
export interface BiaxialLoad {
  readonly axialKip: number;
  readonly depthMomentKipIn: number;
  readonly widthMomentKipIn: number;
}

/** A column at the moment when its most compressed corner reaches 0.003, for one place of the neutral axis. */
export interface BiaxialState extends BiaxialLoad {
  /** From the corner square to the neutral axis, in; 0 where the whole section is in tension. */
  readonly neutralAxisIn: number;
  /** Between that distance and the depth, rad: 0 bends the depth alone, a quarter turn the width alone. */
  readonly angleRad: number;
  /** Concrete under the equivalent block, in2, and its centroid from the corner, in: along the width and the depth. */
  readonly block: {readonly areaIn2: number; readonly xIn: number; readonly yIn: number};
  /** Net tensile strain of the farthest bar, negative in compression; undefined in pure tension, where it has no bound. */
  readonly tensileStrain: number | undefined;
  readonly phi: number;
  /** Strength times phi, before the cap on axial load. */
  readonly design: BiaxialLoad;
}

/** What a column can carry in the proportion of axial load to both moments that was asked for. */
export interface BiaxialCapacity extends BiaxialLoad {
  readonly state: BiaxialState;
  /** Whether the cap on axial load decides. */
  readonly capped: boolean;
}

/** Sine and cosine of an angle, exact at its ends. */
function directionOf(angleRad: number): readonly [number, number] {
  return angleRad <= 0 ? [0, 1] : angleRad >= Math.PI / 2 ? [1, 0] : [Math.sin(angleRad), Math.cos(angleRad)];
}

/** From the corner square to the neutral axis' direction, in. */
export function inclinedDepthIn({xIn, yIn}: {readonly xIn: number; readonly yIn: number}, angleRad: number): number {
  const [sine, cosine] = directionOf(angleRad);
  return xIn * sine + yIn * cosine;
}

/** Share of a bar that lies in the block, which it enters over its own diameter. */
export function shareInBlock({bar, zone}: ColumnSection, barDepthIn: number, neutralAxisIn: number): number {
  return Math.max(0, Math.min(1, ((zone.blockFactor[0] as number) * neutralAxisIn - barDepthIn) / bar.diameterIn + 0.5));
}

/** Pull of a bar with the pressed concrete whose place it takes, kip; negative where it is pressed. */
function pullKip(section: ColumnSection, barDepthIn: number, neutralAxisIn: number): number {
  const strain = neutralAxisIn > 0 ? (CONCRETE_CRUSHING_STRAIN * (barDepthIn - neutralAxisIn)) / neutralAxisIn : Infinity;
  return section.bar.areaIn2 * (barStressKsi(strain) + (section.zone.stressKsi[0] as number) * shareInBlock(section, barDepthIn, neutralAxisIn));
}

/**
 * Strength for one neutral axis by strain compatibility: plane sections, 0.003 at the corner, a block of beta1 times the
 * axis' distance with its edge along it, bars elastic and then constant, concrete displaced by bars within the block
 * taken off (ACI 318-19 22.2); phi by the bar farthest from the corner (21.2.2). A bar enters the block over its own
 * diameter, as in the bending about one axis, which this is at an angle of 0.
 *
 * @param neutralAxisIn - 0 (pure tension) to {@link fullyPressedIn}; beyond it nothing changes
 * @param angleRad - 0 to a quarter turn
 */
export function biaxialState(section: ColumnSection, neutralAxisIn: number, angleRad: number): BiaxialState {
  const {widthIn, depthIn, zone, bars} = section;
  const [sine, cosine] = directionOf(angleRad);
  const whole: Ring = [[0, 0], [widthIn, 0], [widthIn, depthIn], [0, depthIn]];
  const {areaIn2, firstMomentIn3, firstMomentAcrossIn3} = integrate([clipped(whole, sine, cosine, (zone.blockFactor[0] as number) * neutralAxisIn)]);
  const stressKsi = zone.stressKsi[0] as number;
  let axialKip = stressKsi * areaIn2;
  let depthMomentKipIn = stressKsi * (areaIn2 * (depthIn / 2) - firstMomentIn3);
  let widthMomentKipIn = stressKsi * (areaIn2 * (widthIn / 2) - firstMomentAcrossIn3);
  let farthestIn = 0;
  for (const place of bars.places) {
    const barDepthIn = place.xIn * sine + place.yIn * cosine;
    const kip = pullKip(section, barDepthIn, neutralAxisIn);
    axialKip -= kip;
    depthMomentKipIn += kip * (place.yIn - depthIn / 2);
    widthMomentKipIn += kip * (place.xIn - widthIn / 2);
    farthestIn = Math.max(farthestIn, barDepthIn);
  }
  const tensileStrain = neutralAxisIn > 0 ? (CONCRETE_CRUSHING_STRAIN * (farthestIn - neutralAxisIn)) / neutralAxisIn : undefined;
  const phi = strengthReduction(tensileStrain ?? TENSION_CONTROLLED_STRAIN);
  return {
    neutralAxisIn, angleRad,
    block: {areaIn2, xIn: areaIn2 > 0 ? firstMomentAcrossIn3 / areaIn2 : 0, yIn: areaIn2 > 0 ? firstMomentIn3 / areaIn2 : 0},
    axialKip, depthMomentKipIn, widthMomentKipIn, tensileStrain, phi,
    design: {axialKip: phi * axialKip, depthMomentKipIn: phi * depthMomentKipIn, widthMomentKipIn: phi * widthMomentKipIn},
  };
}

/** Distance of the neutral axis from which the whole section is at its squash load, in. */
export function fullyPressedIn({widthIn, depthIn, bars, zone}: ColumnSection, angleRad: number): number {
  const [sine, cosine] = directionOf(angleRad);
  let farthestIn = 0;
  for (const place of bars.places) farthestIn = Math.max(farthestIn, place.xIn * sine + place.yIn * cosine);
  const allYieldIn = farthestIn / (1 - BAR_YIELD_STRAIN / CONCRETE_CRUSHING_STRAIN);
  return Math.max(allYieldIn, (widthIn * sine + depthIn * cosine) / (zone.blockFactor[0] as number));
}

/**
 * Design strength along a ray: the point of the design surface with the same proportion of both moments to axial load.
 * The moments' signs do not matter, because the section is symmetric. With one moment alone it is
 * {@link capacityAlong}.
 *
 * For each angle of the neutral axis there is one distance whose strength has the asked proportion of axial load to the
 * moment in the load's direction. At an angle of 0 that strength bends the depth alone, at a quarter turn the width
 * alone; in between it turns from the one to the other, and the angle at which it lies in the load's direction is
 * found between bounds that always hold it.
 *
 * @throws InputError if axial load and moments are all 0, or not finite numbers
 */
export function biaxialCapacity(section: ColumnSection, load: BiaxialLoad): BiaxialCapacity {
  const {axialKip} = load;
  const [depthMomentKipIn, widthMomentKipIn] = [Math.abs(load.depthMomentKipIn), Math.abs(load.widthMomentKipIn)];
  if (!Number.isFinite(widthMomentKipIn)) {
    throw new InputError({path: "widthMomentKipIn", label: "moment", value: load.widthMomentKipIn, unit: "kip-in", allowed: "a finite number"});
  }
  if (widthMomentKipIn === 0) return inDepthAlone(section, axialKip, depthMomentKipIn);
  if (!Number.isFinite(axialKip) || !Number.isFinite(depthMomentKipIn)) return inDepthAlone(section, axialKip, depthMomentKipIn);
  const momentKipIn = Math.hypot(depthMomentKipIn, widthMomentKipIn);
  const toward: Toward = {axialKip, momentKipIn, depth: depthMomentKipIn / momentKipIn, width: widthMomentKipIn / momentKipIn};
  const angleRad = depthMomentKipIn === 0 ? Math.PI / 2 : fallsThroughZero((angle) => {
    const at = biaxialState(section, neutralAxisOnRay(section, angle, toward), angle);
    return at.depthMomentKipIn * toward.width - at.widthMomentKipIn * toward.depth;
  }, 0, Math.PI / 2);
  return capped(section, biaxialState(section, neutralAxisOnRay(section, angleRad, toward), angleRad), load);
}

/** A load's direction: the share of its moment that bends the depth, and the width. */
interface Toward {
  readonly axialKip: number;
  readonly momentKipIn: number;
  readonly depth: number;
  readonly width: number;
}

/** At one angle, the neutral axis whose strength has the asked proportion of axial load to the moment in its direction. */
function neutralAxisOnRay(section: ColumnSection, angleRad: number, {axialKip, momentKipIn, depth, width}: Toward): number {
  return fallsThroughZero((neutralAxisIn) => {
    const at = biaxialState(section, neutralAxisIn, angleRad);
    return ((at.depthMomentKipIn * depth + at.widthMomentKipIn * width) * axialKip) / momentKipIn - at.axialKip;
  }, 0, fullyPressedIn(section, angleRad));
}

/** One moment alone: the interaction of axial load with it, as {@link capacityAlong} has it. */
function inDepthAlone(section: ColumnSection, axialKip: number, momentKipIn: number): BiaxialCapacity {
  const {state, ...capacity} = capacityAlong(section, {axialKip, momentKipIn});
  const {block} = biaxialState(section, state.neutralAxisIn, 0);
  const both = (of: {axialKip: number; momentKipIn: number}): BiaxialLoad => ({axialKip: of.axialKip, depthMomentKipIn: of.momentKipIn, widthMomentKipIn: 0});
  return {
    ...both(capacity), capped: capacity.capped,
    state: {...both(state), neutralAxisIn: state.neutralAxisIn, angleRad: 0, block, tensileStrain: state.tensileStrain, phi: state.phi, design: both(state.design)},
  };
}

/** A state's design strength under the cap on axial load (ACI 318-19 22.4.2.1), on the ray of a load. */
function capped(section: ColumnSection, state: BiaxialState, load: BiaxialLoad): BiaxialCapacity {
  const capKip = axialCapKip(section);
  if (state.design.axialKip <= capKip) return {...state.design, state, capped: false};
  const share = capKip / load.axialKip;
  return {
    axialKip: capKip, depthMomentKipIn: share * Math.abs(load.depthMomentKipIn), widthMomentKipIn: share * Math.abs(load.widthMomentKipIn),
    state, capped: true,
  };
}

/** Share of a capacity that a load on the same ray uses; 1 is the limit. */
export function biaxialShare(section: ColumnSection, load: BiaxialLoad, capacity: BiaxialLoad): number {
  const [asked, there] = [resultantKipIn(load), resultantKipIn(capacity)];
  // Both grow together along the ray; the larger of the two loses least to rounding.
  const axialLeads = Math.abs(capacity.axialKip) * Math.max(section.depthIn, section.widthIn) > there;
  return axialLeads ? load.axialKip / capacity.axialKip : asked / there;
}

/** How much of its design strength a column uses under a load; 1 is the limit, no load is 0. */
export function biaxialUse(section: ColumnSection, load: BiaxialLoad): number {
  if (load.axialKip === 0 && load.depthMomentKipIn === 0 && load.widthMomentKipIn === 0) return 0;
  return biaxialShare(section, load, biaxialCapacity(section, load));
}

/** Both moments of a load as one, in its own direction, kip-in. */
export function resultantKipIn({depthMomentKipIn, widthMomentKipIn}: BiaxialLoad): number {
  return Math.hypot(depthMomentKipIn, widthMomentKipIn);
}
