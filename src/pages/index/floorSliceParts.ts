import type {Evaluation} from "../../lib/evaluate.js";
import {breakLine} from "../../components/drawings/marks.js";
import {concrete, line, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import type {View} from "../../components/drawings/view.js";

/** A slice in the plane of the drawing, in: the edge beam's outer face is 0. */
export interface Lengths {
  /** Ends of the deck member. */
  readonly startIn: number;
  readonly endIn: number;
  /** Nearer face of the web of the beam at the far side: a girder, or the other edge beam. */
  readonly farIn: number;
  /** Where the next bay's deck begins; undefined where there is none. */
  readonly nextIn: number | undefined;
  readonly wholeIn: number;
}

/** How much of the next bay is shown beyond the girder, in. */
const BEYOND_IN = 30;
/** A light wall over or under the window, and one without windows, in. */
const WALL_IN = 6;

/** Where things stand along the slice. */
export function lengthsOf({design, edgeBeam, girder}: Evaluation): Lengths {
  const {webWidthIn, jointGapIn, ledgeProjectionIn, kind} = design.edgeBeam;
  const startIn = {ledge: webWidthIn + jointGapIn, pockets: Math.max(jointGapIn, webWidthIn - ledgeProjectionIn), below: jointGapIn}[kind];
  const endIn = startIn + design.bay.spanFt * 12 + edgeBeam.seat.nominalIn;
  if (!girder) return {startIn, endIn, farIn: endIn + startIn - webWidthIn, nextIn: undefined, wholeIn: endIn + startIn};
  const {webWidthIn: girderIn, ledgeProjectionIn: outIn} = design.girder;
  if (girder.kind === "rectangle") {
    // Both decks end over its middle.
    const nextIn = endIn + 2 * jointGapIn;
    const farIn = endIn + jointGapIn - girderIn / 2;
    return {startIn, endIn, farIn, nextIn, wholeIn: farIn + girderIn + BEYOND_IN};
  }
  const farIn = endIn + jointGapIn;
  return {startIn, endIn, farIn, nextIn: farIn + girderIn + jointGapIn, wholeIn: farIn + girderIn + outIn + BEYOND_IN};
}

const box = (view: View, x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));

/** One floor: deck, topping and finish, the edge beam, and the beam at the far side. */
export function drawFloor(sheet: Sheet, view: View, result: Evaluation, l: Lengths, levelIn: number): void {
  const {design, member, story, girder} = result;
  const structural = levelIn - story.finishIn;
  const deckTop = structural - design.deck.toppingIn;
  const soffit = structural - story.deckDepthIn;
  const decks: (readonly [number, number])[] = [[l.startIn, l.endIn], ...(l.nextIn === undefined ? [] : [[l.nextIn, l.wholeIn] as const])];
  for (const [x0, x1] of decks) {
    if (member.shape.family === "double tee") {
      // Cut between two stems: the flange is cut, the stem is seen beyond.
      const under = deckTop - (member.shape.dimensions["flangeIn"] ?? 2);
      concrete(sheet, "plant", box(view, x0, soffit, x1, under), {"data-part": "deck"}, "seen");
      concrete(sheet, "plant", box(view, x0, under, x1, deckTop), {"data-part": "deck"});
    } else concrete(sheet, "plant", box(view, x0, soffit, x1, deckTop), {"data-part": "deck"});
  }
  const left = design.edgeBeam.kind === "below" ? 0 : design.edgeBeam.webWidthIn;
  const right = girder ? l.wholeIn : l.wholeIn - left;
  if (design.deck.toppingIn > 0) concrete(sheet, "site", box(view, left, deckTop, right, structural));
  if (story.finishIn > 0) sheet.body.append(el("path", {d: box(view, left, structural, right, levelIn), class: "finish", "data-part": "finish"}));
  const edge = edgeOutline(result, soffit, structural);
  const place = (points: readonly (readonly [number, number])[]) => pathThrough(points.map(([x, y]): PaperPoint => view.at(x, y)), true);
  concrete(sheet, "plant", place(edge), {"data-part": "beam"});
  if (!girder) {
    concrete(sheet, "plant", place(edge.map(([x, y]) => [l.wholeIn - x, y] as const)), {"data-part": "beam"});
    return;
  }
  concrete(sheet, "plant", place(girderOutline(result, l, soffit, deckTop)), {"data-part": "girder"});
  breakLine(sheet, view.x(l.wholeIn), view.y(levelIn) - 6, view.y(soffit) + 6);
}

