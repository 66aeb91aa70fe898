import type {Catalog} from "../catalog.js";
import {exceeds, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {edgeBeamChecks} from "./edgeBeamChecks.js";
import {failsOnItsWay} from "./handling.js";
import {selfPlfOf} from "./loads.js";
import {edgeBeamSection} from "./section.js";
import {stemRowChecks} from "../beams/stemRowCheck.js";
import {allowables} from "../member/allowables.js";
import {edgeBeamStrands, type EdgeBeamStrands} from "./bending.js";
import type {EdgeBeamDemand} from "./demand.js";
import {soffitTensionKsi, strandService} from "./service.js";
import {loadedBeam, loadedSection, uncheckedBeam, type LoadedBeam, type LoadedSection, type UncheckedBeam} from "./unchecked.js";

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
  return leastDeep(design, (depthIn) => edgeBeamAt(design, catalog, member, loads, depthIn), (depthIn) => deepEnough(design, catalog, member, loads, depthIn));
}

/** The beam alone, one below the deck with a depth that is tried. */
export function edgeBeamAt(design: Design, catalog: Catalog, member: Member, loads: FloorLoads, depthIn?: number): EdgeBeamResult {
  return edgeBeamUnder(design, catalog, member, sectionUnderDeck(design, member, loads, depthIn));
}

/** {@link edgeBeamAt} where its section and loads are known. */
export function edgeBeamUnder(design: Design, catalog: Catalog, member: Member, under: LoadedSection): EdgeBeamResult {
  return checkedBeam(design, catalog, member, loadedBeam(design, catalog, under));
}

/** All of a loaded beam with its checks. */
export function checkedBeam(design: Design, catalog: Catalog, member: Member, loaded: LoadedBeam): EdgeBeamResult {
  const unchecked = uncheckedBeam(design, catalog, member, loaded);
  return withChecks(unchecked, edgeBeamChecks(design, member, unchecked));
}

/** The section of a beam under its loads, the same whatever its steel; one below the deck of a depth that is tried. */
export function sectionUnderDeck(design: Design, member: Member, loads: FloorLoads, depthIn?: number): LoadedSection {
  return loadedSection(design, member, loads, edgeBeamSection(design, member, depthIn));
}

/** Whether the soffit of a beam with strands cracks in service. */
export function soffitCracks(design: Design, demand: EdgeBeamDemand, strands: EdgeBeamStrands): boolean {
  return soffitTensionKsi(design, demand, strands) > allowables(strands.member, "T").serviceTensionKsi;
}

/**
 * A beam below the deck of a depth that is tried; undefined where something of it fails that a deeper one is the remedy for.
 *
 * @param sectionOf - {@link sectionUnderDeck}, where it is known
 */
export function deepEnough(design: Design, catalog: Catalog, member: Member, loads: FloorLoads, depthIn: number, sectionOf = (depthIn: number) => sectionUnderDeck(design, member, loads, depthIn)): EdgeBeamResult | undefined {
  const {edgeBeam: {steel}, bay} = design;
  if (steel === "bars") {
    // Whether it breaks on its way is known before all else of it.
    const section = edgeBeamSection(design, member, depthIn);
    if (failsOnItsWay(section, selfPlfOf(section), bay.beamSpanFt)) return undefined;
  }
  const under = sectionOf(depthIn);
  const {section, loads: on, demand} = under;
  const strands = edgeBeamStrands(design, catalog, section, on);
  // Strands are known in service before any bars: most beams that are too shallow crack.
  if (strands && soffitCracks(design, demand, strands)) return undefined;
  const stranded = strands && strandService(design, on, demand, strands);
  if (stranded && exceeds(stranded.countedIn, stranded.allowedIn)) return undefined;
  const unchecked = uncheckedBeam(design, catalog, member, {section, loads: on, demand, strands, stranded});
  // The commonest reasons by their numbers alone, before all is said of a beam that will not do.
  if (exceeds(unchecked.momentKipIn, unchecked.strength.designMomentKipIn) || exceeds(unchecked.bottomUse, 1) || exceeds(unchecked.service.countedIn, unchecked.service.allowedIn)) return undefined;
  const checks = edgeBeamChecks(design, member, unchecked);
  return asksForDepth(design, checks) ? undefined : withChecks(unchecked, checks);
}

/** A beam that was just made, with its checks; it is not made anew for them. */
function withChecks(beam: UncheckedBeam, checks: readonly Check[]): EdgeBeamResult {
  return Object.assign(beam, {checks});
}

function asksForDepth({edgeBeam: {steel}}: Pick<Design, "edgeBeam">, checks: readonly Check[]): boolean {
  const sizing = steel === "bars" ? WITH_BARS : SIZING;
  return checks.some(({id, verdict}) => sizing.includes(id) && verdict !== "ok" && verdict !== "near");
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
export function leastDeep({edgeBeam: {kind}}: Pick<Design, "edgeBeam">, at: (depthIn?: number) => EdgeBeamResult, enough: (depthIn: number) => EdgeBeamResult | undefined): EdgeBeamResult {
  // Stryker disable next-line ConditionalExpression: it saves trying depths that others do not have
  if (kind !== "below") return at();
  // What holds at one depth need not at a deeper one: where that takes a bar less it sags more once it cracks.
  const {least, most, step} = DEPTHS_BELOW_IN;
  // Stryker disable next-line EqualityOperator: the greatest is what is left
  for (let depthIn: number = least; depthIn < most; depthIn += step) {
    const beam = enough(depthIn);
    if (beam) return beam;
  }
  return at(most);
}

/** Depths that are tried for a beam below the deck, in. */
export const DEPTHS_BELOW_IN = {least: 12, most: 96, step: 2} as const;
/** Checks that a deeper beam is the remedy for; those of its way only with bars, for strands compress a deep beam off its centroid. */
const SIZING: readonly string[] = [
  "beam strength", "beam ductility", "beam bottom steel", "beam least steel", "beam shear", "beam shear and torsion", "beam stirrups",
  "beam sag", "beam tension", "beam sustained compression", "beam total compression",
];
const WITH_BARS: readonly string[] = [...SIZING, "beam stripping tension", "beam hauling tension"];
