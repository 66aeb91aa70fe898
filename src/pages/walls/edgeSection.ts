import type {Evaluation} from "../../lib/evaluate.js";
import {CAP_OVERHANG_IN} from "../../lib/walls/weights.js";
import {riseAtIn} from "../../lib/roof/fallPlan.js";
import {deckEndIn} from "../../lib/walls/outline.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {concrete, createSheet, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {el, pathOfBox, pathThrough} from "../../components/drawings/svg.js";
import {viewAt} from "../../components/drawings/view.js";
import {stringTexts} from "./sideElevation.js";
import type {DimensionString} from "./wallModels.js";
import {roomHeightPx} from "../../components/drawings/room.js";

/** A long side cut through on one level: beam, deck's end, and what closes it or rises above it. Heights from the level's finished surface, of a roof its highest line, in; across from the column line, inward. */
export interface EdgeModel {
  readonly beam: readonly (readonly [x: number, z: number])[];
  readonly deck: {readonly fromIn: number; readonly bottomIn: number; readonly flangeBottomIn: number; readonly topIn: number};
  readonly toppingIn: number;
  /** What lies on the deck up to the surface there: a floor's finish, or a roof's layers with its taper. */
  readonly cover: {readonly kind: "finish" | "insulation"; readonly topIn: number};
  readonly strip: {readonly x0: number; readonly x1: number; readonly z0: number; readonly z1: number} | undefined;
  readonly parapet: {readonly x0: number; readonly x1: number; readonly z0: number; readonly z1: number; readonly capIn: number} | undefined;
  readonly insideIn: number;
  readonly left: DimensionString;
  readonly right: DimensionString;
  readonly below: DimensionString;
}

/** The section at a floor, or at the roof with its parapet; where the roof has a deck of its own, with that and its layers. */
export function edgeModel(evaluation: Evaluation, where: "floor" | "roof"): EdgeModel {
  const {design, edgeBeam, walls: {planes, ends}} = evaluation;
  const own = where === "roof" ? evaluation.roof : undefined;
  const member = own?.member ?? evaluation.member;
  const {edgeBeam: input, story, walls} = design;
  const {toppingIn} = own ? own.design.deck : design.deck;
  const half = planes.beamHalfIn;
  const [side] = planes.top.sides;
  const floorIn = where === "roof" ? side.structureIn - planes.topIn : -story.finishIn;
  const soffitIn = floorIn - member.compression.depthIn;
  const below = input.kind === "below";
  const bottomIn = soffitIn - edgeBeam.belowDeckIn;
  const topIn = where === "roof" ? side.beamTopIn - planes.topIn : below ? soffitIn : floorIn + input.upstandIn;
  const builtOnIn = side.builtOnIn - planes.topIn;
  const coverTopIn = own ? floorIn + own.layers.buildUpIn + (design.roof.drainage === "taper" ? riseAtIn(own.plan, 0) : 0) : 0;
  const ledgeIn = half + input.ledgeProjectionIn;
  const beam = input.kind === "ledge"
    ? [[-half, bottomIn], [ledgeIn, bottomIn], [ledgeIn, soffitIn], [half, soffitIn], [half, topIn], [-half, topIn]] as const
    : input.kind === "pockets" ? [[-half, bottomIn], [half, bottomIn], [half, soffitIn], [half - input.ledgeProjectionIn, soffitIn], [half - input.ledgeProjectionIn, floorIn - toppingIn], [half, floorIn - toppingIn], [half, topIn], [-half, topIn]] as const
    : [[-half, bottomIn], [half, bottomIn], [half, topIn], [-half, topIn]] as const;
  const strip = ends ? {x0: -half - ends.thicknessIn, x1: -half, z0: soffitIn, z1: floorIn} : undefined;
  const parapet = where === "roof" && side.addedIn > 0
    ? {x0: -half, x1: walls.parapetThicknessIn - half, z0: builtOnIn, z1: planes.parapetIn, capIn: Math.min(walls.capIn, side.addedIn)} : undefined;
  const flangeIn = member.shape.family === "double tee" ? (member.shape.dimensions["flangeIn"] as number) : member.shape.depthIn;
  const tops = [bottomIn, ...(below ? [soffitIn] : []), floorIn, ...(topIn > floorIn ? [topIn] : []), ...(parapet ? [planes.parapetIn] : [])];
  return {
    beam, strip, parapet, toppingIn, cover: {kind: own ? "insulation" : "finish", topIn: coverTopIn}, insideIn: ledgeIn + 30,
    deck: {fromIn: deckEndIn(design), bottomIn: soffitIn, flangeBottomIn: floorIn - toppingIn - flangeIn, topIn: floorIn - toppingIn},
    left: {at: [...new Set(tops)].sort((a, b) => a - b)},
    right: coverTopIn - floorIn > 1 ? {at: [soffitIn, floorIn, coverTopIn], names: ["deck", own ? "layers" : "finish"]} : {at: [soffitIn, floorIn], names: ["deck"]},
    below: {at: [...(strip ? [strip.x0] : []), -half, half]},
  };
}

