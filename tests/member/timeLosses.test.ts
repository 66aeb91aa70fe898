import {describe, expect, test} from "vitest";
import {timeModel} from "../../lib/materials/timeModel.js";
import {halfLostDay, relaxationBeforeKsi, timeModels, timeSection, withShrinkage} from "../../lib/member/timeLosses.js";
import {RELAXATION_TO_RELEASE_KSI} from "../../lib/prestress/losses.js";
import {USUAL_SCHEDULE} from "../../lib/prestress/schedule.js";
import type {SectionAtTime} from "../../lib/prestress/timeStep.js";
import {memberWith} from "../support/members.js";

/** A history of losses, ksi, told by its days. */
function history(...rows: readonly {day: number; elastic?: number; creep?: number; shrinkage?: number; relaxation?: number}[]): SectionAtTime[] {
  const none = {elastic: 0, creep: 0, shrinkage: 0, relaxation: 0};
  return rows.map(({day, ...lost}) => ({day, moment: undefined, stressKsi: 170, lostKsi: {...none, ...lost}, curvaturePerIn: none}));
}

describe("losses through time", () => {
  test("relax by the cut at 18 hours as much as the component method counts", () => {
    expect(USUAL_SCHEDULE.releaseDay * 24).toBe(18);
    expect(relaxationBeforeKsi(USUAL_SCHEDULE)).toBeCloseTo(RELAXATION_TO_RELEASE_KSI, 12);
  });

  test("dry a topping through its upper face alone, cured moist, and the steamed member through all of its faces", () => {
    const member = memberWith("10DT24", "68-S", {toppingIn: 2, humidityPercent: 60});
    expect(timeModels(member)).toEqual({member: timeModel(member.volumeToSurfaceIn, 60, "steam"), topping: timeModel(2, 60, "moist"), relaxationShare: 1});
    expect(timeModels(memberWith("10DT24", "68-S")).topping).toBeUndefined();
  });

  test("by the component method's shrinkage keep the rest, and their topping does not shrink", () => {
    const models = timeModels(memberWith("10DT24", "68-S", {toppingIn: 2}));
    const {member, topping, relaxationShare} = withShrinkage(models, 3e-4);
    expect([member.shrinkage, member.creep, topping?.shrinkage, topping?.creep, relaxationShare]).toEqual([3e-4, models.member.creep, 0, models.topping?.creep, 1]);
    expect(withShrinkage(timeModels(memberWith("10DT24", "68-S")), 3e-4).topping).toBeUndefined();
  });

  test("are half gone on the day between two rows where creep, shrinkage and relaxation add up to the middle", () => {
    // 1 ksi at the cut and 21 at the end: 11 is three quarters of the way from 5 to 13.
    const days = history({day: 1, elastic: 9, relaxation: 1}, {day: 11, elastic: 7, creep: 2, shrinkage: 1, relaxation: 2}, {day: 31, elastic: 3, creep: 6, shrinkage: 4, relaxation: 3}, {day: 100, creep: 10, shrinkage: 6, relaxation: 5});
    expect(halfLostDay(days)).toBeCloseTo(26, 12);
  });

  test("are half gone on the very day of a row that has the half, and on the first day where nothing is lost", () => {
    expect(halfLostDay(history({day: 2}, {day: 10, creep: 4}, {day: 20, creep: 6}, {day: 30, creep: 8}))).toBe(10);
    expect(halfLostDay(history({day: 2}, {day: 10}, {day: 30}))).toBe(2);
  });
});

describe("the section of a member through time", () => {
  test("counts the topping as a rectangle on top, and each load's own moment at the place", () => {
    const member = memberWith("10DT24", "68-S", {toppingIn: 3});
    const section = timeSection(member, 40, 0.25, 100);
    // 120 x 3 in; 3,000 psi at 150 pcf: 60.62 sqrt(3,000) = 3,320.6 ksi; its middle 1.5 in above the tee's top, 24 - 17.774 in from the centroid.
    expect(section.topping?.areaIn2).toBe(360);
    expect(section.topping?.inertiaIn4).toBeCloseTo(270, 9);
    expect(section.topping?.aboveIn).toBeCloseTo(24 - 17.774 + 1.5, 3);
    expect(section.topping?.modulusKsi).toBeCloseTo(3320.6, 1);
    // 100 plf on 40 ft: 240 kip-in at midspan, three quarters of it at the quarter.
    expect(section.superimposedKipIn).toBeCloseTo(180, 9);
    expect(section.selfKipIn).toBeCloseTo(1.8 * member.selfWeightPlf, 9);
    // 3 x 120/144 x 150 = 375 plf.
    expect(section.toppingKipIn).toBeCloseTo(1.8 * 375, 9);
    expect(section.eccentricityIn).toBeCloseTo(17.774 - 4, 3);
  });
});
