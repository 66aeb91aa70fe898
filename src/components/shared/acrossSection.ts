import type {Evaluation} from "../../lib/evaluate.js";
import {decimals, feetAndInches, inches} from "../../lib/units.js";
import {classOf, type DAYLIGHT_CLASSES} from "../charts/daylightClasses.js";
import {chain, chainDepth} from "../drawings/dimension.js";
import {scaleBar} from "../drawings/marks.js";
import {person} from "../drawings/people.js";
import {concrete, createSheet, line, text, textSize, type Sheet} from "../drawings/sheet.js";
import {el, pathOfBox} from "../drawings/svg.js";
import {fitView, type View} from "../drawings/view.js";

/** Stalls and aisle below, as far as they fit: whole modules, one to a bay at most. */
export interface ParkedBelow {
  readonly modules: number;
  readonly stallLengthIn: number;
  readonly aisleIn: number;
}

/**
 * The whole width of a building, one story cut across with the daylight on its floor and a level of cars below. True to
 * scale; girders and columns are at their places, and where cars fit, their stalls and aisle are drawn in the middle of a bay.
 */
export function acrossSection(result: Evaluation, parked: ParkedBelow, widthPx: number): SVGSVGElement {
  const {design, story, daylight, edgeBeam, girder} = result;
  const {spanFt, baysAcross} = design.bay;
  const wide = inches(spanFt * baysAcross);
  const high = story.floorToFloorIn;
  const textPx = textSize(widthPx);
  const over = 40;
  const lightRuns = runsOf(result);
  const below = Math.min(high, 150);
  const {view, heightPx} = fitView({
    world: {x0: -over, y0: -below, x1: wide + over, y1: high + Math.max(design.edgeBeam.upstandIn, 6)}, widthPx, mostHeightPx: Math.max(300, widthPx * 0.6),
    margins: {top: 12, right: 24 + chainDepth("y", [{value: "00'-00\"", name: "story"}], textPx), bottom: 30 + 2 * chainDepth("x", [{value: "60'-0\"", name: "wide"}], textPx), left: 12},
  });
  const goodFt = lightRuns[0]?.kind.key === "good" ? (lightRuns[0].to - lightRuns[0].from) / 12 : 0;
  const sheet = createSheet({
    view, kind: "across", widthPx, heightPx, label: `Section across the building, ${feetAndInches(wide)} wide in ${baysAcross} ${baysAcross === 1 ? "span" : "spans"}`,
    description: `Floor to floor ${feetAndInches(high)}; the deck is ${feetAndInches(story.deckDepthIn)} deep. ${goodFt > 0 ? `Good daylight reaches ${decimals(goodFt)} ft in from the window.` : "No desk has good daylight."} ${parked.modules > 0 ? `${parked.modules} modules of parking fit below.` : "No module of parking fits below."}`,
  });
  const ceiling = design.story.ceiling === "none" ? high - story.finishIn - story.deckDepthIn : story.ceilingHeightIn;
  for (const {from, to, kind} of lightRuns) {
    sheet.body.append(el("path", {d: pathOfBox(view.x(from), view.y(ceiling), view.x(to), view.y(0)), style: `fill: var(--daylight); fill-opacity: ${kind.opacity * 0.7}; stroke: none`}));
    if ((to - from) * view.scale > 40) text(sheet.notes, sheet, [view.x((from + to) / 2), view.y(ceiling * 0.62)], kind.words, {kind: "name"});
  }
  line(sheet.body, "cut", [view.at(-over, -below), view.at(wide + over, -below)]);
  const web = design.edgeBeam.webWidthIn;
  const side = design.column.sideIn;
  for (const level of [0, high]) {
    const top = level - story.finishIn;
    concrete(sheet, "plant", pathOfBox(view.x(0), view.y(top - design.deck.toppingIn), view.x(wide), view.y(top - story.deckDepthIn)));
    if (design.deck.toppingIn > 0) concrete(sheet, "site", pathOfBox(view.x(0), view.y(top), view.x(wide), view.y(top - design.deck.toppingIn)));
    const soffit = top - story.deckDepthIn;
    const upTo = design.edgeBeam.kind === "below" ? soffit : top + design.edgeBeam.upstandIn;
    for (const x of [-web / 2, wide - web / 2]) concrete(sheet, "plant", pathOfBox(view.x(x), view.y(upTo), view.x(x + web), view.y(soffit - edgeBeam.belowDeckIn)));
    if (girder) for (let i = 1; i < baysAcross; i++) concrete(sheet, "plant", pathOfBox(view.x(inches(i * spanFt) - girder.member.shape.widthIn / 2), view.y(soffit), view.x(inches(i * spanFt) + girder.member.shape.widthIn / 2), view.y(soffit - girder.belowDeckIn)));
  }
  for (let i = 0; i <= baysAcross; i++) {
    for (const [foot, head] of [[-below, -story.finishIn - story.deckDepthIn], [0, high - story.finishIn - story.deckDepthIn]] as const) {
      sheet.body.append(el("path", {d: pathOfBox(view.x(inches(i * spanFt) - side / 2), view.y(head), view.x(inches(i * spanFt) + side / 2), view.y(foot)), class: "line-seen"}));
    }
  }
  person(sheet, view, Math.min(70, wide * 0.1), 0);
  cars(sheet, view, result, parked, -below);
  strings(sheet, view, {wide, high, goodFt, two: daylight?.input.opposite !== undefined, textPx, foot: -below, parked, spanIn: inches(spanFt)});
  scaleBar(sheet, [view.x(0), heightPx - 12], view.scale);
  return sheet.svg;
}

