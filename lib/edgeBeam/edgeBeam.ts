import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {edgeBeamChecks} from "./edgeBeamChecks.js";
import {edgeBeamSection} from "./section.js";
import {stemRowChecks} from "../beams/stemRowCheck.js";
import {uncheckedBeam, type UncheckedBeam} from "./unchecked.js";

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
  return sized(design, (depthIn) => {
    const unchecked = uncheckedBeam(design, catalog, member, loads, edgeBeamSection(design, member, depthIn));
    return {...unchecked, checks: edgeBeamChecks(design, member, unchecked)};
  });
}

/** A beam alone with the checks of its row of stems. */
export function underItsStems(beam: EdgeBeamResult, stems: readonly Check[]): EdgeBeamResult {
  return {...beam, checks: [...stems, ...beam.checks]};
}

/** The beam of a trial depth: a beam below the deck by the least that does, others by their parts. */
function sized(design: Design, at: (depthIn?: number) => EdgeBeamResult): EdgeBeamResult {
  // Stryker disable next-line ConditionalExpression: it saves trying depths that others do not have
  if (design.edgeBeam.kind !== "below") return at();
  const sizing = design.edgeBeam.steel === "bars" ? [...SIZING, ...HANDLING] : SIZING;
  const holds = ({checks}: EdgeBeamResult) => !checks.some(({id, verdict}) => sizing.includes(id) && verdict !== "ok" && verdict !== "near");
  // What holds at one depth need not at a deeper one: where that takes a bar less it sags more once it cracks.
  const {least, most, step} = DEPTHS_BELOW_IN;
  // Stryker disable next-line EqualityOperator: the greatest is what is left
  for (let depthIn: number = least; depthIn < most; depthIn += step) {
    const beam = at(depthIn);
    if (holds(beam)) return beam;
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
const HANDLING: readonly string[] = ["beam stripping tension", "beam hauling tension"];
