import {edgeBeam, type EdgeBeamResult} from "./edgeBeam/edgeBeam.js";
import {girder, type GirderResult} from "./girder/girder.js";
import type {Catalog} from "./catalog.js";
import {worst, type Check, type Verdict} from "./checks.js";
import {columnsResult, type ColumnsResult} from "./columns/columnsResult.js";
import type {Framing} from "./columns/frame.js";
import {deckMember} from "./deck/deckMember.js";
import {designCriteria} from "./deck/criteria.js";
import {deckResult, type DeckResult} from "./deck/deckResult.js";
import {deckDemand, searchDeck, type Candidate, type DeckDemand} from "./deck/search.js";
import {floorDiaphragm, type FloorDiaphragm} from "./diaphragm/floorDiaphragm.js";
import {floorLoads, loadOn, type FloorLoads} from "./loads/floorLoads.js";
import type {Camber} from "./member/camber.js";
import {ownPsf, withExtraTopping, type Member} from "./member/member.js";
import {designDaylight, type DesignDaylight} from "./daylight/designDaylight.js";
import {inPart} from "./design/refusal.js";
import {hasRoof} from "./design/used.js";
import type {Hanging} from "./parking/heights.js";
import {parking} from "./parking/parking.js";
import type {ParkingResult} from "./parking/result.js";
import {headroomChecks, leastUnderBeams} from "./story/headroom.js";
import {airResult} from "./air/air.js";
import {boxesAcross, hungBoxes} from "./air/casing.js";
import type {AirResult} from "./air/result.js";
import {services, type ServicesResult} from "./air/services.js";
import {roofBuilt, roofDeckDemand, roofResult, type RoofResult} from "./roof/roof.js";
import {openTopResult, type BeamsOnTop, type OpenTopResult} from "./roof/openTop.js";
import {roofLoads, type RoofLoads, type RoofShape} from "./snow/roofLoads.js";
import {storyStack, type StoryStack} from "./story/stack.js";
import {carriedExtraPsf, floorTopping, settledTopping, type FloorTopping, type UnderTrueWeight} from "./topping/floorTopping.js";
import type {SettledTopping} from "./topping/fixedPoint.js";
import {neighbors, type Neighbors} from "./topping/neighbors.js";
import type {Design} from "./design/design.js";
import {endStrip, type EndStrip} from "./walls/endStrip.js";
import {walls, type WallsResult} from "./walls/walls.js";

/** All results of a design, in the order of the job. */
export interface Evaluation {
  readonly design: Design;
  readonly loads: FloorLoads;
  readonly member: Member;
  /** The member as beams and columns feel it: with all the topping that fills its camber. */
  readonly laid: Member;
  readonly deck: DeckResult;
  /** The deck's camber as the floor has it: under all of the topping that fills it, where `deck.camber` counts the least thickness. */
  readonly camber: Camber;
  /** Undefined where the deck has no topping. */
  readonly topping: FloorTopping | undefined;
  /** Two pieces side by side; undefined where a topping hides their joint. */
  readonly joint: Neighbors | undefined;
  readonly edgeBeam: EdgeBeamResult;
  /** Undefined where the floor has one bay across. */
  readonly girder: GirderResult | undefined;
  readonly walls: WallsResult;
  /** The floor beyond the end column lines; undefined where the deck ends there. */
  readonly endStrip: EndStrip | undefined;
  /** What lies on the roof by the code, whether the roof has a deck of its own or columns count one number for it. */
  readonly roofLoads: RoofLoads;
  /** Undefined where the roof is two loads. */
  readonly roof: RoofResult | undefined;
  /** The highest floor under snow; undefined where a roof is over it, or no snow is given. */
  readonly openTop: OpenTopResult | undefined;
  readonly diaphragm: FloorDiaphragm;
  readonly story: StoryStack;
  readonly services: ServicesResult;
  /** Supply and return of one main; undefined where no air comes through ducts. */
  readonly air: AirResult | undefined;
  /** Undefined where there is no glass. */
  readonly daylight: DesignDaylight | undefined;
  /** Undefined where no cars park. */
  readonly parking: ParkingResult | undefined;
  /** Every check of every part but the columns, which {@link columnsOf} works out. */
  readonly checks: readonly Check[];
  readonly verdict: Verdict;
}

