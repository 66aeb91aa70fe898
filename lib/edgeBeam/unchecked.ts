import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import {SHEAR_PHI} from "../member/shear.js";
import type {FlexuralStrength} from "../member/flexure.js";
import type {Member} from "../member/member.js";
import type {SectionProperties} from "../sections/shape.js";
import {IN_PER_FT} from "../units.js";
import type {BarLayout} from "./bars.js";
import {edgeBeamBending, edgeBeamStrands, type EdgeBeamStrands} from "./bending.js";
import {edgeBeamDemand, type EdgeBeamDemand} from "./demand.js";
import {edgeBeamHandling, type EdgeBeamHandling} from "./handling.js";
import {edgeBeamLedge, ledgePlaces, type EdgeBeamLedge} from "./ledge.js";
import {loadsOn, type EdgeBeamLoads} from "./loads.js";
import type {EdgeBeamSection} from "./section.js";
import {barService, strandService, type EdgeBeamService} from "./service.js";
import {edgeBeamStirrups, edgeBeamTwist, type EdgeBeamTwist, type ClosedStirrups} from "./twist.js";
import type {LeastSteel} from "./leastSteel.js";
import {TORSION_PHI, crackingTorsion} from "../beams/torsion.js";
import {torsionOutlineOf} from "../beams/torsionOutline.js";
import {shearRootPsi} from "../materials/shearRoot.js";

/** The first design of the edge beam before it is checked. */
export interface UncheckedBeam extends EdgeBeamSection {
  readonly section: SectionProperties;
  readonly spanFt: number;
  readonly loads: EdgeBeamLoads;
  readonly demand: EdgeBeamDemand;
  readonly momentKipIn: number;
  readonly shearKip: number;
  /** Torsion at the support, kip-in, and the torsion below which it need not be counted. */
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
  /** Bending and torsion on the bottom steel, over what it can pull, where most. */
  readonly bottomUse: number;
  /** phi Vc with at least minimum stirrups, and the most that a section of this size may carry, kip. */
  readonly concreteShearKip: number;
  readonly greatestShearKip: number;
  /** Undefined where the cover leaves no room for stirrups. */
  readonly twist: EdgeBeamTwist | undefined;
  readonly stirrups: ClosedStirrups | undefined;
  /** Undefined without a ledge, and where its bars do not fit. */
  readonly ledge: EdgeBeamLedge | undefined;
  readonly service: EdgeBeamService;
  readonly handling: EdgeBeamHandling;
}

/** What an edge beam of a section carries, whatever its steel. */
export interface LoadedSection {
  readonly section: EdgeBeamSection;
  readonly loads: EdgeBeamLoads;
  readonly demand: EdgeBeamDemand;
}

/** What an edge beam of a section carries, and its strands under that: all that is known of it before any bars. */
export interface LoadedBeam extends LoadedSection {
  /** Both undefined where bars carry the bending. */
  readonly strands: EdgeBeamStrands | undefined;
  readonly stranded: EdgeBeamService | undefined;
}

/** The section of an edge beam under its loads. */
export function loadedSection(design: Design, member: Member, floor: FloorLoads, section: EdgeBeamSection): LoadedSection {
  const loads = loadsOn(design, member, floor, section);
  return {section, loads, demand: edgeBeamDemand(design, member, section, loads)};
}

/** The edge beam of a section under its loads. */
export function loadedBeam(design: Design, catalog: Catalog, {section, loads, demand}: LoadedSection): LoadedBeam {
  const strands = edgeBeamStrands(design, catalog, section, loads);
  return {section, loads, demand, strands, stranded: strands && strandService(design, loads, demand, strands)};
}

/** All of an edge beam under its loads: bending, torsion, ledge, service and handling. */
export function uncheckedBeam(design: Design, catalog: Catalog, member: Member, {section, loads, demand, strands, stranded}: LoadedBeam): UncheckedBeam {
  const {shape, concrete: material} = section;
  // Torsion's steel does not depend on where the bending steel lies, so it can be had before that.
  const firstTwist = edgeBeamTwist(design, section, demand, 0.9 * section.depthIn);
  const bending = edgeBeamBending(design, catalog, section, strands, demand, {
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
  return {
    // Field by field, as all that is made by the thousand.
    kind: section.kind, shape, concrete: material, depthIn: section.depthIn, deckDepthIn: section.deckDepthIn, belowDeckIn: section.belowDeckIn, reachIn: section.reachIn,
    netWebIn: section.netWebIn, seat: section.seat, eccentricityIn: section.eccentricityIn, selfEccentricityIn: section.selfEccentricityIn,
    section: shape.section, spanFt: design.bay.beamSpanFt, loads, demand,
    // The load hangs on the ledge near the beam's bottom, so no stretch at the support is spared (ACI 318-19 9.4.3.2).
    momentKipIn: demand.momentKipIn, shearKip: demand.shearKip, torsionKipIn: demand.torsionKipIn,
    torsionThresholdKipIn: TORSION_PHI * crackingTorsion(torsionOutlineOf(shape), material).thresholdKipIn,
    bars: bending.bars, barsSuffice: bending.suffice, strands: bending.strands, effectiveDepthIn, leastSteel: bending.leastSteel,
    strength: bending.strength, bottomUse: bending.bottomUse,
    concreteShearKip: SHEAR_PHI * 2 * rootKsi * section.netWebIn * effectiveDepthIn,
    greatestShearKip: SHEAR_PHI * 10 * rootKsi * section.netWebIn * effectiveDepthIn,
    twist, stirrups,
    ledge: places && stirrups && edgeBeamLedge(design, catalog, section, demand, bending, stirrups, places),
    service: stranded ?? barService(design, section, demand, bending),
    handling: edgeBeamHandling(design, section, loads, bending),
  };
}
