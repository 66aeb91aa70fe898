import {inSystem} from "../../lib/reader/turned.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {AS_IS, NAMES} from "./runs.js";

/** What an attribute said in US units, and what was written in its place. */
interface Kept {
  readonly us: string;
  readonly shown: string;
}

const kept = new WeakMap<Element, Map<string, Kept>>();

/** Writes the names of an element, for those who listen or point, in the reader's units. */
export function turnNames(node: Element, system: UnitSystem): void {
  for (const name of NAMES) {
    const text = node.getAttribute(name);
    if (text === null || text === "") continue;
    const before = kept.get(node)?.get(name);
    const us = before?.shown === text ? before.us : text;
    const shown = node.closest(AS_IS) ? us : inSystem(us, system);
    if (shown !== text) node.setAttribute(name, shown);
    if (shown === us && !before) continue;
    const own = kept.get(node) ?? new Map<string, Kept>();
    own.set(name, {us, shown});
    kept.set(node, own);
  }
}