/** A long side cut through at a floor or at the roof. True to scale. */
export function edgeSection({model, ...options}: DrawingOptions & {model: EdgeModel}): SVGSVGElement {
  const {widthPx} = options;
  const textPx = textSize(widthPx);
  const {deck, parapet, strip} = model;
  const x0 = Math.min(strip?.x0 ?? 0, ...model.beam.map(([x]) => x)) - CAP_OVERHANG_IN - 2;
  const [low, high] = [model.left.at[0] as number, Math.max(model.cover.topIn + 2, model.left.at.at(-1) as number)];
  const left = 20 + chainDepth("y", stringTexts(model.left), textPx);
  const right = 22 + chainDepth("y", stringTexts(model.right), textPx);
  const roomPx = widthPx - left - right;
  const bottom = 30 + 2 * textPx * 1.15 + 34;
  const scale = Math.min(roomPx / (model.insideIn - x0), (Math.min(options.mostHeightPx ?? 440, roomHeightPx()) - bottom - 10) / (high - low));
  const view = viewAt({x0, y0: low, x1: model.insideIn, y1: high}, left + (roomPx - (model.insideIn - x0) * scale) / 2, 10, scale);
  const heightPx = Math.ceil(10 + (high - low) * scale + bottom);
  const sheet = createSheet({view, kind: "story", widthPx, heightPx, label: options.label ?? "Section through a long side", description: options.description ?? "Beam, deck's end and wall, cut across the long side."});
  const box = (a: number, b: number, c: number, d: number) => pathOfBox(view.x(a), view.y(d), view.x(c), view.y(b));
  const inside = model.insideIn;
  if (deck.flangeBottomIn > deck.bottomIn) concrete(sheet, "plant", box(deck.fromIn, deck.bottomIn, inside, deck.flangeBottomIn), {"data-part": "deck"}, "seen");
  concrete(sheet, "plant", box(deck.fromIn, deck.flangeBottomIn, inside, deck.topIn), {"data-part": "deck"});
  if (model.toppingIn > 0) concrete(sheet, "site", box(deck.fromIn, deck.topIn, inside, deck.topIn + model.toppingIn));
  const structureIn = deck.topIn + model.toppingIn;
  if (model.cover.topIn > structureIn) sheet.body.append(el("path", {d: box(Math.max(deck.fromIn, parapet?.x1 ?? -Infinity), structureIn, inside, model.cover.topIn), class: model.cover.kind, "data-part": model.cover.kind === "finish" ? "finish" : "layers"}));
  concrete(sheet, "plant", pathThrough(model.beam.map(([x, z]) => view.at(x, z)), true), {"data-part": "edge beam"});
  if (strip) sheet.body.append(el("path", {d: box(strip.x0, strip.z0, strip.x1, strip.z1), class: "concrete-plant is-cut", "data-part": "closing strip"}));
  if (parapet) {
    concrete(sheet, "plant", box(parapet.x0, parapet.z0, parapet.x1, parapet.z1 - parapet.capIn), {"data-part": "parapet"});
    if (parapet.capIn > 0) concrete(sheet, "plant", box(parapet.x0 - CAP_OVERHANG_IN, parapet.z1 - parapet.capIn, parapet.x1 + CAP_OVERHANG_IN, parapet.z1), {"data-part": "cap"});
  }
  breakLine(sheet, view.x(inside), view.y(model.cover.topIn) - 6, view.y(deck.bottomIn) + 6);
  const stops = ({at}: DimensionString, edge: number, of: (value: number) => number) => at.map((value) => ({at: of(value), edge}));
  chain(sheet, {axis: "y", outward: -1, line: view.x(x0) - 8, stops: stops(model.left, view.x(x0), view.y), texts: stringTexts(model.left)});
  chain(sheet, {axis: "y", outward: 1, line: view.x(inside) + 14, stops: stops(model.right, view.x(inside) + 4, view.y), texts: stringTexts(model.right)});
  chain(sheet, {axis: "x", outward: 1, line: view.y(low) + 14, stops: stops(model.below, view.y(low), view.x), texts: stringTexts(model.below), bounds: [4, widthPx - 4]});
  const deckX = view.x((Math.max(deck.fromIn, 0) + inside) / 2);
  if ((deck.flangeBottomIn - deck.bottomIn) * scale > 2 * textPx) text(sheet.notes, sheet, [deckX, view.y((deck.bottomIn + deck.flangeBottomIn) / 2)], "deck", {kind: "name", part: "deck", className: "on-seen"});
  scaleBar(sheet, [6, heightPx - 12], scale);
  return sheet.svg;
}
