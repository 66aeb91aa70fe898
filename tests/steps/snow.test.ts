import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {balancedSnowWorking, driftWorking, rainWorking, roofCombinationWorking, roofLiveWorking, snowDriftWorking, snowSpanWorking} from "../../lib/steps/snow.js";
import type {Working} from "../../lib/step.js";
import {catalog, seed} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

const STEP = {"snow.groundPsf": 30, "snow.higherFt": 12, "snow.higherLengthFt": 80, "snow.higherSide": "long", "snow.higherApartFt": 0, "walls.parapetIn": 0};
/** Roofs that take every branch of the workings, with the steps of the deepest drift and of the load on a member. */
const ROOFS: Readonly<Record<string, readonly [Readonly<Record<string, unknown>>, number, number]>> = {
  "no snow": [{"snow.groundPsf": 0, "snow.higherFt": 0, "walls.parapetIn": 0}, 0, 0],
  "light snow with rain in it": [{"snow.groundPsf": 15, "snow.higherFt": 0, "walls.parapetIn": 0, "roof.drainage": "camber"}, 0, 0],
  "as much as still counts as light": [{"snow.groundPsf": 20, "snow.higherFt": 0, "walls.parapetIn": 0, "roof.drainage": "camber"}, 0, 0],
  "parapets without snow": [{...STEP, "snow.groundPsf": 0, "snow.higherFt": 0, "walls.parapetIn": 42}, 0, 0],
  "a step": [STEP, 5, 5],
  "a step along a short side, where all of a member lies in it": [{...STEP, "snow.higherSide": "short"}, 5, 3],
  "beams that rise above the roof along its long sides": [{...STEP, "snow.higherFt": 0, "roof.given": "deck", "roof.upstandIn": 48, "bay.baysAcross": 2}, 6, 5],
  "a step whose drift is narrower than the one at the beam opposite": [{...STEP, "snow.higherFt": 4, "snow.higherLengthFt": 5, "roof.given": "deck", "roof.upstandIn": 48, "bay.baysAcross": 2}, 6, 5],
  "a step whose drift is wider and less deep than the one at the beam opposite": [{...STEP, "snow.higherFt": 3, "snow.higherLengthFt": 5, "roof.given": "deck", "roof.upstandIn": 60, "bay.baysAcross": 2}, 6, 5],
  "a gap, over which the drift in the lee is deeper and the one on its windward side reaches further": [{...STEP, "snow.higherFt": 3, "snow.higherLengthFt": 10, "snow.higherApartFt": 4, "bay.baysAcross": 2}, 5, 3],
  "a low step, which cuts the drift off": [{...STEP, "snow.higherFt": 3}, 5, 5],
  "wind from a long roof": [{...STEP, "snow.higherLengthFt": 20, "bay.baysAcross": 4}, 6, 5],
  "a short fetch": [{...STEP, "snow.higherLengthFt": 10, "snow.groundPsf": 100, "bay.baysAcross": 1}, 6, 5],
  "a drift longer than the roof lets it be": [{...STEP, "snow.groundPsf": 300, "snow.higherLengthFt": 900, "snow.higherFt": 60, "bay.baysAcross": 1, "bay.spanFt": 12}, 6, 3],
  "across a gap": [{...STEP, "snow.higherApartFt": 6}, 5, 5],
  "windward across a gap": [{...STEP, "snow.higherApartFt": 2, "snow.higherLengthFt": 1, "bay.baysAcross": 8}, 7, 5],
  "too far": [{...STEP, "snow.higherApartFt": 25}, 2, 0],
  "parapets": [{...STEP, "snow.higherFt": 0, "walls.parapetIn": 42}, 6, 3],
  "a parapet in the snow": [{...STEP, "snow.higherFt": 0, "walls.parapetIn": 12}, 2, 0],
  "a parapet little above it": [{...STEP, "snow.higherFt": 0, "walls.parapetIn": 18}, 2, 0],
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

describe("what is said beside a step of the snow", () => {
  const on = (changes: Readonly<Record<string, unknown>>) =>
    evaluate(withValues(seed("branch-library"), {"snow.terrain": "B", "snow.exposure": "partly", "snow.risk": "III", "snow.use": "ordinary", "roof.given": "loads", ...STEP, ...changes}), catalog);
  const drift = (changes: Readonly<Record<string, unknown>>) => snowDriftWorking(on(changes));
  const note = ({steps}: Working, symbol: string) => steps.find((step) => step.symbol === symbol)?.note;

  test("a drift that its wall cuts off spreads out; one that has room is four times as wide as high", () => {
    expect(note(drift({"snow.higherFt": 3}), "w")).toMatch(/spreads out/);
    expect(note(drift({}), "w")).toBeUndefined();
    expect(drift({}).steps.find(({symbol}) => symbol === "w")?.expression).toBe("4 * h_w");
  });

  test("a fetch below 20 ft brings no more than half of its own snow, and says so", () => {
    const said = (higherLengthFt: number) => {
      const {roofLoads} = on({"snow.higherLengthFt": higherLengthFt});
      const lee = roofLoads.drifts.find(({drift: one}) => one.kind === "leeward");
      return lee && note(driftWorking(roofLoads, lee.drift), "h_d");
    };
    expect(said(19)).toMatch(/^Below 20 ft of fetch/);
    expect(said(20)).toBeUndefined();
  });

  test("a drift across a gap leaves what lies in the gap, one without a gap is all on the roof", () => {
    expect(drift({"snow.higherApartFt": 2, "snow.higherLengthFt": 1, "bay.baysAcross": 8}).steps.map(({symbol}) => symbol)).toContain("w_r");
    const whole = drift({});
    expect(whole.steps.map(({symbol}) => symbol)).not.toContain("w_r");
    expect(Object.keys(whole.steps.at(-1)?.values ?? {})).toEqual(["gamma", "h_x"]);
  });

  test.each<[string, Readonly<Record<string, unknown>>]>([
    ["stands too far away", {"snow.higherApartFt": 25}], ["reaches the top", {"snow.higherFt": 0, "walls.parapetIn": 12}], ["less than a fifth", {"snow.higherFt": 0, "walls.parapetIn": 18}],
  ])("a drift that does not count says why: %s", (words, changes) => {
    const working = drift(changes);
    expect(working.title).toMatch(/does not count$/);
    expect(note(working, "h_c")).toContain(words);
    expect(note(working, "h_d") ?? "").not.toContain(words);
  });

  test("rain in light snow is told with the slope that decides it", () => {
    const light = (changes: Readonly<Record<string, unknown>>) => note(balancedSnowWorking(on({"snow.groundPsf": 15, ...changes})), "theta_W");
    expect(light({"roof.drainage": "camber"})).toContain("5 psf of rain is added");
    expect(light({"roof.drainage": "bearing", "roof.slopeInPerFt": 2})).toContain("no rain is added");
    expect(note(balancedSnowWorking(on({"snow.groundPsf": 25})), "theta_W")).toBeUndefined();
  });

  test("a drift is called after what it leans on, and its height after the roof that the wind sweeps", () => {
    const lee = drift({});
    expect([lee.title, lee.steps[0]?.values["l_u"]?.label]).toEqual(["The drift in the lee of the higher part", "length of the higher roof"]);
    expect([lee.steps[1]?.values["h"]?.label, lee.steps[2]?.values["h_w"]?.label]).toEqual(["height of the higher part above the roof", "height of the drift by itself"]);
    const windward = drift({"snow.higherApartFt": 2, "snow.higherLengthFt": 1, "bay.baysAcross": 8});
    expect([windward.title, windward.steps[0]?.values["l_u"]?.label]).toEqual(["The drift that the wind builds against the higher part", "length of this roof upwind"]);
    const parapet = drift({"snow.higherFt": 0, "walls.parapetIn": 42});
    expect([parapet.title, parapet.steps[0]?.values["l_u"]?.label]).toEqual(["The drift at the parapet", "length of this roof upwind"]);
    expect(parapet.steps[1]?.values["h"]?.label).toBe("height of the parapet above the roof");
    const three = (working: Working) => working.steps.find(({symbol}) => symbol === "h_w");
    for (const [working, clause] of [[windward, "7.7.1"], [parapet, "7.8"]] as const) {
      expect([three(working)?.expression, three(working)?.source]).toEqual(["0.75 * h_d", `ASCE 7-16 ${clause}`]);
      expect(working.steps.find(({symbol}) => symbol === "h_x")?.values["h_w"]?.label).toMatch(/^three quarters/);
    }
    // No snow, no drift, but still its name.
    expect(drift({"snow.groundPsf": 0, "snow.higherFt": 0, "walls.parapetIn": 42})).toEqual({title: "The drift at the parapet", steps: []});
  });

  test("a combination names only the loads that it counts, with one roof load", () => {
    for (const element of on({}).roofLoads.elements) {
      for (const {expression, values} of roofCombinationWorking(element).steps) {
        expect(Object.keys(values).filter((name) => ["L_r", "S", "R"].includes(name)).length).toBeLessThanOrEqual(1);
        for (const name of Object.keys(values)) expect(expression.split(/ [+*] /)).toContain(name);
        expect(expression).not.toMatch(/(^|\+ )0 \*|(^|\s)1 \*/);
      }
    }
  });
});
