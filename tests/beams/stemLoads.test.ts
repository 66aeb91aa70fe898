import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {
  beamUnderDeck, diagramsAt, greatestShearKip, greatestTorsionKipIn, pointLoadDiagrams, shearBesideKip, stemBeam, stemPlacesFt, type PointLoadedBeam, type StemBeamInput,
} from "../../lib/beams/stemLoads.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";

const anyBeam: fc.Arbitrary<PointLoadedBeam> = fc.record({
  spanFt: within(8, 80), uniformPlf: fc.oneof(fc.constant(0), within(0, 4000)), uniformEccentricityIn: within(-6, 6),
  points: fc.array(fc.record({atFt: within(0, 1), loadKip: within(0, 60), eccentricityIn: within(-14, 14)}), {maxLength: 12}),
}).map((beam) => ({...beam, points: beam.points.map((point) => ({...point, atFt: point.atFt * beam.spanFt}))}));

/** Shear, moment and torsion at a place by cutting the beam there and adding up all that stands to the RIGHT of the cut. */
function byCut({spanFt, points, uniformPlf, uniformEccentricityIn}: PointLoadedBeam, atFt: number) {
  // The right reaction from moments about the left end, the even load as many thin slices with their own places.
  const slices = 400;
  const even = (fromFt: number, toFt: number, value: (xFt: number) => number) => {
    // Simpson's rule, exact for what is needed here, over many slices.
    const step = (toFt - fromFt) / slices;
    let total = 0;
    for (let i = 0; i < slices; i++) {
      const x = fromFt + i * step;
      total += ((value(x) + 4 * value(x + step / 2) + value(x + step)) * step) / 6;
    }
    return (total * uniformPlf) / 1000;
  };
  const right = (lever: (eccentricityIn: number) => number) =>
    (points.reduce((sum, p) => sum + p.loadKip * lever(p.eccentricityIn) * p.atFt, 0) + even(0, spanFt, (x) => x) * lever(uniformEccentricityIn)) / spanFt;
  const rightKip = right(() => 1);
  const beyond = points.filter((p) => p.atFt >= atFt);
  return {
    shearKip: beyond.reduce((sum, p) => sum + p.loadKip, 0) + even(atFt, spanFt, () => 1) - rightKip,
    momentKipFt: rightKip * (spanFt - atFt) - beyond.reduce((sum, p) => sum + p.loadKip * (p.atFt - atFt), 0) - even(atFt, spanFt, (x) => x - atFt),
    torsionKipIn: beyond.reduce((sum, p) => sum + p.loadKip * p.eccentricityIn, 0) + even(atFt, spanFt, () => 1) * uniformEccentricityIn - right((e) => e),
  };
}

