import {describe, expect, test} from "vitest";
import type {Catalog} from "../../lib/catalog.js";
import {changesForCandidate} from "../../lib/deck/choose.js";
import {dominates} from "../../lib/deck/dominance.js";
import {EVERY_KIND, frontier, leastIn, passesGates, type Frontier, type FrontierProgress} from "../../lib/deck/frontier.js";
import {failedGates} from "../../lib/deck/gates.js";
import {MEASURES, deckMeasures, measureValues} from "../../lib/deck/measures.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import type {DeckDemand} from "../../lib/deck/search.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {demandOf, evaluate} from "../../lib/evaluate.js";
import {catalog} from "../support/designs.js";

export const demandFor = (design: Design): DeckDemand => ({...demandOf(design, catalog, evaluate(design, catalog).loads), consider: EVERY_KIND});

/** What a search found and what it told on its way. */
export interface Searched {
  readonly found: Frontier;
  readonly told: readonly FrontierProgress[];
}

/** Runs a search to its end. */
export function searchFor(design: Design, some: Catalog, changes: Partial<DeckDemand> = {}, factors = catalog.carbonFactors): Searched {
  const work = frontier(some, {...demandFor(design), ...changes}, factors);
  const told: FrontierProgress[] = [];
  let step = work.next();
  for (; !step.done; step = work.next()) told.push(step.value);
  return {found: step.value, told};
}

/** What holds of every search. */
export function searchLaws(id: string, design: Design, searched: () => Searched): void {
  describe(`the search for ${id}`, () => {
    test("keeps decks that no deck that works dominates, each with measures of its own", () => {
      const {found} = searched();
      const values = found.decks.map(({measures}) => measureValues(measures));
      expect(found.decks.length).toBeGreaterThan(3);
      expect(found.working).toHaveLength(found.worked);
      for (const one of values) expect(found.working.some((other) => dominates(other, one))).toBe(false);
      expect(new Set(values.map((one) => one.join())).size).toBe(values.length);
      expect(new Set(found.decks.map(({id}) => id)).size).toBe(values.length);
    });

    test("drops only decks that a kept one dominates or equals", () => {
      const {found} = searched();
      const values = found.decks.map(({measures}) => measureValues(measures));
      for (const one of found.working) {
        expect(values.some((kept) => dominates(kept, one) || kept.every((value, i) => value === one[i]))).toBe(true);
      }
    });

    test("tells how far it is, up to the last of those it said there were", () => {
      const {found, told} = searched();
      expect(told.length).toBeGreaterThan(5);
      for (const [i, now] of told.entries()) {
        expect(now.tried).toBeGreaterThan(told[i - 1]?.tried ?? 0);
        expect(now.worked).toBeGreaterThanOrEqual(told[i - 1]?.worked ?? 0);
        expect(now.total).toBe(found.tried);
      }
      expect(told.at(-1)).toEqual({tried: found.tried, worked: found.worked, total: found.tried});
    });

    test("finds what the pipeline finds of each deck once it is in the design", () => {
      const {found} = searched();
      for (const deck of found.decks) {
        const {deck: now, member} = evaluate(withValues(design, changesForCandidate(deck)), catalog);
        expect(now.safe.safeLoadPsf, deck.id).toBeCloseTo(deck.safeLoadPsf, 9);
        expect(now.safe.safeLoadPsf).toBeGreaterThanOrEqual(now.demandPsf);
        expect(now.demandPsf).toBeCloseTo(deck.askedPsf, 9);
        expect(failedGates(member, design.bay.spanFt, {...now.criteria, limits: ["transfer", "vibration", "fire"]}), deck.id).toEqual([]);
        expect(deckMeasures(member, catalog.carbonFactors)).toEqual(deck.measures);
        expect(deck.profile === "straight").toBe(deck.pattern.endsWith("S"));
        expect(deck.use).toBe(deckRow(catalog, deck.designation).use);
        if (deck.use === "pretopped") expect(deck.toppingIn).toBe(0);
        if (deck.use === "field-topped") expect(deck.toppingIn).toBeGreaterThanOrEqual(2);
        expect(deck.releaseStrengthPsi / deck.strengthPsi).toBeCloseTo(design.deck.releaseStrengthPsi / design.deck.strengthPsi, 2);
      }
    });

    test("has the design's own deck among those that work, if it does", () => {
      const {found} = searched();
      const own = evaluate(design, catalog);
      const holds = own.deck.safe.safeLoadPsf >= own.deck.demandPsf && passesGates(own.member, design.bay.spanFt, own.deck.criteria);
      const measures = measureValues(deckMeasures(own.member, catalog.carbonFactors));
      expect(found.working.some((one) => one.every((value, i) => value === measures[i]))).toBe(holds);
    });

    test("holds what no other beats in some of the measures, for any choice of them", () => {
      const {found} = searched();
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
}
