import {seatReachIn} from "../deck/criteria.js";
import type {Design} from "../design/design.js";
import {concrete, type Concrete} from "../materials/concrete.js";
import type {Member} from "../member/member.js";
import {lBeam, rectangularBeam} from "../sections/prismatic.js";
import type {Shape} from "../sections/shape.js";
import {edgeBeamLeverIn} from "../beams/deckLoad.js";
import {seat, type Seat} from "../beams/seat.js";

/** How an edge beam carries the deck: on a ledge at its side, in pockets of its web, or on its top. */
export type EdgeBeamKind = Design["edgeBeam"]["kind"];

/** The seat of the deck on the beam, with what all tolerances leave of it. */
export interface DeckSeat extends Seat {
  /** Seat that is left after all tolerances at once, in; may be negative. */
  readonly afterToleranceIn: number;
}

/** The edge beam's section and where the deck bears on it. */
export interface EdgeBeamSection {
  readonly kind: EdgeBeamKind;
  readonly shape: Shape;
  readonly concrete: Concrete;
  readonly depthIn: number;
  /** Deck member and topping, in. */
  readonly deckDepthIn: number;
  /** Part of the beam that hangs below the deck's underside, in: the ledge, the foot below the pockets, or all of it. */
  readonly belowDeckIn: number;
  /** Room for the deck on the beam, from where it may begin to the support's edge, in: ledge, pocket or top. */
  readonly reachIn: number;
  /** Width of the web at its narrowest, in: less the pockets. */
  readonly netWebIn: number;
  readonly seat: DeckSeat;
  /** Web's center line to the deck's load, and to the beam's own weight, in; positive toward the floor. */
  readonly eccentricityIn: number;
  readonly selfEccentricityIn: number;
}

/**
 * The section of the edge beam of a design. A ledge or a row of pockets lies at the deck's underside, so ledge (or foot),
 * deck and upstand make the depth; a beam wholly below the deck has the depth that it is given.
 *
 * In a spandrel with pockets the ledge's projection is the pocket's reach into the web, and its depth that of the foot
 * below the pockets. A deck on the beam's top sits on pads over the web's middle.
 *
 * @param belowDepthIn - depth of a beam below the deck, in
 * @param seat - {@link deckSeat}, where it is known
 * @throws InputError if a dimension cannot be
 */
export function edgeBeamSection(design: Design, member: Member, belowDepthIn = 24, seat = deckSeat(design, member)): EdgeBeamSection {
  const {edgeBeam: input} = design;
  const {kind, webWidthIn, ledgeProjectionIn, ledgeDepthIn} = input;
  const deckDepthIn = member.compression.depthIn;
  const depthIn = kind === "below" ? belowDepthIn : ledgeDepthIn + deckDepthIn + input.upstandIn;
  const shape = kind === "ledge"
    ? lBeam("edge beam", {webWidthIn, depthIn, ledgeProjectionIn, ledgeDepthIn})
    : rectangularBeam("edge beam", {widthIn: webWidthIn, depthIn});
  return {
    kind, shape, concrete: concrete("normalweight", input.strengthPsi), depthIn, deckDepthIn,
    belowDeckIn: kind === "below" ? depthIn : ledgeDepthIn,
    reachIn: seatReachIn(input),
    netWebIn: kind === "pockets" ? Math.max(0, webWidthIn - ledgeProjectionIn) : webWidthIn,
    seat,
    eccentricityIn: edgeBeamLeverIn(input),
    selfEccentricityIn: kind === "ledge"
      ? (ledgeProjectionIn * ledgeDepthIn * (webWidthIn + ledgeProjectionIn)) / (2 * shape.section.areaIn2) : 0,
  };
}

/**
 * The seat of the deck on an edge beam: of all that makes the beam's size it hangs on its reach under the deck alone.
 *
 * @throws InputError if a dimension cannot be
 */
export function deckSeat({edgeBeam: input, bay}: Design, member: Member): DeckSeat {
  const stemmed = member.shape.family === "double tee";
  const found = seat({
    ledgeProjectionIn: seatReachIn(input), jointGapIn: input.jointGapIn, spanFt: bay.spanFt, beamSpanFt: bay.beamSpanFt, stemmed,
    support: ({ledge: "ledge", pockets: "pocket", below: "beam"} as const)[input.kind],
    padLengthIn: stemmed ? input.padLengthIn : undefined,
  });
  return {...found, afterToleranceIn: found.worstIn};
}
