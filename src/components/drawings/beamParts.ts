import type {Family} from "../../lib/sections/shape.js";
import {concrete, line, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough} from "./svg.js";
import type {View} from "./view.js";

/** How the beam carries the deck: on a ledge at its side, in pockets of its web, or on its top. */
export type SeatKind = "ledge" | "pockets" | "below";

/** A deck's end on an edge beam, inches. The beam's outer face is x = 0, its soffit y = 0, its ledge to the right. */
export interface SeatGeometry {
  /** An L-beam's ledge if left out. */
  readonly kind?: SeatKind;
  readonly webWidthIn: number;
  readonly depthIn: number;
  /** Depth of the ledge, or of the foot below the pockets. */
  readonly ledgeDepthIn: number;
  /** Projection of the ledge, or reach of a pocket into the web. */
  readonly ledgeProjectionIn: number;
  /** Beam above the structural floor. */
  readonly upstandIn: number;
  readonly deck: {readonly depthIn: number; readonly toppingIn: number; readonly family: Family; readonly flangeIn?: number};
  /** Between the web and the deck's end. */
  readonly jointGapIn: number;
  /** Length of the bearing pad along the deck, and its thickness. */
  readonly bearingLengthIn: number;
  readonly padThicknessIn?: number;
  /** The beam's longitudinal steel; `yIn` is the height of its center. */
  readonly bars: {readonly count: number; readonly diameterIn: number; readonly yIn: number; readonly rows: number};
  /** Strands at their true places. */
  readonly strands?: readonly {readonly xIn: number; readonly yIn: number}[];
  /** Bars along each side of the stirrup between its corners. */
  readonly sideBars?: number;
  /** Concrete outside the stirrup. */
  readonly coverIn: number;
  readonly finishIn: number;
}

const PAD_IN = 0.5;

/** Height of the deck's underside above the beam's soffit, in. */
export function seatHeight({kind = "ledge", ledgeDepthIn, depthIn}: SeatGeometry): number {
  return kind === "below" ? depthIn : ledgeDepthIn;
}

/** Where the deck may lie on the beam, from its end to the edge of the support or the web's inner face. */
export function seatReach({kind = "ledge", webWidthIn, ledgeProjectionIn, jointGapIn}: Pick<SeatGeometry, "kind" | "webWidthIn" | "ledgeProjectionIn" | "jointGapIn">): {startIn: number; edgeIn: number} {
  switch (kind) {
    case "ledge": return {startIn: webWidthIn + jointGapIn, edgeIn: webWidthIn + ledgeProjectionIn};
    case "pockets": return {startIn: webWidthIn - ledgeProjectionIn + jointGapIn, edgeIn: webWidthIn};
    case "below": return {startIn: jointGapIn, edgeIn: webWidthIn};
  }
}

/** Where the pad lies: in the middle of what the deck overlaps of the support, or of the web below the deck. */
export function padPlace(seat: SeatGeometry): {fromIn: number; toIn: number} {
  const {startIn, edgeIn} = seatReach(seat);
  const length = Math.min(seat.bearingLengthIn, edgeIn - startIn);
  const middle = seat.kind === "below" ? seat.webWidthIn / 2 : (startIn + edgeIn) / 2;
  return {fromIn: middle - length / 2, toIn: middle + length / 2};
}

/** The beam's outline as path data: with a pocket cut into its web where stems stand in pockets. */
export function beamOutline(view: View, seat: SeatGeometry): string {
  const {kind = "ledge", webWidthIn: w, depthIn: h, ledgeDepthIn: l, ledgeProjectionIn: p, deck} = seat;
  const at = view.at;
  if (kind === "below") return pathThrough([at(0, 0), at(w, 0), at(w, h), at(0, h)], true);
  if (kind === "ledge") return pathThrough([at(0, 0), at(w + p, 0), at(w + p, l), at(w, l), at(w, h), at(0, h)], true);
  const top = l + deck.depthIn - (deck.flangeIn ?? 0);
  return pathThrough([at(0, 0), at(w, 0), at(w, l), at(w - p, l), at(w - p, top), at(w, top), at(w, h), at(0, h)], true);
}

/** The deck's end, cut along: a tee through its stem, a plank through a void; topping, finish and pad. */
export function drawDeckEnd(sheet: Sheet, view: View, seat: SeatGeometry): void {
  const {kind = "ledge", webWidthIn, deck, jointGapIn, finishIn} = seat;
  const {startIn: start} = seatReach(seat);
  const level = seatHeight(seat);
  const far = view.world.x1 + 2;
  const deckTop = level + deck.depthIn;
  const edge = view.x(view.world.x1);
  const clip = sheet.clip(pathOfBox(0, -10, edge, sheet.heightPx + 10));
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  const under = deckTop - (deck.flangeIn ?? 2);
  // Only the stem goes into a pocket; the flange ends at the web.
  const end = kind === "pockets"
    ? pathThrough([view.at(start, level), view.at(far, level), view.at(far, deckTop), view.at(webWidthIn + jointGapIn, deckTop), view.at(webWidthIn + jointGapIn, under), view.at(start, under)], true)
    : box(start, level, far, deckTop);
  concrete(sheet, "plant", end, {"data-part": "deck", "clip-path": clip});
  if (deck.family === "double tee") {
    line(sheet.body, "hidden", [view.at(kind === "pockets" ? webWidthIn + jointGapIn : start, under), [edge, view.y(under)]], {"data-part": "deck"});
  }
  if (deck.family === "hollow core") {
    for (const share of [0.16, 0.84]) {
      const y = level + deck.depthIn * share;
      line(sheet.body, "hidden", [view.at(start, y), [edge, view.y(y)]], {"data-part": "deck"});
    }
  }
  const topping = deckTop + deck.toppingIn;
  const toppingFrom = kind === "below" ? start : webWidthIn;
  if (deck.toppingIn > 0) concrete(sheet, "site", box(toppingFrom, deckTop, far, topping), {"clip-path": clip});
  if (finishIn > 0 && !sheet.bare) {
    sheet.body.append(el("path", {d: box(toppingFrom, topping, view.world.x1, topping + finishIn), class: "finish", "data-part": "finish"}));
  }
  const pad = padPlace(seat);
  sheet.body.append(el("path", {d: box(pad.fromIn, level, pad.toIn, level + (seat.padThicknessIn ?? PAD_IN)), class: "pad", "data-part": "pad"}));
}

