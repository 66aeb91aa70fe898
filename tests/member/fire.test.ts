import {describe, expect, it} from "vitest";
import {fireNeeds, fireRating, stemAreaIn2} from "../../lib/member/fire.js";
import {doubleTee} from "../../lib/sections/doubleTee.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const tee = () => memberWith("10DT24", "88-S");
const topped = () => memberWith("10DT24", "88-S", {toppingIn: 2});
const plank = () => memberWith("4HC8", "66-S");

describe("fire rating", () => {
  const setting = {tables: catalog.fire, aggregate: "carbonate", restrained: false} as const;
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
    // 1.5 in to the strand's center less 3/16 in.
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

describe("stems in a fire", () => {
  const setting = {tables: catalog.fire, aggregate: "siliceous", restrained: false} as const;
  /** A tee of straight stems whose strands have their middle at a height. */
  const stemmed = (stemIn: number, depthIn: number, flangeIn: number, heightIn: number, different = {}) => memberWith("10DT24", "28-S", {
    endIn: heightIn, centerIn: heightIn, ...different,
    shape: doubleTee("stemmed", {widthIn: 120, depthIn, flangeIn, stemBottomIn: stemIn, stemTopIn: stemIn, stemSpacingIn: 60, chamferIn: 0}),
  });
  it("belong to the class of the table whose area they exceed: one of 150 in2 to the class that ends there, as of 300 in2", () => {
    // IBC 2021 Table 722.2.3(5): 40 to 150 in2, more than 150 to 300 in2, more than 300 in2.
    // 5 x 24 in and 3 x 5 x 2 in: 150 in2. The class beyond gives 2 h at 2.5 in of cover, that up to 150 in2 1.5 h.
    expect(stemAreaIn2(stemmed(5, 26, 2, 2.5))).toBe(150);
    expect(fireRating(stemmed(5, 26, 2, 2.5), setting).byCoverHours).toBe(1.5);
    expect(fireRating(stemmed(5.01, 26, 2, 2.5), setting).byCoverHours).toBe(2);
    expect(fireNeeds(stemmed(5.01, 26, 2, 2.5), setting, 2)).toEqual({thicknessIn: 5, coverIn: 2.5});
    // In whatever order the table has them.
    const upsideDown = {...setting, tables: {...catalog.fire, stems: [...catalog.fire.stems].reverse()}};
    expect(fireRating(stemmed(5.01, 26, 2, 2.5), upsideDown).byCoverHours).toBe(2);
    // 10 x 24 in and 3 x 10 x 2 in: 300 in2, which 3 in of cover rate 2 h at the most; more rate 3 h.
    expect(stemAreaIn2(stemmed(10, 26, 2, 3))).toBe(300);
    expect(fireRating(stemmed(10, 26, 2, 3), setting).byCoverHours).toBe(2);
    expect(fireRating(stemmed(10.01, 26, 2, 3), setting).byCoverHours).toBe(3);
  });
  it("smaller than the table's are not rated", () => {
    // 2.5 x 8.5 in and 3 x 2.5 x 1.5 in: 32.5 in2, below 40.
    const slight = stemmed(2.5, 10, 1.5, 3);
    expect(fireRating(slight, setting).byCoverHours).toBeUndefined();
    expect(fireNeeds(slight, setting, 1).coverIn).toBeUndefined();
    // 2.5 x 11.5 in and 3 x 2.5 x 1.5 in: exactly 40 in2 are rated.
    expect(stemAreaIn2(stemmed(2.5, 13, 1.5, 3))).toBe(40);
    expect(fireRating(stemmed(2.5, 13, 1.5, 3), setting).byCoverHours).toBe(1.5);
  });
  it("with less cover than the first rating asks have none, and between two ratings a part of the hours", () => {
    // From 40 in2: 2 in for 1 h, 2.5 in for 1.5 h.
    expect(fireRating(stemmed(4, 24, 2, 1.99), setting).byCoverHours).toBe(0);
    expect(fireRating(stemmed(4, 24, 2, 2), setting).byCoverHours).toBe(1);
    expect(fireRating(stemmed(4, 24, 2, 2.2), setting).byCoverHours).toBeCloseTo(1.2, 9);
  });
  it("of lightweight concrete have a table of their own", () => {
    // Beyond 150 in2 1.5 h at 1.5 in, where normalweight concrete gives 1 h.
    expect(fireRating(stemmed(6, 26, 2, 1.5, {concreteKind: "sand-lightweight"}), setting).byCoverHours).toBe(1.5);
    expect(fireRating(stemmed(6, 26, 2, 1.5), setting).byCoverHours).toBe(1);
  });
});

describe("planks in a fire", () => {
  const setting = {tables: catalog.fire, aggregate: "siliceous", restrained: true} as const;
  it("rate four hours in a restraining frame with three quarters of an inch of cover, and none with less", () => {
    const covered = (coverIn: number) => ({...plank(), layout: {...plank().layout, rows: [{count: 6, areaIn2: 0.51, endIn: coverIn + 0.1875, centerIn: 3}]}});
    expect(fireRating(covered(0.75), setting)).toMatchObject({coverIn: 0.75, byCoverHours: 4});
    expect(fireRating(covered(0.74), setting).byCoverHours).toBe(0);
  });
  it("count the cover of their lowest strands", () => {
    const twoRows = {...plank(), layout: {...plank().layout, rows: [{count: 5, areaIn2: 0.425, endIn: 1.5, centerIn: 1.5}, {count: 1, areaIn2: 0.085, endIn: 6, centerIn: 6}]}};
    expect(fireRating(twoRows, setting).coverIn).toBeCloseTo(1.3125, 9);
  });
  it("of lightweight concrete ask for less thickness and cover", () => {
    const light = memberWith("4HC8", "66-S", {concreteKind: "sand-lightweight"});
    expect(fireNeeds(light, {...setting, restrained: false}, 2)).toEqual({thicknessIn: 3.8, coverIn: 1.5});
    expect(fireNeeds(plank(), {...setting, restrained: false}, 2)).toEqual({thicknessIn: 5, coverIn: 1.75});
    // 1.3125 in of cover: 1.375 in would be 1.5 h.
    expect(fireRating(light, {...setting, restrained: false}).byCoverHours).toBeCloseTo(1 + (0.5 * 0.3125) / 0.375, 9);
    expect(fireRating(plank(), {...setting, restrained: false}).byCoverHours).toBeCloseTo(1 + (0.5 * 0.1875) / 0.375, 9);
  });
});

describe("what a rating asks", () => {
  it("is what just gives that rating", () => {
    for (const one of [plank(), topped()]) for (const restrained of [false, true]) {
      const setting = {tables: catalog.fire, aggregate: "siliceous", restrained} as const;
      expect(fireNeeds(one, setting, 1).thicknessIn).toBe(3.5);
      expect(fireNeeds(one, {...setting, aggregate: "carbonate"}, 2).thicknessIn).toBe(4.6);
    }
    const {coverIn} = fireNeeds(plank(), {tables: catalog.fire, aggregate: "carbonate", restrained: false}, 2);
    const bare = {...plank(), layout: {...plank().layout, rows: plank().layout.rows.map((row) => ({...row, endIn: (coverIn ?? 0) + 0.1875, centerIn: (coverIn ?? 0) + 0.1875}))}};
    expect(fireRating(bare, {tables: catalog.fire, aggregate: "carbonate", restrained: false}).byCoverHours).toBeCloseTo(2, 9);
  });
  it("is three quarters of an inch of cover in a restrained plank, and nothing that is known for stems past their table", () => {
    const setting = {tables: catalog.fire, aggregate: "carbonate", restrained: false} as const;
    expect(fireNeeds(plank(), {...setting, restrained: true}, 3).coverIn).toBe(0.75);
    expect(fireNeeds(topped(), setting, 4).coverIn).toBeUndefined();
    expect(fireNeeds(plank(), setting, 7)).toEqual({thicknessIn: undefined, coverIn: undefined});
  });
});
