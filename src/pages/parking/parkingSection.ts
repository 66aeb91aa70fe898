import type {Evaluation} from "../../lib/evaluate.js";
import {boxesAcross, type HungBox} from "../../lib/air/casing.js";
import type {Heights} from "../../lib/parking/heights.js";
import type {ParkingResult} from "../../lib/parking/result.js";
import {VAN_CLEAR_IN} from "../../lib/parking/accessible.js";
import {VEHICLES, type Vehicle} from "../../lib/parking/vehicles.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth, type DimensionText} from "../../components/drawings/dimension.js";
import {scaleBar} from "../../components/drawings/marks.js";
import {person} from "../../components/drawings/people.js";
import {concrete, createSheet, line, text, textSize, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";
import {vehicleRear, vehicleSide} from "./carShapes.js";

const vehicle = (name: string): Vehicle => VEHICLES.find((one) => one.name === name) as Vehicle;
/** Narrower sheets show fewer strings, so that more is left for the section, px. */
const NARROW_PX = 520;

const written = (lengthIn: number): string => feetAndInches(lengthIn, 4, true);

/** The first module cut across its rows: cars at both sides, a van and a person in the aisle, and what hangs over them. True to scale. */
export function parkingSection({design, member, story, girder, services}: Evaluation, {level}: ParkingResult, heights: Heights, widthPx: number): SVGSVGElement {
  const textPx = textSize(widthPx);
  const module = level.modules[0];
  const [fromIn, toIn] = [module?.fromIn ?? level.plan.wallFrom, module?.toIn ?? level.plan.wallTo];
  const clear = (over: string) => heights.places.find((place) => place.over === over)?.clearIn;
  const underIn = story.clearUnderDeckIn;
  const along = design.parking.rows === "along";
  const lineAt = toIn < level.plan.wallTo - 1;
  const ledgeIn = along && design.edgeBeam.kind === "ledge" ? clear("edge beam") ?? story.clearUnderLedgeIn : undefined;
  const girderIn = along && lineAt && girder ? clear("girder") : undefined;
  const beam = along ? design.edgeBeam.webWidthIn : design.column.sideIn;
  const world = {x0: fromIn - beam, y0: -8, x1: toIn + (lineAt ? 30 : beam), y1: story.floorToFloorIn + (along ? Math.min(42, design.edgeBeam.upstandIn) : 6) + 4};
  const left: DimensionText[] = ledgeIn === undefined ? [{value: written(underIn), name: "deck"}] : [{value: written(ledgeIn), name: "ledge"}];
  const right: DimensionText[] = girderIn === undefined ? [] : [{value: written(girderIn), name: "girder"}];
  const narrow = widthPx < NARROW_PX;
  const whole: DimensionText[] = narrow ? [] : [{value: written(story.floorToFloorIn), name: "story"}];
  const {view, heightPx} = fitView({
    world, widthPx, mostHeightPx: Math.max(300, widthPx * 0.5),
    margins: {top: 10, bottom: 44, left: 22 + chainDepth("y", left, textPx), right: 34 + chainDepth("y", right, textPx) + chainDepth("y", whole, textPx) - (narrow ? 14 : 0)},
  });
  const sheet = createSheet({
    view, kind: "parking", widthPx, heightPx, label: "Section of one story of parking across its rows",
    description: heights.places.map(({words, clearIn}) => `under ${words} ${written(clearIn)}`).join(", "),
  });
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  // Floor below and deck above; under tees the stems are seen beyond the cut flange.
  const top = story.floorToFloorIn - story.finishIn;
  const deckTo = lineAt ? world.x1 : toIn;
  const floorFrom = fromIn;
  sheet.body.append(el("path", {d: box(floorFrom, -8, deckTo, 0), class: "soil"}));
  line(sheet.body, "cut", [view.at(floorFrom, 0), view.at(deckTo, 0)]);
  const flange = member.shape.dimensions["flangeIn"] ?? member.shape.depthIn;
  const toppingIn = design.deck.toppingIn;
  if (member.shape.family === "double tee") concrete(sheet, "plant", box(fromIn, underIn, deckTo, top - toppingIn - flange), {"data-part": "deck"}, "seen");
  concrete(sheet, "plant", box(fromIn, member.shape.family === "double tee" ? top - toppingIn - flange : underIn, deckTo, top - toppingIn), {"data-part": "deck"});
  if (toppingIn > 0) concrete(sheet, "site", box(fromIn, top - toppingIn, deckTo, top));
  if (along) drawBeams(sheet, view, design, {fromIn, toIn, lineAt, topIn: top, ledgeIn: ledgeIn ?? story.clearUnderLedgeIn, girderIn});
  const [over] = heights.places;
  if (over?.over === "ceiling") line(sheet.body, "seen", [view.at(fromIn, over.clearIn), view.at(deckTo, over.clearIn)], {"data-part": "ceiling"});
  if (over && heights.places.some((place) => place.over === "box")) drawBoxes(sheet, view, boxesAcross(design, services.ducts), {fromIn, toIn: deckTo, along, topIn: over.clearIn});
  drawHanging(sheet, view, heights, module ? module.aisle : {fromIn, toIn}, underIn);
  drawPeople(sheet, view, module, design.parking.setbackIn);
  heightLine(sheet, view, [fromIn, deckTo], design.parking.clearIn);
  if (design.parking.vans === "inside") heightLine(sheet, view, [fromIn, deckTo], VAN_CLEAR_IN);
  const stop = (at: number, edge: number) => ({at: view.y(at), edge});
  const [outer, inner] = [view.x(world.x0), view.x(world.x1)];
  chain(sheet, {axis: "y", outward: -1, line: outer - 12, stops: [stop(0, outer), stop(ledgeIn ?? underIn, outer)], texts: left});
  if (girderIn !== undefined) chain(sheet, {axis: "y", outward: 1, line: inner + 10, stops: [stop(0, inner), stop(girderIn, inner)], texts: right});
  if (!narrow) chain(sheet, {axis: "y", outward: 1, line: inner + 22 + chainDepth("y", right, textPx), stops: [stop(0, inner), stop(story.floorToFloorIn, inner)], texts: whole});
  scaleBar(sheet, [view.x(world.x0), heightPx - 12], view.scale);
  return sheet.svg;
}

interface Ends {
  readonly fromIn: number;
  readonly toIn: number;
  readonly lineAt: boolean;
  readonly topIn: number;
  readonly ledgeIn: number;
  readonly girderIn: number | undefined;
}

/** Edge beam at the wall, girder at the line, each with its foot at its own height. */
function drawBeams(sheet: Sheet, view: View, {edgeBeam, girder}: Evaluation["design"], {fromIn, toIn, lineAt, topIn, ledgeIn, girderIn}: Ends): void {
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  const cut = (d: string, part: string) => concrete(sheet, "plant", d, {"data-part": part});
  const edge = (faceIn: number, inward: 1 | -1) => {
    const outIn = faceIn - inward * edgeBeam.webWidthIn;
    const upIn = edgeBeam.kind === "below" ? topIn - 1 : topIn + Math.min(42, edgeBeam.upstandIn);
    cut(box(Math.min(outIn, faceIn), ledgeIn, Math.max(outIn, faceIn), upIn), "edge-beam");
    if (edgeBeam.kind === "ledge") {
      const reachIn = faceIn + inward * edgeBeam.ledgeProjectionIn;
      cut(box(Math.min(faceIn, reachIn), ledgeIn, Math.max(faceIn, reachIn), ledgeIn + edgeBeam.ledgeDepthIn), "edge-beam");
    }
    // The upstand of the floor that the cars stand on.
    if (edgeBeam.kind !== "below" && edgeBeam.upstandIn > 0) cut(box(Math.min(outIn, faceIn), -8, Math.max(outIn, faceIn), Math.min(42, edgeBeam.upstandIn)), "edge-beam");
  };
  edge(fromIn, 1);
  if (!lineAt) edge(toIn, -1);
  else if (girderIn !== undefined) {
    const half = girder.webWidthIn / 2;
    const right = Math.min(view.world.x1, toIn + half);
    if (girder.kind === "inverted tee") {
      cut(box(toIn - half, girderIn, right, topIn), "girder");
      cut(box(toIn - half - girder.ledgeProjectionIn, girderIn, Math.min(view.world.x1, toIn + half + girder.ledgeProjectionIn), girderIn + girder.ledgeDepthIn), "girder");
    } else cut(box(toIn - half, girderIn, right, girderIn + girder.depthIn), "girder");
  }
}

/** Pipes, ducts and a sign over the aisle. */
function drawHanging(sheet: Sheet, view: View, {places}: Heights, {fromIn, toIn}: {readonly fromIn: number; readonly toIn: number}, underIn: number): void {
  const lowIn = (over: string) => places.find((place) => place.over === over)?.clearIn;
  const [pipes, signs, ducts] = [lowIn("pipes"), lowIn("signs"), lowIn("ducts")];
  const at = (share: number) => fromIn + (toIn - fromIn) * share;
  if (pipes !== undefined) {
    const radius = Math.min(2, (underIn - pipes) / 2);
    const [x, y] = view.at(at(0.12), pipes + radius);
    sheet.body.append(el("circle", {cx: x, cy: y, r: Math.max(1.2, radius * view.scale), class: "pipe", fill: "none", "data-part": "pipes"}));
    line(sheet.body, "steel", [view.at(at(0.12), underIn), view.at(at(0.12), pipes + 2 * radius)], {"data-part": "pipes"});
  }
  if (signs !== undefined) {
    const high = Math.min(underIn - signs, 12);
    const box = pathOfBox(view.x(at(0.36)), view.y(signs + high), view.x(at(0.64)), view.y(signs));
    sheet.body.append(el("path", {d: box, class: "lamp", "data-part": "signs"}));
    for (const share of [0.4, 0.6]) line(sheet.body, "thin", [view.at(at(share), underIn), view.at(at(share), signs + high)]);
  }
  if (ducts !== undefined) sheet.body.append(el("path", {d: pathOfBox(view.x(at(0.75)), view.y(underIn - 2), view.x(at(0.88)), view.y(ducts)), class: "duct", "data-part": "ducts"}));
}

/** Boxes or strips around ducts: cut where rows run along the building as they do, and seen from the side where rows run across. */
function drawBoxes(sheet: Sheet, view: View, boxes: readonly HungBox[], {fromIn, toIn, along, topIn}: {readonly fromIn: number; readonly toIn: number; readonly along: boolean; readonly topIn: number}): void {
  for (const {y0In, y1In, footIn} of along ? boxes : boxes.slice(0, 1)) {
    const [x0, x1] = along ? [Math.max(fromIn, y0In), Math.min(toIn, y1In)] : [fromIn, toIn];
    if (x1 <= x0) continue;
    sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(topIn), view.x(x1), view.y(footIn)), class: "duct", "data-part": "box"}));
    if (sheet.widthPx >= NARROW_PX) text(sheet.notes, sheet, view.at((x0 + x1) / 2, footIn - (sheet.textPx * 0.7) / view.scale), written(footIn), {kind: "small", part: "box"});
  }
}

