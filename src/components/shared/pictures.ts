import {placedBeamStrands} from "../../lib/beams/prestressedBeam.js";
import {peopleWork, type Evaluation} from "../../lib/evaluate.js";
import {USUAL_CLEARANCE} from "../../lib/air/ductRoom.js";
import {storyParts} from "../../lib/story/parts.js";
import type {BeamSectionOptions} from "../drawings/beamSection.js";
import type {BayPlanOptions} from "../drawings/bayPlan.js";
import type {ServicePicture} from "../drawings/serviceParts.js";
import type {StorySectionOptions} from "../drawings/storyParts.js";

/** What the drawings of the edge beam need, from a design's results. */
export function beamPicture({design, edgeBeam, member}: Evaluation): Omit<BeamSectionOptions, "widthPx"> {
  const {edgeBeam: input} = design;
  const {bars, shape, seat, strands, twist} = edgeBeam;
  return {
    kind: edgeBeam.kind, shape,
    webWidthIn: input.webWidthIn, depthIn: edgeBeam.depthIn, ledgeDepthIn: input.ledgeDepthIn,
    ledgeProjectionIn: input.ledgeProjectionIn, upstandIn: input.upstandIn,
    deck: {
      depthIn: member.shape.depthIn, toppingIn: design.deck.toppingIn, family: member.shape.family,
      ...(member.shape.dimensions["flangeIn"] === undefined ? {} : {flangeIn: member.shape.dimensions["flangeIn"]}),
    },
    jointGapIn: input.jointGapIn, bearingLengthIn: Math.min(input.padLengthIn, Math.max(1, seat.nominalIn)), padThicknessIn: input.padThicknessIn,
    bars: {count: bars.count, diameterIn: bars.bar.diameterIn, yIn: bars.centroidIn, rows: Math.max(1, bars.rows.length)},
    barName: steelWords(edgeBeam),
    ...(strands ? {strands: placedBeamStrands(shape, strands.member.layout)} : {}),
    sideBars: twist?.sideBars ?? 0,
    coverIn: input.coverIn,
    finishIn: design.story.finishIn,
  };
}

/** The beam's bottom steel in few words: "4 #9", "8 strands", "6 strands + 2 #9". */
export function steelWords({bars, strands}: Evaluation["edgeBeam"]): string {
  const barWords = `${bars.count} ${bars.bar.size}`;
  if (!strands) return barWords;
  return `${strands.member.layout.count} strands${bars.count > 0 ? ` + ${barWords}` : ""}`;
}

/** Whether people sit at desks here: not where only cars or goods stand. */
export function hasDesks({loads}: Evaluation): boolean {
  return peopleWork(loads);
}

/** Names of a story's parts in a string of dimensions. */
const PART_NAMES = {finish: "finish", topping: "topping", deck: "deck", ledge: "ledge", plenum: "plenum", room: "room"} as const;

/** What the drawing of the story needs. */
export function storyPicture(result: Evaluation): Omit<StorySectionOptions, "widthPx"> {
  const {design, member, story, topping} = result;
  const {edgeBeam, bay} = design;
  return {
    own: true, furnished: hasDesks(result),
    floorToFloorIn: story.floorToFloorIn, finishIn: story.finishIn,
    deckDepthIn: member.shape.depthIn, toppingIn: design.deck.toppingIn, deckFamily: member.shape.family,
    ...(member.shape.dimensions["flangeIn"] === undefined ? {} : {flangeIn: member.shape.dimensions["flangeIn"]}),
    ...(topping ? {toppingAt: (fromEndIn: number) => thicknessAt(topping.points, fromEndIn / (12 * bay.spanFt))} : {}),
    ledgeDepthIn: story.ledgeDepthIn, ledgeProjectionIn: edgeBeam.ledgeProjectionIn, beamWebIn: edgeBeam.webWidthIn, beamKind: edgeBeam.kind,
    upstandIn: edgeBeam.upstandIn,
    ceiling: design.story.ceiling, ceilingHeightIn: story.ceilingHeightIn, ceilingDropIn: design.story.ceilingDropIn,
    glass: {sillIn: story.glassSillIn, headIn: Math.max(story.glassSillIn, story.glassHeadIn)},
    opening: {sillIn: story.sillIn, headIn: Math.max(story.sillIn, story.headIn)},
    frameIn: story.frameIn, revealIn: design.daylight.revealIn,
    services: servicePicture(result),
    parts: storyParts(design, story).map(({part, heightIn}) => ({name: part === "ledge" && edgeBeam.kind === "below" ? "beam" : PART_NAMES[part], part, heightIn})),
    spanFt: bay.spanFt,
  };
}

/** Ducts, pipes and lights as the drawings of a story show them. */
export function servicePicture({design, services: {ducts, sprinklerIn, lightIn}}: Evaluation): ServicePicture {
  const {mainWidthIn, mainDepthIn, branchWidthIn, branchDepthIn} = design.services;
  return {
    hangerIn: USUAL_CLEARANCE.hangerIn, sprinklerIn, lightIn,
    ...(ducts ? {
      main: {widthIn: mainWidthIn, depthIn: mainDepthIn, alongLedge: ducts.mainPlace === "along the ledge", elsewhere: ducts.mainPlace === "down the middle" || ducts.mainPlace === "across the floor"},
      ...(ducts.casing ? {casing: {kind: ducts.casing.kind, widthIn: ducts.casing.widthIn, dropIn: ducts.casing.dropIn}} : {}),
      branch: {widthIn: branchWidthIn, depthIn: branchDepthIn, betweenStems: ducts.branchesBetweenStems},
    } : {}),
  };
}

/** Thickness of a topping at a share of the span, by straight lines between its points. */
function thicknessAt(points: readonly {readonly share: number; readonly thicknessIn: number}[], share: number): number {
  const last = points.length - 1;
  const at = Math.max(0, Math.min(1, share)) * last;
  const i = Math.min(last - 1, Math.floor(at));
  const [from, to] = [points[i]?.thicknessIn ?? 0, points[i + 1]?.thicknessIn ?? 0];
  return from + (to - from) * (at - i);
}

/** What the plan of the floor needs, without areas. */
export function planPicture({design, member}: Evaluation): Omit<BayPlanOptions, "widthPx"> {
  const {spanFt, beamSpanFt, baysAlong, baysAcross} = design.bay;
  return {spanFt, beamSpanFt, baysAlong, baysAcross, memberWidthFt: member.widthFt, columnSideIn: design.column.sideIn};
}
