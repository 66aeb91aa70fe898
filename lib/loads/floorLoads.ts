import {occupancyOf, type Catalog, type Occupancy} from "../catalog.js";
import {atLeast, type Check} from "../checks.js";
import type {Design, OwnLoad} from "../design/design.js";
import {reduceLiveLoad, type LoadRule, type Reduction} from "./reduction.js";
import {deckMemberArea, loadAreas, type LoadArea} from "./tributary.js";

/** Minimum live load for partitions (walls that may be moved), psf (ASCE 7-16 4.3.2). */
export const PARTITION_PSF = 15;
/** Live load from which no partition load need be added, psf (ASCE 7-16 4.3.2). */
export const NO_PARTITION_LIVE_PSF = 80;

/** A room of the plan with its loads before reduction. */
export interface RoomLoad {
  readonly name: string;
  readonly occupancy: Occupancy;
  /** From the code's table, or the reader's own. */
  readonly livePsf: number;
  readonly rule: LoadRule;
  /** What the reader enters in place of the table's load. */
  readonly own: OwnLoad | undefined;
  /** Live load for partitions (movable walls), psf; not reduced. */
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
  /** The room that loads the element most. */
  readonly governing: ElementRoomLoad;
}

/** All loads on the floor beyond the structure's own weight. */
export interface FloorLoads {
  readonly superimposedDeadPsf: number;
  readonly rooms: readonly RoomLoad[];
  readonly elements: readonly ElementLoad[];
  /** Whether loads of the reader's own reach those of the code's table. */
  readonly checks: readonly Check[];
}

/**
 * Loads of a design: layers added up, each room's live load from the code's table or the reader's own, partitions, and the reduction of
 * each element. Any room may come to stand on any bay, so the heaviest room counts for each element.
 *
 * Partitions count 15 psf where walls may be moved and the live load is below 80 psf. They are live load, but are not
 * reduced here: walls stay where they are.
 *
 * @param memberWidthFt - width of one deck member
 * @throws InputError if a room's occupancy is not in the table
 */
export function floorLoads(design: Design, catalog: Catalog, memberWidthFt: number): FloorLoads {
  const rooms = design.loads.rooms.map((room, index): RoomLoad => {
    const occupancy = occupancyOf(catalog, room.occupancy, `loads.rooms.${index}.occupancy`);
    const {own} = room;
    const livePsf = own?.livePsf ?? occupancy.livePsf;
    return {
      name: room.name, occupancy, own, livePsf, rule: ruleOf(occupancy, own),
      partitionPsf: partitionPsf({livePsf, partitions: occupancy.partitions}, design.loads.partitions),
    };
  });
  return {
    superimposedDeadPsf: design.loads.layers.reduce((sum, layer) => sum + layer.loadPsf, 0),
    rooms,
    elements: loadAreas(design.bay, memberWidthFt).map((area) => elementLoad(area, rooms, design.bay.floors)),
    checks: rooms.flatMap(ownLoadCheck),
  };
}

/** The loads of a floor where its deck's members have another width: of its elements they alone carry other loads. */
export function underMembers(loads: FloorLoads, {bay}: Pick<Design, "bay">, memberWidthFt: number): FloorLoads {
  const [, ...others] = loads.elements;
  return {...loads, elements: [elementLoad(deckMemberArea(bay, memberWidthFt), loads.rooms, bay.floors), ...others]};
}

/** The rule of the use, which a load of the reader's own may keep or forgo; what the code never reduces stays so. */
function ruleOf({reduction}: Occupancy, own: OwnLoad | undefined): LoadRule {
  return own && !own.reducible && reduction !== "no" ? "in full" : reduction;
}

/** A load of the reader's own may be more than the table's for its use, not less (ASCE 7-16 4.3.1). */
function ownLoadCheck({name, own, occupancy}: RoomLoad, index: number): Check[] {
  if (!own) return [];
  return [atLeast({
    id: `own live load ${index + 1}`, label: `Live load entered for ${name}`, unit: "psf", clause: "ASCE 7-16 4.3.1", meetingIsEnough: true,
    holds: `It is at least what the code's table requires for ${inWords(occupancy)}.`,
    fails: `The code's table requires more for ${inWords(occupancy)}: enter at least that, or choose the room's actual use.`,
  }, own.livePsf, occupancy.livePsf)];
}

/** A use of the table within a sentence. */
function inWords({name}: Occupancy): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** The load for partitions in a room of an occupancy, psf (ASCE 7-16 4.3.2). */
export function partitionPsf(occupancy: Pick<Occupancy, "livePsf" | "partitions">, movableWalls: boolean): number {
  return movableWalls && occupancy.partitions && occupancy.livePsf < NO_PARTITION_LIVE_PSF ? PARTITION_PSF : 0;
}

function elementLoad(area: LoadArea, rooms: readonly RoomLoad[], floorsCarried: number): ElementLoad {
  const floors = area.element.endsWith("column") ? floorsCarried : 1;
  const loaded = rooms.map((room): ElementRoomLoad => {
    const reduction = reduceLiveLoad({
      livePsf: room.livePsf, rule: room.rule, influenceFt2: Math.max(1, area.influenceFt2 * floors), floors,
    });
    return {room, reduction, totalPsf: reduction.reducedPsf + room.partitionPsf};
  });
  const governing = loaded.reduce((heaviest, room) => (room.totalPsf > heaviest.totalPsf ? room : heaviest));
  return {...area, floors, rooms: loaded, governing};
}

/** Whether the code's reduction lowers the load. */
export function isReduced({reduction}: ElementRoomLoad): boolean {
  return reduction.factor < 1;
}

/** Live load with partitions before any reduction, psf. */
export function unreducedPsf({room}: ElementRoomLoad): number {
  return room.livePsf + room.partitionPsf;
}

/** The load of one element; every floor has a deck member and an edge beam. */
export function loadOn(loads: FloorLoads, element: ElementLoad["element"]): ElementLoad {
  const found = loads.elements.find((entry) => entry.element === element);
  if (!found) throw new RangeError(`the floor has no ${element}`);
  return found;
}
