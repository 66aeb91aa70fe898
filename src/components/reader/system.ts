import {UNIT_SYSTEMS, type UnitSystem} from "../../lib/reader/system.js";
import {keep, recall} from "../store/kept.js";

const KEY = "units";
const listeners = new Set<(system: UnitSystem) => void>();
let system: UnitSystem | undefined;

/** The units that this reader wants to see; US where nothing was chosen. */
export function readerSystem(): UnitSystem {
  return (system ??= UNIT_SYSTEMS.find((each) => each === recall(KEY)) ?? "US");
}

/** Calls after each change of the reader's units; returns the end of it. */
export function onSystem(change: (system: UnitSystem) => void): () => void {
  listeners.add(change);
  return () => listeners.delete(change);
}

/** Chooses the reader's units, for all pages and tabs. */
export function setSystem(next: UnitSystem): void {
  if (next === readerSystem()) return;
  keep(KEY, next);
  tell(next);
}

function tell(next: UnitSystem): void {
  system = next;
  for (const listener of listeners) listener(next);
}

/** Listens to the switch that stands in every page, and calls once when the reader turns to it or chooses units in another tab. */
export function awaitsUnits(begin: () => void): void {
  const node = document.querySelector(".unit-switch");
  node?.addEventListener("change", ({target}) => setSystem(UNIT_SYSTEMS.find((each) => each === (target as HTMLInputElement).value) ?? "US"));
  if (readerSystem() !== "US") {
    begin();
    return;
  }
  const once = new AbortController();
  const start = () => {
    once.abort();
    begin();
  };
  for (const event of ["focusin", "pointerover"]) node?.addEventListener(event, start, {signal: once.signal});
  window.addEventListener("storage", ({key}) => key === `plank-and-tee/${KEY}` && start(), {signal: once.signal});
}

/** Follows what another tab has chosen. */
export function followTabs(): void {
  window.addEventListener("storage", ({key}) => {
    if (key !== null && key !== `plank-and-tee/${KEY}`) return;
    const before = system;
    system = undefined;
    const now = readerSystem();
    if (before !== now) tell(now);
  });
}

/** The SI unit in which a number's box and slider show it. */
export interface ShownUnit {
  readonly unit: string;
  /** How many of it are in one of the number's own unit. */
  readonly factor: number;
  /** Decimals that are shown at the most. */
  readonly places: number;
  /** A step of the keys and of the slider, in the SI unit. */
  readonly step: number;
  /** Whether it stands beside the number's own unit and not in its place. */
  readonly beside: boolean;
}

/** How texts and numbers are shown to readers of other units. */
export interface Reading {
  readonly text: (text: string) => string;
  readonly unit: (unit: string, step: number) => ShownUnit | undefined;
  /** A text node's words as they were written, in US units. */
  readonly written: (node: Text) => string;
}

let reading: Reading | undefined;

/** A text as it will stand in a drawing, for whoever measures or breaks it before it does. */
export function asRead(text: string): string {
  return reading ? reading.text(text) : text;
}

/** A text node's words as they were written, for whoever puts them into other nodes: the page writes those in the reader's units itself. */
export function asWritten(node: Text): string {
  return reading ? reading.written(node) : node.data;
}

/** The SI unit of a number in a unit, whose own step is `step`; undefined for readers of US units and where there is none. */
export function shownUnit(unit: string, step = 1): ShownUnit | undefined {
  return reading?.unit(unit, step);
}

/** Says how the page is read; what turns it comes only for readers of other units (`reader/pageUnits.ts`). */
export function readBy(how: Reading | undefined): void {
  reading = how;
  for (const node of document.querySelectorAll(`[${ANEW}]`)) node.dispatchEvent(new Event(ANEW));
}

const ANEW = "data-read-anew";

/** Calls a control that stands in the page whenever numbers are shown in other units than before. */
export function whenReadAnew(node: Element, show: () => void): void {
  node.setAttribute(ANEW, "");
  node.addEventListener(ANEW, show);
}
