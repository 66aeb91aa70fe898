import {edgeBeamLeverIn} from "../beams/deckLoad.js";
import type {Design} from "../design/design.js";
import {inches} from "../units.js";

/** A girder on the line between two rows of bays, in from the first long side's line of bearings. */
export interface GirderLine {
  readonly line: number;
  readonly centerIn: number;
  /** Half of its width at the foot, where ledges project, and of its web. */
  readonly halfIn: number;
  readonly webHalfIn: number;
  /** What of it hangs below the deck, in. */
  readonly belowIn: number;
  /** Whether its web rises beside the deck, so that nothing passes over it between the stems. */
  readonly beside: boolean;
}

/**
 * What stands in the way of ducts across the building, in. 0 is the line of the deck's bearings on the first edge beam,
 * from which spans are counted; edge beam and columns lie mostly outside of it.
 */
export interface FramePlan {
  readonly widthIn: number;
  readonly lengthIn: number;
  /** Middle of edge beam and edge columns, outside the line of bearings: negative. */
  readonly edgeCenterIn: number;
  readonly edgeWebFaceIn: number;
  /** Innermost face of ledge, web and edge columns: ducts begin beyond it. */
  readonly edgeFaceIn: number;
  /** Innermost face of the ledge, or of the web where it has none. */
  readonly ledgeFaceIn: number;
  readonly columnHalfIn: number;
  readonly columnsAlongIn: readonly number[];
  readonly girders: readonly GirderLine[];
}

/** Beams and columns of a design's floor in plan, by their sizes as the design states them. */
export function framePlan({bay, edgeBeam, girder, column}: Pick<Design, "bay" | "edgeBeam" | "girder" | "column">): FramePlan {
  const edgeCenterIn = -edgeBeamLeverIn(edgeBeam);
  const edgeWebFaceIn = edgeCenterIn + edgeBeam.webWidthIn / 2;
  const ledgeFaceIn = edgeWebFaceIn + (edgeBeam.kind === "ledge" ? edgeBeam.ledgeProjectionIn : 0);
  const columnHalfIn = column.sideIn / 2;
  return {
    widthIn: inches(bay.spanFt * bay.baysAcross), lengthIn: inches(bay.beamSpanFt * bay.baysAlong),
    edgeCenterIn, edgeWebFaceIn, ledgeFaceIn, columnHalfIn,
    edgeFaceIn: Math.max(ledgeFaceIn, edgeCenterIn + columnHalfIn),
    columnsAlongIn: columnLinesIn(bay),
    girders: girderLines(bay, girder),
  };
}

function columnLinesIn({beamSpanFt, baysAlong}: Design["bay"]): number[] {
  const lines: number[] = [];
  for (let i = 0; i <= baysAlong; i++) lines.push(inches(i * beamSpanFt));
  return lines;
}

function girderLines({spanFt, baysAcross}: Design["bay"], {kind, webWidthIn, ledgeProjectionIn, ledgeDepthIn, depthIn}: Design["girder"]): GirderLine[] {
  const beside = kind === "inverted tee";
  const webHalfIn = webWidthIn / 2;
  const lines: GirderLine[] = [];
  for (let line = 1; line < baysAcross; line++) {
    lines.push({line, centerIn: inches(line * spanFt), halfIn: webHalfIn + (beside ? ledgeProjectionIn : 0), webHalfIn, belowIn: beside ? ledgeDepthIn : depthIn, beside});
  }
  return lines;
}

/** The clear strip of a row of bays between what bounds it, in. */
export function clearRow(frame: FramePlan, row: number): readonly [fromIn: number, toIn: number] {
  const face = ({halfIn}: GirderLine) => Math.max(halfIn, frame.columnHalfIn);
  const [before, after] = [frame.girders[row - 1], frame.girders[row]];
  return [before ? before.centerIn + face(before) : frame.edgeFaceIn, after ? after.centerIn - face(after) : frame.widthIn - frame.edgeFaceIn];
}
