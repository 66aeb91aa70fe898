import {describe, expect, test} from "vitest";
import {deckResult} from "../../lib/deck/deckResult.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {hasRoof} from "../../lib/design/used.js";
import {floorDiaphragm} from "../../lib/diaphragm/floorDiaphragm.js";
import {evaluate, openTopShape} from "../../lib/evaluate.js";
import {housedByRule, housedKey} from "../../lib/schemes/housed.js";
import {ruledDeckEdge, ruledWalls, wallsKey} from "../../lib/schemes/wallRule.js";
import {roofLoads} from "../../lib/snow/roofLoads.js";
import {stripLoads} from "../../lib/walls/endStrip.js";
import {catalog, seeds} from "../support/designs.js";
import {reading} from "../support/reading.js";

const starters = seeds.map(({design}) => design);

/** Fields that are read beyond those of some groups and some others by name; what has no group, a design's name or its setting, is merely handed on. */
const beyond = (read: ReadonlySet<string>, groups: readonly string[], fields: readonly string[]) =>
  [...read].filter((path) => path.includes(".") && !groups.includes(path.split(".")[0] as string) && !fields.includes(path)).sort();

/** What is read of a deck member beyond some of its values. Its shape goes by its designation, and so does its width. */
const ofDeck = (read: ReadonlySet<string>, keyed: ReadonlySet<string>) =>
  [...read].filter((path) => !path.startsWith("shape.") && path !== "widthFt" && !keyed.has(path)).sort();

describe("what schemes share is kept by all that it depends on", () => {
  const snowy = (design: Design) => [0, 30].map((groundPsf) => withValues(design, {"snow.groundPsf": groundPsf}));

  test.each(starters.flatMap(snowy).map((design) => [`${design.name}, snow of ${design.snow.groundPsf} psf`, design] as const))("the plan alone decides what lies on the roof of %s", (_, design) => {
    const {of, read} = reading(design);
    const {member, laid, loads} = evaluate(design, catalog);
    // What is worked out only where it is asked for hangs on the same.
    for (const shape of [{}, openTopShape(laid, loads)]) expect(roofLoads(of, catalog, {memberWidthFt: member.widthFt, ...shape}).elements[0]?.area.element).toBe("deck member");
    expect(read).toContain("bay.spanFt");
    expect(beyond(read, ["bay", "roof", "snow"], [
      "column.roofDeadPsf", "column.roofLivePsf",
      // What stands at the edge of an open top level is the brief's own, and no rule changes it.
      "edgeBeam.upstandIn", "walls.parapetIn", "walls.shortSide", "walls.spandrelUpstandIn",
    ])).toEqual([]);
  });

  const edged = starters.flatMap((design) => (["ledge", "pockets", "below"] as const).map((kind) => withValues(design, {"edgeBeam.kind": kind})));

  test.each(edged.map((design) => [design.name, design.edgeBeam.kind, design] as const))("the story by rule of %s, beam %s, hangs on what its key says", (_, _kind, design) => {
    const {member, loads, edgeBeam, girder} = evaluate(design, catalog);
    const hung = {edgeIn: edgeBeam.belowDeckIn, girderIn: girder?.belowDeckIn ?? 0};
    const keyed = {design: reading(design), member: reading(member)};
    housedKey(keyed.design.of, keyed.member.of, hung);
    const {of, read} = reading(design);
    const deck = reading(member);
    const floor = reading(loads);
    housedByRule(of, {ceilingFt: 9, limits: {}}, deck.of, floor.of, hung);
    // What the key leaves out is the brief's own.
    expect(beyond(read, ["air", "daylight", "services", "story"], [...keyed.design.read, "edgeBeam.jointGapIn", "edgeBeam.upstandIn"])).toEqual([]);
    expect(ofDeck(deck.read, keyed.member.read)).toEqual([]);
    expect([...floor.read]).toEqual(["rooms"]);
  });

  test.each(edged.flatMap((design) => (["spandrel", "solid panel", "insulated panel", "cladding", "not counted"] as const).map((shortSide) => [design.name, shortSide, withValues(design, {"walls.shortSide": shortSide})] as const)))("the walls by rule of %s, %s, hang on what their key says", (_, _side, design) => {
    const {member, story} = evaluate(design, catalog);
    const keyed = {design: reading(design), member: reading(member)};
    wallsKey(keyed.design.of, keyed.member.of, story);
    const {of, read} = reading(design);
    const heights = reading(story);
    const deck = reading(member);
    // What is worked out only where it is asked for hangs on the key as well.
    expect(ruledWalls(of, catalog, deck.of, heights.of, false).result.areas.wallFt2).toBeGreaterThan(0);
    expect(beyond(read, ["daylight", "ground", "roof", "walls"], [...keyed.design.read, "bay.floors", "column.roofDeadPsf", "column.roofLivePsf", "edgeBeam.upstandIn", "story.finishIn"])).toEqual([]);
    expect(ofDeck(deck.read, keyed.member.read)).toEqual([]);
    // Of the roof's loads it matters only whether there is a roof.
    const loaded = withValues(design, {"column.roofLivePsf": design.column.roofLivePsf + 15});
    if (hasRoof(design)) expect(ruledWalls(loaded, catalog, member, story, false)).toEqual(ruledWalls(design, catalog, member, story, false));
    // Schemes have no roof of their own.
    expect([...heights.read].filter((path) => path !== "roof" && !path.startsWith("roof.")).sort()).toEqual(["deckDepthIn", "glassIn", "ledgeDepthIn"]);
  });

  test.each(edged.map((design) => [design.name, design.edgeBeam.kind, design] as const))("the columns' side alone decides on the strip beyond the end lines of %s, beam %s", (_, _kind, design) => {
    const {member, laid, loads} = evaluate(design, catalog);
    const {of, read} = reading(design);
    stripLoads(of, {member: laid, edge: ruledDeckEdge(of, member), loads});
    expect(read).toContain("column.sideIn");
    expect(beyond(read, ["bay", "walls"], ["column.sideIn", "deck.toppingIn"])).toEqual([]);
  });

  test.each(starters.map((design) => [design.name, design] as const))("plan and deck alone decide on the diaphragm of %s", (_, design) => {
    const {of, read} = reading(design);
    floorDiaphragm(of, evaluate(design, catalog).member);
    expect(read).toContain("bay.spanFt");
    expect(beyond(read, ["bay", "deck", "diaphragm"], [])).toEqual([]);
  });

  test.each(starters.map((design) => [design.name, design] as const))("span and seat alone decide on the deck of %s", (_, design) => {
    const {member, loads} = evaluate(design, catalog);
    const {of, read} = reading(design);
    const deck = deckResult(of, catalog, member, loads);
    expect(beyond(read, ["criteria", "topping"], ["bay.spanFt", "deck.aggregate", "edgeBeam.jointGapIn", "edgeBeam.kind", "edgeBeam.ledgeProjectionIn", "edgeBeam.webWidthIn"])).toEqual([]);
    const wider = deckResult(withValues(design, {"edgeBeam.webWidthIn": design.edgeBeam.webWidthIn + 2}), catalog, member, loads);
    if (design.edgeBeam.kind === "below") expect(wider.criteria.seatIn).toBeGreaterThan(deck.criteria.seatIn);
    else expect(wider).toEqual(deck);
  });
});
