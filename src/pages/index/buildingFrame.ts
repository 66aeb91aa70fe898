import {jointsFt} from "../../lib/deck/pieces.js";
import {feet, feetAndInches} from "../../lib/units.js";
import {textWidth} from "../../components/drawings/placement.js";
import {person} from "../../components/drawings/people.js";
import {createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import {fitView, viewAt} from "../../components/drawings/view.js";

/** What {@link buildingFrame} draws: the grid of columns, the stories, and what stands at the floors' edges. */
export interface FrameOptions extends DrawingOptions {
  /** Span of the deck, and distance of columns along the edge beams. */
  readonly spanFt: number;
  readonly beamSpanFt: number;
  readonly baysAlong: number;
  readonly baysAcross: number;
  /** Floors that the columns carry; a roof lies a story above the highest. */
  readonly floors: number;
  readonly storyHeightFt: number;
  readonly memberWidthFt: number;
  readonly deckDepthIn: number;
  readonly edgeBeamDepthIn: number;
}

/** A place in the building, ft: x along the edge beams and y along the deck from the corner in front, z above the ground. */
type Place = readonly [x: number, y: number, z: number];

const [ACROSS, RISE] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];

/**
 * The building's frame seen from above a corner, in isometric projection: lengths along all three edges are to one scale.
 * Floors cover what lies behind them; the bay in front is marked on the highest floor, and the roof is left open.
 */
export function buildingFrame(options: FrameOptions): SVGSVGElement {
  const {spanFt, beamSpanFt, baysAlong, baysAcross, floors, storyHeightFt, widthPx} = options;
  const [lengthFt, breadthFt, stories] = [beamSpanFt * baysAlong, spanFt * baysAcross, floors + 1];
  const textPx = textSize(widthPx);
  const dimensions = [times(baysAlong, beamSpanFt), times(baysAcross, spanFt), times(stories, storyHeightFt)] as const;
  const side = (value: string) => Math.max(textWidth(value, textPx), textWidth("in height", textPx)) + 26;
  const {view, heightPx} = fitView({
    world: {x0: -breadthFt * ACROSS, y0: 0, x1: lengthFt * ACROSS, y1: (lengthFt + breadthFt) * RISE + stories * storyHeightFt},
    widthPx, mostHeightPx: options.mostHeightPx ?? 420, margins: {top: 8, right: side(dimensions[2]), bottom: 24 + 2.3 * textPx, left: 16},
  });
  const sheet = createSheet({
    view, kind: "frame", widthPx, heightPx,
    label: options.label ?? `The building's frame: ${baysAlong} by ${baysAcross} bays of ${feetAndInches(beamSpanFt * 12)} by ${feetAndInches(spanFt * 12)}, ${floors} ${floors === 1 ? "floor" : "floors"} and a roof, ${feetAndInches(storyHeightFt * 12)} apart`,
    description: options.description ?? "Seen from above a corner; the bay in front is marked.",
  });
  const at = ([x, y, z]: Place): PaperPoint => view.at((x - y) * ACROSS, (x + y) * RISE + z);
  const plan = (z: number, x1 = lengthFt, y1 = breadthFt): PaperPoint[] => [at([0, 0, z]), at([x1, 0, z]), at([x1, y1, z]), at([0, y1, z])];

  sheet.body.append(el("path", {d: pathThrough(plan(0), true), class: "soil", "data-part": "ground"}));
  for (let story = 1; story <= floors; story++) {
    columns(sheet, options, at, story);
    floor(sheet, options, at, plan, story * storyHeightFt);
  }
  const top = floors * storyHeightFt;
  for (const x of jointsFt(lengthFt, options.memberWidthFt)) line(sheet.body, "thin", [at([x, 0, top]), at([x, breadthFt, top])], {class: "joint", "data-part": "joint"});
  for (let row = 1; row < baysAcross; row++) line(sheet.body, "seen", [at([0, row * spanFt, top]), at([lengthFt, row * spanFt, top])], {"data-part": "girder"});
  sheet.body.append(el("path", {d: pathThrough(plan(top, beamSpanFt, spanFt), true), class: "highlight", "data-part": "bay"}));
  const [standX, standY] = at([beamSpanFt / 2, spanFt / 2, top]);
  person(sheet, viewAt({x0: 0, y0: 0, x1: 1, y1: 0}, standX, standY, view.scale / 12), 0, 0);
  columns(sheet, options, at, stories);
  line(sheet.body, "thin", [...plan(top + storyHeightFt), at([0, 0, top + storyHeightFt])], {"data-part": "roof"});

  edge(sheet, at, (i) => [i * beamSpanFt, 0, 0], baysAlong, [0.5, 0.87], [dimensions[0], "along the edge"], "start");
  edge(sheet, at, (i) => [0, i * spanFt, 0], baysAcross, [-0.5, 0.87], [dimensions[1], "across"], "end");
  edge(sheet, at, (i) => [lengthFt, 0, i * storyHeightFt], stories, [1, 0], [dimensions[2], "in height"], "start");
  return sheet.svg;
}

