import type {Family} from "../../lib/sections/shape.js";
import {sun} from "./marks.js";
import type {ServicePicture} from "./serviceParts.js";
import {concrete, line, type DrawingOptions, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "./svg.js";
import type {View} from "./view.js";

/** What a section of a story draws. Heights of ceiling and glass are above the finished floor, in. */
export interface StorySectionOptions extends DrawingOptions {
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
  /** How the beam carries the deck; on a ledge unless otherwise stated. */
  readonly beamKind?: "ledge" | "pockets" | "below";
  /** Topping at a distance from the deck's end, in; its least everywhere if left out. */
  readonly toppingAt?: (fromEndIn: number) => number;
  readonly ceiling: "flush" | "below" | "head" | "none";
  /** Clear height from the finished floor to the ceiling. */
  readonly ceilingHeightIn: number;
  readonly ceilingDropIn: number;
  /** The glass itself, within its frame. */
  readonly glass: {readonly sillIn: number; readonly headIn: number};
  readonly frameIn?: number;
  /** The window's opening, from its sill to its head: the glass with its frames. */
  readonly opening: {readonly sillIn: number; readonly headIn: number};
  /** From the wall's inner face out to the glass. */
  readonly revealIn?: number;
  readonly services?: ServicePicture;
  /** The story's height part by part from the floor above down, for the string at the right. */
  readonly parts?: readonly {readonly name: string; readonly part: string; readonly heightIn: number}[];
  /** Room shown inside the wall, in; as much as fits if left out. */
  readonly insideIn?: number;
  /** What is shown outside the wall, in: none if left out. Its dimensions then stand beyond it. */
  readonly outsideIn?: number;
  /** Structure shown below each floor, in; its own if left out. For drawings side by side at one scale. */
  readonly structureIn?: number;
  /** Draws behind wall and floors. */
  readonly behind?: (sheet: Sheet, view: View) => void;
  /** Draws on top of all, below the texts. */
  readonly over?: (sheet: Sheet, view: View) => void;
  /** Whether the strings of dimensions are drawn; they are unless otherwise stated. */
  readonly dimensioned?: boolean;
  readonly spanFt: number;
  /** Whether its dimensions are those of the design, and not of another that it is compared with. */
  readonly own?: boolean;
  /** Whether a desk stands inside the window; it does unless otherwise stated. */
  readonly furnished?: boolean;
  /** Whether a person stands in the room; one does unless otherwise stated. */
  readonly standing?: boolean;
  /** Height of the sun above the horizon; its light through the glass is drawn if given. */
  readonly sunAltitudeDeg?: number;
}

const GAP_IN = 1;
const CEILING_IN = 1;
/** Steps in which the deck's arch is drawn, in. */
const STEP_IN = 24;

/** Where the deck begins: beside the beam, in its pockets, or over it. */
export function deckStart({beamKind, beamWebIn, ledgeProjectionIn}: StorySectionOptions): number {
  return beamKind === "below" ? GAP_IN : beamKind === "pockets" ? Math.max(GAP_IN, beamWebIn - ledgeProjectionIn) : beamWebIn + GAP_IN;
}

/** Inner end of what hangs below the deck at the edge. */
export function beamEnd({beamKind, beamWebIn, ledgeProjectionIn}: StorySectionOptions): number {
  return beamKind === "ledge" || beamKind === undefined ? beamWebIn + ledgeProjectionIn : beamWebIn;
}

/** Where the glass stands: the reveal outside the wall's inner face. */
export function glassAt({beamWebIn, revealIn}: StorySectionOptions): number {
  return revealIn === undefined ? beamWebIn * 0.3 : Math.max(0, Math.min(beamWebIn - 3, beamWebIn - revealIn));
}

/** A floor at the level of its finish: edge beam and deck, with topping and finish. Where the topping is thicker than its least the deck hangs lower. */
export function drawFloor(sheet: Sheet, view: View, options: StorySectionOptions, levelIn: number): void {
  const {finishIn, toppingIn, deckDepthIn, deckFamily, ledgeDepthIn, beamWebIn, upstandIn, toppingAt, beamKind} = options;
  const right = view.world.x1;
  const structural = levelIn - finishIn;
  const start = deckStart(options);
  const below = beamKind === "below";
  const faceIn = below ? 0 : beamWebIn;
  const drop = (x: number) => (toppingAt && toppingIn > 0 ? toppingAt(Math.max(0, x - start)) - toppingIn : 0);
  const along = (from: number, height: number): PaperPoint[] => {
    const places = [from];
    for (let x = from + STEP_IN; x < right + 4; x += STEP_IN) places.push(x);
    places.push(right + 4);
    return places.map((x) => view.at(x, height - drop(x)));
  };
  const deckTop = structural - toppingIn;
  const soffit = deckTop - deckDepthIn;
  const band = (from: number, low: number, high: number) => pathThrough([...along(from, low), ...along(from, high).reverse()], true);
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  const clip = sheet.clip(pathOfBox(0, -20, view.x(right), sheet.heightPx + 20));
  const deck = {"data-part": "deck", "clip-path": clip};
  if (deckFamily === "double tee") {
    // Cut between two stems: the flange is cut, the stem is seen beyond.
    const under = deckTop - (options.flangeIn ?? 2);
    concrete(sheet, "plant", band(start, soffit, under), deck, "seen");
    concrete(sheet, "plant", band(start, under, deckTop), deck);
  } else {
    concrete(sheet, "plant", band(start, soffit, deckTop), deck);
    if (deckFamily === "hollow core") {
      for (const share of [0.16, 0.84]) line(sheet.body, "hidden", along(start, soffit + deckDepthIn * share), {"clip-path": clip});
    }
  }
  if (toppingIn > 0) {
    const top: PaperPoint[] = [view.at(right + 4, structural), view.at(faceIn, structural)];
    concrete(sheet, "site", pathThrough([...along(faceIn, deckTop), ...top], true), {"clip-path": clip});
  }
  if (finishIn > 0) sheet.body.append(el("path", {d: box(faceIn, structural, right, levelIn), class: "finish", "data-part": "finish"}));
  const seat = soffit - drop(0);
  const bottom = seat - ledgeDepthIn;
  const ledge = beamEnd(options);
  const outline: PaperPoint[] = below
    ? [view.at(0, bottom), view.at(beamWebIn, bottom), view.at(beamWebIn, seat), view.at(0, seat)]
    : [view.at(0, bottom), view.at(ledge, bottom), view.at(ledge, seat), view.at(beamWebIn, seat), view.at(beamWebIn, structural + upstandIn), view.at(0, structural + upstandIn)];
  concrete(sheet, "plant", pathThrough(outline, true), {"data-part": "beam"});
  if (beamKind === "pockets") line(sheet.lines, "hidden", [view.at(beamWebIn, seat), view.at(start, seat), view.at(start, deckTop - drop(0)), view.at(beamWebIn, deckTop - drop(0))], {"data-part": "deck"});
  // The ledge and the upstand are lit by themselves.
  const region = (d: string, part: string) => sheet.body.append(el("path", {d, class: "region", "data-part": part}));
  region(box(below ? 0 : beamWebIn, bottom, ledge, seat), "ledge");
  if (upstandIn > 0 && !below) region(box(0, structural, beamWebIn, structural + upstandIn), "upstand");
}

/** Glass between its frames, and closed wall where beam and frames leave something over. */
export function drawWall(sheet: Sheet, view: View, options: StorySectionOptions): void {
  const {glass, floorToFloorIn, finishIn, toppingIn, deckDepthIn, ledgeDepthIn, upstandIn, frameIn = 0, beamKind, beamWebIn} = options;
  const x0 = glassAt(options);
  const x1 = x0 + Math.max(3, 3 / view.scale);
  const piece = (y0: number, y1: number, kind: string, part: string, [from, to] = [x0, x1]) => {
    if (y1 - y0 > 0.1) sheet.body.append(el("path", {d: pathOfBox(view.x(from), view.y(y1), view.x(to), view.y(y0)), class: kind, "data-part": part}));
  };
  const beamTop = beamKind === "below" ? 0 : upstandIn - finishIn;
  const beamBottom = floorToFloorIn - finishIn - toppingIn - deckDepthIn - ledgeDepthIn;
  const open = glass.headIn > glass.sillIn;
  // A light wall stands where a beam below the deck has no upstand.
  if (beamKind === "below") piece(0, glass.sillIn - frameIn, "furniture", "wall", [0, Math.min(8, beamWebIn)]);
  else piece(beamTop, glass.sillIn - frameIn, "furniture", "wall");
  piece(glass.sillIn, glass.headIn, "glass", "glass");
  if (open && frameIn > 0) {
    const wide: [number, number] = [x0 - 1, x1 + 1];
    piece(glass.sillIn - frameIn, glass.sillIn, "frame", "frame", wide);
    piece(glass.headIn, Math.min(beamBottom, glass.headIn + frameIn), "frame", "frame", wide);
  }
  piece(glass.headIn + (open ? frameIn : 0), beamBottom, "furniture", "wall");
}

/** A hung ceiling with its hangers. */
export function drawCeiling(sheet: Sheet, view: View, options: StorySectionOptions): void {
  const {ceiling, ceilingHeightIn, beamWebIn, floorToFloorIn, finishIn, toppingIn, deckDepthIn} = options;
  const start = ceiling === "flush" ? beamEnd(options) : beamWebIn;
  const right = view.world.x1;
  const thick = Math.max(CEILING_IN, 2 / view.scale);
  sheet.body.append(el("path", {d: pathOfBox(view.x(start), view.y(ceilingHeightIn + thick), view.x(right), view.y(ceilingHeightIn)), class: "furniture", "data-part": "ceiling"}));
  line(sheet.body, "seen", [view.at(start, ceilingHeightIn), view.at(right, ceilingHeightIn)], {"data-part": "ceiling"});
  const soffit = floorToFloorIn - finishIn - toppingIn - deckDepthIn;
  if (sheet.bare || soffit - ceilingHeightIn < 4) return;
  for (let x = start + 24; x < right - 4; x += 48) line(sheet.body, "thin", [view.at(x, ceilingHeightIn + thick), view.at(x, soffit)], {class: "extension"});
}

/** The sun outside and its light on the floor: under the ray through the head, over the one past sill and upstand. */
export function drawSunlight(sheet: Sheet, view: View, options: StorySectionOptions, altitudeDeg: number): void {
  const {glass, beamWebIn, upstandIn, finishIn} = options;
  const x0 = glassAt(options);
  const slope = Math.max(0.02, Math.tan((altitudeDeg * Math.PI) / 180));
  const room = sheet.clip(pathOfBox(view.x(x0), view.y(view.world.y1), view.x(view.world.x1), view.y(0)));
  const far = x0 + glass.headIn / slope;
  const near = Math.max(x0 + glass.sillIn / slope, beamWebIn + (upstandIn - finishIn) / slope);
  if (far > near) {
    sheet.body.append(el("path", {d: pathThrough([view.at(x0, (near - x0) * slope), view.at(x0, glass.headIn), view.at(far, 0), view.at(near, 0)], true),
      class: "daylight", "clip-path": room, "data-part": "sun"}));
  }
  if (!sheet.bare) sun(sheet, [view.x(0) - 26, 24]);
}
