import {barOf, type Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import {BAR_YIELD_KSI, barStressKsi, type Bar} from "../materials/reinforcement.js";
import {compressionZone} from "../member/compressionZone.js";
import {flexuralStrength, type FlexuralStrength, type SteelLayer} from "../member/flexure.js";
import {makeMember, type Member} from "../member/member.js";
import {CRACKING_MARGIN, crackingMomentKipIn} from "../member/minimumStrength.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {strandLayers} from "../member/strength.js";
import {barLayout, type BarLayout} from "./bars.js";
import type {EdgeBeamDemand} from "./demand.js";
import type {EdgeBeamLoads} from "./loads.js";
import type {EdgeBeamSection} from "./section.js";
import {leastSteel, type LeastSteel} from "./leastSteel.js";
import {steelForMomentIn2} from "../beams/rectangularSteel.js";
import {beamLayout, mostBeamStrands, strandOfSize} from "../beams/prestressedBeam.js";
import type {PointLoadDiagrams} from "../beams/stemLoads.js";

/** The beam as a pretensioned member. */
export interface EdgeBeamStrands {
  readonly member: Member;
  /** Strands required by the design, and the most that the beam's foot has places for; the lesser is used. */
  readonly asked: number;
  readonly places: number;
  /** Prestress at midspan under the dead load. */
  readonly state: PrestressState;
  /** Least design strength, 1.2 times the moment that cracks the soffit, kip-in (ACI 318-19 9.6.2.1). */
  readonly leastKipIn: number;
}

/** The steel that carries the beam's bending, and its strength. */
export interface EdgeBeamBending {
  /** Bars in the bottom: all of the steel, or what strands need besides; none where strands suffice. */
  readonly bars: BarLayout;
  /** Whether bars within the practical number suffice. */
  readonly suffice: boolean;
  readonly strands: EdgeBeamStrands | undefined;
  /** Compressed face to the bars' centroid; with strands to the strands' and not below 0.8 of the depth, in. */
  readonly effectiveDepthIn: number;
  /** Minimum bars; areas of 0 with strands, which have a least strength instead. */
  readonly leastSteel: LeastSteel;
  readonly strength: FlexuralStrength;
  /** Moment, and what torsion pulls on the bottom bars at the same place, over what the bottom steel can pull, where most. */
  readonly bottomUse: number;
}

/** Strength reduction factor of a section that its steel's yielding governs, the greatest there is (ACI 318-19 21.2.2). */
const GREATEST_PHI = 0.9;
/** Bars beyond which a first size should be made deeper instead (common practice). */
const MOST_BARS = 24;
/** Strength of a beam's concrete when strands are cut or the beam is lifted, over its final strength (3,500 of 5,000 psi in the handbook's tables). */
export const RELEASE_SHARE = 0.7;
/** Bars around a stirrup stand no further apart than this, in (ACI 318-19 9.7.5.1). */
export const SIDE_BAR_SPACING_IN = 12;

/** The steel that torsion requires in the beam's bottom at the end where the torsion is greatest. */
export interface BottomTwist {
  readonly areaIn2: number;
  readonly diagrams: PointLoadDiagrams;
  readonly torsionKipIn: number;
}

/**
 * The fewest bottom bars that carry the factored moment together with the torsion's pull on them and reach the minimum steel;
 * with strands, the fewest bars that those need besides, and none where they suffice alone. Strength by strain
 * compatibility of both steels together (ACI 318-19 22.2, 22.3).
 */
export function edgeBeamBending(
  design: Design, catalog: Catalog, section: EdgeBeamSection, strands: EdgeBeamStrands | undefined, demand: EdgeBeamDemand, twist: BottomTwist,
): EdgeBeamBending {
  const {edgeBeam: input} = design;
  const {shape, depthIn} = section;
  const bar = barOf(catalog, input.barSize, "edgeBeam.barSize");
  const zone = strands?.member.compression ?? compressionZone(shape, section.concrete);
  const strandsBelow = strands ? strandLayers(strands.member, 0.5, strands.state.losses.effectiveStressKsi) : [];
  const highestIn = strands ? Math.max(...strands.member.layout.rows.map((row) => row.centerIn)) : undefined;
  const strengthOf = (bars: BarLayout) => flexuralStrength(zone, [...strandsBelow, ...barLayers(bars, depthIn)]);
  const leastOf = (bars: BarLayout) => (strands ? NO_LEAST_STEEL : leastSteel({
    webWidthIn: shape.webWidthIn, tensionWidthIn: shape.widthIn, depthIn: depthIn - bars.centroidIn, strengthPsi: input.strengthPsi, momentKipIn: demand.momentKipIn,
  }));
  const bentBy = (bars: BarLayout, strength = strengthOf(bars), least = leastOf(bars), use = bottomUse(strength, demand, twist)): Omit<EdgeBeamBending, "suffice"> => {
    const centroidIn = strands ? Math.min(0.2 * depthIn, strands.member.layout.centroidCenterIn) : bars.centroidIn;
    return {bars, strands, effectiveDepthIn: depthIn - centroidIn, leastSteel: least, strength, bottomUse: use};
  };
  const requiredKipIn = Math.max(demand.momentKipIn, strands?.leastKipIn ?? 0);
  const layoutOf = (count: number) => barsOver(count, input.webWidthIn, input.coverIn, bar, highestIn);
  // Rows stop at mid-depth: bars above it no longer help.
  const {rows, rowHeightsIn} = layoutOf(MOST_BARS);
  // Stryker disable next-line EqualityOperator: no row stands at mid-depth to the last digit
  const most = Math.max(2, rows.reduce((sum, bars, row) => ((rowHeightsIn[row] as number) > depthIn / 2 ? sum : sum + bars), 0));
  // No bar lies deeper than those of the lowest row.
  const deepestIn = depthIn - (rowHeightsIn[0] as number);
  const fewest = strands ? 0 : Math.min(most, Math.max(2, barsFor(steelForMomentIn2({
    momentKipIn: demand.momentKipIn, widthIn: shape.widthIn, depthIn: deepestIn, strengthPsi: input.strengthPsi, phi: GREATEST_PHI,
  }), bar)));
  // Stryker disable next-line EqualityOperator: the greatest is what is left
  for (let count = fewest; count < most; count++) {
    // Strength first, which stops most; the use along the beam takes longest to know.
    const bars = layoutOf(count);
    const strength = strengthOf(bars);
    // Stryker disable next-line EqualityOperator: no strength meets what is required to the last digit
    if (!(strength.designMomentKipIn >= requiredKipIn)) {
      // A bar adds no more than its pull at its lever, for it takes from all other steel; so those next to this one surely do not do either.
      const lacksKipIn = requiredKipIn / GREATEST_PHI - strength.nominalMomentKipIn;
      count += Math.max(0, barsFor(lacksKipIn / (BAR_YIELD_KSI * deepestIn), bar) - 1);
      continue;
    }
    const least = leastOf(bars);
    if (!(bars.areaIn2 >= least.areaIn2)) continue;
    const use = bottomUse(strength, demand, twist);
    if (use <= 1) return {...bentBy(bars, strength, least, use), suffice: true};
  }
  const last = bentBy(layoutOf(most));
  return {...last, suffice: last.strength.designMomentKipIn >= requiredKipIn && last.bars.areaIn2 >= last.leastSteel.areaIn2 && last.bottomUse <= 1};
}

/** The least whole number of bars of an area that may do; no number where no area does. */
function barsFor(areaIn2: number | undefined, {areaIn2: eachIn2}: Bar): number {
  return areaIn2 === undefined ? Infinity : Math.ceil(areaIn2 / eachIn2 - 1e-9);
}

/** Bars from the soffit up, or above the strands where there are some. */
function barsOver(count: number, widthIn: number, coverIn: number, bar: Bar, highestStrandIn: number | undefined): BarLayout {
  if (count === 0) return {bar, count, areaIn2: 0, rows: [], rowHeightsIn: [], centroidIn: 0};
  const layout = barLayout(count, widthIn, coverIn, bar);
  if (highestStrandIn === undefined) return layout;
  // A clear inch above the highest row of strands.
  const liftIn = Math.max(0, highestStrandIn + 1.25 + bar.diameterIn / 2 - (layout.rowHeightsIn[0] as number));
  return {...layout, rowHeightsIn: layout.rowHeightsIn.map((heightIn) => heightIn + liftIn), centroidIn: layout.centroidIn + liftIn};
}

function barLayers({rows, rowHeightsIn, bar}: BarLayout, depthIn: number): SteelLayer[] {
  return rows.map((count, i) => ({
    areaIn2: count * bar.areaIn2, depthIn: depthIn - (rowHeightsIn[i] as number), strainBefore: 0, stressKsi: barStressKsi,
  }));
}

/** The beam with the strands that the design asks for, or as many as have places below its centroid; undefined where bars carry its bending. */
export function edgeBeamStrands(design: Design, catalog: Catalog, section: EdgeBeamSection, loads: EdgeBeamLoads): EdgeBeamStrands | undefined {
  const {edgeBeam: input, bay} = design;
  if (input.steel === "bars") return undefined;
  const {shape} = section;
  const places = mostBeamStrands(shape);
  const member = makeMember({
    shape, layout: beamLayout(shape, strandOfSize(catalog), Math.min(input.strands, places)), concreteKind: "normalweight",
    strengthPsi: input.strengthPsi, releaseStrengthPsi: Math.max(2500, RELEASE_SHARE * input.strengthPsi),
    toppingIn: 0, toppingStrengthPsi: 3000, humidityPercent: design.criteria.humidityPercent,
  });
  const state = prestressState(member, bay.beamSpanFt, 0.5, loads.deadPlf - loads.selfPlf);
  return {member, asked: input.strands, places, state, leastKipIn: CRACKING_MARGIN * crackingMomentKipIn(member, bay.beamSpanFt, state)};
}

/**
 * The greatest of Mu / (phi Mn) and what torsion requires of the bottom steel beside it, along the beam: steel for torsion is
 * added to that for bending at the same section (ACI 318-19 9.5.4.3). Torsion's share falls with the torsion, and the
 * steel's lever is taken as that at midspan.
 */
function bottomUse(strength: FlexuralStrength, demand: EdgeBeamDemand, twist: BottomTwist): number {
  const pullKip = twist.areaIn2 * BAR_YIELD_KSI;
  const use = (momentKipFt: number, torsionKipIn: number) =>
    (12 * momentKipFt) / strength.designMomentKipIn +
    (twist.torsionKipIn > 0 ? (pullKip * Math.abs(torsionKipIn)) / twist.torsionKipIn / strength.compressionKip : 0);
  let most = demand.momentKipIn / strength.designMomentKipIn;
  for (const {momentFromKipFt, momentToKipFt, torsionFromKipIn, torsionToKipIn} of twist.diagrams.stretches) {
    most = Math.max(most, use(momentFromKipFt, torsionFromKipIn), use(momentToKipFt, torsionToKipIn));
  }
  return most;
}

const NO_LEAST_STEEL: LeastSteel = {areaIn2: 0, crackingIn2: 0, widthIn: 0, neededIn2: undefined};
