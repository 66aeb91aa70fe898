import {describe, expect, test} from "vitest";
import {itemsOf} from "../../src/components/summary.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";

const items = (changes: Readonly<Record<string, unknown>>, id = "branch-library") => {
  const result = evaluate(withValues(seed(id), changes), catalog);
  return itemsOf(result, columnsOf(result, catalog));
};
const RANKS = ["fails", "out of range", "near", "ok"];

describe("the strip's facts", () => {
  test("are span, deck, load and ceiling in any case, and other parts only where they fail or come near a limit", () => {
    const calm = items({}, "records-store");
    for (const label of ["span", "deck", "load"]) expect(calm.map((item) => item.label)).toContain(label);
    for (const item of calm) expect(item.value !== undefined || item.verdict !== "ok").toBe(true);
  });

  test("begin with what fails, then what no method covers, then what is near its limit, the nearest first", () => {
    for (const changes of [{}, {"bay.spanFt": 62}, {"bay.spanFt": 50, "story.floorToFloorFt": 9}, {"column.sideIn": 12, "bay.floors": 6}]) {
      const all = items(changes);
      expect(all.map(({verdict}) => RANKS.indexOf(verdict))).toEqual(all.map(({verdict}) => RANKS.indexOf(verdict)).sort());
      for (const verdict of ["fails", "near"]) {
        const used = all.filter((item) => item.verdict === verdict).map(({utilization}) => utilization);
        expect(used).toEqual([...used].sort((a, b) => b - a));
      }
    }
  });

  test("tell that ducts, daylight, columns, beams or the floor's own loads fail, with the check", () => {
    const failing = (changes: Readonly<Record<string, unknown>>) => Object.fromEntries(items(changes).filter(({verdict}) => verdict === "fails").map(({label, check}) => [label, check]));
    expect(failing({"services.mainDepthIn": 6, "services.mainWidthIn": 10})["ducts"]).toMatch(/duct|velocity/i);
    expect(failing({"daylight.obstructionDeg": 60, "daylight.transmittanceShare": 0.3})["daylight"]).toBeDefined();
    expect(Object.keys(failing({"ground.allowablePsf": 1000, "bay.floors": 8, "bay.spanFt": 60})).some((label) => label.endsWith("column"))).toBe(true);
    expect(failing({"edgeBeam.ledgeDepthIn": 8})["edge beam"]).toBeDefined();
  });

  test("name a check without its part's name, which stands before it", () => {
    for (const {label, check} of items({"bay.spanFt": 62})) expect(check?.toLowerCase().startsWith(`${label}: `) ?? false).toBe(false);
  });
});
