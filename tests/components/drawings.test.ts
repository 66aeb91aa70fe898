import fc from "fast-check";
import {describe, expect, it} from "vitest";
import {padPlace} from "../../src/components/drawings/beamParts.js";
import {highlighted} from "../../src/components/drawings/bayPlan.js";
import {roundExaggeration} from "../../src/components/drawings/elevation.js";
import {scaleBarLength} from "../../src/components/drawings/marks.js";
import {drawingsAtOneScale} from "../../src/components/drawings/oneScale.js";
import {placeTexts, spread} from "../../src/components/drawings/placement.js";
import {sectionDimensions} from "../../src/components/drawings/sectionDimensions.js";
import {betweenFrames, fitView, frameText, readFrame, type Frame} from "../../src/components/drawings/view.js";
import {doubleTee} from "../../lib/sections/doubleTee.js";
import {lBeam} from "../../lib/sections/prismatic.js";

describe("the view from world to paper", () => {
  const world = {x0: 0, y0: 0, x1: 120, y1: 26};
  const margins = {top: 10, right: 60, bottom: 40, left: 50};

  it("has one scale for both directions and turns y over", () => {
    const {view, heightPx} = fitView({world, widthPx: 710, margins, mostHeightPx: 900});
    expect(view.scale).toBeCloseTo(5, 12);
    expect(view.scaleY).toBe(view.scale);
    expect(view.at(0, 26)).toEqual([50, 10]);
    expect(view.at(120, 0)).toEqual([650, 140]);
    expect(heightPx).toBe(180);
  });

  it("keeps to the height it is given and stands in the middle then", () => {
    const {view, heightPx} = fitView({world, widthPx: 710, margins, mostHeightPx: 102});
    expect(view.scale).toBeCloseTo(2, 12);
    expect(heightPx).toBe(102);
    expect(view.x(0) - 50).toBeCloseTo(710 - 60 - view.x(120), 9);
  });

  it("keeps to a scale that it may not pass", () => {
    const {view, heightPx} = fitView({world, widthPx: 710, margins, mostHeightPx: 900, mostScale: 3});
    expect([view.scale, heightPx]).toEqual([3, 10 + 3 * 26 + 40]);
    expect(fitView({world, widthPx: 710, margins, mostHeightPx: 900, mostScale: 8}).view.scale).toBeCloseTo(5, 12);
  });

  it("notes where it stands, so that what one drawing shows can be laid over another of another size", () => {
    const views = [fitView({world, widthPx: 710, margins, mostHeightPx: 900}), fitView({world: {...world, x1: 150}, widthPx: 390, margins, mostHeightPx: 300, heightFactor: 2})].map(({view}) => view);
    const [from, to] = views.map((view) => readFrame(frameText(view))) as [Frame, Frame];
    const [a, b, c, d, e, f] = betweenFrames(from, to);
    fc.assert(fc.property(fc.double({min: -50, max: 200, noNaN: true}), fc.double({min: -50, max: 200, noNaN: true}), (x, y) => {
      const [then, now] = views.map((view) => view.at(x, y)) as [readonly [number, number], readonly [number, number]];
      // A frame is written to a ten-thousandth of a pixel for one unit.
      expect(a * then[0] + c * then[1] + e).toBeCloseTo(now[0], 1);
      expect(b * then[0] + d * then[1] + f).toBeCloseTo(now[1], 1);
    }));
    expect(readFrame(undefined)).toBeUndefined();
  });

  it("draws heights larger by the factor alone", () => {
    const {view} = fitView({world, widthPx: 710, margins, mostHeightPx: 900, heightFactor: 3});
    expect(view.scaleY / view.scale).toBeCloseTo(3, 12);
  });
});

