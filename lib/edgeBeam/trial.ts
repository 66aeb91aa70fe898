import type {Catalog} from "../catalog.js";
import {exceeds} from "../checks.js";
import type {Design} from "../design/design.js";
import {shearRootPsi} from "../materials/shearRoot.js";
import {TENSION_COEFFICIENT, allowables} from "../member/allowables.js";
import {SHEAR_PHI} from "../member/shear.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {LOWEST_IN, strandOfSize} from "../beams/prestressedBeam.js";
import {TORSION_PHI, crackingTorsion} from "../beams/torsion.js";
import {torsionOutlineOf} from "../beams/torsionOutline.js";
import {IN_PER_FT} from "../units.js";
import {edgeBeamBending, edgeBeamStrands, type EdgeBeamBending, type EdgeBeamStrands} from "./bending.js";
import {edgeBeamHandling, type EdgeBeamHandling} from "./handling.js";
import {selfPlfOf} from "./loads.js";
import {edgeBeamLedge, type EdgeBeamLedge, type LedgeBySize} from "./ledge.js";
import type {EdgeBeamSection} from "./section.js";
import {barService, soffitTensionKsi, strandService, type EdgeBeamService} from "./service.js";
import {edgeBeamStirrups, edgeBeamTwist, twistBottomIn2, type ClosedStirrups, type EdgeBeamTwist} from "./twist.js";
import type {SectionProperties} from "../sections/shape.js";
import type {LoadedSection, UncheckedBeam} from "./unchecked.js";

/**
 * An edge beam under its loads of which each part is computed when it is first read: most of those that are tried do not
 * do, and one limit is enough to know it by. {@link uncheckedBeam} is the same beam with all of its parts.
 */
export class BeamOnTrial implements UncheckedBeam {
  #strands: EdgeBeamStrands | "none" | undefined;
  #bending: EdgeBeamBending | undefined;
  #twist: EdgeBeamTwist | "none" | undefined;
  #stirrups: {readonly bySize: LedgeBySize | undefined; readonly stirrups: ClosedStirrups | undefined} | undefined;
  #ledge: EdgeBeamLedge | "none" | undefined;
  #service: EdgeBeamService | undefined;
  #handling: EdgeBeamHandling | undefined;

  constructor(readonly design: Design, private readonly catalog: Catalog, private readonly under: LoadedSection) {}

  get kind() { return this.under.section.kind; }
  get shape() { return this.under.section.shape; }
  get concrete() { return this.under.section.concrete; }
  get depthIn() { return this.under.section.depthIn; }
  get deckDepthIn() { return this.under.section.deckDepthIn; }
  get belowDeckIn() { return this.under.section.belowDeckIn; }
  get reachIn() { return this.under.section.reachIn; }
  get netWebIn() { return this.under.section.netWebIn; }
  get seat() { return this.under.section.seat; }
  get eccentricityIn() { return this.under.section.eccentricityIn; }
  get selfEccentricityIn() { return this.under.section.selfEccentricityIn; }
  get section() { return this.under.section.shape.section; }
  get spanFt() { return this.design.bay.beamSpanFt; }
  get loads() { return this.under.loads; }
  get demand() { return this.under.demand; }
  // The load hangs on the ledge near the beam's bottom, so no stretch at the support is spared (ACI 318-19 9.4.3.2).
  get momentKipIn() { return this.under.demand.momentKipIn; }
  get shearKip() { return this.under.demand.shearKip; }
  get torsionKipIn() { return this.under.demand.torsionKipIn; }
  get torsionThresholdKipIn() { return TORSION_PHI * crackingTorsion(torsionOutlineOf(this.shape), this.concrete).thresholdKipIn; }

  get strands(): EdgeBeamStrands | undefined {
    this.#strands ??= edgeBeamStrands(this.design, this.catalog, this.under.section, this.loads) ?? "none";
    return this.#strands === "none" ? undefined : this.#strands;
  }

