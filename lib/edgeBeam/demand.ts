import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {IN_PER_FT} from "../units.js";
import type {EdgeBeamLoads} from "./loads.js";
import type {EdgeBeamSection} from "./section.js";
import {
  beamUnderDeck, greatestShearKip, greatestTorsionKipIn, momentUnderDeckKipFt, stemBeam, type DeckedBeam, type PointLoadDiagrams, type StemBeam,
} from "../beams/stemLoads.js";
import {nearestStem, stemGapsFt, stemToEndIn, stemsOfBays, teeRow, type BayStems, type NearestStem} from "../beams/stemRow.js";

/** The beam of one bay along the edge under its stems. */
export interface StemBay {
  /** Number of the bay from the building's corner, from 1. */
  readonly bay: number;
  /** Under factored load. */
  readonly stems: StemBeam;
}

/** Load effects of the edge beam. */
export interface EdgeBeamDemand {
  /** Whether the deck's load comes by stems; planks load the beam evenly. */
  readonly stemmed: boolean;
  /** Every bay on which the stems fall otherwise. */
  readonly bays: readonly StemBay[];
  /** The bay whose beam bends most, and the one whose end is twisted most; tees do not fall alike on every bay. */
  readonly bending: StemBay;
  readonly end: StemBay;
  /** Factored, by the stems where they stand; shear and torsion of an end are all that it takes, its stems over the support included. */
  readonly momentKipIn: number;
  readonly shearKip: number;
  readonly torsionKipIn: number;
  /** The beam's greater end reaction, its distance from the web's center line that would balance the torsion, and the torsion there. */
  readonly reactionKip: number;
  readonly reactionOffsetIn: number;
  readonly endTorsionKipIn: number;
  /** Greatest moment of all unfactored load, and of dead load alone, kip-in. */
  readonly serviceKipIn: number;
  readonly deadKipIn: number;
  /** What one stem presses on its seat, factored and not, kip; of planks a foot of them. */
  readonly stemKip: number;
  readonly stemServiceKip: number;
  /** Least distance between stems, and of a stem from its beam's end, in, negative beyond that end; of planks a foot, and none. */
  readonly spacingIn: number;
  readonly endDistanceIn: number | undefined;
}

/** Where the deck's stems stand on the edge beams, the same whatever the beam's size. */
export interface StemsOnBeam {
  /** Every bay on which they fall otherwise; of planks one without any. */
  readonly bays: readonly BayStems[];
  readonly nearest: NearestStem | undefined;
  /** Least distance between stems, in; of planks a foot. */
  readonly spacingIn: number;
}

/** The stems of a design's deck on its edge beams. */
export function stemsOnBeam(design: Design, member: Member): StemsOnBeam {
  const row = teeRow(design, member);
  if (!row) return {bays: [{bay: 1, placesFt: []}], nearest: undefined, spacingIn: IN_PER_FT};
  const nearest = nearestStem(row);
  // Stryker disable next-line ConditionalExpression: a row has its stems, the nearest among them
  return {bays: stemsOfBays(row), nearest, spacingIn: nearest ? IN_PER_FT * Math.min(...stemGapsFt(row)) : IN_PER_FT};
}

/** Shear, moment and torsion of the edge beam by the stems of each of its bays, of which the worst count. */
export function edgeBeamDemand(design: Design, member: Member, section: EdgeBeamSection, loads: EdgeBeamLoads, {bays: rows, nearest, spacingIn} = stemsOnBeam(design, member)): EdgeBeamDemand {
  const loaded = (deckPlf: number, ownPlf: number): DeckedBeam => ({
    spanFt: design.bay.beamSpanFt, deckPlf, deckEccentricityIn: section.eccentricityIn, uniformPlf: ownPlf, uniformEccentricityIn: loads.ownEccentricityIn,
  });
  const factored = loaded(loads.factoredLedgePlf, loads.factoredOwnPlf);
  const bays = rows.map(({bay, placesFt}) => ({bay, placesFt, stems: beamUnderDeck(factored, placesFt, member.widthFt / 2)}));
  const most = (value: (diagrams: PointLoadDiagrams) => number) =>
    // Stryker disable next-line EqualityOperator: the two part in the tenth digit
    bays.reduce((greatest, one) => (value(one.stems.diagrams) > value(greatest.stems.diagrams) + 1e-9 ? one : greatest));
  const bending = most((diagrams) => diagrams.greatestMomentKipFt);
  // Every stem has the same eccentricity, so the end that takes most of them is twisted most.
  const end = most(greatestShearKip);
  const moment = (deckPlf: number, ownPlf: number) => IN_PER_FT * momentUnderDeckKipFt(loaded(deckPlf, ownPlf), bending.stems, member.widthFt / 2);
  const {diagrams} = end.stems;
  const reactionKip = Math.max(diagrams.leftKip, diagrams.rightKip);
  const endTorsionKipIn = Math.max(diagrams.leftTorsionKipIn, diagrams.rightTorsionKipIn);
  const ownPlf = loads.selfPlf + loads.claddingPlf;
  return {
    stemmed: nearest !== undefined, bays, bending, end,
    momentKipIn: IN_PER_FT * bending.stems.diagrams.greatestMomentKipFt,
    shearKip: greatestShearKip(diagrams),
    torsionKipIn: greatestTorsionKipIn(diagrams),
    reactionKip, endTorsionKipIn, reactionOffsetIn: endTorsionKipIn / reactionKip,
    serviceKipIn: moment(loads.deckDeadPlf + loads.livePlf, ownPlf),
    deadKipIn: moment(loads.deckDeadPlf, ownPlf),
    stemKip: loads.seat.factoredKip, stemServiceKip: loads.seat.serviceKip,
    spacingIn,
    endDistanceIn: nearest && stemToEndIn(design, nearest.atFt),
  };
}

/**
 * The beam under factored load with its first stem at a place of the reader's own, ft from the left support, and the gap
 * within a tee next to it: what would change if the tees began elsewhere. Undefined for planks.
 *
 * @param firstStemFt - 0 to the greater gap between stems
 */
export function stemsFrom(design: Design, member: Member, section: EdgeBeamSection, loads: EdgeBeamLoads, firstStemFt: number): StemBeam | undefined {
  const row = teeRow(design, member);
  return row && stemBeam({
    spanFt: row.spanFt, memberWidthFt: row.teeWidthFt, stemSpacingFt: row.stemSpacingFt, firstStemFt,
    deckPlf: loads.factoredLedgePlf, deckEccentricityIn: section.eccentricityIn,
    uniformPlf: loads.factoredOwnPlf, uniformEccentricityIn: loads.ownEccentricityIn,
  });
}

/** Greatest place that {@link stemsFrom} takes, ft; 0 for planks. */
export function greatestFirstStemFt(design: Design, member: Member): number {
  const row = teeRow(design, member);
  return row ? Math.min(row.spanFt, Math.max(...stemGapsFt(row))) : 0;
}
