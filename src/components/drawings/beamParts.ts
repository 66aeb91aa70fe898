import type {Family} from "../../lib/sections/shape.js";
import {concrete, line, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough} from "./svg.js";
import type {View} from "./view.js";

/** A deck's end on the ledge of a beam, inches. The beam's outer face is x = 0, its soffit y = 0, its ledge to the right. */
export interface SeatGeometry {
  readonly webWidthIn: number;
  readonly depthIn: number;
  readonly ledgeDepthIn: number;
  readonly ledgeProjectionIn: number;
  /** Beam above the structural floor. */
  readonly upstandIn: number;
  readonly deck: {readonly depthIn: number; readonly toppingIn: number; readonly family: Family; readonly flangeIn?: number};
  /** Between the web and the deck's end. */
  readonly jointGapIn: number;
  /** Length of the bearing pad along the deck. */
  readonly bearingLengthIn: number;
  /** The beam's longitudinal steel; `yIn` is the height of its centre. */
  readonly bars: {readonly count: number; readonly diameterIn: number; readonly yIn: number; readonly rows: number};
  /** Concrete outside the stirrup. */
  readonly coverIn: number;
  readonly finishIn: number;
}

const PAD_IN = 0.5;

/** Where the pad lies: in the middle of what the deck overlaps of the ledge. */
export function padPlace({webWidthIn, ledgeProjectionIn, jointGapIn, bearingLengthIn}: SeatGeometry): {fromIn: number; toIn: number} {
  const [start, end] = [webWidthIn + jointGapIn, webWidthIn + ledgeProjectionIn];
  const length = Math.min(bearingLengthIn, end - start);
  return {fromIn: (start + end - length) / 2, toIn: (start + end + length) / 2};
}

/** The deck's end, cut along: a tee through its stem, a plank through a void; topping, finish and pad. */
export function drawDeckEnd(sheet: Sheet, view: View, seat: SeatGeometry): void {
  const {webWidthIn, ledgeDepthIn, deck, jointGapIn, finishIn} = seat;
  const start = webWidthIn + jointGapIn;
  const far = view.world.x1 + 2;
  const deckTop = ledgeDepthIn + deck.depthIn;
  const edge = view.x(view.world.x1);
  const clip = sheet.clip(pathOfBox(0, -10, edge, sheet.heightPx + 10));
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  concrete(sheet, "plant", box(start, ledgeDepthIn, far, deckTop), {"data-part": "deck", "clip-path": clip});
  if (deck.family === "double tee") {
    const under = deckTop - (deck.flangeIn ?? 2);
    line(sheet.body, "hidden", [view.at(start, under), [edge, view.y(under)]], {"data-part": "deck"});
  }
  if (deck.family === "hollow core") {
    for (const share of [0.16, 0.84]) {
      const y = ledgeDepthIn + deck.depthIn * share;
      line(sheet.body, "hidden", [view.at(start, y), [edge, view.y(y)]], {"data-part": "deck"});
    }
  }
  const topping = deckTop + deck.toppingIn;
  if (deck.toppingIn > 0) concrete(sheet, "site", box(webWidthIn, deckTop, far, topping), {"clip-path": clip});
  if (finishIn > 0 && !sheet.bare) {
    sheet.body.append(el("path", {d: box(webWidthIn, topping, view.world.x1, topping + finishIn), class: "finish", "data-part": "finish"}));
  }
  const pad = padPlace(seat);
  sheet.body.append(el("path", {d: box(pad.fromIn, ledgeDepthIn, pad.toIn, ledgeDepthIn + PAD_IN), class: "pad", "data-part": "pad"}));
}

/** Outlines of the beam's ledge and upstand that show only when they are lit. */
export function drawRegions(sheet: Sheet, view: View, {webWidthIn, ledgeProjectionIn, ledgeDepthIn, depthIn, upstandIn}: SeatGeometry): void {
  const region = (part: string, x0: number, y0: number, x1: number, y1: number) =>
    sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), class: "region", "data-part": part}));
  region("ledge", webWidthIn, 0, webWidthIn + ledgeProjectionIn, ledgeDepthIn);
  if (upstandIn > 0) region("upstand", 0, depthIn - upstandIn, webWidthIn, depthIn);
}

/** Bars as dots, the stirrup around them, and the bar that turns down into the ledge. */
export function drawBars(sheet: Sheet, view: View, {webWidthIn, depthIn, ledgeDepthIn, ledgeProjectionIn, coverIn, bars}: SeatGeometry): void {
  if (sheet.bare) return;
  const at = view.at;
  const closed = (x0: number, y0: number, x1: number, y1: number) => pathThrough([at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)], true);
  const outer = webWidthIn + ledgeProjectionIn - coverIn;
  sheet.body.append(
    el("path", {d: closed(coverIn, coverIn, webWidthIn - coverIn, depthIn - coverIn), class: "stirrup", "data-part": "stirrup"}),
    el("path", {d: pathThrough([at(coverIn + 0.6, ledgeDepthIn - coverIn), at(outer, ledgeDepthIn - coverIn), at(outer, coverIn + 0.6), at(coverIn + 0.6, coverIn + 0.6)]),
      class: "stirrup", "data-part": "ledge-bar"}),
  );
  const perRow = Math.ceil(bars.count / bars.rows);
  const pitchY = Math.max(2, bars.diameterIn + 1);
  const inset = coverIn + 0.5 + bars.diameterIn / 2;
  // Bars stand in the web; where they are too many for it they spread into the ledge.
  const crowded = perRow > 1 && (webWidthIn - 2 * inset) / (perRow - 1) < bars.diameterIn + 1;
  const reach = (crowded ? webWidthIn + ledgeProjectionIn : webWidthIn) - 2 * inset;
  for (let i = 0; i < bars.count; i++) {
    const row = Math.floor(i / perRow);
    const inRow = Math.min(perRow, bars.count - row * perRow);
    const x = inset + (inRow === 1 ? reach / 2 : (reach * (i % perRow)) / (inRow - 1));
    const y = bars.yIn + (row - (bars.rows - 1) / 2) * pitchY;
    sheet.body.append(el("circle", {cx: view.x(x), cy: view.y(y), r: Math.max(1.8, (bars.diameterIn / 2) * view.scale), class: "strand", "data-part": "bars"}));
  }
}