interface Run {
  readonly from: number;
  to: number;
  readonly kind: (typeof DAYLIGHT_CLASSES)[number];
}

/** Stretches of one class of daylight over the floor, in from the first window. */
function runsOf({daylight, design}: Evaluation): Run[] {
  if (!daylight) return [];
  const half = inches(daylight.input.depthFt / daylight.result.points.length / 2);
  const runs: Run[] = [];
  for (const {distanceFt, factorPercent} of daylight.result.points) {
    const kind = classOf(factorPercent);
    const last = runs.at(-1);
    if (last?.kind === kind) last.to = inches(distanceFt) + half;
    else runs.push({from: inches(distanceFt) - half, to: inches(distanceFt) + half, kind});
  }
  const end = inches(design.bay.spanFt * design.bay.baysAcross);
  return runs.filter(({from}) => from < end);
}

/** Stalls and aisle of each module, as outlines on the ground. */
function cars(sheet: Sheet, view: View, {design}: Evaluation, {modules, stallLengthIn, aisleIn}: ParkedBelow, ground: number): void {
  const spanIn = inches(design.bay.spanFt);
  for (let i = 0; i < Math.min(modules, design.bay.baysAcross); i++) {
    const left = spanIn * i + (spanIn - 2 * stallLengthIn - aisleIn) / 2;
    for (const x of [left, left + stallLengthIn + aisleIn]) {
      sheet.body.append(el("path", {d: carPath(view, x + 10, stallLengthIn - 20, ground), class: "furniture", "data-part": "car"}));
      line(sheet.body, "thin", [view.at(x, ground), view.at(x, ground + 20)]);
      line(sheet.body, "thin", [view.at(x + stallLengthIn, ground), view.at(x + stallLengthIn, ground + 20)]);
    }
  }
}

/** A car seen from its side, as an outline of a length on the ground. */
function carPath(view: View, x: number, long: number, ground: number): string {
  const shape = [[0, 12], [0, 32], [0.06, 36], [0.25, 38], [0.36, 57], [0.72, 57], [0.86, 38], [1, 34], [1, 12]] as const;
  return `${shape.map(([along, up], i) => `${i ? "L" : "M"}${view.x(x + along * long).toFixed(1)} ${view.y(ground + up).toFixed(1)}`).join("")}Z`;
}

function strings(sheet: Sheet, view: View, {wide, high, goodFt, two, textPx, foot, parked, spanIn}: {readonly wide: number; readonly high: number; readonly goodFt: number; readonly two: boolean; readonly textPx: number; readonly foot: number; readonly parked: ParkedBelow; readonly spanIn: number}): void {
  const base = view.y(foot) + 8;
  const {stallLengthIn: stall, aisleIn: aisle} = parked;
  const left = (spanIn - 2 * stall - aisle) / 2;
  const stops = (at: readonly number[], edge: number) => at.map((x) => ({at: view.x(x), edge}));
  const good = inches(goodFt);
  if (parked.modules > 0 && aisle * view.scale > 44) {
    chain(sheet, {axis: "x", outward: 1, line: base + 6, stops: stops([left, left + stall, left + stall + aisle, left + 2 * stall + aisle], base), texts: [{value: feetAndInches(stall), name: "stall"}, {value: feetAndInches(aisle), name: "aisle"}, {value: feetAndInches(stall), name: "stall"}]});
  } else if (good > 0 && good * view.scale > 30 && good < wide) {
    chain(sheet, {axis: "x", outward: 1, line: base + 6, stops: stops(two ? [0, good, wide - good, wide] : [0, good], base), texts: two ? [{value: feetAndInches(good), name: "good light"}, null, {value: feetAndInches(good), name: "good light"}] : [{value: feetAndInches(good), name: "good light"}]});
  }
  chain(sheet, {axis: "x", outward: 1, line: base + 16 + chainDepth("x", [{value: "0", name: "stall"}], textPx), stops: stops([0, wide], base), texts: [{value: feetAndInches(wide), name: "wide, center to center"}]});
  chain(sheet, {axis: "y", outward: 1, line: view.x(view.world.x1) + 10, stops: [0, high].map((y) => ({at: view.y(y), edge: view.x(view.world.x1)})), texts: [{value: feetAndInches(high), name: "story"}]});
}
