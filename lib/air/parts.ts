import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import type {StoryStack} from "../story/stack.js";
import {USUAL_CLEARANCE, stemGapIn} from "./ductRoom.js";
import type {AirResult} from "./result.js";
import {feedersAbove} from "./services.js";
import {stemLines, type StemSpace} from "./spaces.js";
import {UNDER_GIRDER_JOINT_IN, girdersBetween} from "./crossings.js";
import type {SizedDuct} from "./sizing.js";
import type {Trunk} from "./trunk.js";

/** What a part is: ducts with their insulation, the open space of a return between stems, and the structure around them. */
export type PartKind =
  | "main" | "return main" | "feeder" | "return feeder" | "collar" | "riser" | "return riser" | "return space"
  | "stem" | "flange" | "edge beam" | "ledge" | "girder" | "column";

/** A box in space, in: along and across the building from the first corner of its lines of bearings, and above the finished floor. */
export interface AirPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly x0In: number;
  readonly x1In: number;
  readonly y0In: number;
  readonly y1In: number;
  readonly z0In: number;
  readonly z1In: number;
  /** Passes through the girder's web, by an opening that its engineer must allow. */
  readonly opening?: boolean;
}

/** Name under which all drawings highlight a kind of part. */
export const PART_NAMES: Readonly<Record<PartKind, string>> = {
  "main": "main", "return main": "return-main", "feeder": "branch", "return feeder": "return-branch", "collar": "main", "riser": "riser", "return riser": "return-riser",
  "return space": "return-branch", "stem": "deck", "flange": "deck", "edge beam": "beam", "ledge": "ledge", "girder": "girder", "column": "column",
};

/** A feeder ends short of the beam at the far end of its bay, in: its outlet turns down there (our choice). */
const SHORT_IN = 12;

type Range = readonly [from: number, to: number];

/** What parts are made from; an evaluation of a design is one that has its air. */
export interface AirModel {
  readonly design: Design;
  readonly shape: Shape;
  readonly story: StoryStack;
  readonly air: AirResult;
}

/**
 * Every trunk, feeder, collar and riser of one main as boxes, ducts with their insulation. Drawings and the test of
 * collisions read this one list. Camber is neglected: the deck is taken as level.
 */
export function airParts(model: AirModel): AirPart[] {
  return [...mains(model), ...risers(model), ...feeders(model)];
}

/** Levels of what hangs below the deck, finished floor up, in. */
export function airLevels({design, shape, story}: Omit<AirModel, "air">): {readonly soffit: number; readonly main: Range; readonly feeder: Range} {
  const {services} = design;
  const soffit = story.clearUnderDeckIn;
  const top = soffit - USUAL_CLEARANCE.hangerIn;
  const above = feedersAbove(design, shape);
  const mainTop = above ? top - services.branchDepthIn : top;
  const feeder: Range = shape.family === "double tee" ? [soffit, soffit + services.branchDepthIn] : [top - services.branchDepthIn, top];
  return {soffit, main: [mainTop - services.mainDepthIn, mainTop], feeder};
}

const box = (id: string, kind: PartKind, [x0In, x1In]: Range, [y0In, y1In]: Range, [z0In, z1In]: Range): AirPart => ({id, kind, x0In, x1In, y0In, y1In, z0In, z1In});

function aroundRange(centerIn: number, widthIn: number): Range {
  return [centerIn - widthIn / 2, centerIn + widthIn / 2];
}

/** Places along the building that risers take. */
function riserRanges({air: {plan}}: AirModel): Range[] {
  return plan.risers.map(({space, alongIn}) => aroundRange(space.centerIn, alongIn));
}

