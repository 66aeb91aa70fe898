import {describe, expect, test} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {STRENGTHS_PSI, beating, frontierId, leastIn, ownTrials} from "../../lib/deck/frontier.js";
import {ownStrand} from "../../lib/deck/trials.js";
import {MEASURES, deckMeasures, measureValues, type MeasureName} from "../../lib/deck/measures.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {withOwnFactors} from "../../lib/materials/carbon.js";
import {catalog, seed} from "../support/designs.js";
import {once} from "../support/once.js";
import {searchFor, searchLaws} from "./searched.js";

const LIBRARY = seed("branch-library");
/** A tee of each finish and a plank, each with few patterns: the search runs through them in no time. */
const few = once(() => ({...catalog, deckMembers: [["10DT32", 10, 10], ["12DT30", 14, 14], ["4HC12", 7, 7]].map(([name, leastStrands, mostStrands]) =>
  ({...deckRow(catalog, name as string), leastStrands: leastStrands as number, mostStrands: mostStrands as number}))}));
const library = () => searchFor(LIBRARY, few());

searchLaws("branch-library among three members", LIBRARY, library);

describe("the search", () => {
  test("does not hang on the order of the catalog", () => {
    const turned = {...few(), deckMembers: [...few().deckMembers].reverse()};
    expect(searchFor(LIBRARY, turned).found.decks).toEqual(library().found.decks);
  });

  test("keeps to the kinds that are considered, and finds none where none is", () => {
    const {found} = searchFor(LIBRARY, few(), {consider: {fieldToppedTees: false, pretoppedTees: true, planks: false}});
    expect(found.decks.length).toBeGreaterThan(0);
    for (const {use} of found.decks) expect(use).toBe("pretopped");
    expect(searchFor(LIBRARY, few(), {consider: {fieldToppedTees: false, pretoppedTees: false, planks: false}}).found).toEqual({decks: [], working: [], tried: 0, worked: 0});
  });

  test("finds nothing that works where the span is too long for any", () => {
    const {found} = searchFor(withValues(LIBRARY, {"bay.spanFt": 150}), few());
    expect(found).toMatchObject({decks: [], working: [], worked: 0});
    expect(found.tried).toBe(library().found.tried);
  });

  test("tries the design's own strength, topping and strand beside the usual ones", () => {
    const odd = withValues(LIBRARY, {"deck.strengthPsi": 5500, "deck.releaseStrengthPsi": 4730, "deck.toppingIn": 2.25, "deck.pattern": "109-S"});
    const {found} = searchFor(odd, few());
    expect(found.tried).toBeGreaterThan(library().found.tried);
    expect(STRENGTHS_PSI).not.toContain(5500);
    const own = measureValues(deckMeasures(evaluate(odd, catalog).member, catalog.carbonFactors));
    expect(found.working.some((one) => one.every((value, i) => value === own[i]))).toBe(true);
  });

  test("has the same trials once one of its decks is in the design, and tells by what they would differ", () => {
    const before = ownTrials(LIBRARY.deck, ownStrand(catalog, LIBRARY.deck));
    for (const deck of [...library().found.decks, {...LIBRARY.deck, id: "0.6 in strand", designation: "12DT34", pattern: "1010-S"}]) expect(ownTrials(deck, ownStrand(catalog, {member: deck.designation, pattern: deck.pattern})), deck.id).toEqual(before);
    const {deck} = LIBRARY;
    expect(before).toEqual([0.86]);
    const nine = {plank: false, sixteenths: 9};
    expect(ownTrials({...deck, strengthPsi: 5500, releaseStrengthPsi: 4730, toppingIn: 2.25}, nine)).toEqual([0.86, 5500, 2.25, nine]);
    // The 0.6 in strand is usual in tees and not in planks.
    expect(ownTrials({...deck, toppingIn: 0}, {plank: false, sixteenths: 10})).toEqual([0.86]);
    expect(ownTrials({...deck, toppingIn: 0}, {plank: true, sixteenths: 10})).toEqual([0.86, {plank: true, sixteenths: 10}]);
  });

  test("keeps lightweight out where its carbon and the strand's are all that count", () => {
    const names: readonly MeasureName[] = ["carbonKgPerFt2"];
    const [least] = leastIn(library().found.decks, names);
    expect(leastIn(library().found.decks, names)).toHaveLength(1);
    expect(least?.concreteKind).toBe("normalweight");
    // Were its aggregate fired without carbon, the lighter concrete would win.
    const free = Object.fromEntries(catalog.carbonFactors.flatMap(({id, concrete}) => (concrete?.kind === "sand-lightweight" && concrete.place === "precast" ? [[id, 50]] : [])));
    const [turned] = leastIn(searchFor(LIBRARY, few(), {}, withOwnFactors(catalog.carbonFactors, free)).found.decks, names);
    expect(turned?.concreteKind).toBe("sand-lightweight");
  });

  test("names a deck by all that tells it from others", () => {
    const deck = {designation: "4HC8", pattern: "76-S", toppingIn: 2.5, concreteKind: "normalweight", strengthPsi: 6000} as const;
    expect(frontierId(deck)).toBe("4HC8+2.5 76-S, 6000 psi");
    expect(frontierId({...deck, toppingIn: 0, concreteKind: "sand-lightweight"})).toBe("4HC8 76-S, 6000 psi lightweight");
  });

  test("tells which decks beat given measures", () => {
    const [first] = library().found.decks;
    const worse = {...first!.measures, weightPsf: first!.measures.weightPsf + 1};
    expect(beating(library().found.decks, worse).map(({id}) => id)).toContain(first!.id);
    expect(beating(library().found.decks, first!.measures)).toEqual([]);
  });

  test("prefers straight strand, then a name, where all measures are equal", () => {
    const measures = {depthIn: 1, weightPsf: 1, strandPsf: 1, concreteFt: 1, carbonKgPerFt2: 1};
    const [bent, last, first] = [{id: "b", profile: "one-point", measures}, {id: "z", profile: "straight", measures}, {id: "c", profile: "straight", measures}] as const;
    for (const decks of [[bent, last, first], [bent, first, last], [last, bent, first], [last, first, bent], [first, last, bent], [first, bent, last]]) {
      expect(leastIn(decks, MEASURES).map(({id}) => id)).toEqual(["c"]);
    }
  });

  test("keeps, of decks that are equal in what is asked about, the one with less of the rest, straight or not", () => {
    const measures = {depthIn: 1, weightPsf: 1, strandPsf: 1, concreteFt: 1, carbonKgPerFt2: 1};
    const [light, heavy] = [{id: "light", profile: "one-point", measures}, {id: "heavy", profile: "straight", measures: {...measures, weightPsf: 2}}] as const;
    for (const decks of [[light, heavy], [heavy, light]]) expect(leastIn(decks, ["depthIn"]).map(({id}) => id)).toEqual(["light"]);
  });

  test("gives each strength the share of it at release that the design's own has, to 10 psi, but 2,500 psi at least; its own stays as it is", () => {
    const releases = (strengthPsi: number, releaseStrengthPsi: number) => {
      const {found} = searchFor(withValues(LIBRARY, {"deck.strengthPsi": strengthPsi, "deck.releaseStrengthPsi": releaseStrengthPsi}), few(), {demandPsf: () => 10});
      return new Map(found.decks.map((deck) => [deck.strengthPsi, deck.releaseStrengthPsi]));
    };
    // 4,333 of 6,000 psi is 0.72 of it: 3,600 of 5,000.
    const usual = releases(6000, 4333);
    expect(usual.get(5000)).toBe(3600);
    for (const [strengthPsi, psi] of usual) expect(psi, String(strengthPsi)).toBe(strengthPsi === 6000 ? 4333 : Math.round((0.72 * strengthPsi) / 10) * 10);
    // 3,333 of 5,000 psi is 0.67 of it, and is not made 3,350 again.
    expect(releases(5000, 3333).get(5000)).toBe(3333);
    // 0.41 of 5,000 psi would be 2,050.
    expect(releases(8000, 3300).get(5000)).toBe(2500);
  });

  test("passes over strands that do not fit a member, and counts them as tried", () => {
    const plank = (mostStrands: number) => searchFor(LIBRARY, {...few(), deckMembers: [{...deckRow(catalog, "4HC12"), leastStrands: 7, mostStrands}]}).found;
    expect(plank(40).decks).toEqual(plank(7).decks);
    expect(plank(40).tried).toBe(34 * plank(7).tried);
  });
});
