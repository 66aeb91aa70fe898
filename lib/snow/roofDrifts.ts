import type {Design} from "../design/design.js";
import {hasHigherPart, hasRoof} from "../design/used.js";
import {feet} from "../units.js";
import type {BalancedSnow} from "./balanced.js";
import {drift} from "./drift.js";
import {ROOF_SIDES, type RoofSide, type SideDrift} from "./surface.js";

/** Sizes of the roof over its grid of columns, ft: the length along x, the width across it. */
export function roofSizes({bay}: Pick<Design, "bay">): {readonly lengthFt: number; readonly widthFt: number} {
  return {lengthFt: bay.baysAlong * bay.beamSpanFt, widthFt: bay.baysAcross * bay.spanFt};
}

/** The side of the roof along which a higher part stands: of each pair that one, as the load is the same on the other. */
export function higherSide({snow}: Pick<Design, "snow">): RoofSide {
  return snow.higherSide === "long" ? "north" : "east";
}

/**
 * Height of what rises above a roof of two loads along a side, ft: the parapet. On an open top level it is what stands around that: the edge beam's upstand, and a spandrel's on the short sides.
 */
function parapetFt(design: Pick<Design, "walls" | "roof" | "column" | "edgeBeam">, side: RoofSide): number {
  const {walls, edgeBeam} = design;
  const long = side === "south" || side === "north";
  if (!hasRoof(design)) return feet(long ? edgeBeam.upstandIn : walls.shortSide === "spandrel" ? walls.spandrelUpstandIn : 0);
  return feet(walls.parapetIn);
}

/** Height of what rises above the roof along each side, ft; a roof of its own knows where its surface lies. */
export type WallsAbove = Readonly<Record<RoofSide, number>>;

/** The same along all four sides of a roof that is not a level of its own. */
export function wallsAboveFt(design: Pick<Design, "walls" | "roof" | "column" | "edgeBeam">): WallsAbove {
  return {south: parapetFt(design, "south"), north: parapetFt(design, "north"), west: parapetFt(design, "west"), east: parapetFt(design, "east")};
}

/**
 * Every drift that a design's roof may have, those that do not count with the reason: at the parapets, and against a
 * higher part the leeward drift, of snow blown off it, and the windward one, of snow blown toward it.
 */
export function roofDrifts(design: Pick<Design, "bay" | "snow">, balanced: BalancedSnow, wallsFt: WallsAbove): SideDrift[] {
  const {higherFt, higherLengthFt, higherApartFt} = design.snow;
  const {lengthFt, widthFt} = roofSizes(design);
  const beside = hasHigherPart(design) ? higherSide(design) : undefined;
  return ROOF_SIDES.flatMap((side): SideDrift[] => {
    const roofFt = side === "south" || side === "north" ? widthFt : lengthFt;
    const wallFt = wallsFt[side];
    const drifts: SideDrift[] = [];
    if (wallFt > 0 && !(side === beside && higherApartFt === 0)) {
      drifts.push({side, drift: drift(balanced, {kind: "parapet", fetchFt: roofFt, wallFt, roofFt})});
    }
    if (side === beside) {
      const higher = {wallFt: higherFt, roofFt, gapFt: higherApartFt};
      drifts.push({side, drift: drift(balanced, {...higher, kind: "leeward", fetchFt: higherLengthFt})});
      drifts.push({side, drift: drift(balanced, {...higher, kind: "windward", fetchFt: roofFt})});
    }
    return drifts;
  });
}
