import type {SpanRange} from "../../lib/schemes/bayWindow.js";
import type {BayCell} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {element} from "../../components/dom.js";
import {cellPainter} from "./bayMapCells.js";

/** The map of bays: a table in which the arrow keys go from cell to cell. */
export interface BayMap {
  readonly node: HTMLElement;
  show(cells: readonly BayCell[], entry: MeasureEntry, spansFt: readonly number[], beamSpansFt: readonly number[]): void;
  /** Marks the cell that is chosen, and the one nearest to the open design. */
  mark(chosen: readonly [number, number] | undefined, own: readonly [number, number] | undefined): void;
}

/** What the reader does on the map. */
export interface BayMapEvents {
  /** A cell is pointed at; `stay` where it is chosen. */
  choose(cell: BayCell, stay: boolean): void;
  /** A part is marked out, by dragging over it or with Shift and the arrows; undefined where it no longer is. */
  markOut(part: {readonly deckFt: SpanRange; readonly beamFt: SpanRange} | undefined): void;
}

/** More columns than this are set closer. */
const CLOSE_FROM = 24;

/** Where a cell stands: its column from the left, its row from the top. */
type Place = readonly [column: number, row: number];

export function bayMap(events: BayMapEvents): BayMap {
  const table = element("table", {class: "bay-map", role: "grid", "aria-label": "Deck span by beam span", "aria-multiselectable": "true"});
  const node = element("div", {class: "scrolls bay-map-place"}, table);
  let shape = "";
  let places: HTMLTableCellElement[][] = [];
  let known = new Map<string, BayCell>();
  /** The cell that has the focus, and the one from which a part is marked out. */
  let at: Place = [0, 0];
  let anchor: Place | undefined;
  let dragged = false;
  let [spans, beams]: [readonly number[], readonly number[]] = [[], []];
  const paintCells = cellPainter();
  /** The cells that are marked, as they were told. */
  let marked = "";

  const cellAt = ([i, j]: Place) => places[j]?.[i];
  const foundAt = ([i, j]: Place) => known.get(keyOf(spans[i] as number, beams[j] as number));
  const markOut = (to: Place | undefined) => {
    const [from, end] = [anchor, to];
    const [i0, i1] = from && end ? sorted(from[0], end[0]) : [-1, -1];
    const [j0, j1] = from && end ? sorted(from[1], end[1]) : [-1, -1];
    places.forEach((row, j) => row.forEach((cell, i) => cell.classList.toggle("is-marked", i >= i0 && i <= i1 && j >= j0 && j <= j1)));
    if (!to) anchor = undefined;
    events.markOut(to && (i1 > i0 || j1 > j0) ? {deckFt: {fromFt: spans[i0] as number, toFt: spans[i1] as number}, beamFt: {fromFt: beams[j1] as number, toFt: beams[j0] as number}} : undefined);
  };
  const cellFor = (i: number, j: number): HTMLTableCellElement => {
    const place: Place = [i, j];
    const cell = element("td", {tabindex: i === 0 && j === 0 ? 0 : -1, role: "gridcell"});
    const tell = (stay: boolean) => {
      const found = foundAt(place);
      if (found) events.choose(found, stay);
    };
    cell.addEventListener("focus", () => {
      cellAt(at)?.setAttribute("tabindex", "-1");
      at = place;
      cell.tabIndex = 0;
      tell(false);
    });
    // A finger scrolls the map; a mouse marks a part of it out.
    cell.addEventListener("pointerdown", ({button, pointerType}) => {
      dragged = false;
      if (button !== 0 || pointerType !== "mouse") return;
      if (anchor) markOut(undefined);
      anchor = place;
    });
    cell.addEventListener("pointerenter", ({buttons}) => {
      tell(false);
      if (buttons !== 1 || !anchor) return;
      dragged ||= anchor[0] !== i || anchor[1] !== j;
      if (dragged) markOut(place);
    });
    cell.addEventListener("click", () => {
      if (dragged) return;
      if (anchor) markOut(undefined);
      tell(true);
    });
    return cell;
  };
  const build = () => {
    places = beams.map((_, j) => spans.map((__, i) => cellFor(i, j)));
    anchor = undefined;
    at = [0, 0];
    marked = "";
    table.classList.toggle("is-close", spans.length > CLOSE_FROM);
    table.replaceChildren(
      element("thead", {},
        element("tr", {}, element("th", {scope: "col", rowspan: 2, class: "bay-axis"}, "beams, ft"), element("th", {colspan: spans.length, scope: "colgroup", class: "bay-axis"}, "deck span, ft")),
        element("tr", {}, ...spans.map((span) => element("th", {scope: "col", "data-unit": "ft"}, String(span))))),
      element("tbody", {}, ...beams.map((beam, j) => element("tr", {}, element("th", {scope: "row", "data-unit": "ft"}, String(beam)), ...places[j] ?? []))));
  };
  table.addEventListener("keydown", (event) => {
    const [i, j] = at;
    const to = ({ArrowRight: [i + 1, j], ArrowLeft: [i - 1, j], ArrowDown: [i, j + 1], ArrowUp: [i, j - 1], Home: [0, j], End: [spans.length - 1, j]} as Record<string, [number, number]>)[event.key];
    if (to) {
      const next: Place = [Math.min(spans.length - 1, Math.max(0, to[0])), Math.min(beams.length - 1, Math.max(0, to[1]))];
      if (event.shiftKey) anchor ??= at;
      cellAt(next)?.focus();
      if (event.shiftKey) markOut(next);
      else if (anchor) markOut(undefined);
    } else if (event.key === "Escape" && anchor) markOut(undefined);
    else if (event.key === "Enter" || event.key === " ") {
      dragged = false;
      cellAt(at)?.click();
    } else return;
    event.preventDefault();
  });
  return {
    node,
    show(cells, entry, spansFt, beamSpansFt) {
      const next = JSON.stringify([spansFt, beamSpansFt]);
      // From the longest beam span down, as a chart has it.
      [spans, beams] = [spansFt, [...beamSpansFt].reverse()];
      if (shape !== next) {
        shape = next;
        build();
        events.markOut(undefined);
      }
      known = new Map(cells.map((cell) => [keyOf(cell.spanFt, cell.beamSpanFt), cell]));
      paintCells(places.flatMap((row, j) => row.map((place, i) => ({place, cell: foundAt([i, j])}))), entry);
    },
    mark(chosen, own) {
      const next = JSON.stringify([chosen, own]);
      if (marked === next) return;
      marked = next;
      places.forEach((row, j) => row.forEach((place, i) => {
        const is = (of: readonly [number, number] | undefined) => of !== undefined && spans[i] === of[0] && beams[j] === of[1];
        place.classList.toggle("is-chosen", is(chosen));
        if (chosen !== undefined) place.setAttribute("aria-selected", String(is(chosen)));
        place.classList.toggle("is-own", is(own));
      }));
    },
  };
}

const keyOf = (spanFt: number, beamSpanFt: number) => `${spanFt} ${beamSpanFt}`;
const sorted = (a: number, b: number): [number, number] => (a < b ? [a, b] : [b, a]);