describe("pointLoadDiagrams", () => {
  test("of two loads at the quarter points", () => {
    // 40 ft, 12 kip at 10 and 30 ft, 10 in off: reactions 12, moment 120 kip-ft between them, torsion 120, 0, -120 kip-in.
    const at = (atFt: number) => ({atFt, loadKip: 12, eccentricityIn: 10});
    const diagrams = pointLoadDiagrams({spanFt: 40, points: [at(30), at(10)], uniformPlf: 0, uniformEccentricityIn: 0});
    expect(diagrams).toMatchObject({leftKip: 12, rightKip: 12, leftTorsionKipIn: 120, rightTorsionKipIn: 120, greatestMomentKipFt: 120, greatestMomentAtFt: 10});
    expect(diagrams.stretches.map(({shearFromKip, shearToKip}) => [shearFromKip, shearToKip])).toEqual([[12, 12], [0, 0], [-12, -12]]);
    expect(diagrams.stretches.map(({torsionFromKipIn}) => torsionFromKipIn)).toEqual([120, 0, -120]);
    expect(diagramsAt(diagrams, 5)).toEqual({shearKip: 12, momentKipFt: 60, torsionKipIn: 120});
    expect(diagramsAt(diagrams, 10)).toEqual({shearKip: 12, momentKipFt: 120, torsionKipIn: 120});
    expect(diagramsAt(diagrams, 15)).toEqual({shearKip: 0, momentKipFt: 120, torsionKipIn: 0});
    expect(diagramsAt(diagrams, 40)).toEqual({shearKip: -12, momentKipFt: 0, torsionKipIn: -120});
  });

  test("of an even load and one load off the middle", () => {
    // 20 ft, 2,000 plf (2 in off) and 10 kip at 5 ft (8 in off). Left 20 + 7.5 = 27.5; at 5 ft 17.5 then 7.5; zero 3.75 ft on:
    // at 5 ft (27.5 + 17.5) / 2 * 5 = 112.5; at 8.75 ft 112.5 + 7.5 * 3.75 / 2 = 126.5625 kip-ft. Torsion 40 + 60 = 100.
    const diagrams = pointLoadDiagrams({spanFt: 20, points: [{atFt: 5, loadKip: 10, eccentricityIn: 8}], uniformPlf: 2000, uniformEccentricityIn: 2});
    expect(diagrams).toMatchObject({leftKip: 27.5, rightKip: 22.5, leftTorsionKipIn: 100, rightTorsionKipIn: 60, greatestMomentKipFt: 126.5625, greatestMomentAtFt: 8.75});
  });

  test("of loads over the supports puts nothing into the beam", () => {
    const diagrams = pointLoadDiagrams({spanFt: 20, points: [0, 20].map((atFt) => ({atFt, loadKip: 9, eccentricityIn: 8})), uniformPlf: 0, uniformEccentricityIn: 0});
    expect(diagrams).toMatchObject({leftKip: 9, rightKip: 9, leftTorsionKipIn: 72, rightTorsionKipIn: 72, greatestMomentKipFt: 0});
    expect(diagrams.stretches).toMatchObject([{shearFromKip: 0, shearToKip: 0, torsionFromKipIn: 0}]);
  });

  test("agrees with cutting the beam and integrating what stands beyond, to 1e-9", () => {
    hold(300, fc.property(anyBeam, within(0, 1), (beam, share) => {
      const diagrams = pointLoadDiagrams(beam);
      const atFt = share * beam.spanFt;
      // At the left support loads right over it are already off the beam.
      fc.pre(atFt > 0 && beam.points.every((point) => point.atFt > 0));
      const own = diagramsAt(diagrams, atFt);
      const cut = byCut(beam, atFt);
      const size = 1 + diagrams.leftKip + diagrams.rightKip;
      expect(Math.abs(own.shearKip - cut.shearKip)).toBeLessThan(1e-9 * size);
      expect(Math.abs(own.momentKipFt - cut.momentKipFt)).toBeLessThan(1e-9 * size * beam.spanFt);
      expect(Math.abs(own.torsionKipIn - cut.torsionKipIn)).toBeLessThan(1e-9 * size * 14);
    }));
  });

  test("is in balance, closes at the right end, and no place has more than the greatest moment", () => {
    hold(400, fc.property(anyBeam, within(0, 1), (beam, share) => {
      const diagrams = pointLoadDiagrams(beam);
      const {leftKip, rightKip, stretches, greatestMomentKipFt, greatestMomentAtFt} = diagrams;
      const total = beam.points.reduce((sum, {loadKip}) => sum + loadKip, (beam.uniformPlf * beam.spanFt) / 1000);
      const size = 1e-9 * (1 + total) * beam.spanFt;
      expect(Math.abs(leftKip + rightKip - total)).toBeLessThan(size);
      expect(Math.abs(stretches.at(-1)?.momentToKipFt as number)).toBeLessThan(size);
      const atEndKip = beam.points.filter(({atFt}) => atFt === beam.spanFt).reduce((sum, {loadKip}) => sum + loadKip, 0);
      expect(Math.abs((stretches.at(-1)?.shearToKip as number) + rightKip - atEndKip)).toBeLessThan(size);
      expect(diagramsAt(diagrams, share * beam.spanFt).momentKipFt).toBeLessThanOrEqual(greatestMomentKipFt + size);
      expect(Math.abs(diagramsAt(diagrams, greatestMomentAtFt).momentKipFt - greatestMomentKipFt)).toBeLessThan(size);
    }));
  });

  test("mirrors with its loads, and adds up over them", () => {
    hold(300, fc.property(anyBeam, within(0.001, 0.999), (beam, share) => {
      const {spanFt, points} = beam;
      const mirrored = pointLoadDiagrams({...beam, points: points.map((point) => ({...point, atFt: spanFt - point.atFt}))});
      const own = pointLoadDiagrams(beam);
      const size = 1e-9 * (1 + own.leftKip + own.rightKip) * spanFt;
      expect(Math.abs(mirrored.leftKip - own.rightKip)).toBeLessThan(size);
      expect(Math.abs(mirrored.leftTorsionKipIn - own.rightTorsionKipIn)).toBeLessThan(14 * size);
      expect(Math.abs(diagramsAt(mirrored, (1 - share) * spanFt).momentKipFt - diagramsAt(own, share * spanFt).momentKipFt)).toBeLessThan(size);
      const parts = [{...beam, points: []}, ...points.map((point) => ({...beam, uniformPlf: 0, points: [point]}))];
      const sum = parts.reduce((total, part) => total + diagramsAt(pointLoadDiagrams(part), share * spanFt).momentKipFt, 0);
      expect(Math.abs(sum - diagramsAt(own, share * spanFt).momentKipFt)).toBeLessThan(size);
    }));
  });

  test("refuses loads off the span and numbers that are none", () => {
    const beam = {spanFt: 20, points: [{atFt: 21, loadKip: 1, eccentricityIn: 0}], uniformPlf: 0, uniformEccentricityIn: 0};
    refused(() => pointLoadDiagrams(beam), {path: "points.0.atFt", value: 21, allowed: "0 to 20 ft"});
    refused(() => pointLoadDiagrams({...beam, points: [{atFt: 1, loadKip: NaN, eccentricityIn: 0}]}), {path: "points.0.loadKip"});
    refused(() => pointLoadDiagrams({...beam, points: 3 as never}), {path: "points"});
    refused(() => pointLoadDiagrams({...beam, points: [], spanFt: 0}), {path: "spanFt"});
    refused(() => diagramsAt(pointLoadDiagrams({...beam, points: []}), 20.1), {path: "atFt", allowed: "0 to 20 ft"});
  });
});

