import type {Family} from "../../lib/sections/shape.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth, type DimensionText} from "./dimension.js";
import {breakLine, scaleBar} from "./marks.js";
import {desk, person} from "./people.js";
import {drawCeiling, drawFloor, drawSunlight, drawWall} from "./storeyParts.js";
import {createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "./sheet.js";
import {viewAt, type View} from "./view.js";

/** What {@link storeySection} draws. Heights of ceiling and glass are above the finished floor, in. */
export interface StoreySectionOptions extends DrawingOptions {
  readonly floorToFloorIn: number;
  readonly finishIn: number;
  readonly deckDepthIn: number;
  readonly toppingIn: number;
  readonly deckFamily: Family;
  /** Flange of a double tee. */
  readonly flangeIn?: number;
  readonly ledgeDepthIn: number;
  readonly ledgeProjectionIn: number;
  readonly beamWebIn: number;
  /** Beam above the structural floor. */
  readonly upstandIn: number;
  readonly ceiling: "flush" | "below" | "head" | "none";
  /** Clear height from the finished floor to the ceiling. */
  readonly ceilingHeightIn: number;
  readonly ceilingDropIn: number;
  readonly glass: {readonly sillIn: number; readonly headIn: number};
  readonly spanFt: number;
  /** Whether a desk stands inside the window; it does unless told otherwise. */
  readonly furnished?: boolean;
  /** Height of the sun above the horizon; its light through the glass is drawn if given. */
  readonly sunAltitudeDeg?: number;
}

/** One storey cut through: floor below and above, edge beam, glass, ceiling, a person and a desk. True to scale. */
export function storeySection(options: StoreySectionOptions): SVGSVGElement {
  const {floorToFloorIn, finishIn, deckDepthIn, toppingIn, ledgeDepthIn, upstandIn, widthPx, bare = false, spanFt} = options;
  const textPx = textSize(widthPx);
  const structure = finishIn + toppingIn + deckDepthIn + ledgeDepthIn;
  const texts = storeyTexts(options);
  const marginLeft = bare ? 1 : 24 + chainDepth("y", texts.left, textPx);
  const marginRight = bare ? 1 : 30 + chainDepth("y", texts.inner, textPx) + chainDepth("y", texts.outer, textPx);
  const [top, bottom] = bare ? [1, 1] : [14, 34];
  const mostHeight = options.mostHeightPx ?? Math.max(460, widthPx * 0.58);
  const worldHeight = floorToFloorIn + structure + Math.max(upstandIn - finishIn, 0) + 8;
  const room = widthPx - marginLeft - marginRight;
  // As much of the room is shown as fits, at least 9 ft and never more than half the span.
  const byHeight = (mostHeight - top - bottom) / worldHeight;
  const insideIn = Math.min(Math.max(108, room / byHeight - options.beamWebIn), Math.max(108, spanFt * 6), 460);
  const scale = Math.min(byHeight, room / (options.beamWebIn + insideIn));
  const world = {x0: 0, y0: -structure - 4, x1: options.beamWebIn + insideIn, y1: worldHeight - structure - 4};
  const view = viewAt(world, marginLeft + (room - (world.x1 - world.x0) * scale) / 2, top, scale);
  const heightPx = Math.ceil(top + worldHeight * scale + bottom);
  const sheet = createSheet({
    kind: "storey", widthPx, heightPx, bare, label: options.label ?? `Section of one storey, ${feetAndInches(floorToFloorIn)} from floor to floor`,
    description: options.description ?? `${options.ceiling === "none" ? "No ceiling" : `Ceiling ${feetAndInches(options.ceilingHeightIn)} above the finished floor`}; glass from ${feetAndInches(options.glass.sillIn)} to ${feetAndInches(options.glass.headIn)}. The deck spans ${feetAndInches(spanFt * 12)}.`,
  });
  if (options.sunAltitudeDeg !== undefined) drawSunlight(sheet, view, options, options.sunAltitudeDeg);
  drawWall(sheet, view, options);
  for (const level of [0, floorToFloorIn]) drawFloor(sheet, view, options, level);
  if (options.ceiling !== "none") drawCeiling(sheet, view, options);
  if (!bare || widthPx > 60) {
    person(sheet, view, options.beamWebIn + Math.min(58, insideIn * 0.33), 0);
    if (insideIn > 150 && options.furnished !== false) desk(sheet, view, options.beamWebIn + Math.min(108, insideIn * 0.52), 0);
  }
  if (bare) return sheet.svg;
  drawNotes(sheet, view, options);
  drawStrings(sheet, view, options, texts, textPx);
  scaleBar(sheet, [view.x(0), heightPx - 12], scale);
  return sheet.svg;
}

interface StoreyTexts {
  readonly left: readonly (DimensionText | null)[];
  readonly inner: readonly DimensionText[];
  readonly outer: readonly DimensionText[];
}

/** Height of the lowest thing over the room: its ceiling, or the deck's underside. */
function clearIn(options: StoreySectionOptions): number {
  return options.ceiling === "none" ? options.floorToFloorIn - options.finishIn - options.toppingIn - options.deckDepthIn : options.ceilingHeightIn;
}

function storeyTexts(options: StoreySectionOptions): StoreyTexts {
  const {glass, floorToFloorIn, ceiling} = options;
  const clear = clearIn(options);
  const written = (lengthIn: number) => feetAndInches(lengthIn, 4);
  return {
    // Glass may start at the floor: no sill then, and no dimension for it.
    left: [glass.sillIn > 0.05 ? {value: written(glass.sillIn), name: "sill", part: "upstand"} : null,
      {value: written(glass.headIn - glass.sillIn), name: "glass", part: "glass"}, {value: written(floorToFloorIn - glass.headIn), name: "above"}],
    inner: [{value: written(clear), name: ceiling === "none" ? "clear" : "ceiling", part: "ceiling"},
      {value: written(floorToFloorIn - clear), name: "floor"}],
    outer: [{value: written(floorToFloorIn), name: "storey", part: "storey"}],
  };
}

function drawStrings(sheet: Sheet, view: View, options: StoreySectionOptions, texts: StoreyTexts, textPx: number): void {
  const {glass, floorToFloorIn} = options;
  const outer = view.x(0);
  const inner = view.x(view.world.x1) + 8;
  const stops = (heights: readonly number[], edge: number) => heights.map((height) => ({at: view.y(height), edge}));
  chain(sheet, {axis: "y", outward: -1, line: outer - 16, stops: stops([0, glass.sillIn, glass.headIn, floorToFloorIn], outer), texts: texts.left});
  chain(sheet, {axis: "y", outward: 1, line: inner + 8, stops: stops([0, clearIn(options), floorToFloorIn], inner - 6), texts: texts.inner});
  const second = inner + 8 + chainDepth("y", texts.inner, textPx) + 12;
  chain(sheet, {axis: "y", outward: 1, line: second, stops: stops([0, floorToFloorIn], inner), texts: texts.outer});
}

function drawNotes(sheet: Sheet, view: View, options: StoreySectionOptions): void {
  const {floorToFloorIn, finishIn, toppingIn, deckDepthIn, ledgeDepthIn, beamWebIn, ledgeProjectionIn, spanFt, ceiling, ceilingHeightIn} = options;
  for (const level of [0, floorToFloorIn]) {
    const top = level - finishIn - toppingIn;
    breakLine(sheet, view.x(view.world.x1), view.y(level) - 8, view.y(top - deckDepthIn) + 8);
  }
  // The finished floor's level is drawn out to both strings.
  for (const level of [0, floorToFloorIn]) line(sheet.lines, "thin", [[view.x(view.world.x1), view.y(level)], [view.x(view.world.x1) + 8, view.y(level)]]);
  const soffit = floorToFloorIn - finishIn - toppingIn - deckDepthIn;
  const x = view.x((beamWebIn + ledgeProjectionIn + view.world.x1) / 2);
  // A thin plank has no room for words: they stand on the floor above it.
  const roomy = deckDepthIn * view.scale > sheet.textPx * 2;
  text(sheet.notes, sheet, [x, roomy ? view.y(soffit + deckDepthIn * 0.42) : view.y(floorToFloorIn) - sheet.textPx * 0.9], `deck spans ${feetAndInches(spanFt * 12)}`, {kind: "name", part: "deck", className: roomy ? (options.deckFamily === "double tee" ? "on-seen" : "on-plant") : ""});
  if (ceiling !== "none" && (soffit - ceilingHeightIn) * view.scale > sheet.textPx * 1.3 && ledgeDepthIn > 0) {
    text(sheet.notes, sheet, [x, view.y((soffit + ceilingHeightIn) / 2)], "plenum", {kind: "small", part: "plenum", plate: true});
  }
}