/** Main and return duct from riser to the last feeder, cut where a riser stands in their line. */
function mains(model: AirModel): AirPart[] {
  const {design, air: {plan}} = model;
  const {trunk, supply, returns} = plan;
  const {main} = airLevels(model);
  const run = (kind: "main" | "return main", spaces: readonly StemSpace[], widthIn: number, y: Range): AirPart[] => {
    const risers = riserRanges(model);
    const ends = spaces.flatMap(({centerIn}) => aroundRange(centerIn, widthIn));
    const places = [...risers.flat(), ...ends];
    let stretches: Range[] = [[Math.min(...places), Math.max(...places)]];
    for (const [from, to] of risers) stretches = stretches.flatMap(([a, b]): Range[] => [[a, Math.min(b, from)], [Math.max(a, to), b]]);
    // Stryker disable next-line EqualityOperator: no stretch is a millionth of an inch long
    return stretches.filter(([a, b]) => b - a > 1e-6).map((x, i) => box(`${kind} ${i + 1}`, kind, x, y, main));
  };
  const found = run("main", supply, design.services.branchWidthIn, [trunk.supplyY0In, trunk.supplyY1In]);
  const back = plan.returnMain && backRange(trunk);
  return back ? [...found, ...run("return main", returns.length > 0 ? returns : supply, returnFeederWidthIn(model), back)] : found;
}

/** Place of the return beside the main, across the building; undefined where none is shown. */
function backRange({backY0In, backY1In}: Trunk): Range | undefined {
  // Stryker disable next-line ConditionalExpression,LogicalOperator: both are given, or neither
  return backY0In === undefined || backY1In === undefined ? undefined : [backY0In, backY1In];
}

/** Risers through the story, each the main turned up. */
function risers(model: AirModel): AirPart[] {
  const {story, air: {plan}} = model;
  const {trunk} = plan;
  const z: Range = [0, story.floorToFloorIn];
  // Stryker disable next-line ArithmeticOperator: twice an inch of insulation is as much as two over it
  const along = (space: StemSpace, {size}: SizedDuct) => aroundRange(space.centerIn, size.widthIn + 2 * USUAL_CLEARANCE.insulationIn);
  return plan.risers.flatMap(({space, supply, back}, i) => {
    const beside = back && backRange(trunk);
    return [
      box(`riser ${i + 1}`, "riser", along(space, supply), [trunk.supplyY0In, trunk.supplyY1In], z),
      ...(beside ? [box(`return riser ${i + 1}`, "return riser", along(space, back), beside, z)] : []),
    ];
  });
}

function returnFeederWidthIn({design, air: {backFeeder}}: AirModel): number {
  // Stryker disable next-line ArithmeticOperator: as above
  return backFeeder ? backFeeder.size.widthIn + 2 * USUAL_CLEARANCE.insulationIn : design.services.branchWidthIn;
}

/** Feeders and return feeders to both sides of the main, with the collars that join them to it. */
function feeders(model: AirModel): AirPart[] {
  const {design, air: {plan, backFeeder}} = model;
  const {trunk} = plan;
  const supplied = plan.supply.flatMap((space) => lines(model, "feeder", space, design.services.branchWidthIn, [trunk.supplyY0In, trunk.supplyY1In]));
  const back = backRange(trunk);
  const stems = design.air.way === "stems";
  if (!back || !(stems || backFeeder)) return supplied;
  return [...supplied, ...plan.returns.flatMap((space) => (stems ? openSpace(model, space, back) : lines(model, "return feeder", space, returnFeederWidthIn(model), back)))];
}

/** A feeder in its space: to each side that it serves, past the girders in its way, and its collar over the main. */
function lines(model: AirModel, kind: "feeder" | "return feeder", space: StemSpace, widthIn: number, over: Range): AirPart[] {
  const {shape, design, air: {plan}} = model;
  const tee = shape.family === "double tee";
  const {soffit, main, feeder} = airLevels(model);
  const x = aroundRange(space.centerIn, widthIn);
  const id = `${kind} ${space.index}`;
  const above = tee || feedersAbove(design, shape);
  const parts: AirPart[] = plan.sides.flatMap(({side}) => {
    // A feeder over its main begins at the collar; one beside it at the main's face.
    const start = side === "far" ? (above ? over[0] : over[1]) : over[0];
    const end = endOf(model, side);
    const run: Range = side === "far" ? [start, end] : [end, start];
    // A main that reaches as far as its feeders would leaves them no length there: its own outlets serve that side.
    return passing(model, `${id} ${side}`, kind, x, run, feeder);
  });
  return tee ? [box(`${id} collar`, "collar", x, over, [main[1], soffit]), ...parts] : parts;
}

