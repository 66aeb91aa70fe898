import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import {SHEAR_PHI} from "../member/shear.js";
import type {FlexuralStrength} from "../member/flexure.js";
import type {Member} from "../member/member.js";
import type {SectionProperties} from "../sections/shape.js";
import {IN_PER_FT} from "../units.js";
import type {BarLayout} from "./bars.js";
import {edgeBeamBending, type EdgeBeamStrands} from "./bending.js";
import {edgeBeamChecks} from "./edgeBeamChecks.js";
import {edgeBeamDemand, type EdgeBeamDemand} from "./demand.js";
import {edgeBeamHandling, type EdgeBeamHandling} from "./handling.js";
import {edgeBeamLedge, ledgePlaces, type EdgeBeamLedge} from "./ledge.js";
import {loadsOn, type EdgeBeamLoads} from "./loads.js";
import {edgeBeamSection, type EdgeBeamSection} from "./section.js";
import {edgeBeamService, type EdgeBeamService} from "./service.js";
import {edgeBeamStirrups, edgeBeamTwist, type EdgeBeamTwist, type Stirrups} from "./twist.js";
import type {LeastSteel} from "./leastSteel.js";
import {TORSION_PHI, crackingTorsion} from "../beams/torsion.js";
import {torsionOutlineOf} from "../beams/torsionOutline.js";
import {stemRowChecks} from "../beams/stemRowCheck.js";
import {shearRootPsi} from "../materials/shearRoot.js";

/** The first design of the edge beam. */
export interface EdgeBeamResult extends EdgeBeamSection {
  readonly section: SectionProperties;
  readonly spanFt: number;
  readonly loads: EdgeBeamLoads;
  readonly demand: EdgeBeamDemand;
  readonly momentKipIn: number;
  readonly shearKip: number;
  /** Twist at the support, kip-in, and the twist below which it need not be counted. */
  readonly torsionKipIn: number;
  readonly torsionThresholdKipIn: number;
  readonly bars: BarLayout;
  /** Whether bars within the practical number suffice. */
  readonly barsSuffice: boolean;
  /** The beam as a pretensioned member, where strands carry its bending. */
  readonly strands: EdgeBeamStrands | undefined;
  readonly effectiveDepthIn: number;
  readonly leastSteel: LeastSteel;
  readonly strength: FlexuralStrength;
  /** Bending and twist on the bottom steel, over what it can pull, where most. */
  readonly bottomUse: number;
  /** phi Vc with at least minimum stirrups, and the most that a section of this size may carry, kip. */
  readonly concreteShearKip: number;
  readonly greatestShearKip: number;
  /** Undefined where the cover leaves no room for stirrups. */
  readonly twist: EdgeBeamTwist | undefined;
  readonly stirrups: Stirrups | undefined;
  /** Undefined without a ledge, and where its bars do not fit. */
  readonly ledge: EdgeBeamLedge | undefined;
  readonly service: EdgeBeamService;
  readonly handling: EdgeBeamHandling;
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
  const beam = sized(design, (depthIn) => withSection(design, catalog, member, loads, edgeBeamSection(design, member, depthIn)));
  return {...beam, checks: [...stemRowChecks(design, catalog, member), ...beam.checks]};
}

/** The beam of a trial depth: a beam below the deck by the least that does, others by their parts. */
function sized(design: Design, at: (depthIn?: number) => EdgeBeamResult): EdgeBeamResult {
  if (design.edgeBeam.kind !== "below") return at();
  const sizing = design.edgeBeam.steel === "bars" ? [...SIZING, ...HANDLING] : SIZING;
  const holds = ({checks}: EdgeBeamResult) => !checks.some(({id, verdict}) => sizing.includes(id) && verdict !== "ok" && verdict !== "near");
  // What holds at one depth need not at a deeper one: where that takes a bar less it sags more once it cracks.
  const {least, most, step} = DEPTHS_BELOW_IN;
  for (let depthIn: number = least; depthIn < most; depthIn += step) {
    const beam = at(depthIn);
    if (holds(beam)) return beam;
  }
  return at(most);
}

/** Depths that are tried for a beam below the deck, in. */
export const DEPTHS_BELOW_IN = {least: 12, most: 96, step: 2} as const;
/** Checks that a deeper beam is the remedy for; with strands, which squeeze a deep beam off its middle, not those of its way. */
const SIZING: readonly string[] = [
  "beam strength", "beam ductility", "beam bottom steel", "beam least steel", "beam shear", "beam shear and torsion", "beam stirrups",
  "beam sag", "beam tension", "beam sustained compression", "beam total compression",
];
const HANDLING: readonly string[] = ["beam stripping tension", "beam hauling tension"];

function withSection(design: Design, catalog: Catalog, member: Member, floor: FloorLoads, section: EdgeBeamSection): EdgeBeamResult {
  const {shape, concrete: material} = section;
  const loads = loadsOn(design, member, floor, section);
  const demand = edgeBeamDemand(design, member, section, loads);
  // Twist's steel does not depend on where the bending steel lies, so it can be had before that.
  const firstTwist = edgeBeamTwist(design, section, demand, 0.9 * section.depthIn);
  const bending = edgeBeamBending(design, catalog, section, loads, demand, {
    areaIn2: firstTwist?.bottomIn2 ?? 0, diagrams: demand.end.stems.diagrams, torsionKipIn: demand.torsionKipIn,
  });
  const {effectiveDepthIn} = bending;
  const twist = firstTwist && edgeBeamTwist(design, section, demand, effectiveDepthIn);
  const places = section.kind === "ledge" && twist ? ledgePlaces(design, member, section, demand) : undefined;
  const stirrups = twist && edgeBeamStirrups(
    catalog, material, shape.webWidthIn, effectiveDepthIn, demand.shearKip, twist.design,
    Math.max(0, ...(places ?? []).map(({hanger}) => hanger.hangerIn2PerFt / IN_PER_FT)), Math.min(24, ...(places ?? []).map(({hanger}) => hanger.greatestSpacingIn)),
  );
  const rootKsi = shearRootPsi(material) / 1000;
  const beam: Omit<EdgeBeamResult, "checks"> = {
    ...section, section: shape.section, spanFt: design.bay.beamSpanFt, loads, demand,
    // The load hangs on the ledge near the beam's bottom, so no stretch at the support is spared (ACI 318-19 9.4.3.2).
    momentKipIn: demand.momentKipIn, shearKip: demand.shearKip, torsionKipIn: demand.torsionKipIn,
    torsionThresholdKipIn: TORSION_PHI * crackingTorsion(torsionOutlineOf(shape), material).thresholdKipIn,
    bars: bending.bars, barsSuffice: bending.suffice, strands: bending.strands, effectiveDepthIn, leastSteel: bending.leastSteel,
    strength: bending.strength, bottomUse: bending.bottomUse,
    concreteShearKip: SHEAR_PHI * 2 * rootKsi * section.netWebIn * effectiveDepthIn,
    greatestShearKip: SHEAR_PHI * 10 * rootKsi * section.netWebIn * effectiveDepthIn,
    twist, stirrups,
    ledge: places && stirrups && edgeBeamLedge(design, catalog, section, demand, bending, stirrups, places),
    service: edgeBeamService(design, section, loads, demand, bending),
    handling: edgeBeamHandling(design, section, loads, bending),
  };
  return {...beam, checks: edgeBeamChecks(design, member, beam)};
}
