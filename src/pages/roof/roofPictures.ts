import type {Evaluation} from "../../lib/evaluate.js";
import {placedStrands} from "../../lib/prestress/layout.js";
import {riseAtIn} from "../../lib/roof/fallPlan.js";
import type {RoofResult} from "../../lib/roof/roof.js";
import type {PondingState} from "../../lib/roof/ponding.js";
import type {BuildUpOptions} from "./buildUp.js";
import type {RoofAcrossOptions} from "./roofAcross.js";
import type {RoofPlanOptions} from "./roofPlan.js";

type Bare<T> = Omit<T, "widthPx">;

/** The roof across the building, in the long term, with what its blocked drains hold. */
export function acrossPicture({design}: Evaluation, {plan, layers, member, ponding}: RoofResult): Bare<RoofAcrossOptions> {
  const {surface, blocked} = ponding.states.at(-1) as PondingState;
  const tapered = design.roof.drainage === "taper";
  const bays = surface.map((bay, b) => bay.map(({atFt, heightIn}, i) => {
    const water = blocked.bays[b];
    // On a taper the deck lies level but for its camber, and the fall is in the layers.
    const fallIn = tapered ? riseAtIn(plan, atFt) : 0;
    const surfaceIn = heightIn + layers.buildUpIn;
    return {atFt, deckIn: heightIn - fallIn, surfaceIn, waterIn: surfaceIn + (water?.depthIn[i] ?? 0)};
  }));
  return {
    bays, spanFt: design.bay.spanFt, deckDepthIn: member.compression.depthIn, buildUpIn: layers.buildUpIn, riseIn: plan.riseIn,
    drainsFt: plan.lines.filter(({drains}) => drains).map(({atFt}) => atFt), partsFt: plan.lines.filter(({drains}) => !drains).map(({atFt}) => atFt),
    parapetIn: design.walls.parapetIn, parapetThicknessIn: design.walls.parapetThicknessIn,
  };
}

export function planPicture({design}: Evaluation, {plan, member}: RoofResult): Bare<RoofPlanOptions> {
  return {
    lengthFt: plan.lengthFt, widthFt: plan.widthFt, spanFt: design.bay.spanFt, beamSpanFt: design.bay.beamSpanFt, memberWidthFt: member.widthFt,
    lines: plan.lines, drainsPerLine: plan.drainsPerLine,
  };
}

export function buildUpPicture({design}: Evaluation, {member}: RoofResult): Bare<BuildUpOptions> {
  return {
    shape: member.shape, strands: placedStrands(member.shape, member.layout, 0.5), toppingIn: design.roof.toppingIn,
    layers: design.roof.layers.filter(({thicknessIn}) => thicknessIn > 0).map(({name, thicknessIn}) => ({name, thicknessIn})),
  };
}
