import {decimals, feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "./dimension.js";
import {leader} from "./marks.js";
import {markScale} from "./oneScale.js";
import {spread, textWidth} from "./placement.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "./svg.js";
import {fitView, type View} from "./view.js";

/** What {@link elevation} draws. Heights are above the soffit, in; a share is a place along the span, 0 to 1. */
export interface ElevationOptions extends DrawingOptions {
  readonly spanFt: number;
  readonly depthIn: number;
  readonly toppingIn: number;
  /** Path of the strands' centroid, or of one strand. */
  readonly strandPath: readonly {share: number; heightIn: number}[];
  /** Upward camber at three times. */
  readonly camber?: readonly {share: number; releaseIn: number; erectionIn: number; longIn: number}[];
  /** Times that camber is drawn larger than the span; a fitting one is chosen if left out. */
  readonly exaggeration?: number;
}

/** Distance of the span's dimension below the soffit, px. */
const SPAN_LINE_PX = 32;

/** The member from the side with the path of its strands, and its camber beneath, exaggerated by a stated factor. */
export function elevation(options: ElevationOptions): SVGSVGElement {
  const {spanFt, depthIn, toppingIn, strandPath, camber = [], widthPx, bare = false} = options;
  const spanIn = spanFt * 12;
  const textPx = textSize(widthPx);
  const side = bare ? 1 : 16;
  const narrow = widthPx < 480;
  const trueScale = (widthPx - 2 * side) / spanIn;
  // On a narrow sheet a long member is a thin line: draw its heights larger, by a whole number, and say so.
  const heightFactor = bare ? 1 : Math.max(1, Math.min(6, Math.ceil(34 / ((depthIn + toppingIn) * trueScale))));
  const plan = camber.length && !bare ? planCamber(camber, trueScale, options.exaggeration) : undefined;
  const camberRoom = plan ? plan.abovePx + plan.belowPx + 3 * textPx : 0;
  const spanText = [{value: feetAndInches(spanIn), name: "span"}];
  const beneath = SPAN_LINE_PX + chainDepth("x", spanText, textPx) + 6;
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: spanIn, y1: depthIn + toppingIn}, widthPx, mostHeightPx: options.mostHeightPx ?? widthPx, heightFactor,
    margins: {left: side, right: side, top: bare ? 1 : 2.6 * textPx, bottom: bare ? 1 : beneath + camberRoom + (narrow && camber.length ? 2.6 : 1.5) * textPx},
  });
  const ends = `${decimals(strandPath[0]?.heightIn ?? 0, 1)} in above the soffit at the ends`;
  const sheet = createSheet({
    view, kind: "elevation", widthPx, heightPx, bare,
    label: options.label ?? `Elevation of a member that spans ${feetAndInches(spanIn)}`,
    description: options.description ?? `Strands are ${ends}. ${camber.length ? "Camber is exaggerated; the drawing says by how much." : ""}`,
  });
  drawMember(sheet, view, options);
  if (bare) return sheet.svg;
  if (heightFactor === 1) markScale(sheet, view);
  drawNotes(sheet, view, options);
  const supportY = view.y(0);
  for (const x of [0, spanIn]) support(sheet, view.x(x), supportY + 3);
  chain(sheet, {axis: "x", outward: 1, line: supportY + SPAN_LINE_PX, texts: spanText,
    stops: [0, spanIn].map((x) => ({at: view.x(x), edge: supportY + 14}))});
  const said = [heightFactor > 1 ? `Heights of the member drawn ${heightFactor} times larger than lengths.` : "Member true to scale."];
  if (plan) {
    drawCamber(sheet, view, camber, plan, supportY + beneath + textPx);
    said.push(`Camber drawn ${plan.factor} times larger.`);
  }
  const block = narrow ? said : [said.join(" ")];
  block.forEach((sentence, i) => text(sheet.notes, sheet, [view.x(0), heightPx - 9 - (block.length - 1 - i) * textPx * 1.15], sentence, {kind: "small", anchor: "start"}));
  return sheet.svg;
}

function drawMember(sheet: Sheet, view: View, {spanFt, depthIn, toppingIn, strandPath}: ElevationOptions): void {
  const spanIn = spanFt * 12;
  if (toppingIn > 0) concrete(sheet, "site", pathOfBox(view.x(0), view.y(depthIn + toppingIn), view.x(spanIn), view.y(depthIn)), {}, "seen");
  concrete(sheet, "plant", pathOfBox(view.x(0), view.y(depthIn), view.x(spanIn), view.y(0)), {}, "seen");
  const points = strandPath.map(({share, heightIn}) => view.at(share * spanIn, heightIn));
  sheet.body.append(el("path", {d: pathThrough(points), class: "strand-line", "stroke-dasharray": "9 4", "data-part": "strand"}));
}

