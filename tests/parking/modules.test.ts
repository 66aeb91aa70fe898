import {describe, expect, test} from "vitest";
import {levelPlan} from "../../lib/parking/level.js";
import {lowestLevel} from "../../lib/parking/parking.js";
import {parkingOf, structure} from "./support.js";

describe("the modules of a level", () => {
  const plan = (changes: Readonly<Record<string, unknown>> = {}) => levelPlan(structure(changes));

  test("take so many bays each, and leave those over that make no other", () => {
    const bays = (baysAcross: number, baysPerModule: number) => {
      const {modules, baysLeft} = plan({"bay.baysAcross": baysAcross, "parking.baysPerModule": baysPerModule});
      return [modules.length, baysLeft];
    };
    expect([bays(2, 1), bays(2, 2), bays(3, 2), bays(1, 2), bays(4, 3)]).toEqual([[2, 0], [1, 0], [1, 1], [0, 1], [1, 1]]);
  });

  test("hold two rows where their aisle fits between, one where it fits beside one, and none where not even that", () => {
    const {modules: [two], geometry} = plan();
    const {setbackIn} = structure().parking;
    const rowIn = setbackIn + geometry.depthIn;
    expect(two?.rows).toHaveLength(2);
    expect(two?.aisle).toEqual({fromIn: (two?.fromIn as number) + rowIn, toIn: (two?.toIn as number) - rowIn});
    // 33 ft: a row of 18 ft leaves 15 ft for the aisle and more for none.
    const {modules: [one]} = plan({"bay.spanFt": 36, "parking.aisleIn": 200});
    expect(one?.rows.map(({out}) => out)).toEqual([1]);
    expect(one?.aisle).toEqual({fromIn: (one?.fromIn as number) + rowIn, toIn: one?.toIn});
    const {modules: [none]} = plan({"bay.spanFt": 20, "parking.aisleIn": 240});
    expect(none?.rows).toEqual([]);
    expect(none?.aisle).toEqual({fromIn: none?.fromIn, toIn: none?.toIn});
  });
});

describe("accessible stalls", () => {
  const special = (changes: Readonly<Record<string, unknown>> = {}) => {
    const design = structure(changes);
    return lowestLevel(design, parkingOf(design)).filter(({kind}) => kind === "accessible" || kind === "van");
  };

  test("stand at the line between two bays, where no ledge hangs over their heads, before they stand at a wall", () => {
    const found = special();
    expect(found.length).toBeGreaterThan(2);
    for (const {row} of found) expect(row.head).toBe("line");
    for (const {row} of special({"bay.baysAcross": 1})) expect(row.head).toBe("wall");
  });

  test("stand in no module that slopes, and in the first where none does", () => {
    expect(Math.min(...special({"parking.ramp": "beside"}).map(({module}) => module))).toBe(0);
    const sloping = special({"parking.ramp": "parked", "parking.rampRuns": 1});
    expect(sloping.length).toBeGreaterThan(0);
    expect(Math.min(...sloping.map(({module}) => module))).toBe(1);
  });
});
