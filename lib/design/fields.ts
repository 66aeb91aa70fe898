import type {EntriesByPath, Entries, Entry, Field, Group, List, NumberField} from "./entries.js";
import {DESIGN_FIELDS, RENAMED} from "./fieldTable.js";


type Table = typeof DESIGN_FIELDS;
/** Paths of all entries, groups and lists included, each with its entry; `*` stands for any index of a list. */
type ByPath = EntriesByPath<Table>;
/** The group that a path may begin with. */
export type GroupName = {[Name in keyof Table]: Table[Name] extends Group ? Name : never}[keyof Table];
/** The path of an entry: `bay`, `bay.spanFt`, `loads.rooms`, `loads.rooms.*.name`. */
export type EntryPath = ByPath[0];
/** The path of a field: one value that a reader can set. */
export type FieldPath = Extract<ByPath, readonly [string, Field]>[0];
/** The path of a field that is a number. */
export type NumberPath = Extract<ByPath, readonly [string, NumberField]>[0];

/** Every entry by its path, groups and lists before what is in them. */
export const ENTRIES: ReadonlyMap<string, Entry> = new Map(byPath(DESIGN_FIELDS, ""));

/** Every field by its path, in the order of the table; `*` stands for any index of a list. */
export const FIELDS: Readonly<Record<string, Field>> = Object.fromEntries([...ENTRIES].filter((pair): pair is [string, Field] => isField(pair[1])));

/** Every list of a design by its path. */
export const LISTS: Readonly<Record<string, List>> = Object.fromEntries([...ENTRIES].filter((pair): pair is [string, List] => pair[1].kind === "list"));

/** Version of the design file that this library writes: the newest that a field or a name came with. */
export const DESIGN_VERSION = Math.max(...[...Object.values(FIELDS), ...Object.values(LISTS)].map(({since}) => since?.version ?? 1), ...RENAMED.map(({since}) => since));

/** The entry at a path such as `loads.rooms` or `loads.rooms.0.name`, or undefined. */
export function entryAt(path: string): Entry | undefined {
  return ENTRIES.get(path) ?? ENTRIES.get(patternOf(path));
}

/** The field at a path such as `loads.rooms.0.name`, or undefined. */
export function fieldAt(path: string): Field | undefined {
  const entry = entryAt(path);
  return entry && isField(entry) ? entry : undefined;
}

/** The field that the table has at a path, by its own kind: a number's range, the very choices of a choice. */
export function fieldOf<Path extends FieldPath>(path: Path): Extract<ByPath, readonly [Path, unknown]>[1] {
  return ENTRIES.get(path) as Extract<ByPath, readonly [Path, unknown]>[1];
}

/** Whether a path such as `loads.rooms.0.own` may be left out. */
export function isOptional(path: string): boolean {
  return entryAt(path)?.optional === true;
}

/** A path with `*` for each index of a list. */
export function patternOf(path: string): string {
  return path.replace(/\.\d+(?=\.|$)/g, ".*");
}

/** Whether an entry is one value, not lengths by name, a group or a list. */
export function isField(entry: Entry): entry is Field {
  return entry.kind !== "group" && entry.kind !== "list" && entry.kind !== "lengths";
}

function byPath(entries: Entries, before: string): [string, Entry][] {
  return Object.entries(entries).flatMap(([name, entry]) => {
    const path = before + name;
    const inside = entry.kind === "group" ? byPath(entry.entries, `${path}.`) : entry.kind === "list" ? byPath(entry.entries, `${path}.*.`) : [];
    return [[path, entry] as [string, Entry], ...inside];
  });
}
