/**
 * Strength in bending once more, from nothing of the library but the outline's corners and the member's plain numbers: the
 * section is cut into thousands of thin layers, whose widths are read off the outline where a level line crosses it, and
 * the neutral axis is found by halving. The strand's curve, the stress block, the moduli and phi are written here again.
 */
import type {Member} from "../../lib/member/member.js";

/** Layers through the precast section; a topping gets as many to the inch. */
const LAYERS = 2400;

/** A thin horizontal layer of one concrete. */
interface Fiber {
  /** Its upper edge below the compressed face, in. */
  readonly fromIn: number;
  readonly thicknessIn: number;
  readonly widthIn: number;
  readonly strengthPsi: number;
}

/** The ultimate state as layers give it. */
export interface FiberStrength {
  readonly neutralAxisIn: number;
  readonly nominalMomentKipIn: number;
  readonly phi: number;
  readonly tensileStrain: number;
}

/** An edge of the outline or of a void, with its ends' coordinates. */
type Edge = readonly [x0: number, y0: number, x1: number, y1: number];

/** Width of the concrete at a level: the line's crossings with all rings, taken in pairs from left to right. */
function crossedWidthIn(edges: readonly Edge[], levelIn: number): number {
  const crossings: number[] = [];
  for (const [x0, y0, x1, y1] of edges) {
    if (y0 > levelIn !== y1 > levelIn) crossings.push(x0 + ((levelIn - y0) / (y1 - y0)) * (x1 - x0));
  }
  crossings.sort((a, b) => a - b);
  return crossings.reduce((sum, x, i) => sum + (i % 2 === 0 ? -x : x), 0);
}

/** Precast layers from the top down, measured from the top of the precast section; none lies across a corner's level. */
function precastFibers({shape, concrete}: Member): Fiber[] {
  const edges = shape.rings.flatMap((ring) => ring.map(([x0, y0], i): Edge => [x0, y0, ...ring[(i + 1) % ring.length]!]));
  const levels = [...new Set(edges.map(([, y0]) => y0))].sort((a, b) => b - a);
  return levels.slice(1).flatMap((bottomIn, i) => {
    const topIn = levels[i]!;
    const count = Math.ceil(((topIn - bottomIn) * LAYERS) / shape.depthIn);
    const thicknessIn = (topIn - bottomIn) / count;
    const passing = edges.filter(([, y0, , y1]) => Math.max(y0, y1) >= topIn && Math.min(y0, y1) <= bottomIn);
    return Array.from({length: count}, (_, k): Fiber => {
      const fromIn = shape.depthIn - topIn + k * thicknessIn;
      return {fromIn, thicknessIn, widthIn: crossedWidthIn(passing, shape.depthIn - fromIn - thicknessIn / 2), strengthPsi: concrete.strengthPsi};
    });
  });
}

function toppingFibers({shape, topping}: Member): Fiber[] {
  if (!topping) return [];
  const count = Math.ceil((topping.thicknessIn * LAYERS) / shape.depthIn);
  const thicknessIn = topping.thicknessIn / count;
  return Array.from({length: count}, (_, i) => ({fromIn: i * thicknessIn, thicknessIn, widthIn: topping.widthIn, strengthPsi: topping.concrete.strengthPsi}));
}

/** Grade 270 strand by the handbook's curve, held level where its two pieces miss each other. */
function strandKsi(strain: number): number {
  return strain > 0.0085 ? Math.max(244.8, 270 - 0.04 / (strain - 0.007)) : 28800 * strain;
}

/** Depth of the stress block over that of the neutral axis. */
function blockShare(strengthPsi: number): number {
  if (strengthPsi <= 4000) return 0.85;
  return strengthPsi >= 8000 ? 0.65 : 0.85 - 0.05 * (strengthPsi / 1000 - 4);
}

/** Height of a strand at a place: from its end height in a straight line to the hold-down, and level from there. */
function heightIn(profile: Member["layout"]["profile"], row: Member["layout"]["rows"][number], share: number): number {
  const holdDown = {"straight": 0, "one-point": 0.5, "two-point": 0.4}[profile];
  const x = share > 0.5 ? 1 - share : share;
  return x >= holdDown ? row.centerIn : row.endIn + (x / holdDown) * (row.centerIn - row.endIn);
}