describe("a load beside or over a support", () => {
  const under = (atFt: number) => pointLoadDiagrams({spanFt: 20, points: [{atFt: 5, loadKip: 10, eccentricityIn: 6}, {atFt, loadKip: 30, eccentricityIn: 6}], uniformPlf: 0, uniformEccentricityIn: 0});

  test("is shear and torsion of the whole load, however near the support, and over it too", () => {
    // 10 x 15/20 = 7.5 kip of the first load at the left; the second brings all of its 30 as it nears the support.
    for (const atFt of [0, 1e-6]) {
      expect(greatestShearKip(under(atFt))).toBeCloseTo(37.5, 4);
      expect(shearBesideKip(under(atFt), 0)).toBeCloseTo(37.5, 4);
      expect(greatestTorsionKipIn(under(atFt))).toBeCloseTo(225, 3);
      expect(greatestShearKip(under(20 - atFt))).toBeCloseTo(32.5, 4);
      expect(shearBesideKip(under(20 - atFt), 20)).toBeCloseTo(32.5, 4);
    }
  });

  test("leaves between it and the next what even load takes on the way", () => {
    // 20 ft, 2,000 plf and 10 kip at 5 ft: 27.5 kip at the left, 17.5 and 7.5 beside the load, 24 + 10 kip less at 12 ft.
    const even = pointLoadDiagrams({spanFt: 20, points: [{atFt: 5, loadKip: 10, eccentricityIn: 8}], uniformPlf: 2000, uniformEccentricityIn: 0});
    expect([2, 5, 8.75, 12, 20].map((atFt) => shearBesideKip(even, atFt))).toEqual([23.5, 17.5, 0, 6.5, 22.5].map((kip) => expect.closeTo(kip, 9)));
  });

  test("twists a beam most between two of them that stand on both sides of its line", () => {
    // 10 kip 10 in off at 5 ft and as far off the other way at 6 ft: 75 less 70 kip-in at the left, 95 between them, 5 beyond.
    const twisted = pointLoadDiagrams({spanFt: 20, points: [{atFt: 5, loadKip: 10, eccentricityIn: 10}, {atFt: 6, loadKip: 10, eccentricityIn: -10}], uniformPlf: 0, uniformEccentricityIn: 0});
    expect(twisted.leftTorsionKipIn).toBeCloseTo(5, 9);
    expect(greatestTorsionKipIn(twisted)).toBeCloseTo(95, 9);
  });

  test("has the greater shear of its two sides", () => {
    // Left 7.5 + 30 x 8/20 = 19.5: right of the first load 9.5, right of the second -20.5.
    const diagrams = under(12);
    expect([0, 3, 5, 8, 12, 16, 20].map((atFt) => shearBesideKip(diagrams, atFt))).toEqual([19.5, 19.5, 19.5, 9.5, 20.5, 20.5, 20.5].map((kip) => expect.closeTo(kip, 9)));
    refused(() => shearBesideKip(diagrams, 21), {path: "atFt"});
  });
});

