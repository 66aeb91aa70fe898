import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import type {Bar} from "../materials/reinforcement.js";
import type {Member} from "../member/member.js";
import {IN_PER_FT} from "../units.js";
import {STIRRUP_DIAMETER_IN} from "./bars.js";
import {deckLoadOutIn} from "../beams/deckLoad.js";
import type {EdgeBeamBending} from "./bending.js";
import type {EdgeBeamDemand, StemBay} from "./demand.js";
import type {EdgeBeamSection} from "./section.js";
import {barsAtSpacing, type ClosedStirrups} from "./twist.js";
import {hanger, type Hanger} from "../beams/hanger.js";
import type {Ledge} from "../beams/ledge.js";
import {ledgeLineStrengthPlf, ledgePunching, type LedgePunching} from "../beams/ledgePunching.js";
import {ledgeSteel, type LedgeSteel} from "../beams/ledgeSteel.js";
import {diagramsAt, shearBesideKip} from "../beams/stemLoads.js";
import {stemToEndIn, stemWidthIn} from "../beams/stemRow.js";

/** Diameter of the ledge's bars that is assumed for its depth and cover, in: #4. */
const LEDGE_BAR_IN = 0.5;

/** The ledge under one load: a stem away from the beam's ends, the stem next to an end, or a foot of planks. */
export interface LedgePlace {
  readonly place: "interior" | "end" | "line";
  readonly ledge: Ledge;
  readonly steel: LedgeSteel;
  readonly hanger: Hanger;
}

/** A load on the ledge with its punching, once the beam's own stress there is known. */
export interface PunchingPlace {
  readonly place: "interior" | "end";
  readonly ledge: Ledge;
  /** Bay from the building's corner, from 1. */
  readonly bay: number;
  /** Left support to the stem, ft. */
  readonly atFt: number;
  /** Moment over design moment or shear over design shear there, whichever is more. */
  readonly use: number;
  /** Prestress that is counted on at the beam's centroid, ksi. */
  readonly centroidStressKsi: number;
  readonly punching: LedgePunching;
}

/** The ledge of the edge beam: steel across it and in the web beside it. */
export interface EdgeBeamLedge {
  /** Factored load of one stem, or of a foot of planks, kip. */
  readonly loadKip: number;
  readonly places: readonly LedgePlace[];
  /** Stems only. */
  readonly punching: readonly PunchingPlace[];
  /** Even load along the ledge that it carries in shear, plf; planks only. */
  readonly linePlf: number | undefined;
  /** Bars across the ledge's top, as far apart as the place allows that requires most. */
  readonly bars: {readonly bar: Bar; readonly spacingIn: number};
}

/** What of the ledge its size alone decides: all but punching. */
export type LedgeBySize = Omit<EdgeBeamLedge, "punching">;

/** What the ledge's checks need to know of it. */
export interface LedgeStrength extends LedgeBySize {
  readonly punching: readonly Pick<PunchingPlace, "place" | "punching">[];
}

/** Depth that two layers of bars with their cover need in a ledge, in. */
export function leastLayersIn(coverIn: number): number {
  return 2 * (coverIn + LEDGE_BAR_IN);
}

/** The ledge by its size alone; undefined where it is thinner than its bars with their cover. */
export function ledgeBySize(design: Design, catalog: Catalog, member: Member, section: EdgeBeamSection, demand: EdgeBeamDemand): LedgeBySize | undefined {
  const places = ledgePlaces(design, member, section, demand);
  return places && {loadKip: demand.stemKip, places, ...linePlfAndBars(catalog, section, demand, places)};
}

/** The ledge under each load that it has to be looked at for. */
function ledgePlaces(design: Design, member: Member, section: EdgeBeamSection, demand: EdgeBeamDemand): LedgePlace[] | undefined {
  const {edgeBeam: input} = design;
  if (input.ledgeDepthIn < leastLayersIn(input.coverIn)) return undefined;
  const {nominalIn} = section.seat;
  const bearingWidthIn = demand.stemmed ? Math.max(1, Math.min(input.padWidthIn, stemWidthIn(member))) : IN_PER_FT;
  const bearingLengthIn = Math.min(input.padLengthIn, nominalIn);
  const inner: Ledge = {
    concrete: section.concrete, webWidthIn: input.webWidthIn, depthIn: section.depthIn,
    ledgeProjectionIn: input.ledgeProjectionIn, ledgeDepthIn: input.ledgeDepthIn, coverIn: input.coverIn, barDiameterIn: LEDGE_BAR_IN,
    bearingWidthIn, bearingLengthIn,
    shearSpanIn: deckLoadOutIn(input.ledgeProjectionIn, input.jointGapIn),
    spacingIn: Math.max(bearingWidthIn, demand.spacingIn),
  };
  const at = (place: LedgePlace["place"], ledge: Ledge): LedgePlace => {
    const hangerInsetIn = input.coverIn + STIRRUP_DIAMETER_IN / 2;
    return {
      place, ledge,
      steel: ledgeSteel({ledge, loadKip: demand.stemKip, hangerInsetIn}),
      hanger: hanger({ledge, loadKip: demand.stemKip, hangerInsetIn}),
    };
  };
  if (demand.endDistanceIn === undefined) return [at("line", inner)];
  return [at("interior", inner), at("end", toEnd(inner, demand.endDistanceIn))];
}

