import type {Catalog} from "../catalog.js";
import {atMost, type Check} from "../checks.js";
import type {ColumnsResult} from "../columns/columnsResult.js";
import type {Consider, Design} from "../design/design.js";
import {columnsOf, evaluateWith, type Evaluation} from "../evaluate.js";
import {InputError} from "../errors.js";
import type {Brief} from "./brief.js";
import {DeckedFloors, MOST_DECKS, type Decked, type FirstDeck} from "./decked.js";
import type {ChosenDeck} from "./decks.js";
import {columnsOfEdge, seatedEdge, sizedEdge, ledgeProjectionIn, type SizedEdge} from "./edgeRule.js";
import {sizedGirder, type SizedGirder} from "./girderRule.js";
import {edgeBeamAlone, underItsStems} from "../edgeBeam/edgeBeam.js";
import {girderAlone, girderUnderStems} from "../girder/girder.js";
import {gridOf, type Choices} from "./grid.js";
import {housedByRule, housedKey} from "./housed.js";
import type {RuledStory} from "./storyRule.js";
import {fieldOf} from "../design/fields.js";
import {hasRoof} from "../design/used.js";
import {buildingEnvelope} from "../story/envelope.js";
import {rowFaults} from "./rowFaults.js";
import {ruledWalls, wallsKey} from "./wallRule.js";
import {endStrip, type StripEnd} from "../walls/endStrip.js";
import {roofAsLoads} from "./roofRule.js";

/** One scheme of a brief: a complete design by rule, with all results. */
export interface Scheme {
  readonly index: number;
  readonly choices: Choices;
  readonly design: Design;
  /** What `evaluate` gives for the design. */
  readonly floor: Evaluation;
  /** Undefined where columns are not asked for. */
  readonly columns: ColumnsResult | undefined;
  /** What the rules found on their way; {@link ruleWords} says it. */
  readonly found: Found;
  /** Every failed check, those of the brief's own limits included. */
  readonly fails: readonly Check[];
}

/** Choices for which no scheme can be made, and why. */
export interface NoScheme {
  readonly index: number;
  readonly choices: Choices;
  readonly none: string;
}

/** What the rules found. */
export interface Found {
  readonly deck: ChosenDeck;
  readonly edge: SizedEdge;
  readonly girder: SizedGirder | undefined;
  readonly story: RuledStory;
}

/** The schemes of one brief by number. */
export interface Schemes {
  readonly count: number;
  at(index: number): Scheme | NoScheme;
}

const ALL_OFF: Consider = {fieldToppedTees: false, pretoppedTees: false, planks: false};
/** Rounds in which the beams are cut anew for a column wider than they were cut for, or a longer corbel. */
const MOST_ROUNDS = 8;
/** How far from a column's face the beams' bearing is set at most, in (common practice). */
const MOST_SEAT_IN = 8;

/** Checks of loads on the deck that its choice does not know of: of the piece that carries the strip beyond it, of a top level under cars and snow. */
const BESIDE: ReadonlySet<string> = new Set(["end strip: deck load", "top level: deck load"]);

/** Checks of how the row of deck members lies: on its beams, and up to the end lines. */
const OF_ROW: ReadonlySet<string> = new Set(["stems on beam", "girder stems on beam", "deck edge", "last piece"]);

/** The base of a brief, its roof as loads, with a scheme's choices, before anything is sized. */
export function chosen(base: Design, choices: Choices): Design {
  const {spanFt, baysAcross, beamSpanFt, baysAlong, kind, toppingIn, concrete, strengthPsi, edge, girder} = choices;
  return {
    ...base,
    bay: {...base.bay, spanFt, baysAcross, beamSpanFt, baysAlong},
    deck: {...base.deck, toppingIn, concrete, strengthPsi, releaseStrengthPsi: Math.min(strengthPsi, base.deck.releaseStrengthPsi)},
    consider: {...ALL_OFF, [kind]: true},
    edgeBeam: {...base.edgeBeam, kind: edge, ledgeProjectionIn: ledgeProjectionIn({jointGapIn: base.edgeBeam.jointGapIn, spanFt, beamSpanFt, ...(kind === "planks" ? {stemmed: false} : {stemmed: true, padLengthIn: LEAST_PAD_IN})}), webWidthIn: LEAST_WEB_IN},
    girder: {...base.girder, ...(girder ? {kind: girder} : {})},
  };
}

