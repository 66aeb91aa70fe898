import type {Shape} from "../../lib/sections/shape.js";
import {chain} from "../../components/drawings/dimension.js";
import {person} from "../../components/drawings/people.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";

/** What {@link truckLoad} draws. */
export interface TruckLoadOptions extends DrawingOptions {
  readonly shape: Shape;
  /** Tilt of a piece that is too wide, degrees; 0 lies flat. */
  readonly tiltDegrees: number;
  /** Pieces that one truck may carry by weight. */
  readonly pieces: number;
  /** Widths of a legal load and of one with a routine permit, and height of what stands on the trailer, ft. */
  readonly legalFt: number;
  readonly permitFt: number;
  readonly heightFt: number;
}

/** Height of a low trailer's deck, its width, and the wood between stacked pieces, in (common practice). */
const DECK_IN = 36;
const DUNNAGE_IN = 4;

type Place = (x: number, y: number) => PaperPoint;

/** A piece on its trailer from behind, with the widths and the height that roads allow. True to scale. */
export function truckLoad(options: TruckLoadOptions): SVGSVGElement {
  const {shape, tiltDegrees, widthPx, legalFt, permitFt, heightFt} = options;
  const textPx = textSize(widthPx);
  const clearIn = DECK_IN + 12 * heightFt;
  const reach = 12 * Math.max(permitFt / 2 + 0.8, (tiltDegrees ? 0 : shape.widthIn / 24) + 0.8);
  const standing = corners(shape, tiltDegrees).heightIn + DECK_IN;
  const {view, heightPx} = fitView({
    world: {x0: -reach - 40, y0: 0, x1: reach, y1: Math.max(clearIn, standing) + 10}, widthPx, mostHeightPx: options.mostHeightPx ?? 440,
    margins: {left: 4, right: 84, top: textPx * 5.2, bottom: 12},
  });
  const sheet = createSheet({
    view, kind: "truck", widthPx, heightPx,
    label: options.label ?? `${shape.designation} on a trailer, seen from behind`,
    description: options.description ?? `${tiltDegrees ? `Tilted by ${Math.round(tiltDegrees)} degrees` : "Lying flat"}; a legal load is ${legalFt} ft wide, one on a routine permit ${permitFt} ft; a bridge clears ${clearIn / 12} ft.`,
  });
  drawTrailer(sheet, view, 6 * legalFt);
  for (const place of places(options)) {
    // The first is cut where it ends; the others are the same piece again.
    concrete(sheet, "plant", shape.rings.map((ring) => pathThrough(ring.map(([x, y]) => { const [a, b] = place(x, y); return view.at(a, b); }), true)).join(""));
  }
  if (tiltDegrees) drawFrame(sheet, view, shape, tiltDegrees);
  const top = view.y(clearIn);
  for (const [halfIn, kind] of [[6 * legalFt, "hidden"], [6 * permitFt, "center"]] as const) {
    for (const x of [-halfIn, halfIn]) line(sheet.lines, kind, [[view.x(x), view.y(0)], [view.x(x), top - 4]]);
  }
  line(sheet.lines, "accent", [[view.x(-reach), top], [view.x(reach), top]]);
  // A piece that stands higher than bridges clear pushes the strings up.
  const overhead = view.y(Math.max(clearIn, standing));
  const widths = [[legalFt, "legal load", 0], [permitFt, "routine permit", 1]] as const;
  for (const [ft, name, row] of widths) {
    chain(sheet, {
      axis: "x", outward: -1, line: overhead - 12 - row * textPx * 2, texts: [{value: `${feetText(ft)}, ${name}`}],
      stops: [{at: view.x(-6 * ft), edge: top}, {at: view.x(6 * ft), edge: top}],
    });
  }
  chain(sheet, {
    axis: "y", outward: 1, line: view.x(reach) + 8, texts: [{value: feetText(clearIn / 12), name: "bridges"}],
    stops: [{at: view.y(0), edge: view.x(reach)}, {at: top, edge: view.x(reach)}],
  });
  person(sheet, view, -reach - 22, 0);
  line(sheet.lines, "cut", [[view.x(-reach - 40), view.y(0)], [view.x(reach), view.y(0)]]);
  if (tiltDegrees) text(sheet.notes, sheet, [view.x(0), view.y(DECK_IN / 2)], `tilted by ${Math.round(tiltDegrees)}\u00b0`, {kind: "name", plate: true});
  return sheet.svg;
}

