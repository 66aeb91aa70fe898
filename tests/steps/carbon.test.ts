import {evaluate as evaluateExpression} from "mathjs";
import {describe, expect, test} from "vitest";
import {deckMeasures} from "../../lib/deck/measures.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {withOwnFactors} from "../../lib/materials/carbon.js";
import {carbonWorking} from "../../lib/steps/carbon.js";
import {catalog, seeds} from "../support/designs.js";

describe.each(seeds)("the carbon of $id", ({design}) => {
  test.each([
    ["as it is", {}], ["with topping", {"deck.member": "10DT24", "deck.pattern": "108-S", "deck.toppingIn": 3, "deck.toppingStrengthPsi": 4500}],
    ["without topping", {"deck.member": "12DT34", "deck.pattern": "128-S", "deck.toppingIn": 0}],
    ["past the table", {"deck.strengthPsi": 11000, "deck.concrete": "sand-lightweight"}],
  ])("%s is worked out as the code does", (_, changes) => {
    const {member} = evaluate(withValues(design, changes), catalog);
    for (const factors of [catalog.carbonFactors, withOwnFactors(catalog.carbonFactors, {"strand": 1.1, "plant-nw-5000": 300})]) {
      const {steps} = carbonWorking(member, factors);
      expect(steps).toHaveLength(member.topping ? 3 : 2);
      for (const step of steps) {
        const scope = Object.fromEntries(Object.entries(step.values).map(([name, {value}]) => [name, value]));
        expect((evaluateExpression(step.expression, scope) as number) / step.result, step.symbol).toBeCloseTo(1, 10);
      }
      expect(steps.at(-1)?.result).toBe(deckMeasures(member, factors).carbonKgPerFt2);
    }
  });
});
