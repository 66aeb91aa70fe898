import {feetAndInches} from "../../lib/units.js";
import {chain} from "./dimension.js";
import {sitter} from "./people.js";
import {textWidth} from "./placement.js";
import {line, text, type Sheet} from "./sheet.js";
import {el, pathThrough, type PaperPoint} from "./svg.js";
import type {View} from "./view.js";

/** Angles that an eye or a desk sees through a window, degrees above the horizontal. */
export interface SeenAngles {
  readonly lowDeg: number;
  readonly highDeg: number;
  readonly viewDeg: number;
  readonly skyDeg: number;
}

const slope = (angleDeg: number) => Math.tan((angleDeg * Math.PI) / 180);

/** A wedge from a place toward the window, as far as a plane outside. */
function wedge(view: View, [x, y]: readonly [number, number], lowDeg: number, highDeg: number, toX: number): string {
  const away = x - toX;
  return pathThrough([view.at(x, y), view.at(toX, y + slope(lowDeg) * away), view.at(toX, y + slope(highDeg) * away)], true);
}

/** What a place sees through the window: the view, and in it the sky, with their degrees. `wallX` is the wall's inner face. */
export function drawSeen(sheet: Sheet, view: View, place: readonly [number, number], seen: SeenAngles, toX: number): void {
  if (seen.viewDeg <= 0) return;
  const clip = sheet.clip(`M-400 -200H${sheet.widthPx + 400}V${sheet.heightPx + 200}H-400Z`);
  sheet.body.append(el("path", {d: wedge(view, place, seen.lowDeg, seen.highDeg, toX), class: "view-seen", "clip-path": clip, "data-part": "view"}));
  if (seen.skyDeg > 0) sheet.body.append(el("path", {d: wedge(view, place, seen.highDeg - seen.skyDeg, seen.highDeg, toX), class: "sky-seen", "clip-path": clip, "data-part": "sky"}));
  const [x, y] = place;
  for (const angle of [seen.lowDeg, seen.highDeg]) line(sheet.lines, "thin", [view.at(x, y), view.at(toX, y + slope(angle) * (x - toX))], {class: "sight-line", "data-part": "view"});
  if (seen.skyDeg > 0 && seen.skyDeg < seen.viewDeg) line(sheet.lines, "hidden", [view.at(x, y), view.at(toX, y + slope(seen.highDeg - seen.skyDeg) * (x - toX))], {"data-part": "sky"});
}

/** What a story's section draws behind itself and over itself. */
export interface Overlay {
  readonly behind: (sheet: Sheet, view: View) => void;
  readonly over: (sheet: Sheet, view: View) => void;
}

/** A seated person with what the eye sees. */
export function seatedView(seen: SeenAngles, eye: {readonly x: number; readonly y: number}, toX: number): Overlay {
  return {behind: (sheet, view) => drawSeen(sheet, view, [eye.x, eye.y], seen, toX), over: (sheet, view) => {
    sitter(sheet, view, eye.x, eye.y - 48);
    sheet.lines.append(el("circle", {cx: view.x(eye.x), cy: view.y(eye.y), r: 2.6, class: "eye"}));
    const words = [`view ${seen.viewDeg.toFixed(0)}°`, `sky ${seen.skyDeg.toFixed(0)}°`];
    text(sheet.notes, sheet, [view.x(eye.x) + 12, view.y(eye.y + 26)], words, {kind: "value", anchor: "start", part: "sky"});
  }};
}

/** What {@link deskView} draws on a story's section. */
export interface DeskView {
  readonly seen: SeenAngles;
  /** Wall's inner face, and the outer end of the rays. */
  readonly wallX: number;
  readonly toX: number;
  readonly workPlaneIn: number;
  readonly deskMiddleIn: number;
  readonly sillIn: number;
  readonly shadowIn: number;
  readonly shadowDeg: number;
}

/** A desk just inside the upstand: the sky that its middle sees, and the shadow that the upstand throws on it. */
export function deskView({seen, wallX, toX, workPlaneIn, deskMiddleIn, sillIn, shadowIn, shadowDeg}: DeskView): Overlay {
  return {behind: (sheet, view) => drawSeen(sheet, view, [wallX + deskMiddleIn, workPlaneIn], seen, toX), over: (sheet, view) => {
    const box = (x0: number, y0: number, x1: number, y1: number): readonly PaperPoint[] => [view.at(x0, y0), view.at(x1, y0), view.at(x1, y1), view.at(x0, y1)];
    const left = wallX + 0.5;
    sheet.body.append(el("g", {class: "furniture", "data-part": "desk"},
      el("path", {d: pathThrough(box(left, workPlaneIn - 1.5, left + 2 * deskMiddleIn, workPlaneIn), true)}),
      el("path", {d: pathThrough(box(left + 1, 0, left + 3, workPlaneIn - 1.5), true)}),
      el("path", {d: pathThrough(box(left + 2 * deskMiddleIn - 3, 0, left + 2 * deskMiddleIn - 1, workPlaneIn - 1.5), true)})));
    sheet.lines.append(el("circle", {cx: view.x(wallX + deskMiddleIn), cy: view.y(workPlaneIn), r: 2.4, class: "eye"}));
    if (shadowIn > 0) {
      const reach = wallX + shadowIn;
      sheet.body.append(el("path", {d: pathThrough([view.at(wallX, workPlaneIn), view.at(wallX, sillIn), view.at(reach, workPlaneIn)], true), class: "shade", "data-part": "shadow"}));
      line(sheet.lines, "hidden", [view.at(wallX - 24, sillIn + 24 * slope(shadowDeg)), view.at(wallX, sillIn), view.at(reach, workPlaneIn)], {"data-part": "shadow"});
      const value = feetAndInches(shadowIn, 2);
      const betweenPx = view.x(left + 2 * deskMiddleIn - 3) - view.x(left + 3);
      if (!sheet.bare && betweenPx < 1.6 * textWidth(value, sheet.textPx)) {
        // Between the legs of a small desk there is no room for words: they stand behind it.
        text(sheet.notes, sheet, [view.x(left + 2 * deskMiddleIn) + 8, view.y(workPlaneIn) + sheet.textPx], [value, "shade"], {anchor: "start", part: "shadow"});
      } else if (!sheet.bare && shadowIn * view.scale > 18) {
        chain(sheet, {axis: "x", outward: 1, line: view.y(workPlaneIn) + 22, stops: [{at: view.x(wallX), edge: view.y(workPlaneIn) + 8}, {at: view.x(reach), edge: view.y(workPlaneIn) + 8}], texts: [{value, name: "shade", part: "shadow"}]});
      }
    }
    text(sheet.notes, sheet, [view.x(wallX + deskMiddleIn) + 16, view.y(workPlaneIn + 34)], [`sky ${seen.skyDeg.toFixed(0)}°`], {anchor: "start", part: "sky"});
  }};
}