/** The edge beam in section as the design has it; heights by the deck's soffit and the structural floor, in. */
function edgeOutline({design, edgeBeam}: Evaluation, soffit: number, structural: number): (readonly [number, number])[] {
  const {webWidthIn: web, ledgeProjectionIn, ledgeDepthIn, upstandIn, kind} = design.edgeBeam;
  if (kind === "below") return [[0, soffit - edgeBeam.depthIn], [web, soffit - edgeBeam.depthIn], [web, soffit], [0, soffit]];
  const [foot, head] = [soffit - ledgeDepthIn, structural + upstandIn];
  if (kind === "pockets") return [[0, foot], [web, foot], [web, head], [0, head]];
  const out = web + ledgeProjectionIn;
  return [[0, foot], [out, foot], [out, soffit], [web, soffit], [web, head], [0, head]];
}

/** The girder in section: its web and ledges beside the deck, or all of it below. */
function girderOutline({design, girder}: Evaluation, {farIn}: Lengths, soffit: number, deckTop: number): (readonly [number, number])[] {
  const {webWidthIn, ledgeProjectionIn: out} = design.girder;
  const [a, b] = [farIn, farIn + webWidthIn];
  const foot = soffit - (girder?.belowDeckIn ?? 0);
  if (girder?.kind === "rectangle") return [[a, foot], [b, foot], [b, soffit], [a, soffit]];
  return [[a - out, foot], [b + out, foot], [b + out, soffit], [b, soffit], [b, deckTop], [a, deckTop], [a, soffit], [a - out, soffit]];
}

/** The outer walls between the beams: glass where the design has windows, closed where it has none. */
export function drawOutside(sheet: Sheet, view: View, {design, story, girder}: Evaluation, l: Lengths): void {
  const {webWidthIn, kind, upstandIn} = design.edgeBeam;
  const beamTop = kind === "below" ? 0 : Math.max(0, upstandIn - story.finishIn);
  const beamBottom = story.clearUnderLedgeIn;
  const wall = (faceIn: number, glazed: boolean) => {
    const into = (fromFaceIn: number) => (faceIn === 0 ? fromFaceIn : faceIn - fromFaceIn);
    const piece = (y0: number, y1: number, middleIn: number, thickIn: number, attributes: {class: string; "data-part": string}) => {
      if (y1 - y0 < 0.1) return;
      const half = Math.max(thickIn, 3 / view.scale) / 2;
      sheet.body.append(el("path", {d: box(view, into(middleIn) - half, y0, into(middleIn) + half, y1), ...attributes}));
    };
    const closed = (y0: number, y1: number) => piece(y0, y1, Math.min(webWidthIn / 2, WALL_IN / 2 + 1), WALL_IN, {class: "furniture", "data-part": "wall"});
    if (!glazed || story.glassIn <= 0) {
      closed(beamTop, beamBottom);
      return;
    }
    closed(beamTop, story.sillIn);
    piece(story.sillIn, story.headIn, webWidthIn * 0.35, 3, {class: "glass", "data-part": "glass"});
    closed(story.headIn, beamBottom);
  };
  wall(0, true);
  if (!girder) wall(l.wholeIn, design.daylight.sides === "two");
}

/** The ceiling from the edge to the girder and past it, or to the other edge. */
export function drawCeiling(sheet: Sheet, view: View, {design, story, girder}: Evaluation, l: Lengths): void {
  const {kind, webWidthIn, ledgeProjectionIn} = design.edgeBeam;
  const from = webWidthIn + (kind === "ledge" && design.story.ceiling === "flush" ? ledgeProjectionIn : 0);
  line(sheet.body, "seen", [view.at(from, story.ceilingHeightIn), view.at(girder ? l.wholeIn : l.wholeIn - from, story.ceilingHeightIn)], {"data-part": "ceiling"});
}
