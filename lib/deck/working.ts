import {exceeds} from "../checks.js";
import type {Member} from "../member/member.js";
import {cellOf, type Cell} from "./cell.js";
import {deckName} from "./deckName.js";
import {failedWorkingGates, shuts} from "./gates.js";
import type {Reached} from "./limit.js";
import {WORKING_GATES, limitsOf, type LimitName} from "./limits.js";
import {bearingLimit} from "./limits/bearing.js";
import {strengthLimit} from "./limits/strength.js";
import {allowedPsf, reported, requireSpan, safeLoad, safeLoadOf, type SafeLoad} from "./safeLoad.js";
import {candidateMeasures, withScores, type Candidate, type DeckDemand} from "./search.js";
import type {Series, DeckTrial} from "./series.js";

/** A deck that works, and what ranks it. */
export type WorkingDeck = FirstToWork & Pick<Candidate, "score">;

/** The first deck of a series that works but for its seat, which no strands change. */
export type FirstToWork = Pick<Candidate, "id" | "designation" | "pattern" | "member" | "works" | "measures">;

/** The deck that comes nearest where none works. */
export type NearestDeck = Pick<Candidate, "id" | "member" | "safe" | "gates">;

/**
 * Of each series the first deck that works, whatever the length of its seat: the same as a search's, found without what the
 * others come to. Most are left at the first limit that stops them.
 */
export function firstToWork(series: readonly Series[], demand: DeckDemand): FirstToWork[] {
  requireSpan(demand.spanFt);
  const anySeat = onAnySeat(demand);
  return series.flatMap(({trials}) => {
    const first = trials.find(({member}) => member && works(member, anySeat));
    return first ? [workingDeck(first, first.member as Member)] : [];
  });
}

/** A demand on decks whatever the length of their seat, which bounds no more than what an end may bring to it. */
export function onAnySeat(demand: DeckDemand): DeckDemand {
  const {criteria} = demand;
  return {...demand, criteria: {...criteria, limits: criteria.limits.filter((name) => name !== bearingLimit.name)}};
}

/** The decks that work on a seat, best first. */
export function workingDecks(first: readonly FirstToWork[], demand: DeckDemand): WorkingDeck[] {
  const {criteria, demandPsf} = demand;
  const bears = ({member}: FirstToWork) => !exceeds(demandPsf(member.widthFt), Math.max(0, bearingPsf(cellFor(member, demand))));
  const working = criteria.limits.includes(bearingLimit.name) ? first.filter(bears) : first;
  return withScores(working, demand.preferences).sort((a, b) => a.score - b.score);
}

/** The load that the seat takes, psf: of all members of a series the same, for they differ in their strands alone. */
function bearingPsf(cell: Cell): number {
  return (bearingLimit.reached(cell) as Reached).psf;
}

function works(member: Member, demand: DeckDemand): boolean {
  const cell = cellFor(member, demand);
  const {limits} = demand.criteria;
  const neededPsf = demand.demandPsf(member.widthFt);
  const carries = (psf: number) => !exceeds(neededPsf, psf);
  return !fallsShortSoon(cell, limits, carries) && passesWorkingGates(cell) && carries(safeLoadOf(cell, limits).safeLoadPsf);
}

function cellFor(member: Member, {spanFt, criteria}: DeckDemand): Cell {
  return cellOf(member, spanFt, criteria);
}

function workingDeck(trial: DeckTrial, member: Member): FirstToWork {
  return {id: idOf(trial), designation: trial.of.row.designation, pattern: trial.pattern, member, measures: candidateMeasures(member), works: true};
}

function idOf({of, pattern, conditions}: DeckTrial): string {
  return deckName(of.row.designation, conditions.toppingIn, pattern);
}

/**
 * Where none works, the deck that a search has first: the one with the greatest safe load, of each series the first that
 * carries the load or else the strongest. Where none carries any load, the one with the greatest strength for it, with
 * all of its strands. Undefined where there is none to try.
 *
 * It is sought from the strongest down, so that most are left at the first limit that allows less than was found.
 */
