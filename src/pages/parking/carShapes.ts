import {line, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import type {View} from "../../components/drawings/view.js";

/** Half of a plain car seen from above, as shares of its length from the nose and of half its width. */
const HALF_PLAN: readonly PaperPoint[] = [[0, 0], [0, 0.62], [0.04, 0.86], [0.12, 0.97], [0.3, 1], [0.8, 1], [0.95, 0.94], [1, 0.75], [1, 0]];
/** A car from the side, as shares of its length from the nose and of its height: hood, windshield, roof, rear. */
const CAR_SIDE: readonly PaperPoint[] = [[0, 0.2], [0, 0.45], [0.04, 0.56], [0.27, 0.64], [0.4, 0.97], [0.5, 1], [0.68, 0.98], [0.86, 0.68], [0.98, 0.62], [1, 0.4], [0.99, 0.2]];
/** A van with a raised roof from the side. */
const VAN_SIDE: readonly PaperPoint[] = [[0, 0.15], [0, 0.38], [0.05, 0.46], [0.16, 0.52], [0.27, 0.86], [0.34, 0.98], [0.42, 1], [0.96, 0.99], [0.99, 0.93], [1, 0.15]];
const WHEELS = [0.19, 0.8];

interface Size {
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly heightIn: number;
}

/** A car from above between the middle of its nose and of its rear, in inches of the drawing. */
export function carPlan(sheet: Sheet, view: View, nose: PaperPoint, rear: PaperPoint, widthIn: number): void {
  const [dx, dy] = [rear[0] - nose[0], rear[1] - nose[1]];
  const length = Math.hypot(dx, dy);
  const at = (along: number, side: number): PaperPoint => view.at(nose[0] + dx * along - (dy / length) * side * (widthIn / 2), nose[1] + dy * along + (dx / length) * side * (widthIn / 2));
  const outline = [...HALF_PLAN.map(([along, side]) => at(along, side)), ...[...HALF_PLAN].reverse().map(([along, side]) => at(along, -side))];
  const group = el("g", {class: "car", "data-part": "car"}, el("path", {d: pathThrough(outline, true)}));
  // Windshield and rear window.
  for (const [from, to] of [[0.3, 0.38], [0.83, 0.77]] as const) {
    group.append(el("path", {d: pathThrough([at(from, -0.8), at(from, 0.8), at(to, 0.68), at(to, -0.68)], true)}));
  }
  sheet.body.append(group);
}

/** A vehicle from the side with its nose at `noseIn`; it looks to the left, or to the right where `looks` is 1. */
export function vehicleSide(sheet: Sheet, view: View, kind: "car" | "van", {lengthIn, heightIn}: Size, noseIn: number, looks: 1 | -1 = -1, floorIn = 0): void {
  const at = ([along, up]: PaperPoint) => view.at(noseIn - looks * along * lengthIn, floorIn + up * heightIn);
  const group = el("g", {class: "car", "data-part": kind}, el("path", {d: pathThrough((kind === "car" ? CAR_SIDE : VAN_SIDE).map(at), true)}));
  for (const along of WHEELS) {
    const [x, y] = view.at(noseIn - looks * along * lengthIn, floorIn + 13);
    group.append(el("circle", {cx: x, cy: y, r: 13 * view.scale}));
  }
  sheet.body.append(group);
}

/** A vehicle from behind, its middle at `middleIn`. */
export function vehicleRear(sheet: Sheet, view: View, part: string, {widthIn, heightIn}: Size, middleIn: number, floorIn = 0): void {
  const half = widthIn / 2;
  const shape: PaperPoint[] = [[-half, 10], [-half, heightIn * 0.55], [-half * 0.94, heightIn * 0.93], [-half * 0.8, heightIn], [half * 0.8, heightIn], [half * 0.94, heightIn * 0.93], [half, heightIn * 0.55], [half, 10]];
  const group = el("g", {class: "car", "data-part": part}, el("path", {d: pathThrough(shape.map(([x, y]) => view.at(middleIn + x, floorIn + y)), true)}));
  for (const side of [-1, 1]) {
    const [x, y] = view.at(middleIn + side * (half - 12) - 4.5, floorIn + 16);
    group.append(el("rect", {x, y, width: 9 * view.scale, height: 16 * view.scale}));
  }
  sheet.body.append(group);
  line(sheet.body, "thin", [view.at(middleIn - half * 0.72, floorIn + heightIn * 0.6), view.at(middleIn + half * 0.72, floorIn + heightIn * 0.6)]);
}
