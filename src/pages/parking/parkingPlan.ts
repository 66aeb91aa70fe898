import type {Design} from "../../lib/design/design.js";
import type {LevelPlan, Stall} from "../../lib/parking/level.js";
import type {PlanBox} from "../../lib/parking/site.js";
import {VEHICLES} from "../../lib/parking/vehicles.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth, type DimensionText} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {createSheet, line, text, textSize, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";
import {carPlan} from "./carShapes.js";

/** What the plan shows. */
export interface ParkingPlanOptions {
  readonly design: Design;
  readonly level: LevelPlan;
  readonly stalls: readonly Stall[];
  readonly widthPx: number;
}

const CAR = VEHICLES.find(({name}) => name === "sedan") as (typeof VEHICLES)[number];
/** Of four stalls in a row the last stays empty, so that its lines are seen. */
const EMPTY_EVERY = 4;
/** Bays along the rows, and modules across, that are shown at most. */
const [BAYS, MODULES] = [3, 2];

const written = (lengthIn: number): string => feetAndInches(lengthIn, 2);

/** Plan of a few bays of a level of parking: stalls, cars, aisle and columns, true to scale. */
export function parkingPlan(options: ParkingPlanOptions): SVGSVGElement {
  const {design, level, stalls, widthPx} = options;
  const textPx = textSize(widthPx);
  const shown = shownPart(options);
  // Columns of the edge stand in line with the edge beam, and may be wider.
  const beam = Math.max(design.edgeBeam.webWidthIn, (design.edgeBeam.webWidthIn + design.column.sideIn) / 2);
  const {faces} = level.site;
  const world = {
    x0: shown.x0 - design.column.sideIn, y0: shown.y0 - (shown.y0 <= faces.y0 ? beam : 0),
    x1: shown.x1 + (shown.x1 >= faces.x1 ? design.column.sideIn : 0), y1: shown.y1 + (shown.y1 >= faces.y1 ? beam : 0),
  };
  const across = design.parking.rows === "across";
  const {lines, module} = strings(options, shown);
  const margins = {
    top: across ? 20 + chainDepth("x", module.texts, textPx) + 8 : 14, right: across ? 26 : 24 + chainDepth("y", module.texts, textPx),
    bottom: 30 + chainDepth("x", [{value: "", name: "bay"}], textPx) * (across ? 1 : 2) + 38, left: 26 + chainDepth("y", [{value: "000'-00\""}], textPx),
  };
  const {view, heightPx} = fitView({world, widthPx, margins, mostHeightPx: Math.max(460, widthPx * 0.85)});
  const sheet = createSheet({
    view, kind: "parking", widthPx, heightPx,
    label: `Plan of ${shown.bays} bays of parking`,
    description: `${stalls.filter(({kind}) => kind !== "access aisle").length} stalls of ${written(design.parking.stallWidthIn)} by ${written(design.parking.stallLengthIn)} on the lowest level; the plan shows a part of it, with columns ${written(design.column.sideIn)} square.`,
  });
  const clip = sheet.clip(pathOfBox(view.x(world.x0), view.y(world.y1), view.x(world.x1), view.y(world.y0)));
  const inside: Sheet = {...sheet, body: el("g", {"clip-path": clip})};
  sheet.body.append(inside.body);
  drawFloor(inside, view, options);
  drawRamp(inside, view, options);
  drawStalls(inside, view, stalls.filter(({corners}) => corners.some(([x, y]) => x > shown.x0 && x < shown.x1 && y > shown.y0 && y < shown.y1)));
  for (const {x0, y0, x1, y1} of level.site.columns) {
    if (x0 < shown.x1 && y0 < shown.y1) inside.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), class: "column", "data-part": "column"}));
  }
  if (shown.goesOn) breakLine(sheet, view.x(shown.x1), view.y(world.y1), view.y(world.y0));
  drawStrings(sheet, view, options, {lines, module});
  scaleBar(sheet, [view.x(world.x0), heightPx - 12], view.scale);
  return sheet.svg;
}

interface Shown extends PlanBox {
  readonly bays: number;
  readonly goesOn: boolean;
}

/** The part of the level that is shown: from its first corner, a few bays along the rows, and a module or two across. */
function shownPart({design, level: {site, modules, plan}}: ParkingPlanOptions): Shown {
  const across = design.parking.rows === "across";
  const [alongLines, acrossLines] = across ? [site.linesY, site.linesX] : [site.linesX, site.linesY];
  const bays = Math.min(BAYS, alongLines.length - 1);
  const last = modules[Math.min(MODULES, modules.length) - 1];
  const acrossTo = last?.toIn ?? acrossLines.at(-1) as number;
  const half = design.column.sideIn / 2;
  const alongTo = Math.min(plan.alongTo, (alongLines[bays] as number) + half);
  const along = {from: plan.alongFrom, to: alongTo};
  const beyond = {from: plan.wallFrom, to: acrossTo + (acrossTo < plan.wallTo ? half : 0)};
  return across
    ? {x0: beyond.from, x1: beyond.to, y0: along.from, y1: along.to, bays, goesOn: beyond.to < plan.wallTo - 1}
    : {x0: along.from, x1: along.to, y0: beyond.from, y1: beyond.to, bays, goesOn: along.to < plan.alongTo - 1};
}