describe("drawings side by side", () => {
  /** A thing whose drawing fits its paper at a scale, and how often it was drawn. */
  const thing = (fits: number) => {
    const of = {};
    const drawn: number[] = [];
    const draw = (most = Infinity) => {
      drawn.push(Math.min(fits, most));
      return {dataset: {pxPerIn: String(Math.min(fits, most))}} as unknown as SVGSVGElement;
    };
    return {of, paper: "wide", draw, drawn};
  };

  it("have the largest scale at which all of them fit, and are drawn again only where it has changed", () => {
    const atOneScale = drawingsAtOneScale();
    const [small, middle, large] = [thing(4), thing(3), thing(1.5)];
    const scales = (svgs: readonly SVGSVGElement[]) => svgs.map((svg) => svg.dataset["pxPerIn"]);
    expect(scales(atOneScale([small, middle]))).toEqual(["3", "3"]);
    const before = atOneScale([small, middle]);
    expect([small.drawn, middle.drawn]).toEqual([[4, 3], [3]]);
    expect(atOneScale([middle, small])).toEqual([before[1], before[0]]);
    expect(scales(atOneScale([small, middle, large]))).toEqual(["1.5", "1.5", "1.5"]);
    // Without the large one they grow again, as far as they did at first.
    expect(scales(atOneScale([small, middle]))).toEqual(["3", "3"]);
    expect(scales(atOneScale([small]))).toEqual(["4"]);
    expect(atOneScale([])).toEqual([]);
  });

  it("are drawn anew on other paper", () => {
    const atOneScale = drawingsAtOneScale();
    const one = thing(2);
    atOneScale([one]);
    atOneScale([{...one, paper: "narrow"}]);
    expect(one.drawn).toEqual([2, 2]);
  });
});

describe("texts in a row", () => {
  it("stay where they want to be if they have room", () => {
    expect(spread([20, 60, 100], [10, 10, 10], 0, 120)).toEqual([20, 60, 100]);
  });

  it("share the shift when they would touch", () => {
    expect(spread([50, 52], [10, 10], 0, 120, 4)).toEqual([44, 58]);
  });

  it("never overlap and keep their order and bounds when they fit", () => {
    fc.assert(fc.property(
      fc.array(fc.tuple(fc.integer({min: 0, max: 4000}).map((tenths) => tenths / 10), fc.double({min: 5, max: 40, noNaN: true})), {minLength: 1, maxLength: 8}),
      (things) => {
        const sorted = [...things].sort((a, b) => a[0] - b[0]);
        const sizes = sorted.map((thing) => thing[1]);
        const places = spread(sorted.map((thing) => thing[0]), sizes, 0, 400, 4);
        places.forEach((place, i) => {
          expect(place - (sizes[i] as number) / 2).toBeGreaterThanOrEqual(-1e-6);
          expect(place + (sizes[i] as number) / 2).toBeLessThanOrEqual(400 + 1e-6);
          if (i > 0) {
            const apart = place - (places[i - 1] as number);
            expect(apart).toBeGreaterThanOrEqual(((sizes[i] as number) + (sizes[i - 1] as number)) / 2 + 4 - 1e-6);
          }
        });
      },
    ));
  });
});

describe("texts of a dimension string", () => {
  it("stand over the middle of a gap that holds them", () => {
    expect(placeTexts([{from: 0, to: 100, size: 30}, {from: 100, to: 200, size: 30}], 0, 300))
      .toEqual([{center: 50, level: 0, led: false}, {center: 150, level: 0, led: false}]);
  });

  it("are led to a narrow gap from outside it", () => {
    const [narrow, wide] = placeTexts([{from: 100, to: 104, size: 30}, {from: 104, to: 200, size: 30}], 0, 300);
    expect(narrow).toMatchObject({center: 102, led: false});
    expect(wide?.center).toBe(152);
    const two = placeTexts([{from: 100, to: 104, size: 30}, {from: 104, to: 108, size: 30}], 0, 300);
    expect(two.every((one) => one.led)).toBe(true);
  });

  it("never overlap on one row, whichever way the string runs", () => {
    fc.assert(fc.property(
      fc.array(fc.tuple(fc.double({min: 1, max: 120, noNaN: true}), fc.double({min: 10, max: 50, noNaN: true})), {minLength: 1, maxLength: 6}),
      fc.boolean(),
      (cells, falling) => {
        let at = 100;
        const gaps = cells.map(([length, size]) => ({from: at, to: (at += length), size}));
        const turned = falling ? gaps.map(({from, to, size}) => ({from: 1000 - from, to: 1000 - to, size})) : gaps;
        const places = placeTexts(turned, 0, 1000);
        for (let i = 0; i < places.length; i++) {
          for (let j = 0; j < i; j++) {
            const [a, b] = [places[i], places[j]];
            if (!a || !b || a.level !== b.level) continue;
            expect(Math.abs(a.center - b.center)).toBeGreaterThanOrEqual(((cells[i]?.[1] ?? 0) + (cells[j]?.[1] ?? 0)) / 2 - 1e-6);
          }
        }
      },
    ));
  });
});

