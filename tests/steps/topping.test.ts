import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {camberWorking} from "../../lib/steps/camber.js";
import {extraWeightWorking, spreadWorking, toppingWorking} from "../../lib/steps/topping.js";
import {SCATTER} from "../../lib/topping/scatter.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";
import {NO_SCATTER} from "../support/spread.js";

test("over an arched tee is thickest at the ends and thins as a parabola does: at the quarter points a quarter is left of what the ends have over midspan", () => {
  const result = evaluate(withValues(seed("branch-library"), {"topping.followShare": 0}), catalog);
  const values = toppingWorking(result).steps[0]?.values;
  const [ends, quarter, middle] = ["t_e", "t_q", "t_m"].map((name) => values?.[name]?.value ?? NaN) as [number, number, number];
  expect(ends).toBeGreaterThan(middle + 0.3);
  expect((quarter - middle) / (ends - middle)).toBeGreaterThan(0.2);
  expect((quarter - middle) / (ends - middle)).toBeLessThan(0.3);
});

describe.each(seeds)("the topping of $id", ({design}) => {
  test.each([
    ["as it is", {}], ["set young, following half of the camber", {"topping.ageDays": 10, "topping.followShare": 0.5}],
    ["set old", {"topping.ageDays": 300}], ["on tees that sag", {"deck.member": "10DT24", "deck.pattern": "48-S", "deck.toppingIn": 3, "bay.spanFt": 60}],
    ["without any", {"deck.member": "12DT34", "deck.pattern": "128-S", "deck.toppingIn": 0}],
  ])("%s is worked out as the code does", (_, changes) => {
    const result = evaluate(withValues(design, changes), catalog);
    const topped = result.topping !== undefined;
    expect(checkWorking(toppingWorking(result))).toBe(topped ? 3 : 0);
    expect(checkWorking(extraWeightWorking(result))).toBe(topped ? 5 : 0);
    expect(checkWorking(camberWorking(result))).toBeGreaterThan(5);
    expect(checkWorking(spreadWorking(result, SCATTER))).toBe(8);
    expect(checkWorking(spreadWorking(result, {...SCATTER, weight: 0, likeness: 0.5}))).toBe(7);
    expect(spreadWorking(result, NO_SCATTER).steps).toEqual([]);
  });
});
