import {hasHigherPart} from "../../lib/design/used.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {deepestDrift} from "../../lib/snow/deepest.js";
import {higherSide} from "../../lib/snow/roofDrifts.js";
import {roofLoadOn} from "../../lib/snow/roofLoads.js";
import {ROOF_SIDES} from "../../lib/snow/surface.js";
import type {DriftSectionOptions} from "./driftSection.js";
import type {SnowPlanOptions} from "./snowPlan.js";
import type {MemberLoad} from "./memberLoadChart.js";

/** Thickness of the wall of a higher part as it is drawn, in. */
const HIGHER_WALL_IN = 8;

/** What the cut through the deepest drift needs; undefined where none counts. */
export function sectionPicture({design, member, roofLoads}: Evaluation): Omit<DriftSectionOptions, "widthPx"> | undefined {
  const deepest = deepestDrift(roofLoads);
  if (!deepest) return undefined;
  const {drift, side} = deepest;
  return {
    drift, other: roofLoads.surface.drifts.find((one) => one.side === side && one.drift !== drift)?.drift,
    balancedFt: roofLoads.snow.depthFt, balancedPsf: roofLoads.snow.flatPsf, deckIn: Math.min(16, member.shape.depthIn),
    wallIn: drift.kind === "parapet" ? design.walls.parapetThicknessIn : HIGHER_WALL_IN,
  };
}

/** What the plan of the roof needs. */
export function planPicture({design, roofLoads}: Evaluation): Omit<SnowPlanOptions, "widthPx"> {
  const {surface, snow} = roofLoads;
  const beside = hasHigherPart(design) ? higherSide(design) : undefined;
  return {
    lengthFt: surface.lengthFt, widthFt: surface.widthFt, spanFt: design.bay.spanFt, beamSpanFt: design.bay.beamSpanFt,
    balancedPsf: snow.flatPsf, drifts: surface.drifts,
    higher: beside && {side: beside, gapFt: design.snow.higherApartFt},
    parapets: ROOF_SIDES.filter((side) => roofLoads.wallsFt[side] > 0 && (side !== beside || design.snow.higherApartFt > 0)),
    member: roofLoadOn(roofLoads, "deck member").snow.worst.tributary,
  };
}

/** What the chart of the deck member's load needs; undefined for what is no span. */
export function memberLoad({roofLoads}: Evaluation): MemberLoad | undefined {
  const {snow, loads} = roofLoadOn(roofLoads, "deck member");
  const {span, momentPsf, shearPsf} = snow.worst;
  if (!span) return undefined;
  return {
    span, balancedPsf: roofLoads.snow.flatPsf, momentPsf, shearPsf,
    others: [
      ...(loads.L > 0 ? [{name: "live load of its use", psf: loads.L}] : [{name: "roof live load", psf: loads.Lr}]),
      {name: "rain", psf: loads.R},
      ...(roofLoads.snow.minimumPsf > roofLoads.snow.flatPsf ? [{name: "minimum snow", psf: roofLoads.snow.minimumPsf}] : []),
    ],
  };
}