/** The ledge under a stem near an end: one that overhangs it, which a check of its own fails, is taken to stand just inside. */
function toEnd(ledge: Ledge, endDistanceIn: number): Ledge {
  // Field by field: a copy that grows by a field takes several times as long, and every stem at an end of every bay is tried.
  return {
    concrete: ledge.concrete, webWidthIn: ledge.webWidthIn, depthIn: ledge.depthIn, ledgeProjectionIn: ledge.ledgeProjectionIn, ledgeDepthIn: ledge.ledgeDepthIn,
    coverIn: ledge.coverIn, barDiameterIn: ledge.barDiameterIn, bearingWidthIn: ledge.bearingWidthIn, bearingLengthIn: ledge.bearingLengthIn,
    shearSpanIn: ledge.shearSpanIn, spacingIn: ledge.spacingIn, endDistanceIn: Math.max(ledge.bearingWidthIn / 2, endDistanceIn),
  };
}

/** Punching and the bars across the ledge, once bending and stirrups are known. */
export function edgeBeamLedge(design: Design, demand: EdgeBeamDemand, bending: EdgeBeamBending, stirrups: ClosedStirrups, bySize: LedgeBySize): EdgeBeamLedge {
  return {
    ...bySize,
    punching: demand.stemmed ? punchingPlaces(design, bySize.places, demand, {
      use: ({stems: {diagrams}}, atFt) => Math.min(MOST_USE, Math.max(
        (IN_PER_FT * diagramsAt(diagrams, atFt).momentKipFt) / bending.strength.designMomentKipIn, shearBesideKip(diagrams, atFt) / stirrups.designShearKip,
      )),
      centroidStressKsi: bending.strands ? bending.strands.state.effectiveForceKip / bending.strands.member.section.areaIn2 : 0,
    }) : [],
  };
}

/** An even load that the ledge carries, and the bars across it. */
function linePlfAndBars(catalog: Catalog, section: EdgeBeamSection, demand: EdgeBeamDemand, places: readonly LedgePlace[]): Pick<EdgeBeamLedge, "linePlf" | "bars"> {
  const steelIn2PerFt = Math.max(...places.map(({steel}) => steel.topIn2PerFt));
  // The greatest spacing is by the ledge's depth, and so the same at every place.
  const [{steel: {greatestSpacingIn}}] = places as [LedgePlace];
  return {
    linePlf: demand.stemmed ? undefined : ledgeLineStrengthPlf(section.concrete, section.belowDeckIn),
    bars: barsAtSpacing(catalog, steelIn2PerFt / IN_PER_FT, greatestSpacingIn),
  };
}

/** Use of a beam's strength beyond which no more is told apart. */
export const MOST_USE = 100;

/**
 * Punching at the stem of all bays where the beam is used most, and at that stem beside an end of a beam where the ledge
 * holds least. The prestress of strands is counted inside the span and not at its ends, where it has yet to build up.
 *
 * @param use - the part of its strength that the beam uses at a stem
 */
export function punchingPlaces(
  design: Design, places: readonly LedgePlace[], demand: EdgeBeamDemand, {use, centroidStressKsi}: {readonly use: (bay: StemBay, atFt: number) => number; readonly centroidStressKsi: number},
): PunchingPlace[] {
  const [{ledge: inner}] = places as [LedgePlace];
  const at = (place: PunchingPlace["place"], bay: StemBay, atFt: number, used: number): PunchingPlace => {
    const ledge = place === "interior" ? inner : toEnd(inner, stemToEndIn(design, atFt));
    const stress = {use: used, centroidStressKsi: place === "interior" ? centroidStressKsi : 0};
    return {place, ledge, bay: bay.bay, atFt, use: used, centroidStressKsi: stress.centroidStressKsi, punching: ledgePunching(ledge, stress)};
  };
  const stems = demand.bays.flatMap((bay) => bay.stems.beam.points.map(({atFt}) => ({bay, atFt, use: use(bay, atFt)})));
  // Stryker disable next-line EqualityOperator: the two part in the tenth digit
  const most = stems.reduce((greatest, stem) => (stem.use > greatest.use + 1e-9 ? stem : greatest));
  const ends = demand.bays.flatMap((bay) => {
    const {points} = bay.stems.beam;
    // Stryker disable next-line ConditionalExpression,ArrayDeclaration: no bay that a design may have is too short for a stem
    return points.length === 0 ? [] : [points[0], points.at(-1)].map((point) => at("end", bay, (point as {atFt: number}).atFt, use(bay, (point as {atFt: number}).atFt)));
  });
  return [
    at("interior", most.bay, most.atFt, most.use),
    // Stryker disable next-line EqualityOperator: the two part in the tenth digit
    ends.reduce((least, end) => (end.punching.designKip < least.punching.designKip - 1e-9 ? end : least)),
  ];
}
