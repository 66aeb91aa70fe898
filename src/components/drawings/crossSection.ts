import type {Ring} from "../../lib/sections/polygon.js";
import type {Shape} from "../../lib/sections/shape.js";
import {chain, chainDepth, type DimensionText} from "./dimension.js";
import {leader, scaleBar} from "./marks.js";
import {textWidth} from "./placement.js";
import {sectionDimensions, written, type Measured} from "./sectionDimensions.js";
import {concrete, createSheet, line, textSize, type DrawingOptions, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "./svg.js";
import {markScale} from "./oneScale.js";
import {fitView, type View} from "./view.js";

/** A strand in a section, in: from the left edge and above the soffit. */
export interface StrandPoint {
  readonly xIn: number;
  readonly yIn: number;
}

/** What {@link crossSection} draws. */
export interface CrossSectionOptions extends DrawingOptions {
  readonly shape: Shape;
  readonly strands: readonly StrandPoint[];
  /** The same strands where the member ends; drawn hollow. */
  readonly strandsEnd?: readonly StrandPoint[];
  readonly toppingIn: number;
  /** Depth of the neutral axis from the top, in. */
  readonly neutralAxisIn?: number;
  /** Depth of the compression block from the top, in. */
  readonly stressBlockIn?: number;
  /** Words for the strands; their count if left out. */
  readonly strandName?: string;
  readonly dimensions?: boolean;
}

/** A member cut across: outline, topping, every strand at its place. True to scale. */
export function crossSection(options: CrossSectionOptions): SVGSVGElement {
  const {shape, toppingIn, neutralAxisIn, widthPx, bare = false} = options;
  const dimensioned = !bare && options.dimensions !== false;
  const textPx = textSize(widthPx);
  const strings = dimensioned ? sectionDimensions(shape, toppingIn) : {left: [], right: [], above: [], below: []};
  const inside = shape.family === "double tee";
  const slender = shape.depthIn > shape.widthIn;
  const notes = bare ? [] : notesOf(options);
  const noteWidth = Math.max(0, ...notes.map((note) => textWidth(note.name, textPx))) + 26;
  const side = (list: readonly Measured[]) => (list.length ? chainDepth("y", textsOf(list[0] as Measured), textPx) + 18 : bare ? 1 : 8);
  // Between the stems of a tee there is room for notes, unless it is drawn very small: then what lies high goes above it.
  const small = inside && widthPx < 760;
  const row = textPx * 1.6 + 8;
  const rowBelow = notes.some((note) => !note.up) && !inside && !slender ? row : 0;
  const rowAbove = notes.some((note) => note.up) && !slender && (!inside || small) ? row : 0;
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: shape.widthIn, y1: shape.depthIn + toppingIn}, widthPx, mostScale: options.mostPxPerIn,
    mostHeightPx: options.mostHeightPx ?? (slender ? Math.max(360, widthPx * 0.5) : widthPx),
    margins: {
      left: side(strings.left) + (slender && notes.length ? noteWidth : 0), right: side(strings.right),
      top: bare ? 1 : (strings.above.length ? 54 : 14) + rowAbove,
      bottom: bare ? 1 : rowBelow + (strings.below.length === 2 ? 98 : strings.below.length ? 56 : 14) + (dimensioned ? 22 : 0),
    },
  });
  const sheet = createSheet({
    view, kind: "section", widthPx, heightPx, bare,
    label: options.label ?? `Cross-section of ${shape.designation}${toppingIn > 0 ? ` with ${written(toppingIn)} of topping` : ""}`,
    description: options.description ?? `${shape.family}, ${written(shape.widthIn)} wide and ${written(shape.depthIn)} deep, with ${options.strands.length} strands.`,
  });
  markScale(sheet, view);
  drawConcrete(sheet, view, options);
  drawStrands(sheet, view, options);
  if (neutralAxisIn !== undefined && !bare) drawAxis(sheet, view, options, neutralAxisIn);
  const within = inside ? notes.filter((note) => !rowAbove || !note.up) : [];
  if (within.length) notesInside(sheet, view, options, within);
  else if (slender) notesLeft(sheet, view, options, notes);
  if (!slender) notesInRows(sheet, view, options, notes.filter((note) => !within.includes(note)), row);
  if (dimensioned) {
    drawStrings(sheet, view, strings, {rowAbove, rowBelow}, slender && notes.length ? noteWidth : 0);
    scaleBar(sheet, [inside || slender ? Math.max(10, view.x(0)) : view.x(0), heightPx - 10], view.scale);
  }
  return sheet.svg;
}

