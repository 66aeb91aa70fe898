import {describe, expect, test} from "vitest";
import {LEAST_CEILING_IN} from "../../lib/story/stack.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import type {SettledTopping} from "../../lib/topping/fixedPoint.js";
import {floorTopping, settledTopping, type FloorTopping} from "../../lib/topping/floorTopping.js";
import {catalog, seed} from "../support/designs.js";

const library = (changes: Record<string, unknown> = {}) => evaluate(withValues(seed("branch-library"), changes), catalog);
const toppingOf = (changes: Record<string, unknown> = {}) => library(changes).topping as FloorTopping;
const check = (topping: FloorTopping, id: string) => topping.checks.find((entry) => entry.id === id);

describe("floorTopping", () => {
  test("takes finish and age from the design", () => {
    const level = toppingOf();
    expect(toppingOf({"topping.followShare": 1}).averageIn).toBeCloseTo(2, 9);
    expect(toppingOf({"topping.followShare": 0.5}).averageIn).toBeLessThan(level.averageIn);
    expect(toppingOf({"topping.ageDays": 14}).averageIn).toBeLessThan(level.averageIn);
    expect(library({"topping.ageDays": 14}).deck.camber.ageDays).toBe(14);
  });

  test("holds the load against what the deck carries under the topping's true weight", () => {
    const {deck} = library();
    const topping = toppingOf();
    expect(check(topping, "topping load")).toMatchObject({demand: deck.demandPsf, capacity: topping.safe.safeLoadPsf, verdict: "ok"});
    // Extra weight bends the bare member and is dead load, so it costs more than itself at most by the load factors.
    const cost = deck.safe.safeLoadPsf - topping.safe.safeLoadPsf;
    expect(cost).toBeGreaterThan(0.5 * topping.extra.momentPsf);
    expect(cost).toBeLessThan(2 * topping.extra.momentPsf);
    expect(toppingOf({"topping.followShare": 1}).safe.safeLoadPsf).toBeCloseTo(deck.safe.safeLoadPsf, 6);
    expect(check(toppingOf({"bay.spanFt": 75}), "topping load")?.verdict).toBe("fails");
  });

  test("lowers the ceiling by what the ends have beyond the least", () => {
    const topping = toppingOf();
    expect(topping.buildUpIn).toBeCloseTo(topping.greatestIn - topping.leastIn, 9);
    expect(topping.ceilingHeightIn).toBeCloseTo(library().story.ceilingHeightIn - topping.buildUpIn, 9);
    // A story whose ceiling is just high enough is too low once the topping is as thick as it is.
    const {story, design} = library();
    const floorToFloorFt = design.story.floorToFloorFt - (story.ceilingHeightIn - LEAST_CEILING_IN - topping.buildUpIn / 2) / 12;
    const low = library({"story.floorToFloorFt": floorToFloorFt});
    expect(low.story.ceilingHeightIn).toBeGreaterThan(LEAST_CEILING_IN);
    expect(check(low.topping as FloorTopping, "topping ceiling")?.verdict).toBe("fails");
    expect(check(topping, "topping ceiling")?.verdict).toBe("ok");
  });

  test("parts the concrete of a bay into a layer of the least thickness and what fills the camber beyond it", () => {
    const {design} = library();
    const topping = toppingOf();
    // 2 in over one bay.
    const layerYd3 = (design.bay.spanFt * design.bay.beamSpanFt * (2 / 12)) / 27;
    expect(topping.layerYd3).toBeCloseTo(layerYd3, 6);
    expect(topping.fillYd3).toBeCloseTo(topping.bayYd3 - layerYd3, 6);
  });

  test("lets the surface follow the camber only where that mends the load: a deck too weak under one thickness wants another", () => {
    const {design, member, deck, story} = library();
    const settled = settledTopping(design, member, deck) as SettledTopping;
    const asked = (demandPsf: number) => check(floorTopping(design, member, {...deck, demandPsf}, story, settled), "topping load");
    const bare = asked(deck.safe.safeLoadPsf);
    expect(bare?.verdict).toBe("fails");
    expect(bare?.message).toContain(": let the surface follow the camber, or take a deeper member");
    expect(asked(1.01 * deck.safe.safeLoadPsf)?.message).toContain(": a deeper member or a shorter span.");
  });

  test("raises the story where the room is too low even under the least; the surface may follow the camber only where that is enough", () => {
    const {design, member, deck, story} = library();
    const settled = settledTopping(design, member, deck) as SettledTopping;
    const asked = (ceilingHeightIn: number) => check(floorTopping(design, member, deck, {...story, ceilingHeightIn}, settled), "topping ceiling")?.message;
    expect(asked(story.least.leastIn)).toContain(": raise the story, or let the surface follow the camber.");
    expect(asked(story.least.leastIn - 0.1)).toContain(": raise the story.");
  });

  test("builds nothing up at the ends of a deck that sags", () => {
    const sagging = library({"bay.spanFt": 70, "deck.pattern": "48-S"}).topping as FloorTopping;
    expect(sagging.camber.toppedIn).toBeLessThan(0);
    expect(sagging.buildUpIn).toBeCloseTo(0, 9);
  });

  test("weighs in full on beams and columns", () => {
    const {member, laid, loads, topping, edgeBeam, girder, design} = library();
    const {averagePsf, reactionKip} = (topping as FloorTopping).extra;
    expect(averagePsf).toBeGreaterThan(1);
    // Both ends of one member press what lies on it beyond the least.
    expect((averagePsf * member.widthFt * design.bay.spanFt) / 2000).toBeCloseTo(reactionKip, 6);
    expect(laid.toppingWeightPlf - member.toppingWeightPlf).toBeCloseTo(averagePsf * member.widthFt, 9);
    const deckPsf = (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt + loads.superimposedDeadPsf + averagePsf;
    expect(edgeBeam.loads.deckDeadPlf).toBeCloseTo((deckPsf * design.bay.spanFt) / 2, 9);
    expect(girder?.loads.deckDeadPlf).toBeCloseTo(deckPsf * design.bay.spanFt, 9);
    const bare = library({"deck.toppingIn": 0});
    expect(bare.laid.toppingWeightPlf).toBe(0);
  });

  test("never gets lighter on them as the deck becomes too flexible for wet topping", () => {
    // An 8DT18 of the parking structure under a topping: from some span on, wet concrete would run on into its sag.
    const at = (spanFt: number) => evaluate(withValues(seed("parking-structure"), {
      "deck.member": "8DT18", "deck.pattern": "68-S", "deck.toppingIn": 3, "topping.followShare": 0, "bay.spanFt": spanFt,
    }), catalog);
    const fails = (result: ReturnType<typeof at>) => check(result.topping as FloorTopping, "wet topping")?.verdict === "fails";
    let [stiff, flexible] = [20, 80];
    expect([fails(at(stiff)), fails(at(flexible))]).toEqual([false, true]);
    while (flexible - stiff > 1e-6) {
      const middle = (stiff + flexible) / 2;
      if (fails(at(middle))) flexible = middle;
      else stiff = middle;
    }
    const [before, after] = [at(stiff), at(flexible)];
    expect(after.edgeBeam.momentKipIn / before.edgeBeam.momentKipIn).toBeCloseTo(1, 4);
    expect((before.topping as FloorTopping).carriedPsf).toBe(before.topping?.extra.averagePsf);
    // A plank that sags by feet is no load that its beams could be told: they count some inches.
    const hopeless = evaluate(withValues(seed("classroom-wing"), {"bay.spanFt": 120}), catalog);
    expect(hopeless.topping?.extra.averagePsf).toBeGreaterThan(1000);
    expect(hopeless.topping?.carriedPsf).toBeLessThan(50);
    expect(hopeless.topping?.carriedPsf).toBeGreaterThan(0);
    // On and on the beam's moment grows with the deck's span, beyond all wet topping that has an end.
    let last = after.edgeBeam.momentKipIn;
    for (let spanFt = flexible + 0.5; spanFt <= 90; spanFt += 2.5) {
      const {edgeBeam, laid, member} = at(spanFt);
      expect(edgeBeam.momentKipIn, `${spanFt} ft`).toBeGreaterThan(last);
      expect(laid.toppingWeightPlf).toBeGreaterThan(member.toppingWeightPlf);
      last = edgeBeam.momentKipIn;
    }
  });
});

test("a deck that sags by feet is reported to fail under its topping's weight, and is worked out all the same", () => {
  const records = evaluate(withValues(seed("records-store"), {"bay.spanFt": 140, "deck.strandHeightCenterIn": 21, "topping.followShare": 0.7}), catalog);
  expect(check(records.topping as FloorTopping, "topping load")?.verdict).toBe("fails");
});
