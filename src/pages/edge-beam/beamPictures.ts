import {alongPointLoads, uniformDiagrams} from "../../lib/beams/diagrams.js";
import {stemsFrom} from "../../lib/edgeBeam/demand.js";
import {columnLineToBeamEndIn} from "../../lib/beams/beamEnds.js";
import {standsOnBeam, stemNeedsIn} from "../../lib/beams/stemRowCheck.js";
import {nearestStem, stemWidthIn, stemsOfBays, teeRow} from "../../lib/beams/stemRow.js";
import {CONNECTION_INSET_IN} from "../../lib/edgeBeam/twist.js";
import type {StemBeam} from "../../lib/beams/stemLoads.js";
import {feetAndInches, kipFt} from "../../lib/units.js";
import type {Evaluation} from "../../lib/evaluate.js";
import type {EndCoupleOptions} from "./endCouple.js";
import type {LedgePunchOptions} from "./ledgePunch.js";
import type {StemDiagramOptions} from "./stemDiagram.js";
import type {StemRowPlanOptions} from "./stemRowPlan.js";
import {beamPicture} from "../../components/shared/pictures.js";

/** The beam under its stems where the tees fall, or with the first stem at a place that the reader tries. */
export function stemPicture({design, member, edgeBeam}: Evaluation, firstStemFt: number | undefined): {picture: Omit<StemDiagramOptions, "widthPx">; stems: StemBeam} {
  const {demand, loads, spanFt} = edgeBeam;
  const stems = (firstStemFt === undefined ? undefined : stemsFrom(design, member, edgeBeam, loads, firstStemFt)) ?? demand.bending.stems;
  const endKipFt = kipFt(stems.uniform.torsionKipIn);
  const even = {...uniformDiagrams(loads.factoredPlf, spanFt), torsionKipFt: [{share: 0, value: endKipFt}, {share: 1, value: -endKipFt}]};
  return {stems, picture: {spanFt, stems: stems.beam.points, ...alongPointLoads(stems.diagrams), even}};
}

/** The ledge with the stems nearest to the beam's end; undefined where no stem stands on a ledge. */
export function punchPicture({design, member, edgeBeam}: Evaluation): Omit<LedgePunchOptions, "widthPx"> | undefined {
  const {ledge, demand} = edgeBeam;
  const [interior, end] = (["interior", "end"] as const).map((place) => ledge?.punching.find((one) => one.place === place));
  if (!ledge || !interior || !end) return undefined;
  const {padWidthIn, padThicknessIn, ledgeDepthIn} = design.edgeBeam;
  return {
    ledgeDepthIn, padWidthIn, padThicknessIn, stemWidthIn: stemWidthIn(member),
    endDistanceIn: end.ledge.endDistanceIn ?? 0, spacingIn: demand.spacingIn,
    loadKip: ledge.loadKip, endKip: end.punching.designKip, interiorKip: interior.punching.designKip, barSpacingIn: ledge.bars.spacingIn,
  };
}

/** The beam's end with what rolls it and what holds it; undefined where the cover leaves no room for its stirrups. */
export function couplePicture(result: Evaluation): Omit<EndCoupleOptions, "widthPx"> | undefined {
  const {edgeBeam} = result;
  const {twist} = edgeBeam;
  if (!twist) return undefined;
  const lowIn = Math.min(CONNECTION_INSET_IN, (edgeBeam.depthIn - twist.leverIn) / 2);
  return {
    ...beamPicture(result), eccentricityIn: edgeBeam.eccentricityIn,
    reactionKip: edgeBeam.demand.reactionKip, forceKip: Math.abs(twist.rotation.topKip), connectionsIn: [lowIn, lowIn + twist.leverIn],
  };
}

/** Bays of a row that are drawn at most. */
const MOST_BAYS = 5;

/** Where the stems stand on the edge beams of the row: each bay that differs, the nearest stem's among them; undefined for planks. */
export function stemRowPicture({design, member, edgeBeam}: Evaluation): Omit<StemRowPlanOptions, "widthPx"> | undefined {
  const row = teeRow(design, member);
  const nearest = row && nearestStem(row);
  if (!row || !nearest) return undefined;
  const all = stemsOfBays(row);
  const {webWidthIn, ledgeProjectionIn, jointGapIn} = design.edgeBeam;
  const shown = [...all.filter(({bay}) => bay === nearest.bay), ...all.filter(({bay}) => bay !== nearest.bay)].slice(0, MOST_BAYS);
  return {
    spanFt: row.spanFt, columnSideIn: design.column.sideIn, beamEndIn: columnLineToBeamEndIn(design), webWidthIn,
    ledgeIn: edgeBeam.kind === "ledge" ? ledgeProjectionIn : 0, stemWidthIn: stemWidthIn(member),
    stemEndIn: {ledge: webWidthIn / 2 + jointGapIn, pockets: webWidthIn / 2 - ledgeProjectionIn + jointGapIn, below: -webWidthIn / 2 + jointGapIn}[edgeBeam.kind],
    bays: shown.sort((one, other) => one.bay - other.bay),
    nearest, neededIn: stemNeedsIn(design, member),
  };
}

/** What the picture of the row shows. */
export function stemRowFinding({nearest, bays, neededIn}: Pick<StemRowPlanOptions, "nearest" | "bays" | "neededIn">): string {
  if (!standsOnBeam(nearest.fromLineIn, neededIn)) return `In bay ${nearest.bay} a stem ${feetAndInches(nearest.fromLineIn)} from the column line has no beam under it`;
  return bays.length === 1
    ? "Every bay has its stems in the same places, clear of the columns"
    : "The stems land differently in each bay, and all of them stay clear of the columns";
}
