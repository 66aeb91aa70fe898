import type {ElementLoad, FloorLoads, RoomLoad} from "../../lib/loads/floorLoads.js";
import {influenceOf} from "../../lib/loads/reductionCurve.js";
import {decimals, percent} from "../../lib/units.js";

/** The element of that name, or the first where the floor has none of it. */
export function elementOf({elements}: FloorLoads, name: string): ElementLoad {
  return elements.find(({element}) => element === name) ?? (elements[0] as ElementLoad);
}

/** The name under which an element lights; elements that feel the same area share a point of the chart, and one name. */
export function elementPart({elements}: FloorLoads, of: ElementLoad): string {
  return elements.filter((entry) => influenceOf(entry).toFixed(1) === influenceOf(of).toFixed(1)).map(({element}) => element).join(" and ");
}

/** The room of that name, or the first where the floor has none of it. */
export function roomOf({rooms}: FloorLoads, name: string): RoomLoad {
  return rooms.find((room) => room.name === name) ?? (rooms[0] as RoomLoad);
}

/** What the chart of the reduction shows for one room, as its title. */
export function chartFinding({elements}: FloorLoads, room: RoomLoad): string {
  const factors = elements.flatMap((entry) => entry.rooms.filter((loaded) => loaded.room === room).map((loaded) => ({entry, factor: loaded.reduction.factor})));
  const least = factors.reduce((best, one) => (one.factor < best.factor ? one : best));
  if (least.factor >= 1) return `${room.name}: full load everywhere, however large the area`;
  return `${room.name}: down to ${percent(least.factor)} on the ${least.entry.element}`;
}

/** The rules for heavy loads, garages and assembly that this design's rooms fall under, in words. */
export function rulesThatBite({rooms, elements}: FloorLoads): string {
  const floors = Math.max(...elements.map((entry) => entry.floors));
  const decided = (kind: string) => rooms.filter((room) => elements[0]?.rooms.find((loaded) => loaded.room === room)?.reduction.decides.startsWith(kind)).map(({name}) => name);
  const heavy = decided("heavy load");
  const garage = decided("garage");
  const crowded = decided("no reduction");
  const whole = decided("taken in full");
  const several = floors > 1 ? `the columns, which carry ${decimals(floors)} floors, may take 20 % off` : "no element here carries two floors, which would allow 20 % off";
  return [
    heavy.length ? `${heavy.join(" and ")}: above 100 psf. Such a floor is meant to be filled, so nothing may be taken off on one floor; ${several}.` : "",
    garage.length ? `${garage.join(" and ")}: a garage does fill up, so nothing may be taken off on one floor; ${several}.` : "",
    whole.length ? `${whole.join(" and ")}: a load of your own, taken in full on every element.` : "",
    crowded.length ? `${crowded.join(" and ")}: people crowd into such rooms on purpose, so the full load counts on every element.` : "",
  ].filter(Boolean).join(" ");
}
