import {describe, expect, test} from "vitest";
import type {Design} from "../lib/design/design.js";
import {withValues} from "../lib/design/edit.js";
import {differences, TOLD} from "../lib/differences.js";
import {evaluate, type Evaluation} from "../lib/evaluate.js";
import {QUANTITIES} from "../lib/quantities.js";
import {catalog, seed} from "./support/designs.js";

const LIBRARY = seed("branch-library");
const of = (changes: Readonly<Record<string, unknown>> = {}, design: Design = LIBRARY): Evaluation => evaluate(withValues(design, changes), catalog);
const before = of();

/** The same results but for one number, to try the words alone. */
const withCeiling = (ceilingHeightIn: number): Evaluation => ({...before, story: {...before.story, ceilingHeightIn}});
const ceiling = before.story.ceilingHeightIn;

describe("what a change has done", () => {
  test("is nothing where nothing changed, or nothing worth a word", () => {
    expect(differences(before, before)).toBe("");
    expect(differences(before, withCeiling(ceiling + 0.75), ["ceiling, in"])).toBe("");
  });

  test("says more and less, to the quarter of an inch, and feet from a foot on", () => {
    expect(differences(before, withCeiling(ceiling - 11), ["ceiling, in"])).toBe("11 in less ceiling");
    expect(differences(before, withCeiling(ceiling + 1.5), ["ceiling, in"])).toBe("1 1/2 in more ceiling");
    expect(differences(before, withCeiling(ceiling + 1), ["ceiling, in"])).toBe("1 in more ceiling");
    expect(differences(before, withCeiling(ceiling + 30), ["ceiling, in"])).toBe("2'-6\" more ceiling");
  });

  test("counts what is counted, one alone by its own name", () => {
    const withPieces = (bays: number) => of({"bay.beamSpanFt": bays});
    // Tees of the library are 12 ft wide or so: another bay of beam span brings whole pieces.
    const told = differences(before, withPieces(LIBRARY.bay.beamSpanFt * 2), ["pieces"]);
    expect(told).toMatch(/^(1 more piece|\d+ more pieces)\b/);
    expect(differences(withPieces(LIBRARY.bay.beamSpanFt * 2), before, ["pieces"])).toMatch(/^(1 fewer piece|\d+ fewer pieces)\b/);
  });

  test("an inch of floor-to-floor height is an inch of ceiling", () => {
    const higher = of({"story.floorToFloorFt": LIBRARY.story.floorToFloorFt + 1});
    expect(higher.story.ceilingHeightIn - ceiling).toBeCloseTo(12, 9);
    expect(differences(before, higher, ["ceiling, in"])).toMatch(/^1'-0" more ceiling/);
  });

  test("names the largest three, each by the least that is worth a word, and the checks after them", () => {
    const longer = of({"bay.spanFt": LIBRARY.bay.spanFt + 12});
    const parts = differences(before, longer).split(", ");
    const fails = (evaluation: Evaluation) => evaluation.checks.filter(({verdict}) => verdict === "fails").length;
    expect(fails(longer)).toBeGreaterThan(fails(before));
    expect(parts).toHaveLength(4);
    expect(parts.at(-1)).toMatch(/^\d+ more checks? fails?$/);
    expect(differences(longer, before).split(", ").at(-1)).toMatch(fails(before) === 0 ? /^no check fails any more$/ : /^\d+ fewer checks? fails?$/);
  });

  test("keeps to what is wanted, told once", () => {
    const longer = of({"bay.spanFt": LIBRARY.bay.spanFt + 4});
    expect(differences(before, longer, ["safe load, psf", "safe load, psf"])).toMatch(/^\d+ psf less safe load(, \d+ (more|fewer) checks? fails?)?$/);
    expect(differences(before, {...longer, checks: before.checks}, [])).toBe("");
  });

  test("a part that one of the designs has not is passed over", () => {
    const none: Evaluation = {...before, daylight: undefined} as unknown as Evaluation;
    expect(differences(before, none, ["daylit, %"])).toBe("");
  });

  test("can tell of every quantity that it names", () => {
    for (const name of TOLD) expect(QUANTITIES[name], name).toBeTypeOf("function");
  });
});
