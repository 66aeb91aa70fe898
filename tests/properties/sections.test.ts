import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {concrete} from "../../lib/materials/concrete.js";
import {compositeSection} from "../../lib/sections/composite.js";
import {bands, integrate, type Ring} from "../../lib/sections/polygon.js";
import {doubleTee, type DoubleTeeDimensions} from "../../lib/sections/doubleTee.js";
import {fromMoments, sectionProperties} from "../../lib/sections/shape.js";
import {SI, toSi} from "../../lib/units.js";
import {hold, within} from "./arbitrary.js";

/** A star-shaped ring: corners at rising angles about a center, so that it never crosses itself. */
const anyRing: fc.Arbitrary<Ring> = fc.array(within(2, 20), {minLength: 3, maxLength: 12})
  .map((radii) => radii.map((radius, i) => [30 + radius * Math.cos((2 * Math.PI * i) / radii.length), 30 + radius * Math.sin((2 * Math.PI * i) / radii.length)] as const));
const moved = (ring: Ring, byIn: number): Ring => ring.map(([x, y]) => [x + byIn, y] as const);
const scaled = (ring: Ring, factor: number): Ring => ring.map(([x, y]) => [factor * x, factor * y] as const);
const relative = (value: number, expected: number) => Math.abs(value - expected) / Math.max(1e-12, Math.abs(expected));

const anyTee: fc.Arbitrary<DoubleTeeDimensions> = fc.record({
  widthIn: within(90, 180), depthIn: within(16, 40), flangeIn: within(2, 5), stemBottomIn: within(3, 8), stemTopIn: within(8, 10),
  stemSpacingIn: within(40, 50), chamferIn: fc.constantFrom(0, 1.5, 3),
});

describe("boundary integrals", () => {
  test("do not change as a section moves sideways", () => {
    hold(500, fc.property(anyRing, within(-500, 500), (ring, byIn) => {
      const here = integrate([ring]);
      const there = integrate([moved(ring, byIn)]);
      for (const key of ["areaIn2", "firstMomentIn3", "secondMomentIn4", "perimeterIn"] as const) expect(relative(there[key], here[key]), key).toBeLessThan(1e-9);
    }));
  });

  test("grow with the second, third, fourth and first power of size", () => {
    hold(500, fc.property(anyRing, within(0.1, 10), (ring, factor) => {
      const one = integrate([ring]);
      const other = integrate([scaled(ring, factor)]);
      expect(relative(other.areaIn2, factor ** 2 * one.areaIn2)).toBeLessThan(1e-9);
      expect(relative(other.firstMomentIn3, factor ** 3 * one.firstMomentIn3)).toBeLessThan(1e-9);
      expect(relative(other.secondMomentIn4, factor ** 4 * one.secondMomentIn4)).toBeLessThan(1e-9);
      expect(relative(other.perimeterIn, factor * one.perimeterIn)).toBeLessThan(1e-9);
    }));
  });

  test("change their sign with the direction of the ring", () => {
    hold(300, fc.property(anyRing, (ring) => {
      expect(relative(integrate([[...ring].reverse()]).areaIn2, -integrate([ring]).areaIn2)).toBeLessThan(1e-9);
    }));
  });

  test("agree with the bands that the section is cut into", () => {
    hold(300, fc.property(anyTee, (dimensions) => {
      const {rings} = doubleTee("any", dimensions);
      const {areaIn2, firstMomentIn3} = integrate(rings);
      let area = 0;
      let moment = 0;
      for (const {bottomIn, topIn, widthBottomIn, widthTopIn} of bands(rings)) {
        const height = topIn - bottomIn;
        area += (height * (widthBottomIn + widthTopIn)) / 2;
        moment += (height * (widthBottomIn * (2 * bottomIn + topIn) + widthTopIn * (bottomIn + 2 * topIn))) / 6;
      }
      expect(relative(area, areaIn2)).toBeLessThan(1e-9);
      expect(relative(moment, firstMomentIn3)).toBeLessThan(1e-9);
    }));
  });
});

describe("section properties", () => {
  test("keep the centroid inside and the second moment below that of all area at the faces", () => {
    hold(300, fc.property(anyTee, (dimensions) => {
      const {areaIn2, inertiaIn4, ybIn, ytIn, sbIn3, stIn3, depthIn} = sectionProperties(doubleTee("any", dimensions));
      expect(ybIn).toBeGreaterThan(0);
      expect(ytIn).toBeGreaterThan(0);
      expect(inertiaIn4).toBeLessThanOrEqual(areaIn2 * ybIn * ytIn);
      expect(relative(ybIn + ytIn, depthIn)).toBeLessThan(1e-12);
      expect(relative(sbIn3 * ybIn, stIn3 * ytIn)).toBeLessThan(1e-9);
    }));
  });
});

describe("a composite section", () => {
  const anyPrecast = fc.record({areaIn2: within(100, 1500), ybIn: within(4, 30), inertiaIn4: within(500, 90000), top: within(2, 10)})
    .map(({areaIn2, ybIn, inertiaIn4, top}) => fromMoments(areaIn2, ybIn, inertiaIn4, ybIn + top));
  const anyTopping = fc.record({thicknessIn: within(1, 6), widthIn: within(24, 180), strengthPsi: within(2500, 8000)});

  test("is the sum of its parts about the common centroid", () => {
    hold(500, fc.property(anyPrecast, anyTopping, within(3000, 12000), (precast, {thicknessIn, widthIn, strengthPsi}, memberPsi) => {
      const whole = compositeSection(precast, concrete("normalweight", memberPsi), {thicknessIn, widthIn, concrete: concrete("normalweight", strengthPsi)});
      const n = Math.sqrt(strengthPsi / memberPsi);
      const area = n * widthIn * thicknessIn;
      const height = precast.depthIn + thicknessIn / 2;
      expect(relative(whole.modularRatio, n)).toBeLessThan(1e-12);
      expect(relative(whole.areaIn2, precast.areaIn2 + area)).toBeLessThan(1e-12);
      expect(relative(whole.areaIn2 * whole.ybIn, precast.areaIn2 * precast.ybIn + area * height)).toBeLessThan(1e-12);
      // About the soffit: second moments add up without any distance between centroids.
      const aboutSoffit = (inertia: number, a: number, y: number) => inertia + a * y ** 2;
      const parts = aboutSoffit(precast.inertiaIn4, precast.areaIn2, precast.ybIn) + aboutSoffit((n * widthIn * thicknessIn ** 3) / 12, area, height);
      expect(relative(aboutSoffit(whole.inertiaIn4, whole.areaIn2, whole.ybIn), parts)).toBeLessThan(1e-10);
      expect(whole.inertiaIn4).toBeGreaterThan(precast.inertiaIn4);
    }));
  });
});

describe("units", () => {
  test("become SI in proportion, so that twice as much is twice as much", () => {
    hold(500, fc.property(fc.constantFrom(...Object.keys(SI)), within(1e-6, 1e6), (unit, value) => {
      expect(relative(toSi(2 * value, unit).value, 2 * toSi(value, unit).value)).toBeLessThan(1e-14);
      expect(relative(toSi(-value, unit).value, -toSi(value, unit).value)).toBeLessThan(1e-14);
    }));
  });
});
