import {describe, expect, it} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {patternMember} from "../../lib/deck/table.js";
import {crackedInertiaIn4, liveDeflection, liveLoadForSagPlf} from "../../lib/member/deflection.js";
import {fireNeeds, fireRating, stemAreaIn2} from "../../lib/member/fire.js";
import {ROAD_WIDTH_FT, handling, truckLoads} from "../../lib/member/handling.js";
import {horizontalShearKip} from "../../lib/member/horizontalShear.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {pulledBands, topSteelIn2} from "../../lib/member/topSteel.js";
import {WALKING, vibration} from "../../lib/member/vibration.js";
import {memberWith} from "../support/members.js";
import {catalogue} from "../support/designs.js";

function member(designation: string, pattern: string, toppingIn = 0) {
  return patternMember(catalogue, deckRow(catalogue, designation), pattern, {
    concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn, toppingStrengthPsi: 3000, humidityPercent: 70,
  });
}
const tee = member("10DT24", "88-S");
const topped = member("10DT24", "88-S", 2);
const plank = member("4HC8", "66-S");

describe("live load sag", () => {
  const state = prestressState(tee, 40, 0.5, 100);
  it("is that of the whole section where the soffit stays uncracked", () => {
    const {deflectionIn, uncrackedShare} = liveDeflection(tee, 40, state, 100, 100);
    expect(uncrackedShare).toBe(1);
    // 5 w L^4 / 384 E I = 5 (0.1/12) 480^4 / (384 x 4286.8 x 22468.9).
    expect(deflectionIn).toBeCloseTo((5 * (0.1 / 12) * 480 ** 4) / (384 * tee.modulusKsi * tee.section.inertiaIn4), 9);
  });
  it("grows faster than the load once the soffit cracks", () => {
    const at = (plf: number) => liveDeflection(tee, 40, state, 100, plf);
    expect(at(2400).uncrackedShare).toBeLessThan(1);
    expect(at(2400).deflectionIn).toBeGreaterThan(2 * at(1200).deflectionIn);
    expect(at(2400).crackedInertiaIn4).toBeLessThan(tee.section.inertiaIn4);
  });
  it("takes a cracked section of n Aps dp2 (1 - 1.6 sqrt(n rho))", () => {
    // n = 28800/4286.8 = 6.718; Aps = 1.224; dp = 19; rho = 1.224/(120 x 19) = 0.000537; sqrt(n rho) = 0.0601.
    expect(crackedInertiaIn4(tee, state)).toBeCloseTo(6.718 * 1.224 * 361 * (1 - 1.6 * 0.0601), -1);
  });
  it("is undone by the load for a sag", () => {
    for (const plf of [200, 800, 1200, 1800, 2400]) {
      expect(liveLoadForSagPlf(tee, 40, state, 100, liveDeflection(tee, 40, state, 100, plf).deflectionIn)).toBeCloseTo(plf, 6);
    }
  });
  it("is nothing without live load", () => expect(liveDeflection(tee, 40, state, 100, 0).deflectionIn).toBe(0));
});

describe("contact of topping and member", () => {
  it("passes on phi 80 bv d", () => expect(horizontalShearKip(topped)).toBeCloseTo((0.75 * 80 * 120 * 21) / 1000, 9));
  it("is no question without topping", () => expect(horizontalShearKip(tee)).toBeUndefined());
});