describe("stemPlacesFt", () => {
  test("lays stems out by the member's two gaps in turn", () => {
    expect(stemPlacesFt({spanFt: 30, memberWidthFt: 10, stemSpacingFt: 5, firstStemFt: 2.5})).toEqual([2.5, 7.5, 12.5, 17.5, 22.5, 27.5]);
    // 4 ft within a member, 6 ft over the joint.
    expect(stemPlacesFt({spanFt: 20, memberWidthFt: 10, stemSpacingFt: 4, firstStemFt: 3})).toEqual([3, 7, 13, 17]);
    expect(stemPlacesFt({spanFt: 20, memberWidthFt: 10, stemSpacingFt: 5, firstStemFt: 0})).toEqual([0, 5, 10, 15, 20]);
  });

  test("refuses gaps that cannot be", () => {
    const row = {spanFt: 30, memberWidthFt: 10, stemSpacingFt: 5, firstStemFt: 2.5};
    refused(() => stemPlacesFt({...row, stemSpacingFt: 10}), {path: "stemSpacingFt", allowed: "0.1 to 9.9 ft"});
    refused(() => stemPlacesFt({...row, firstStemFt: 5.5}), {path: "firstStemFt", allowed: "0 to 5 ft"});
    refused(() => stemPlacesFt({...row, firstStemFt: -1}), {path: "firstStemFt"});
    // The wider gap is the limit: 4 ft within a member, 6 ft over the joint.
    expect(stemPlacesFt({spanFt: 20, memberWidthFt: 10, stemSpacingFt: 4, firstStemFt: 6})).toEqual([6, 10, 16, 20]);
    refused(() => stemPlacesFt({...row, stemSpacingFt: 4, firstStemFt: 6.1}), {path: "firstStemFt", allowed: "0 to 6 ft"});
  });
});

