import {describe, expect, it} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {LIMITS, type LimitName} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {cellWorking} from "../../lib/steps/cell.js";
import {evaluate} from "../../lib/evaluate.js";
import type {Member} from "../../lib/member/member.js";
import {catalog, seeds} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {once} from "../support/once.js";
import {checkWorking} from "./recomputed.js";

/** Straight and depressed, bare and topped, stems and planks, weak and strong. */
const members = once((): Readonly<Record<string, Member>> => ({
  "10DT24 68-S": memberWith("10DT24", "68-S"),
  "10DT24+2 128-D1": memberWith("10DT24", "128-D1", {toppingIn: 2}),
  "12DT30 148-D2": memberWith("12DT30", "148-D2", {strengthPsi: 6000}),
  "15DT34 268-D1": memberWith("15DT34", "268-D1"),
  "4HC8 76-S": memberWith("4HC8", "76-S"),
  "4HC12+2 68-S": memberWith("4HC12", "68-S", {toppingIn: 2, concreteKind: "sand-lightweight"}),
  "4FS4+3 66-S": memberWith("4FS4", "66-S", {toppingIn: 3, toppingStrengthPsi: 2500}),
}));
const SPANS_FT = [10, 18, 31, 46, 75, 150];

/** This floor's settings, with a rating and walkers, so that every gate has something to ask. */
const floor: Criteria = {
  ...handbookCriteria(true), superimposedDeadPsf: 25, deadOnlyFactor: 1.4, sustainedLiveShare: 0.3, seatIn: 4, walking: "quiet",
  fire: {hours: 2, tables: catalog.fire, aggregate: "siliceous", restrained: false},
};
const RULES: Readonly<Record<string, (limits: readonly LimitName[]) => Criteria>> = {
  "the handbook's": (limits) => ({...handbookCriteria(false), limits}),
  "a floor's": (limits) => ({...floor, limits}),
  "a strict floor's": (limits) => ({...floor, limits, tensionClass: "U", sagLimit: "L/480", sustainedLiveShare: 0.5}),
  "a floor's that may crack": (limits) => ({...floor, limits, tensionClass: "C", sagLimit: "L/240", superimposedDeadPsf: 90}),
};

describe.each(Object.entries(RULES))("by %s rules", (_, rules) => {
  it.each(LIMITS)("%s alone is worked out to the code's number", (name) => {
    const criteria = rules([name]);
    for (const [id, member] of Object.entries(members())) {
      for (const spanFt of SPANS_FT) {
        const working = cellWorking(member, spanFt, criteria, id);
        checkWorking(working);
        const {safeLoadPsf, limitsPsf} = safeLoad(member, spanFt, criteria);
        expect(working.steps.at(-1)?.result).toBe(safeLoadPsf);
        // What bounds the load is worked out before the least is taken.
        if (limitsPsf[name] !== undefined) expect(working.steps.length, `${id} ${spanFt} ft`).toBeGreaterThan(1);
      }
    }
  });

  it("all limits together name the one that governs, and its load is the least", () => {
    const criteria = rules(LIMITS);
    for (const member of Object.values(members())) {
      for (const spanFt of SPANS_FT) {
        const {steps} = cellWorking(member, spanFt, criteria);
        checkWorking({title: "all", steps});
        const {governs, limitsPsf, safeLoadPsf} = safeLoad(member, spanFt, criteria);
        expect(steps.at(-2)?.label).toContain(governs);
        expect(steps.at(-2)?.result).toBe(limitsPsf[governs]);
        expect(Math.max(0, steps.at(-2)?.result ?? NaN)).toBe(safeLoadPsf);
      }
    }
  });
});

it("takes every branch: each limit governs somewhere, or lets the member pass", () => {
  const met = new Set<LimitName>();
  for (const rules of Object.values(RULES)) for (const name of LIMITS) for (const member of Object.values(members())) for (const spanFt of SPANS_FT) {
    if (safeLoad(member, spanFt, rules([name])).limitsPsf[name] !== undefined) met.add(name);
  }
  expect([...met].sort()).toEqual([...LIMITS].sort());
});

it("names each limit that bounds the load, and compares only where there are several", () => {
  const bare = members()["10DT24 68-S"] as Member;
  const last = (limits: readonly LimitName[], member = bare, spanFt = 46) => cellWorking(member, spanFt, {...floor, limits}).steps.at(-1);
  const one = last(["strength"]);
  expect([one?.expression, Object.keys(one?.values ?? {}), one?.note]).toEqual(["max(0, w_1)", ["w_1"], "w1 strength."]);
  expect(one?.values["w_1"]?.label).toBe("load that strength allows");
  // They stand in the order in which a member is checked, however they were asked for.
  const two = last(["shear", "strength"]);
  expect([two?.expression, two?.note]).toEqual(["max(0, min(w_1, w_2))", "w1 strength, w2 shear."]);
  // On 150 ft the member cannot carry itself: the load is none, and still bounded by what it lacks.
  const none = last(["strength"], bare, 150);
  expect([none?.result, none?.expression]).toEqual([0, "max(0, w_1)"]);
  expect(none?.values["w_1"]?.value).toBeLessThan(0);
});

it("says of a gate that is not passed that no load is left", () => {
  // A flange of 2 in is no fire barrier of two hours.
  const {steps} = cellWorking(members()["10DT24 68-S"] as Member, 46, {...floor, limits: ["fire"]});
  expect([steps.at(-2)?.label, steps.at(-2)?.result]).toEqual(["load that is left where fire is not passed", 0]);
});

it("tells a round number where nothing bounds the load", () => {
  const {steps} = cellWorking(members()["10DT24 68-S"] as Member, 30, {...floor, limits: []});
  expect(steps).toHaveLength(1);
  checkWorking({title: "none", steps});
  expect(steps[0]?.note).toContain("None of the limits");
});

it("says of a design's own deck what the design's pages say", () => {
  for (const {design} of seeds) {
    const {member, deck} = evaluate(design, catalog);
    const {steps} = cellWorking(member, design.bay.spanFt, deck.criteria);
    expect(steps.at(-1)?.result).toBe(deck.safe.safeLoadPsf);
  }
});
