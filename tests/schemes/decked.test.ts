import {describe, expect, test} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {DeckedFloors} from "../../lib/schemes/decked.js";
import {gridOf} from "../../lib/schemes/grid.js";
import {roofAsLoads} from "../../lib/schemes/roofRule.js";
import {chosen, schemesOf} from "../../lib/schemes/scheme.js";
import {catalog, seed} from "../support/designs.js";

/** Floors of a starter over a few spans, without columns. */
function floorsOf(starter: string, spansFt: readonly number[]) {
  const brief = briefOf(seed(starter), 9, {spansFt, beamSpansFt: [26, 36, 44], kinds: ["pretoppedTees", "fieldToppedTees"], edges: ["ledge"]});
  const grid = gridOf(brief, catalog);
  const base = roofAsLoads(brief.base, catalog);
  const floors = new DeckedFloors(catalog);
  const schemes = schemesOf(brief, catalog);
  return Array.from({length: grid.count}, (_, index) => {
    const choices = grid.at(index);
    return {choices, first: floors.first(chosen(base, choices), choices), scheme: schemes.at(index)};
  });
}
const LOAD = new Set(["end strip: deck load", "top level: deck load"]);

describe.each([["parking-structure", [44, 52, 60]], ["branch-library", [44, 56, 68]]] as const)("decks of %s that must carry more than the floor's own load", (starter, spansFt) => {
  const all = floorsOf(starter, spansFt);
  const replaced = all.flatMap(({choices, first, scheme}) => ("none" in first || "none" in scheme || !first.instead ? [] : [{choices, first, instead: first.instead, scheme}]));

  test("are found where the first does not do", () => expect(replaced.length).toBeGreaterThan(2));

  test.each(replaced.map((of) => [JSON.stringify(of.choices), of] as const))("%s", (_, {first, instead, scheme}) => {
    // The one in whose place it was taken fails its load, and no fewer checks than was said, whatever its beams are.
    const {design} = scheme;
    const {member, pattern, releaseStrengthPsi} = instead.of.design.deck;
    const before = evaluate({...design, deck: {...design.deck, member, pattern, releaseStrengthPsi}, column: {...design.column, sideIn: instead.of.sideIn}}, catalog).checks.filter(({verdict}) => verdict === "fails");
    expect(before.some(({id}) => LOAD.has(id))).toBe(true);
    expect(before.length).toBeGreaterThanOrEqual(instead.fails);
    // Where the first was gone back to, it fails less than the one that carries all.
    const {deck} = design;
    const taken = deck.member === first.design.deck.member && deck.pattern === first.design.deck.pattern;
    if (taken) expect(scheme.fails.some(({id}) => LOAD.has(id))).toBe(false);
    else expect(deck.member === member && deck.pattern === pattern).toBe(true);
  });
});