/** Outlines of the beam's ledge and upstand that show only when they are lit. */
export function drawRegions(sheet: Sheet, view: View, {kind = "ledge", webWidthIn, ledgeProjectionIn, ledgeDepthIn, depthIn, upstandIn}: SeatGeometry): void {
  if (kind === "below") return;
  const region = (part: string, x0: number, y0: number, x1: number, y1: number) =>
    sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), class: "region", "data-part": part}));
  if (kind === "ledge") region("ledge", webWidthIn, 0, webWidthIn + ledgeProjectionIn, ledgeDepthIn);
  else region("ledge", 0, 0, webWidthIn, ledgeDepthIn);
  if (upstandIn > 0) region("upstand", 0, depthIn - upstandIn, webWidthIn, depthIn);
}

/** Half the thickness of a #4 stirrup and that of the bars at its corners and sides, in. */
const STIRRUP_IN = 0.5;
const SIDE_BAR_IN = 0.5;

/** Stirrup, bars around it, the bar across the ledge, and the bottom bars or strands. */
export function drawBars(sheet: Sheet, view: View, seat: SeatGeometry): void {
  if (sheet.bare) return;
  const {kind = "ledge", webWidthIn, depthIn, ledgeDepthIn, ledgeProjectionIn, coverIn, sideBars = 0} = seat;
  const at = view.at;
  const right = webWidthIn - (kind === "pockets" ? ledgeProjectionIn : 0) - coverIn;
  const stirrup = kind === "pockets"
    // The legs pass behind the pocket and spread again in the foot.
    ? pathThrough([at(coverIn, coverIn), at(webWidthIn - coverIn, coverIn), at(webWidthIn - coverIn, ledgeDepthIn - coverIn), at(right, ledgeDepthIn - coverIn), at(right, depthIn - coverIn), at(coverIn, depthIn - coverIn)], true)
    : pathThrough([at(coverIn, coverIn), at(right, coverIn), at(right, depthIn - coverIn), at(coverIn, depthIn - coverIn)], true);
  sheet.body.append(el("path", {d: stirrup, class: "stirrup", "data-part": "stirrup"}));
  if (kind === "ledge") {
    const outer = webWidthIn + ledgeProjectionIn - coverIn;
    sheet.body.append(el("path", {
      d: pathThrough([at(coverIn + 0.6, ledgeDepthIn - coverIn), at(outer, ledgeDepthIn - coverIn), at(outer, coverIn + 0.6), at(coverIn + 0.6, coverIn + 0.6)]),
      class: "stirrup", "data-part": "ledge-bar",
    }));
  }
  const dot = (x: number, y: number, diameterIn: number, part: string) =>
    sheet.body.append(el("circle", {cx: view.x(x), cy: view.y(y), r: Math.max(1.6, (diameterIn / 2) * view.scale), class: "strand", "data-part": part}));
  const inset = coverIn + STIRRUP_IN + SIDE_BAR_IN / 2;
  const upper = depthIn - inset;
  for (let i = 1; i <= sideBars + 1; i++) {
    const y = inset + ((upper - inset) * i) / (sideBars + 1);
    for (const x of [inset, right - STIRRUP_IN - SIDE_BAR_IN / 2]) dot(x, y, SIDE_BAR_IN, "side-bars");
  }
  for (const {xIn, yIn} of seat.strands ?? []) dot(xIn, yIn, 0.5, "bars");
  drawBottomBars(seat, dot);
}

function drawBottomBars({webWidthIn, ledgeProjectionIn, kind = "ledge", coverIn, bars}: SeatGeometry, dot: (x: number, y: number, diameterIn: number, part: string) => void): void {
  if (bars.count === 0) return;
  const perRow = Math.ceil(bars.count / bars.rows);
  const pitchY = Math.max(2, bars.diameterIn + 1);
  const inset = coverIn + STIRRUP_IN + bars.diameterIn / 2;
  // Bars stand in the web; where they are too many for it they spread into the ledge.
  const crowded = kind === "ledge" && perRow > 1 && (webWidthIn - 2 * inset) / (perRow - 1) < bars.diameterIn + 1;
  const reach = (crowded ? webWidthIn + ledgeProjectionIn : webWidthIn) - 2 * inset;
  for (let i = 0; i < bars.count; i++) {
    const row = Math.floor(i / perRow);
    const inRow = Math.min(perRow, bars.count - row * perRow);
    const x = inset + (inRow === 1 ? reach / 2 : (reach * (i % perRow)) / (inRow - 1));
    dot(x, bars.yIn + (row - (bars.rows - 1) / 2) * pitchY, bars.diameterIn, "bars");
  }
}
