import type {QuantityName} from "../../lib/quantities.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth, type DimensionText} from "./dimension.js";
import {breakLine, scaleBar} from "./marks.js";
import {markScale} from "./oneScale.js";
import {desk, person} from "./people.js";
import {drawServices} from "./serviceParts.js";
import {beamEnd, drawCeiling, drawFloor, drawSunlight, drawWall, type StorySectionOptions} from "./storyParts.js";
import {createSheet, line, text, textSize, type Sheet} from "./sheet.js";
import {viewAt, type View} from "./view.js";
import {roomHeightPx} from "./room.js";

/** One story cut through: floor below and above, edge beam, glass, ceiling, a person and a desk. True to scale. */
export function storySection(options: StorySectionOptions): SVGSVGElement {
  const {floorToFloorIn, finishIn, deckDepthIn, toppingIn, ledgeDepthIn, upstandIn, widthPx, bare = false, spanFt, outsideIn = 0} = options;
  const textPx = textSize(widthPx);
  const structure = options.structureIn ?? finishIn + toppingIn + deckDepthIn + ledgeDepthIn;
  const dimensioned = !bare && options.dimensioned !== false;
  const texts = storyTexts(options);
  const marginLeft = bare ? 1 : 27 + (outsideIn > 0 ? BEYOND_PX : 0) + (dimensioned ? chainDepth("y", texts.left, textPx) : 0);
  const marginRight = bare ? 1 : dimensioned ? 30 + chainDepth("y", texts.inner, textPx) + chainDepth("y", texts.outer, textPx) : 12;
  const [top, bottom] = bare ? [1, 1] : [14, 34];
  const mostHeight = Math.min(options.mostHeightPx ?? Math.max(460, widthPx * 0.58), roomHeightPx());
  const worldHeight = floorToFloorIn + structure + Math.max(upstandIn - finishIn, 0) + 8;
  const room = widthPx - marginLeft - marginRight;
  // As much of the room is shown as fits, and never more than half the span.
  const byHeight = (mostHeight - top - bottom) / worldHeight;
  // Room for a person and a desk, or for a person alone on a narrow sheet.
  const leastIn = !bare && options.furnished !== false && widthPx >= ROOM_FOR_PARTS_PX ? 150 : 108;
  const insideIn = options.insideIn ?? Math.min(Math.max(leastIn, room / byHeight - options.beamWebIn - outsideIn), Math.max(leastIn, spanFt * 6), 460);
  const scale = Math.min(byHeight, room / (outsideIn + options.beamWebIn + insideIn), options.mostPxPerIn ?? Infinity);
  const world = {x0: -outsideIn, y0: -structure - 4, x1: options.beamWebIn + insideIn, y1: worldHeight - structure - 4};
  const view = viewAt(world, marginLeft + (room - (world.x1 - world.x0) * scale) / 2, top, scale);
  const heightPx = Math.ceil(top + worldHeight * scale + bottom);
  const sheet = createSheet({
    view, kind: "story", widthPx, heightPx, bare, label: options.label ?? `Section of one story, ${feetAndInches(floorToFloorIn)} from floor to floor`,
    description: options.description ?? `${options.ceiling === "none" ? "No ceiling" : `Ceiling ${feetAndInches(options.ceilingHeightIn)} above the finished floor`}; the window from ${feetAndInches(options.opening.sillIn)} to ${feetAndInches(options.opening.headIn)}. The deck spans ${feetAndInches(spanFt * 12)}.`,
  });
  markScale(sheet, view);
  if (options.sunAltitudeDeg !== undefined) drawSunlight(sheet, view, options, options.sunAltitudeDeg);
  options.behind?.(sheet, view);
  drawWall(sheet, view, options);
  for (const level of [0, floorToFloorIn]) drawFloor(sheet, view, options, level);
  if (options.ceiling !== "none") drawCeiling(sheet, view, options);
  if (options.services && (!bare || widthPx > 60)) {
    drawServices(sheet, view, options.services, {
      soffit: floorToFloorIn - finishIn - toppingIn - deckDepthIn, x0: beamEnd(options), x1: view.world.x1,
      ceiling: options.ceiling === "none" ? undefined : options.ceilingHeightIn,
    });
  }
  options.over?.(sheet, view);
  if (options.standing !== false && (!bare || widthPx > 60)) {
    const desked = insideIn >= 148 && options.furnished !== false;
    person(sheet, view, options.beamWebIn + Math.min(desked ? 44 : 58, insideIn * 0.33), 0);
    // Desk and chair together are 7 ft long.
    if (desked) desk(sheet, view, options.beamWebIn + Math.min(108, insideIn - 88), 0);
  }
  if (bare) return sheet.svg;
  drawNotes(sheet, view, options);
  if (dimensioned) drawStrings(sheet, view, options, texts, textPx);
  scaleBar(sheet, [view.x(view.world.x0), heightPx - 12], scale);
  return sheet.svg;
}

