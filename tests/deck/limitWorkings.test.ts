import {describe, expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {GATES, type LimitName} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {fireRating, stemAreaIn2} from "../../lib/member/fire.js";
import type {Member} from "../../lib/member/member.js";
import {limitWorking} from "../../lib/steps/cell.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const FIRE = {tables: catalog.fire, aggregate: "siliceous", restrained: false} as const;
const working = (name: LimitName, member: Member, spanFt: number, changes: Partial<Criteria> = {}) =>
  limitWorking(member, spanFt, {...handbookCriteria(false), sustainedLiveShare: 0.4, ...changes}, name).steps;
const symbols = (...of: Parameters<typeof working>) => working(...of).map(({symbol}) => symbol);

/** A tee whose stems are thinner than any that the code's table for stems covers: 2.75 in by 8 in and three times 2.75 by 2 in of flange. */
const thinStems = () => memberWith("8DT18", "28-S", {
  shape: shapeOf(catalog, "8DT18", {depthIn: 10, flangeIn: 2, stemBottomIn: 2.75, stemTopIn: 2.75}), endIn: 4, centerIn: 4,
});

describe("the working of sag", () => {
  test("starts from the movement allowed; counts creep only where partitions are attached; and needs no live load where creep is too much", () => {
    const tee = memberWith("10DT24", "88-S");
    expect(symbols("deflection", tee, 50, {sagLimit: "L/360"})).toEqual(["a", "d_L", "w_1"]);
    expect(symbols("deflection", tee, 50, {sagLimit: "L/480"})).toEqual(["a", "c", "d_L", "w_1"]);
    // 60 psf of dead load on 66 ft creep by more than span / 480.
    const steps = working("deflection", tee, 66, {sagLimit: "L/480", superimposedDeadPsf: 60});
    expect(steps.map(({symbol}) => symbol)).toEqual(["a", "c", "w_1"]);
    expect(steps.at(-1)?.note).toMatch(/Creep under dead load alone/);
    expect(steps[1]?.result as number).toBeGreaterThan(steps[0]?.result as number);
  });

  test("says that the cracked section bends beyond cracking, and that crack control's moment is found by trial", () => {
    const tee = memberWith("10DT24", "88-S");
    expect(working("deflection", tee, 50).at(-1)?.note).toMatch(/24\.2\.3\.9/);
    expect(working("crack control", tee, 50, {tensionClass: "C"}).at(-1)?.note).toMatch(/cracked section, by trial/);
  });
});

test("the working of minimum strength puts member and topping on the member alone before it cracks", () => {
  const member = memberWith("12DT32", "48-S", {toppingIn: 2});
  const moment = working("minimum strength", member, 40).find(({symbol}) => symbol === "M_cr");
  // w L^2 / 8 in kip-in.
  expect(moment?.values["M_o"]?.value).toBeCloseTo(((member.selfWeightPlf + 25 * 12) * 40 ** 2 * 12) / 8000, 6);
});

describe("the last steps of a limit", () => {
  const tee = () => memberWith("10DT24", "88-S");
  const last = (name: LimitName, changes: Partial<Criteria>) => working(name, tee(), 50, changes).at(-1);

  test("say where no live load is left: all of it is dead, by the factor of dead load alone", () => {
    expect(last("strength", {superimposedDeadPsf: 300, deadOnlyFactor: 1.4})).toMatchObject({expression: "w_n / 1.4 - w_o", note: expect.stringMatching(/^All of it dead/)});
    expect(last("strength", {superimposedDeadPsf: 10, deadOnlyFactor: 1.4})).toMatchObject({expression: "w_sd + (w_n - 1.2 * (w_o + w_sd)) / 1.6"});
    expect(last("camber", {superimposedDeadPsf: 300})).toMatchObject({expression: "w_s", note: expect.stringMatching(/so all of it lasts/)});
    expect(last("camber", {superimposedDeadPsf: 10})?.expression).toBe("w_sd + (w_s - w_sd) / k");
  });

  test("halve what strength holds only where the member would break as it cracks, and name a place only where there is one", () => {
    const held = (name: LimitName, member: Member) => working(name, member, 40).find(({symbol}) => symbol === "w_n");
    expect(held("strength", tee())?.expression).toMatch(/^M_d \/ \(b/);
    expect(held("minimum strength", memberWith("12DT32", "48-S"))?.expression).toMatch(/^M_d \/ 2 \/ \(b/);
    expect(held("bearing", tee())?.expression).toBe("1000 * B / (L * 0.5 * b)");
    expect(Object.keys(held("bearing", tee())?.values ?? {})).toEqual(["B", "L", "b"]);
    expect(held("shear", tee())?.expression).toBe("1000 * V_d / (L * (0.5 - s) * b)");
  });
});

test("of two limits that allow the same load the first in reading order governs: release before lifting", () => {
  const {governs, limitsPsf} = safeLoad(memberWith("10DT24", "148-S"), 30, {...handbookCriteria(false), limits: GATES});
  expect([limitsPsf.transfer, limitsPsf.stripping, governs]).toEqual([0, 0, "transfer"]);
});

describe("fire", () => {
  test("rates stems smaller than the code's table by thickness alone, and says that they have no rating for cover", () => {
    const member = thinStems();
    expect(stemAreaIn2(member)).toBeLessThan(40);
    const rating = fireRating(member, FIRE);
    expect(rating.byCoverHours).toBeUndefined();
    const [step] = working("fire", member, 20, {fire: {...FIRE, hours: 1}});
    expect(step).toMatchObject({expression: "R_t", result: rating.byThicknessHours, note: expect.stringContaining("no rating")});
    expect(Object.keys(step?.values ?? {})).toEqual(["R_t"]);
  });

  test("takes the lesser of both ratings where there are both, without a note", () => {
    const plank = memberWith("4HC8", "66-S");
    const {byThicknessHours, byCoverHours} = fireRating(plank, FIRE);
    const [step] = working("fire", plank, 20, {fire: {...FIRE, hours: 1}});
    expect(step).toMatchObject({expression: "min(R_t, R_c)", result: Math.min(byThicknessHours, byCoverHours as number)});
    expect(step?.note).toBeUndefined();
    expect(step?.values["R_c"]?.value).toBe(byCoverHours);
  });

  test("asks for higher strands where the table has a cover for the hours, as it has for every plank", () => {
    const plank = memberWith("4HC8", "66-S");
    const message = (hours: number, restrained: boolean) => deckState(plank, 20, {...handbookCriteria(false), fire: {...FIRE, restrained, hours}}, 40)
      .checks.find(({id}) => id === "deck fire cover")?.message;
    expect(message(4, false)).toMatch(/higher strands, or a frame that restrains the floor\.$/);
  });
});