/** Where the feeders of a side end, across the building. */
function endOf({air: {plan: {frame, zone}}}: AirModel, side: "near" | "far"): number {
  const girder = frame.girders.find(({line}) => line === zone.firstRow + (side === "far" ? zone.rows : 0));
  const faceIn = girder ? Math.max(girder.halfIn, frame.columnHalfIn) : frame.edgeFaceIn;
  return side === "far" ? zone.y1In - faceIn - SHORT_IN : zone.y0In + faceIn + SHORT_IN;
}

/** A run across the building, cut at each girder that it passes: over it, under its foot or through its web. */
function passing({design, story, air: {plan}}: AirModel, id: string, kind: "feeder" | "return feeder", x: Range, [from, to]: Range, z: Range): AirPart[] {
  // Girders are all alike, and so is how they are passed.
  const how = plan.crossings[0]?.how;
  // Stryker disable next-line ArrayDeclaration: what has no length is left out in the end
  const parts: AirPart[] = [];
  const deepIn = design.services.branchDepthIn;
  let at = from;
  // Stryker disable next-line EqualityOperator: no feeder begins or ends in a girder's middle
  for (const girder of plan.frame.girders.filter(({centerIn}) => centerIn > from && centerIn < to)) {
    const {line} = girder;
    if (how === "over the girder") continue;
    if (how === "through its web") {
      const [a, b] = [girder.centerIn - girder.webHalfIn, girder.centerIn + girder.webHalfIn];
      parts.push(box(`${id} to line ${line}`, kind, x, [at, a], z), {...box(`${id} through line ${line}`, kind, x, [a, b], z), opening: true});
      at = b;
      continue;
    }
    const [a, b] = [girder.centerIn - girder.halfIn - UNDER_GIRDER_JOINT_IN, girder.centerIn + girder.halfIn + UNDER_GIRDER_JOINT_IN];
    const top = story.clearUnderDeckIn - girder.belowIn - UNDER_GIRDER_JOINT_IN;
    const low: Range = [top - deepIn, top];
    // Down before the girder, along under its foot, and up behind it.
    parts.push(box(`${id} to line ${line}`, kind, x, [at, a - deepIn], z));
    parts.push(box(`${id} down at line ${line}`, kind, x, [a - deepIn, a], [low[0], z[1]]));
    parts.push(box(`${id} under line ${line}`, kind, x, [a, b], low));
    parts.push(box(`${id} up at line ${line}`, kind, x, [b, b + deepIn], [low[0], z[1]]));
    at = b + deepIn;
  }
  parts.push(box(`${id} to the end`, kind, x, [at, to], z));
  // Stryker disable next-line EqualityOperator: no piece is a millionth of an inch long
  return parts.filter(({y0In, y1In}) => y1In - y0In > 1e-6);
}

/** The space between two stems that the return takes, from the soffit to the flange, as wide as it is at the top; a girder's web ends it. */
function openSpace(model: AirModel, space: StemSpace, back: Range): AirPart[] {
  const {design, shape, air: {plan}} = model;
  const {soffit, main} = airLevels(model);
  const {depthIn = 0, flangeIn = 0} = shape.dimensions;
  const [from, to] = [endOf(model, "near"), endOf(model, "far")];
  const webs = girdersBetween(plan.frame, plan.zone).filter(({beside}) => beside);
  const stops = [from, ...webs.flatMap(({centerIn, webHalfIn}) => [centerIn - webHalfIn, centerIn + webHalfIn]), to];
  return [
    ...Array.from({length: stops.length / 2}, (_, i) =>
      box(`return space ${space.index} ${i + 1}`, "return space", aroundRange(space.centerIn, space.topIn), [stops[2 * i] as number, stops[2 * i + 1] as number], [soffit, soffit + depthIn - flangeIn])),
    box(`return space ${space.index} collar`, "collar", aroundRange(space.centerIn, Math.min(space.footIn, design.services.branchWidthIn)), back, [main[1], soffit]),
  ];
}

