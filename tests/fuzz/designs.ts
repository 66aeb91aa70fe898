import type {Design} from "../../lib/design/design.js";
import {withValue} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import type {Field} from "../../lib/design/entries.js";
import {FIELDS, LISTS, isOptional} from "../../lib/design/fields.js";
import {usualPatterns} from "../../lib/deck/table.js";
import {seededRandom, type Random} from "../../lib/topping/random.js";
import {catalog, seeds} from "../support/designs.js";

/** Values by the paths of their fields. */
export type Changes = Readonly<Record<string, unknown>>;

/** A design as a starter and what differs from it: what a failure is shrunk to. */
export interface Case {
  readonly starter: string;
  readonly changes: Changes;
  /** The field that is moved by a millionth. */
  readonly moved: string;
  /** Whether its deck is searched for as well. */
  readonly searched: boolean;
}

/** Of ten cases so many stay near a starter; in the others every field is drawn anew. */
const NEAR = 7;
/** One case of so many searches for its deck. */
const SEARCHED = 10;
/** Most fields that a case near a starter changes. */
const MOST_CHANGES = 4;
/** Most entries of a list that are drawn. */
const MOST_ENTRIES = 3;

/** Continuous fields of every design, which may be moved a little. */
const CONTINUOUS = Object.entries(FIELDS).flatMap(([path, field]) => (field.kind === "number" && !field.integer && !path.includes("*") ? [path] : []));

/** Members with each pattern that their usual layout holds: a member and its strands are drawn together. */
const DECKS = catalog.deckMembers.flatMap((row) => [6, 8, 10].flatMap((size) => usualPatterns(row, size).map((pattern) => ({"deck.member": row.designation, "deck.pattern": pattern}))));

const OWN_LOAD = "loads.rooms.*.own.";

/** The case of a seed: the same one always. */
export function caseOf(seed: number): Case {
  const random = seededRandom(seed);
  const {id, design} = pick(random, seeds);
  const changes: Record<string, unknown> = {};
  if (random.uniform() * 10 < NEAR) {
    const count = 1 + Math.floor(random.uniform() * MOST_CHANGES);
    for (let i = 0; i < count; i++) Object.assign(changes, change(random, pick(random, Object.keys(FIELDS)), design));
  } else {
    for (const [list, {min, max}] of Object.entries(LISTS)) changes[list] = entries(random, list, min, Math.min(max, MOST_ENTRIES));
    for (const path of Object.keys(FIELDS)) if (!path.includes("*")) Object.assign(changes, change(random, path, design));
  }
  return {starter: id, changes: fitted(design, changes), moved: pick(random, CONTINUOUS), searched: random.uniform() * SEARCHED < 1};
}

/** The design of a case. */
export function designOf({starter, changes}: Case): Design {
  const found = seeds.find(({id}) => id === starter);
  if (!found) throw new Error(`There is no starter ${starter}.`);
  return Object.entries(changes).reduce((design, [path, value]) => withValue(design, path, value), found.design);
}

/** A new value of one field, with those that go with it; a field of a list is that of its first entry. */
function change(random: Random, pattern: string, design: Design): Changes {
  if (pattern === "deck.member" || pattern === "deck.pattern") return pick(random, DECKS);
  // A live load of the reader's own has three fields that come together.
  if (pattern.startsWith(OWN_LOAD)) return {"loads.rooms.0.own": group(random, OWN_LOAD, () => true)};
  const path = pattern.replace("*", "0");
  const [list] = pattern.split(".*");
  if (path !== pattern && (valueAt(design, list as string) as unknown[]).length === 0) return {};
  // An optional field is left out as often as not.
  if (isOptional(path) && random.uniform() < 0.5) return {};
  return {[path]: valueOf(random, pattern, FIELDS[pattern] as Field)};
}

function valueOf(random: Random, pattern: string, field: Field): unknown {
  switch (field.kind) {
    case "number": {
      const share = random.uniform();
      // The ends of the range, the control's own steps, and anything between.
      if (share < 0.05) return field.min;
      if (share < 0.1) return field.max;
      const value = field.min + random.uniform() * (field.max - field.min);
      if (field.integer) return Math.round(value);
      return share < 0.5 ? Math.min(field.max, Math.max(field.min, Math.round(value / field.step) * field.step)) : value;
    }
    case "choice":
      return pick(random, Object.keys(field.choices));
    case "switch":
      return random.uniform() < 0.5;
    case "text":
      return pattern.endsWith("occupancy") ? pick(random, catalog.occupancies).id : "words";
  }
}

/** Entries of a list with every field that they must have, and half of the time those of an optional group as well. */
function entries(random: Random, list: string, min: number, max: number): unknown[] {
  const count = min + Math.floor(random.uniform() * (max - min + 1));
  return Array.from({length: count}, () => {
    const entry = group(random, `${list}.*.`, (path) => path.split(".").length === list.split(".").length + 2);
    return list === "loads.rooms" && random.uniform() < 0.5 ? {...entry, own: group(random, OWN_LOAD, () => true)} : entry;
  });
}

function group(random: Random, prefix: string, belongs: (path: string) => boolean): Record<string, unknown> {
  return Object.fromEntries(Object.entries(FIELDS)
    .filter(([path]) => path.startsWith(prefix) && belongs(path))
    .map(([path, field]) => [path.slice(prefix.length), valueOf(random, path, field)]));
}

/** Strengths at release that do not pass those at 28 days: else most cases would be refused at the door. */
function fitted(design: Design, changes: Record<string, unknown>): Changes {
  const fit = {...changes};
  const now = (path: string) => fit[path] ?? valueAt(design, path);
  for (const part of ["deck", "girder"]) {
    const [strength, release] = [`${part}.strengthPsi`, `${part}.releaseStrengthPsi`] as const;
    if ((now(release) as number) > (now(strength) as number)) fit[release] = Math.max(2500, now(strength) as number);
  }
  return fit;
}

function pick<T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random.uniform() * from.length)] as T;
}