/** So many equal lengths: `5 × 30'-0"`. */
function times(count: number, lengthFt: number): string {
  return `${count} \u00d7 ${feetAndInches(lengthFt * 12, 2, true)}`;
}

/** The columns of a story, the first being the lowest, all of them in one path. */
function columns(sheet: Sheet, {spanFt, beamSpanFt, baysAlong, baysAcross, storyHeightFt, floors}: FrameOptions, at: (place: Place) => PaperPoint, story: number): void {
  const lines: string[] = [];
  for (let i = 0; i <= baysAlong; i++) {
    for (let j = 0; j <= baysAcross; j++) {
      lines.push(pathThrough([at([i * beamSpanFt, j * spanFt, (story - 1) * storyHeightFt]), at([i * beamSpanFt, j * spanFt, story * storyHeightFt])]));
    }
  }
  sheet.body.append(el("path", {d: lines.join(""), class: story > floors ? "line-thin" : "frame-column", "data-part": "column"}));
}

/** A floor with the two edges that are seen: the edge beam to the right, the deck's last member to the left. */
function floor(sheet: Sheet, options: FrameOptions, at: (place: Place) => PaperPoint, plan: (z: number) => PaperPoint[], z: number): void {
  const {spanFt, beamSpanFt, baysAlong, baysAcross, deckDepthIn, edgeBeamDepthIn} = options;
  const band = (x: number, y: number, depthIn: number) => [at([0, 0, z]), at([x, y, z]), at([x, y, z - feet(depthIn)]), at([0, 0, z - feet(depthIn)])];
  const piece = (points: PaperPoint[], part: string, name: string) => sheet.body.append(el("path", {d: pathThrough(points, true), class: name, "data-part": part}));
  piece(plan(z), "deck", "deck-ground frame-floor");
  piece(band(0, spanFt * baysAcross, deckDepthIn), "deck", "concrete-plant frame-floor");
  piece(band(beamSpanFt * baysAlong, 0, edgeBeamDepthIn), "edge-beam", "concrete-plant frame-floor");
}

/** A dimension along an edge, off it by some pixels in a direction, with a tick at each bay and its text at the middle. */
function edge(
  sheet: Sheet, at: (place: Place) => PaperPoint, place: (bay: number) => Place, bays: number, [dx, dy]: PaperPoint, words: readonly [string, string], anchor: "start" | "end",
): void {
  const AWAY_PX = 12;
  const stops = Array.from({length: bays + 1}, (_, i): PaperPoint => {
    const [x, y] = at(place(i));
    return [x + dx * AWAY_PX, y + dy * AWAY_PX];
  });
  const [first, last] = [stops[0], stops.at(-1)] as [PaperPoint, PaperPoint];
  line(sheet.lines, "thin", [first, last]);
  for (const [x, y] of stops) line(sheet.lines, "thin", [[x - 3.5, y + 3.5], [x + 3.5, y - 3.5]], {class: "tick"});
  const [middleX, middleY] = [(first[0] + last[0]) / 2, (first[1] + last[1]) / 2];
  text(sheet.notes, sheet, [middleX + dx * 12, middleY + dy * 16], words, {anchor});
}
