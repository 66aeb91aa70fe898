import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {balancedSnowWorking, driftWorking, rainWorking, roofCombinationWorking, roofLiveWorking, snowDriftWorking, snowSpanWorking} from "../../lib/steps/snow.js";
import {catalog, seed} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

const STEP = {"snow.groundPsf": 30, "snow.higherFt": 12, "snow.higherLengthFt": 80, "snow.higherSide": "long", "snow.higherApartFt": 0, "walls.parapetIn": 0};
/** Roofs that take every branch of the workings, with the steps of the deepest drift and of the load on a member. */
const ROOFS: Readonly<Record<string, readonly [Readonly<Record<string, unknown>>, number, number]>> = {
  "no snow": [{"snow.groundPsf": 0, "snow.higherFt": 0, "walls.parapetIn": 0}, 0, 0],
  "light snow with rain in it": [{"snow.groundPsf": 15, "snow.higherFt": 0, "walls.parapetIn": 0, "roof.drainage": "camber"}, 0, 0],
  "a step": [STEP, 5, 5],
  "a low step, which cuts the drift off": [{...STEP, "snow.higherFt": 3}, 5, 5],
  "wind from a long roof": [{...STEP, "snow.higherLengthFt": 20, "bay.baysAcross": 4}, 6, 5],
  "a short fetch": [{...STEP, "snow.higherLengthFt": 10, "snow.groundPsf": 100, "bay.baysAcross": 1}, 6, 5],
  "a drift longer than the roof lets it be": [{...STEP, "snow.groundPsf": 300, "snow.higherLengthFt": 900, "snow.higherFt": 60, "bay.baysAcross": 1, "bay.spanFt": 12}, 6, 3],
  "across a gap": [{...STEP, "snow.higherApartFt": 6}, 5, 5],
  "windward across a gap": [{...STEP, "snow.higherApartFt": 2, "snow.higherLengthFt": 1, "bay.baysAcross": 8}, 7, 5],
  "too far": [{...STEP, "snow.higherApartFt": 25}, 2, 0],
  "parapets": [{...STEP, "snow.higherFt": 0, "walls.parapetIn": 42}, 6, 3],
  "a parapet in the snow": [{...STEP, "snow.higherFt": 0, "walls.parapetIn": 12}, 2, 0],
  "a parapet little above it": [{...STEP, "snow.higherFt": 0, "walls.parapetIn": 15}, 2, 0],
  "a roof that is used": [{...STEP, "snow.use": "occupied", "snow.occupancy": "office"}, 5, 5],
};

describe.each(Object.entries(ROOFS))("%s", (_, [changes, ofDrift, ofSpan]) => {
  const result = () => evaluate(withValues(seed("branch-library"), {"snow.terrain": "B", "snow.exposure": "partly", "snow.risk": "III", "snow.use": "ordinary", "roof.given": "loads", ...changes}), catalog);

  test("is worked out as the code does", () => {
    const evaluation = result();
    const {snow, drifts, elements} = evaluation.roofLoads;
    const light = snow.site.groundPsf > 0 && snow.site.groundPsf <= 20;
    expect(checkWorking(balancedSnowWorking(evaluation))).toBe(light ? 5 : 4);
    expect([checkWorking(snowDriftWorking(evaluation)), checkWorking(snowSpanWorking(evaluation))]).toEqual([ofDrift, ofSpan]);
    for (const {drift} of drifts) checkWorking(driftWorking(evaluation.roofLoads, drift));
    expect(checkWorking(rainWorking(evaluation))).toBe(1);
    for (const element of elements) {
      expect(checkWorking(roofLiveWorking(evaluation, element))).toBe(element.roofLive ? 3 : 1);
      expect(checkWorking(roofCombinationWorking(element))).toBe(2);
    }
  });
});