/** A section small enough for a line of text: the thing alone. */
export function thumbnail(shape: Shape, strands: readonly StrandPoint[], toppingIn: number, heightPx = 28, mostWidthPx = 96): SVGSVGElement {
  const scale = Math.min((heightPx - 2) / (shape.depthIn + toppingIn), (mostWidthPx - 2) / shape.widthIn);
  return crossSection({shape, strands, toppingIn, bare: true, widthPx: Math.ceil(shape.widthIn * scale + 2), mostHeightPx: heightPx});
}

/** Path data of rings: outline and holes. */
export function pathOfRings(rings: readonly Ring[], view: View): string {
  return rings.map((ring) => pathThrough(ring.map(([x, y]) => view.at(x, y)), true)).join("");
}

function drawConcrete(sheet: Sheet, view: View, {shape, toppingIn, stressBlockIn}: CrossSectionOptions): void {
  const topIn = shape.depthIn + toppingIn;
  const outline = pathOfRings(shape.rings, view);
  const topping = pathOfBox(view.x(0), view.y(topIn), view.x(shape.widthIn), view.y(shape.depthIn));
  if (toppingIn > 0) concrete(sheet, "site", topping);
  concrete(sheet, "plant", outline);
  if (stressBlockIn === undefined || sheet.bare) return;
  const clip = sheet.clip(toppingIn > 0 ? outline + topping : outline);
  sheet.body.append(el("path", {d: pathOfBox(view.x(0), view.y(topIn), view.x(shape.widthIn), view.y(topIn - stressBlockIn)),
    class: "stress-block", style: `fill: ${sheet.pattern("compression")}`, "clip-path": clip, "data-part": "stress-block"}));
}

function drawStrands(sheet: Sheet, view: View, {strands, strandsEnd = []}: CrossSectionOptions): void {
  // True size where that can be seen; never so large that strands 2 in apart would touch.
  const radius = strandRadius(sheet, view);
  const dot = (kind: string, size: number, {xIn, yIn}: StrandPoint) =>
    sheet.body.append(el("circle", {cx: view.x(xIn), cy: view.y(yIn), r: size, class: kind, "data-part": "strand"}));
  if (!sheet.bare) strandsEnd.forEach((strand) => dot("strand-end", Math.max(1, radius - 0.4), strand));
  strands.forEach((strand) => dot("strand", radius, strand));
}

function strandRadius(sheet: Sheet, view: View): number {
  return Math.max(0.25 * view.scale, Math.min(2.6, 0.8 * view.scale), sheet.bare ? 0.9 : 1.2);
}

interface Note {
  readonly name: string;
  readonly heightIn: number;
  readonly part: string;
  /** Whether it belongs above a shallow section. */
  readonly up: boolean;
}

function notesOf({shape, strands, strandsEnd, toppingIn, neutralAxisIn, stressBlockIn, strandName}: CrossSectionOptions): Note[] {
  const topIn = shape.depthIn + toppingIn;
  const notes: Note[] = [];
  if (stressBlockIn !== undefined) notes.push({name: "compression block", heightIn: topIn - stressBlockIn / 2, part: "stress-block", up: true});
  if (neutralAxisIn !== undefined) notes.push({name: "neutral axis", heightIn: topIn - neutralAxisIn, part: "neutral-axis", up: true});
  if (strandsEnd?.length) notes.push({name: "at the ends", heightIn: strandsEnd.at(-1)?.yIn ?? 0, part: "strand", up: false});
  if (strands.length) notes.push({name: strandName ?? `${strands.length} strands`, heightIn: strands.at(-1)?.yIn ?? 0, part: "strand", up: false});
  return notes;
}

function drawAxis(sheet: Sheet, view: View, {shape, toppingIn}: CrossSectionOptions, depthIn: number): void {
  const y = view.y(shape.depthIn + toppingIn - depthIn);
  line(sheet.lines, "center", [[view.x(0) - 6, y], [view.x(shape.widthIn) + 6, y]], {"data-part": "neutral-axis"});
}