  get bars() { return this.#bent.bars; }
  get barsSuffice() { return this.#bent.suffice; }
  get effectiveDepthIn() { return this.#bent.effectiveDepthIn; }
  get leastSteel() { return this.#bent.leastSteel; }
  get strength() { return this.#bent.strength; }
  get bottomUse() { return this.#bent.bottomUse; }
  get concreteShearKip() { return shearOfRootsKip(2, this.under.section, this.effectiveDepthIn); }
  get greatestShearKip() { return greatestWebShearKip(this.under.section, this.effectiveDepthIn); }

  get twist(): EdgeBeamTwist | undefined {
    this.#twist ??= edgeBeamTwist(this.design, this.under.section, this.demand, this.effectiveDepthIn) ?? "none";
    return this.#twist === "none" ? undefined : this.#twist;
  }

  get stirrups() { return this.#stirred().stirrups; }

  get ledge(): EdgeBeamLedge | undefined {
    if (this.#ledge === undefined) {
      const {bySize, stirrups} = this.#stirred();
      this.#ledge = (bySize && stirrups && edgeBeamLedge(this.design, this.demand, this.#bent, stirrups, bySize)) ?? "none";
    }
    return this.#ledge === "none" ? undefined : this.#ledge;
  }

  get service(): EdgeBeamService {
    const {design, strands, demand} = this;
    return (this.#service ??= strands ? strandService(design, this.loads, demand, strands) : barService(design, this.under.section, demand, this.#bent));
  }

  get handling(): EdgeBeamHandling {
    return (this.#handling ??= edgeBeamHandling(this.design, this.under.section, selfPlfOf(this.under.section), this.strands));
  }

  get #bent(): EdgeBeamBending {
    if (this.#bending) return this.#bending;
    const {design, demand, under: {section}} = this;
    return (this.#bending = edgeBeamBending(design, this.catalog, section, this.strands, demand, {
      areaIn2: twistBottomIn2(design, section, demand), diagrams: demand.end.stems.diagrams, torsionKipIn: demand.torsionKipIn,
    }));
  }

  #stirred() {
    if (this.#stirrups) return this.#stirrups;
    const {design, demand, twist, under: {section}} = this;
    const bySize = section.kind === "ledge" && twist ? this.under.ledge(this.catalog, design.edgeBeam.coverIn) : undefined;
    const hangers = bySize?.places.map(({hanger}) => hanger) ?? [];
    const stirrups = twist && edgeBeamStirrups(
      this.catalog, section.concrete, section.shape.webWidthIn, this.effectiveDepthIn, demand.shearKip, twist.design,
      Math.max(0, ...hangers.map(({hangerIn2PerFt}) => hangerIn2PerFt / IN_PER_FT)), Math.min(24, ...hangers.map(({greatestSpacingIn}) => greatestSpacingIn)),
    );
    return (this.#stirrups = {bySize, stirrups});
  }
}

/** The greatest shear that a beam's web carries, whatever the stirrups, with its steel at a depth: 10 sqrt(f'c) (ACI 318-19 22.5.1.2), kip. */
export function greatestWebShearKip(section: EdgeBeamSection, effectiveDepthIn: number): number {
  return shearOfRootsKip(10, section, effectiveDepthIn);
}

function shearOfRootsKip(rootsPsi: number, {concrete, netWebIn}: EdgeBeamSection, effectiveDepthIn: number): number {
  return SHEAR_PHI * rootsPsi * (shearRootPsi(concrete) / 1000) * netWebIn * effectiveDepthIn;
}

/** All of an edge beam under its loads: bending, torsion, ledge, service and handling. */
export function uncheckedBeam(beam: BeamOnTrial): UncheckedBeam {
  return {
    // Field by field, as all that is made by the thousand.
    kind: beam.kind, shape: beam.shape, concrete: beam.concrete, depthIn: beam.depthIn, deckDepthIn: beam.deckDepthIn, belowDeckIn: beam.belowDeckIn, reachIn: beam.reachIn,
    netWebIn: beam.netWebIn, seat: beam.seat, eccentricityIn: beam.eccentricityIn, selfEccentricityIn: beam.selfEccentricityIn,
    section: beam.section, spanFt: beam.spanFt, loads: beam.loads, demand: beam.demand,
    momentKipIn: beam.momentKipIn, shearKip: beam.shearKip, torsionKipIn: beam.torsionKipIn, torsionThresholdKipIn: beam.torsionThresholdKipIn,
    bars: beam.bars, barsSuffice: beam.barsSuffice, strands: beam.strands, effectiveDepthIn: beam.effectiveDepthIn, leastSteel: beam.leastSteel,
    strength: beam.strength, bottomUse: beam.bottomUse, concreteShearKip: beam.concreteShearKip, greatestShearKip: beam.greatestShearKip,
    twist: beam.twist, stirrups: beam.stirrups, ledge: beam.ledge, service: beam.service, handling: beam.handling,
  };
}

/**
 * Whether the soffit of a beam with strands cracks in service whatever the losses: with all of the initial jacking stress
 * left in all of its strands, and these as low as any can lie (P/A + P e/Sb - M/Sb beyond the tension of class T, ACI
 * 318-19 24.5.2.1). It saves making a member of sizes that are far from enough.
 */
export function surelyCracks(design: Pick<Design, "edgeBeam">, catalog: Catalog, {section: {shape: {section}}, demand}: LoadedSection): boolean {
  return cracksUnder(demand.serviceKipIn, design, catalog, section);
}

/** {@link surelyCracks} under a moment in service, kip-in. */
export function cracksUnder(momentKipIn: number, {edgeBeam: {steel, strands, strengthPsi}}: Pick<Design, "edgeBeam">, catalog: Catalog, section: Pick<SectionProperties, "areaIn2" | "ybIn" | "sbIn3">): boolean {
  if (steel !== "strands") return false;
  const mostKip = strands * strandOfSize(catalog).areaIn2 * JACKING_STRESS_KSI;
  const tensionKsi = momentKipIn / section.sbIn3 - mostKip * (1 / section.areaIn2 + Math.max(0, section.ybIn - LOWEST_IN) / section.sbIn3);
  return exceeds(tensionKsi, (TENSION_COEFFICIENT.T * Math.sqrt(strengthPsi)) / 1000);
}

/** What {@link cracksUnder} asks of a rectangle. */
export function rectangle(widthIn: number, depthIn: number): Pick<SectionProperties, "areaIn2" | "ybIn" | "sbIn3"> {
  return {areaIn2: widthIn * depthIn, ybIn: depthIn / 2, sbIn3: (widthIn * depthIn * depthIn) / 6};
}

/** Whether the soffit of a beam with strands cracks in service. */
export function soffitCracks({design, demand, strands}: BeamOnTrial): boolean {
  return strands !== undefined && soffitTensionKsi(design, demand, strands) > allowables(strands.member, "T").serviceTensionKsi;
}

/**
 * Whether strength, bottom steel or sag of a beam lack anything, or the soffit of one with strands cracks: by the numbers
 * of their checks, what is known soonest first.
 */
export function lacksSteel(beam: BeamOnTrial): boolean {
  return soffitCracks(beam) || (beam.strands !== undefined && sags(beam))
    || exceeds(beam.momentKipIn, beam.strength.designMomentKipIn) || exceeds(beam.bottomUse, 1) || sags(beam);
}

function sags({service: {countedIn, allowedIn}}: BeamOnTrial): boolean {
  return exceeds(countedIn, allowedIn);
}
