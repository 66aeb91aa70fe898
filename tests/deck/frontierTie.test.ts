import {expect, test} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {EVERY_KIND, frontier} from "../../lib/deck/frontier.js";
import {demandOf, evaluate} from "../../lib/evaluate.js";
import {withValues} from "../../lib/design/edit.js";
import {catalog, seed} from "../support/designs.js";
import {searchFor} from "./searched.js";

test("a deck that carries just what is asked works, and one that lacks a hundredth of a psf does not", () => {
  const design = seed("branch-library");
  const some = {...catalog, deckMembers: [{...deckRow(catalog, "10DT32"), leastStrands: 10, mostStrands: 10}]};
  const demand = {...demandOf(design, catalog, evaluate(design, catalog).loads), consider: EVERY_KIND};
  const working = (askedPsf: number) => {
    const work = frontier(some, {...demand, demandPsf: () => askedPsf}, catalog.carbonFactors);
    let step = work.next();
    while (!step.done) step = work.next();
    return step.value.decks;
  };
  const [first] = working(100);
  if (!first) throw new Error("nothing works under 100 psf");
  expect(first.safeLoadPsf).toBeGreaterThanOrEqual(100);
  expect(working(first.safeLoadPsf).map(({id}) => id)).toContain(first.id);
  expect(working(first.safeLoadPsf + 0.01).map(({id}) => id)).not.toContain(first.id);
});

test("a deck that carries many times the load does not work where a gate alone shuts it out: a flange too thin for a longer fire", () => {
  const some = {...catalog, deckMembers: [{...deckRow(catalog, "12DT30"), leastStrands: 14, mostStrands: 14}]};
  const worked = (fireHours: string) => searchFor(withValues(seed("branch-library"), {"criteria.fireHours": fireHours, "criteria.walking": "none"}), some, {demandPsf: () => 10}).found.worked;
  // Three hours take 6.2 in of siliceous, 5.7 in of carbonate and 4.6 in of sand-lightweight concrete against heat (IBC 722.2.2.1); the flange has 4 in.
  expect(worked("1.5")).toBeGreaterThan(10);
  expect(worked("3")).toBe(0);
});
