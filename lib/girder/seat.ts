import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import {builtUp} from "../member/shear.js";
import type {Member} from "../member/member.js";
import {IN_PER_FT} from "../units.js";
import {LEAST_SET_BACK_IN, padChecks, padFor, type Pad} from "../beams/bearing.js";
import {deckBearing} from "../beams/deckBearing.js";
import {deckLoadOutIn} from "../beams/deckLoad.js";
import {deckSeatLoad} from "../beams/deckSeatLoad.js";
import type {GirderLoads} from "./loads.js";
import {hanger, type Hanger} from "../beams/hanger.js";
import type {Ledge} from "../beams/ledge.js";
import {ledgeLineStrengthPlf, ledgePunching, ledgePunchingCheck, type LedgePunching} from "../beams/ledgePunching.js";
import {ledgeSteel, type LedgeSteel} from "../beams/ledgeSteel.js";
import {seat, type Seat} from "../beams/seat.js";
import {stemGapsFt, stemWidthIn, teeRow, type TeeRow} from "../beams/stemRow.js";

/** Clear cover of the girder's stirrups, in, which leaves the lowest strands at 2 in (ACI 318-19 Table 20.5.1.3.3). */
export const GIRDER_COVER_IN = 1.25;
/** Stirrups and ledge bars that are assumed, in: #4. */
export const GIRDER_STIRRUP_IN = 0.5;
/** Thickness of the pads under stems, in (common practice). */
const PAD_THICKNESS_IN = 0.375;

/** The deck's seat on the girder and what its ledges need. */
export interface GirderSeat {
  readonly seat: Seat;
  /** Web's center line to the load of one side's deck, in; see {@link deckLoadOutIn}. */
  readonly eccentricityIn: number;
  /** Load of one stem of one bay, or of a foot of plank, in service and factored, kip. */
  readonly serviceKip: number;
  readonly factoredKip: number;
  /** Undefined under planks, which bear on a strip. */
  readonly pad: Pad | undefined;
  /** Undefined for a rectangle. */
  readonly ledge: GirderLedge | undefined;
  /** Checks of seat, pad and bearing. */
  readonly checks: readonly Check[];
}

/** A ledge of the girder under one stem, or under a foot of plank. */
export interface GirderLedge {
  readonly ledge: Ledge;
  /** Undefined under planks. */
  readonly punching: LedgePunching | undefined;
  /** Strength under the planks' even load, plf; undefined under stems. */
  readonly linePlf: number | undefined;
  readonly steel: LedgeSteel;
  readonly hanger: Hanger;
  readonly checks: readonly Check[];
}

/** State of the girder that its ledges feel: how much of its strength is used, which only stems on ledges ask, and its precompression, ksi. */
export interface GirderStress {
  readonly use: () => number;
  readonly centroidStressKsi: number;
}

