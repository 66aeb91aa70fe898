import {describe, expect, test} from "vitest";
import {deckResult} from "../../lib/deck/deckResult.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate, openTopShape} from "../../lib/evaluate.js";
import {roofLoads} from "../../lib/snow/roofLoads.js";
import {catalog, seeds} from "../support/designs.js";
import {reading} from "../support/reading.js";

const starters = seeds.map(({design}) => design);

/** Fields that are read beyond those of some groups and some others by name. */
const beyond = (read: ReadonlySet<string>, groups: readonly string[], fields: readonly string[]) =>
  [...read].filter((path) => !groups.includes(path.split(".")[0] as string) && !fields.includes(path)).sort();

describe("what schemes share is kept by all that it depends on", () => {
  const snowy = (design: Design) => [0, 30].map((groundPsf) => withValues(design, {"snow.groundPsf": groundPsf}));

  test.each(starters.flatMap(snowy).map((design) => [`${design.name}, snow of ${design.snow.groundPsf} psf`, design] as const))("the plan alone decides what lies on the roof of %s", (_, design) => {
    const {of, read} = reading(design);
    const {member, laid, loads} = evaluate(design, catalog);
    for (const shape of [{}, openTopShape(laid, loads)]) roofLoads(of, catalog, {memberWidthFt: member.widthFt, ...shape});
    expect(read).toContain("bay.spanFt");
    expect(beyond(read, ["bay", "roof", "snow"], [
      "column.roofDeadPsf", "column.roofLivePsf",
      // What stands at the edge of an open top level is the brief's own, and no rule changes it.
      "edgeBeam.upstandIn", "walls.parapetIn", "walls.shortSide", "walls.spandrelUpstandIn",
    ])).toEqual([]);
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
