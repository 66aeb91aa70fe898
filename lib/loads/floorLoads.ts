import {occupancyOf, type Catalogue, type Occupancy} from "../catalogue.js";
import type {Design} from "../design/design.js";
import {reduceLiveLoad, type Reduction} from "./reduction.js";
import {loadAreas, type LoadArea} from "./tributary.js";

/** Least live load for walls that may be moved, psf (ASCE 7-16 4.3.2). */
export const PARTITION_PSF = 15;
/** Live load from which no partition load need be added, psf (ASCE 7-16 4.3.2). */
export const NO_PARTITION_LIVE_PSF = 80;

/** A room of the plan with its loads before reduction. */
export interface RoomLoad {
  readonly name: string;
  readonly occupancy: Occupancy;
  readonly livePsf: number;
  /** Live load for movable walls, psf; not reduced. */
  readonly partitionPsf: number;
}

/** The live load of one room on one element. */
export interface ElementRoomLoad {
  readonly room: RoomLoad;
  readonly reduction: Reduction;
  /** Reduced live load plus partitions, psf. */
  readonly totalPsf: number;
}

/** The live load of one element: of all rooms, the heaviest. */
export interface ElementLoad extends LoadArea {
  /** Floors that load the element. */
  readonly floors: number;
  readonly rooms: readonly ElementRoomLoad[];
  /** The room that asks most of the element. */
  readonly governing: ElementRoomLoad;
}

/** All loads on the floor beyond the structure's own weight. */
export interface FloorLoads {
  readonly superimposedDeadPsf: number;
  readonly rooms: readonly RoomLoad[];
  readonly elements: readonly ElementLoad[];
}

/**
 * Loads of a design: layers added up, each room's live load from the code's table, partitions, and the reduction of
 * each element. Any room may come to stand on any bay, so the heaviest room counts for each element.
 *
 * Partitions count 15 psf where walls may be moved and the live load is below 80 psf. They are live load, but the kit
 * does not reduce them: walls stand where they stand.
 *
 * @param memberWidthFt - width of one deck member
 * @throws InputError if a room's occupancy is not in the table
 */
export function floorLoads(design: Design, catalogue: Catalogue, memberWidthFt: number): FloorLoads {
  const rooms = design.loads.rooms.map((room, index): RoomLoad => {
    const occupancy = occupancyOf(catalogue, room.occupancy, `loads.rooms.${index}.occupancy`);
    return {
      name: room.name, occupancy, livePsf: occupancy.livePsf,
      partitionPsf: partitionPsf(occupancy, design.loads.partitions),
    };
  });
  return {
    superimposedDeadPsf: design.loads.layers.reduce((sum, layer) => sum + layer.loadPsf, 0),
    rooms,
    elements: loadAreas(design.bay, memberWidthFt).map((area) => elementLoad(area, rooms, design.bay.floors)),
  };
}

/** The load for movable walls in a room of an occupancy, psf (ASCE 7-16 4.3.2). */
export function partitionPsf(occupancy: Pick<Occupancy, "livePsf" | "partitions">, movableWalls: boolean): number {
  return movableWalls && occupancy.partitions && occupancy.livePsf < NO_PARTITION_LIVE_PSF ? PARTITION_PSF : 0;
}

function elementLoad(area: LoadArea, rooms: readonly RoomLoad[], floorsCarried: number): ElementLoad {
  const floors = area.element.endsWith("column") ? floorsCarried : 1;
  const loaded = rooms.map((room): ElementRoomLoad => {
    const reduction = reduceLiveLoad({
      livePsf: room.livePsf, rule: room.occupancy.reduction, influenceFt2: Math.max(1, area.influenceFt2 * floors), floors,
    });
    return {room, reduction, totalPsf: reduction.reducedPsf + room.partitionPsf};
  });
  const governing = loaded.reduce((heaviest, room) => (room.totalPsf > heaviest.totalPsf ? room : heaviest));
  return {...area, floors, rooms: loaded, governing};
}

/** The load of one element; every floor has a deck member and an edge beam. */
export function loadOn(loads: FloorLoads, element: ElementLoad["element"]): ElementLoad {
  const found = loads.elements.find((entry) => entry.element === element);
  if (!found) throw new RangeError(`the floor has no ${element}`);
  return found;
}