describe("stemBeam", () => {
  const of = (changes: Partial<StemBeamInput> = {}) => stemBeam({
    spanFt: 30, memberWidthFt: 10, stemSpacingFt: 5, firstStemFt: 2.5, deckPlf: 7177.5, deckEccentricityIn: 11.5,
    uniformPlf: 1575, uniformEccentricityIn: 0, ...changes,
  });

  test("puts half a member's load on each stem", () => {
    // 7,177.5 * 10 / 2,000 = 35.8875 kip; six stems, three to each side: 107.6625 + 1,575 * 15 / 1,000 = 131.2875 kip.
    const {stemKip, diagrams, uniform, reactionRatio} = of();
    expect(stemKip).toBeCloseTo(35.8875, 9);
    expect(diagrams.leftKip).toBeCloseTo(131.2875, 9);
    expect(uniform.reactionKip).toBeCloseTo(131.2875, 9);
    expect(reactionRatio).toBeCloseTo(1, 12);
    // Torsion 107.6625 * 11.5 = 1,238.119 kip-in, by stems and by even load alike.
    expect(diagrams.leftTorsionKipIn).toBeCloseTo(1238.11875, 6);
    expect(uniform.torsionKipIn).toBeCloseTo(1238.11875, 6);
    // Midspan: 107.6625 * 15 - 35.8875 (12.5 + 7.5 + 2.5) = 807.46875, and 1,575 * 900 / 8,000 = 177.1875 kip-ft.
    expect(diagrams.greatestMomentKipFt).toBeCloseTo(984.65625, 6);
  });

  test("shows how the first stem's place moves load to an end", () => {
    // First stem over the support: 0, 5 ... 30: seven stems, each end carries 3.5: 125.606 + 23.625 kip.
    expect(of({firstStemFt: 0}).diagrams.leftKip).toBeCloseTo(149.23125, 6);
    // 0.5, 5.5 ... 25.5: six stems whose middle is 13 ft: 6 * 35.8875 * 17 / 30 = 122.0175 at the left.
    const {diagrams, reactionRatio, torsionRatio} = of({firstStemFt: 0.5});
    expect(diagrams.leftKip).toBeCloseTo(122.0175 + 23.625, 6);
    expect(reactionRatio).toBeCloseTo(145.6425 / 131.2875, 6);
    expect(torsionRatio).toBeCloseTo(17 / 15, 9);
  });

  test("compares the end that is twisted most, whichever it is", () => {
    // 4.5, 9.5 ... 29.5 ft: six stems whose middle is 17 ft.
    const {reactionRatio, torsionRatio} = of({firstStemFt: 4.5});
    expect(reactionRatio).toBeCloseTo(145.6425 / 131.2875, 6);
    expect(torsionRatio).toBeCloseTo(17 / 15, 9);
  });

  test("lies evenly where there are no stems, twisted by deck and own weight, each by its own lever", () => {
    const even = beamUnderDeck({spanFt: 20, deckPlf: 2000, deckEccentricityIn: 10, uniformPlf: 1000, uniformEccentricityIn: 2}, [], 5);
    // 3 kip/ft on 20 ft: 30 kip and 150 kip-ft; (20 + 2) kip-in/ft: 220 kip-in at each end.
    expect(even.diagrams).toMatchObject({leftKip: 30, rightKip: 30, greatestMomentKipFt: expect.closeTo(150, 9), leftTorsionKipIn: expect.closeTo(220, 9)});
    expect(even).toMatchObject({stemKip: 0, reactionRatio: 1, momentRatio: expect.closeTo(1, 12), torsionRatio: expect.closeTo(1, 12)});
    const none = beamUnderDeck({spanFt: 20, deckPlf: 0, deckEccentricityIn: 10, uniformPlf: 0, uniformEccentricityIn: 2}, [], 5);
    expect(none.diagrams).toMatchObject({leftKip: 0, leftTorsionKipIn: 0, greatestMomentKipFt: 0});
    expect([none.reactionRatio, none.momentRatio, none.torsionRatio]).toEqual([1, 1, 1]);
  });

  test("tends to the even load as stems multiply", () => {
    const gap = (memberWidthFt: number) => {
      const {diagrams, uniform} = of({memberWidthFt, stemSpacingFt: memberWidthFt * 0.4, firstStemFt: memberWidthFt * 0.3});
      return [0.1, 0.25, 0.5, 0.8].reduce((most, share) => {
        const {momentKipFt, torsionKipIn} = diagramsAt(diagrams, share * 30);
        return Math.max(most, Math.abs(momentKipFt - 4 * share * (1 - share) * uniform.momentKipFt) / uniform.momentKipFt,
          Math.abs(torsionKipIn - (1 - 2 * share) * uniform.torsionKipIn) / uniform.torsionKipIn);
      }, 0);
    };
    const gaps = [10, 1, 0.1].map(gap);
    expect(gaps[1]).toBeLessThan((gaps[0] as number) / 2);
    expect(gaps[2]).toBeLessThan(0.005);
  });

  test("gives ratios of 1 where nothing twists or loads the beam", () => {
    expect(of({deckPlf: 0, uniformPlf: 0})).toMatchObject({reactionRatio: 1, momentRatio: 1, torsionRatio: 1});
    refused(() => of({deckPlf: -1}), {path: "deckPlf"});
  });
});
