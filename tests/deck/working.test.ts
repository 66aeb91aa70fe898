import fc from "fast-check";
import {expect, test} from "vitest";
import {exceeds} from "../../lib/checks.js";
import {failedWorkingGates} from "../../lib/deck/gates.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {searchDeck, whyNot, type DeckDemand} from "../../lib/deck/search.js";
import {seriesOf, type Series} from "../../lib/deck/series.js";
import {deckTrials} from "../../lib/deck/trials.js";
import {firstToWork, nearestDeck, nearestOnSeat, onAnySeat, workingDecks} from "../../lib/deck/working.js";
import type {Consider} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {demandOf, evaluate} from "../../lib/evaluate.js";
import type {Member} from "../../lib/member/member.js";
import {catalog, seed} from "../support/designs.js";
import {hold, within} from "../properties/arbitrary.js";

const NONE: Consider = {fieldToppedTees: false, pretoppedTees: false, planks: false};

/** Floors of all kinds of deck, from those that any carries to those that none does. */
const floors = fc.record({
  kinds: fc.subarray(["fieldToppedTees", "pretoppedTees", "planks"] as const, {minLength: 1}),
  spanFt: within(15, 130), toppingIn: fc.constantFrom(0, 2, 3.5), strengthPsi: fc.constantFrom(5000, 7000),
  psf: within(1, 400), seatIn: fc.constantFrom(1, 4, 8), keepCamber: fc.boolean(), fireHours: fc.constantFrom("0", "2"),
  tensionClass: fc.constantFrom("U", "T", "C"), sagLimit: fc.constantFrom("L/360", "L/480"), walking: fc.constantFrom("none", "quiet"),
  straight: within(0, 1),
});
type Floor = typeof floors extends fc.Arbitrary<infer T> ? T : never;

function demandFor({kinds, spanFt, toppingIn, strengthPsi, psf, seatIn, keepCamber, fireHours, tensionClass, sagLimit, walking, straight}: Floor): DeckDemand {
  const design = withValues(seed("branch-library"), {
    "bay.spanFt": spanFt, "deck.toppingIn": toppingIn, "deck.strengthPsi": strengthPsi, "criteria.keepCamber": keepCamber, "criteria.fireHours": fireHours,
    "criteria.tensionClass": tensionClass, "criteria.sagLimit": sagLimit, "criteria.walking": walking, "preferences.straight": straight,
  });
  const demand = demandOf(design, catalog, evaluate(seed("branch-library"), catalog).loads);
  const consider = {...NONE, ...Object.fromEntries(kinds.map((kind) => [kind, true]))};
  return {...demand, consider, criteria: {...demand.criteria, seatIn}, demandPsf: (widthFt) => psf + widthFt / 2};
}

function series(demand: DeckDemand, releasesPsi: readonly number[] = [demand.conditions.releaseStrengthPsi]): Series[] {
  return seriesOf(catalog, deckTrials(catalog, demand, {toppingsIn: [], concretes: releasesPsi.map((releaseStrengthPsi) => ({...demand.conditions, releaseStrengthPsi}))}));
}

const workingOf = (all: readonly Series[], demand: DeckDemand) => workingDecks(firstToWork(all, demand), demand);

test("the decks that work are those of a search, in its order", () => {
  let some = 0;
  hold(25, fc.property(floors, (floor) => {
    const demand = demandFor(floor);
    const working = workingOf(series(demand), demand);
    const found = searchDeck(catalog, demand).filter(({works}) => works);
    expect(working.map(({id, score}) => ({id, score}))).toEqual(found.map(({id, score}) => ({id, score})));
    expect(working.map(({member}) => member)).toEqual(found.map(({member}) => member));
    if (working.length > 0) some += 1;
  }));
  expect(some).toBeGreaterThan(5);
});

test("where none works, the nearest is a search's first, and where none carries anything it has the greatest strength", () => {
  let [carrying, idle, gated] = [0, 0, 0];
  hold(60, fc.property(floors, (floor) => {
    const demand = demandFor(floor);
    const all = series(demand);
    if (workingOf(all, demand).length > 0) return;
    const nearest = nearestDeck(all, demand);
    const [first] = searchDeck(catalog, demand);
    if (!first || !nearest) return expect(nearest).toBe(first);
    if (first.safe.safeLoadPsf > 0) {
      carrying += 1;
      gated += first.gates.length;
      expect(nearest.id).toBe(first.id);
      expect(nearest.safe).toEqual(first.safe);
      expect(whyNot(nearest, demand)).toBe(first.reason);
    } else {
      idle += 1;
      const withAll = all.map(({trials}) => safeLoad(trials.at(-1)?.member as Member, demand.spanFt, demand.criteria).limitsPsf.strength ?? NaN);
      expect(nearest.safe.safeLoadPsf).toBe(0);
      expect(nearest.safe.limitsPsf.strength).toBe(Math.max(...withAll));
    }
  }));
  expect(Math.min(carrying, idle, gated)).toBeGreaterThan(2);
});

test("the nearest on a seat is found from the nearest on any, of which the seat may take all or a part", () => {
  let [whole, part] = [0, 0];
  hold(40, fc.property(floors, within(0.25, 3), (floor, seatIn) => {
    const {criteria, ...others} = demandFor(floor);
    const demand: DeckDemand = {...others, criteria: {...criteria, seatIn}};
    const all = series(demand, [3500, 4500]);
    const onAny = nearestDeck(all, onAnySeat(demand));
    const nearest = nearestDeck(all, demand);
    expect(nearestOnSeat(all, onAny, demand)).toEqual(nearest);
    if (nearest?.safe.governs === "bearing") part += 1;
    else whole += 1;
  }));
  expect(Math.min(whole, part)).toBeGreaterThan(2);
});

test("of several strengths at release the lowest is taken with which any strands of a series work", () => {
  let higher = 0;
  hold(6, fc.property(floors, (floor) => {
    const demand = demandFor(floor);
    const {spanFt, criteria} = demand;
    const all = series(demand, [2500, 3500, 4500]);
    const works = (member: Member) =>
      !exceeds(demand.demandPsf(member.widthFt), safeLoad(member, spanFt, criteria).safeLoadPsf) && failedWorkingGates(member, spanFt, criteria).length === 0;
    const expected = all.flatMap(({trials}) => trials.find(({member}) => works(member as Member))?.member ?? []);
    const found = workingOf(all, demand).map(({member}) => member);
    expect(new Set(found)).toEqual(new Set(expected));
    higher += found.filter(({releaseStrengthPsi}) => releaseStrengthPsi > 2500).length;
  }));
  expect(higher).toBeGreaterThan(2);
});

test("are none where no kind of member is considered", () => {
  const demand = {...demandFor({kinds: [], spanFt: 40, toppingIn: 2, strengthPsi: 5000, psf: 50, seatIn: 4, keepCamber: false, fireHours: "0", tensionClass: "T", sagLimit: "L/360", walking: "none", straight: 0})};
  expect(workingOf(series(demand), demand)).toEqual([]);
  expect(nearestDeck(series(demand), demand)).toBeUndefined();
});
