import type {EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import type {GirderResult} from "../girder/girder.js";
import type {Design} from "../design/design.js";
import {LIVE_FACTOR} from "../loads/combinations.js";
import {LB_PER_KIP} from "../units.js";
import type {ColumnLoadKip, ColumnMomentKipIn} from "./columnCombinations.js";
import type {ColumnLevel} from "./levels.js";

/** What the end of one beam brings to a column on one level, unfactored. */
export interface BeamEnd {
  /** Reaction on the corbel. */
  readonly reaction: ColumnLoadKip;
  /** Torsion about the beam's own axis that the end's connections resist. */
  readonly twist: ColumnMomentKipIn;
}

/** The end of a girder with live load on the bays at both its sides, whose torsions balance, and on one of them alone. */
export interface GirderEnd {
  readonly both: BeamEnd;
  readonly oneBay: BeamEnd;
}

/** No torsion. */
export const NO_TWIST: ColumnMomentKipIn = {deadKipIn: 0, liveKipIn: 0, roofKipIn: 0};

/**
 * The end of an edge beam on a floor as the beam's own design has it, live load reduced for the beam's area, at the end
 * of the bay where the stems' reaction and torsion are greatest; on a roof, the same beam without cladding under a uniform load.
 *
 * @param roofWallPlf - what is built on the roof's beam over its web, such as a parapet, or hangs from it
 */
export function edgeBeamEnd({bay, column}: Design, edge: EdgeBeamResult, kind: ColumnLevel["kind"], roofWallPlf = 0): BeamEnd {
  const {loads} = edge;
  const halfKip = edge.spanFt / 2 / LB_PER_KIP;
  if (kind === "roof") {
    const [deadPlf, livePlf] = [(column.roofDeadPsf * bay.spanFt) / 2, (column.roofLivePsf * bay.spanFt) / 2];
    return {
      reaction: {deadKip: (deadPlf + loads.selfPlf + roofWallPlf) * halfKip, liveKip: 0, roofKip: livePlf * halfKip},
      twist: {
        deadKipIn: (deadPlf * edge.eccentricityIn + loads.selfPlf * edge.selfEccentricityIn) * halfKip, liveKipIn: 0,
        roofKipIn: livePlf * edge.eccentricityIn * halfKip,
      },
    };
  }
  return floorEdgeBeamEnd(edge);
}

/** The end of an edge beam as the beam's own design has it. */
export function floorEdgeBeamEnd({loads, demand, spanFt}: EdgeBeamResult): BeamEnd {
  const halfKip = spanFt / 2 / LB_PER_KIP;
  const ownPlf = loads.selfPlf + loads.claddingPlf;
  // The beam itself is a uniform load; what is left of its factored reaction and torsion is the deck's, in proportion to its load.
  const perDeckKip = (demand.reactionKip - loads.factoredOwnPlf * halfKip) / loads.factoredLedgePlf;
  const perDeckKipIn = (demand.endTorsionKipIn - loads.factoredOwnPlf * loads.ownEccentricityIn * halfKip) / loads.factoredLedgePlf;
  return {
    reaction: {deadKip: loads.deckDeadPlf * perDeckKip + ownPlf * halfKip, liveKip: loads.livePlf * perDeckKip, roofKip: 0},
    twist: {
      deadKipIn: loads.deckDeadPlf * perDeckKipIn + ownPlf * loads.ownEccentricityIn * halfKip,
      liveKipIn: loads.livePlf * perDeckKipIn, roofKipIn: 0,
    },
  };
}

/** The end of a girder on a floor as its own design has it; on a roof, the same girder under a uniform load. */
export function girderEnd({bay, column}: Design, girder: GirderResult, kind: ColumnLevel["kind"]): GirderEnd {
  const {loads, seat} = girder;
  const halfKip = girder.spanFt / 2 / LB_PER_KIP;
  if (kind === "roof") {
    const roofKip = column.roofLivePsf * bay.spanFt * halfKip;
    const deadKip = (column.roofDeadPsf * bay.spanFt + loads.selfPlf) * halfKip;
    return {
      both: {reaction: {deadKip, liveKip: 0, roofKip}, twist: NO_TWIST},
      oneBay: {reaction: {deadKip, liveKip: 0, roofKip: roofKip / 2}, twist: {...NO_TWIST, roofKipIn: (roofKip / 2) * seat.eccentricityIn}},
    };
  }
  return floorGirderEnd(girder);
}

/** The end of a girder as its own design has it. */
export function floorGirderEnd({loads, twist, spanFt}: GirderResult): GirderEnd {
  const halfKip = spanFt / 2 / LB_PER_KIP;
  const deckKip = loads.stems.reactionFactor * halfKip;
  const deadKip = loads.selfPlf * halfKip + loads.deckDeadPlf * deckKip;
  return {
    both: {reaction: {deadKip, liveKip: loads.livePlf * deckKip, roofKip: 0}, twist: NO_TWIST},
    oneBay: {
      reaction: {deadKip, liveKip: loads.oneBayLivePlf * deckKip, roofKip: 0},
      twist: {...NO_TWIST, liveKipIn: twist.torsionKipIn / LIVE_FACTOR},
    },
  };
}
