import type {Catalog, Occupancy} from "../catalog.js";
import type {Design} from "../design/design.js";
import type {ElementLoad, ElementRoomLoad, FloorLoads, RoomLoad} from "../loads/floorLoads.js";
import {reduceLiveLoad} from "../loads/reduction.js";
import {roofLoads, type RoofElementLoad, type RoofLoads} from "../snow/roofLoads.js";
import type {FallPlan} from "./fallPlan.js";
import {wallsAboveRoofFt} from "./wallsAbove.js";

/** What a roof carries, as its own rules give it and as the floor's engine takes it. */
export interface RoofFloor {
  readonly roof: RoofLoads;
  readonly floor: FloorLoads;
}

/**
 * The loads of a roof in the form of a floor's, one use on all of it: its layers, and on each element as live load what
 * comes and goes there: roof live load, snow and rain by the roof's own combinations, each of which comes to no more than
 * 1.2D + 1.6L and D + L of that live load (ASCE 7-16 2.3.1, 2.4.1).
 *
 * @param design - the design that has the roof
 * @param asFloor - the same roof as a floor, `roofDesign`
 */
export function roofFloor(design: Design, catalog: Catalog, asFloor: Design, plan: FallPlan, member: {readonly widthFt: number; readonly ownPsf: number}): RoofFloor {
  const superimposedDeadPsf = asFloor.loads.layers.reduce((sum, {loadPsf}) => sum + loadPsf, 0);
  const roof = roofLoads(design, catalog, {
    memberWidthFt: member.widthFt, deadPsf: member.ownPsf + superimposedDeadPsf,
    wallsFt: wallsAboveRoofFt(design, plan), riseInPerFt: design.roof.drainage === "camber" ? 0 : design.roof.slopeInPerFt, eaveToRidgeFt: plan.runFt,
  });
  return {roof, floor: asFloorLoads(roof, superimposedDeadPsf, ROOF_LOAD)};
}

/** What comes and goes on a roof or an open top level in the form of a floor's loads: one use on all of it. */
export function asFloorLoads({elements: onRoof}: Pick<RoofLoads, "elements">, superimposedDeadPsf: number, name: string): FloorLoads {
  const elements = onRoof.map((element): ElementLoad => {
    const load = loadOf(element, name);
    return {...element.area, floors: 1, rooms: [load], governing: load};
  });
  return {superimposedDeadPsf, rooms: elements.slice(0, 1).map(({governing}) => governing.room), elements, checks: []};
}

/** What comes and goes on an element, as one live load, psf. */
export function variablePsf({asLivePsf, asServiceLivePsf}: Pick<RoofElementLoad, "asLivePsf" | "asServiceLivePsf">): number {
  return Math.max(asLivePsf, asServiceLivePsf);
}

function loadOf(element: RoofElementLoad, name: string): ElementRoomLoad {
  const psf = variablePsf(element);
  const occupancy: Occupancy = {
    id: "roof", name, group: "Roof", livePsf: psf, concentratedLb: undefined, reduction: "no", partitions: false, sustainedShare: 0, source: "ASCE 7-16 chapters 4, 7 and 8",
  };
  const room: RoomLoad = {name, occupancy, own: undefined, livePsf: psf, rule: "in full", partitionPsf: 0};
  // The roof's own reductions are already made; a floor's rules do not apply.
  return {room, totalPsf: psf, reduction: reduceLiveLoad({livePsf: psf, rule: "in full", influenceFt2: Math.max(1, element.area.influenceFt2), floors: 1})};
}

/** What comes and goes on a roof, in a word where a floor has the name of a room. */
const ROOF_LOAD = "roof live load, snow or rain";
