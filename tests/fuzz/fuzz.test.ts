import {describe, expect, test} from "vitest";
import {validateDesign} from "../../lib/design/validate.js";
import {atMost} from "../../lib/checks.js";
import {withValues} from "../../lib/design/edit.js";
import {seed} from "../support/designs.js";
import {countsOf} from "./counts.js";
import {outcomeOf, type Outcome} from "./results.js";
import {caseOf, designOf} from "./designs.js";
import {inconsistency} from "./laws.js";
import {run} from "./run.js";
import {shrunk} from "./shrink.js";

/** Cases of the run in the tests, from this seed on; `npm run fuzz` runs as many as one likes. */
const SHORT = {cases: 60, seed: 20260502};

test("random designs keep the laws", () => {
  const {found, refused} = run(SHORT.cases, SHORT.seed);
  expect(found.map(({fault, seed, least}) => ({...fault, seed, changes: least.changes}))).toEqual([]);
  // Most cases must reach the engine, or the laws say little.
  expect(refused).toBeLessThan(SHORT.cases / 3);
});

describe("cases", () => {
  test("are the same for a seed, differ between seeds, and hold designs that their fields allow", () => {
    for (let seed = 1; seed < 40; seed++) {
      expect(caseOf(seed)).toEqual(caseOf(seed));
      expect(caseOf(seed)).not.toEqual(caseOf(seed + 1));
      expect(() => validateDesign(designOf(caseOf(seed)))).not.toThrow();
    }
  });
});

describe("a check", () => {
  const text = {id: "x", label: "x", unit: "", clause: "", holds: "holds", fails: "fails"};

  test("is consistent as the library makes it, at its limit and on both sides", () => {
    for (const demand of [0, 0.5, 0.95, 0.999, 1, 1 + 1e-12, 1.001, 50, 1e9]) expect(inconsistency(atMost(text, demand, 1))).toBeUndefined();
  });

  test("is not where its verdict and its use differ, or where it says nothing", () => {
    const [fails, ok, near] = [atMost(text, 2, 1), atMost(text, 0.5, 1), atMost(text, 0.97, 1)];
    for (const wrong of [{...fails, verdict: "ok"}, {...fails, verdict: "near"}, {...ok, verdict: "fails"}, {...ok, verdict: "near"}, {...near, utilization: 1.2}, {...ok, message: ""}] as const) {
      expect(inconsistency(wrong)).toBeDefined();
    }
  });
});

test("a fault is shrunk to the one change that it needs", () => {
  const starter = "branch-library";
  const slow = {starter, changes: {"services.lightIn": 7, "bay.spanFt": 61.234567, "edgeBeam.upstandIn": 20}, moved: "bay.beamSpanFt", searched: false};
  const fault = {kind: "verdict", where: "here", detail: ""} as const;
  // A law of the test's own: no deck spans more than 60 ft.
  const {least} = shrunk(slow, fault, (design) => (design.bay.spanFt > 60 ? fault : undefined));
  expect(Object.keys(least.changes)).toEqual(["bay.spanFt"]);
  expect(String(least.changes["bay.spanFt"]).length).toBeLessThan(5);
});

describe("counts", () => {
  const of = (changes: Record<string, unknown>) => countsOf(outcomeOf(withValues(seed("branch-library"), changes)) as Extract<Outcome, {kind: "results"}>);
  const base = {"bay.spanFt": 40.123, "deck.toppingIn": 2.0123, "edgeBeam.upstandIn": 30.123, "story.floorToFloorFt": 14.123, "bay.beamSpanFt": 30.123};

  test("stay as a field moves by a millionth, so that the law against jumps is in force", () => {
    for (const [path, value] of Object.entries(base)) expect(of({...base, [path]: value + 1e-5}) === of(base), path).toBe(true);
  });

  test("change with strands and columns", () => {
    expect(of({...base, "deck.pattern": "128-S"})).not.toBe(of(base));
    expect(of({...base, "bay.floors": 12})).not.toBe(of(base));
  });
});
