import type {Design} from "../design/design.js";
import type {AccessibleUnit} from "./accessible.js";
import {modulesOf, turned, type ModuleRow, type ParkingModule, type Turned} from "./modules.js";
import {blockedPlaces, centered, countRow, fillRow, type Blocked, type StallGroup, type Placed} from "./row.js";
import {siteOf, type Site} from "./site.js";
import {stallGeometry, stallOutline, type StallGeometry} from "./stall.js";

/** A level before any stall is placed: modules and rows between walls and columns. */
export interface LevelPlan {
  readonly site: Site;
  readonly plan: Turned;
  readonly geometry: StallGeometry;
  readonly modules: readonly ParkingModule[];
  /** Bays across the rows that are left over, without a module. */
  readonly baysLeft: number;
  /** Places where a group cannot begin, by row; found once for each. */
  readonly blocked: (row: ModuleRow, group: StallGroup) => Blocked;
}

/** A stall on the plan. */
export interface Stall {
  readonly kind: "car" | "accessible" | "van" | "access aisle";
  /** Corners on the plan, in, as a `PlanBox` has them: head, head, mouth, mouth. */
  readonly corners: readonly (readonly [x: number, y: number])[];
  readonly module: number;
  readonly row: ModuleRow;
}

/** A design's level of parking; what lies between columns and walls is the same on every level. */
export function levelPlan(design: Design): LevelPlan {
  const {parking} = design;
  const site = siteOf(design);
  const plan = turned(site, parking.rows);
  const geometry = stallGeometry(parking);
  const modules = modulesOf(design, plan, geometry);
  const known = new Map<ModuleRow, Map<string, Blocked>>();
  const blocked = (row: ModuleRow, group: StallGroup) => {
    const ofRow = known.get(row) ?? new Map<string, Blocked>();
    known.set(row, ofRow);
    const name = group.join();
    const found = ofRow.get(name) ?? blockedPlaces(geometry, parking, row, group);
    ofRow.set(name, found);
    return found;
  };
  return {site, plan, geometry, modules, blocked, baysLeft: plan.lines.length - 1 - modules.length * parking.baysPerModule};
}

/** Stalls that a row holds where all are alike. */
export function stallsOfRow({geometry, blocked}: LevelPlan, row: ModuleRow, stallWidthIn: number): number {
  const group = [stallWidthIn];
  return countRow(geometry, row, group, blocked(row, group));
}

/** A row with what stands in it. */
export interface FilledRow {
  readonly row: ModuleRow;
  readonly units: readonly AccessibleUnit[];
  /** First the units, then stalls of the usual width. */
  readonly placed: readonly Placed[];
}

/** A row with as many of the accessible units as find room, from its start on, and then usual stalls. */
export function filledRow({geometry, blocked}: LevelPlan, row: ModuleRow, stallWidthIn: number, wanted: readonly AccessibleUnit[]): FilledRow {
  const groups: readonly StallGroup[] = wanted.map(({parts}) => parts.map(({widthIn}) => widthIn));
  const usual = [stallWidthIn];
  const placed = fillRow(geometry, row, groups, usual, (group) => blocked(row, group));
  const count = placed.filter(({group}) => group !== usual).length;
  return {row, units: wanted.slice(0, count), placed};
}

/** Stalls of filled rows moved to the middle of the room that each run of them has. */
export function inMiddle({geometry, blocked}: LevelPlan, rows: readonly FilledRow[]): FilledRow[] {
  return rows.map((one) => ({...one, placed: centered(geometry, one.row, one.placed, (group) => blocked(one.row, group))}));
}

/** The stalls of filled rows on the plan: what a drawing shows and a test measures. */
export function stallsOnPlan(design: Design, {geometry}: LevelPlan, rows: readonly FilledRow[]): Stall[] {
  const across = design.parking.rows === "across";
  return rows.flatMap(({row, units, placed}) => placed.flatMap(({atIn, group}, i) => {
    const parts = units[i]?.parts ?? group.map((widthIn) => ({kind: "car" as const, widthIn}));
    let beginIn = atIn;
    return parts.map(({kind, widthIn}): Stall => {
      const corners = stallOutline(geometry, beginIn, widthIn).map(([along, out]): [number, number] => {
        const acrossIn = row.headIn + row.out * out;
        return across ? [acrossIn, along] : [along, acrossIn];
      });
      beginIn += widthIn * geometry.alongPerWidth;
      return {kind, corners, module: row.module, row};
    });
  }));
}