/** Notes between the stems of a tee. */
function notesInside(sheet: Sheet, view: View, {shape}: CrossSectionOptions, notes: readonly Note[]): void {
  const radius = strandRadius(sheet, view);
  const [stem = 0, second = shape.widthIn] = shape.webCentersIn;
  const flangePx = view.y(shape.depthIn - (shape.dimensions.flangeIn ?? 0));
  const room = view.y(0) - flangePx;
  const step = Math.min(sheet.textPx * 1.5, room / (notes.length + 0.4));
  const along = (share: number) => view.x(stem + (second - stem) * share);
  notes.forEach((note, i) => {
    const y = flangePx + (room - step * (notes.length - 1)) / 2 + i * step + 2;
    // The lower a note, the further left its target, so that leaders do not cross.
    const target: PaperPoint = note.up ? [along(0.52 - 0.07 * i), view.y(note.heightIn)] : [view.x(stem) + radius + 1, view.y(note.heightIn)];
    leader(sheet, target, [along(note.up ? 0.54 : 0.2), y], note.name, {part: note.part, dot: note.up});
  });
}

/** Notes left of a deep beam. */
function notesLeft(sheet: Sheet, view: View, {strands}: CrossSectionOptions, notes: readonly Note[]): void {
  for (const note of notes) {
    const target: PaperPoint = note.up ? [view.x(0) + 3, view.y(note.heightIn)] : [view.x(strands[0]?.xIn ?? 0), view.y(note.heightIn)];
    leader(sheet, target, [view.x(0) - 10, target[1] - (note.up ? 0 : 14)], note.name, {part: note.part, side: "left", dot: note.up});
  }
}

/** Notes in a row above and one below a shallow section. */
function notesInRows(sheet: Sheet, view: View, {shape, strands, toppingIn}: CrossSectionOptions, notes: readonly Note[], rowPx: number): void {
  const first = strands[0] ?? {xIn: shape.widthIn / 2, yIn: 0};
  const radius = strandRadius(sheet, view) * 0.7;
  let [above, below] = [view.x(0) + 13, view.x(first.xIn) + radius + 10];
  for (const note of notes) {
    const target: PaperPoint = note.up ? [Math.max(view.x(0) + 6, above - 12), view.y(note.heightIn)] : [view.x(first.xIn) + radius, view.y(first.yIn) + radius];
    const y = note.up ? view.y(shape.depthIn + toppingIn) - rowPx / 2 - 2 : view.y(0) + rowPx / 2 + 4;
    leader(sheet, target, [note.up ? above : below, y], note.name, {part: note.part, side: "right", dot: note.up});
    const step = textWidth(note.name, sheet.textPx) * 1.1 + 22;
    if (note.up) above += step;
    else below += step;
  }
}

function textsOf({at, names, parts}: Measured): (DimensionText | null)[] {
  return names.map((name, i) => {
    if (name === null) return null;
    const value = written((at[i + 1] as number) - (at[i] as number));
    const part = parts?.[i];
    return {value, ...(name ? {name} : {}), ...(part ? {part} : {})};
  });
}

function drawStrings(sheet: Sheet, view: View, strings: ReturnType<typeof sectionDimensions>, {rowAbove, rowBelow}: {rowAbove: number; rowBelow: number}, leftPx: number): void {
  const {world} = view;
  const upright = (list: readonly Measured[], outward: 1 | -1, start: number) => list.forEach((measured) => chain(sheet, {
    axis: "y", outward, line: start,
    stops: measured.at.map((y, i) => ({at: view.y(y), edge: view.x(measured.edge[i] as number)})), texts: textsOf(measured),
  }));
  const across = (list: readonly Measured[], outward: 1 | -1, start: number, step: number) => list.forEach((measured, i) => chain(sheet, {
    axis: "x", outward, line: start + outward * i * step,
    stops: measured.at.map((x, j) => ({at: view.x(x), edge: view.y(measured.edge[j] as number)})), texts: textsOf(measured),
  }));
  upright(strings.left, -1, view.x(world.x0) - 14 - leftPx);
  upright(strings.right, 1, view.x(world.x1) + 14);
  across(strings.above, -1, view.y(world.y1) - 14 - rowAbove, 0);
  across(strings.below, 1, view.y(world.y0) + 14 + rowBelow, 36);
}