/** The deck's seat on each side of the girder, with pads and, for an inverted tee, the ledges. */
export function girderSeat(design: Design, member: Member, girder: Member, loads: FloorLoads, on: GirderLoads, stress: GirderStress): GirderSeat {
  const {girder: input, bay, deck, edgeBeam: {jointGapIn}} = design;
  const tee = input.kind === "inverted tee";
  // On a rectangle the decks of both bays share its top, and the joint between them.
  const [projectionIn, gapIn] = tee ? [input.ledgeProjectionIn, jointGapIn] : [input.webWidthIn / 2, jointGapIn / 2];
  const row = teeRow(design, member);
  const {serviceKip, factoredKip} = deckSeatLoad(design, member, loads);
  const nominalIn = projectionIn - gapIn;
  const bearingWidthIn = row ? stemWidthIn(member) : IN_PER_FT;
  const pad = row
    ? padFor({serviceKip, stemWidthIn: bearingWidthIn, thicknessIn: PAD_THICKNESS_IN, roomIn: Math.max(1, nominalIn - LEAST_SET_BACK_IN)})
    : undefined;
  const seated = seat({ledgeProjectionIn: projectionIn, jointGapIn: gapIn, spanFt: bay.spanFt, beamSpanFt: bay.beamSpanFt, stemmed: row !== undefined, ...(pad ? {padLengthIn: pad.lengthIn} : {})});
  const lengthIn = Math.min(pad?.lengthIn ?? nominalIn - 2 * LEAST_SET_BACK_IN, nominalIn);
  const wider = tee ? "a wider ledge" : "a wider girder";
  return {
    seat: seated, serviceKip, factoredKip, pad,
    eccentricityIn: (tee ? input.webWidthIn / 2 : 0) + deckLoadOutIn(projectionIn, gapIn),
    ledge: tee ? girderLedge(design, member, girder, on, {factoredKip, gapIn, nominalIn, bearingWidthIn, lengthIn: Math.max(1, lengthIn)}, stress) : undefined,
    checks: [
      ...seated.checks,
      // Stryker disable next-line LogicalOperator: there is a pad under stems, and none else
      ...(row && pad ? padChecks({
        pad, stemWidthIn: bearingWidthIn, serviceKip, factoredKip, mends: {stress: wider, bearing: wider},
        ...deckBearing(member, {
          stemmed: true, padWidthIn: pad.widthIn, lengthIn, roomIn: nominalIn, depthIn: tee ? input.ledgeDepthIn : input.depthIn,
          spacingIn: spacingIn(row), endDistanceIn: on.stems.endDistanceIn, strengthPsi: input.strengthPsi, deckStrengthPsi: deck.strengthPsi,
        }),
      }) : []),
    ],
  };
}

function girderLedge(
  design: Design, member: Member, girder: Member, on: GirderLoads,
  load: {factoredKip: number; gapIn: number; nominalIn: number; bearingWidthIn: number; lengthIn: number}, stress: GirderStress,
): GirderLedge {
  const {girder: input} = design;
  const {factoredKip, bearingWidthIn} = load;
  const row = teeRow(design, member);
  // A stem that overhangs the end, which a check of its own fails, is taken to stand just inside it.
  const endDistanceIn = on.stems.endDistanceIn === undefined ? undefined : Math.max(bearingWidthIn / 2, on.stems.endDistanceIn);
  const ledge: Ledge = {
    concrete: girder.concrete, webWidthIn: input.webWidthIn, depthIn: girder.shape.depthIn,
    ledgeProjectionIn: input.ledgeProjectionIn, ledgeDepthIn: input.ledgeDepthIn,
    coverIn: GIRDER_COVER_IN, barDiameterIn: GIRDER_STIRRUP_IN,
    bearingWidthIn, bearingLengthIn: load.lengthIn,
    shearSpanIn: deckLoadOutIn(input.ledgeProjectionIn, load.gapIn),
    // A foot of plank works with a foot of ledge.
    spacingIn: row ? Math.max(bearingWidthIn, spacingIn(row)) : IN_PER_FT,
    // Stryker disable next-line ConditionalExpression: no distance is as good as one that is undefined
    ...(endDistanceIn === undefined ? {} : {endDistanceIn}),
  };
  const hangerInsetIn = GIRDER_COVER_IN + GIRDER_STIRRUP_IN / 2;
  const punching = endDistanceIn === undefined ? undefined : ledgePunching(ledge, {
    use: Math.min(100, stress.use()), centroidStressKsi: stress.centroidStressKsi * builtUp(girder, endDistanceIn),
  });
  const linePlf = endDistanceIn === undefined ? ledgeLineStrengthPlf(girder.concrete, input.ledgeDepthIn) : undefined;
  const steel = ledgeSteel({ledge, loadKip: factoredKip, hangerInsetIn});
  return {
    ledge, punching, linePlf, steel, hanger: hanger({ledge, loadKip: factoredKip, hangerInsetIn, tiesInLedge: true}),
    checks: [...(punching ? [ledgePunchingCheck(factoredKip, punching)] : []), ...steel.checks],
  };
}

/** Distance between stems along the girder, in: the lesser of that within a tee and that across a joint. */
function spacingIn(row: TeeRow): number {
  return IN_PER_FT * Math.min(...stemGapsFt(row));
}
