import {expect, test} from "vitest";
import {changesForCandidate} from "../../lib/deck/choose.js";
import {failedGates} from "../../lib/deck/gates.js";
import {WORKING_GATES} from "../../lib/deck/limits.js";
import {withValues} from "../../lib/design/edit.js";
import {candidates, evaluate} from "../../lib/evaluate.js";
import {catalog, seed, seeds} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const EVERY_KIND = {"consider.fieldToppedTees": true, "consider.pretoppedTees": true, "consider.planks": true};

test("candidates work exactly where the design with them in it carries its load and passes transfer, vibration and fire", () => {
  for (const {design} of seeds) {
    const wide = withValues(design, EVERY_KIND);
    for (const candidate of candidates(wide, catalog).slice(0, 12)) {
      const {deck} = evaluate(withValues(wide, changesForCandidate(candidate)), catalog);
      const holds = deck.demandPsf <= deck.safe.safeLoadPsf && failedGates(candidate.member, wide.bay.spanFt, {...deck.criteria, limits: WORKING_GATES}).length === 0;
      expect(holds, candidate.id).toBe(candidate.works);
      expect(deck.safe.safeLoadPsf).toBeCloseTo(candidate.safe.safeLoadPsf, 9);
    }
  }
});

test("candidates lose with a reason whose numbers show it: what is asked reads as more than what there is", () => {
  const number = (text: string | undefined) => Number(text?.replace(/,/g, ""));
  let told = 0;
  for (let releaseStrengthPsi = 3000; releaseStrengthPsi <= 4500; releaseStrengthPsi += 250) {
    const list = candidates(withValues(LIBRARY, {...EVERY_KIND, "deck.releaseStrengthPsi": releaseStrengthPsi, "bay.spanFt": releaseStrengthPsi / 75}), catalog);
    for (const {reason} of list.filter((candidate) => !candidate.works)) {
      const [, carries, asked] = /^Carries ([\d,.]+) of the ([\d,.]+) psf/.exec(reason) ?? [];
      const [, needs, given] = /^Needs ([\d,.]+) psi when the strands are cut; ([\d,.]+) psi is given/.exec(reason) ?? [];
      if (asked !== undefined) expect(number(asked), reason).toBeGreaterThan(number(carries));
      if (needs !== undefined) expect(number(needs), reason).toBeGreaterThan(number(given));
      told += Number(asked !== undefined || needs !== undefined);
    }
  }
  expect(told).toBeGreaterThan(50);
});
