import {InputError} from "../errors.js";
import {CONCRETE_CRUSHING_STRAIN} from "../materials/concrete.js";
import {strengthReduction, TENSION_CONTROLLED_STRAIN} from "../member/flexure.js";
import {axialCapKip} from "./axialLimits.js";
import {axisToward, type AxisPlace} from "./axisToward.js";
import {cosineOf, emptySum, fullyPressedIn, numbersOf, sineOf, sumForces, type ForceSum} from "./inclinedForces.js";
import type {ColumnSection} from "./section.js";

/** Axial load, compression positive, and moments about the middle: bending in the direction of depth, and of width. */
export interface BiaxialLoad {
  readonly axialKip: number;
  readonly depthMomentKipIn: number;
  readonly widthMomentKipIn: number;
}

/** A column at the moment when its most compressed corner reaches 0.003, for one place of the neutral axis. */
export interface BiaxialState extends BiaxialLoad {
  /** From the corner to the neutral axis, perpendicular to it, in; 0 where the whole section is in tension. */
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

/** What a column can carry at the required ratio of axial load to both moments. */
export interface BiaxialCapacity extends BiaxialLoad {
  readonly state: BiaxialState;
  /** Whether the cap on axial load governs. */
  readonly capped: boolean;
}

/**
 * Strength for one neutral axis by strain compatibility: plane sections, 0.003 at the corner, a block of beta1 times the
 * axis' distance with its edge along it, bars elastic until they yield, concrete displaced by bars within the block
 * subtracted (ACI 318-19 22.2); phi by the bar farthest from the corner (21.2.2). A bar enters the block over its own
 * diameter, so that the surface has no jumps.
 *
 * @param neutralAxisIn - 0 (pure tension) to {@link fullyPressedIn}; beyond it nothing changes
 * @param angleRad - 0 to a quarter turn
 */
export function biaxialState(section: ColumnSection, neutralAxisIn: number, angleRad: number): BiaxialState {
  const sum = emptySum();
  sumForces(numbersOf(section), neutralAxisIn, sineOf(angleRad), cosineOf(angleRad), sum);
  const {axialKip, depthMomentKipIn, widthMomentKipIn, areaIn2, acrossIn3, downIn3} = sum;
  const phi = phiOf(sum, neutralAxisIn);
  return {
    neutralAxisIn, angleRad,
    block: {areaIn2, xIn: areaIn2 > 0 ? acrossIn3 / areaIn2 : 0, yIn: areaIn2 > 0 ? downIn3 / areaIn2 : 0},
    axialKip, depthMomentKipIn, widthMomentKipIn, tensileStrain: tensileStrainOf(sum, neutralAxisIn), phi,
    design: {axialKip: phi * axialKip, depthMomentKipIn: phi * depthMomentKipIn, widthMomentKipIn: phi * widthMomentKipIn},
  };
}

function tensileStrainOf({farthestIn}: ForceSum, neutralAxisIn: number): number | undefined {
  return neutralAxisIn > 0 ? (CONCRETE_CRUSHING_STRAIN * (farthestIn - neutralAxisIn)) / neutralAxisIn : undefined;
}

function phiOf(sum: ForceSum, neutralAxisIn: number): number {
  return strengthReduction(tensileStrainOf(sum, neutralAxisIn) ?? TENSION_CONTROLLED_STRAIN);
}

/**
 * Design strength along a ray: the point of the design surface with the same ratio of both moments to axial load.
 *
 * The moments' signs do not matter, because the section is symmetric. An axial load below 0 is tension. Only the
 * direction counts, so that loads may be of any size: those of a column that is about to buckle grow without bound.
 *
 * @param axis - the axis whose strength lies in the load's direction, where it is known
 * @throws InputError if axial load and moments are all 0, or not finite numbers
 */
export function biaxialCapacity(section: ColumnSection, load: BiaxialLoad, axis: AxisPlace = axisOf(section, load)): BiaxialCapacity {
  const state = biaxialState(section, axis.neutralAxisIn, axis.angleRad);
  const {axialKip, depthMomentKipIn, widthMomentKipIn} = underCap(section, load, state.design);
  return {axialKip, depthMomentKipIn, widthMomentKipIn, state, capped: state.design.axialKip > axialCapKip(section)};
}

/** A design strength under the cap on axial load (ACI 318-19 22.4.2.1), on the ray of a load. */
function underCap(section: ColumnSection, load: BiaxialLoad, design: BiaxialLoad): BiaxialLoad {
  const capKip = axialCapKip(section);
  if (design.axialKip <= capKip) return design;
  const share = capKip / load.axialKip;
  return {axialKip: capKip, depthMomentKipIn: share * Math.abs(load.depthMomentKipIn), widthMomentKipIn: share * Math.abs(load.widthMomentKipIn)};
}

/**
 * The neutral axis whose strength lies in a load's direction.
 *
 * @throws InputError if axial load and moments are all 0, or not finite numbers
 */
export function axisOf(section: ColumnSection, load: BiaxialLoad, sum: ForceSum = emptySum()): AxisPlace {
  const {axialKip} = load;
  finite(axialKip, "axialKip", "axial load", "kip");
  finite(load.depthMomentKipIn, "depthMomentKipIn", "moment", "kip-in");
  finite(load.widthMomentKipIn, "widthMomentKipIn", "moment", "kip-in");
  const [depthMomentKipIn, widthMomentKipIn] = [Math.abs(load.depthMomentKipIn), Math.abs(load.widthMomentKipIn)];
  const momentKipIn = Math.hypot(depthMomentKipIn, widthMomentKipIn);
  if (momentKipIn === 0) return {neutralAxisIn: axisWithoutMoment(section, axialKip), angleRad: 0};
  return axisToward(numbersOf(section), {axialKip, momentKipIn, depth: depthMomentKipIn / momentKipIn, width: widthMomentKipIn / momentKipIn}, sum);
}

/** Where the whole section is in compression, or all of it in tension. */
function axisWithoutMoment(section: ColumnSection, axialKip: number): number {
  if (axialKip !== 0) return axialKip > 0 ? fullyPressedIn(section, 0) : 0;
  throw new InputError({path: "depthMomentKipIn", label: "moment", value: 0, unit: "kip-in", allowed: "more than 0 where there is no axial load"});
}

function finite(value: number, path: keyof BiaxialLoad, label: string, unit: string): void {
  if (!Number.isFinite(value)) throw new InputError({path, label, value, unit, allowed: "a finite number"});
}

/** Share of a capacity that a load on the same ray uses; 1 is the limit. */
function biaxialShare(section: ColumnSection, load: BiaxialLoad, capacity: BiaxialLoad): number {
  const [asked, there] = [resultantKipIn(load), resultantKipIn(capacity)];
  // Both grow together along the ray; the larger of the two suffers least from rounding.
  const axialLeads = Math.abs(capacity.axialKip) * Math.max(section.depthIn, section.widthIn) > there;
  return axialLeads ? load.axialKip / capacity.axialKip : asked / there;
}

/** The same by the axis of the capacity, which is not made: sizes are compared by nothing else. */
export function biaxialShareAt(section: ColumnSection, load: BiaxialLoad, {neutralAxisIn, angleRad}: AxisPlace, sum: ForceSum = emptySum()): number {
  sumForces(numbersOf(section), neutralAxisIn, sineOf(angleRad), cosineOf(angleRad), sum);
  const phi = phiOf(sum, neutralAxisIn);
  const design = {axialKip: phi * sum.axialKip, depthMomentKipIn: phi * sum.depthMomentKipIn, widthMomentKipIn: phi * sum.widthMomentKipIn};
  return biaxialShare(section, load, underCap(section, load, design));
}

/** How much of its design strength a column uses under a load; 1 is the limit, no load is 0. */
export function biaxialUse(section: ColumnSection, load: BiaxialLoad): number {
  if (load.axialKip === 0 && load.depthMomentKipIn === 0 && load.widthMomentKipIn === 0) return 0;
  return biaxialShareAt(section, load, axisOf(section, load));
}

/** Both moments of a load as one, in its own direction, kip-in. */
export function resultantKipIn({depthMomentKipIn, widthMomentKipIn}: BiaxialLoad): number {
  return Math.hypot(depthMomentKipIn, widthMomentKipIn);
}
