import {describe, expect, test} from "vitest";
import {externalComponent, internalComponent, splitFluxC, surfaces} from "../../lib/daylight/reflected.js";
import {skyComponent} from "../../lib/daylight/skyComponent.js";
import {ROOM, WINDOW} from "./room.js";
import {overcastOnWall} from "../support/overcastOnWall.js";

const DESK = {distanceIn: 100, heightIn: 30, offsetIn: 0};

describe("externalComponent", () => {
  test("is a fifth of the sky that is hidden", () => {
    const hidden = {...WINDOW, obstruction: {angleDeg: 25}};
    const lost = skyComponent(WINDOW, DESK) - skyComponent(hidden, DESK);
    expect(lost).toBeGreaterThan(0);
    expect(externalComponent(hidden, DESK)).toBeCloseTo(0.2 * lost, 6);
    expect(externalComponent(WINDOW, DESK)).toBe(0);
  });
});

describe("splitFluxC", () => {
  test("has the printed values and runs straight between them", () => {
    expect([0, 10, 20, 30, 40, 50, 60, 70, 80].map(splitFluxC)).toEqual([39, 35, 31, 25, 20, 14, 10, 7, 5]);
    expect(splitFluxC(45)).toBe(17);
    expect(splitFluxC(90)).toBe(5);
  });

  test("keeps close to our own integral with an obstruction at a tenth of the sky it hides", () => {
    for (let angle = 0; angle <= 80; angle += 10) {
      const seen = overcastOnWall(angle);
      expect(Math.abs(splitFluxC(angle) - 100 * (seen + 0.1 * (overcastOnWall(0) - seen))), `${angle} degrees`).toBeLessThan(1.3);
    }
  });
});

describe("internalComponent", () => {
  test("comes out as by hand", () => {
    // 30 by 24 by 10.5 ft: floor 720, walls 1,134, all surfaces 2,574 ft2. Opening 20 x 7 = 140 ft2.
    // R = (720 x 0.9 + 994 x 0.5 + 140 x 0.1)/2,574 = 1,159/2,574 = 0.45027.
    const {areaFt2, meanShare} = surfaces(ROOM);
    expect(areaFt2).toBeCloseTo(2574, 9);
    expect(meanShare).toBeCloseTo(1159 / 2574, 12);
    // Middle of the glass 78 in = 6.5 ft; three walls 84 ft: 546 ft2 below, 336 above.
    // Rfw = (144 + 273)/1,266 = 0.32938; Rcw = (504 + 168)/1,056 = 0.63636.
    // Through 0.75 x 0.9 x 0.85 x 0.87848 x 140 = 70.565; (39 x 0.32938 + 5 x 0.63636)/100 = 0.160278.
    // 70.565 x 0.160278/(2,574 x 0.54973) = 0.0079930.
    expect(internalComponent(ROOM)).toBeCloseTo(0.007993, 6);
  });

  test("adds up over two opposite windows, whose glass throws back less than the wall did", () => {
    const both = internalComponent({...ROOM, opposite: WINDOW});
    expect(both).toBeGreaterThan(1.8 * internalComponent(ROOM));
    expect(both).toBeLessThan(2 * internalComponent(ROOM));
  });

  test("counts an endless window for the room's own width alone", () => {
    const full = internalComponent({...ROOM, window: {...WINDOW, widthFt: 24}});
    expect(internalComponent({...ROOM, window: {...WINDOW, widthFt: "endless"}})).toBeCloseTo(full, 12);
  });
});
