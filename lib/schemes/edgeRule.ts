import {padFor} from "../beams/bearing.js";
import {deckSeatLoad} from "../beams/deckSeatLoad.js";
import {leastProjectionIn} from "../beams/seat.js";
import {onStems, stemWidthIn} from "../beams/stemRow.js";
import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import {seatReachIn} from "../deck/criteria.js";
import type {Design} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import {stemsOnBeam} from "../edgeBeam/demand.js";
import {DEPTHS_BELOW_IN, checkedBeam, deepEnough, edgeBeamAlone, leastDeep, sectionUnderDeck, underItsStems, type EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import {LEAST_LEDGE_IN, edgeBeamChecks} from "../edgeBeam/edgeBeamChecks.js";
import {failsOnItsWay} from "../edgeBeam/handling.js";
import {selfPlfOf} from "../edgeBeam/loads.js";
import {deckSeat, edgeBeamSection, type DeckSeat} from "../edgeBeam/section.js";
import {OF_SEAT, failsAny, seatMayLack, sizeSurelyFails} from "../edgeBeam/soonest.js";
import {BeamOnTrial, cracksUnder, lacksSteel, rectangle} from "../edgeBeam/trial.js";
import type {LoadedSection} from "../edgeBeam/unchecked.js";
import {lazy} from "../kept.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {firstDepthBelowIn} from "../story/stack.js";
import {edgeEndChecks, type StripEnd} from "../walls/endStrip.js";
import {NOTHING_MADE, deeperIn, halfInchUp, ifMade, ladder, leastOf, once, placeOf, someHolds, worstFailing} from "./least.js";

/** Sizes that are tried for an edge beam, in: its ledge (or the foot below its pockets) and its web. */
const LEDGES_IN = ladder(LEAST_LEDGE_IN, fieldOf("edgeBeam.ledgeDepthIn").max);
const WEBS_IN = ladder(8, fieldOf("edgeBeam.webWidthIn").max, 2);
/** The web with which the ledge is sized: neither a panel nor a wall. */
const MIDDLE_WEB_IN = 16;
/** Widths that are tried for a beam that carries the deck on its top, in: room for a bearing and the joint. */
const BELOW_IN = {bars: [12, 16, 20, 24], strands: [16, 24]} as const;
/** Bars in the order in which they are tried, the usual first. */
const BARS = ["#8", "#9", "#10", "#11", "#7", "#6", "#5"] as const;
/** Strengths of concrete that are tried beyond the design's own where no size does with that, psi. */
const STRENGTHS_PSI = [6000, 8000] as const;
/** Checks that no size of the beam changes: what the brief fixes. */
const NOT_OF_SIZE: ReadonlySet<string> = new Set(["upstand", "pocket stems"]);
/** What a beam's ledge or foot answers for; all else of it is the web's and the bars'. */
const OF_LEDGE: ReadonlySet<string> = new Set([
  "ledge depth", "ledge layers", "ledge punching interior", "ledge punching end", "ledge line", "ledge shear", "ledge bars", "end strip: ledge punching end",
]);

/** An edge beam by rule. */
export interface SizedEdge {
  readonly input: Design["edgeBeam"];
  readonly beam: EdgeBeamResult;
  /** What stops a smaller one. */
  readonly stops: () => EdgeStops;
}

/** What stops a shallower ledge, and a narrower web of a beam below the deck; undefined where none less is tried, or nothing holds. */
export interface EdgeStops {
  readonly ledge: string | undefined;
  readonly web: string | undefined;
}

/** How far the ledge projects, by rule, in steps of 1/2 in: as far as seat and pad need (ACI 318-19 16.2.6.2), 8 in at least. */
export function ledgeProjectionIn(of: Parameters<typeof leastProjectionIn>[0]): number {
  return Math.min(fieldOf("edgeBeam.ledgeProjectionIn").max, halfInchUp(Math.max(LEAST_LEDGE_IN, leastProjectionIn(of))));
}

/** The edge beam before it is sized: seat and pads by rule, all else of the design's own. */
export function seatedEdge(design: Design, member: Member, loads: FloorLoads): Design["edgeBeam"] {
  const {edgeBeam: own, bay} = design;
  const stemmed = onStems(member);
  const pad = stemmed ? padFor({
    serviceKip: deckSeatLoad(design, member, loads).serviceKip, stemWidthIn: stemWidthIn(member), thicknessIn: own.padThicknessIn,
    roomIn: fieldOf("edgeBeam.padLengthIn").max,
  }) : {widthIn: own.padWidthIn, lengthIn: own.padLengthIn};
  const {min, max} = fieldOf("edgeBeam.padWidthIn");
  return {
    ...own, padWidthIn: Math.min(max, Math.max(min, pad.widthIn)), padLengthIn: pad.lengthIn,
    ledgeProjectionIn: ledgeProjectionIn({jointGapIn: own.jointGapIn, spanFt: bay.spanFt, beamSpanFt: bay.beamSpanFt, stemmed, ...(stemmed ? {padLengthIn: pad.lengthIn} : {})}),
  };
}

/** All that an edge beam by rule hangs on of a design's columns, as a key: their side, from which its end lies to the stems; nothing under planks. */
export function columnsOfEdge({column}: Pick<Design, "column">, laid: Member): string {
  return onStems(laid) ? String(column.sideIn) : "";
}

/**
 * The edge beam by rule, with seat and pads given: the shallowest ledge in whole inches that a web of 16 in lets hold,
 * then the narrowest web in steps of 2 in; bars of the usual size and concrete of the design's own strength unless others
 * are needed. A beam below the deck has the depth that its strength and sag ask for, and is made wider, then prestressed,
 * where that is more than span/12. Where nothing holds, the first steel and concrete are kept, at their largest, and the
 * checks tell.
 *
 * @param stems - checks of the row of stems on the beam
 * @param strip - what the floor beyond the end column lines brings to the beam's end, where it decides
 */
export function sizedEdge(design: Design, catalog: Catalog, laid: Member, loads: FloorLoads, stems: readonly Check[], strip?: StripEnd): SizedEdge {
  const {input, beam} = edgeByRule(design, catalog, laid, loads, strip);
  // It is sized anew where this is asked: what is kept would hold every beam that was tried.
  const stops = lazy((): EdgeStops => {
    const {ledgeStops, webStops} = edgeByRule(design, catalog, laid, loads, strip);
    return {ledge: ledgeStops?.().label, web: input.kind === "below" ? webStops?.().label : undefined};
  });
  return {input, beam: underItsStems(beam, stems), stops};
}

/** {@link sizedEdge} without its row of stems, and what stops a smaller one in full. */
function edgeByRule(design: Design, catalog: Catalog, laid: Member, loads: FloorLoads, strip: StripEnd | undefined): Pick<SizedEdge, "input" | "beam"> & Partial<Pick<Sized, "ledgeStops" | "webStops">> {
  const failing: Failing = (made, counts = () => true, among = undefined) => {
    const ofSize = (id: string) => !NOT_OF_SIZE.has(id) && counts(id);
    const atEnd = (checks: readonly Check[], {shearKip, greatestShearKip}: BeamOnTrial) => (strip ? edgeEndChecks({checks, shearKip, greatestShearKip}, strip) : []);
    const worst = () => {
      const checks = made?.checks(among);
      return made && checks ? worstFailing([...checks, ...atEnd(checks, made.beam())], ofSize) : NOTHING_MADE;
    };
    // The strip's own checks rest on those of the seat, and are asked where all else holds.
    const failsAtEnd = (sized: Made) => strip !== undefined && atEnd(sized.checks(OF_SEAT) ?? [], sized.beam()).some(({id, verdict}) => verdict === "fails" && ofSize(id));
    // What fails is told in full only where it is asked; that something fails is known sooner.
    return made && !made.fails(ofSize, among) && !failsAtEnd(made) ? undefined : () => worst() ?? NOTHING_MADE;
  };
  const {edgeBeam: seated} = design;
  // What a beam of some size carries is the same whatever its steel, and the deck's seat on it whatever else than its reach.
  const stemsOn = stemsOnBeam(design, laid);
  const seats = new Map<number, DeckSeat>();
  const seatOf = (edgeBeam: Input): DeckSeat => {
    const reachIn = seatReachIn(edgeBeam);
    let seat = seats.get(reachIn);
    if (!seat) seats.set(reachIn, (seat = deckSeat({...design, edgeBeam}, laid)));
    return seat;
  };
  const sections = new Map<string, LoadedSection>();
  const sectionOf = (input: Input, depthIn: number): LoadedSection => {
    const key = `${input.strengthPsi} ${input.ledgeDepthIn} ${input.webWidthIn} ${depthIn}`;
    let section = sections.get(key);
    if (!section) sections.set(key, (section = sectionUnderDeck({...design, edgeBeam: input}, laid, loads, depthIn, {stems: stemsOn, seat: seatOf(input)})));
    return section;
  };
  const tried = (edgeBeam: Input): Made => {
    const own: Design = {...design, edgeBeam};
    const under = (depthIn: number) => sectionOf(edgeBeam, depthIn);
    return edgeBeam.kind === "below" ? triedBelow(own, catalog, laid, loads, under) : triedBeside(laid, new BeamOnTrial(own, catalog, under(ONLY)));
  };
  const surelyOf = (input: Input): Surely => ({
    mayLack: (changes) => {
      const edgeBeam = {...input, ...changes};
      return ifMade(() => seatMayLack({...design, edgeBeam}, catalog, sectionOf(edgeBeam, ONLY), strip?.onStemKip)) ?? Infinity;
    },
    fails: (changes, counts = () => true) => {
      const edgeBeam = {...input, ...changes, strands: MOST_STRANDS};
      return ifMade(() => sizeSurelyFails({...design, edgeBeam}, catalog, sectionOf(edgeBeam, ONLY), (id) => !NOT_OF_SIZE.has(id) && counts(id), strip)) === true;
    },
  });
  let held: {readonly sized: Sized; readonly made: Made} | undefined;
  const failed: Sized[] = [];
  let otherBarsMend = true;
  // Cracking on its way does not hang on a rectangle's width: one too deep for it with bars is no shallower when it is wider.
  const cracksOnItsWay = seated.kind === "below" && barsCrack(design, laid);
  for (const input of waysOf(seated)) {
    if (input.steel === "bars" && ((cracksOnItsWay && (held || failed.length > 0)) || (input.barSize !== BARS[0] && !otherBarsMend))) continue;
    // Some sizes make no beam: a joint wider than a pocket, a ledge deeper than the beam.
    const sized = sizedWith(input, failing, cracksOnItsWay && input.steel === "bars" ? BELOW_IN.bars.slice(0, 1) : BELOW_IN[input.steel], (changes) =>
      ifMade(() => fewestStrands({...input, ...changes}, tried)), surelyOf(input));
    // Of those that fail only the first is looked at here; the others are made where it makes no beam in the end.
    const made = sized.holds || failed.length === 0 ? sized.made() : undefined;
    if (!sized.holds) {
      if (failed.length === 0 && !made) continue;
      // Another size of bar mends only what bars are the remedy for.
      if (failed.length === 0 && input.steel === "bars") otherBarsMend = !failing(made, (id) => !OF_BARS.has(id));
      failed.push(sized);
      continue;
    }
    if (made && (!held || made.beam().depthIn < held.made.beam().depthIn)) held = {sized, made};
    // A beam below the deck that holds with bars but is deeper than such beams usually are may be shallower with strands.
    if (input.steel === "strands" || !made?.tooDeep()) break;
  }
  for (const {made, ledgeStops, webStops} of held ? [held.sized] : failed) {
    const found = made();
    // What fails may be that its sizes make no beam.
    const beam = found && ifMade(found.least);
    if (beam) return {input: found.input, beam, ledgeStops, webStops};
  }
  // Where no size makes a beam at all, the design's own says why.
  return {input: seated, beam: edgeBeamAlone(design, catalog, laid, loads)};
}

/** A beam beside the deck that is tried: its depth follows from its parts. */
function triedBeside(laid: Member, beam: BeamOnTrial): Made {
  return {
    input: beam.design.edgeBeam, beam: () => beam, lacksSteel: () => lacksSteel(beam),
    checks: (among) => ifMade(() => edgeBeamChecks(beam.design, laid, beam, among)),
    fails: (counts, among) => ifMade(() => failsAny(beam.design, laid, beam, counts, among)) ?? true,
    tooDeep: () => false, least: () => checkedBeam(laid, beam),
  };
}

/** A beam below the deck that is tried, with about the least depth that its strength and sag require; the greatest where none does. */
function triedBelow(design: Design, catalog: Catalog, laid: Member, loads: FloorLoads, sectionOf: (depthIn: number) => LoadedSection): Made {
  const near = DEPTHS_IN.indexOf(firstDepthBelowIn(design.bay.beamSpanFt));
  // A deeper beam carries its own weight besides, so what the shallowest cracks under cracks it as well.
  const {demand: {serviceKipIn}} = sectionOf(DEPTHS_BELOW_IN.least);
  const enough = once((depthIn) => (cracksUnder(serviceKipIn, design, catalog, rectangle(design.edgeBeam.webWidthIn, depthIn)) ? undefined : deepEnough(design, catalog, laid, loads, depthIn, sectionOf)));
  const fails = (beam: BeamOnTrial | undefined) => beam === undefined || undefined;
  const some = lazy(() => someHolds(DEPTHS_IN, enough, fails, near));
  const deepest = () => new BeamOnTrial(design, catalog, sectionOf(DEPTHS_BELOW_IN.most));
  const beside = lazy(() => triedBeside(laid, (some() && leastOf(DEPTHS_IN, enough, fails, near)?.found) || deepest()));
  return {
    input: design.edgeBeam, beam: () => beside().beam(), checks: (among) => beside().checks(among), fails: (counts, among) => beside().fails(counts, among),
    // No depth is enough at which strength, sag or soffit lack anything; which depth that is need not be known.
    lacksSteel: () => !some() && beside().lacksSteel(),
    // The search begins at the depth that is usual, so that alone tells; of the shortest spans none that is tried is so shallow.
    tooDeep: () => near < 0 || enough(DEPTHS_IN[near] as number) === undefined,
    // Depths were tried by halving; the design's own is the least of all.
    least: () => leastDeep(design, laid, () => checkedBeam(laid, deepest()), enough),
  };
}

/** Stands for the depth of a beam that has but one, by its parts. */
const ONLY = 0;
const DEPTHS_IN = ladder(DEPTHS_BELOW_IN.least, DEPTHS_BELOW_IN.most, DEPTHS_BELOW_IN.step);

/** Whether a beam below the deck as deep as such beams usually are would crack on its way with bars. */
function barsCrack(design: Design, laid: Member): boolean {
  const section = edgeBeamSection(design, laid, firstDepthBelowIn(design.bay.beamSpanFt));
  return failsOnItsWay(section, selfPlfOf(section), design.bay.beamSpanFt);
}

type Input = Design["edgeBeam"];
/** A beam of some size, of which no more is computed than is asked. */
interface Made {
  /** The design's fields that make it. */
  readonly input: Input;
  readonly beam: () => BeamOnTrial;
  /** Its checks, all that there are if none are named; undefined where its sizes make none. */
  readonly checks: (among?: typeof OF_SEAT) => readonly Check[] | undefined;
  /** Whether a check fails that counts, or its sizes make no beam. */
  readonly fails: (counts: (id: string) => boolean, among?: typeof OF_SEAT) => boolean;
  /** Whether something fails that more strands mend. */
  readonly lacksSteel: () => boolean;
  /** Whether it is a beam below the deck that is deeper than the first size of one that such a span usually has. */
  readonly tooDeep: () => boolean;
  /** All of it, of one below the deck by the least depth of all; throws InputError where its sizes make none. */
  readonly least: () => EdgeBeamResult;
}

/** The sizes that a way of making the beam takes, with what stops a shallower ledge and a narrower web. */
interface Sized {
  /** Whether all holds that its size answers for. */
  readonly holds: boolean;
  /** The beam of those sizes, the largest where none holds. */
  readonly made: () => Made | undefined;
  readonly ledgeStops: (() => Check) | undefined;
  readonly webStops: (() => Check) | undefined;
}

/** Steel and concrete in the order in which they are tried: the usual bars, other sizes of bar, strands, then both in stronger concrete. */
function* waysOf(seated: Input): Generator<Input> {
  const bars: Input = {...seated, steel: "bars"};
  const strands: Input = {...seated, steel: "strands", coverIn: Math.min(seated.coverIn, COVER_WITH_STRANDS_IN)};
  if (seated.steel === "bars") for (const barSize of BARS) yield {...bars, barSize};
  yield strands;
  for (const strengthPsi of STRENGTHS_PSI.filter((psi) => psi > seated.strengthPsi)) {
    if (seated.steel === "bars") yield {...bars, barSize: BARS[0], strengthPsi};
    yield {...strands, strengthPsi};
  }
}

/** Clear cover that leaves strands of the usual grid their place inside the stirrups, in. */
const COVER_WITH_STRANDS_IN = 1.25;
/** Checks that another size of bar mends. */
const OF_BARS: ReadonlySet<string> = new Set(["beam strength", "beam least steel", "beam ductility", "beam bottom steel", "beam cracks", "beam sag"]);
/** Numbers of strands that are tried, in pairs. */
const STRANDS = ladder(4, 40, 2);
const MOST_STRANDS = STRANDS.at(-1) as number;

/** A beam of given sizes, with the fewest strands that its soffit, its strength and its sag ask for where it has strands. */
function fewestStrands(input: Input, at: (input: Input) => Made): Made {
  if (input.steel === "bars") return at(input);
  const made = once((strands) => at({...input, strands}));
  const lacks = (one: Made) => one.lacksSteel() || undefined;
  const first = () => made(STRANDS[FIRST] as number);
  // A beam below the deck is made deeper until few strands do, so its search begins at the fewest.
  return leastOf(STRANDS, made, lacks, input.kind === "below" ? 0 : nearStrands(first().beam()))?.found ?? first();
}

/** Place of about the fewest strands beside the deck: strength grows about with them, and so does what they press the soffit by, so a first beam tells how many will do. */
function nearStrands({momentKipIn, strength}: BeamOnTrial): number {
  return Math.round(((STRANDS[FIRST] as number) * momentKipIn) / strength.designMomentKipIn / 2) - 2;
}

/** Place of the number of strands with which a beam is first looked at, and which is shown where no number does. */
const FIRST = 4;

type At = (changes: Partial<Input>) => Made | undefined;
/** What fails of a beam that its size answers for, of the checks that count; a size that makes no beam fails by itself. */
type Failing = (made: Made | undefined, counts?: (id: string) => boolean, among?: typeof OF_SEAT) => (() => Check) | undefined;

/** What is known of a beam beside the deck by its size alone, before it is made. */
interface Surely {
  /** By how much of its strength its ledge may be passed at most; 0 where it surely holds. */
  readonly mayLack: (changes: Partial<Input>) => number;
  readonly fails: (changes: Partial<Input>, counts?: (id: string) => boolean) => boolean;
}

function sizedWith(input: Input, failing: Failing, below: readonly number[], at: At, surely: Surely): Sized {
  // Pockets reach into the web, which begins beyond them; a beam below carries the deck on its top.
  const webs = input.kind === "below" ? below : input.kind === "pockets" ? WEBS_IN.filter((webIn) => webIn > input.ledgeProjectionIn) : WEBS_IN;
  const most = webs.at(-1) as number;
  const known = new Map<string, Made | undefined>();
  const beamOf = (ledgeDepthIn: number, webWidthIn: number) => {
    const key = `${ledgeDepthIn} ${webWidthIn}`;
    if (!known.has(key)) known.set(key, at({ledgeDepthIn, webWidthIn}));
    return known.get(key);
  };
  const ledge = input.kind === "below" ? undefined : sizedLedge(Math.max(MIDDLE_WEB_IN, webs[0] as number), failing, beamOf, surely);
  const ledgeDepthIn = ledge?.value ?? (input.kind === "below" ? input.ledgeDepthIn : (LEDGES_IN.at(-1) as number));
  const surelyFails = once((webWidthIn) => surely.fails({ledgeDepthIn, webWidthIn}));
  // Most often the first web that does not surely fail is the one.
  const near = input.kind === "below" ? 0 : webs.findIndex((webWidthIn) => !surelyFails(webWidthIn));
  const web = leastOf(webs, (webWidthIn) => webWidthIn, (webWidthIn) => {
    const stops = () => failing(beamOf(ledgeDepthIn, webWidthIn));
    if (input.kind !== "below") return surelyFails(webWidthIn) ? () => told(stops()) : stops();
    // One that is too deep does not do whatever else of it holds.
    return webWidthIn !== most && beamOf(ledgeDepthIn, webWidthIn)?.tooDeep() ? () => stops()?.() ?? TOO_DEEP : stops();
  }, near < 0 ? webs.length - 1 : near);
  return {holds: web !== undefined, made: () => beamOf(ledgeDepthIn, web?.value ?? most), ledgeStops: ledge?.stops, webStops: web?.stops};
}

/** The shallowest ledge that holds with a web of some width. */
function sizedLedge(webWidthIn: number, failing: Failing, beamOf: (ledgeDepthIn: number, webWidthIn: number) => Made | undefined, surely: Surely) {
  // A ledge that surely holds needs no beam that is tried for it, and only those near the least such are to be tried.
  const mayLack = once((ledgeDepthIn) => surely.mayLack({ledgeDepthIn, webWidthIn}));
  const [leastIn] = LEDGES_IN as [number];
  const near = leastOf(LEDGES_IN, mayLack, (lacks) => lacks > 0 || undefined, placeOf(LEDGES_IN, deeperIn(leastIn, mayLack(leastIn))));
  return leastOf(LEDGES_IN, (ledgeDepthIn) => ledgeDepthIn, (ledgeDepthIn) => {
    if (mayLack(ledgeDepthIn) === 0) return undefined;
    const stops = () => failing(beamOf(ledgeDepthIn, webWidthIn), (id) => OF_LEDGE.has(id), OF_SEAT);
    return surely.fails({ledgeDepthIn, webWidthIn}, (id) => OF_LEDGE.has(id)) ? () => told(stops()) : stops();
  }, near ? LEDGES_IN.indexOf(near.value) : 0);
}

/** What fails of a beam that surely does, told where it is asked. */
function told(stops: (() => Check) | undefined): Check {
  return stops?.() ?? NOTHING_MADE;
}

/** Stands for what is wrong with a beam below the deck that a wider one mends. */
const TOO_DEEP: Check = {...NOTHING_MADE, id: "depth below the deck", label: "Depth below the deck, span over 12", message: "A wider beam is shallower."};
