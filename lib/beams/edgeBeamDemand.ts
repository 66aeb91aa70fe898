import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {IN_PER_FT, kipFt} from "../units.js";
import type {EdgeBeamLoads} from "./edgeBeamLoads.js";
import type {EdgeBeamSection} from "./edgeBeamSection.js";
import {simpleSpanMomentKipIn, simpleSpanShearKip} from "./statics.js";
import {pointLoadDiagrams, stemBeam, type PointLoadDiagrams, type StemBeam, type StemRow} from "./stemLoads.js";

/** The beam of one bay along the edge under its stems. */
export interface StemBay {
  /** Number of the bay from the building's corner, from 1. */
  readonly bay: number;
  /** Under factored load. */
  readonly stems: StemBeam;
}

/** What the loads ask of the edge beam. */
export interface EdgeBeamDemand {
  /** Whether the deck's load comes by stems; planks load the beam evenly. */
  readonly stemmed: boolean;
  /** The bay whose beam bends most, and the one whose end is twisted most; tees do not fall alike on every bay. */
  readonly bending: StemBay;
  readonly end: StemBay;
  /** Factored, by the stems where they stand. */
  readonly momentKipIn: number;
  readonly shearKip: number;
  readonly torsionKipIn: number;
  /** The beam's greater end reaction, its distance from the web's centre line that would balance the twist, and the twist there. */
  readonly reactionKip: number;
  readonly reactionOffsetIn: number;
  readonly endTorsionKipIn: number;
  /** Greatest moment of all unfactored load, and of dead load alone, kip-in. */
  readonly serviceKipIn: number;
  readonly deadKipIn: number;
  /** One stem's load, factored and not, kip; of planks that of a foot of beam. */
  readonly stemKip: number;
  readonly stemServiceKip: number;
  /** Least distance between stems, and of a stem from the beam's end, in; of planks a foot, and none. */
  readonly spacingIn: number;
  readonly endDistanceIn: number | undefined;
}

/** Shear, moment and torsion of the edge beam by the stems of each of its bays, of which the worst count. */
export function edgeBeamDemand(design: Design, member: Member, section: EdgeBeamSection, loads: EdgeBeamLoads): EdgeBeamDemand {
  const rows = stemRows(design, member);
  const under = ({row}: Row, deckPlf: number, ownPlf: number): StemBeam => beamUnder(row, design.bay.beamSpanFt, {
    deckPlf, deckEccentricityIn: section.eccentricityIn, uniformPlf: ownPlf, uniformEccentricityIn: loads.ownEccentricityIn,
  });
  const bays = rows.map((row) => ({row, bay: row.bay, stems: under(row, loads.factoredLedgePlf, loads.factoredOwnPlf)}));
  const most = (value: (diagrams: PointLoadDiagrams) => number) =>
    bays.reduce((greatest, one) => (value(one.stems.diagrams) > value(greatest.stems.diagrams) + 1e-9 ? one : greatest));
  const bending = most((diagrams) => diagrams.greatestMomentKipFt);
  const end = most(section.eccentricityIn > 0 ? greatestTorsion : (diagrams) => greatestShear(diagrams));
  const moment = (deckPlf: number, ownPlf: number) => IN_PER_FT * under(bending.row, deckPlf, ownPlf).diagrams.greatestMomentKipFt;
  const {diagrams} = end.stems;
  const reactionKip = Math.max(diagrams.leftKip, diagrams.rightKip);
  const endTorsionKipIn = Math.max(diagrams.leftTorsionKipIn, diagrams.rightTorsionKipIn);
  const stemmed = bending.stems.beam.points.length > 0;
  const perStemFt = stemmed ? member.widthFt / 2 : 1;
  const ownPlf = loads.selfPlf + loads.claddingPlf;
  const distances = rows.flatMap(({row}) => (row ? [endDistanceFt(row)] : []));
  return {
    stemmed, bending: {bay: bending.bay, stems: bending.stems}, end: {bay: end.bay, stems: end.stems},
    momentKipIn: IN_PER_FT * bending.stems.diagrams.greatestMomentKipFt,
    shearKip: greatestShear(diagrams),
    torsionKipIn: greatestTorsion(diagrams),
    reactionKip, endTorsionKipIn, reactionOffsetIn: endTorsionKipIn / reactionKip,
    serviceKipIn: moment(loads.deckDeadPlf + loads.livePlf, ownPlf),
    deadKipIn: moment(loads.deckDeadPlf, ownPlf),
    stemKip: (loads.factoredLedgePlf * perStemFt) / 1000,
    stemServiceKip: ((loads.deckDeadPlf + loads.livePlf) * perStemFt) / 1000,
    spacingIn: stemmed ? IN_PER_FT * Math.min(...gapsFt(member)) : IN_PER_FT,
    endDistanceIn: stemmed ? IN_PER_FT * Math.min(...distances) : undefined,
  };
}

/**
 * The beam under factored load with its first stem at a place of the reader's own, ft from the left support, and the gap
 * within a tee next to it: what would change if the tees began elsewhere. Undefined for planks.
 *
 * @param firstStemFt - 0 to the greater gap between stems
 */
