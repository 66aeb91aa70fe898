import {expect, test} from "vitest";
import {GREATEST_ASPECT} from "../../lib/air/ducts.js";
import {withValues} from "../../lib/design/edit.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {ruleWords} from "../../lib/schemes/ruleWords.js";
import {schemesOf, type Scheme} from "../../lib/schemes/scheme.js";
import {catalog, seed} from "../support/designs.js";

/** Schemes of a starter's rooms with some changes. */
function made(id: string, changes: Record<string, unknown>, vary: Parameters<typeof briefOf>[2]): Scheme[] {
  const schemes = schemesOf(briefOf(withValues(seed(id), changes), 9, vary), catalog);
  return Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
}
const failing = ({floor}: Scheme) => [...floor.services.checks, ...floor.air?.checks ?? []].filter(({verdict}) => verdict === "fails").map(({id}) => id);
const insideIn = ({design: {services}}: Scheme) => [services.mainWidthIn - 2, services.mainDepthIn - 2] as const;

test("mains are wider, more or deeper until their risers pass between stems as close as those of 8 ft tees", () => {
  const schemes = made("branch-library", {}, {members: ["8DT24", "8DT32"], kinds: [], spansFt: [28, 36, 44], beamSpansFt: [32], baysAcross: [1, 2], edges: ["ledge", "pockets", "below"], girders: ["inverted tee"]});
  expect(schemes.length).toBeGreaterThan(8);
  for (const scheme of schemes) {
    expect(failing(scheme), `${scheme.choices.edge} ${scheme.design.deck.member}`).toEqual([]);
    const [riser] = scheme.floor.air?.plan.risers ?? [];
    // A riser with an inch at each side, between stems 4 ft apart that are some 2 ft wide together at the top.
    expect(2 + (riser?.alongIn ?? NaN)).toBeLessThanOrEqual(riser?.space.topIn ?? NaN);
  }
  // Half of a row's air to each of two mains: some have more than one in a row of bays.
  expect(schemes.some(({found, design}) => found.story.mains > design.bay.baysAcross)).toBe(true);
});

test("a main that serves its one bay and is still flatter than 4 to 1 is deepened, and the ceiling comes down for it", () => {
  // Beams with pockets hang nothing below the deck: 10 in of main is tried first.
  const [one] = made("branch-library", {"air.way": "none"}, {members: ["12DT32"], kinds: [], spansFt: [44], beamSpansFt: [60], baysAcross: [1], edges: ["pockets"]});
  if (!one) throw new Error("no scheme");
  const [widthIn, depthIn] = insideIn(one);
  expect(one.design.services.mainDepthIn).toBeGreaterThan(10);
  expect(widthIn).toBeLessThanOrEqual(GREATEST_ASPECT * depthIn);
  expect(one.found.story.mains).toBe(one.design.bay.baysAlong);
  expect(one.design.story.ceiling).toBe("below");
  expect(failing(one)).toEqual([]);
});

test("below a flat deck the air goes back through the plenum, or in a duct where there is no ceiling, and the words say so", () => {
  for (const [ceiling, way, words] of [["flush", "plenum", "through the plenum"], ["none", "trunk", "in a duct beside the supply"]] as const) {
    const [one] = made("branch-library", {"story.ceiling": ceiling}, {kinds: ["planks"], spansFt: [20], beamSpansFt: [24], baysAcross: [2], edges: ["ledge"], girders: ["inverted tee"]});
    if (!one) throw new Error("no scheme");
    expect(one.design.air.way).toBe(way);
    expect(failing(one)).toEqual([]);
    expect(ruleWords(one).story).toContain(words);
  }
});
