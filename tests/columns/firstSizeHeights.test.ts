import {expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";

test("a size near its buckling load is one that does not carry: the next one is tried, and no story height loses a column", () => {
  // At 29.25 ft one trial of the parking structure's interior column stands a hair below 0.75 Pc: its magnifier is in
  // the ten thousands.
  const parking = seed("parking-structure");
  const sidesIn: number[] = [];
  for (let heightFt = 28.5; heightFt <= 30; heightFt += 0.25) {
    const {columns, unsized} = columnsOf(evaluate(withValues(parking, {"story.floorToFloorFt": heightFt}), catalog), catalog);
    expect(unsized, `${heightFt} ft`).toEqual([]);
    const inside = columns.find(({position}) => position === "interior column");
    expect(inside?.column.suffices, `${heightFt} ft`).toBe(true);
    sidesIn.push(inside?.column.sideIn ?? NaN);
  }
  expect(sidesIn).toEqual([...sidesIn].sort((a, b) => a - b));
});