function drawFloor(sheet: Sheet, view: View, {design, level: {site}}: ParkingPlanOptions): void {
  const {faces} = site;
  const box = (x0: number, y0: number, x1: number, y1: number, className: string, part?: string) =>
    sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), class: className, "data-part": part}));
  const {x1, y1} = view.world;
  box(faces.x0, faces.y0, Math.min(x1, faces.x1), Math.min(y1, faces.y1), "deck-ground");
  // The edge beam runs along both long sides.
  const beam = design.edgeBeam.webWidthIn;
  box(faces.x0, faces.y0 - beam, Math.min(x1, faces.x1), faces.y0, "concrete-plant is-cut", "edge-beam");
  if (y1 > faces.y1) box(faces.x0, faces.y1, Math.min(x1, faces.x1), faces.y1 + beam, "concrete-plant is-cut", "edge-beam");
  const half = design.girder.webWidthIn / 2;
  for (const y of site.linesY.slice(1, -1)) {
    for (const side of [-half, half]) line(sheet.body, "hidden", [view.at(faces.x0, y + side), view.at(Math.min(x1, faces.x1), y + side)], {"data-part": "girder"});
  }
}

/** A ramp that stands in place of a row, with an arrow up it. */
function drawRamp(sheet: Sheet, view: View, {design, level: {modules, geometry}}: ParkingPlanOptions): void {
  const across = design.parking.rows === "across";
  const at = (along: number, out: number): PaperPoint => (across ? view.at(out, along) : view.at(along, out));
  for (const {headIn, out, obstacles} of modules.flatMap(({rows}) => rows)) {
    for (const {fromIn, toIn} of obstacles.filter(({doors}) => !doors)) {
      const [low, high] = [headIn, headIn + out * geometry.depthIn];
      const middle = (low + high) / 2;
      sheet.body.append(el("path", {d: pathThrough([at(fromIn, low), at(toIn, low), at(toIn, high), at(fromIn, high)], true), class: "room", "data-part": "ramp"}));
      line(sheet.body, "thin", [at(fromIn + 60, middle), at(toIn - 60, middle)]);
      line(sheet.body, "thin", [at(toIn - 120, middle - 40), at(toIn - 60, middle), at(toIn - 120, middle + 40)]);
      text(sheet.body, sheet, at(Math.min((fromIn + toIn) / 2, fromIn + 360), middle), "ramp", {kind: "small", plate: true});
    }
  }
}

function drawStalls(sheet: Sheet, view: View, stalls: readonly Stall[]): void {
  stalls.forEach(({kind, corners}, i) => {
    const points = corners.map(([x, y]) => view.at(x, y));
    const hatched = kind === "access aisle";
    sheet.body.append(el("path", {d: pathThrough(points, true), class: "stall", style: hatched ? `fill: ${sheet.pattern("tributary")}` : undefined, "data-part": hatched ? "access-aisle" : "stall"}));
    const [a, b, c, d] = corners as [PaperPoint, PaperPoint, PaperPoint, PaperPoint];
    if (hatched || (kind === "car" && i % EMPTY_EVERY === EMPTY_EVERY - 1)) return;
    const middle = (p: PaperPoint, q: PaperPoint): PaperPoint => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
    const [head, mouth] = [middle(a, b), middle(c, d)];
    const length = Math.hypot(mouth[0] - head[0], mouth[1] - head[1]);
    const along = (inches: number): PaperPoint => [head[0] + ((mouth[0] - head[0]) * inches) / length, head[1] + ((mouth[1] - head[1]) * inches) / length];
    const clear = Math.max(0, (length - CAR.lengthIn) / 2);
    carPlan(sheet, view, along(clear), along(Math.min(length, clear + CAR.lengthIn)), CAR.widthIn);
    if (kind === "car") return;
    text(sheet.body, sheet, view.at(...along(length / 2)), kind === "van" ? "V" : "A", {kind: "small", plate: true});
  });
}

interface String {
  readonly stopsIn: readonly number[];
  readonly texts: readonly (DimensionText | null)[];
}

