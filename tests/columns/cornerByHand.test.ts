// One column from its loads to its strength, worked apart from first principles with the numbers written out. A corner
// column of two stories of 26 ft under 300 ft2 a level, 5,000 psi, 16 in square with four #9 on 1.5 in of cover to #3
// ties; beams cut for 16 in columns, their bearings 4 in off the face.
import {describe, expect, test} from "vitest";
import {usualColumnBars} from "../../lib/columns/chooseBars.js";
import {firstColumn} from "../../lib/columns/firstSize.js";
import {catalog} from "../support/designs.js";
import {floorLevel, roofLevel} from "./levels.js";

describe("a corner column by hand", () => {
  const common = {tributaryFt2: 300, beamPlf: 1000, beamLengthFt: 15, storyHeightFt: 26, partitionPsf: 0};
  const levels = [
    roofLevel({...common, deckPsf: 90, toppingPsf: 0, superimposedPsf: 0, livePsf: 30}),
    floorLevel({...common, deckPsf: 150, toppingPsf: 25, superimposedPsf: 10, livePsf: 80}),
  ];
  const bending = {
    seat: {seatIn: 4, cutForIn: 16},
    patterns: [{
      words: "one beam on one corbel, with the twist of its end", curvature: {along: "double", across: "double"} as const,
      levels: [
        {along: {deadKip: 42, liveKip: 0, roofKip: 9}, across: {deadKipIn: 250, liveKipIn: 0, roofKipIn: 60}},
        {along: {deadKip: 70.5, liveKip: 20, roofKip: 0}, across: {deadKipIn: 400, liveKipIn: 120, roofKipIn: 0}},
      ],
    }],
  };
  const column = () => firstColumn({
    position: "corner column", levels, bending, strengthPsi: 5000, coverIn: 1.5, steelRatio: 0.015, bars: usualColumnBars(catalog.bars),
    lengthFactor: 1, sways: false, sustainedLiveShare: 0.25, pieceLengthFt: 60,
  });
  const lowest = () => column().stories[1] as ReturnType<typeof column>["worst"];

  test("16 in square; 12 and 14 in do not carry", () => {
    const {sideIn, section, tried} = column();
    expect([sideIn, section.count, section.bar.size]).toEqual([16, 4, "#9"]);
    expect(tried.map(({carries}) => carries)).toEqual([false, false, true]);
  });

  test("levels and axial load: 182.37 kip at the foot", () => {
    // Roof 0.090 x 300 + 1.0 x 15 = 42.0; floor 0.185 x 300 + 15 = 70.5; the column (256 / 144) 0.150 x 26 = 6.9333 a story.
    // D = 42 + 6.9333 + 70.5 + 6.9333 = 126.3667. KLL AT = 4 x 300 = 1,200 ft2: 0.25 + 15 / 34.641 = 0.68301; L = 16.3923.
    // Lr = 9. 1.2 x 126.3667 + 1.6 x 16.3923 + 0.5 x 9 = 151.640 + 26.228 + 4.5 = 182.368.
    const {load, combination, axialKip} = lowest();
    expect(load.deadKip).toBeCloseTo(126.3667, 4);
    expect(load.liveKip).toBeCloseTo(16.3923, 4);
    expect(combination.name).toBe("1.2D + 1.6L + 0.5Lr");
    expect(axialKip).toBeCloseTo(182.368, 3);
  });

  test("end moments about both axes: half of what the floor brings", () => {
    // Along: (1.2 x 70.5 + 1.6 x 20) = 116.6 kip at 8 + 4 = 12 in = 1,399.2 kip-in, half of it 699.6; the foot is a hinge.
    // Across: 1.2 x 400 + 1.6 x 120 = 672 kip-in, half of it 336. Under the roof, by 1.2D + L + 1.6Lr: 1.2 x 42 + 1.6 x 9 =
    // 64.8 kip at 12 in = 777.6 at its top and (84.6 + 20) 12 / 2 = 627.6 at its foot; 1.2 x 250 + 1.6 x 60 = 396 and
    // (480 + 120) / 2 = 300.
    const {along, across} = lowest();
    expect([along.ends.topKipIn, along.ends.bottomKipIn]).toEqual([expect.closeTo(699.6, 9), 0]);
    expect([across.ends.topKipIn, across.ends.bottomKipIn]).toEqual([expect.closeTo(336, 9), 0]);
    const top = column().stories[0];
    expect(top?.combination.name).toBe("1.2D + L + 1.6Lr");
    expect([top?.along.ends.topKipIn, top?.along.ends.bottomKipIn]).toEqual([expect.closeTo(777.6, 9), expect.closeTo(627.6, 9)]);
    expect([top?.across.ends.topKipIn, top?.across.ends.bottomKipIn]).toEqual([expect.closeTo(396, 9), expect.closeTo(300, 9)]);
  });

  test("slenderness: both moments grow by 1.150", () => {
    // k lu / r = 312 / 4.8 = 65 over 34. beta = (1.2 x 126.3667 + 1.6 x 0.25 x 16.3923) / 182.368 = 158.197 / 182.368 = 0.86746.
    // Ec = 150^1.5 x 33 x 70.711 = 4,286.8 ksi; Ig = 65,536 / 12 = 5,461.3 in4; EI = 0.4 x 4,286.8 x 5,461.3 / 1.86746 =
    // 5.01468e6; Pc = 9.8696 x 5.01468e6 / 97,344 = 508.43 kip. Cm = 0.6, as the foot has no moment.
    // 0.6 / (1 - 182.368 / 381.32) = 0.6 / 0.52174 = 1.1500. The least moment 182.368 (0.6 + 0.48) = 196.96 is below both.
    const {along, across} = lowest();
    for (const {slenderness} of [along, across]) {
      expect(slenderness.ratio).toBeCloseTo(65, 12);
      expect(slenderness.criticalKip).toBeCloseTo(508.43, 2);
      expect(slenderness.leastMomentKipIn).toBeCloseTo(196.96, 2);
      expect(slenderness.magnifier).toBeCloseTo(1.15, 4);
    }
    expect(along.momentKipIn).toBeCloseTo(804.52, 2);
    expect(across.momentKipIn).toBeCloseTo(386.39, 2);
  });

  test("strength on the load's ray: 374.8 kip, of which 48.7 % are asked", () => {
    // The axis lies 13.39995 in from the corner, turned by 59.73535 degrees: sine 0.863707, cosine 0.503995, found by trial
    // and shown here to stand in the load's proportion. Block 0.8 x 13.39995 = 10.71996 in deep.
    // It cuts the compressed faces at 10.71996 / 0.863707 = 12.41157 in, and at (10.71996 - 16 x 0.503995) / 0.863707 = 3.07517 in
    // 16 in below: a trapezoid of (12.41157 + 3.07517) / 2 x 16 = 123.8939 in2.
    const [wide, narrow] = [12.41157, 3.07517];
    const area = ((wide + narrow) / 2) * 16;
    const down = (16 / 3) * ((wide + 2 * narrow) / (wide + narrow)); // 6.3924 in
    const in_ = (wide ** 2 + wide * narrow + narrow ** 2) / (3 * (wide + narrow)); // 4.3407 in
    const concrete = 4.25 * area; // 526.549 kip
    // Bars of 1.00 in2 at 1.5 + 0.375 + 0.564 = 2.439 and 13.561 in; distances from the corner 3.33582, 12.94197, 8.94125 and
    // 18.54740 in; stresses 87 (d - c) / c: -65.3 held to -60, -2.97347, -28.94835, +33.42014 ksi. The first and third bar lie
    // wholly in the block and displace 4.25 ksi.
    const bars = [
      {x: 2.439, y: 2.439, pull: -60 + 4.25}, {x: 13.561, y: 2.439, pull: -2.97347}, {x: 2.439, y: 13.561, pull: -28.94835 + 4.25}, {x: 13.561, y: 13.561, pull: 33.42014},
    ];
    const sum = (of: (one: (typeof bars)[number]) => number) => bars.reduce((total, one) => total + of(one), 0);
    const axial = concrete - sum(({pull}) => pull); // 526.549 + 50.002 = 576.551 kip
    const across = concrete * (8 - down) + sum(({pull, y}) => pull * (y - 8)); // 846.5 + 375.1 = 1,221.56 kip-in
    const along = concrete * (8 - in_) + sum(({pull, x}) => pull * (x - 8)); // 1,926.8 + 616.7 = 2,543.47 kip-in
    expect([axial, across, along]).toEqual([expect.closeTo(576.55, 2), expect.closeTo(1221.56, 1), expect.closeTo(2543.47, 1)]);
    // In the load's proportion: 1,221.56 / 576.55 = 2.1187 = 386.39 / 182.368; 2,543.47 / 576.55 = 4.4115 = 804.52 / 182.368.
    expect(across / axial).toBeCloseTo(386.39 / 182.368, 4);
    expect(along / axial).toBeCloseTo(804.52 / 182.368, 4);
    // Farthest bar 0.003 x 5.14745 / 13.39995 = 0.00115, so phi 0.65: 374.76 kip, below the cap of 0.52 (4.25 x 252 + 240) = 681.7.
    const {capacity, utilization} = lowest();
    expect(capacity.state).toMatchObject({axialKip: expect.closeTo(axial, 2), depthMomentKipIn: expect.closeTo(across, 1), widthMomentKipIn: expect.closeTo(along, 1)});
    expect(capacity.axialKip).toBeCloseTo(374.76, 2);
    expect(utilization).toBeCloseTo(182.368 / 374.76, 4);
  });
});
