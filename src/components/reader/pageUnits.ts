/** What writes a page in the reader's units: every text, name and number in it, as it stands and whenever one changes. */
import {inSystem} from "../../lib/reader/turned.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {turnAxes} from "./axes.js";
import {addResults} from "./results.js";
import {controlUnit} from "./controlUnit.js";
import {readBy} from "./system.js";
import {turnNames} from "./names.js";
import {NAMES, blockOf, lettering, turnRuns, usText} from "./runs.js";

/** Marks what an open question hides. */
const VEILED = "data-veiled";

let system: UnitSystem = "US";
let observer: MutationObserver | undefined;

/** Writes the page in a system, now and from now on. Going back to US units gives every text back as it was. */
export function turnPage(next: UnitSystem): void {
  system = next;
  readBy(next === "US" ? undefined : {text: (text) => inSystem(text, lettering(next)), unit: (unit, step) => controlUnit(unit, step, next === "both"), written: usText});
  // A page may say that it keeps the units of its sources.
  const keeps = document.querySelector<HTMLElement>("main:has([data-keeps-units])");
  if (keeps) keeps.dataset["units"] = "as is";
  turn([document.body]);
  if (next === "US") {
    observer?.disconnect();
    observer = undefined;
    return;
  }
  if (observer) return;
  // Its work is done before the browser paints, so no reader sees a text in both states.
  observer = new MutationObserver(changed);
  observer.observe(document.body, {subtree: true, childList: true, characterData: true, attributes: true, attributeFilter: [...NAMES, VEILED]});
}

function changed(records: readonly MutationRecord[]): void {
  const whole = new Set<Element>();
  const blocks = new Set<Element>();
  for (const record of records) {
    const {target} = record;
    if (!target.isConnected) continue;
    if (record.attributeName === VEILED) {
      whole.add(target as Element);
      continue;
    }
    if (record.type === "attributes") {
      turnNames(target as Element, system);
      continue;
    }
    const block = blockOf(target);
    if (record.type === "childList") {
      for (const added of record.addedNodes) if (added instanceof Element && added.isConnected) whole.add(added);
    }
    if (block) blocks.add(block);
  }
  for (const each of whole) if (hasAncestorIn(each, whole)) whole.delete(each);
  turn(whole);
  for (const block of blocks) if (block.isConnected) turnRuns(block, system, false);
  observer?.takeRecords();
}

function turn(roots: Iterable<Element>): void {
  for (const root of roots) {
    turnAxes(root, system);
    addResults(root, system);
    turnRuns(root, system, true);
    turnNames(root, system);
    for (const named of root.querySelectorAll(NAMES.map((name) => `[${name}]`).join(","))) turnNames(named, system);
  }
  observer?.takeRecords();
}

function hasAncestorIn(node: Element, set: ReadonlySet<Element>): boolean {
  for (let up = node.parentElement; up; up = up.parentElement) if (set.has(up)) return true;
  return false;
}
