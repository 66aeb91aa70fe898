import {extentWithin, stallOutline, type RowExtent, type RowPoint, type StallGeometry} from "./stall.js";

/** Something that stands in a row, in: along the row, and out from the line of heads. */
export interface Obstacle {
  readonly fromIn: number;
  readonly toIn: number;
  readonly fromOutIn: number;
  readonly toOutIn: number;
  /** Whether a car's doors need air beside it: columns and walls, not a ramp's edge. */
  readonly doors: boolean;
}

/** A row to be filled. */
export interface Row {
  readonly startIn: number;
  readonly endIn: number;
  readonly obstacles: readonly Obstacle[];
}

/** Where a car has doors, and the air that they need. */
export interface Doors {
  readonly doorIn: number;
  readonly doorFreeIn: number;
}

/** Widths across the cars, in, of one stall, or of stalls and access aisles that are placed side by side together. */
export type StallGroup = readonly number[];

/** A group and its place. */
export interface Placed {
  /** Along the row to the first corner of its head, in. */
  readonly atIn: number;
  readonly group: StallGroup;
}

/** Places along the row where a group may not begin, open at both ends, rising and apart. */
export type Blocked = readonly (readonly [fromIn: number, toIn: number])[];

/** In: what meets to the last digits meets. */
const HAIR = 1e-6;

/** Whether a place along the row lies no farther than another, to a hair. */
// Stryker disable next-line EqualityOperator: whether the hair itself is met can be told by nobody
const upTo = (atIn: number, otherIn: number): boolean => atIn <= otherIn + HAIR;

/** Outlines of a group's parts, each where the one before ends on the line of heads; `part` is what of the car they show, as {@link stallOutline} takes it. */
function outlines(geometry: StallGeometry, group: StallGroup, ...part: [fromHeadIn?: number, toHeadIn?: number, besideIn?: number]): RowPoint[][] {
  let beginIn = 0;
  return group.map((widthIn) => {
    const outline = stallOutline(geometry, beginIn, widthIn, ...part);
    beginIn += widthIn * geometry.alongPerWidth;
    return outline;
  });
}

/** Row that a group takes from one to the next, in. */
export function pitchIn(geometry: StallGeometry, group: StallGroup): number {
  return group.reduce((sum, widthIn) => sum + widthIn, 0) * geometry.alongPerWidth;
}

/** Where a group cannot begin because of what stands in the row: columns and walls keep clear of its doors too. */
export function blockedPlaces(geometry: StallGeometry, {doorIn, doorFreeIn}: Doors, {obstacles}: Row, group: StallGroup): Blocked {
  const whole = outlines(geometry, group);
  const free = Math.min(doorFreeIn, geometry.lengthIn / 2);
  const doors = outlines(geometry, group, free, geometry.lengthIn - free, doorIn);
  const found: (readonly [number, number])[] = [];
  let last: Obstacle | undefined;
  let reach: RowExtent | undefined;
  for (const one of obstacles) {
    // Columns of one line stand at the same distance from the heads: found once for all of them.
    // Stryker disable next-line ConditionalExpression: found anew for each it would be the same
    if (last?.fromOutIn !== one.fromOutIn || last.toOutIn !== one.toOutIn || last.doors !== one.doors) reach = reachWithin(one.doors ? [...whole, ...doors] : whole, one.fromOutIn, one.toOutIn);
    last = one;
    if (reach) found.push([one.fromIn - reach.most, one.toIn - reach.least]);
  }
  found.sort((a, b) => a[0] - b[0]);
  const merged: [number, number][] = [];
  for (const [from, to] of found) {
    const last = merged.at(-1);
    if (last && from < last[1]) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged;
}

/**
 * Fills a row from its start: first the given groups in their order, then as many usual stalls as there is room for.
 * Each begins as early as it can, which of equal stalls gives the most.
 *
 * @param blocked - {@link blockedPlaces} of a group
 */
export function fillRow(geometry: StallGeometry, row: Row, first: readonly StallGroup[], usual: StallGroup, blocked: (group: StallGroup) => Blocked): Placed[] {
  const placed: Placed[] = [];
  let pointerIn = -Infinity;
  const usualReach = extentOf(geometry, usual);
  const next = (group: StallGroup): boolean => {
    // Stryker disable next-line ConditionalExpression: found anew it would be the same
    const {least, most} = group === usual ? usualReach : extentOf(geometry, group);
    let atIn = Math.max(pointerIn, row.startIn - least);
    for (const [from, to] of blocked(group)) {
      if (upTo(atIn, from)) break;
      atIn = Math.max(atIn, to);
    }
    if (!upTo(atIn + most, row.endIn)) return false;
    placed.push({atIn, group});
    pointerIn = atIn + pitchIn(geometry, group);
    return true;
  };
  for (const group of first) if (!next(group)) break;
  while (next(usual));
  return placed;
}

/** How many stalls of one width a row holds, by counting alone. */
export function countRow(geometry: StallGeometry, row: Row, usual: StallGroup, blocked: Blocked): number {
  const {least, most} = extentOf(geometry, usual);
  const pitch = pitchIn(geometry, usual);
  let count = 0;
  let atIn = row.startIn - least;
  for (const [from, to] of [...blocked, [row.endIn - most, Infinity] as const]) {
    const last = Math.min(from, row.endIn - most);
    if (upTo(atIn, last)) {
      const more = Math.floor((last - atIn + HAIR) / pitch) + 1;
      count += more;
      atIn += more * pitch;
    }
    atIn = Math.max(atIn, to);
  }
  return count;
}

/** Each run of stalls that touch moved to the middle of the room that it has, so that columns are clear on both sides. */
export function centered(geometry: StallGeometry, row: Row, placed: readonly Placed[], blocked: (group: StallGroup) => Blocked): Placed[] {
  const moved: Placed[] = [];
  const follows = (one: Placed, next: Placed) => upTo(next.atIn, one.atIn + pitchIn(geometry, one.group));
  for (let first = 0; first < placed.length;) {
    let last = first;
    while (last + 1 < placed.length && follows(placed[last] as Placed, placed[last + 1] as Placed)) last++;
    const run = placed.slice(first, last + 1);
    const after = placed[last + 1];
    const end = run.at(-1) as Placed;
    const rooms = run.map(({atIn, group}) => (blocked(group).find(([from]) => upTo(atIn, from))?.[0] ?? Infinity) - atIn);
    rooms.push(row.endIn - extentOf(geometry, end.group).most - end.atIn);
    if (after) rooms.push(after.atIn - end.atIn - pitchIn(geometry, end.group));
    const shift = Math.max(0, Math.min(...rooms)) / 2;
    moved.push(...run.map(({atIn, group}) => ({atIn: atIn + shift, group})));
    first = last + 1;
  }
  return moved;
}

/** How far outlines reach along the row within a band of distances from the heads; undefined where none comes into it. */
function reachWithin(shapes: readonly RowPoint[][], fromOut: number, toOut: number): RowExtent | undefined {
  let reach: RowExtent | undefined;
  for (const shape of shapes) {
    const one = extentWithin(shape, fromOut, toOut);
    if (one) reach = reach ? {least: Math.min(reach.least, one.least), most: Math.max(reach.most, one.most)} : one;
  }
  return reach;
}

/** How far a group reaches along the row before and beyond its place, in. */
function extentOf(geometry: StallGeometry, group: StallGroup): RowExtent {
  const along = outlines(geometry, group).flat().map(([at]) => at);
  return {least: Math.min(...along), most: Math.max(...along)};
}
