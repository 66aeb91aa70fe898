import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import {designCriteria} from "../deck/criteria.js";
import {deckMember} from "../deck/deckMember.js";
import {deckResult, type DeckResult} from "../deck/deckResult.js";
import {deckDemand, type DeckDemand} from "../deck/search.js";
import type {Design} from "../design/design.js";
import {hasRoofDeck} from "../design/used.js";
import {edgeBeam, type EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import {girder, type GirderResult} from "../girder/girder.js";
import {loadOn, type FloorLoads} from "../loads/floorLoads.js";
import {ownPsf, type Member} from "../member/member.js";
import type {RoofLoads} from "../snow/roofLoads.js";
import type {RoofBuild} from "../walls/topLevel.js";
import {drainageChecks} from "./drainageChecks.js";
import {fallPlan, riseAtIn, type FallPlan} from "./fallPlan.js";
import {roofLayers, type RoofLayers} from "./layers.js";
import {ofLevel, otherThan} from "./levelChecks.js";
import {ponding, type Ponding} from "./ponding.js";
import {ofRoof, roofDesign} from "./roofDesign.js";
import {roofFloor} from "./roofFloor.js";

/** A roof that is a level of its own. */
export interface RoofResult {
  /** The roof as the floor of a design of its own. */
  readonly design: Design;
  readonly layers: RoofLayers;
  readonly plan: FallPlan;
  /** How far the surface rises from its drains to its highest line, in: by the fall, or else by the camber that remains. */
  readonly riseIn: number;
  /** Roof live load, snow and rain, and all loads in the form of a floor's. */
  readonly snow: RoofLoads;
  readonly loads: FloorLoads;
  readonly member: Member;
  readonly deck: DeckResult;
  readonly edgeBeam: EdgeBeamResult;
  /** Undefined where the building has one bay across. */
  readonly girder: GirderResult | undefined;
  readonly ponding: Ponding;
  readonly checks: readonly Check[];
}

/**
 * The roof of a design as a level of its own: its deck chosen and checked as a floor's by the roof's loads, the floors'
 * beams under it, and the way that water takes.
 *
 * @param built - what {@link roofBuilt} found of it, before the walls were known
 * @param edgePlf - what is built on the roof's edge beam, such as a parapet
 * @param floor - the floor's beams: checks of the roof's beams that give the same numbers are not repeated
 * @throws InputError if parts of the roof do not fit each other, at a field of the roof where one is behind it
 */
export function roofResult(
  design: Design, catalog: Catalog, built: RoofBuilt, edgePlf: number, floor: {readonly edgeBeam: EdgeBeamResult; readonly girder: GirderResult | undefined},
): RoofResult {
  return ofRoof(design, () => {
    const roof = roofDesign(design, edgePlf);
    const {layers, plan, member} = built;
    const {roof: snow, floor: loads} = roofFloor(design, catalog, roof, plan, {widthFt: member.widthFt, ownPsf: ownPsf(member)});
    const deck = deckResult(roof, catalog, member, loads);
    const edge = edgeBeam(roof, catalog, member, loads);
    const inner = girder(roof, catalog, member, loads);
    const water = ponding(roof, plan, {member, camber: deck.camber, edgeBeam: edge, girder: inner}, design.snow.rainStaticIn + design.snow.rainHydraulicIn);
    return {
      design: roof, layers, plan, riseIn: plan.riseIn > 0 ? plan.riseIn : Math.max(0, deck.camber.longTermIn), snow, loads, member, deck, edgeBeam: edge, girder: inner, ponding: water,
      checks: ofLevel([
        ...deck.checks, ...drainageChecks(design, deck, water),
        // Stryker disable next-line ArrayDeclaration: what is no check is like none
        ...otherThan([...edge.checks, ...inner?.checks ?? []], [...floor.edgeBeam.checks, ...floor.girder?.checks ?? []]),
      ], "roof", "roof load"),
    };
  });
}

/** What of a roof of its own is known before what stands on its edge: its deck, layers and fall, and how high they build it up. */
export interface RoofBuilt extends Pick<RoofResult, "layers" | "plan" | "member"> {
  readonly build: RoofBuild;
}

/**
 * How a design's roof is built up; undefined where the roof is two loads.
 *
 * @throws InputError if member and strands of the roof do not fit each other
 */
export function roofBuilt(design: Design, catalog: Catalog): RoofBuilt | undefined {
  if (!hasRoofDeck(design)) return undefined;
  return ofRoof(design, () => {
    const member = deckMember(roofDesign(design, 0), catalog);
    const [layers, plan] = [roofLayers(design), fallPlan(design)];
    const steps = design.roof.drainage === "bearing";
    return {layers, plan, member, build: {
      member, toppingIn: design.roof.toppingIn, layersIn: layers.buildUpIn, riseIn: plan.riseIn,
      bearingsIn: Array.from({length: design.bay.baysAcross + 1}, (_, line) => (steps ? riseAtIn(plan, line * design.bay.spanFt) : 0)),
    }};
  });
}

/** What a design's roof requires of any deck, by the floor's search. */
export function roofDeckDemand(design: Design, catalog: Catalog, roof: RoofResult): DeckDemand {
  const {superimposedDeadPsf} = roof.loads;
  const demands = new Map<number, number>();
  const demandPsf = (memberWidthFt: number): number => {
    let psf = demands.get(memberWidthFt);
    // Stryker disable next-line ConditionalExpression: it spares working the same out again
    if (psf === undefined) {
      const {floor} = roofFloor(design, catalog, roof.design, roof.plan, {widthFt: memberWidthFt, ownPsf: ownPsf(roof.member)});
      psf = superimposedDeadPsf + loadOn(floor, "deck member").governing.totalPsf;
      demands.set(memberWidthFt, psf);
    }
    return psf;
  };
  return deckDemand(roof.design, catalog, designCriteria(roof.design, catalog, superimposedDeadPsf), demandPsf);
}

