import {compareDesign} from "../../lib/compare/column.js";
import type {Catalog} from "../../lib/catalog.js";
import {InputError} from "../../lib/errors.js";
import {PRICE_LIST, type PriceName} from "../../lib/schemes/measures/prices.js";
import type {RawTables} from "../../lib/tables.js";
import {comparing} from "../../components/compare/comparing.js";
import {comparedOf, compareView, type CompareView} from "../../components/compare/view.js";
import {inRecord, recordSwitch} from "../../components/compare/inRecord.js";
import {element} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import type {Seed} from "../../components/notebook.js";
import type {PinStore} from "../../components/pins.js";
import {ownPrices} from "../../components/prices/ownPrices.js";
import {pricesFold} from "../../components/prices/pricesFold.js";
import {measuredBy} from "../../components/compare/measuredBy.js";
import type {Observe} from "../../components/shared/deckSearch.js";
import type {DesignStore} from "../../components/store.js";
import {workPlace} from "../../components/worker/work.js";
import {differenceTable} from "./differenceTable.js";
import {inputsTable} from "./inputsTable.js";
import {lightFigure, loadFigure} from "./overlaid.js";
import {pinControls} from "./pinControls.js";
import {pinList} from "./pinList.js";
import {sideBySide, type SectionKind} from "./sideBySide.js";

/** The parts of the page, which stand apart on it and follow one comparison. */
export interface ComparePanel {
  readonly controls: HTMLElement;
  readonly list: HTMLElement;
  readonly table: HTMLElement;
  readonly prices: HTMLElement;
  readonly sections: HTMLElement;
  readonly curves: HTMLElement;
  readonly inputs: HTMLElement;
  /** Whether the record takes the comparison in. */
  readonly choice: HTMLElement;
  /** The names of the designs; told anew when one of them is another. Fits `Generators.observe`. */
  readonly names: Observe<{readonly open: string; readonly pinned: readonly string[]}>;
  /** Draws the pictures for the widths of a wide one and of one in the column, px. */
  resize(widePx: number, columnPx: number): void;
}

const KINDS: readonly {readonly kind: SectionKind; readonly title: string}[] = [
  {kind: "deck", title: "The deck, cut across at midspan"}, {kind: "story", title: "One story, cut through at the window"},
  {kind: "edge beam", title: "The edge beam with the deck on it"}, {kind: "girder", title: "The girder between two bays"},
];

const PRICE_NAMES = Object.keys(PRICE_LIST) as PriceName[];

