import {requireNumber} from "../check.js";
import {InputError} from "../errors.js";
import {CONCRETE_CRUSHING_STRAIN} from "../materials/concrete.js";
import {BAR_MODULUS_KSI, BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {compressionKip, compressionMomentKipIn} from "../member/compressionZone.js";
import {strainAt, strengthReduction, TENSION_CONTROLLED_STRAIN} from "../member/flexure.js";
import {fallsThroughZero} from "./root.js";
import type {ColumnSection} from "./section.js";

/** Axial load, compression positive, and moment about mid-depth. */
export interface AxialMoment {
  readonly axialKip: number;
  readonly momentKipIn: number;
}

/** A column at the moment when its compressed face reaches 0.003, for one depth of the neutral axis. */
export interface ColumnState extends AxialMoment {
  /** Neutral axis below the compressed face, in; 0 where the whole section is in tension. */
  readonly neutralAxisIn: number;
  /** Net tensile strain of the farthest bars, negative in compression; undefined in pure tension, where it has no bound. */
  readonly tensileStrain: number | undefined;
  readonly phi: number;
  /** Strength times phi, before the cap on axial load. */
  readonly design: AxialMoment;
}

/** Share of the squash load that a tied column may use, for chance eccentricity (ACI 318-19 Table 22.4.2.1). */
export const TIED_SHARE = 0.8;
/** Strength reduction factor of a tied column in compression (ACI 318-19 Table 21.2.2). */
export const TIED_PHI = 0.65;
/** Strain at which a Grade 60 bar yields. */
export const BAR_YIELD_STRAIN = BAR_YIELD_KSI / BAR_MODULUS_KSI;

/** Squash load Po, kip: 0.85 f'c (Ag - Ast) + fy Ast (ACI 318-19 22.4.2.2). */
export function squashLoadKip(section: ColumnSection): number {
  return (section.zone.stressKsi[0] as number) * (section.grossIn2 - section.steelIn2) + BAR_YIELD_KSI * section.steelIn2;
}

/** Greatest factored axial load, kip: 0.65 x 0.80 Po (ACI 318-19 22.4.2.1, 21.2.2). */
export function axialCapKip(section: ColumnSection): number {
  return TIED_PHI * TIED_SHARE * squashLoadKip(section);
}

/** Nominal strength in pure tension, kip, as a positive number: fy Ast (ACI 318-19 22.4.3.1). */
export function pureTensionKip(section: ColumnSection): number {
  return BAR_YIELD_KSI * section.steelIn2;
}

/**
 * Strength for one neutral axis by strain compatibility: plane sections, 0.003 at the compressed face, the equivalent
 * block, bars elastic and then constant (ACI 318-19 22.2), concrete displaced by bars within the block taken off.
 *
 * A bar enters the block over its own diameter, so that the curve has no jumps.
 *
 * @param neutralAxisIn - 0 (pure tension) to {@link fullCompressionIn}; beyond it nothing changes
 */
export function columnState(section: ColumnSection, neutralAxisIn: number): ColumnState {
  const {zone, layers, bar, depthIn} = section;
  const concreteKip = compressionKip(zone, neutralAxisIn);
  const blockIn = (zone.blockFactor[0] as number) * neutralAxisIn;
  let axialKip = concreteKip;
  let momentKipIn = concreteKip * (depthIn / 2) - compressionMomentKipIn(zone, neutralAxisIn);
  for (const layer of layers) {
    const inBlock = Math.max(0, Math.min(1, (blockIn - layer.depthIn) / bar.diameterIn + 0.5));
    const tensionKip = layer.areaIn2 * (layer.stressKsi(strainAt(layer, neutralAxisIn)) + (zone.stressKsi[0] as number) * inBlock);
    axialKip -= tensionKip;
    momentKipIn += tensionKip * (layer.depthIn - depthIn / 2);
  }
  const farthestIn = farthestBarsIn(section);
  const tensileStrain = neutralAxisIn > 0 ? (CONCRETE_CRUSHING_STRAIN * (farthestIn - neutralAxisIn)) / neutralAxisIn : undefined;
  const phi = strengthReduction(tensileStrain ?? TENSION_CONTROLLED_STRAIN);
  return {neutralAxisIn, axialKip, momentKipIn, tensileStrain, phi, design: {axialKip: phi * axialKip, momentKipIn: phi * momentKipIn}};
}

/** Depth of the neutral axis from which the whole section is at its squash load, in. */
export function fullCompressionIn(section: ColumnSection): number {
  const allYieldIn = farthestBarsIn(section) / (1 - BAR_YIELD_STRAIN / CONCRETE_CRUSHING_STRAIN);
  return Math.max(allYieldIn, section.depthIn / (section.zone.blockFactor[0] as number));
}

/** Depth of the neutral axis at which the farthest bars have a net tensile strain, in. */
export function neutralAxisAtIn(section: ColumnSection, tensileStrain: number): number {
  return (CONCRETE_CRUSHING_STRAIN * farthestBarsIn(section)) / (CONCRETE_CRUSHING_STRAIN + tensileStrain);
}

function farthestBarsIn(section: ColumnSection): number {
  return (section.layers.at(-1) as {depthIn: number}).depthIn;
}

/** What a column can carry in the proportion of axial load to moment that was asked for. */
export interface ColumnCapacity extends AxialMoment {
  /** The state of the section there, before the cap. */
  readonly state: ColumnState;
  /** Whether the cap on axial load decides. */
  readonly capped: boolean;
}

/**
 * Design strength along a ray: the point of the design curve with the same proportion of moment to axial load.
 *
 * The moment's sign does not matter, because the section is symmetric. An axial load below 0 is tension. Only the
 * direction counts, so that loads of any size can be asked: those of a column that is about to buckle grow without bound.
 *
 * @throws InputError if axial load and moment are both 0, or not finite numbers
 */
export function capacityAlong(section: ColumnSection, ray: AxialMoment): ColumnCapacity {
  const axialKip = finite(ray.axialKip, "axialKip", "axial load", "kip");
  const momentKipIn = Math.abs(finite(ray.momentKipIn, "momentKipIn", "moment", "kip-in"));
  if (axialKip === 0 && momentKipIn === 0) {
    throw new InputError({path: "momentKipIn", label: "moment", value: 0, unit: "kip-in", allowed: "more than 0 where there is no axial load"});
  }
  const state = columnState(section, neutralAxisOnRay(section, axialKip, momentKipIn));
  const capKip = axialCapKip(section);
  if (state.design.axialKip <= capKip) return {...state.design, state, capped: false};
  return {axialKip: capKip, momentKipIn: (capKip * momentKipIn) / axialKip, state, capped: true};
}

function finite(value: number, path: string, label: string, unit: string): number {
  if (Number.isFinite(value)) return value;
  throw new InputError({path, label, value, unit, allowed: "a finite number"});
}

/** Design strength for an axial compression that acts at an eccentricity from mid-depth, in (0 or more). */
export function capacityAtEccentricity(section: ColumnSection, eccentricityIn: number): ColumnCapacity {
  requireNumber(eccentricityIn, {path: "eccentricityIn", label: "eccentricity", unit: "in", min: 0, max: 1e6});
  return capacityAlong(section, {axialKip: 1, momentKipIn: eccentricityIn});
}

/** How much of its design strength a column uses under factored axial load and moment; 1 is the limit, no load is 0. */
export function utilisationOf(section: ColumnSection, demand: AxialMoment): number {
  if (demand.axialKip === 0 && demand.momentKipIn === 0) return 0;
  return shareOf(section, demand, capacityAlong(section, demand));
}

/** Share of a capacity that a demand on the same ray uses. */
export function shareOf(section: ColumnSection, demand: AxialMoment, capacity: AxialMoment): number {
  // Both loads grow together along the ray; the larger of the two loses least to rounding.
  const axialLeads = Math.abs(capacity.axialKip) * section.depthIn > capacity.momentKipIn;
  return axialLeads ? demand.axialKip / capacity.axialKip : Math.abs(demand.momentKipIn) / capacity.momentKipIn;
}

/** The neutral axis whose strength lies on a ray. Along the curve the direction turns one way only, so there is one root. */
function neutralAxisOnRay(section: ColumnSection, axialKip: number, momentKipIn: number): number {
  const full = fullCompressionIn(section);
  if (momentKipIn === 0) return axialKip > 0 ? full : 0;
  // How far the strength lies to the moment's side of the ray.
  return fallsThroughZero((neutralAxisIn) => {
    const at = columnState(section, neutralAxisIn);
    return (at.momentKipIn * axialKip - at.axialKip * momentKipIn) / momentKipIn;
  }, 0, full);
}