describe("dimension strings of sections", () => {
  const tee = doubleTee("10DT24", {widthIn: 120, depthIn: 24, flangeIn: 2, stemBottomIn: 3.75, stemTopIn: 5.75, stemSpacingIn: 60, chamferIn: 0});
  const ledge = lBeam("20LB28", {webWidthIn: 12, depthIn: 28, ledgeProjectionIn: 8, ledgeDepthIn: 12});

  it("run over the whole depth and width", () => {
    for (const [shape, topping] of [[tee, 2], [ledge, 0]] as const) {
      const strings = sectionDimensions(shape, topping);
      expect(strings.right[0]?.at.at(-1)).toBe(shape.depthIn + topping);
      expect(strings.below.at(-1)?.at.at(-1)).toBe(shape.widthIn);
    }
  });

  it("have one name less than ticks and rise", () => {
    const {left, right, above, below} = sectionDimensions(tee, 2);
    for (const {at, edge, names} of [...left, ...right, ...above, ...below]) {
      expect(names.length).toBe(at.length - 1);
      expect(edge.length).toBe(at.length);
      expect([...at].sort((a, b) => a - b)).toEqual(at);
    }
  });
});

describe("pieces of the drawings", () => {
  it("takes the largest round factor that fits", () => {
    expect(roundExaggeration(1.5, 84)).toBe(50);
    expect(roundExaggeration(200, 84)).toBe(1);
  });

  it("takes the longest round scale bar that fits", () => {
    expect(scaleBarLength(1, 130)).toBe(120);
    expect(scaleBarLength(100, 130)).toBe(3);
  });

  it("lays the pad in the middle of the overlap and never beyond it", () => {
    const seat = {webWidthIn: 12, ledgeProjectionIn: 8, jointGapIn: 1, bearingLengthIn: 4} as Parameters<typeof padPlace>[0];
    expect(padPlace(seat)).toEqual({fromIn: 14.5, toIn: 18.5});
    expect(padPlace({...seat, bearingLengthIn: 12})).toEqual({fromIn: 13, toIn: 20});
  });

  it("finds the element that a tributary area belongs to", () => {
    const plan = {spanFt: 60, beamSpanFt: 30, baysAlong: 5, baysAcross: 2, columnSideIn: 18};
    const girder = highlighted({...plan, highlight: "interior girder"}, {xFt: 60, yFt: 30, widthFt: 30, heightFt: 60});
    expect([girder.xFt, girder.yFt + girder.heightFt / 2, girder.widthFt]).toEqual([60, 60, 30]);
    const edge = highlighted({...plan, highlight: "edge beam"}, {xFt: 60, yFt: 90, widthFt: 30, heightFt: 30});
    expect(edge.yFt + edge.heightFt / 2).toBe(120);
    const corner = highlighted({...plan, highlight: "corner column"}, {xFt: 135, yFt: 0, widthFt: 15, heightFt: 30});
    expect([corner.xFt + corner.widthFt / 2, corner.yFt + corner.heightFt / 2]).toEqual([150, 0]);
    expect([corner.widthFt, corner.heightFt], "as wide as the columns").toEqual([1.5, 1.5]);
    const end = highlighted({...plan, highlight: "girder end column"}, {xFt: 0, yFt: 30, widthFt: 15, heightFt: 60});
    expect([end.xFt + end.widthFt / 2, end.yFt + end.heightFt / 2]).toEqual([0, 60]);
  });
});
