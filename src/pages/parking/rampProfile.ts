import type {ParkingRamp} from "../../lib/parking/result.js";
import {VEHICLES} from "../../lib/parking/vehicles.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {chain, chainDepth, inTwoRows, type DimensionText} from "../../components/drawings/dimension.js";
import {scaleBar} from "../../components/drawings/marks.js";
import {createSheet, line, text, textSize} from "../../components/drawings/sheet.js";
import {el, pathThrough} from "../../components/drawings/svg.js";
import {fitView} from "../../components/drawings/view.js";
import {vehicleSide} from "./carShapes.js";

/** Level floor that is drawn before and after the ramp, in. */
const LANDING_IN = 216;

/** A slope with no more decimals than it has. */
const percentText = (slope: number): string => `${decimals(slope, Number.isInteger(slope) ? 0 : Number.isInteger(10 * slope) ? 1 : 2)} %`;

/** One run of the ramp from the side, with its blends, true to scale. */
export function rampProfile({riseIn, blendIn, steepIn, lengthIn, slopePercent}: ParkingRamp, widthPx: number): SVGSVGElement {
  const textPx = textSize(widthPx);
  const written = (length: number) => feetAndInches(length, 2);
  const stopsIn = blendIn > 0 ? [0, blendIn, ...(steepIn > 0.5 ? [blendIn + steepIn] : []), lengthIn] : [0, lengthIn];
  const name = (i: number) => (blendIn > 0 && (i === 0 || i === stopsIn.length - 2) ? percentText(slopePercent / 2) : percentText(slopePercent));
  const texts: DimensionText[] = stopsIn.slice(1).map((at, i) => ({value: written(at - (stopsIn[i] as number)), name: name(i)}));
  const right: DimensionText[] = [{value: written(riseIn), name: "rise"}];
  const world = {x0: -LANDING_IN, y0: -6, x1: lengthIn + LANDING_IN, y1: riseIn + 66};
  const row = chainDepth("x", texts, textPx);
  const fit = (rows: number) => fitView({
    world, widthPx, mostHeightPx: Math.max(260, widthPx * 0.4),
    margins: {top: 8, left: 8, right: 16 + chainDepth("y", right, textPx), bottom: 20 + rows * row + 20 + chainDepth("x", [{value: ""}], textPx) + 24},
  });
  const once = fit(1);
  const rows = inTwoRows(texts, stopsIn.map((at) => once.view.x(at)), widthPx, textPx) ? 2 : 1;
  const {view, heightPx} = fit(rows);
  const sheet = createSheet({
    view, kind: "parking", widthPx, heightPx, label: `Profile of the ramp, ${written(lengthIn)} long`,
    description: `It climbs ${written(riseIn)} at ${decimals(slopePercent, 1)} percent${blendIn > 0 ? `, at half of that over ${written(blendIn)} at each end` : ""}.`,
  });
  const half = (blendIn * slopePercent) / 200;
  const profile = [view.at(-LANDING_IN, 0), view.at(0, 0), view.at(blendIn, half), view.at(lengthIn - blendIn, riseIn - half), view.at(lengthIn, riseIn), view.at(lengthIn + LANDING_IN, riseIn)];
  sheet.body.append(el("path", {d: pathThrough([...profile, view.at(lengthIn + LANDING_IN, riseIn - 8), view.at(lengthIn, riseIn - 8), view.at(0, -6), view.at(-LANDING_IN, -6)], true), class: "deck-ground"}));
  line(sheet.body, "cut", profile, {"data-part": "ramp"});
  const car = VEHICLES.find(({name: kind}) => kind === "sedan") as (typeof VEHICLES)[number];
  vehicleSide(sheet, view, "car", car, -10, 1);
  vehicleSide(sheet, view, "car", car, lengthIn + 10 + car.lengthIn, 1, riseIn);
  const below = view.y(-6);
  chain(sheet, {axis: "x", outward: 1, line: below + 14, stops: stopsIn.map((at) => ({at: view.x(at), edge: below})), texts});
  const second = below + 22 + rows * row;
  chain(sheet, {axis: "x", outward: 1, line: second, stops: [0, lengthIn].map((at) => ({at: view.x(at), edge: second - 8})), texts: [{value: written(lengthIn)}]});
  const outer = view.x(lengthIn + LANDING_IN);
  chain(sheet, {axis: "y", outward: 1, line: outer + 10, stops: [{at: view.y(0), edge: outer - 4}, {at: view.y(riseIn), edge: outer}], texts: right});
  const [middle, height] = view.at(lengthIn / 2, riseIn / 2);
  text(sheet.notes, sheet, [middle, height - 1.6 * textPx], "one run", {kind: "small"});
  scaleBar(sheet, [view.x(-LANDING_IN) + 4, heightPx - 10], view.scale);
  return sheet.svg;
}
