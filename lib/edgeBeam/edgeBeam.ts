import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {OF_SIZE, edgeBeamChecks} from "./edgeBeamChecks.js";
import type {StemsOnBeam} from "./demand.js";
import {failsOnItsWay} from "./handling.js";
import {selfPlfOf} from "./loads.js";
import {edgeBeamSection, type DeckSeat} from "./section.js";
import {stemRowChecks} from "../beams/stemRowCheck.js";
import {BeamOnTrial, lacksSteel, surelyCracks, uncheckedBeam} from "./trial.js";
import {loadedSection, type LoadedSection, type UncheckedBeam} from "./unchecked.js";

/** The first design of the edge beam. */
export interface EdgeBeamResult extends UncheckedBeam {
  readonly checks: readonly Check[];
}

/**
 * First design of the edge beam that carries one side of the deck: on a ledge, in pockets, or on its top. Stems load it
 * where they stand; bending by bars or strands, shear with torsion, the ledge, the deck's bearing, service and handling.
 * A beam below the deck takes the least depth, in steps of 2 in, at which its strength and its sag hold.
 *
 * @throws InputError if a dimension cannot be
 */
export function edgeBeam(design: Design, catalog: Catalog, member: Member, loads: FloorLoads): EdgeBeamResult {
  return underItsStems(edgeBeamAlone(design, catalog, member, loads), stemRowChecks(design, catalog, member));
}

/** {@link edgeBeam} without the check of where its stems stand, which is the same whatever the beam's size. */
export function edgeBeamAlone(design: Design, catalog: Catalog, member: Member, loads: FloorLoads): EdgeBeamResult {
  return leastDeep(design, member, (depthIn) => edgeBeamAt(design, catalog, member, loads, depthIn), (depthIn) => deepEnough(design, catalog, member, loads, depthIn));
}

/** The beam alone, one below the deck with a depth that is tried. */
export function edgeBeamAt(design: Design, catalog: Catalog, member: Member, loads: FloorLoads, depthIn?: number): EdgeBeamResult {
  return edgeBeamUnder(design, catalog, member, sectionUnderDeck(design, member, loads, depthIn));
}

/** {@link edgeBeamAt} where its section and loads are known. */
export function edgeBeamUnder(design: Design, catalog: Catalog, member: Member, under: LoadedSection): EdgeBeamResult {
  return checkedBeam(member, new BeamOnTrial(design, catalog, under));
}

/** All of a beam that was tried, with its checks. */
export function checkedBeam(member: Member, tried: BeamOnTrial): EdgeBeamResult {
  const beam = uncheckedBeam(tried);
  // It was just made, and is not made anew for its checks.
  return Object.assign(beam, {checks: edgeBeamChecks(tried.design, member, beam)});
}

/**
 * The section of a beam under its loads, the same whatever its steel; one below the deck of a depth that is tried.
 *
 * @param known - where the stems stand and how the deck is seated, if that is known
 */
export function sectionUnderDeck(design: Design, member: Member, loads: FloorLoads, depthIn?: number, {stems, seat}: {readonly stems?: StemsOnBeam; readonly seat?: DeckSeat} = {}): LoadedSection {
  return loadedSection(design, member, loads, edgeBeamSection(design, member, depthIn, seat), stems);
}

/**
 * A beam below the deck of a depth that is tried; undefined where something of it fails that a deeper one is the remedy for.
 *
 * @param sectionOf - {@link sectionUnderDeck}, where it is known
 */
export function deepEnough(design: Design, catalog: Catalog, member: Member, loads: FloorLoads, depthIn: number, sectionOf = (depthIn: number) => sectionUnderDeck(design, member, loads, depthIn)): BeamOnTrial | undefined {
  const {edgeBeam: {steel}, bay} = design;
  const under = sectionOf(depthIn);
  // Whether it breaks on its way is known before all else of it.
  if (steel === "bars" && failsOnItsWay(under.section, selfPlfOf(under.section), bay.beamSpanFt)) return undefined;
  // Most beams with strands that are too shallow crack, which is known before any of them is made.
  if (surelyCracks(design, catalog, under)) return undefined;
  const beam = new BeamOnTrial(design, catalog, under);
  return lacksSteel(beam) || asksForDepth(design, beam) ? undefined : beam;
}

function asksForDepth(design: Design, beam: BeamOnTrial): boolean {
  return OF_SIZE.some((checks) => checks(design, beam).some(({id, verdict}) => verdict !== "ok" && verdict !== "near" && SIZING.has(id)));
}

/** A beam alone with the checks of its row of stems. */
export function underItsStems(beam: EdgeBeamResult, stems: readonly Check[]): EdgeBeamResult {
  return {...beam, checks: [...stems, ...beam.checks]};
}

/**
 * The beam of a trial depth: a beam below the deck by the least that does, others by their parts.
 *
 * @param enough - the beam of a depth below the deck, where that does
 */
export function leastDeep({edgeBeam: {kind}}: Pick<Design, "edgeBeam">, member: Member, at: (depthIn?: number) => EdgeBeamResult, enough: (depthIn: number) => BeamOnTrial | undefined): EdgeBeamResult {
  // Stryker disable next-line ConditionalExpression: it saves trying depths that others do not have
  if (kind !== "below") return at();
  // What holds at one depth need not at a deeper one: where that takes a bar less it sags more once it cracks.
  const {least, most, step} = DEPTHS_BELOW_IN;
  // Stryker disable next-line EqualityOperator: the greatest is what is left
  for (let depthIn: number = least; depthIn < most; depthIn += step) {
    const beam = enough(depthIn);
    if (beam) return checkedBeam(member, beam);
  }
  return at(most);
}

/** Depths that are tried for a beam below the deck, in. */
export const DEPTHS_BELOW_IN = {least: 12, most: 96, step: 2} as const;
/** Checks that a deeper beam is the remedy for, beside those of its way with bars: strands compress a deep beam off its centroid. */
const SIZING: ReadonlySet<string> = new Set([
  "beam strength", "beam ductility", "beam bottom steel", "beam least steel", "beam shear", "beam shear and torsion", "beam stirrups",
  "beam sag", "beam tension", "beam sustained compression", "beam total compression",
]);