describe("liveliness", () => {
  it("gives the frequency of a simple beam to half a percent", () => {
    const {frequencyHz, massSagIn} = vibration(tee, 40, 100, "quiet");
    // Exact: (pi/2) sqrt(E I g / (w L^4)); with the sag 5 w L^4 / 384 E I it is 0.1794 sqrt(g / sag).
    const exact = (Math.PI / 2) * Math.sqrt((5 * 386.1) / (384 * massSagIn));
    expect(Math.abs(frequencyHz / exact - 1)).toBeLessThan(0.005);
  });
  it("calms down with weight and span of the strip, and stirs with less damping", () => {
    expect(vibration(topped, 40, 300, "quiet").movingWeightLb).toBeGreaterThan(vibration(topped, 40, 100, "quiet").movingWeightLb);
    // Shops count no people who sit, 80 lb a foot here, and damp less.
    const [quiet, busy] = [vibration(topped, 40, 100, "quiet"), vibration(topped, 40, 180, "busy")];
    expect(busy.acceleration).toBeCloseTo((WALKING.quiet.damping / WALKING.busy.damping) * quiet.acceleration, 12);
    expect(busy.allowedAcceleration).toBe(3 * quiet.allowedAcceleration);
  });
});

describe("fire rating", () => {
  const setting = {tables: catalogue.fire, aggregate: "carbonate", restrained: false} as const;
  it("of a bare 2 in flange is below an hour", () => expect(fireRating(tee, {...setting, aggregate: "siliceous"}).byThicknessHours).toBe(0));
  it("adds the topping to the flange", () => {
    const rating = fireRating(topped, setting);
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
  it("spreads a plank's concrete over its width", () => {
    const rating = fireRating(plank, setting);
    // 214.35 in2 / 48 in = 4.466 in: between 1.5 h (4.0) and 2 h (4.6).
    expect(rating.thicknessIn).toBeCloseTo(4.466, 3);
    expect(rating.byThicknessHours).toBeCloseTo(1.5 + (0.5 * 0.466) / 0.6, 2);
  });
  it("judges a plank's strands by their cover, which a restraining frame makes ample", () => {
    // 1.5 in to the strand's centre less 3/16 in.
    expect(fireRating(plank, setting).coverIn).toBeCloseTo(1.3125, 9);
    expect(fireRating(plank, setting).byCoverHours).toBeCloseTo(1 + (0.5 * 0.3125) / 0.375, 9);
    expect(fireRating(plank, {...setting, restrained: true}).byCoverHours).toBe(4);
  });
  it("judges a stem's strands by the height of their centroid and by the stem's size", () => {
    // Stem 4.75 x 22 in with three widths of the 2 in flange: 104.5 + 28.5 = 133 in2, the smallest class.
    expect(stemAreaIn2(topped)).toBeCloseTo(133, 9);
    // Four strands in each stem at 2, 4, 6 and 8 in: 5 in, beyond what the table asks for its last rating.
    expect(fireRating(topped, setting)).toMatchObject({coverIn: 5, byCoverHours: 1.5});
    expect(fireRating(topped, {...setting, restrained: true}).byCoverHours).toBe(3);
    expect(fireRating(member("10DT24", "48-S"), setting)).toMatchObject({coverIn: 3, byCoverHours: 1.5});
  });
});

describe("what a rating asks", () => {
  it("is what just gives that rating", () => {
    for (const one of [plank, topped]) for (const restrained of [false, true]) {
      const setting = {tables: catalogue.fire, aggregate: "siliceous", restrained} as const;
      expect(fireNeeds(one, setting, 1).thicknessIn).toBe(3.5);
      expect(fireNeeds(one, {...setting, aggregate: "carbonate"}, 2).thicknessIn).toBe(4.6);
    }
    const {coverIn} = fireNeeds(plank, {tables: catalogue.fire, aggregate: "carbonate", restrained: false}, 2);
    const bare = {...plank, layout: {...plank.layout, rows: plank.layout.rows.map((row) => ({...row, endIn: (coverIn ?? 0) + 0.1875, centreIn: (coverIn ?? 0) + 0.1875}))}};
    expect(fireRating(bare, {tables: catalogue.fire, aggregate: "carbonate", restrained: false}).byCoverHours).toBeCloseTo(2, 9);
  });
  it("is three quarters of an inch of cover in a restrained plank, and nothing that is known for stems past their table", () => {
    const setting = {tables: catalogue.fire, aggregate: "carbonate", restrained: false} as const;
    expect(fireNeeds(plank, {...setting, restrained: true}, 3).coverIn).toBe(0.75);
    expect(fireNeeds(topped, setting, 4).coverIn).toBeUndefined();
    expect(fireNeeds(plank, setting, 7)).toEqual({thicknessIn: undefined, coverIn: undefined});
  });
});

describe("hauling", () => {
  it("counts trucks, one for each piece that is too heavy to share one", () => {
    expect(truckLoads(24, {piecesPerTruck: 5})).toBe(5);
    expect(truckLoads(24, {piecesPerTruck: 0})).toBe(24);
    expect(truckLoads(24, {piecesPerTruck: 1})).toBe(24);
  });
  it("weighs the piece and sorts it by width", () => {
    expect(handling(tee, 60).weightKip).toBeCloseTo((449 * 150 * 60) / 144 / 1000, 2);
    expect(handling(tee, 60).widthClass).toBe("permit");
    expect(handling(plank, 30).widthClass).toBe("legal");
    expect(handling(member("15DT34", "188-S"), 60).widthClass).toBe("escort");
  });
  it("tilts what is too wide, to the width of a routine permit", () => {
    const {tilt} = handling(member("15DT34", "188-S"), 60);
    const angle = ((tilt?.degrees ?? 0) * Math.PI) / 180;
    expect(15 * Math.cos(angle) + (34 / 12) * Math.sin(angle)).toBeCloseTo(ROAD_WIDTH_FT.permit, 9);
    expect(tilt?.heightFt).toBeCloseTo(15 * Math.sin(angle) + (34 / 12) * Math.cos(angle), 9);
    expect(handling(tee, 60).tilt).toBeUndefined();
    // Width against tilt rises before it falls, so no less tilt does: every hundredth of a degree up to it is too wide.
    for (let degrees = 0; degrees < (tilt?.degrees ?? 0) - 0.01; degrees += 0.01) {
      const turned = (degrees * Math.PI) / 180;
      expect(15 * Math.cos(turned) + (34 / 12) * Math.sin(turned)).toBeGreaterThan(ROAD_WIDTH_FT.permit);
    }
  });
  it("says what makes a haul hard", () => {
    expect(handling(plank, 30).notes).toEqual([]);
    expect(handling(member("15DT34", "188-S"), 80).notes).toHaveLength(3);
  });
});

describe("top steel at transfer", () => {
  it("takes the tension of a rectangle's triangle of stress at 30 ksi", () => {
    // 48 x 8 in slab, top -0.3 ksi, bottom 0.9 ksi: tension over the upper 2 in; 0.3 x 2 / 2 x 48 = 14.4 kip.
    const slab = member("4FS8", "88-S");
    expect(topSteelIn2(slab, {topKsi: -0.3, bottomKsi: 0.9})).toBeCloseTo(14.4 / 30, 9);
  });
  it("is found band by band, up to the top and without gaps", () => {
    const stresses = {topKsi: -0.3, bottomKsi: 0.9};
    const bands = pulledBands(tee, stresses);
    expect(bands[0]?.fromIn).toBeCloseTo(18, 9);
    expect(bands.at(-1)?.toIn).toBe(24);
    expect(bands.at(-1)?.tensionToKsi).toBeCloseTo(0.3, 9);
    bands.slice(1).forEach((band, i) => expect(band.fromIn).toBe(bands[i]?.toIn));
    expect(bands.reduce((sum, {pullKip}) => sum + pullKip, 0) / 30).toBeCloseTo(topSteelIn2(tee, stresses), 12);
    // A section that is pulled all over is pulled from its soffit up.
    expect(pulledBands(tee, {topKsi: -0.3, bottomKsi: -0.1})[0]).toMatchObject({fromIn: 0, tensionFromKsi: 0.1});
  });
  it("is none where the top is pressed", () => expect(topSteelIn2(tee, {topKsi: 0.1, bottomKsi: 1})).toBe(0));
});
