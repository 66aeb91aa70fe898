import {describe, expect, test} from "vitest";
import {changesForCandidate} from "../../lib/deck/choose.js";
import {dominates} from "../../lib/deck/dominance.js";
import {EVERY_KIND, STRENGTHS_PSI, beating, frontier, frontierId, leastIn, ownTrials, passesGates, type Frontier, type FrontierProgress} from "../../lib/deck/frontier.js";
import {failedGates} from "../../lib/deck/gates.js";
import {MEASURES, deckMeasures, measureValues, type MeasureName} from "../../lib/deck/measures.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import type {DeckDemand} from "../../lib/deck/search.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {demandOf, evaluate} from "../../lib/evaluate.js";
import {withOwnFactors} from "../../lib/materials/carbon.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {catalogue, seed, seeds} from "../support/designs.js";

const LIBRARY = seed("branch-library");

const demandFor = (design: Design): DeckDemand => ({...demandOf(design, catalogue, evaluate(design, catalogue).loads), consider: EVERY_KIND});

/** Runs a search to its end. */
function run(design: Design, changes: Partial<DeckDemand> = {}, factors = catalogue.carbonFactors, some = catalogue): {found: Frontier; told: FrontierProgress[]} {
  const work = frontier(some, {...demandFor(design), ...changes}, factors, design.deck.pattern);
  const told: FrontierProgress[] = [];
  let step = work.next();
  for (; !step.done; step = work.next()) told.push(step.value);
  return {found: step.value, told};
}

const results = seeds.map(({id, design}) => ({id, design, ...run(design)}));
const library = results.find(({id}) => id === "branch-library")!;

describe.each(results)("the search for $id", ({design, found, told}) => {
  const values = found.decks.map(({measures}) => measureValues(measures));

  test("keeps decks that no deck that works dominates, each with measures of its own", () => {
    expect(found.decks.length).toBeGreaterThan(3);
    expect(found.working).toHaveLength(found.worked);
    for (const one of values) expect(found.working.some((other) => dominates(other, one))).toBe(false);
    expect(new Set(values.map((one) => one.join())).size).toBe(values.length);
    expect(new Set(found.decks.map(({id}) => id)).size).toBe(values.length);
  });

  test("drops only decks that a kept one dominates or equals", () => {
    for (const one of found.working) {
      expect(values.some((kept) => dominates(kept, one) || kept.every((value, i) => value === one[i]))).toBe(true);
    }
  });

  test("tells how far it is, up to the last of those it said there were", () => {
    expect(told.length).toBeGreaterThan(10);
    for (const [i, now] of told.entries()) {
      expect(now.tried).toBeGreaterThan(told[i - 1]?.tried ?? 0);
      expect(now.worked).toBeGreaterThanOrEqual(told[i - 1]?.worked ?? 0);
      expect(now.total).toBe(found.tried);
    }
    expect(told.at(-1)).toEqual({tried: found.tried, worked: found.worked, total: found.tried});
  });

  test("finds what the pipeline finds of each deck once it is in the design", () => {
    for (const deck of found.decks) {
      const {deck: now, member} = evaluate(withValues(design, changesForCandidate(deck)), catalogue);
      expect(now.safe.safeLoadPsf, deck.id).toBeCloseTo(deck.safeLoadPsf, 9);
      expect(now.safe.safeLoadPsf).toBeGreaterThanOrEqual(now.demandPsf);
      expect(now.demandPsf).toBeCloseTo(deck.askedPsf, 9);
      expect(failedGates(member, design.bay.spanFt, {...now.criteria, limits: ["transfer", "vibration", "fire"]}), deck.id).toEqual([]);
      expect(deckMeasures(member, catalogue.carbonFactors)).toEqual(deck.measures);
      expect(deck.profile === "straight").toBe(deck.pattern.endsWith("S"));
      expect(deck.use).toBe(deckRow(catalogue, deck.designation).use);
      if (deck.use === "pretopped") expect(deck.toppingIn).toBe(0);
      if (deck.use === "field-topped") expect(deck.toppingIn).toBeGreaterThanOrEqual(2);
      expect(deck.releaseStrengthPsi / deck.strengthPsi).toBeCloseTo(design.deck.releaseStrengthPsi / design.deck.strengthPsi, 2);
    }
  });

  test("has the design's own deck among those that work, if it does", () => {
    const own = evaluate(design, catalogue);
    const holds = own.deck.safe.safeLoadPsf >= own.deck.demandPsf && passesGates(own.member, design.bay.spanFt, own.deck.criteria);
    const measures = measureValues(deckMeasures(own.member, catalogue.carbonFactors));
    expect(found.working.some((one) => one.every((value, i) => value === measures[i]))).toBe(holds);
  });

  test("holds what no other beats in some of the measures, for any choice of them", () => {
    for (let choice = 1; choice < 2 ** MEASURES.length; choice++) {
      const names = MEASURES.filter((_, i) => choice & (1 << i));
      const at = names.map((name) => MEASURES.indexOf(name));
      const few = leastIn(found.decks, names).map(({measures}) => measureValues(measures, names).join());
      const all = [...new Map(found.working.map((one) => at.map((i) => one[i] as number)).map((one) => [one.join(), one])).values()];
      const best = new Set(all.filter((one) => !all.some((other) => dominates(other, one))).map((one) => one.join()));
      expect(new Set(few)).toEqual(best);
      expect(few).toHaveLength(best.size);
    }
  });
});

