import type {Evaluation} from "../../lib/evaluate.js";
import {feetAndInches} from "../../lib/units.js";
import {lit} from "../../components/drawings/parts.js";
import {figure} from "../../components/figure.js";
import {edgeModel, edgeSection} from "./edgeSection.js";
import {cornerPlan, outlinePlan} from "./outlinePlan.js";
import {elevationRoom, sideElevation} from "./sideElevation.js";
import {cornerModel, longSide, piecesOf, shortSide} from "./wallModels.js";

/** A long side from outside. */
export function longSideFigure(now: Evaluation, widthPx: number): HTMLElement {
  return lit(figure(sideElevation({model: longSide(now, elevationRoom(widthPx).roomPx), name: "long", widthPx}), {
    wide: true,
    title: now.walls.open ? "Beams and openings from corner to corner" : now.story.glassIn > 0 ? `${feetAndInches(now.story.glassIn)} of glass between beams` : "No glass is left between the beams",
    caption: "From outside, true to scale; the people are 5'-8\" tall. Floors and deck behind the wall are dashed.",
  }));
}

const SHORT_TITLES: Readonly<Record<Evaluation["design"]["walls"]["shortSide"], string>> = {
  "not counted": "Nothing is said of the short sides yet", "solid panel": "Solid panels close the short sides", "insulated panel": "Insulated panels close the short sides",
  "spandrel": "Spandrels that carry no deck", "cladding": "Light cladding past the columns",
};

/** A short side from outside, by what closes it. */
export function shortSideFigure(now: Evaluation, widthPx: number): HTMLElement {
  const {shortSide: kind, glassShare} = now.design.walls;
  const windows = (now.walls.panels !== undefined || kind === "cladding") && glassShare > 0;
  return lit(figure(sideElevation({model: shortSide(now, elevationRoom(widthPx).roomPx), name: "short", widthPx, mostHeightPx: 520}), {
    title: SHORT_TITLES[kind],
    caption: `From outside, true to scale.${windows ? " Windows are drawn by their share of the area, not by their place." : ""}`,
  }));
}

/** The building's outline from above, at the first floor carried. */
export function outlineFigure(now: Evaluation, widthPx: number): HTMLElement {
  const {design: {bay, story}, walls: {planes}} = now;
  const cutIn = planes.storyIn - story.finishIn - 0.5;
  const plan = outlinePlan({
    pieces: piecesOf(now).filter(({bottomIn, topIn}) => bottomIn <= cutIn && cutIn <= topIn), shortOutIn: planes.shortOutIn, longOutIn: planes.longOutIn,
    bays: {alongIn: 12 * bay.beamSpanFt, along: bay.baysAlong, acrossIn: 12 * bay.spanFt, across: bay.baysAcross}, widthPx,
  });
  return lit(figure(plan, {
    wide: true, title: `${feetAndInches(planes.lengthIn + 2 * planes.shortOutIn)} by ${feetAndInches(planes.widthIn + 2 * planes.longOutIn)}, to the outer faces`,
    caption: "Cut just below the top of the first floor carried, true to scale: columns black, beams and walls gray, strips cast in place in the color of what is cast on site.",
  }));
}

/** One corner at a floor, or above the roof. */
export function cornerFigure(now: Evaluation, where: "floor" | "roof", widthPx: number): HTMLElement {
  const plan = cornerPlan({model: cornerModel(now, where), widthPx, mostHeightPx: where === "floor" ? 460 : 400, label: `Plan of a corner at ${where === "floor" ? "a floor" : "the roof"}`});
  return lit(figure(plan, where === "floor"
    ? {title: "A column stands in the corner, and both sides end at it or pass it", caption: "Plan of one corner at a floor, true to scale. Column lines are dash-dotted."}
    : {title: "At the roof the walls meet without a column between", caption: "The same corner, cut through the top of the parapet."}));
}

/** A long side cut through at the roof, or at the highest floor where there is none. */
export function edgeFigure(now: Evaluation, widthPx: number): HTMLElement {
  const {roofed} = now.walls.planes;
  return lit(figure(edgeSection({model: edgeModel(now, roofed ? "roof" : "floor"), widthPx, mostHeightPx: 480}), {
    title: now.walls.ends ? "A strip closes the ends of the deck down to the beam" : now.design.edgeBeam.kind === "below" ? "The ends of the deck show above the beam" : "The beam closes the ends of the deck by itself",
    caption: `A long side cut through at ${roofed ? "the roof" : "the highest floor"}, true to scale.`,
  }));
}
