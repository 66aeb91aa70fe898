import {barOf, type Catalogue} from "../catalogue.js";
import {type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {factoredLoad} from "../loads/combinations.js";
import {loadOn, type ElementLoad, type FloorLoads} from "../loads/floorLoads.js";
import {concrete} from "../materials/concrete.js";
import {BAR_YIELD_KSI, barStressKsi, type Bar} from "../materials/reinforcement.js";
import {compressionZone} from "../member/compressionZone.js";
import {flexuralStrength, type FlexuralStrength} from "../member/flexure.js";
import type {Member} from "../member/member.js";
import {SHEAR_PHI} from "../member/shear.js";
import {lBeam} from "../sections/prismatic.js";
import {integrate} from "../sections/polygon.js";
import type {SectionProperties, Shape} from "../sections/shape.js";
import {IN2_PER_FT2, IN_PER_FT} from "../units.js";
import {barLayout, type BarLayout} from "./bars.js";
import {edgeBeamChecks} from "./edgeBeamChecks.js";
import {simpleSpanMomentKipIn, simpleSpanShearKip} from "./statics.js";

/** Loads on the edge beam, per foot of its length. */
export interface EdgeBeamLoads {
  readonly load: ElementLoad;
  /** Width of floor that the beam carries, ft. */
  readonly tributaryWidthFt: number;
  readonly selfPlf: number;
  readonly claddingPlf: number;
  /** Deck, topping and superimposed dead load that stand on the ledge. */
  readonly deckDeadPlf: number;
  readonly livePlf: number;
  readonly deadPlf: number;
  readonly factoredPlf: number;
  /** Factored load that stands on the ledge and twists the beam. */
  readonly factoredLedgePlf: number;
}

/** The seat of the deck on the ledge. */
export interface LedgeSeat {
  /** Deck on the ledge if every piece has its right length, in: projection less joint. */
  readonly nominalIn: number;
  /** The same after the tolerance on length, in. */
  readonly afterToleranceIn: number;
  readonly neededIn: number;
}

/** The first size of the edge beam. */
export interface EdgeBeamResult {
  readonly shape: Shape;
  readonly section: SectionProperties;
  readonly depthIn: number;
  /** Deck member and topping: the height between ledge and structural floor, in. */
  readonly deckDepthIn: number;
  readonly spanFt: number;
  readonly loads: EdgeBeamLoads;
  readonly seat: LedgeSeat;
  readonly momentKipIn: number;
  readonly shearKip: number;
  /** Twist at the support, kip-in, and the twist below which it need not be counted. */
  readonly torsionKipIn: number;
  readonly torsionThresholdKipIn: number;
  /** Load on the ledge to the web's centre line, in. */
  readonly eccentricityIn: number;
  readonly bars: BarLayout;
  /** Whether bars within the practical number carry the moment. */
  readonly barsSuffice: boolean;
  readonly effectiveDepthIn: number;
  readonly leastSteelIn2: number;
  readonly strength: FlexuralStrength;
  /** phi Vc with at least minimum stirrups, and the most that a section of this size may carry, kip. */
  readonly concreteShearKip: number;
  readonly greatestShearKip: number;
  readonly checks: readonly Check[];
}

/** Lengths of deck and frame may be off by this much together, in (trade tolerance manual MNL-135; from memory). */
export const LENGTH_TOLERANCE_IN = 1;
/** Bars beyond which a first size should be made deeper instead (common practice). */
const MOST_BARS = 24;

/**
 * First size of the L-shaped edge beam that carries one side of the deck: geometry, seat, loads, bending with mild
 * steel, shear demand, and the twist that the ledge brings.
 *
 * @throws InputError if a dimension cannot be
 */
export function edgeBeam(design: Design, catalogue: Catalogue, member: Member, loads: FloorLoads): EdgeBeamResult {
  const {edgeBeam: input, bay} = design;
  const deckDepthIn = member.compression.depthIn;
  const depthIn = input.ledgeDepthIn + deckDepthIn + input.upstandIn;
  const shape = lBeam("edge beam", {
    webWidthIn: input.webWidthIn, depthIn, ledgeProjectionIn: input.ledgeProjectionIn, ledgeDepthIn: input.ledgeDepthIn,
  });
  const {section} = shape;
  const material = concrete("normalweight", input.strengthPsi);
  const bar = barOf(catalogue, input.barSize, "edgeBeam.barSize");
  const beamLoads = loadsOn(design, member, loads, (section.areaIn2 * material.unitWeightPcf) / IN2_PER_FT2);
  const momentKipIn = simpleSpanMomentKipIn(beamLoads.factoredPlf, bay.beamSpanFt);
  const leastSteel = (bars: BarLayout) => leastSteelIn2(input.strengthPsi, input.webWidthIn, depthIn - bars.centroidIn);
  const zone = compressionZone(shape, material);
  const strengthOf = (bars: BarLayout) => flexuralStrength(zone, bars.rows.map((count, i) => ({
    areaIn2: count * bar.areaIn2, depthIn: depthIn - (bars.rowHeightsIn[i] as number), strainBefore: 0, stressKsi: barStressKsi,
  })));
  const {bars, strength, suffice} = fewestBars(bar, input.webWidthIn, input.coverIn, depthIn, (layout) => {
    const candidate = strengthOf(layout);
    return {strength: candidate, suffices: candidate.designMomentKipIn >= momentKipIn && layout.areaIn2 >= leastSteel(layout)};
  });
  const effectiveDepthIn = depthIn - bars.centroidIn;
  const rootKsi = (material.lambda * Math.sqrt(input.strengthPsi)) / 1000;
  const seat = seatOf(design, member);
  const eccentricityIn = input.webWidthIn / 2 + input.jointGapIn + seat.nominalIn / 2;
  const {areaIn2, perimeterIn} = integrate(shape.rings);
  const result: Omit<EdgeBeamResult, "checks"> = {
    shape, section, depthIn, deckDepthIn, spanFt: bay.beamSpanFt, loads: beamLoads, seat,
    momentKipIn,
    // The load hangs on the ledge near the beam's bottom, so no stretch at the support is spared (ACI 318-19 9.4.3.2).
    shearKip: simpleSpanShearKip(beamLoads.factoredPlf, bay.beamSpanFt, 0),
    torsionKipIn: simpleSpanShearKip(beamLoads.factoredLedgePlf, bay.beamSpanFt, 0) * eccentricityIn,
    torsionThresholdKipIn: (SHEAR_PHI * rootKsi * areaIn2 ** 2) / perimeterIn,
    eccentricityIn, bars, barsSuffice: suffice, effectiveDepthIn,
    leastSteelIn2: leastSteel(bars),
    strength,
    concreteShearKip: SHEAR_PHI * 2 * rootKsi * input.webWidthIn * effectiveDepthIn,
    greatestShearKip: SHEAR_PHI * 10 * rootKsi * input.webWidthIn * effectiveDepthIn,
  };
  return {...result, checks: edgeBeamChecks(design, result)};
}

function loadsOn(design: Design, member: Member, loads: FloorLoads, selfPlf: number): EdgeBeamLoads {
  const load = loadOn(loads, "edge beam");
  const tributaryWidthFt = design.bay.spanFt / 2;
  const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;
  const deckDeadPlf = (ownPsf + loads.superimposedDeadPsf) * tributaryWidthFt;
  const livePlf = load.governing.totalPsf * tributaryWidthFt;
  const deadPlf = deckDeadPlf + selfPlf + design.edgeBeam.claddingPlf;
  return {
    load, tributaryWidthFt, selfPlf, claddingPlf: design.edgeBeam.claddingPlf, deckDeadPlf, livePlf, deadPlf,
    factoredPlf: factoredLoad(deadPlf, livePlf),
    factoredLedgePlf: factoredLoad(deckDeadPlf, livePlf),
  };
}

/** Least end bearing, in: the larger of span/180 and 3 in for stemmed members, 2 in for slabs (ACI 318-19 16.2.6.2). */
export function leastBearingIn(spanFt: number, stemmed: boolean): number {
  return Math.max((spanFt * IN_PER_FT) / 180, stemmed ? 3 : 2);
}

function seatOf(design: Design, member: Member): LedgeSeat {
  const nominalIn = design.edgeBeam.ledgeProjectionIn - design.edgeBeam.jointGapIn;
  return {
    nominalIn,
    afterToleranceIn: nominalIn - LENGTH_TOLERANCE_IN,
    neededIn: leastBearingIn(design.bay.spanFt, member.shape.family === "double tee"),
  };
}

/** Least tension steel, in2: max(3 sqrt(f'c), 200) bw d / fy (ACI 318-19 9.6.1.2). */
function leastSteelIn2(strengthPsi: number, webWidthIn: number, effectiveDepthIn: number): number {
  return (Math.max(3 * Math.sqrt(strengthPsi), 200) / (BAR_YIELD_KSI * 1000)) * webWidthIn * effectiveDepthIn;
}

/** The fewest bars, two at least, that suffice; the most that are tried where none do. */
function fewestBars(
  bar: Bar, widthIn: number, coverIn: number, depthIn: number,
  trial: (bars: BarLayout) => {strength: FlexuralStrength; suffices: boolean},
): {bars: BarLayout; strength: FlexuralStrength; suffice: boolean} {
  let last: {bars: BarLayout; strength: FlexuralStrength} | undefined;
  for (let count = 2; count <= MOST_BARS; count++) {
    const bars = barLayout(count, widthIn, coverIn, bar);
    // Rows stop at mid-depth: bars above it no longer help.
    if (last && (bars.rowHeightsIn.at(-1) as number) > depthIn / 2) break;
    const {strength, suffices} = trial(bars);
    last = {bars, strength};
    if (suffices) return {...last, suffice: true};
  }
  return {...(last as {bars: BarLayout; strength: FlexuralStrength}), suffice: false};
}