/**
 * Results by design. Designs are never altered, so one and the same has one and the same result; a page, its strip and
 * its store all ask for that of the open design, and it is worked out once.
 */
const KNOWN = new WeakMap<Design, {readonly catalog: Catalog; readonly evaluation: Evaluation}>();

/**
 * The one pipeline from a design to its results; pages, commands, tests and the record all use it.
 *
 * @throws InputError if parts of the design do not fit each other, such as a pattern and its member
 */
export function evaluate(design: Design, catalog: Catalog): Evaluation {
  const known = KNOWN.get(design);
  if (known?.catalog === catalog) return known.evaluation;
  const evaluation = evaluateWith(design, catalog, {});
  KNOWN.set(design, {catalog, evaluation});
  return evaluation;
}

/**
 * Parts of a design's results that are known before it is worked out, such as those that many schemes share. Whoever
 * gives one answers for it: it must be what the design's own would be, and undefined where the design has none.
 */
export interface KnownParts {
  readonly member?: Member;
  readonly loads?: FloorLoads;
  readonly deck?: DeckResult;
  readonly settled?: SettledTopping | undefined;
  readonly underTrueWeight?: UnderTrueWeight | undefined;
  readonly laid?: Member;
  readonly edgeBeam?: EdgeBeamResult;
  readonly girder?: GirderResult | undefined;
  readonly diaphragm?: FloorDiaphragm;
  readonly walls?: WallsResult;
  readonly endStrip?: EndStrip | undefined;
  readonly roofLoads?: RoofLoads;
  readonly onTop?: BeamsOnTop | undefined;
  readonly services?: ServicesResult;
  readonly air?: AirResult | undefined;
  readonly joint?: Neighbors | undefined;
}

/** {@link evaluate} where parts are known; the result is not kept. */
export function evaluateWith(design: Design, catalog: Catalog, known: KnownParts): Evaluation {
  const member = known.member ?? inPart(design, "deck", () => deckMember(design, catalog));
  const loads = known.loads ?? inPart(design, "loads", () => floorLoads(design, catalog, member.widthFt));
  const deck = known.deck ?? inPart(design, "deck", () => deckResult(design, catalog, member, loads));
  const settled = "settled" in known ? known.settled : inPart(design, "topping", () => settledTopping(design, member, deck));
  const laid = known.laid ?? withExtraTopping(member, carriedExtraPsf(settled));
  const beam = known.edgeBeam ?? inPart(design, "edge beam", () => edgeBeam(design, catalog, laid, loads));
  const inner = "girder" in known ? known.girder : inPart(design, "girder", () => girder(design, catalog, laid, loads));
  const diaphragm = known.diaphragm ?? inPart(design, "diaphragm", () => floorDiaphragm(design, member));
  const stack = inPart(design, "story", () => storyStack(design, member.compression.depthIn, beam.belowDeckIn, leastUnderBeams(loads).room));
  const built = inPart(design, "roof", () => roofBuilt(design, catalog));
  const story = {...stack, roof: built?.build, checks: [...stack.checks, ...headroomChecks(design, loads, stack, inner)]};
  const sides = known.walls ?? walls(design, catalog, member, story, loads.rooms.every(({occupancy}) => occupancy.group === "Parking"));
  const roof = built && inPart(design, "roof", () => roofResult(design, catalog, built, sides.weights.parapetPlf, {edgeBeam: beam, girder: inner}));
  const onRoof = roof?.snow ?? known.roofLoads ?? roofLoads(design, catalog, {memberWidthFt: member.widthFt, ...(hasRoof(design) ? {} : openTopShape(laid, loads))});
  const top = inPart(design, "roof", () => openTopResult(design, catalog, onRoof, {member, laid, loads, deck, edgeBeam: beam, girder: inner}, known.onTop));
  const strip = "endStrip" in known ? known.endStrip : endStrip(design, {member: laid, edge: sides.edge, loads, deck, edgeBeam: beam, girder: inner});
  const topping = settled && inPart(design, "topping", () => floorTopping(design, member, deck, story, settled, known.underTrueWeight));
  const joint = topping ? undefined : "joint" in known ? known.joint : inPart(design, "topping", () => neighbors(member, deck.camber, design.bay.spanFt));
  const serviced = known.services ?? inPart(design, "services", () => services(design, member.shape, story, leastUnderBeams(loads).edge));
  const parked = parking(design, story, {girder: inner, ...overCars(design, story, serviced)});
  const aired = "air" in known ? known.air : inPart(design, "services", () => airResult(design, member.shape, story, serviced, leastUnderBeams(loads).edge));
  const lit = inPart(design, "daylight", () => designDaylight(design, story, peopleWork(loads), undefined, inner, hungBoxes(serviced.ducts)));
  const checks = [...loads.checks, ...deck.checks, ...beam.checks, ...inner?.checks ?? [], ...sides.checks, ...strip?.checks ?? [], ...roof?.checks ?? [], ...onRoof.checks, ...top?.checks ?? [], ...diaphragm.checks, ...story.checks, ...serviced.checks, ...aired?.checks ?? [], ...(lit?.checks ?? []), ...(topping ?? joint)?.checks ?? [], ...parked?.checks ?? []];
  return {design, loads, member, laid, deck, camber: settled?.camber ?? deck.camber, topping, joint, edgeBeam: beam, girder: inner, walls: sides, endStrip: strip, roof, roofLoads: onRoof, openTop: top, diaphragm, story, services: serviced, air: aired, daylight: lit, parking: parked, checks, verdict: worst(checks)};
}