/** Strain of the concrete beside the strands' centroid under the prestress, from the layers' own area and inertia. */
function squeezeStrain(member: Member, layers: readonly Fiber[], forceKip: number, belowTopIn: number): number {
  let areaIn2 = 0;
  let firstIn3 = 0;
  for (const layer of layers) {
    areaIn2 += layer.widthIn * layer.thicknessIn;
    firstIn3 += layer.widthIn * layer.thicknessIn * (layer.fromIn + layer.thicknessIn / 2);
  }
  const centroidIn = firstIn3 / areaIn2;
  const inertiaIn4 = layers.reduce((sum, layer) => sum + layer.widthIn * layer.thicknessIn * (layer.fromIn + layer.thicknessIn / 2 - centroidIn) ** 2, 0);
  const modulusKsi = 33e-3 * {"normalweight": 150, "sand-lightweight": 115}[member.concrete.kind] ** 1.5 * Math.sqrt(member.concrete.strengthPsi);
  return (forceKip / areaIn2 + (forceKip * (belowTopIn - centroidIn) ** 2) / inertiaIn4) / modulusKsi;
}

/** Force of the layers within their stress blocks, kip, and its moment about the compressed face, kip-in. */
function blockOf(layers: readonly Fiber[], neutralAxisIn: number): {forceKip: number; momentKipIn: number} {
  let forceKip = 0;
  let momentKipIn = 0;
  for (const {fromIn, thicknessIn, widthIn, strengthPsi} of layers) {
    const insideIn = Math.min(thicknessIn, blockShare(strengthPsi) * neutralAxisIn - fromIn);
    if (insideIn <= 0) continue;
    const layerKip = 0.85e-3 * strengthPsi * widthIn * insideIn;
    forceKip += layerKip;
    momentKipIn += layerKip * (fromIn + insideIn / 2);
  }
  return {forceKip, momentKipIn};
}

/** Strength at a place along the span with the strands stretched to an effective stress. */
export function fiberStrength(member: Member, share: number, effectiveStressKsi: number): FiberStrength {
  const {layout} = member;
  const toppingIn = member.topping?.thicknessIn ?? 0;
  const precast = precastFibers(member);
  const layers = [...toppingFibers(member), ...precast.map((layer) => ({...layer, fromIn: layer.fromIn + toppingIn}))];
  const strands = layout.rows.map((row) => ({areaIn2: row.count * layout.strand.areaIn2, belowTopIn: member.shape.depthIn - heightIn(layout.profile, row, share)}));
  const areaIn2 = strands.reduce((sum, strand) => sum + strand.areaIn2, 0);
  const centroidIn = strands.reduce((sum, strand) => sum + strand.areaIn2 * strand.belowTopIn, 0) / areaIn2;
  const before = effectiveStressKsi / 28800 + squeezeStrain(member, precast, effectiveStressKsi * areaIn2, centroidIn);
  const pulls = (c: number) => strands.map((strand) => strand.areaIn2 * strandKsi(before + 0.003 * ((strand.belowTopIn + toppingIn) / c - 1)));
  const total = (forces: readonly number[]) => forces.reduce((sum, force) => sum + force, 0);
  let low = 1e-6;
  let high = 4 * (member.shape.depthIn + toppingIn);
  while (high - low > 1e-8 * high) {
    const c = (low + high) / 2;
    if (blockOf(layers, c).forceKip < total(pulls(c))) low = c;
    else high = c;
  }
  const neutralAxisIn = (low + high) / 2;
  const pullKipIn = total(pulls(neutralAxisIn).map((force, i) => force * (strands[i]!.belowTopIn + toppingIn)));
  const deepestIn = Math.max(...strands.map((strand) => strand.belowTopIn)) + toppingIn;
  const tensileStrain = 0.003 * (deepestIn / neutralAxisIn - 1);
  return {
    neutralAxisIn,
    nominalMomentKipIn: pullKipIn - blockOf(layers, neutralAxisIn).momentKipIn,
    phi: tensileStrain >= 0.005 ? 0.9 : tensileStrain <= 0.002 ? 0.65 : 0.65 + (0.25 * (tensileStrain - 0.002)) / 0.003,
    tensileStrain,
  };
}
