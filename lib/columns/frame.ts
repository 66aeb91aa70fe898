import {columnLineToBearingIn} from "../beams/beamEnds.js";
import {edgeBeamLeverIn} from "../beams/deckLoad.js";
import type {GirderResult} from "../beams/girder.js";
import type {Design} from "../design/design.js";
import {loadOn, type FloorLoads} from "../loads/floorLoads.js";
import {ownPsf, type Member} from "../member/member.js";
import type {ColumnSeat} from "./columnMoments.js";
import {typicalLevels, type ColumnLevel, type ColumnPosition, type LevelLoad} from "./levels.js";

/** What the columns of a design carry: deck, beams and loads as they were worked out. */
export interface Framing {
  readonly design: Design;
  readonly deck: Member;
  readonly loads: FloorLoads;
  /** Undefined where the floor has one bay across. */
  readonly girder: GirderResult | undefined;
  /** The edge beam's own weight and what hangs on it, plf, and its factored end reaction, kip. */
  readonly edge: {readonly selfPlf: number; readonly claddingPlf: number; readonly reactionKip: number};
}

/** Columns that the grid has, the most loaded first. */
export function positionsOf({loads}: Pick<Framing, "loads">): ColumnPosition[] {
  const here = new Set(loads.elements.map(({element}) => element));
  return (["interior column", "edge column", "corner column"] as const).filter((position) => here.has(position));
}

/**
 * The levels that load a column, top first: the roof if there is one, then the floors. The heaviest room stands on every
 * floor. On the roof, the same beams lie without cladding; a roof with neither dead nor live load is none.
 */
export function columnLevels({design, deck, loads, girder, edge}: Framing, position: ColumnPosition): ColumnLevel[] {
  const {column, bay, storey} = design;
  const area = loadOn(loads, position);
  const {room} = area.governing;
  const inside = position === "interior column";
  const beamPlf = inside ? (girder?.loads.selfPlf ?? 0) : edge.selfPlf;
  const own = deck.selfWeightPlf / deck.widthFt;
  const floor: Omit<LevelLoad, "beamLengthFt"> = {
    deckPsf: own, toppingPsf: ownPsf(deck) - own, superimposedPsf: loads.superimposedDeadPsf,
    beamPlf: inside ? beamPlf : beamPlf + edge.claddingPlf,
    livePsf: room.livePsf, rule: room.rule, partitionPsf: room.partitionPsf,
  };
  const roofed = column.roofDeadPsf > 0 || column.roofLivePsf > 0;
  const roof: Omit<LevelLoad, "beamLengthFt"> = {
    deckPsf: column.roofDeadPsf, toppingPsf: 0, superimposedPsf: 0, beamPlf, livePsf: column.roofLivePsf, rule: "no", partitionPsf: 0,
  };
  return typicalLevels({area, floors: bay.floors, storeyHeightFt: storey.floorToFloorFt, floor, ...(roofed ? {roof} : {})});
}

/** How the beams sit on a column, and in words. */
export interface SeatOnColumn {
  readonly seat: ColumnSeat;
  readonly words: string;
}

/**
 * The seat that bends the column. Girders stand on two corbels of an interior column and balance under dead load. Along
 * the edge, beams stand on two corbels as well, but the deck on their ledges pulls them inward: their twist comes to the
 * column, from one side, and is the greater moment. A corner column has one beam on one corbel, or that twist, whichever
 * lever is longer.
 */
export function seatOnColumn({edgeBeam, column}: Design, position: ColumnPosition): SeatOnColumn {
  const corbels = {from: "face", distanceIn: column.seatIn, cutForIn: column.sideIn} as const;
  if (position === "interior column") {
    return {seat: {...corbels, sides: "two"}, words: "girders on two corbels, live load on one side alone"};
  }
  const leverIn = edgeBeamLeverIn(edgeBeam);
  if (position === "corner column" && columnLineToBearingIn({column}) >= leverIn) {
    return {seat: {...corbels, sides: "one"}, words: "one beam on one corbel"};
  }
  return {seat: {from: "centre", distanceIn: leverIn, sides: "one"}, words: "the deck beside the edge beam's web, all from one side"};
}
