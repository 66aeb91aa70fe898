import {describe, expect, test} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {failedWorkingGates} from "../../lib/deck/gates.js";
import {EVERY_KIND} from "../../lib/deck/frontier.js";
import type {Candidate} from "../../lib/deck/search.js";
import {usualPatterns} from "../../lib/deck/table.js";
import {deckTrials, isUsual, ownStrand, trialMember, type OwnStrand} from "../../lib/deck/trials.js";
import {withValues} from "../../lib/design/edit.js";
import {candidates, demandOf, evaluate} from "../../lib/evaluate.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog, seed} from "../support/designs.js";

const HALF_IN: OwnStrand = {plank: false, sixteenths: 8};
const library = () => withValues(seed("branch-library"), {"consider.fieldToppedTees": true, "consider.pretoppedTees": true, "consider.planks": true});
const some = (...names: string[]) => ({...catalog, deckMembers: names.map((name) => deckRow(catalog, name))});
const conditions = () => demandOf(library(), catalog, evaluate(library(), catalog).loads).conditions;
const trials = (own: OwnStrand, toppingIn: number, toppingsIn: readonly number[] = []) =>
  deckTrials(some("10DT32", "12DT30", "4HC12"), {conditions: {...conditions(), toppingIn}, consider: EVERY_KIND, own}, {toppingsIn, concretes: [conditions()]});
const sizes = (patterns: readonly string[]) => [...new Set(patterns.map((text) => parsePattern(text).sixteenths))];

describe("the decks that a search tries", () => {
  test("have 1/2 in strand, then 0.6 in, in tees; 3/8 in, then 1/2 in, in planks", () => {
    expect(trials(HALF_IN, 2).map(({row, patterns}) => [row.designation, sizes(patterns)])).toEqual([
      ["10DT32", [8, 10]], ["12DT30", [8, 10]], ["4HC12", [6, 8]], ["4HC12", [6, 8]],
    ]);
    const [tee] = trials(HALF_IN, 2);
    expect(tee?.patterns).toEqual([...usualPatterns(tee!.row, 8), ...usualPatterns(tee!.row, 10)]);
  });

  test("have the design's own strand too, in its kind of member alone", () => {
    const tried = (own: OwnStrand) => trials(own, 0).map(({patterns}) => sizes(patterns));
    expect(tried({plank: false, sixteenths: 9})).toEqual([[8, 9, 10], [8, 9, 10], [6, 8], [6, 8]]);
    // A plank's 3/8 in strand says nothing of tees.
    expect(tried({plank: true, sixteenths: 6})).toEqual([[8, 10], [8, 10], [6, 8], [6, 8]]);
    expect(tried({plank: true, sixteenths: 10})).toEqual([[8, 10], [8, 10], [6, 8, 10], [6, 8, 10]]);
    expect(ownStrand(catalog, {member: "4HC8", pattern: "76-S"})).toEqual({plank: true, sixteenths: 6});
    expect(ownStrand(catalog, library().deck)).toEqual(HALF_IN);
    expect([isUsual(HALF_IN), isUsual({plank: false, sixteenths: 6}), isUsual({plank: true, sixteenths: 6}), isUsual({plank: true, sixteenths: 10})]).toEqual([true, false, true, false]);
  });

  test("have the design's topping among those of the search, 2 in where there is neither, none on a full flange, and planks bare too", () => {
    const tried = (toppingIn: number, toppingsIn?: readonly number[]) => trials(HALF_IN, toppingIn, toppingsIn).map(({row, conditions: [first]}) => [row.designation, first?.toppingIn]);
    expect(tried(0)).toEqual([["10DT32", 2], ["12DT30", 0], ["4HC12", 0], ["4HC12", 2]]);
    expect(tried(3)).toEqual([["10DT32", 3], ["12DT30", 0], ["4HC12", 0], ["4HC12", 3]]);
    expect(tried(2.5, [2, 3]).filter(([name]) => name === "10DT32")).toEqual([["10DT32", 2], ["10DT32", 2.5], ["10DT32", 3]]);
    expect(tried(0, [3]).filter(([name]) => name === "4HC12")).toEqual([["4HC12", 0], ["4HC12", 3]]);
  });
});

describe("a candidate of the search", () => {
  const straight = (name: string, changes: Record<string, unknown> = {}): Candidate | undefined =>
    candidates(withValues(library(), {"deck.member": name, "deck.pattern": "88-S", ...changes}), some(name)).find(({profile}) => profile === "straight");

  test("has 0.6 in strand only where no number of 1/2 in strands works", () => {
    const [deep, shallow] = [straight("10DT32"), straight("8DT24")];
    expect([deep?.works, sizes([deep!.pattern])]).toEqual([true, [8]]);
    expect([shallow?.works, sizes([shallow!.pattern])]).toEqual([true, [10]]);
    for (const pattern of usualPatterns(deckRow(catalog, "8DT24"), 8).filter((text) => text.endsWith("S"))) {
      const {deck, member} = evaluate(withValues(library(), {"deck.member": "8DT24", "deck.pattern": pattern}), catalog);
      expect(deck.safe.safeLoadPsf >= deck.demandPsf && failedWorkingGates(member, library().bay.spanFt, deck.criteria).length === 0, pattern).toBe(false);
    }
  });

  test("that no strand makes strong enough is the strongest of all sizes", () => {
    const long = straight("12DT36", {"bay.spanFt": 80});
    expect(long?.works).toBe(false);
    const strongest = [8, 10].flatMap((size) => usualPatterns(deckRow(catalog, "12DT36"), size)).filter((text) => text.endsWith("S"))
      .map((pattern) => evaluate(withValues(library(), {"bay.spanFt": 80, "deck.member": "12DT36", "deck.pattern": pattern}), catalog).deck.safe.safeLoadPsf);
    expect(long?.safe.safeLoadPsf).toBeCloseTo(Math.max(...strongest), 9);
    expect(Math.max(...strongest)).toBeGreaterThan(0);
  });
});

test("a deck to try is none where its strands do not fit, and a fault is none of these", () => {
  const row = deckRow(catalog, "4HC8");
  const {conditions} = demandOf(seed("branch-library"), catalog, evaluate(seed("branch-library"), catalog).loads);
  const trials = {row, shape: shapeOf(catalog, "4HC8")} as Parameters<typeof trialMember>[1];
  expect(trialMember(catalog, trials, "66-S", conditions)?.layout.count).toBe(6);
  expect(trialMember(catalog, trials, "906-S", conditions)).toBeUndefined();
  expect(() => trialMember({...catalog, strands: undefined as never}, trials, "66-S", conditions)).toThrow(TypeError);
});
