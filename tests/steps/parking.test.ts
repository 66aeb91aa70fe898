import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {parkingHeightWorking, parkingModuleWorking, parkingStallsWorking, rampWorking} from "../../lib/steps/parking.js";
import type {Working} from "../../lib/step.js";
import {catalog, seed} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

/** The parking structure: two bays of 60 ft, columns 36 ft apart, cars on its three floors in rows along the edge at 90 degrees. */
const structure = (changes: Readonly<Record<string, unknown>> = {}) => evaluate(withValues(seed("parking-structure"), changes), catalog);
/** The steps by their symbols, each recomputed from its own expression. */
function worked(working: Working) {
  checkWorking(working);
  return {order: working.steps.map(({symbol}) => symbol).join(" "), of: (symbol: string) => working.steps.find((step) => step.symbol === symbol)};
}

describe("how cars park is worked out", () => {
  test("for a module: its rows with their aisle, and the walls beside it", () => {
    const walls = (changes: Readonly<Record<string, unknown>>) => {
      const {order, of} = worked(parkingModuleWorking(structure(changes)));
      expect(order).toBe("D M C");
      return of("C")?.values["k"]?.value;
    };
    // Stalls 18 ft deep and an aisle of 24 ft between them.
    expect(worked(parkingModuleWorking(structure())).of("M")?.result).toBe(2 * 216 + 288);
    // A wall stands beside the first of several modules, one at either side of a single one.
    expect([walls({}), walls({"bay.baysAcross": 3}), walls({"bay.baysAcross": 1}), walls({"parking.baysPerModule": 2})]).toEqual([1, 1, 2, 2]);
    expect(walls({"parking.rows": "across", "parking.baysPerModule": 2})).toBe(1);
    expect(walls({"parking.rows": "across", "parking.baysPerModule": 3, "bay.baysAlong": 3})).toBe(2);
  });

  test("for stalls: whole ones between two columns, and the floor that each takes", () => {
    const {order, of} = worked(parkingStallsWorking(structure()));
    expect(order).toBe("p b r A_s");
    // Four of 8 ft 6 in in 36 ft, less a column of 22 in: 2 in are left over.
    expect([of("p")?.result, of("b")?.values["B"]?.value, of("r")?.values["n"]?.value, of("r")?.result]).toEqual([102, 432, 4, 2]);
    // Rows across the edge lie along the span of 60 ft.
    expect(worked(parkingStallsWorking(structure({"parking.rows": "across", "parking.baysPerModule": 2}))).of("b")?.values["B"]?.value).toBe(720);
    // Rows in bays of 36 ft across, where no module has room, and bays that make no module, have no stalls to share the floor.
    expect(worked(parkingStallsWorking(structure({"parking.rows": "across"}))).order).toBe("p");
    expect(worked(parkingStallsWorking(structure({"parking.baysPerModule": 4}))).order).toBe("p b r");
    // At 60 degrees a stall takes more of its row.
    expect(worked(parkingStallsWorking(structure({"parking.angle": "60 one-way"}))).of("p")?.result).toBeCloseTo(102 / Math.sin(Math.PI / 3), 9);
  });

  test("for heights and ramps, where there are any", () => {
    const height = worked(parkingHeightWorking(structure()));
    expect([height.order, (height.of("h_u")?.result ?? NaN) - (height.of("h_c")?.result ?? NaN)]).toEqual(["h_u h_c", height.of("h_c")?.values["d"]?.value]);
    // A story of 11 ft at 12 %: 1,100 in, and a blend of 10 ft more.
    expect(worked(rampWorking(structure())).of("L_r")?.result).toBeCloseTo(1100 + 120, 9);
    expect(worked(rampWorking(structure())).order).toBe("R L_r");
    expect(rampWorking(structure({"parking.ramp": "none"}))).toEqual({title: "No ramp", steps: []});
  });

  test("not where none park, nor for what a level has not", () => {
    const library = evaluate(seed("branch-library"), catalog);
    for (const working of [parkingModuleWorking, parkingStallsWorking, parkingHeightWorking]) expect(working(library)).toEqual({title: "No parking", steps: []});
    expect(parkingModuleWorking(structure({"parking.baysPerModule": 4}))).toEqual({title: "No module between the bays that there are", steps: []});
    // On the only floor, which is the topmost, nothing hangs over the cars.
    expect(parkingHeightWorking(structure({"bay.floors": 1}))).toEqual({title: "No deck over the cars", steps: []});
  });
});
