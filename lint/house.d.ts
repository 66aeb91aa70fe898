import type {Rule} from "eslint";

/** Files or rooms with those that each imports. */
export type Imports<Places extends Iterable<string> = Iterable<string>> = ReadonlyMap<string, Places>;

export interface House {
  /** Rooms of `lib/`, the first above all. */
  readonly order: readonly string[];
  readonly files: ReadonlyMap<string, readonly string[]>;
  readonly rooms: ReadonlyMap<string, ReadonlySet<string>>;
}

export const ROOT: string;
export const layers: Rule.RuleModule;
export function roomsInOrder(text: string): string[];
export function importedFile(from: string, specifier: string): string | undefined;
export function roomOf(file: string): string;
export function misplaced(from: string, to: string, order: readonly string[]): string | undefined;
export function importsOfAll(root?: string): House["files"];
export function wayBack(graph: Imports, from: string, to: string): string[] | undefined;
export function importsOfRooms(files: House["files"]): House["rooms"];
export function fault(from: string, to: string, house: House): string | undefined;
export function readHouse(root?: string): House;
