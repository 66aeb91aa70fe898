import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {edgeBeamChecks} from "./edgeBeamChecks.js";
import {failsOnItsWay} from "./handling.js";
import {selfPlfOf} from "./loads.js";
import {edgeBeamSection} from "./section.js";
import {stemRowChecks} from "../beams/stemRowCheck.js";
import {serviceChecks} from "./serviceChecks.js";
import {loadedBeam, uncheckedBeam, type LoadedBeam, type UncheckedBeam} from "./unchecked.js";

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
  return sized(design, (depthIn) => edgeBeamAt(design, catalog, member, loads, depthIn), (depthIn) => deepEnough(design, catalog, member, loads, depthIn), (depthIn) => {
    const section = edgeBeamSection(design, member, depthIn);
    return failsOnItsWay(section, selfPlfOf(section), design.bay.beamSpanFt);
  });
}

/** The beam alone, one below the deck with a depth that is tried. */
export function edgeBeamAt(design: Design, catalog: Catalog, member: Member, loads: FloorLoads, depthIn?: number): EdgeBeamResult {
  return checked(design, catalog, member, loadedBeam(design, catalog, member, loads, edgeBeamSection(design, member, depthIn)));
}

function checked(design: Design, catalog: Catalog, member: Member, loaded: LoadedBeam): EdgeBeamResult {
  const unchecked = uncheckedBeam(design, catalog, member, loaded);
  return {...unchecked, checks: edgeBeamChecks(design, member, unchecked)};
}

/** A beam below the deck of a depth that is tried; undefined where something of it fails that a deeper one is the remedy for. */
export function deepEnough(design: Design, catalog: Catalog, member: Member, loads: FloorLoads, depthIn: number): EdgeBeamResult | undefined {
  const loaded = loadedBeam(design, catalog, member, loads, edgeBeamSection(design, member, depthIn));
  const {strands, stranded: service} = loaded;
  // Strands are known in service before any bars: most beams that are too shallow crack.
  if (service && asksForDepth(design, serviceChecks(design, {strands, service}))) return undefined;
  const beam = checked(design, catalog, member, loaded);
  return asksForDepth(design, beam.checks) ? undefined : beam;
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
 * @param breaks - whether a beam with bars of a depth breaks on its way, which is known before all else of it
 */
function sized(
  design: Design, at: (depthIn?: number) => EdgeBeamResult, enough: (depthIn: number) => EdgeBeamResult | undefined, breaks: (depthIn: number) => boolean,
): EdgeBeamResult {
  // Stryker disable next-line ConditionalExpression: it saves trying depths that others do not have
  if (design.edgeBeam.kind !== "below") return at();
  // What holds at one depth need not at a deeper one: where that takes a bar less it sags more once it cracks.
  const {least, most, step} = DEPTHS_BELOW_IN;
  // Stryker disable next-line EqualityOperator: the greatest is what is left
  for (let depthIn: number = least; depthIn < most; depthIn += step) {
    // Stryker disable next-line ConditionalExpression: it saves working out beams that fail anyway
    if (design.edgeBeam.steel === "bars" && breaks(depthIn)) continue;
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
