import {PIN_LETTERS} from "../../lib/compare/pinLetters.js";
import type {Design} from "../../lib/design/design.js";
import {isPlain} from "../../lib/design/plain.js";
import {validateDesign} from "../../lib/design/validate.js";

/** The part of the browser's storage that pins use; `keys` are all that stand in it. */
export interface PinStorage {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
  keys(): readonly string[];
}

/** A design that is kept beside the open one, to be compared with it. */
export interface Pin {
  readonly id: string;
  readonly name: string;
  /** What the reader says of it. */
  readonly note: string;
  /** Where it comes from, in words: "a starter", "floor.json". */
  readonly from: string;
  /** When it was pinned, ms; pins stand in this order. */
  readonly at: number;
  readonly design: Design;
}

/** Something that was kept as a pin and cannot be read: it stays where it is until the reader removes it. */
export interface BrokenPin {
  readonly id: string;
  readonly text: string;
  readonly message: string;
}

/** Each pin stands under a key of its own: one that cannot be read or has no room costs none of the others, and two tabs that pin at once lose nothing. */
export const PIN_PREFIX = "plank-and-tee/pins/";

/** Moments of the open design stand under keys of the same kind. */
export const MOMENT_PREFIX = "plank-and-tee/moments/";

/** A pin as it was found, with the text that it was read from. */
type Read = {readonly text: string} & ({readonly pin: Pin} | {readonly broken: BrokenPin});

/** What the storage holds of pins, in their order. */
export interface FoundPins {
  readonly pins: readonly Pin[];
  readonly broken: readonly BrokenPin[];
  /** What was read, by its identifier, for the next time. */
  readonly read: ReadonlyMap<string, Read>;
}

/** Nothing has been read yet. */
export const NO_PINS: FoundPins = {pins: [], broken: [], read: new Map()};

/** Reads all pins; one whose text is as it was is the very same as `before`, so that what has been computed of it still holds. */
export function loadPins(storage: PinStorage | undefined, prefix: string, before: FoundPins = NO_PINS): FoundPins {
  const read = new Map<string, Read>();
  for (const key of keysOf(storage, prefix)) {
    const id = key.slice(prefix.length);
    const text = textOf(storage, key);
    if (text === null) continue;
    const known = before.read.get(id);
    read.set(id, known?.text === text ? known : readPin(id, text));
  }
  const all = [...read.values()];
  return {
    pins: inOrder(all.flatMap((one) => ("pin" in one ? [one.pin] : []))),
    broken: all.flatMap((one) => ("broken" in one ? [one.broken] : [])),
    read,
  };
}

/** Pins in the order in which they were pinned. */
export function inOrder(pins: readonly Pin[]): Pin[] {
  return [...pins].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
}

/** Keeps a pin; says whether the browser took it. */
export function writePin(storage: PinStorage | undefined, prefix: string, {id, ...pin}: Pin): boolean {
  try {
    storage?.setItem(prefix + id, JSON.stringify(pin));
    return storage !== undefined;
  } catch {
    return false;
  }
}

/** Forgets a pin, one that cannot be read too. */
export function erasePin(storage: PinStorage | undefined, prefix: string, id: string): void {
  try {
    storage?.removeItem(prefix + id);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}

function keysOf(storage: PinStorage | undefined, prefix: string): readonly string[] {
  try {
    return storage?.keys().filter((key) => key.startsWith(prefix)) ?? [];
  } catch {
    return [];
  }
}

function textOf(storage: PinStorage | undefined, key: string): string | null {
  try {
    return storage?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

function readPin(id: string, text: string): Read {
  try {
    const content: unknown = JSON.parse(text);
    if (!isPlain(content)) throw new Error("It is not a pinned design.");
    const {name, note, from, at, design} = content;
    return {text, pin: {id, name: words(name, PIN_LETTERS.name) || "Unnamed", note: words(note, PIN_LETTERS.note), from: words(from, PIN_LETTERS.from), at: Number.isFinite(at) ? (at as number) : 0, design: validateDesign(design)}};
  } catch (problem) {
    return {text, broken: {id, text, message: problem instanceof Error ? problem.message : String(problem)}};
  }
}

function words(value: unknown, most: number): string {
  return typeof value === "string" ? value.slice(0, most) : "";
}