/** The brief's own limits on story and building. */
function limitChecks({limits}: Brief, {design, story}: Evaluation): Check[] {
  const {floorToFloorFt, buildingFt} = limits;
  return [
    ...(floorToFloorFt === undefined ? [] : [atMost({
      id: "brief: floor to floor", label: "Floor-to-floor height, against the brief", unit: "ft", clause: "the brief", meetingIsEnough: true,
      holds: "The story keeps within what the brief allows.",
      fails: "The story is higher than the brief allows: a shallower deck or beams, or a lower ceiling.",
    }, design.story.floorToFloorFt, floorToFloorFt)]),
    ...(buildingFt === undefined ? [] : [atMost({
      id: "brief: building height", label: "Height of the building, against the brief", unit: "ft", clause: "the brief", meetingIsEnough: true,
      holds: "The building keeps within what the brief allows.",
      fails: "The building is higher than the brief allows: a shallower deck or beams, a lower ceiling, or fewer stories.",
    }, buildingEnvelope(design, story).heightFt, buildingFt)]),
  ];
}

function stripKey(strip: StripEnd | undefined): string {
  return strip ? `${strip.endKip} ${strip.onStemKip}` : "";
}

/** With what seat a deck is chosen before its pad and its beam are known, in. */
const LEAST_PAD_IN = 4;
const LEAST_WEB_IN = 12;

/**
 * Makes the schemes of a brief. Decks, beams, girders and rooms that schemes share are worked out once; what is shared
 * is found by all that it depends on, so a scheme is the same whatever was made before it.
 */