export function stemsFrom(design: Design, member: Member, section: EdgeBeamSection, loads: EdgeBeamLoads, firstStemFt: number): StemBeam | undefined {
  if (member.shape.family !== "double tee") return undefined;
  const row = {spanFt: design.bay.beamSpanFt, memberWidthFt: member.widthFt, stemSpacingFt: gapsFt(member)[0], firstStemFt};
  return stemBeam({
    ...row, deckPlf: loads.factoredLedgePlf, deckEccentricityIn: section.eccentricityIn,
    uniformPlf: loads.factoredOwnPlf, uniformEccentricityIn: loads.ownEccentricityIn,
  });
}

/** Greatest place that {@link stemsFrom} takes, ft; 0 for planks. */
export function greatestFirstStemFt(design: Design, member: Member): number {
  return member.shape.family === "double tee" ? Math.min(design.bay.beamSpanFt, Math.max(...gapsFt(member))) : 0;
}

/** Greatest shear beside any load or support, kip. */
function greatestShear({stretches}: PointLoadDiagrams): number {
  return Math.max(...stretches.flatMap(({shearFromKip, shearToKip}) => [Math.abs(shearFromKip), Math.abs(shearToKip)]));
}

/** Greatest torsion beside any load or support, kip-in. */
function greatestTorsion({stretches}: PointLoadDiagrams): number {
  return Math.max(...stretches.flatMap(({torsionFromKipIn, torsionToKipIn}) => [Math.abs(torsionFromKipIn), Math.abs(torsionToKipIn)]));
}

interface Row {
  readonly bay: number;
  /** Undefined where no stem stands on the beam. */
  readonly row: StemRow | undefined;
}

/** Between a tee's stems, and across the joint to the next tee, ft. */
function gapsFt(member: Member): [number, number] {
  const withinFt = (member.shape.dimensions["stemSpacingIn"] as number) / IN_PER_FT;
  return [withinFt, member.widthFt - withinFt];
}

/**
 * The rows of stems on the beams of all bays: tees lie side by side from the building's corner on, so they fall alike on
 * each bay only where the beam's span is a multiple of their width. Bays with the same row are named once.
 */
function stemRows({bay}: Design, member: Member): Row[] {
  if (member.shape.family !== "double tee") return [{bay: 1, row: undefined}];
  const {beamSpanFt: spanFt} = bay;
  const memberWidthFt = member.widthFt;
  const [withinFt, acrossFt] = gapsFt(member);
  const found = new Map<string, Row>();
  for (let i = 0; i < bay.baysAlong; i++) {
    const turns = (i * spanFt) / memberWidthFt + 1e-9;
    const pastFt = Math.max(0, (turns - Math.floor(turns)) * memberWidthFt - 1e-9 * memberWidthFt);
    const next = [
      {atFt: acrossFt / 2, stemSpacingFt: withinFt}, {atFt: acrossFt / 2 + withinFt, stemSpacingFt: acrossFt},
      {atFt: memberWidthFt + acrossFt / 2, stemSpacingFt: withinFt},
    ].find(({atFt}) => atFt >= pastFt) as {atFt: number; stemSpacingFt: number};
    const firstStemFt = next.atFt - pastFt;
    const row = firstStemFt <= spanFt ? {spanFt, memberWidthFt, stemSpacingFt: next.stemSpacingFt, firstStemFt} : undefined;
    const key = row ? `${row.stemSpacingFt.toFixed(6)} ${firstStemFt.toFixed(6)}` : "none";
    if (!found.has(key)) found.set(key, {bay: i + 1, row});
  }
  return [...found.values()];
}

/** Nearer of the first and the last stem to its end of the beam, ft. */
function endDistanceFt(row: StemRow): number {
  const {points} = beamUnder(row, row.spanFt, {deckPlf: 0, deckEccentricityIn: 0, uniformPlf: 0, uniformEccentricityIn: 0}).beam;
  return Math.min(...points.map(({atFt}) => Math.min(atFt, row.spanFt - atFt)));
}

type Lines = Pick<Parameters<typeof stemBeam>[0], "deckPlf" | "deckEccentricityIn" | "uniformPlf" | "uniformEccentricityIn">;

/** The beam under its stems; without any the deck's load lies on it evenly. */
function beamUnder(row: StemRow | undefined, spanFt: number, lines: Lines): StemBeam {
  if (row) return stemBeam({...row, ...lines});
  const uniformPlf = lines.deckPlf + lines.uniformPlf;
  const twistPlfIn = lines.deckPlf * lines.deckEccentricityIn + lines.uniformPlf * lines.uniformEccentricityIn;
  const beam = {spanFt, points: [], uniformPlf, uniformEccentricityIn: uniformPlf > 0 ? twistPlfIn / uniformPlf : 0};
  return {
    beam, diagrams: pointLoadDiagrams(beam), stemKip: 0,
    uniform: {
      reactionKip: simpleSpanShearKip(uniformPlf, spanFt, 0), momentKipFt: kipFt(simpleSpanMomentKipIn(uniformPlf, spanFt)),
      torsionKipIn: simpleSpanShearKip(twistPlfIn, spanFt, 0),
    },
    reactionRatio: 1, momentRatio: 1, torsionRatio: 1,
  };
}
