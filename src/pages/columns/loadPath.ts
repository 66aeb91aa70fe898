import {decimals, feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {person} from "../../components/drawings/people.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";

/** The beam at the column in section, inches: a web, and on one side, both or none a ledge. */
export interface PathBeam {
  readonly webWidthIn: number;
  readonly depthIn: number;
  /** Sides with a ledge: -1 left, 1 right. */
  readonly ledges: readonly (1 | -1)[];
  readonly ledgeProjectionIn: number;
  readonly ledgeDepthIn: number;
  /** The beam's soffit below the top of the structural floor. */
  readonly belowFloorIn: number;
}

/** What {@link loadPath} draws, inches; heights from the top of the footing. */
export interface LoadPathOptions extends DrawingOptions {
  /** Column in the middle of two bays, or at the edge with one bay at its right. */
  readonly inside: boolean;
  readonly sideIn: number;
  /** Levels from the top: name, and the column's factored load below it, kip. */
  readonly levels: readonly {readonly name: string; readonly roof: boolean; readonly kip: number}[];
  readonly storyIn: number;
  readonly spanIn: number;
  readonly deckDepthIn: number;
  readonly beam: PathBeam;
  readonly corbelDepthIn: number;
  /** Undefined where no single footing is an answer. */
  readonly footing: {readonly sideIn: number; readonly thicknessIn: number} | undefined;
}

/** Place of the square foot along half the deck's span. */
const SQUARE_AT = 0.62;
const SOIL_IN = 44;

/** A slice of the building from roof to footing at one column, with the way of one square foot's load. True to scale. */
export function loadPath(options: LoadPathOptions): SVGSVGElement {
  const {inside, levels, storyIn, spanIn, footing, sideIn, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const halfIn = spanIn / 2;
  const footIn = footing?.sideIn ?? 2 * sideIn;
  const thickIn = footing?.thicknessIn ?? 24;
  const top = levels.length * storyIn;
  const above = options.beam.depthIn - options.beam.belowFloorIn;
  const heights = levels.map((_, i) => i * storyIn).concat(top);
  const heightTexts = levels.map(() => ({value: feetAndInches(storyIn), name: levels.length < 4 ? "story" : ""}));
  const {view, heightPx} = fitView({
    world: {x0: inside ? -halfIn : Math.min(-footIn / 2, -sideIn) - 24, y0: -thickIn - SOIL_IN, x1: halfIn, y1: top + Math.max(18, above + 6)}, widthPx,
    mostHeightPx: options.mostHeightPx ?? Math.max(520, widthPx * 0.9),
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1} : {left: 12, right: 30 + chainDepth("y", heightTexts, textPx), top: 12, bottom: 96},
  });
  const sheet = createSheet({
    view, kind: "path", widthPx, heightPx, bare, label: options.label ?? `Section of the building at the ${inside ? "interior" : "edge"} column, with the path of the load from deck to ground`,
    description: options.description ?? `The load on a square foot of deck travels along the deck to the beam, through a corbel into the column, down ${levels.length} stories to the footing, and into the ground. The column carries ${decimals(levels.at(-1)?.kip ?? 0)} kip at its foot.`,
  });
  drawGround(sheet, view, footIn, thickIn, footing !== undefined);
  sheet.body.append(el("path", {d: box(view, -sideIn / 2, 0, sideIn / 2, top - options.beam.belowFloorIn), class: "concrete-plant is-seen", "data-part": "column"}));
  heights.slice(1).forEach((floorIn) => drawLevel(sheet, view, options, floorIn));
  person(sheet, view, (inside ? -0.42 : 0.36) * spanIn, 0);
  drawPath(sheet, view, options, thickIn, footIn);
  if (bare) return sheet.svg;
  for (const edge of inside ? [view.world.x0, halfIn] : [halfIn]) {
    heights.slice(1).forEach((floorIn) => breakLine(sheet, view.x(edge), view.y(floorIn) - 6, view.y(floorIn - options.deckDepthIn) + 6));
  }
  drawNumbers(sheet, view, options, heights);
  chain(sheet, {axis: "y", outward: 1, line: view.x(halfIn) + 18, stops: heights.map((height) => ({at: view.y(height), edge: view.x(height === 0 ? footIn / 2 : halfIn) + 4})), texts: heightTexts});
  if (footing) {
    chain(sheet, {axis: "x", outward: 1, line: view.y(view.world.y0) + 10, stops: [-footIn / 2, footIn / 2].map((x) => ({at: view.x(x), edge: view.y(-thickIn)})),
      texts: [{value: feetAndInches(footIn), name: "footing", part: "footing"}]});
  }
  scaleBar(sheet, [Math.max(10, view.x(view.world.x0)), heightPx - 12], view.scale);
  return sheet.svg;
}

function box(view: View, x0: number, y0: number, x1: number, y1: number): string {
  return pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
}

function drawGround(sheet: Sheet, view: View, footIn: number, thickIn: number, founded: boolean): void {
  const {x0, x1, y0} = view.world;
  sheet.body.append(el("path", {d: box(view, x0, y0, x1, 0), class: "soil", "data-part": "soil"}));
  line(sheet.body, "seen", [view.at(x0, 0), view.at(x1, 0)], {class: "ground-line"});
  if (founded) concrete(sheet, "site", box(view, -footIn / 2, -thickIn, footIn / 2, 0), {"data-part": "footing"});
}

/** One level: deck on each side that has one, the beam's section before the column, and the corbel below it. */
function drawLevel(sheet: Sheet, view: View, {inside, spanIn, deckDepthIn, beam, corbelDepthIn, sideIn}: LoadPathOptions, floorIn: number): void {
  const soffit = floorIn - beam.belowFloorIn;
  const start = beam.ledges.length > 0 ? beam.webWidthIn / 2 : 0;
  for (const side of inside ? [-1, 1] : [1]) {
    const [a, b] = [side * start, (side * spanIn) / 2];
    concrete(sheet, "plant", box(view, Math.min(a, b), floorIn - deckDepthIn, Math.max(a, b), floorIn), {"data-part": "deck"});
  }
  sheet.body.append(el("path", {d: box(view, -sideIn / 2 - 0.5, soffit - corbelDepthIn, sideIn / 2 + 0.5, soffit), class: "concrete-plant is-seen", "data-part": "corbel"}));
  const web = beam.webWidthIn / 2;
  const [left, right] = [beam.ledges.includes(-1) ? beam.ledgeProjectionIn : 0, beam.ledges.includes(1) ? beam.ledgeProjectionIn : 0];
  const ledge = soffit + beam.ledgeDepthIn;
  const outline = beam.ledges.length > 0
    ? [[-web - left, soffit], [web + right, soffit], [web + right, ledge], [web, ledge], [web, soffit + beam.depthIn], [-web, soffit + beam.depthIn], [-web, ledge], [-web - left, ledge]]
    : [[-web, soffit], [web, soffit], [web, soffit + beam.depthIn], [-web, soffit + beam.depthIn]];
  concrete(sheet, "plant", pathThrough(outline.map(([x, y]) => view.at(x as number, y as number)), true), {"data-part": "beam"});
}

/** The path of the load of a square foot on the highest floor below the roof, part by part. */
function drawPath(sheet: Sheet, view: View, {levels, storyIn, spanIn, deckDepthIn, beam, corbelDepthIn, sideIn, footing}: LoadPathOptions, thickIn: number, footIn: number): void {
  const roofs = levels.filter((level) => level.roof).length;
  const floorIn = (levels.length - roofs) * storyIn;
  const soffit = floorIn - beam.belowFloorIn;
  const from = (SQUARE_AT * spanIn) / 2;
  const seatX = beam.ledges.includes(1) ? beam.webWidthIn / 2 + beam.ledgeProjectionIn / 2 : beam.webWidthIn / 4;
  const middle = floorIn - deckDepthIn / 2;
  const seatY = floorIn - deckDepthIn;
  const beamY = beam.ledges.length > 0 ? soffit + beam.ledgeDepthIn / 2 : soffit + beam.depthIn / 2;
  // The line keeps thinner than what it runs through, in a tall building too.
  const strokePx = Math.max(1.2, Math.min(3.2, 4 * view.scale));
  const segment = (part: string, points: readonly PaperPoint[]) =>
    sheet.lines.append(el("path", {d: pathThrough(points), class: "load-path", "data-part": part, style: `stroke-width: ${strokePx.toFixed(2)}`}));
  sheet.lines.append(el("path", {d: box(view, from - 6, floorIn, from + 6, floorIn + 5), class: "load-patch", "data-part": "deck"}));
  segment("deck", [view.at(from, floorIn), view.at(from, middle), view.at(seatX, middle), view.at(seatX, seatY)]);
  segment("beam", [view.at(seatX, seatY), view.at(seatX, beamY), view.at(0, beamY), view.at(0, soffit)]);
  segment("corbel", [view.at(0, soffit), view.at(0, soffit - corbelDepthIn)]);
  segment("column", [view.at(0, soffit - corbelDepthIn), view.at(0, 0)]);
  if (!footing) return;
  segment("footing", [view.at(0, 0), view.at(0, -thickIn * 0.4)]);
  for (const share of [-0.8, -0.4, 0, 0.4, 0.8]) {
    const x = (share * footIn) / 2;
    segment("footing", [view.at(0, -thickIn * 0.4), view.at(x, -thickIn)]);
    arrow(sheet, view.at(x, -thickIn), view.at(x, -thickIn - Math.min(SOIL_IN * 0.6, Math.max(18, sideIn))), strokePx);
  }
}

function arrow(sheet: Sheet, from: PaperPoint, to: PaperPoint, strokePx: number): void {
  const [x, y] = to;
  const head = 1.3 * strokePx;
  sheet.lines.append(el("path", {
    d: `${pathThrough([from, to])}M${x - head} ${y - 1.4 * head}L${x} ${y}L${x + head} ${y - 1.4 * head}`, class: "load-path", "data-part": "soil", style: `stroke-width: ${strokePx.toFixed(2)}`,
  }));
}

/** Level names on the deck, and the column's load beside it in each story. */
function drawNumbers(sheet: Sheet, view: View, {inside, levels, storyIn, sideIn, spanIn, deckDepthIn}: LoadPathOptions, heights: readonly number[]): void {
  const size = sheet.textPx;
  levels.forEach(({name, kip}, i) => {
    const floorIn = heights[levels.length - i] as number;
    const room = storyIn * view.scaleY;
    const x = inside ? -spanIn * 0.25 : spanIn * 0.38;
    if (room > 3.2 * size) text(sheet.notes, sheet, [view.x(x), view.y(floorIn - deckDepthIn) + size], name, {kind: "small"});
    text(sheet.notes, sheet, [view.x(sideIn / 2) + 8, view.y(floorIn - storyIn * 0.72)], `${decimals(kip)} kip`, {kind: "value", anchor: "start", part: "column", className: "on-load"});
  });
}
