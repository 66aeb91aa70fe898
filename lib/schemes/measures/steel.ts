import type {EdgeBeamResult} from "../../edgeBeam/edgeBeam.js";
import type {GirderResult} from "../../girder/girder.js";
import {GIRDER_COVER_IN} from "../../girder/seat.js";
import type {LedgeSteel} from "../../beams/ledgeSteel.js";
import {IN_PER_FT} from "../../units.js";

/** Weight of steel, lb per cubic inch: 490 lb per cubic foot, by which the nominal weights of ASTM A615 go. */
export const STEEL_LB_PER_IN3 = 490 / 1728;

/** Bars of a beam, lb per inch of its length. */
export interface BeamBars {
  /** Along the beam: for bending, and for torsion around the stirrups. */
  readonly mainLbPerIn: number;
  readonly stirrupLbPerIn: number;
  /** Across and along the ledge. */
  readonly ledgeLbPerIn: number;
}

/** A ledge whose bars are counted: of how many sides, and the web that its bars cross. */
interface LedgeBars {
  readonly sides: 1 | 2;
  readonly webWidthIn: number;
  readonly projectionIn: number;
  readonly depthIn: number;
  readonly coverIn: number;
  /** Bars at the ledge's top, in2 per inch of beam. */
  readonly topIn2PerIn: number;
  /** Closed ties below them, both legs, and bars along each ledge. */
  readonly tiesIn2PerIn: number;
  readonly lengthwiseIn2: number;
}

/**
 * Bars of an edge beam. Stirrups and ledge bars stand all along as close as where most are required, which is on the safe
 * side. Bars that only hold the stirrups, hooks and laps are left out, as is what the slender beam's other way would need.
 */
export function edgeBeamBars({bars, stirrups, twist, ledge, kind, shape}: EdgeBeamResult, coverIn: number): BeamBars {
  const lengthwiseIn2 = twist ? Math.max(0, twist.design.lengthwiseIn2 - twist.bottomIn2) : 0;
  return {
    // Torsion's part in the bottom is among the bottom bars.
    mainLbPerIn: STEEL_LB_PER_IN3 * (bars.areaIn2 + lengthwiseIn2),
    stirrupLbPerIn: stirrups && twist ? STEEL_LB_PER_IN3 * (stirrups.bar.areaIn2 / stirrups.spacingIn) * twist.design.stirrupPerimeterIn : 0,
    ledgeLbPerIn: kind === "ledge" && ledge ? ledgeLbPerIn({
      sides: 1, coverIn, webWidthIn: shape.dimensions["webWidthIn"] as number, projectionIn: shape.dimensions["ledgeProjectionIn"] as number,
      depthIn: shape.dimensions["ledgeDepthIn"] as number, topIn2PerIn: ledge.bars.bar.areaIn2 / ledge.bars.spacingIn,
      ...most(ledge.places.map(({steel}) => steel)),
    }) : 0,
  };
}

/**
 * Bars of a girder besides its strands: stirrups for shear, for torsion of one bay's live load and to hang the ledges up,
 * whichever of these needs most, all along; bars around them for that torsion; and the ledges' own.
 */
export function girderBars({shear, twist, seat, member: {shape}}: GirderResult): BeamBars {
  const {ledge} = seat;
  const {forShearIn2PerFt, leastIn2PerFt} = shear.stirrups;
  const forShearIn2PerIn = Math.max(forShearIn2PerFt, leastIn2PerFt) / IN_PER_FT;
  // Of both legs; a ledge hangs on the one at its side.
  const legIn2PerIn = Math.max(forShearIn2PerIn / 2, twist.design.stirrupsIn2PerIn / 2, ledge ? ledge.hanger.hangerIn2PerFt / IN_PER_FT : 0);
  return {
    mainLbPerIn: STEEL_LB_PER_IN3 * twist.design.lengthwiseIn2,
    stirrupLbPerIn: STEEL_LB_PER_IN3 * legIn2PerIn * twist.design.stirrupPerimeterIn,
    ledgeLbPerIn: ledge ? ledgeLbPerIn({
      sides: 2, coverIn: GIRDER_COVER_IN, webWidthIn: shape.webWidthIn, projectionIn: ledge.ledge.ledgeProjectionIn, depthIn: ledge.ledge.ledgeDepthIn,
      topIn2PerIn: ledge.steel.topIn2PerFt / IN_PER_FT, ...most([ledge.steel]),
    }) : 0,
  };
}

/** Of several places of a ledge what requires most. */
function most(places: readonly LedgeSteel[]): {tiesIn2PerIn: number; lengthwiseIn2: number} {
  let [tiesIn2PerIn, lengthwiseIn2] = [0, 0];
  for (const {tiesIn2, workingLengthIn, lengthwiseIn2: along} of places) {
    tiesIn2PerIn = Math.max(tiesIn2PerIn, tiesIn2 / workingLengthIn);
    lengthwiseIn2 = Math.max(lengthwiseIn2, along);
  }
  return {tiesIn2PerIn, lengthwiseIn2};
}

/**
 * Bars of one or two ledges, lb per inch of beam: top bars through web and ledges, bent down at each nose; ties through
 * the same width; and bars along each ledge.
 */
function ledgeLbPerIn({sides, webWidthIn, projectionIn, depthIn, coverIn, topIn2PerIn, tiesIn2PerIn, lengthwiseIn2}: LedgeBars): number {
  const acrossIn = webWidthIn + sides * projectionIn - 2 * coverIn;
  const downIn = sides * Math.max(0, depthIn - 2 * coverIn);
  return STEEL_LB_PER_IN3 * (topIn2PerIn * (acrossIn + downIn) + tiesIn2PerIn * acrossIn + sides * lengthwiseIn2);
}