/** What the columns of a design carry. */
export function framingOf({design, laid, loads, girder: inner, edgeBeam: beam, walls: sides, roof, openTop}: Evaluation): Framing {
  return {design, deck: laid, loads, girder: inner, edge: beam, walls: sides, roof, openTop};
}

/**
 * The columns, corbels and footings of a design. They stand beside the pipeline because they take a third as long as all
 * else together, and most pages do without them; who shows the checks of a whole design asks for them as well.
 */
export function columnsOf(evaluation: Evaluation, catalog: Catalog): ColumnsResult {
  return columnsResult(framingOf(evaluation), catalog);
}

/** What lies on an open top level besides snow and rain: the floors' own dead load, and the live load of their rooms. */
export function openTopShape(laid: Member, {superimposedDeadPsf, rooms}: FloorLoads): Pick<RoofShape, "deadPsf" | "rooms"> {
  return {deadPsf: ownPsf(laid) + superimposedDeadPsf, rooms};
}

/** What ducts and pipes leave over the cars of a floor. */
function overCars(design: Design, story: StoryStack, {ducts, pipesUnderIn, sprinklerIn}: ServicesResult): Omit<Hanging, "girder"> {
  const pass = sprinklerIn > 0 && pipesUnderIn !== undefined && pipesUnderIn < story.clearUnderDeckIn - sprinklerIn - 1e-9;
  return {ductsIn: ducts?.hungIn, boxes: boxesAcross(design, ducts), boxWords: ducts?.casing?.kind ?? "box", pipesPastIn: pass ? pipesUnderIn : undefined};
}

/** Whether people work in any of the rooms: not where only cars or goods stand. */
export function peopleWork({rooms}: FloorLoads): boolean {
  return rooms.some(({occupancy}) => occupancy.group !== "Parking" && occupancy.group !== "Storage");
}

/** What a design's floor asks of any deck: the demand that {@link searchDeck} and the span-load chart use. */
export function demandOf(design: Design, catalog: Catalog, loads: FloorLoads): DeckDemand {
  const demands = new Map<number, number>();
  const demandPsf = (memberWidthFt: number): number => {
    let psf = demands.get(memberWidthFt);
    if (psf === undefined) {
      psf = loads.superimposedDeadPsf + loadOn(floorLoads(design, catalog, memberWidthFt), "deck member").governing.totalPsf;
      demands.set(memberWidthFt, psf);
    }
    return psf;
  };
  return deckDemand(design, catalog, designCriteria(design, catalog, loads.superimposedDeadPsf), demandPsf);
}

/** The deck search for a design: all candidates, those that work first, best first. */
export function candidates(design: Design, catalog: Catalog): Candidate[] {
  const {widthFt} = deckMember(design, catalog);
  return searchDeck(catalog, demandOf(design, catalog, floorLoads(design, catalog, widthFt)));
}

/** The deck search for a design's roof, as for a floor; none where the roof is two loads. */
export function roofCandidates({design, roof}: Pick<Evaluation, "design" | "roof">, catalog: Catalog): Candidate[] {
  return roof ? searchDeck(catalog, roofDeckDemand(design, catalog, roof)) : [];
}