/** Between what is shown outside the wall and the dimensions beyond it, px. */
const BEYOND_PX = 8;

interface StoryTexts {
  readonly left: readonly (DimensionText | null)[];
  readonly inner: readonly DimensionText[];
  readonly outer: readonly DimensionText[];
}

/** Height of the lowest thing over the room: its ceiling, or the deck's underside. */
function clearIn(options: StorySectionOptions): number {
  return options.ceiling === "none" ? options.floorToFloorIn - options.finishIn - options.toppingIn - options.deckDepthIn : options.ceilingHeightIn;
}

/** Sheets narrower than this show two parts of the story instead of all, px. */
const ROOM_FOR_PARTS_PX = 520;

/** Tops of the parts of a story above the floor, from the room's up; undefined where only two are distinguished. */
function partStops({parts, widthPx}: StorySectionOptions): {readonly name: string; readonly part: string; readonly heightIn: number}[] | undefined {
  return parts && widthPx >= ROOM_FOR_PARTS_PX && parts.every(({heightIn}) => heightIn > 0) ? [...parts].reverse() : undefined;
}

function storyTexts(options: StorySectionOptions): StoryTexts {
  const {opening, floorToFloorIn, ceiling} = options;
  const own = (name: QuantityName) => (options.own ? name : undefined);
  const clear = clearIn(options);
  const written = (lengthIn: number) => feetAndInches(lengthIn, 4);
  return {
    // A window may start at the floor: no sill then, and no dimension for it.
    left: [opening.sillIn > 0.05 ? {value: written(opening.sillIn), name: "sill", part: "upstand", quantity: own("sill, in")} : null,
      {value: written(opening.headIn - opening.sillIn), name: "window", part: "glass"}, {value: written(floorToFloorIn - opening.headIn), name: "above"}],
    inner: partStops(options)?.map(({name, part, heightIn}) => ({value: `${written(heightIn)} ${name}`, part})) ?? [{value: written(clear), name: ceiling === "none" ? "clear" : "ceiling", part: "ceiling", quantity: own("ceiling, in")},
      {value: written(floorToFloorIn - clear), name: "floor"}],
    outer: [{value: written(floorToFloorIn), name: "story", part: "story", quantity: own("floor to floor, in")}],
  };
}

function drawStrings(sheet: Sheet, view: View, options: StorySectionOptions, texts: StoryTexts, textPx: number): void {
  const {opening, floorToFloorIn} = options;
  const {x0} = view.world;
  // Extension lines do not run through what is shown outside.
  const outer = view.x(x0) - (x0 < 0 ? BEYOND_PX : 0);
  const inner = view.x(view.world.x1) + 8;
  let height = 0;
  const innerStops = [0, ...(partStops(options)?.map(({heightIn}) => (height += heightIn)) ?? [clearIn(options), floorToFloorIn])];
  const stops = (heights: readonly number[], edge: number) => heights.map((height) => ({at: view.y(height), edge}));
  chain(sheet, {axis: "y", outward: -1, line: outer - 16, stops: stops([0, opening.sillIn, opening.headIn, floorToFloorIn], outer), texts: texts.left});
  chain(sheet, {axis: "y", outward: 1, line: inner + 8, stops: stops(innerStops, inner - 6), texts: texts.inner});
  const second = inner + 8 + chainDepth("y", texts.inner, textPx) + 12;
  chain(sheet, {axis: "y", outward: 1, line: second, stops: stops([0, floorToFloorIn], inner), texts: texts.outer});
}

function drawNotes(sheet: Sheet, view: View, options: StorySectionOptions): void {
  const {floorToFloorIn, finishIn, toppingIn, deckDepthIn, spanFt} = options;
  for (const level of [0, floorToFloorIn]) {
    const top = level - finishIn - toppingIn;
    breakLine(sheet, view.x(view.world.x1), view.y(level) - 8, view.y(top - deckDepthIn) + 8);
  }
  // The finished floor's level is drawn out to both strings.
  for (const level of [0, floorToFloorIn]) line(sheet.lines, "thin", [[view.x(view.world.x1), view.y(level)], [view.x(view.world.x1) + 8, view.y(level)]]);
  const soffit = floorToFloorIn - finishIn - toppingIn - deckDepthIn;
  const x = view.x((beamEnd(options) + view.world.x1) / 2);
  // A thin plank has no room for words: they stand on the floor above it.
  const roomy = deckDepthIn * view.scale > sheet.textPx * 2;
  text(sheet.notes, sheet, [x, roomy ? view.y(soffit + deckDepthIn * 0.66) : view.y(floorToFloorIn) - sheet.textPx * 0.9], `deck spans ${feetAndInches(spanFt * 12)}`, {kind: "name", part: "deck", className: roomy ? (options.deckFamily === "double tee" ? "on-seen" : "on-plant") : ""});
}