export function schemesOf(brief: Brief, catalog: Catalog, {columns: withColumns = false}: {readonly columns?: boolean} = {}): Schemes {
  const grid = gridOf(brief, catalog);
  const base = roofAsLoads(brief.base, catalog);
  const floors = new DeckedFloors(catalog);

  const sized = (index: number, choices: Choices, floorOf: Decked): Scheme => {
    const {deck, design: topped, member, loads, shared, settled, laid, top} = floorOf;
    const {bay} = topped;
    let {sideIn} = floorOf;
    let {seatIn} = topped.column;
    let narrowed = false;
    for (let round = 1; ; round++) {
      // Beams of an open top level are the floors', under more load.
      const beamLoads = top?.loads ?? loads;
      // What lies there hangs on the whole plan.
      const plan = top ? ` ${bay.baysAcross}` : "";
      const asTop = (design: Design): Design => (top ? {...design, criteria: top.top.criteria} : design);
      const cut: Design = {...topped, edgeBeam: seatedEdge(topped, laid, beamLoads), column: {...topped.column, sideIn, seatIn}};
      const stems = floors.stems(floorOf, cut);
      // The beams' ends are sized under the floor beyond the end column lines.
      const strip = floors.strip(floorOf, cut);
      const edge = shared.edges.get(`${choices.edge} ${columnsOfEdge(cut, laid)} ${stripKey(strip)}${plan}`, () => {
        const found = sizedEdge(asTop(cut), catalog, laid, beamLoads, stems, strip);
        return top ? {...found, beam: underItsStems(edgeBeamAlone({...cut, edgeBeam: found.input}, catalog, laid, loads), stems), onTop: found.beam} : found;
      });
      const edged = {...cut, edgeBeam: edge.input};
      const inner = bay.baysAcross < 2 ? undefined : shared.girders.get(`${choices.girder} ${sideIn} ${seatIn} ${stripKey(strip)}${plan}`, () => {
        const found = sizedGirder(asTop(edged), catalog, laid, beamLoads, stems, strip);
        const girder = top && found && girderAlone({...edged, girder: found.input}, catalog, laid, loads);
        return girder ? {...found, girder: girderUnderStems(girder, stems), onTop: found.girder} : found;
      });
      const framed = inner ? {...edged, girder: inner.input} : edged;
      const hung = {edgeIn: edge.beam.belowDeckIn, girderIn: inner?.girder.belowDeckIn ?? 0};
      const {story, stack, input, serviced, air} = floors.housed.get(housedKey(framed, member, hung), () => housedByRule(framed, brief, member, loads, hung));
      const housed: Design = {...framed, ...input};
      const onlyCars = loads.rooms.every(({occupancy}) => occupancy.group === "Parking");
      const closed = floors.walls.get(wallsKey(housed, member, stack), () => ruledWalls(housed, catalog, member, stack, onlyCars));
      const {deck: deckState, heavy} = floors.onSeat(floorOf, housed);
      const beyond = endStrip(housed, {member: laid, edge: closed.result.edge, loads, deck: deckState, edgeBeam: edge.beam, girder: inner?.girder});
      const aired: Design = {...housed, walls: closed.input};
      // The roof's one live load is what snow and rain bring, where that is more.
      const onRoof = floors.onRoof(floorOf, aired.column.roofLivePsf);
      const short = onRoof.checks.find(({id, verdict}) => id === "roof live load entered" && verdict === "fails");
      const roofLivePsf = short ? Math.min(fieldOf("column.roofLivePsf").max, Math.ceil(short.demand / 5) * 5) : aired.column.roofLivePsf;
      const design: Design = {...aired, column: {...aired.column, roofLivePsf}};
      const floor = evaluateWith(design, catalog, {
        member, loads, deck: deckState, settled, underTrueWeight: heavy(), laid, diaphragm: floorOf.diaphragm(), edgeBeam: edge.beam, girder: inner?.girder, roofLoads: short ? floors.onRoof(floorOf, roofLivePsf) : onRoof,
        services: serviced, air, endStrip: beyond, onTop: edge.onTop && {edgeBeam: edge.onTop, girder: inner?.onTop},
        // Walls ask of the roof's loads only whether there is a roof.
        ...(hasRoof(design) === hasRoof(aired) ? {walls: closed.result} : {}),
        ...(settled ? {} : {joint: (shared.joint ??= floors.decks.joint(design, member, deckState))}),
      });
      const columns = withColumns ? columnsOf(floor, catalog) : undefined;
      const widest = Math.max(0, ...columns?.columns.map(({column}) => column.sideIn) ?? []);
      const crushed = columns?.checks.some(({id, verdict}) => id.endsWith("corbel bearing") && verdict === "fails") === true && seatIn < MOST_SEAT_IN;
      if ((widest > sideIn || crushed) && round < MOST_ROUNDS) {
        sideIn = Math.max(sideIn, widest);
        if (crushed) seatIn += 1;
        continue;
      }
      // Where the row of the deck meets columns of the guess, it may clear those that are needed.
      if (widest > 0 && widest < sideIn && !narrowed && round < MOST_ROUNDS && floor.checks.some(({id, verdict}) => verdict === "fails" && OF_ROW.has(id))
        && rowFaults(topped, member, widest) < rowFaults(topped, member, sideIn)) {
        [sideIn, narrowed] = [widest, true];
        continue;
      }
      const checks = [...floor.checks, ...columns?.checks ?? [], ...limitChecks(brief, floor)];
      return {index, choices, design, floor, columns, found: {deck, edge, girder: inner, story}, fails: checks.filter(({verdict}) => verdict === "fails")};
    }
  };
  /** A scheme by a deck that carries all that comes to it, or by the one in whose place that was taken, where fewer checks fail with it. */
  const fewerFailing = (index: number, choices: Choices, first: FirstDeck): {readonly found: Scheme; readonly with: Decked} => {
    const found = sized(index, choices, first);
    const {instead} = first;
    if (!instead || found.fails.length <= instead.fails) return {found, with: first};
    const other = fewerFailing(index, choices, instead.of);
    // What was asked of the one is not asked again.
    return other.found.fails.length < found.fails.length ? {found: other.found, with: {...other.with, asked: first.asked}} : {found, with: first};
  };
  /** A scheme by its first deck, or by one that clears columns which grew beyond the first guess and carries what its beams then bring, where that makes it the better. */
  const best = (index: number, choices: Choices): Scheme | NoScheme => {
    const bare = chosen(base, choices);
    const first = floors.first(bare, choices);
    if ("none" in first) return {index, choices, none: first.none};
    let {found, with: floorOf} = fewerFailing(index, choices, first);
    for (let tries = 0; tries < MOST_DECKS; tries++) {
      const {asked, member} = floorOf;
      const {fails, floor: {deck}, design} = found;
      // What a deck was taken for is asked of the next as well, or that would be the first again.
      const psf = Math.max(asked.psf, ...fails.filter(({id}) => BESIDE.has(id)).map(({demand}) => demand - deck.demandPsf));
      const sideIn = Math.max(asked.sideIn, fails.some(({id}) => OF_ROW.has(id)) ? design.column.sideIn : 0);
      if (psf === asked.psf && sideIn === asked.sideIn) break;
      const other = floors.with(bare, choices, {psf, sideIn});
      // Where the deck stays, so does all else.
      if ("none" in other || other.member === member) break;
      const next = sized(index, choices, other);
      if (next.fails.length >= fails.length) break;
      [found, floorOf] = [next, other];
    }
    return found;
  };
  return {
    count: grid.count,
    at(index) {
      const choices = grid.at(index);
      try {
        return best(index, choices);
      } catch (problem) {
        if (problem instanceof InputError) return {index, choices, none: problem.message};
        throw problem;
      }
    },
  };
}
