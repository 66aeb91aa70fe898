import {describe, expect, test} from "vitest";
import {changedRoom} from "../../lib/daylight/curves.js";
import {hangingGirders} from "../../lib/daylight/designDaylight.js";
import {checkedWindow} from "../../lib/daylight/input.js";
import {skyComponent} from "../../lib/daylight/skyComponent.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {WORKINGS} from "../../lib/steps/workings.js";
import {catalog, seed} from "../support/designs.js";
import {checkWorking} from "../steps/recomputed.js";
import {refused} from "../support/errors.js";
import {ROOM, WINDOW} from "./room.js";

const place = (distanceIn: number) => ({distanceIn, heightIn: 30, offsetIn: 0});
/** The library with a girder wholly below its deck: 145.75 in under its tees, 36 less under the girder. */
const LOW = withValues(seed("branch-library"), {"girder.kind": "rectangle", "girder.depthIn": 36});

describe("a beam that hangs in the room", () => {
  const beams = [{awayIn: 120, footIn: 80}];

  test("takes from a desk behind it what a lower head would", () => {
    // From 240 in away: 50 in of rise over 120. A head of the same slope over 240 + 12 in stands 105 in above the desk: above
    // its own 90. From 300: 50/180 x 312 = 86.67 in; from 400: 50/280 x 412 = 73.57 in.
    for (const [distanceIn, riseIn] of [[300, 86.6667], [400, 73.5714]] as const) {
      expect(skyComponent({...WINDOW, beams}, place(distanceIn))).toBeCloseTo(skyComponent({...WINDOW, headIn: 30 + riseIn}, place(distanceIn)), 8);
      expect(skyComponent({...WINDOW, beams}, place(distanceIn))).toBeLessThan(skyComponent(WINDOW, place(distanceIn)));
    }
    expect(skyComponent({...WINDOW, beams}, place(240))).toBe(skyComponent(WINDOW, place(240)));
  });

  test("takes nothing before it, and nothing where it hangs no lower than the head", () => {
    for (const distanceIn of [60, 120]) expect(skyComponent({...WINDOW, beams}, place(distanceIn))).toBe(skyComponent(WINDOW, place(distanceIn)));
    expect(skyComponent({...WINDOW, beams: [{awayIn: 120, footIn: 120}]}, place(400))).toBe(skyComponent(WINDOW, place(400)));
  });

  test("moves with the room that is changed", () => {
    const room = {...ROOM, window: {...WINDOW, beams}, opposite: {...WINDOW, beams}};
    expect(changedRoom(room, "depth", 60)).toMatchObject({depthFt: 60, window: {beams: [{awayIn: 240, footIn: 80}]}, opposite: {beams: [{awayIn: 240}]}});
    expect(changedRoom(room, "head", 132)?.window.beams).toEqual([{awayIn: 120, footIn: 92}]);
    expect(changedRoom(room, "sill", 30)?.window.beams).toEqual(beams);
  });

  test("is refused where it cannot be", () => {
    refused(() => checkedWindow({...WINDOW, beams: [{awayIn: -1, footIn: 80}]}, ROOM), {path: "beams.0.awayIn"});
    refused(() => checkedWindow({...WINDOW, beams: [{awayIn: 1, footIn: -1}]}, ROOM), {path: "beams.0.footIn"});
  });
});

describe("the girders of a design", () => {
  test("stand on the lines between bays, where light comes from both sides and their foot is lower than the head", () => {
    const {story, girder, daylight} = evaluate(LOW, catalog);
    // 40 ft less half of the 16 in girder.
    expect(hangingGirders(LOW, story, girder)).toEqual([{awayIn: 472, footIn: 109.75}]);
    expect(daylight?.input.window.beams).toEqual(daylight?.input.opposite?.beams);
    const four = withValues(LOW, {"bay.baysAcross": 4});
    expect(hangingGirders(four, story, girder).map(({awayIn}) => awayIn)).toEqual([472, 952, 1432]);
    expect(hangingGirders(withValues(LOW, {"daylight.sides": "one"}), story, girder)).toEqual([]);
    expect(hangingGirders(LOW, story, undefined)).toEqual([]);
    // The foot of an inverted tee hangs no lower than the ledge at the window.
    expect(evaluate(seed("branch-library"), catalog).daylight?.input.window.beams).toBeUndefined();
  });

  test("take light from the far window's bay and leave the floor its symmetry", () => {
    const least = (depthIn: number) => evaluate(withValues(LOW, {"girder.depthIn": depthIn, "daylight.obstructionDeg": 5}), catalog).daylight?.result;
    const [high, low] = [least(36), least(72)];
    expect(low?.points[0]?.factorPercent).toBeLessThan(high?.points[0]?.factorPercent ?? 0);
    expect(low?.points[5]?.skyPercent).toBeCloseTo(low?.points[34]?.skyPercent ?? 0, 9);
    // Under a skyline of 5 degrees the sky below a foot at 73.75 in ends at (472 + 43.75 / tan 5)/12 = 81.0 ft, that of the head farther out.
    expect(low?.noSkyFt).toBeCloseTo((472 + 43.75 / Math.tan(Math.PI / 36)) / 12, 9);
    expect(high?.noSkyFt).toBeGreaterThan(90);
  });

  test("have their no-sky line worked out", () => {
    // Behind the skyline; behind the sill, with the foot at 31 in and the sill at 31.75; and with a foot lower than the desk.
    for (const [expression, obstructionDeg, floorToFloorFt] of [
      ["(a + (g - h_w) / tan(theta_s * pi / 180)) / 12", 5, 15], ["(a + (g - h_w) * a / (h_s - g)) / 12", 0, 11.4375], ["a / 12", 5, 11.25],
    ] as const) {
      const working = WORKINGS.noSky(evaluate(withValues(LOW, {"girder.depthIn": 72, "daylight.obstructionDeg": obstructionDeg, "story.floorToFloorFt": floorToFloorFt}), catalog));
      expect(working.steps[0]?.expression).toBe(expression);
      expect(checkWorking(working)).toBe(1);
    }
  });
});