function feetText(ft: number): string {
  const inches = Math.round(ft * 12);
  return `${Math.floor(inches / 12)}'-${inches % 12}"`;
}

/** Extent of the box around a section that is turned, in. */
function corners(shape: Shape, degrees: number): {leftIn: number; bottomIn: number; widthIn: number; heightIn: number; turn: Place} {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const turn: Place = (x, y) => [x * c - y * s, x * s + y * c];
  const all = [turn(0, 0), turn(shape.widthIn, 0), turn(shape.widthIn, shape.depthIn), turn(0, shape.depthIn)];
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  const [leftIn, bottomIn] = [Math.min(...xs), Math.min(...ys)];
  return {leftIn, bottomIn, widthIn: Math.max(...xs) - leftIn, heightIn: Math.max(...ys) - bottomIn, turn};
}

/** Where pieces stand: one that is tilted alone; flat ones in as many rows as weight and height let. */
function places({shape, tiltDegrees, pieces, legalFt, heightFt}: TruckLoadOptions): Place[] {
  const {leftIn, bottomIn, widthIn, turn} = corners(shape, tiltDegrees);
  if (tiltDegrees) {
    return [(x, y) => {
      const [a, b] = turn(x, y);
      return [a - leftIn - widthIn / 2, b - bottomIn + DECK_IN];
    }];
  }
  const abreast = Math.max(1, Math.floor((12 * legalFt + 1e-6) / shape.widthIn));
  const rows = Math.max(1, Math.floor((12 * heightFt + DUNNAGE_IN) / (shape.depthIn + DUNNAGE_IN)));
  const count = Math.max(1, Math.min(pieces, abreast * rows));
  const inRow = Math.min(abreast, count);
  return Array.from({length: count}, (_, i): Place => {
    const left = (i % inRow) * shape.widthIn - (inRow * shape.widthIn) / 2;
    const up = DECK_IN + Math.floor(i / inRow) * (shape.depthIn + DUNNAGE_IN);
    return (x, y) => [x + left, y + up];
  });
}

function drawTrailer(sheet: Sheet, view: View, halfIn: number): void {
  const box = (x0: number, y0: number, x1: number, y1: number, kind: string) => sheet.body.append(el("rect", {
    x: view.x(x0), y: view.y(y1), width: (x1 - x0) * view.scale, height: (y1 - y0) * view.scale, class: kind,
  }));
  for (const side of [-1, 1]) {
    for (const from of [halfIn - 11, halfIn - 23]) {
      const [a, b] = side < 0 ? [-from - 10, -from] : [from, from + 10];
      box(a, 0, b, 30, "tyre");
    }
  }
  box(-halfIn + 24, 12, halfIn - 24, 18, "furniture");
  box(-halfIn, 30, halfIn, DECK_IN, "furniture");
}

/** The frame under a tilted piece: along its underside, down to the trailer. */
function drawFrame(sheet: Sheet, view: View, shape: Shape, degrees: number): void {
  const {leftIn, bottomIn, widthIn, turn} = corners(shape, degrees);
  const at = (x: number, y: number) => {
    const [a, b] = turn(x, y);
    return view.at(a - leftIn - widthIn / 2, b - bottomIn + DECK_IN);
  };
  const [foot, head] = [at(0, 0), at(shape.widthIn, 0)];
  line(sheet.lines, "seen", [foot, head, [head[0], view.y(DECK_IN)], foot]);
}
