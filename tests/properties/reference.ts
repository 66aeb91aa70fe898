/**
 * Strength in bending by other means than the library's: the compressed part is cut from the polygon with a line, and
 * the neutral axis is found by plain halving. Slow, and meant to be.
 */
import {stressBlockFactor} from "../../lib/materials/concrete.js";
import type {SteelLayer} from "../../lib/member/flexure.js";
import type {Member} from "../../lib/member/member.js";
import {integrate, type Point, type Ring} from "../../lib/sections/polygon.js";

/** A part of the section with one concrete: the member's rings, or the topping's rectangle; heights above the soffit. */
interface Part {
  readonly rings: readonly Ring[];
  readonly strengthPsi: number;
}

export interface Reference {
  readonly neutralAxisIn: number;
  readonly compressionKip: number;
  readonly nominalMomentKipIn: number;
}

/** The part of a ring at or above a height. */
function above(ring: Ring, heightIn: number): Ring {
  return ring.flatMap((point, i): Point[] => {
    const next = ring[(i + 1) % ring.length] as Point;
    const kept = point[1] >= heightIn ? [point] : [];
    if (point[1] >= heightIn === next[1] >= heightIn) return kept;
    const share = (heightIn - point[1]) / (next[1] - point[1]);
    return [...kept, [point[0] + share * (next[0] - point[0]), heightIn]];
  });
}

function partsOf(member: Member): Part[] {
  const {shape, topping, concrete} = member;
  const top = shape.depthIn;
  const slab: Part[] = topping
    ? [{strengthPsi: topping.concrete.strengthPsi, rings: [[[0, top], [topping.widthIn, top], [topping.widthIn, top + topping.thicknessIn], [0, top + topping.thicknessIn]]]}]
    : [];
  return [...slab, {rings: shape.rings, strengthPsi: concrete.strengthPsi}];
}

/** Force of the concrete, kip, and its moment about the top, kip-in, with the neutral axis at a depth. */
export function concreteOf(member: Member, neutralAxisIn: number): {forceKip: number; momentKipIn: number} {
  const depthIn = member.compression.depthIn;
  let forceKip = 0;
  let momentKipIn = 0;
  for (const {rings, strengthPsi} of partsOf(member)) {
    const edgeIn = depthIn - stressBlockFactor(strengthPsi) * neutralAxisIn;
    const {areaIn2, firstMomentIn3} = integrate(rings.map((ring) => above(ring, edgeIn)).filter((ring) => ring.length > 2));
    const stressKsi = (0.85 * strengthPsi) / 1000;
    forceKip += stressKsi * areaIn2;
    momentKipIn += stressKsi * (depthIn * areaIn2 - firstMomentIn3);
  }
  return {forceKip, momentKipIn};
}

/** The neutral axis by halving, and the moment about the top of the section. */
export function referenceStrength(member: Member, layers: readonly SteelLayer[]): Reference {
  const steel = (c: number) => layers.map((layer) => layer.areaIn2 * layer.stressKsi(layer.strainBefore + (0.003 * (layer.depthIn - c)) / c));
  let low = 1e-9;
  let high = 10 * member.compression.depthIn;
  for (let i = 0; i < 200; i++) {
    const c = (low + high) / 2;
    if (concreteOf(member, c).forceKip < steel(c).reduce((sum, force) => sum + force, 0)) low = c;
    else high = c;
  }
  const neutralAxisIn = (low + high) / 2;
  const {forceKip, momentKipIn} = concreteOf(member, neutralAxisIn);
  const forces = steel(neutralAxisIn);
  const tension = forces.reduce((sum, force) => sum + force, 0);
  const tensionMoment = forces.reduce((sum, force, i) => sum + force * (layers[i] as SteelLayer).depthIn, 0);
  return {neutralAxisIn, compressionKip: forceKip, nominalMomentKipIn: (tensionMoment * forceKip) / tension - momentKipIn};
}