function drawPeople(sheet: Sheet, view: View, module: ParkingResult["level"]["modules"][number] | undefined, setbackIn: number): void {
  const car = vehicle("sedan");
  const middle = module ? (module.aisle.fromIn + module.aisle.toIn) / 2 : (view.world.x0 + view.world.x1) / 2;
  if (module?.rows[0]) vehicleSide(sheet, view, "car", car, module.fromIn + setbackIn + 12, -1);
  if (module?.rows[1]) vehicleSide(sheet, view, "car", car, module.toIn - setbackIn - 12, 1);
  vehicleRear(sheet, view, "van", vehicle("accessible van, raised roof"), middle + 50);
  person(sheet, view, middle - 60, 0);
}

/** A height that is wanted, dashed across the section, with its name where the sheet has room for it. */
function heightLine(sheet: Sheet, view: View, [from, to]: readonly [number, number], heightIn: number): void {
  line(sheet.lines, "hidden", [view.at(from, heightIn), view.at(to, heightIn)], {"data-part": "wanted"});
  if (sheet.widthPx < NARROW_PX) return;
  text(sheet.notes, sheet, view.at(from + (to - from) * (heightIn === VAN_CLEAR_IN ? 0.3 : 0.18), heightIn - (sheet.textPx * 0.62) / view.scale), written(heightIn), {kind: "small", plate: false});
}