export function comparePanel(store: DesignStore, pins: PinStore, catalog: Catalog, tables: RawTables, seeds: readonly Seed[]): ComparePanel {
  const work = comparing(workPlace(tables), measuredBy(catalog));
  const prices = pricesFold(ownPrices());
  learnOpen();
  const view = compareView(store, pins, work);
  const controls = pinControls(store, pins, seeds);
  const list = pinList(store, pins, controls);
  const table = differenceTable();
  const inputs = element("div", {});
  const [sections, curves] = [element("div", {}), element("div", {})];
  const turns = inTurns();
  let widths: {readonly widePx: number; readonly columnPx: number} | undefined;

  /** The open design's numbers are there when the page is first painted, so that nothing moves when they come. */
  function learnOpen(): void {
    try {
      work.learn(store.get(), compareDesign(store.get(), catalog, measuredBy(catalog)));
    } catch (problem) {
      // The work beside the page says the same, in the design's place.
      if (!(problem instanceof InputError)) throw problem;
    }
  }

  const slots = KINDS.map(({kind, title}) => ({kind, title, node: sections.appendChild(element("div", {}))}));
  const [load, light] = [curves.appendChild(element("div", {})), curves.appendChild(element("div", {}))];
  const drawSections = (now: CompareView, widePx: number) => slots.map(({kind, title, node}) => () => {
    const has = kind !== "girder" || [now.open, ...now.pinned].some(({design}) => design.bay.baysAcross > 1);
    node.replaceChildren(...(has ? [figure(sideBySide(now, catalog, kind, widePx), {title, wide: true, caption: now.pinned.length > 0 ? "All at one scale." : "Pin a design, and it is drawn beside this one, at one scale."})] : []));
  });
  const drawCurves = (now: CompareView, columnPx: number) => [() => redraw(load, loadFigure(now, columnPx)), () => redraw(light, lightFigure(now, columnPx))];
  const drawWords = (now: CompareView) => [() => table.show(now), () => inputs.replaceChildren(inputsTable(now, inputs.querySelector("details")?.open === true))];

  view.observe(list.show);
  view.observe(({open, pinned}) => {
    const known = [open, ...pinned].flatMap((entry) => comparedOf(entry) ?? []);
    prices.show(known.length > 0 ? PRICE_NAMES.filter((name) => known.some(({lacks}) => lacks.includes(name))) : undefined);
  });
  let first = true;
  ownPrices().observe(() => {
    if (!first) work.measureBy(measuredBy(catalog));
    first = false;
  });
  /** Of what each part is made; a note that is being written changes none of them. */
  let shown: {readonly designs: string; readonly found: string} | undefined;
  const keys = keysOf();
  view.observe((now) => {
    const entries = [now.open, ...now.pinned];
    const designs = JSON.stringify(entries.map(({name, letter, design}) => [name, letter, keys(design)]));
    const next = {designs, found: now.open.found ? JSON.stringify([designs, entries.map(({found}) => keys(found))]) : (shown?.found ?? "")};
    const [designsChanged, foundChanged] = [next.designs !== shown?.designs, next.found !== shown?.found];
    const first = shown === undefined;
    shown = next;
    const parts = [
      ...(foundChanged || first ? drawWords(now) : []),
      ...(widths && foundChanged ? drawCurves(now, widths.columnPx) : []),
      ...(widths && designsChanged ? drawSections(now, widths.widePx) : []),
    ];
    if (first) for (const part of parts) part();
    else turns(parts);
  });
  return {
    controls: controls.node, list: list.node, table: table.node, prices: prices.node, sections, curves, inputs, choice: recordSwitch(inRecord(), view.observe),
    names(change) {
      let told = "";
      return view.observe(({open, pinned}) => {
        const names = {open: open.name, pinned: pinned.map(({name}) => name)};
        const key = JSON.stringify(names);
        if (key === told) return;
        told = key;
        change(names);
      });
    },
    resize(widePx, columnPx) {
      if (widths?.widePx === widePx && widths.columnPx === columnPx) return;
      widths = {widePx, columnPx};
      for (const part of [...drawCurves(view.get(), columnPx), ...drawSections(view.get(), widePx)]) part();
    },
  };
}

/** Puts a figure in its place; what the reader has unfolded in the one before stays open. */
function redraw(slot: HTMLElement, next: HTMLElement | undefined): void {
  const open = slot.querySelector("details")?.open === true;
  const details = next?.querySelector("details");
  if (details) details.open = open;
  slot.replaceChildren(...(next ? [next] : []));
}

/** A number for each thing, always the same one. */
function keysOf(): (thing: object | undefined) => number {
  const known = new WeakMap<object, number>();
  let last = 0;
  return (thing) => {
    if (!thing) return 0;
    if (!known.has(thing)) known.set(thing, ++last);
    return known.get(thing) as number;
  };
}

/** Runs pieces of work one after the other once the browser has painted, each in a moment of its own. */
function inTurns(): (parts: readonly (() => void)[]) => void {
  let waiting: (() => void)[] = [];
  let running = false;
  const next = () => {
    const part = waiting.shift();
    if (!part) {
      running = false;
      return;
    }
    part();
    setTimeout(next);
  };
  return (parts) => {
    waiting = [...waiting, ...parts];
    if (running || waiting.length === 0) return;
    running = true;
    requestAnimationFrame(() => setTimeout(next));
  };
}
