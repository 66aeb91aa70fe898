import {peopleWork, type Evaluation} from "../../lib/evaluate.js";
import type {BeamSectionOptions} from "../drawings/beamSection.js";
import type {BayPlanOptions} from "../drawings/bayPlan.js";
import type {StoreySectionOptions} from "../drawings/storeySection.js";

/** What the drawings of the edge beam need, from a design's results. */
export function beamPicture({design, edgeBeam, member}: Evaluation): Omit<BeamSectionOptions, "widthPx"> {
  const {edgeBeam: input} = design;
  const {bars, shape, seat} = edgeBeam;
  return {
    shape,
    webWidthIn: input.webWidthIn, depthIn: edgeBeam.depthIn, ledgeDepthIn: input.ledgeDepthIn,
    ledgeProjectionIn: input.ledgeProjectionIn, upstandIn: input.upstandIn,
    deck: {
      depthIn: member.shape.depthIn, toppingIn: design.deck.toppingIn, family: member.shape.family,
      ...(member.shape.dimensions["flangeIn"] === undefined ? {} : {flangeIn: member.shape.dimensions["flangeIn"]}),
    },
    jointGapIn: input.jointGapIn, bearingLengthIn: Math.min(seat.neededIn, Math.max(1, seat.nominalIn)),
    bars: {count: bars.count, diameterIn: bars.bar.diameterIn, yIn: bars.centroidIn, rows: bars.rows.length},
    barName: `${bars.count} ${bars.bar.size}`,
    coverIn: input.coverIn,
    finishIn: design.storey.finishIn,
  };
}

/** Whether people sit at desks here: not where only cars or goods stand. */
export function hasDesks({loads}: Evaluation): boolean {
  return peopleWork(loads);
}

/** What the drawing of the storey needs. */
export function storeyPicture(result: Evaluation): Omit<StoreySectionOptions, "widthPx"> {
  const {design, member, storey} = result;
  const {edgeBeam, bay} = design;
  return {
    furnished: hasDesks(result),
    floorToFloorIn: storey.floorToFloorIn, finishIn: storey.finishIn,
    deckDepthIn: member.shape.depthIn, toppingIn: design.deck.toppingIn, deckFamily: member.shape.family,
    ...(member.shape.dimensions["flangeIn"] === undefined ? {} : {flangeIn: member.shape.dimensions["flangeIn"]}),
    ledgeDepthIn: edgeBeam.ledgeDepthIn, ledgeProjectionIn: edgeBeam.ledgeProjectionIn, beamWebIn: edgeBeam.webWidthIn,
    upstandIn: edgeBeam.upstandIn,
    ceiling: design.storey.ceiling, ceilingHeightIn: storey.ceilingHeightIn, ceilingDropIn: design.storey.ceilingDropIn,
    glass: {sillIn: storey.sillIn, headIn: Math.max(storey.sillIn, storey.headIn)},
    spanFt: bay.spanFt,
  };
}

/** What the plan of the floor needs, without areas. */
export function planPicture({design, member}: Evaluation): Omit<BayPlanOptions, "widthPx"> {
  const {spanFt, beamSpanFt, baysAlong, baysAcross} = design.bay;
  return {spanFt, beamSpanFt, baysAlong, baysAcross, memberWidthFt: member.widthFt};
}
