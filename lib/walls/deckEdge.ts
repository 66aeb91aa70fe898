import {WALL_CONCRETE_PCF} from "../beams/deckEnds.js";
import {onStems} from "../beams/stemRow.js";
import {deckPieces, type DeckPieces} from "../deck/pieces.js";
import type {Design} from "../design/design.js";
import {countsShortSides} from "../design/used.js";
import type {Member} from "../member/member.js";
import {IN2_PER_FT2, inches} from "../units.js";
import {EDGE_JOINT_IN, type WallPlanes} from "./planes.js";

/** The deck where the building ends: at its first piece's outer edge, and at its last. */
export interface DeckEdge {
  readonly pieces: DeckPieces;
  /** Strips cast in place between the outermost pieces and the walls of the short sides, in; 0 where the pieces reach them. */
  readonly firstStripIn: number;
  readonly lastStripIn: number;
  /** Thickness of the strip: flange and topping of a tee, all of a plank. */
  readonly thicknessIn: number;
  /** Flange of a whole tee from its stem's face out to its edge, in; 0 for a plank, which has none. */
  readonly flangeIn: number;
  /** From the outermost stem's face, or a plank's edge, to the wider strip's edge, in. */
  readonly reachIn: number;
  /** Weight of the strip at the first piece and at the last, plf of the short side. */
  readonly firstPlf: number;
  readonly lastPlf: number;
}

/**
 * The deck's edge at the short sides. Pieces lie between the end column lines; a wall that passes outside the columns
 * leaves a gap, which a strip cast in place closes up to a soft joint. It is carried by the deck alone: the wall moves by
 * itself. What whole pieces do not cover is a last piece cut narrower, or part of the last strip.
 */
export function deckEdge(design: Design, {member, toppingIn}: {readonly member: Member; readonly toppingIn: number}, planes: Pick<WallPlanes, "endInnerIn">): DeckEdge {
  const pieces = deckPieces(design, member);
  const gapIn = countsShortSides(design) ? planes.endInnerIn - EDGE_JOINT_IN : 0;
  const lastStripIn = gapIn + inches(pieces.stripFt);
  const {dimensions} = member.shape;
  const stems = onStems(member);
  const thicknessIn = (stems ? dimensions["flangeIn"] as number : member.shape.depthIn) + toppingIn;
  const flangeIn = stems ? (inches(member.widthFt) - (dimensions["stemSpacingIn"] as number) - (dimensions["stemTopIn"] as number)) / 2 : 0;
  const plf = (widthIn: number) => (WALL_CONCRETE_PCF * widthIn * thicknessIn) / IN2_PER_FT2;
  return {
    pieces, firstStripIn: gapIn, lastStripIn, thicknessIn, flangeIn, reachIn: flangeIn + lastStripIn,
    firstPlf: plf(gapIn), lastPlf: plf(lastStripIn),
  };
}
