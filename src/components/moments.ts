import type {Catalog} from "../lib/catalog.js";
import type {Design} from "../lib/design/design.js";
import {sameDesign} from "../lib/design/same.js";
import {InputError} from "../lib/errors.js";
import {evaluate} from "../lib/evaluate.js";
import {openPins} from "./pins/browser.js";
import {MOMENT_PREFIX, type Pin} from "./pins/keptPins.js";
import type {PinStore} from "./pins.js";

/** Where a moment comes from that nobody asked for. */
export const BY_ITSELF = "kept by itself";
/** Of those so many are kept, the latest; what the reader names stays until the reader removes it. */
const MOST_BY_ITSELF = 12;

let opened: PinStore | undefined;

/** Moments of the open design that this reader can come back to, shared by all pages and tabs. */
export function momentsOf(catalog: Catalog): PinStore {
  return (opened ??= openPins((design) => evaluate(design, catalog), MOMENT_PREFIX));
}

/** Keeps a design that gives way to another one, unless it is a starter as it is, which is one press away in any case. */
export function keepBefore(catalog: Catalog, starters: readonly Design[], before: Design, by: Design): void {
  if (starters.some((starter) => sameDesign(starter, before))) return;
  const moments = momentsOf(catalog);
  try {
    moments.pin(before, {name: `${before.name}, before ${by.name === before.name ? "it was replaced" : `\u201c${by.name}\u201d was opened`}`, from: BY_ITSELF});
  } catch (problem) {
    // One that this kit can no longer compute is still among the steps of undo.
    if (!(problem instanceof InputError)) throw problem;
  }
  for (const {id} of surplus(moments.get().pins)) moments.remove(id);
}

/** The oldest of those that nobody asked for, beyond the number that is kept. */
export function surplus(all: readonly Pin[]): Pin[] {
  const own = all.filter(({from}) => from === BY_ITSELF);
  return own.slice(0, Math.max(0, own.length - MOST_BY_ITSELF));
}