/** The structure around one main as boxes: stems and flange, edge beams with their ledges, girders and columns. */
export function structureParts(model: AirModel): AirPart[] {
  const {design, story, air: {plan: {frame, zone}}} = model;
  const {soffit, feeder} = airLevels(model);
  const topIn = story.floorToFloorIn - story.finishIn;
  const {edgeBeam} = design;
  const lengthIn = Math.min(frame.lengthIn, zone.lengthIn + 240);
  const x: Range = [0, lengthIn];
  const mirrored = (range: Range): Range => [frame.widthIn - range[1], frame.widthIn - range[0]];
  const web: Range = [frame.edgeCenterIn - edgeBeam.webWidthIn / 2, frame.edgeWebFaceIn];
  const edges = [["first", (range: Range) => range], ["last", mirrored]] as const;
  const beams = edges.flatMap(([name, on]) => [
    box(`${name} edge beam`, "edge beam", x, on(web), [soffit - story.ledgeDepthIn, edgeBeam.kind === "below" ? soffit : topIn]),
    ...(edgeBeam.kind === "ledge" ? [box(`${name} ledge`, "ledge", x, on([frame.edgeWebFaceIn, frame.ledgeFaceIn]), [soffit - story.ledgeDepthIn, soffit])] : []),
  ]);
  const girders = frame.girders.flatMap(({line, centerIn, halfIn, webHalfIn, belowIn, beside}) => [
    box(`girder ${line}`, "girder", x, aroundRange(centerIn, 2 * halfIn), [soffit - belowIn, soffit]),
    ...(beside ? [box(`girder ${line} web`, "girder", x, aroundRange(centerIn, 2 * webHalfIn), [soffit, topIn])] : []),
  ]);
  const lines = [frame.edgeCenterIn, ...frame.girders.map(({centerIn}) => centerIn), frame.widthIn - frame.edgeCenterIn];
  const columns = frame.columnsAlongIn.filter((at) => at <= lengthIn + 1e-6).flatMap((at, i) =>
    lines.map((centerIn, j) => box(`column ${i + 1}.${j + 1}`, "column", aroundRange(at, 2 * frame.columnHalfIn), aroundRange(centerIn, 2 * frame.columnHalfIn), [0, topIn])));
  return [...beams, ...girders, ...columns, ...deckParts(model, x, feeder[1])];
}

/** Stems as wide as they are at the top of a feeder, and above it as under the flange; the flange, and a flat deck as a whole. */
function deckParts({design, shape, story, air: {plan: {frame}}}: AirModel, x: Range, feederTopIn: number): AirPart[] {
  const soffit = story.clearUnderDeckIn;
  const topIn = story.floorToFloorIn - story.finishIn;
  const y: Range = [0, frame.widthIn];
  if (shape.family !== "double tee") return [box("deck", "flange", x, y, [soffit, topIn])];
  const {depthIn = 0, flangeIn = 0, stemSpacingIn = 0} = shape.dimensions;
  const undersideIn = depthIn - flangeIn;
  const splitIn = Math.min(undersideIn, feederTopIn - soffit);
  const widthAt = (heightIn: number) => stemSpacingIn - stemGapIn(shape, "between stems", heightIn);
  const stems = stemLines(design, shape).filter(({centerIn}) => centerIn < x[1]).flatMap(({centerIn}, i) => [
    box(`stem ${i + 1} foot`, "stem", aroundRange(centerIn, widthAt(splitIn)), y, [soffit, soffit + splitIn]),
    box(`stem ${i + 1} head`, "stem", aroundRange(centerIn, widthAt(undersideIn)), y, [soffit + splitIn, soffit + undersideIn]),
  ]);
  // Only risers pass the flange, each by an opening in it; drawings show it, and no duct reaches up to it.
  // Stryker disable next-line EqualityOperator: no stem is a millionth of an inch high
  return [box("flange", "flange", x, y, [soffit + undersideIn, topIn]), ...stems.filter(({z0In, z1In}) => z1In - z0In > 1e-6)];
}