describe("the search", () => {
  test("does not hang on the order of the catalogue", () => {
    const turned = {...catalogue, deckMembers: [...catalogue.deckMembers].reverse()};
    expect(run(LIBRARY, {}, catalogue.carbonFactors, turned).found.decks).toEqual(library.found.decks);
  });

  test("keeps to the kinds that are considered, and finds none where none is", () => {
    const {found} = run(LIBRARY, {consider: {fieldToppedTees: false, pretoppedTees: true, planks: false}});
    expect(found.decks.length).toBeGreaterThan(0);
    for (const {use} of found.decks) expect(use).toBe("pretopped");
    expect(run(LIBRARY, {consider: {fieldToppedTees: false, pretoppedTees: false, planks: false}}).found).toEqual({decks: [], working: [], tried: 0, worked: 0});
  });

  test("finds nothing that works where the span is too long for any", () => {
    const {found} = run(withValues(LIBRARY, {"bay.spanFt": 150}));
    expect(found).toMatchObject({decks: [], working: [], worked: 0});
    expect(found.tried).toBe(library.found.tried);
  });

  test("tries the design's own strength, topping and strand beside the usual ones", () => {
    const odd = withValues(LIBRARY, {"deck.strengthPsi": 5500, "deck.releaseStrengthPsi": 4730, "deck.toppingIn": 2.25, "deck.pattern": "109-S"});
    const {found} = run(odd);
    expect(found.tried).toBeGreaterThan(library.found.tried);
    expect(STRENGTHS_PSI).not.toContain(5500);
    const own = measureValues(deckMeasures(evaluate(odd, catalogue).member, catalogue.carbonFactors));
    expect(found.working.some((one) => one.every((value, i) => value === own[i]))).toBe(true);
  });

  test("has the same trials once one of its decks is in the design, and tells by what they would differ", () => {
    for (const {design, found} of results) {
      const before = ownTrials({...design.deck}, design.deck.pattern);
      const usual = found.decks.filter(({pattern}) => parsePattern(pattern).sixteenths === parsePattern(design.deck.pattern).sixteenths);
      for (const deck of usual) expect(ownTrials(deck, deck.pattern), deck.id).toEqual(before);
    }
    const {deck} = LIBRARY;
    expect(ownTrials(deck, "108-S")).toEqual([0.86]);
    expect(ownTrials({...deck, strengthPsi: 5500, releaseStrengthPsi: 4730, toppingIn: 2.25}, "109-S")).toEqual([0.86, 5500, 2.25, 9, 9]);
    expect(ownTrials({...deck, toppingIn: 0}, "610-S")).toEqual([0.86, 10]);
  });

  test("keeps lightweight out where its carbon and the strand's are all that count", () => {
    const names: readonly MeasureName[] = ["carbonKgPerFt2"];
    const [least] = leastIn(library.found.decks, names);
    expect(leastIn(library.found.decks, names)).toHaveLength(1);
    expect(least?.concreteKind).toBe("normalweight");
    // Were its aggregate fired without carbon, the lighter concrete would win.
    const free = Object.fromEntries(catalogue.carbonFactors.flatMap(({id, concrete}) => (concrete?.kind === "sand-lightweight" && concrete.place === "precast" ? [[id, 50]] : [])));
    const [turned] = leastIn(run(LIBRARY, {}, withOwnFactors(catalogue.carbonFactors, free)).found.decks, names);
    expect(turned?.concreteKind).toBe("sand-lightweight");
  });

  test("names a deck by all that tells it from others", () => {
    const deck = {designation: "4HC8", pattern: "76-S", toppingIn: 2.5, concreteKind: "normalweight", strengthPsi: 6000} as const;
    expect(frontierId(deck)).toBe("4HC8+2.5 76-S, 6000 psi");
    expect(frontierId({...deck, toppingIn: 0, concreteKind: "sand-lightweight"})).toBe("4HC8 76-S, 6000 psi lightweight");
  });

  test("tells which decks beat given measures", () => {
    const [first] = library.found.decks;
    const worse = {...first!.measures, weightPsf: first!.measures.weightPsf + 1};
    expect(beating(library.found.decks, worse).map(({id}) => id)).toContain(first!.id);
    expect(beating(library.found.decks, first!.measures)).toEqual([]);
  });

  test("prefers straight strand, then a name, where all measures are equal", () => {
    const measures = {depthIn: 1, weightPsf: 1, strandPsf: 1, concreteFt: 1, carbonKgPerFt2: 1};
    const decks = [{id: "b", profile: "one-point", measures}, {id: "z", profile: "straight", measures}, {id: "c", profile: "straight", measures}] as const;
    expect(leastIn(decks, MEASURES).map(({id}) => id)).toEqual(["c"]);
  });
});
