import type {Design} from "../design/design.js";
import type {WallsAbove} from "../snow/roofDrifts.js";
import {feet} from "../units.js";
import {riseAtIn, type FallPlan} from "./fallPlan.js";

/**
 * Height of what rises above the surface of a roof of its own along each side, ft. A parapet is level and is measured from
 * the surface's highest line, so it stands higher over an edge to which the roof falls; along a short side, which meets all
 * lines, it counts where the surface is lowest. Along the long sides the edge beam counts where it is higher; the layers
 * hide part of it.
 */
export function wallsAboveRoofFt({roof, walls, edgeBeam}: Pick<Design, "roof" | "walls" | "edgeBeam">, plan: FallPlan): WallsAbove {
  const layersIn = roof.layers.reduce((sum, {thicknessIn}) => sum + thicknessIn, 0);
  const parapetIn = walls.parapetIn > 0 ? plan.riseIn + walls.parapetIn : 0;
  const long = (atFt: number): number => {
    const riseIn = riseAtIn(plan, atFt);
    // A taper lies on a level deck; a deck on stepped bearings lifts its beam with it.
    const hiddenIn = layersIn + (roof.drainage === "bearing" ? 0 : riseIn);
    const beamIn = edgeBeam.kind === "below" ? 0 : roof.upstandIn - hiddenIn;
    return feet(Math.max(0, walls.parapetIn > 0 ? parapetIn - riseIn : 0, beamIn));
  };
  return {south: long(0), north: long(plan.widthFt), west: feet(parapetIn), east: feet(parapetIn)};
}