function drawNotes(sheet: Sheet, view: View, {spanFt, strandPath}: ElevationOptions): void {
  const spanIn = spanFt * 12;
  const bends = strandPath.filter(({heightIn}, i) => i > 0 && i < strandPath.length - 1
    && Math.abs(slope(strandPath, i - 1) - slope(strandPath, i)) > 1e-6 && heightIn >= 0);
  bends.forEach(({share, heightIn}) => {
    const [x, y] = view.at(share * spanIn, heightIn);
    sheet.lines.append(el("path", {d: `M${x} ${y + 1}l-4 8h8Z`, class: "pad", "data-part": "hold-down"}));
  });
  const top = view.y(view.world.y1);
  const y = top - sheet.textPx * 1.1;
  const end = strandPath[0];
  const [low] = [...strandPath].sort((a, b) => Math.abs(a.share - 0.5) - Math.abs(b.share - 0.5));
  if (!end || !low) return;
  const name = (heightIn: number) => `strands ${feetAndInches(heightIn, 4)} up`;
  const first: PaperPoint = view.at(spanIn * 0.012, end.heightIn);
  leader(sheet, first, [first[0] + 12, y], `${name(end.heightIn)}`, {part: "strand"});
  const bend = bends[0];
  if (!bend) return;
  const place = view.at(low.share * spanIn, low.heightIn);
  leader(sheet, place, [place[0] + 12, y], `${name(low.heightIn)}`, {part: "strand"});
}

function slope(path: ElevationOptions["strandPath"], i: number): number {
  const [a, b] = [path[i], path[i + 1]];
  return a && b && b.share > a.share ? (b.heightIn - a.heightIn) / (b.share - a.share) : 0;
}

/** A support: a small triangle under the soffit with ground beneath it. */
export function support(sheet: Sheet, x: number, y: number): void {
  sheet.body.append(el("path", {d: `M${x} ${y}l-6 10h12Z`, class: "support"}));
  line(sheet.body, "seen", [[x - 10, y + 10], [x + 10, y + 10]]);
}

const FACTORS = [1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200];

/** The round factor by which something of a height is drawn so that it stays within a room, px. */
export function roundExaggeration(heightPx: number, roomPx: number): number {
  return FACTORS.filter((factor) => heightPx * factor <= roomPx).at(-1) ?? 1;
}

/** How a camber is drawn: the factor, and the room above and below the level line, px. */
interface CamberPlan {
  readonly factor: number;
  readonly abovePx: number;
  readonly belowPx: number;
}

const CAMBER_ROOM_PX = 84;

function planCamber(camber: NonNullable<ElevationOptions["camber"]>, scale: number, asked: number | undefined): CamberPlan {
  const values = camber.flatMap((point) => [point.releaseIn, point.erectionIn, point.longIn]);
  const most = Math.max(0, ...values) * scale;
  const least = Math.min(0, ...values) * scale;
  const factor = asked ?? roundExaggeration(Math.max(most - least, 0.01), CAMBER_ROOM_PX);
  return {factor, abovePx: most * factor, belowPx: -least * factor};
}

const TIMES = [
  {key: "releaseIn", name: "at release", kind: "release"},
  {key: "erectionIn", name: "at erection", kind: "erection"},
  {key: "longIn", name: "long term", kind: "long"},
] as const;

function drawCamber(sheet: Sheet, view: View, camber: NonNullable<ElevationOptions["camber"]>, {factor, abovePx, belowPx}: CamberPlan, topPx: number): void {
  const spanIn = view.world.x1;
  const base = topPx + abovePx;
  const up = (valueIn: number) => base - valueIn * view.scale * factor;
  line(sheet.lines, "center", [[view.x(0), base], [view.x(spanIn), base]]);
  text(sheet.notes, sheet, [view.x(0), base + sheet.textPx * 0.9], "level", {kind: "small", anchor: "start"});
  TIMES.forEach(({key, kind}) => {
    const points = camber.map((point): PaperPoint => [view.x(point.share * spanIn), up(point[key])]);
    sheet.lines.append(el("path", {d: pathThrough(points), class: `camber-${kind}`, "data-part": `camber-${kind}`}));
  });
  const middle = camber.reduce((best, point) => (Math.abs(point.share - 0.5) < Math.abs(best.share - 0.5) ? point : best));
  const order = TIMES.map((time) => ({...time, valueIn: middle[time.key], y: up(middle[time.key])})).sort((a, b) => a.y - b.y);
  const places = spread(order.map(({y}) => y), order.map(() => sheet.textPx * 1.2), topPx - sheet.textPx * 1.4, base + belowPx + sheet.textPx * 2, 1);
  // The names stand right of midspan, each led to its own curve.
  order.forEach(({name, kind, valueIn, y}, i) => {
    const x = view.x(spanIn * 0.5);
    const words = `${name}: ${decimals(valueIn, 2)} in`;
    const at: PaperPoint = [Math.max(x + 8, Math.min(x + 22, sheet.widthPx - textWidth(words, sheet.textPx) - 6)), places[i] as number];
    line(sheet.lines, "thin", [[x, y], at], {class: "led"});
    sheet.lines.append(el("circle", {cx: x, cy: y, r: 2.2, class: "leader-dot"}));
    text(sheet.notes, sheet, [at[0] + 4, at[1]], words, {kind: "name", anchor: "start", part: `camber-${kind}`, plate: true});
  });
}
