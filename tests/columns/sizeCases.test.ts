import {describe, expect, test} from "vitest";
import {biaxialCapacity} from "../../lib/columns/biaxial.js";
import {usualColumnBars} from "../../lib/columns/chooseBars.js";
import {sizesOf} from "../../lib/columns/columnSizes.js";
import {hardest, useWithoutSlenderness} from "../../lib/columns/columnStory.js";
import {columnLevels} from "../../lib/columns/frame.js";
import {columnSection} from "../../lib/columns/section.js";
import {hardestOf} from "../../lib/columns/sizeCases.js";
import {takedown, takedowns} from "../../lib/columns/takedown.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate, framingOf} from "../../lib/evaluate.js";
import {catalog, seeds} from "../support/designs.js";
import {onCorbels} from "./bending.js";
import {casesOfSize, storyCases} from "./cases.js";
import {floorLevel, roofLevel} from "./levels.js";
import {bar} from "./sections.js";

const rules = (different = {}) => ({strengthPsi: 5000, coverIn: 1.5, steelRatio: 0.015, bars: usualColumnBars(catalog.bars), ...different});

describe("a size", () => {
  const levels = [roofLevel(), floorLevel({name: "floor 3"}), floorLevel()];
  const cases = (sideIn: number, levelsOf = levels) => {
    const section = sizesOf(rules())(sideIn);
    if (!section) throw new Error("no bars fit");
    const {stories} = takedown({position: "corner column", levels: levelsOf, columnPlf: 300});
    return casesOfSize({bending: onCorbels(levelsOf, 4, "one"), lengthFactor: 1, sways: false, sustainedLiveShare: 0.25}, section, stories);
  };

  test("fails if one of its cases does, whichever is tried first", () => {
    const failed: boolean[] = [];
    for (let sideIn = 12; sideIn <= 30; sideIn += 2) {
      const carries = cases(sideIn).all().flat().every((use) => use.carries);
      failed.push(!carries);
      for (const likely of [undefined, {story: 0, nth: 0}, {story: 2, nth: 1}, {story: 1, nth: 3}]) {
        const found = cases(sideIn).failing(likely);
        expect(found === undefined, `${sideIn} in`).toBe(carries);
        if (found) expect(cases(sideIn).all()[found.story]?.some((use) => !use.carries)).toBe(true);
      }
    }
    expect(failed).toContain(true);
    expect(failed).toContain(false);
  });

  test("begins with the case that failed a smaller one, if it fails here too", () => {
    // 14 in are not crushed; they fail in the foot story first, and in the one above it as well.
    const found = cases(14).failing(undefined);
    expect(found).toEqual({story: 2, nth: 0});
    expect(cases(14).all()[1]?.find(({combination}) => combination.name === "1.2D + 1.6L + 0.5Lr")).toMatchObject({carries: false});
    expect(cases(14).failing({story: 1, nth: 1})).toEqual({story: 1, nth: 1});
    // What a size carries does not hold it up: the roof's story does not fail here.
    expect(cases(14).failing({story: 0, nth: 1})).toEqual({story: 2, nth: 0});
  });

  test("that is above its cap on axial load fails in the top story and the combination that are", () => {
    // 120 psf and 12 plf over 8,000 ft2 a floor: far above 0.52 of some 1,100 kip from the upper floor on, and not at the roof.
    const heavy = [roofLevel({tributaryFt2: 100}), floorLevel({name: "floor 3", tributaryFt2: 8000}), floorLevel({tributaryFt2: 8000})];
    const found = cases(14, heavy).failing({story: 2, nth: 0});
    expect(found).toEqual({story: 1, nth: 1});
    const use = cases(14, heavy).all()[1]?.find(({combination}) => combination.name === "1.2D + 1.6L + 0.5Lr");
    expect(use?.utilization).toBeGreaterThan(1);
  });
});

test("sizes are made once for the same rules, and are what their bars and side make them", () => {
  const section = sizesOf(rules())(16);
  expect(section).toEqual(columnSection({widthIn: 16, depthIn: 16, bar: bar("#9"), count: 4, faces: "all", coverIn: 1.5, strengthPsi: 5000}));
  expect(sizesOf(rules())(16)).toBe(section);
  for (const other of [{strengthPsi: 6000}, {coverIn: 2}, {steelRatio: 0.02}, {bars: catalog.bars.filter(({size}) => size === "#9")}]) {
    expect(sizesOf(rules(other))(16), JSON.stringify(other).slice(0, 30)).not.toBe(section);
  }
  // Behind 4 in of cover 12 in hold no #8 with the clear distance.
  const narrow = sizesOf(rules({coverIn: 4, bars: [bar("#8")]}));
  expect([narrow(12), narrow(12)]).toEqual([undefined, undefined]);
  // Many other rules push the first out; what comes back is the same but for its identity.
  for (let strengthPsi = 3000; strengthPsi < 3100; strengthPsi++) sizesOf(rules({strengthPsi}))(12);
  expect(sizesOf(rules())(16)).toEqual(section);
});

test("the load comes down alike whether one weight of column is tried or many", () => {
  const input = {position: "edge column" as const, levels: [roofLevel(), floorLevel({name: "floor 3"}), floorLevel()]};
  const many = takedowns(input);
  for (const columnPlf of [150, 600, 0, 150]) expect(many(columnPlf)).toEqual(takedown({...input, columnPlf}));
});

test("every column of the starters is what all cases of all sizes make it", () => {
  for (const {id, design} of seeds) for (const kind of ["ledge", "pockets"]) {
    const evaluation = evaluate(withValues(design, {"edgeBeam.kind": kind}), catalog);
    const framing = framingOf(evaluation);
    const {column: chosen, criteria: {sustainedLiveShare}} = framing.design;
    const sizes = sizesOf({strengthPsi: chosen.strengthPsi, coverIn: chosen.coverIn, steelRatio: chosen.steelPercent / 100, bars: usualColumnBars(catalog.bars)});
    for (const {position, column} of columnsOf(evaluation, catalog).columns) {
      const bent = {bending: column.bending, lengthFactor: 1, sways: chosen.sways, sustainedLiveShare};
      const of = (sideIn: number) => {
        const section = sizes(sideIn);
        if (!section) return undefined;
        const {stories} = takedown({position, levels: columnLevels(framing, position), rooms: framing.loads.rooms, columnPlf: (sideIn ** 2 / 144) * 150});
        return {section, stories, cases: storyCases(bent, section, stories)};
      };
      const at = `${id}, ${kind}, ${position}`;
      expect(column.tried.map(({sideIn}) => of(sideIn)?.cases.flat().every(({carries}) => carries) ?? false), at).toEqual(column.tried.map(({carries}) => carries));
      expect(of(column.sideIn)?.cases.map(hardest), at).toEqual(column.stories);
      const smaller = column.tried.length > 1 ? of(column.sideIn - 2) : undefined;
      if (!smaller) continue;
      const most = hardest(smaller.cases.map(hardest));
      const quickly = hardestOf(casesOfSize(bent, smaller.section, smaller.stories));
      expect([quickly.utilization, quickly.asked], at).toEqual([most.utilization, most.asked]);
      expect(biaxialCapacity(smaller.section, quickly.asked, quickly.axis), at).toEqual(most.capacity);
      expect(column.governs === "slenderness", at).toBe(useWithoutSlenderness(smaller.section, most) <= 1);
    }
  }
});
