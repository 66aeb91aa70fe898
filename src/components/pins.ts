import type {Design} from "../lib/design/design.js";
import {PIN_LETTERS} from "../lib/compare/pinLetters.js";
import {sameDesign} from "../lib/design/same.js";
import {validateDesign} from "../lib/design/validate.js";
import {NO_PINS, PIN_PREFIX, erasePin, inOrder, loadPins, writePin, type BrokenPin, type FoundPins, type Pin, type PinStorage} from "./pins/keptPins.js";

/** Where pins live; the browser in the notebook, plain objects in a test. */
export interface PinSurroundings {
  /** Throws InputError for a design whose parts do not fit each other. */
  readonly check: (design: Design) => void;
  readonly storage: PinStorage | undefined;
  readonly now: () => number;
  /** A name for a pin that no other has. */
  readonly newId: () => string;
  /** What its keys begin with; those of pins if left out. */
  readonly prefix?: string;
}

/** What a pin is given besides its design. */
export interface PinWords {
  /** The design's own name if left out; a number is added where another pin has it. */
  readonly name?: string;
  /** Where it comes from: "a starter", "floor.json". */
  readonly from: string;
  readonly note?: string;
}

/** The pins as they stand. */
export interface PinsNow {
  readonly pins: readonly Pin[];
  readonly broken: readonly BrokenPin[];
  /** Identifiers of pins that the browser had no room for: they last as long as the page. */
  readonly unkept: ReadonlySet<string>;
}

/** Designs pinned beside the open one, for all pages and tabs. Every function works without `this`. */
export interface PinStore {
  get(): PinsNow;
  /** Calls at once and after each change; returns the end of it. Fits `Generators.observe`. */
  observe(change: (now: PinsNow) => void): () => void;
  /**
   * Pins a design, at the end. One that is pinned already stays as it is, and is what comes back.
   *
   * @throws InputError for a design that cannot be computed; the pins are then as they were
   */
  pin(design: Design, words: PinWords): {readonly pin: Pin; readonly fresh: boolean};
  /** Gives a pin another name; an empty one is its design's own. */
  rename(id: string, name: string): void;
  note(id: string, note: string): void;
  /** Takes a pin away, or what cannot be read of one. */
  remove(id: string): void;
  /** Brings the pin that was removed last back to its place; undefined where there is none. */
  bringBack(): Pin | undefined;
  /** Takes over what another tab has pinned, changed and removed. */
  reload(): void;
}

/** Makes a store of pins; see {@link PinStore}. Each change is written at once. */
export function createPins({check, storage, now, newId, prefix = PIN_PREFIX}: PinSurroundings): PinStore {
  const listeners = new Set<(now: PinsNow) => void>();
  let found: FoundPins = NO_PINS;
  let unkept = new Map<string, Pin>();
  let removed: Pin | undefined;
  let shown: PinsNow = look();

  /** What the storage holds and what it had no room for. */
  function look(): PinsNow {
    found = loadPins(storage, prefix, found);
    // A pin whose newest words found no room stands in the storage with its older ones.
    const pins = inOrder([...found.pins.filter(({id}) => !unkept.has(id)), ...unkept.values()]);
    return {pins, broken: found.broken, unkept: new Set(unkept.keys())};
  }

  function show(): void {
    shown = look();
    for (const listener of listeners) listener(shown);
  }

  /** Writes a pin, and what had no room before. */
  function keep(changed?: Pin): void {
    const waiting = new Map(unkept);
    if (changed) waiting.set(changed.id, changed);
    unkept = new Map([...waiting].filter(([, pin]) => !writePin(storage, prefix, pin)));
    show();
  }

  function freeName(wanted: string): string {
    const name = wanted.trim().slice(0, PIN_LETTERS.name);
    const taken = new Set(shown.pins.map((pin) => pin.name));
    for (let i = 1; ; i++) {
      const tried = i === 1 ? name : `${name.slice(0, PIN_LETTERS.name - 6)} (${i})`;
      if (!taken.has(tried)) return tried;
    }
  }

  function change(id: string, changes: Partial<Pick<Pin, "name" | "note">>): void {
    const pin = shown.pins.find((one) => one.id === id);
    if (pin) keep({...pin, ...changes});
  }

  return {
    get: () => shown,
    observe(change) {
      listeners.add(change);
      change(shown);
      return () => listeners.delete(change);
    },
    pin(given, {name, from, note = ""}) {
      const design = validateDesign(given);
      check(design);
      const known = shown.pins.find((pin) => sameDesign(pin.design, design));
      if (known) return {pin: known, fresh: false};
      // Later than the last, even where the clock has gone back.
      const at = Math.max(now(), (shown.pins.at(-1)?.at ?? 0) + 1);
      const pin = {id: newId(), name: freeName(name?.trim() || design.name.trim() || "Unnamed"), note: note.slice(0, PIN_LETTERS.note), from, at, design};
      keep(pin);
      return {pin, fresh: true};
    },
    rename(id, name) {
      const pin = shown.pins.find((one) => one.id === id);
      if (pin) change(id, {name: name.trim().slice(0, PIN_LETTERS.name) || pin.design.name});
    },
    note: (id, note) => change(id, {note: note.slice(0, PIN_LETTERS.note)}),
    remove(id) {
      removed = shown.pins.find((pin) => pin.id === id) ?? removed;
      unkept.delete(id);
      erasePin(storage, prefix, id);
      keep();
    },
    bringBack() {
      const pin = removed;
      removed = undefined;
      if (pin) keep(pin);
      return pin;
    },
    reload: show,
  };
}
