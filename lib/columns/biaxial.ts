import {InputError} from "../errors.js";
import {CONCRETE_CRUSHING_STRAIN} from "../materials/concrete.js";
import {strengthReduction, TENSION_CONTROLLED_STRAIN} from "../member/flexure.js";
import {axialCapKip} from "./axialLimits.js";
import {axisToward} from "./axisToward.js";
import {cosineOf, emptySum, fullyPressedIn, numbersOf, sineOf, sumForces} from "./inclinedForces.js";
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
  const {axialKip, depthMomentKipIn, widthMomentKipIn, areaIn2, acrossIn3, downIn3, farthestIn} = sum;
  const tensileStrain = neutralAxisIn > 0 ? (CONCRETE_CRUSHING_STRAIN * (farthestIn - neutralAxisIn)) / neutralAxisIn : undefined;
  const phi = strengthReduction(tensileStrain ?? TENSION_CONTROLLED_STRAIN);
  return {
    neutralAxisIn, angleRad,
    block: {areaIn2, xIn: areaIn2 > 0 ? acrossIn3 / areaIn2 : 0, yIn: areaIn2 > 0 ? downIn3 / areaIn2 : 0},
    axialKip, depthMomentKipIn, widthMomentKipIn, tensileStrain, phi,
    design: {axialKip: phi * axialKip, depthMomentKipIn: phi * depthMomentKipIn, widthMomentKipIn: phi * widthMomentKipIn},
  };
}

/**
 * Design strength along a ray: the point of the design surface with the same ratio of both moments to axial load.
 *
 * The moments' signs do not matter, because the section is symmetric. An axial load below 0 is tension. Only the
 * direction counts, so that loads may be of any size: those of a column that is about to buckle grow without bound.
 *
 * @throws InputError if axial load and moments are all 0, or not finite numbers
 */
export function biaxialCapacity(section: ColumnSection, load: BiaxialLoad): BiaxialCapacity {
  const axialKip = finite(load, "axialKip", "axial load", "kip");
  const depthMomentKipIn = Math.abs(finite(load, "depthMomentKipIn", "moment", "kip-in"));
  const widthMomentKipIn = Math.abs(finite(load, "widthMomentKipIn", "moment", "kip-in"));
  const momentKipIn = Math.hypot(depthMomentKipIn, widthMomentKipIn);
  if (momentKipIn === 0) return capped(section, biaxialState(section, axisWithoutMoment(section, axialKip), 0), load);
  const toward = {axialKip, momentKipIn, depth: depthMomentKipIn / momentKipIn, width: widthMomentKipIn / momentKipIn};
  const {neutralAxisIn, angleRad} = axisToward(numbersOf(section), toward);
  return capped(section, biaxialState(section, neutralAxisIn, angleRad), load);
}

/** Where the whole section is in compression, or all of it in tension. */
function axisWithoutMoment(section: ColumnSection, axialKip: number): number {
  if (axialKip !== 0) return axialKip > 0 ? fullyPressedIn(section, 0) : 0;
  throw new InputError({path: "depthMomentKipIn", label: "moment", value: 0, unit: "kip-in", allowed: "more than 0 where there is no axial load"});
}

function finite(load: BiaxialLoad, path: keyof BiaxialLoad, label: string, unit: string): number {
  if (Number.isFinite(load[path])) return load[path];
  throw new InputError({path, label, value: load[path], unit, allowed: "a finite number"});
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
  // Both grow together along the ray; the larger of the two suffers least from rounding.
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