export function nearestDeck(series: readonly Series[], demand: DeckDemand): NearestDeck | undefined {
  requireSpan(demand.spanFt);
  let nearest: NearestDeck | undefined;
  // Of equals the first in the order of a search counts, here the last.
  const isEnough = (psf: number) => psf > 0 && psf >= (nearest?.safe.safeLoadPsf ?? 0);
  const {limits} = demand.criteria;
  for (const {trials} of series.toReversed()) {
    for (const trial of trials.toReversed()) {
      const {member} = trial;
      if (!member) continue;
      const cell = cellFor(member, demand);
      if (fallsShortSoon(cell, limits, isEnough)) continue;
      const safe = safeLoadOf(cell, limits);
      if (!isEnough(safe.safeLoadPsf)) continue;
      if (carries(member, safe, demand)) {
        const first = firstThatCarries(trials, demand);
        if (isEnough(first.safe.safeLoadPsf)) nearest = first;
        break;
      }
      nearest = {id: idOf(trial), member, safe, gates: []};
    }
  }
  return nearest ?? strongestDeck(series, demand);
}

/**
 * {@link nearestDeck} on a seat, where the nearest on any is known: that one if the seat takes all that it carries, for a
 * seat adds nothing to what another does.
 */
export function nearestOnSeat(series: readonly Series[], onAny: NearestDeck | undefined, demand: DeckDemand): NearestDeck | undefined {
  if (!onAny) return undefined;
  const {limits} = demand.criteria;
  const cell = cellFor(onAny.member, demand);
  if (limits.includes(bearingLimit.name) && bearingPsf(cell) < onAny.safe.safeLoadPsf) return nearestDeck(series, demand);
  return {...onAny, safe: safeLoadOf(cell, limits)};
}

function carries({widthFt}: Member, {safeLoadPsf}: SafeLoad, {demandPsf}: DeckDemand): boolean {
  return !exceeds(demandPsf(widthFt), safeLoadPsf);
}

/** The first of some trials that carries the load. */
function firstThatCarries(trials: readonly DeckTrial[], demand: DeckDemand): NearestDeck {
  const {spanFt, criteria} = demand;
  for (const trial of trials) {
    const {member} = trial;
    if (!member) continue;
    const cell = cellFor(member, demand);
    if (fallsShortSoon(cell, criteria.limits, (psf) => !exceeds(demand.demandPsf(member.widthFt), psf))) continue;
    const safe = safeLoadOf(cell, criteria.limits);
    if (carries(member, safe, demand)) return {id: idOf(trial), member, safe, gates: failedWorkingGates(member, spanFt, criteria)};
  }
  throw new RangeError("none of the trials carries the load");
}

/** The deck with the greatest bending strength for the span, of each series with all of its strands. */
function strongestDeck(series: readonly Series[], demand: DeckDemand): NearestDeck | undefined {
  const made = ({member}: DeckTrial) => member !== undefined;
  const [first] = series.flatMap(({trials}) => trials.filter(made).slice(0, 1));
  const last = series.flatMap(({of, trials}) => trials.findLast((trial) => made(trial) && trial.conditions === of.conditions.at(-1)) ?? []);
  let strongest: {readonly trial: DeckTrial; readonly psf: number} | undefined;
  for (const trial of first ? [first, ...last] : []) {
    const {psf} = strengthLimit.reached(cellFor(trial.member as Member, demand)) as Reached;
    if (!strongest || psf > strongest.psf) strongest = {trial, psf};
  }
  if (!strongest) return undefined;
  const {trial} = strongest;
  const member = trial.member as Member;
  return {id: idOf(trial), member, safe: safeLoad(member, demand.spanFt, demand.criteria), gates: []};
}

/**
 * Limits by one of which nearly every member falls short that falls short at all, in the order of what they cost to ask:
 * nearly every one whose strength is not enough cracks sooner, and strength is sought step by step.
 */
const SOONEST = (["service tension", "strength"] as const satisfies readonly LimitName[]).flatMap((name) => limitsOf([name]));

/**
 * Whether the first limits that are asked already keep the safe load of a cell from being enough. Where they do not, the
 * others still may.
 *
 * @param isEnough - whether a safe load is; a greater one is where a lesser is
 */
function fallsShortSoon(cell: Cell, limits: readonly LimitName[], isEnough: (psf: number) => boolean): boolean {
  return SOONEST.some((limit) => {
    const psf = limits.includes(limit.name) ? allowedPsf(limit, cell) : undefined;
    return psf !== undefined && !isEnough(reported(psf));
  });
}

/** Whether a cell's member passes all gates of a search. */
function passesWorkingGates(cell: Cell): boolean {
  return !limitsOf(WORKING_GATES).some((gate) => shuts(gate, cell));
}
