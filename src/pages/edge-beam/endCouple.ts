import {decimals} from "../../lib/units.js";
import {arrow} from "./arrows.js";
import {beamOutline, seatHeight, type SeatGeometry} from "../../components/drawings/beamParts.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {scaleBar} from "../../components/drawings/marks.js";
import {written} from "../../components/drawings/sectionDimensions.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import {fitView} from "../../components/drawings/view.js";

/** What {@link endCouple} draws. */
export interface EndCoupleOptions extends DrawingOptions, SeatGeometry {
  /** Web's center line to the deck's load, in. */
  readonly eccentricityIn: number;
  /** Beam's reaction, and the force of each of the two connections, kip. */
  readonly reactionKip: number;
  readonly forceKip: number;
  /** Heights of the two connections above the soffit, in. */
  readonly connectionsIn: readonly [number, number];
}

/** The beam's end from its length: the load that rolls it, the bearing under it, and the two connections that hold it upright. */
export function endCouple(options: EndCoupleOptions): SVGSVGElement {
  const {kind = "ledge", webWidthIn: w, depthIn: h, ledgeProjectionIn, eccentricityIn, reactionKip, forceKip, connectionsIn: [low, high], widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const rightIn = w + (kind === "ledge" ? ledgeProjectionIn : 0);
  const between = [{value: written(high - low), name: "apart"}];
  const room = textPx * 7;
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: -6, x1: rightIn, y1: h}, widthPx, mostHeightPx: options.mostHeightPx ?? 460,
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1} : {left: 30 + chainDepth("y", between, textPx) + 54, right: room, top: 18, bottom: 84},
  });
  const sheet = createSheet({
    view, kind: "couple", widthPx, heightPx, bare, label: options.label ?? "The couple that holds the beam's end upright",
    description: options.description ?? `The deck's load acts ${written(eccentricityIn)} off the web's center line. Two connections ${written(high - low)} apart hold the end with ${decimals(forceKip, 1)} kip each, the upper one outward and the lower one inward.`,
  });
  sheet.body.append(el("path", {d: pathOfBox(view.x(w / 2 - 4), view.y(0), view.x(w / 2 + 4), view.y(-1)), class: "pad"}));
  line(sheet.body, "cut", [view.at(-3, -1), view.at(rightIn + 2, -1)]);
  concrete(sheet, "plant", beamOutline(view, options), {"data-part": "beam"}, "seen");
  line(sheet.lines, "center", [view.at(w / 2, -2), view.at(w / 2, h + 1)]);
  if (bare) return sheet.svg;
  const arm = 56;
  const loadX = view.x(w / 2 + eccentricityIn);
  const seatY = view.y(seatHeight(options));
  if (eccentricityIn > 0) {
    arrow(sheet, [loadX, seatY - arm], [loadX, seatY - 2], "load");
    text(sheet.notes, sheet, [loadX + 8, seatY - arm + 4], "the deck", {anchor: "start", kind: "name"});
  }
  arrow(sheet, [view.x(w / 2), view.y(-1) + arm * 0.85], [view.x(w / 2), view.y(-1) + 3], "reaction");
  text(sheet.notes, sheet, [view.x(w / 2) - 8, view.y(-1) + arm * 0.55], `${decimals(reactionKip)} kip`, {anchor: "end"});
  if (forceKip > 0) {
    // The ledge pulls the top inward: the upper connection pulls it out again, toward the left, and the lower one holds the foot in.
    arrow(sheet, [view.x(0) - 3, view.y(high)], [view.x(0) - arm, view.y(high)], "force");
    arrow(sheet, [view.x(0) - arm, view.y(low)], [view.x(0) - 3, view.y(low)], "force");
    for (const at of [low, high]) sheet.lines.append(el("circle", {cx: view.x(1.2), cy: view.y(at), r: 3, class: "leader-dot"}));
    const name = `${decimals(forceKip, 1)} kip`;
    text(sheet.notes, sheet, [view.x(0) - arm / 2 - 4, view.y(high) - textPx], name, {});
    text(sheet.notes, sheet, [view.x(0) - arm / 2 - 4, view.y(low) - textPx], name, {});
    chain(sheet, {axis: "y", outward: -1, line: view.x(0) - arm - 16, stops: [low, high].map((at) => ({at: view.y(at), edge: view.x(0) - arm})), texts: between});
  }
  if (eccentricityIn > 0) {
    chain(sheet, {axis: "x", outward: 1, line: view.y(-6) + 30, stops: [w / 2, w / 2 + eccentricityIn].map((x) => ({at: view.x(x), edge: view.y(-2)})), texts: [{value: written(eccentricityIn), name: "off the web's middle"}]});
  }
  scaleBar(sheet, [12, heightPx - 10], view.scale);
  return sheet.svg;
}
