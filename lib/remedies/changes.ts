import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import {ENTRIES, entryAt} from "../design/fields.js";
import {isPlain, valueAt} from "../design/plain.js";
import {allowed} from "./way.js";
import {parsePattern} from "../prestress/pattern.js";

/** One field of a design that a remedy changes; undefined stands for an optional field that is left out. */
export interface FieldChange {
  readonly path: string;
  readonly from: unknown;
  readonly to: unknown;
}

/** Every path that holds a value: each field, each list as one, and the changed dimensions. */
const PATHS: readonly string[] = [...ENTRIES].filter(([path, {kind}]) => kind !== "group" && !path.includes("*")).map(([path]) => path);

/** The fields in which two designs differ, in the order of the file; of a list of equal length those of its entries. */
export function changesBetween(before: Design, after: Design): FieldChange[] {
  return PATHS.flatMap((path) => between(path, valueAt(before, path), valueAt(after, path)));
}

function between(path: string, from: unknown, to: unknown): FieldChange[] {
  if (from === to) return [];
  if (Array.isArray(from) && Array.isArray(to) && from.length === to.length) return from.flatMap((entry, i) => between(`${path}.${i}`, entry, to[i]));
  const kind = entryAt(path)?.kind;
  if (kind !== "lengths" && isPlain(from) && isPlain(to)) return Object.keys({...from, ...to}).flatMap((key) => between(`${path}.${key}`, from[key], to[key]));
  return [{path, from, to}];
}

/** The changes as the design's editor takes them. */
export function valuesOf(changes: readonly FieldChange[]): Record<string, unknown> {
  return Object.fromEntries(changes.map(({path, to}) => [path, to]));
}

/** Fields that say what the building must be, or what is known of its site and rooms: one does not change them for a detail's sake. */
const OF_BUILDING = /^(bay|criteria|snow|ground|daylight)\.|^story\.floorToFloorFt$|^services\.(servedFt2|airCfmPerFt2)$/;
/** That a field is changed at all counts as well as how far: as a share of its range. */
const COUNTS = {detail: {fixed: 0.05, range: 1}, building: {fixed: 0.3, range: 4}, choice: 0.6, profile: 0.1, family: 0.2} as const;
/** Bars are numbered over so many sizes. */
const BAR_SIZES = 6;
/** A deck's depth and strands, which have no range of their own, count against these. */
const DECK_RANGE = {depthIn: 36, strands: 40} as const;

/** How much a change is: a number by which remedies are compared, small ones of details first. It has no unit. */
export function sizeOf(changes: readonly FieldChange[], catalog: Catalog): number {
  return changes.reduce((sum, change) => sum + sizeOfOne(change, catalog), 0);
}

function sizeOfOne({path, from, to}: FieldChange, catalog: Catalog): number {
  const {fixed, range} = OF_BUILDING.test(path) ? COUNTS.building : COUNTS.detail;
  const entry = entryAt(path);
  if (/\.member$/.test(path)) return fixed + memberDistance(String(from), String(to), catalog);
  if (/\.pattern$/.test(path)) return fixed + patternDistance(String(from), String(to));
  if (path === "edgeBeam.barSize") return fixed + Math.abs(Number(String(to).slice(1)) - Number(String(from).slice(1))) / BAR_SIZES;
  if (entry?.kind !== "number" || typeof from !== "number" || typeof to !== "number") return fixed + COUNTS.choice;
  return fixed + (range * Math.abs(to - from)) / (entry.max - entry.min);
}

function memberDistance(from: string, to: string, {deckMembers}: Catalog): number {
  const [one, other] = [from, to].map((name) => deckMembers.find(({designation}) => designation === name));
  if (!one || !other) return COUNTS.choice;
  const apart = (name: string) => Math.abs((one.dimensions[name] ?? 0) - (other.dimensions[name] ?? 0));
  return apart("depthIn") / DECK_RANGE.depthIn + (one.family === other.family && apart("widthIn") === 0 ? 0 : COUNTS.family);
}

function patternDistance(from: string, to: string): number {
  const [one, other] = [from, to].map((text) => allowed(() => parsePattern(text)));
  if (!one || !other) return COUNTS.choice;
  return Math.abs(one.count - other.count) / DECK_RANGE.strands + (one.profile === other.profile && one.sixteenths === other.sixteenths ? 0 : COUNTS.profile);
}
