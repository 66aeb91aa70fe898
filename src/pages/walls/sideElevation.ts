import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth, type DimensionText} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {person} from "../../components/drawings/people.js";
import {createSheet, line, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import {viewAt, type View} from "../../components/drawings/view.js";
import type {DimensionString, FaceKind, SideModel} from "./wallModels.js";
import {roomHeightPx} from "../../components/drawings/room.js";

/** Ground shown below the building, in. */
const GROUND_IN = 14;
const TOP_PX = 12;

/** The texts of a string: each gap's own length, with its name. */
export function stringTexts({at, names}: DimensionString, named = true): DimensionText[] {
  return at.slice(1).map((end, i): DimensionText => {
    const name = named ? names?.[i] : undefined;
    return {value: feetAndInches(end - (at[i] as number), 4), ...(name ? {name} : {})};
  });
}

/** Room that the strings of an elevation take at its left and right, px, and the room that is left for the side. */
export function elevationRoom(widthPx: number): {readonly left: number; readonly right: number; readonly roomPx: number} {
  const textPx = textSize(widthPx);
  const depth = 24 + chainDepth("y", [{value: "00'-00 1/4\"", name: "parapet"}], textPx);
  return {left: depth, right: depth, roomPx: widthPx - 2 * depth};
}

/** A side of the building from outside, with people at its foot and on its floors. True to scale. */
export function sideElevation({model, name, ...options}: DrawingOptions & {model: SideModel; name: string}): SVGSVGElement {
  const {widthPx} = options;
  const {left, roomPx} = elevationRoom(widthPx);
  const textPx = textSize(widthPx);
  const mostHeight = Math.min(options.mostHeightPx ?? Math.max(360, widthPx * 0.5), roomHeightPx());
  const bottom = 16 + chainDepth("x", [{value: ""}], textPx) + (model.whole ? 14 + chainDepth("x", [{value: "", name: "outside"}], textPx) : 0) + 32;
  const lengthIn = model.shownTo - model.from;
  const scale = Math.min(roomPx / lengthIn, (mostHeight - TOP_PX - bottom) / (model.topIn + GROUND_IN));
  const world = {x0: model.from, y0: -GROUND_IN, x1: model.shownTo, y1: model.topIn};
  const view = viewAt(world, left + (roomPx - lengthIn * scale) / 2, TOP_PX, scale);
  const heightPx = Math.ceil(TOP_PX + (model.topIn + GROUND_IN) * scale + bottom);
  const sheet = createSheet({
    view, kind: "elevation", widthPx, heightPx, label: options.label ?? `Elevation of a ${name} side`,
    description: options.description ?? `${feetAndInches(model.topIn)} high${model.whole ? `, ${feetAndInches(model.to - model.from)} long` : ""}. Floors and the deck behind the wall are dashed.`,
  });
  drawGround(sheet, view, model);
  drawFaces(sheet, view, model);
  drawStrings(sheet, view, model);
  scaleBar(sheet, [left, heightPx - 12], scale);
  return sheet.svg;
}

function drawGround(sheet: Sheet, view: View, {shownTo, from}: SideModel): void {
  const [x0, x1] = [view.x(from) - 10, view.x(shownTo) + 10];
  sheet.body.append(el("path", {d: pathOfBox(x0, view.y(0), x1, view.y(-GROUND_IN)), class: "soil", "data-part": "ground"}));
}

/** How each kind is drawn. */
const LOOKS: Readonly<Record<FaceKind, string>> = {
  column: "concrete-plant is-seen", "edge beam": "concrete-plant is-seen wall-face", ledge: "", girder: "", deck: "", strip: "", panel: "concrete-plant is-seen wall-face",
  spandrel: "concrete-plant is-seen wall-face", cladding: "cladding-face", "closing strip": "cladding-face", parapet: "concrete-plant is-seen wall-face",
  glass: "glass", frames: "cladding-face", sill: "cladding-face", window: "glass is-loose",
};

function drawFaces(sheet: Sheet, view: View, model: SideModel): void {
  const clip = sheet.clip(pathOfBox(view.x(model.from) - 12, 0, view.x(model.shownTo), view.y(0)));
  const group = el("g", {"clip-path": clip});
  sheet.body.append(group);
  for (const {kind, x0, x1, z0, z1} of model.faces) {
    if (x0 > model.shownTo || z1 <= z0) continue;
    group.append(el("path", {d: pathOfBox(view.x(x0), view.y(z1), view.x(x1), view.y(z0)), class: LOOKS[kind], "data-part": kind}));
  }
  for (const level of model.hidden) line(group, "hidden", [view.at(Math.max(0, model.from), level), view.at(Math.min(model.shownTo, model.to), level)], {"data-part": "floor", class: "floor-behind"});
  line(sheet.body, "seen", [[view.x(model.from) - 10, view.y(0)], [view.x(model.shownTo) + 10, view.y(0)]], {class: "ground-line"});
  const bayIn = (model.bays.at[1] as number) - (model.bays.at[0] as number);
  person(sheet, view, Math.min(bayIn * 0.55, model.shownTo * 0.6), 0);
  person(sheet, view, Math.min(bayIn * 0.3, model.shownTo * 0.4), 0);
  if (!model.whole) breakLine(sheet, view.x(model.shownTo), view.y(model.topIn) - 4, view.y(0) + 4);
}

function drawStrings(sheet: Sheet, view: View, model: SideModel): void {
  const foot = view.y(-GROUND_IN);
  const stops = ({at}: DimensionString, edge: number, of: (value: number) => number) => at.map((value) => ({at: of(value), edge}));
  const bayPx = ((model.bays.at[1] as number) - (model.bays.at[0] as number)) * view.scale;
  const bays = stringTexts(model.bays).map((one, i) => (i === 0 || bayPx > 64 ? one : {value: ""}));
  chain(sheet, {axis: "x", outward: 1, line: foot + 16, stops: stops(model.bays, foot, view.x), texts: bays});
  if (model.whole) chain(sheet, {axis: "x", outward: 1, line: foot + 16 + chainDepth("x", bays, sheet.textPx) + 14, stops: stops(model.whole, foot, view.x), texts: stringTexts(model.whole)});
  const [left, right] = [view.x(model.from) - 10, view.x(model.shownTo) + 10];
  chain(sheet, {axis: "y", outward: -1, line: left - 10, stops: stops(model.parts, left, view.y), texts: stringTexts(model.parts)});
  chain(sheet, {axis: "y", outward: 1, line: right + 10, stops: stops(model.levels, right, view.y), texts: stringTexts(model.levels)});
}
