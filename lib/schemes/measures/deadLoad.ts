import {COLUMN_POSITIONS} from "../../columns/levels.js";
import {hasRoof} from "../../design/used.js";
import type {Evaluation} from "../../evaluate.js";
import {ownPsf} from "../../member/member.js";
import {LB_PER_KIP, feet} from "../../units.js";
import {shortRunIn} from "../../walls/planes.js";
import {onPostsIn, sharesKip, wallReach} from "../../walls/weights.js";
import {columnCounts} from "./columnAmounts.js";

/**
 * Dead load of floors, roof and walls on all columns together, kip, as their load take-down counts it: deck and layers on
 * the bays, beams over their whole spans with the cladding on them, walls by column. A roof of two loads has its own
 * dead load and the floors' beams.
 */
export function carriedKip({design, laid, loads, edgeBeam, girder, roof, walls}: Evaluation): number {
  const {bay, column} = design;
  const lengthFt = bay.beamSpanFt * bay.baysAlong;
  const planFt2 = lengthFt * bay.spanFt * bay.baysAcross;
  const lines = bay.baysAcross - 1;
  const floorLb = planFt2 * (ownPsf(laid) + loads.superimposedDeadPsf)
    + lengthFt * (2 * (edgeBeam.loads.selfPlf + edgeBeam.loads.claddingPlf) + lines * (girder?.loads.selfPlf ?? 0));
  const roofLb = roof
    ? planFt2 * (ownPsf(roof.member) + roof.loads.superimposedDeadPsf)
      + lengthFt * (2 * (roof.edgeBeam.loads.selfPlf + roof.edgeBeam.loads.claddingPlf - roof.design.edgeBeam.claddingPlf) + lines * (roof.girder?.loads.selfPlf ?? 0))
    : hasRoof(design) ? planFt2 * column.roofDeadPsf + lengthFt * (2 * edgeBeam.loads.selfPlf + lines * (girder?.loads.selfPlf ?? 0)) : 0;
  const counts = columnCounts(design);
  // What closes the deck's ends at a roof of its own is among the load of its beams.
  const {planes, weights, edge, roofEdge, ends} = walls;
  const known = {planes, weights, edge, roofEdge, ends: roof ? undefined : ends};
  let wallKip = 0;
  for (const position of COLUMN_POSITIONS) {
    const count = counts[position];
    if (count === 0) continue;
    const reach = wallReach(design, known, position);
    wallKip += count * (bay.floors * sharesKip(reach.floor) + sharesKip(reach.roof));
  }
  return (bay.floors * floorLb + roofLb) / LB_PER_KIP + wallKip;
}

/** Dead load of walls that stand on footings of their own, kip: panels, and spandrels on posts. */
export function ownFootingKip({design, walls: {planes, weights}}: Evaluation): number {
  const onPostsPlf = design.bay.floors * weights.floorPlf + (planes.roofed ? weights.roofPlf : 0);
  return (2 * (feet(shortRunIn(design, planes)) * weights.footingPlf + feet(onPostsIn(design)) * onPostsPlf)) / LB_PER_KIP;
}
