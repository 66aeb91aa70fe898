import {describe, expect, test} from "vitest";
import {girder} from "../../lib/girder/girder.js";
import {girderTakes, leastGirderStrands, longestGirderSpan, shallowestGirder, type GirderTake, type GirderTaking} from "../../lib/girder/takes.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {girderMayHangIn} from "../../lib/story/headroom.js";
import {carriedExtraPsf} from "../../lib/topping/floorTopping.js";
import {catalog, seed} from "../support/designs.js";

const library = seed("branch-library");
const taking = (design: Design): GirderTaking => {
  const {laid, loads, story} = evaluate(design, catalog);
  return {design, catalog, deck: laid, loads, mayHangIn: girderMayHangIn(design, loads, story)};
};

/** Labels of the checks that fail when a design takes some changes. */
function failures(design: Design, changes: Readonly<Record<string, unknown>>): string[] {
  const {design: changed, deck, loads} = taking(withValues(design, changes));
  return (girder(changed, catalog, deck, loads)?.checks ?? []).filter((check) => check.verdict === "fails").map((check) => check.label.replace(/^Girder: /, ""));
}

function answers(design: Design) {
  const {topping, loads, story} = evaluate(design, catalog);
  const work = girderTakes(catalog, {design, extraToppingPsf: carriedExtraPsf(topping), mayHangIn: girderMayHangIn(design, loads, story)});
  let step = work.next();
  let steps = 0;
  for (; !step.done; step = work.next()) steps += 1;
  return {steps, found: step.value};
}

describe("what a girder takes", () => {
  test("says where the shallowest girder that carries is in the way of heads: the rectangle under a low deck", () => {
    const low = withValues(library, {"story.ceiling": "none", "story.floorToFloorFt": 12});
    const {story: {checks}} = evaluate(withValues(low, {"girder.kind": "rectangle", ...shallowestGirder(taking(low), "rectangle")?.changes}), catalog);
    const {capacity = 0, verdict} = checks.find(({id}) => id === "girder headroom") ?? {};
    expect(verdict).toBe("fails");
    // What is missing to 7 ft 6 in.
    expect(shallowestGirder(taking(low), "rectangle")?.tooLowIn).toBeCloseTo(90 - capacity, 9);
    expect(shallowestGirder(taking(withValues(low, {"story.floorToFloorFt": 16})), "rectangle")?.tooLowIn).toBe(0);
    // The ledge's foot of an inverted tee stays above the library's own ceiling, 13 in below the deck.
    expect(girderMayHangIn(library, taking(library).loads, evaluate(library, catalog).story)).toBeCloseTo(13, 9);
  });

  test("holds every check with what it answers, and fails by what it names one step further", () => {
    const {steps, found} = answers(library);
    expect(steps).toBe(4);
    const step: Readonly<Record<string, number>> = {"girder.strands": -1, "girder.ledgeDepthIn": -1, "bay.beamSpanFt": 1};
    for (const take of [found.strands, found.depth, found.span] as GirderTake[]) {
      expect(failures(library, take.changes)).toEqual([]);
      const [path, value] = Object.entries(take.changes)[0] as [string, number];
      expect(failures(library, {[path]: value + (step[path] as number)})).toContain(take.stops);
    }
    for (const [kind, take] of [["inverted tee", found.invertedTee], ["rectangle", found.rectangle]] as const) {
      expect(take).toBeDefined();
      expect(failures(library, {"girder.kind": kind, ...take?.changes})).toEqual([]);
    }
    expect(found.invertedTee?.belowDeckIn).toBeLessThan(found.rectangle?.belowDeckIn as number);
  });

  test("finds no shallower girder of any number of strands", () => {
    const take = shallowestGirder(taking(library));
    const depthIn = take?.changes["girder.ledgeDepthIn"] as number;
    for (let strands = 4; strands <= 40; strands += 2) {
      expect(failures(library, {"girder.ledgeDepthIn": depthIn - 1, "girder.strands": strands}), String(strands)).not.toEqual([]);
    }
  });

  test("finds the number of strands that holds also where the most that fit break the girder in its concrete", () => {
    const wide = withValues(library, {
      "bay.beamSpanFt": 24, "bay.baysAlong": 1, "girder.kind": "rectangle", "girder.webWidthIn": 36, "girder.strengthPsi": 8000, "girder.releaseStrengthPsi": 6000,
    });
    const holding = (depthIn: number) => Array.from({length: 59}, (_, i) => i + 2)
      .filter((strands) => failures(wide, {"girder.depthIn": depthIn, "girder.strands": strands}).length === 0);
    expect(holding(20)).not.toEqual([]);
    expect(failures(wide, {"girder.depthIn": 20, "girder.strands": 60})).toContain("strength in bending");
    const take = shallowestGirder(taking(wide));
    expect(take?.depthIn).toBeLessThanOrEqual(20);
    expect(take?.strands).toBe(holding(take?.depthIn as number)[0]);
  });

  test("answers for strands and depth also where a stem has no girder under it, which neither mends", () => {
    const off = withValues(library, {"bay.beamSpanFt": 24, "girder.ledgeDepthIn": 18});
    const take = leastGirderStrands(taking(off));
    expect(failures(off, take?.changes ?? {})).toEqual(["stem nearest a column line, distance from that line"]);
    expect(longestGirderSpan(taking(off))?.notFt).toContain(24);
  });

  test("goes down from a span that does not hold, and says where nothing does", () => {
    const long = longestGirderSpan(taking(withValues(library, {"bay.beamSpanFt": 50})));
    expect(long?.spanFt).toBeLessThan(50);
    expect(long?.stops).toBeDefined();
    expect(leastGirderStrands(taking(withValues(library, {"girder.ledgeProjectionIn": 4})))).toBeUndefined();
    expect(shallowestGirder(taking(withValues(library, {"girder.ledgeProjectionIn": 4})))).toBeUndefined();
  });
});
