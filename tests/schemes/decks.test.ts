import {expect, test} from "vitest";
import {designCriteria} from "../../lib/deck/criteria.js";
import {deckDemand} from "../../lib/deck/search.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {deckTrials, trialMember} from "../../lib/deck/trials.js";
import {withValues} from "../../lib/design/edit.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {schemesOf, type NoScheme, type Scheme} from "../../lib/schemes/scheme.js";
import {catalog, seed} from "../support/designs.js";

/** Schemes of the library's rooms. */
function made(changes: Record<string, unknown>, vary: Parameters<typeof briefOf>[2]): (Scheme | NoScheme)[] {
  const schemes = schemesOf(briefOf(withValues(seed("branch-library"), changes), 9, vary), catalog);
  return Array.from({length: schemes.count}, (_, i) => schemes.at(i));
}

test.each([["planks", 90], ["pretoppedTees", 145], ["fieldToppedTees", 145]] as const)("where no deck of %s carries anything over %i ft, the one that is called the strongest has the greatest strength of all", (kind, spanFt) => {
  const design = withValues(seed("branch-library"), {"bay.spanFt": spanFt});
  const [none] = made({}, {kinds: [kind], spansFt: [spanFt], baysAcross: [1], toppingsIn: [2]});
  const named = none && "none" in none ? none.none : "";
  expect(named).toContain(", the strongest: Carries 0 of ");
  // Every pattern of every member of the kind, bending strength less the moment of its own weight, as a load.
  const criteria = designCriteria(design, catalog, 10);
  const demand = {...deckDemand(design, catalog, criteria, () => 0), consider: {planks: false, pretoppedTees: false, fieldToppedTees: false, [kind]: true}};
  const strengths = deckTrials(catalog, demand, {toppingsIn: [], concretes: [demand.conditions]})
    .flatMap((of) => of.patterns.flatMap((pattern) => of.conditions.flatMap((conditions) => {
      const member = trialMember(catalog, of, pattern, conditions);
      return member ? [{id: `${of.row.designation} ${conditions.toppingIn} ${pattern}`, psf: safeLoad(member, spanFt, criteria).limitsPsf.strength ?? -Infinity}] : [];
    })))
    .sort((a, b) => b.psf - a.psf);
  expect(strengths.length).toBeGreaterThan(20);
  const [member = "", pattern = ""] = named.split(/[+ ,]/).filter((word) => !/^\d$/.test(word));
  const found = strengths.filter(({id}) => id.startsWith(`${member} `) && id.endsWith(` ${pattern}`));
  // Concrete of a higher strength at release changes nothing of the strength.
  expect(Math.max(...found.map(({psf}) => psf))).toBeCloseTo(strengths[0]?.psf ?? NaN, 6);
  expect(strengths[0]?.psf).not.toBeCloseTo(strengths.at(-1)?.psf ?? NaN, 0);
});

test("a tee whose flange would reach too far at the end lines is passed over for one that reaches", () => {
  // Past columns of 22 in the strip is 11 in wide. With the 32 in of a 12 ft tee's flange that is 43 in, a tenth of which is more than flange and topping, 4 in.
  const schemes = made({}, {spansFt: [32, 36, 40], beamSpansFt: [30, 40], baysAcross: [2]}).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
  const edges = schemes.map(({floor, found}) => ({fails: floor.walls.checks.some(({id, verdict}) => id === "deck edge" && verdict === "fails"), over: found.deck.passedOver.length}));
  expect(edges.filter(({fails}) => fails).length).toBe(0);
  expect(edges.filter(({over}) => over > 0).length).toBeGreaterThan(0);
});
