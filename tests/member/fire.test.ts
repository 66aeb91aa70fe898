import {describe, expect, it} from "vitest";
import {fireNeeds, fireRating, stemAreaIn2} from "../../lib/member/fire.js";
import {doubleTee} from "../../lib/sections/doubleTee.js";
import {catalogue} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const tee = () => memberWith("10DT24", "88-S");
const topped = () => memberWith("10DT24", "88-S", {toppingIn: 2});
const plank = () => memberWith("4HC8", "66-S");

describe("fire rating", () => {
  const setting = {tables: catalogue.fire, aggregate: "carbonate", restrained: false} as const;
  it("of a bare 2 in flange is below an hour", () => expect(fireRating(tee(), {...setting, aggregate: "siliceous"}).byThicknessHours).toBe(0));
  it("adds the topping to the flange", () => {
    const rating = fireRating(topped(), setting);
    expect(rating.thicknessIn).toBe(4);
    expect(rating.byThicknessHours).toBe(1.5);
  });
  it("counts a lightweight flange under a normalweight topping no higher than if all of it were normalweight", () => {
    const two = memberWith("10DT32", "88-S", {toppingIn: 2, concreteKind: "sand-lightweight"});
    // 4 in: 1.5 h of carbonate aggregate, and not the 2.25 h that 4 in of lightweight would have.
    expect(fireRating(two, setting)).toMatchObject({thicknessIn: 4, byThicknessHours: 1.5});
    expect(fireNeeds(two, setting, 2).thicknessIn).toBe(4.6);
    // A lightweight flange alone keeps its own column: 4 in is a quarter of the way from 3.8 to 4.6.
    const bare = memberWith("10DT34", "88-S", {concreteKind: "sand-lightweight"});
    expect(fireRating(bare, setting).byThicknessHours).toBeCloseTo(2.25, 9);
    expect(fireNeeds(bare, setting, 2).thicknessIn).toBe(3.8);
  });
  it("counts ribs closer than four thicknesses: in part, wholly from two on, and up to twice the thickness (IBC 722.2.2.1.3)", () => {
    const ribbed = (stemSpacingIn: number, stemIn: number, depthIn: number, toppingIn: number) => fireRating(memberWith("10DT24", "88-S", {
      toppingIn, shape: doubleTee("ribbed", {widthIn: 96, depthIn, flangeIn: 2, stemBottomIn: stemIn, stemTopIn: stemIn, stemSpacingIn, chamferIn: 0}),
    }), setting).thicknessIn;
    // 96 x 2 + 2 x 5 x 22 = 412 in2 over 96 in: 4.292 in, and 6 in of topping; flange and topping alone are 8 in.
    expect(ribbed(33, 5, 24, 6)).toBe(8);
    expect(ribbed(24, 5, 24, 6)).toBeCloseTo(8 + (32 / 24 - 1) * (10.292 - 8), 3);
    expect(ribbed(16, 5, 24, 6)).toBeCloseTo(10.292, 3);
    expect(ribbed(12, 5, 24, 6)).toBeCloseTo(10.292, 3);
    // 2 in of flange on stems of 4 x 58 in, 4 in apart: 6.83 in of concrete, of which 4 count.
    expect(ribbed(4, 4, 60, 0)).toBe(4);
  });
  it("spreads a plank's concrete over its width", () => {
    const rating = fireRating(plank(), setting);
    // 214.35 in2 / 48 in = 4.466 in: between 1.5 h (4.0) and 2 h (4.6).
    expect(rating.thicknessIn).toBeCloseTo(4.466, 3);
    expect(rating.byThicknessHours).toBeCloseTo(1.5 + (0.5 * 0.466) / 0.6, 2);
  });
  it("judges a plank's strands by their cover, which a restraining frame makes ample", () => {
    // 1.5 in to the strand's centre less 3/16 in.
    expect(fireRating(plank(), setting).coverIn).toBeCloseTo(1.3125, 9);
    expect(fireRating(plank(), setting).byCoverHours).toBeCloseTo(1 + (0.5 * 0.3125) / 0.375, 9);
    expect(fireRating(plank(), {...setting, restrained: true}).byCoverHours).toBe(4);
  });
  it("judges a stem's strands by the height of their centroid and by the stem's size", () => {
    // Stem 4.75 x 22 in with three widths of the 2 in flange: 104.5 + 28.5 = 133 in2, the smallest class.
    expect(stemAreaIn2(topped())).toBeCloseTo(133, 9);
    // Four strands in each stem at 2, 4, 6 and 8 in: 5 in, beyond what the table asks for its last rating.
    expect(fireRating(topped(), setting)).toMatchObject({coverIn: 5, byCoverHours: 1.5});
    expect(fireRating(topped(), {...setting, restrained: true}).byCoverHours).toBe(3);
    expect(fireRating(memberWith("10DT24", "48-S"), setting)).toMatchObject({coverIn: 3, byCoverHours: 1.5});
  });
});

describe("what a rating asks", () => {
  it("is what just gives that rating", () => {
    for (const one of [plank(), topped()]) for (const restrained of [false, true]) {
      const setting = {tables: catalogue.fire, aggregate: "siliceous", restrained} as const;
      expect(fireNeeds(one, setting, 1).thicknessIn).toBe(3.5);
      expect(fireNeeds(one, {...setting, aggregate: "carbonate"}, 2).thicknessIn).toBe(4.6);
    }
    const {coverIn} = fireNeeds(plank(), {tables: catalogue.fire, aggregate: "carbonate", restrained: false}, 2);
    const bare = {...plank(), layout: {...plank().layout, rows: plank().layout.rows.map((row) => ({...row, endIn: (coverIn ?? 0) + 0.1875, centreIn: (coverIn ?? 0) + 0.1875}))}};
    expect(fireRating(bare, {tables: catalogue.fire, aggregate: "carbonate", restrained: false}).byCoverHours).toBeCloseTo(2, 9);
  });
  it("is three quarters of an inch of cover in a restrained plank, and nothing that is known for stems past their table", () => {
    const setting = {tables: catalogue.fire, aggregate: "carbonate", restrained: false} as const;
    expect(fireNeeds(plank(), {...setting, restrained: true}, 3).coverIn).toBe(0.75);
    expect(fireNeeds(topped(), setting, 4).coverIn).toBeUndefined();
    expect(fireNeeds(plank(), setting, 7)).toEqual({thicknessIn: undefined, coverIn: undefined});
  });
});
