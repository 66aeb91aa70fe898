import {expect, test} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {schemesOf} from "../../lib/schemes/scheme.js";
import {wantedCeilingFt} from "../../lib/schemes/wanted.js";
import {catalog, seed, seeds} from "../support/designs.js";

test("a design with a ceiling wants that ceiling, one without the height under what hangs lowest", () => {
  const wing = evaluate(seed("classroom-wing"), catalog);
  expect(wantedCeilingFt(wing)).toBe(wing.story.ceilingHeightIn / 12);
  const cars = evaluate(seed("parking-structure"), catalog);
  expect(cars.design.story.ceiling).toBe("none");
  const hangsIn = Math.max(cars.edgeBeam.belowDeckIn, cars.girder?.belowDeckIn ?? 0, cars.services.sprinklerIn);
  expect(hangsIn).toBeGreaterThan(0);
  expect(12 * wantedCeilingFt(cars)).toBeCloseTo(cars.story.ceilingHeightIn - hangsIn, 9);
});

test("a design keeps its topping, and one without lets others have 2 in", () => {
  expect(seed("records-store").deck.toppingIn).toBe(3);
  expect(briefOf(seed("records-store"), 10).vary.toppingsIn).toEqual([3]);
  expect(seed("parking-structure").deck.toppingIn).toBe(0);
  expect(briefOf(seed("parking-structure"), 10).vary.toppingsIn).toEqual([2]);
});

test.each(seeds)("the scheme of $id at its own span has a story near its own: the same height is wanted under another structure", ({design}) => {
  const brief = briefOf(design, wantedCeilingFt(evaluate(design, catalog)), {spansFt: [design.bay.spanFt]});
  const schemes = schemesOf(brief, catalog);
  const made = Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
  expect(made.length).toBeGreaterThan(0);
  for (const {floor, design: found} of made) {
    expect(wantedCeilingFt(floor)).toBeGreaterThanOrEqual(wantedCeilingFt(evaluate(design, catalog)) - 1e-9);
    expect(Math.abs(found.story.floorToFloorFt - design.story.floorToFloorFt)).toBeLessThan(2);
  }
});