/** The strings: columns along the rows, and what of the first module is row and aisle. */
function strings({design, level: {site, modules}}: ParkingPlanOptions, shown: Shown): {readonly lines: String; readonly module: String} {
  const across = design.parking.rows === "across";
  const lines = (across ? site.linesY : site.linesX).slice(0, shown.bays + 1);
  const gaps = (stops: readonly number[], names: readonly (string | undefined)[] = []): (DimensionText | null)[] => stops.slice(1).map((stop, i) => {
    const name = names[i];
    return {value: written(stop - (stops[i] as number)), ...(name === undefined ? {} : {name})};
  });
  const [module] = modules;
  if (!module) return {lines: {stopsIn: lines, texts: gaps(lines)}, module: {stopsIn: [], texts: []}};
  const {setbackIn} = design.parking;
  const [first, second] = module.rows;
  const stops = [module.fromIn, ...(first && setbackIn > 0 ? [module.fromIn + setbackIn] : []), ...(first ? [module.aisle.fromIn] : []), ...(second ? [module.aisle.toIn] : []), ...(second && setbackIn > 0 ? [module.toIn - setbackIn] : []), module.toIn];
  const names = [...(first && setbackIn > 0 ? ["set back"] : []), ...(first ? ["stalls"] : []), "aisle", ...(second ? ["stalls"] : []), ...(second && setbackIn > 0 ? ["set back"] : [])];
  return {lines: {stopsIn: lines, texts: gaps(lines)}, module: {stopsIn: stops, texts: gaps(stops, names)}};
}

/** The stalls of the first row in the second bay, which no turn cuts short, at right angles along the edge; undefined where there are none. */
function stallsOfBay({design, level: {site, modules}, stalls}: ParkingPlanOptions): {readonly fromIn: number; readonly toIn: number; readonly name: string} | undefined {
  const [from, to] = [site.linesX[1], site.linesX[2]];
  const row = modules[0]?.rows[0];
  if (from === undefined || to === undefined || !row || !design.parking.angle.startsWith("90")) return undefined;
  const inBay = stalls.filter((one) => one.row === row && one.kind === "car").map(({corners}) => corners.map(([x]) => x))
    .filter((xs) => Math.min(...xs) >= from && Math.max(...xs) <= to);
  if (inBay.length === 0) return undefined;
  const [fromIn, toIn] = [Math.min(...inBay.flat()), Math.max(...inBay.flat())];
  return Math.abs(toIn - fromIn - inBay.length * design.parking.stallWidthIn) > 0.5 ? undefined : {fromIn, toIn, name: inBay.length === 1 ? "1 stall" : `${inBay.length} stalls`};
}

function drawStrings(sheet: Sheet, view: View, options: ParkingPlanOptions, {lines, module}: {readonly lines: String; readonly module: String}): void {
  const {design, level: {modules}} = options;
  const across = design.parking.rows === "across";
  const {x0, y0, x1, y1} = view.world;
  const whole = modules[0] && [modules[0].fromIn, modules[0].toIn];
  const moduleText = whole ? [{value: written((whole[1] as number) - (whole[0] as number)), name: "module"}] : [];
  const alongEdge = (at: number) => (across ? view.y(at) : view.x(at));
  const acrossAt = (at: number) => (across ? view.x(at) : view.y(at));
  // Along the rows below the plan, or at its left where rows run across; the module's parts on the other side, and its whole opposite.
  if (across) {
    chain(sheet, {axis: "y", outward: -1, line: view.x(x0) - 14, stops: lines.stopsIn.map((at) => ({at: alongEdge(at), edge: view.x(x0)})), texts: lines.texts});
    if (module.stopsIn.length > 0) chain(sheet, {axis: "x", outward: -1, line: view.y(y1) - 14, stops: module.stopsIn.map((at) => ({at: acrossAt(at), edge: view.y(y1)})), texts: module.texts});
    if (whole) chain(sheet, {axis: "x", outward: 1, line: view.y(y0) + 16, stops: whole.map((at) => ({at: acrossAt(at), edge: view.y(y0)})), texts: moduleText});
    return;
  }
  chain(sheet, {axis: "x", outward: 1, line: view.y(y0) + 16, stops: lines.stopsIn.map((at) => ({at: alongEdge(at), edge: view.y(y0)})), texts: lines.texts});
  const run = stallsOfBay(options);
  if (run) {
    const edge = view.y(y0) + 16 + chainDepth("x", lines.texts, sheet.textPx) + 2;
    chain(sheet, {axis: "x", outward: 1, line: edge + 10, stops: [run.fromIn, run.toIn].map((at) => ({at: view.x(at), edge})), texts: [{value: written(run.toIn - run.fromIn), name: run.name}]});
  }
  if (module.stopsIn.length > 0) chain(sheet, {axis: "y", outward: 1, line: view.x(x1) + 16, stops: module.stopsIn.map((at) => ({at: acrossAt(at), edge: view.x(x1) + 6})), texts: module.texts});
  if (whole) chain(sheet, {axis: "y", outward: -1, line: view.x(x0) - 14, stops: whole.map((at) => ({at: acrossAt(at), edge: view.x(x0)})), texts: moduleText});
}
