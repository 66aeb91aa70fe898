import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {ruledWalls} from "../../lib/schemes/wallRule.js";
import {catalog, seed} from "../support/designs.js";

/** The walls of the library by rule, whose panels stand 1 in clear of columns of 20 in. */
const ruled = (changes: Readonly<Record<string, unknown>>) => {
  const {design, member, story} = evaluate(withValues(seed("branch-library"), {"walls.shortSide": "solid panel", "walls.glassShare": 0, "walls.parapetIn": 0, "roof.given": "loads", ...changes}), catalog);
  const {input: found} = ruledWalls(design, catalog, member, story, false);
  const fails = evaluate({...design, walls: found}, catalog).walls.checks.filter(({verdict}) => verdict === "fails").map(({id}) => id);
  return {found, own: design.walls, fails};
};

describe("walls by rule", () => {
  test("stay the design's own where they hold, and where nothing is counted", () => {
    for (const changes of [{}, {"walls.shortSide": "not counted", "walls.panelThicknessIn": 4}, {"walls.shortSide": "cladding"}]) {
      const {found, own} = ruled(changes);
      expect(found).toBe(own);
    }
  });

  test("are as thick as the story asks, by the wythe that carries", () => {
    // A story of 15 ft takes 180/30 = 6 in of what carries; steps are an inch.
    expect(ruled({"walls.panelThicknessIn": 4})).toMatchObject({found: {panelThicknessIn: 6}, fails: []});
    expect(ruled({"walls.shortSide": "insulated panel", "walls.innerWytheIn": 3})).toMatchObject({found: {innerWytheIn: 6, panelThicknessIn: seed("branch-library").walls.panelThicknessIn}, fails: []});
    // From column to column 40 ft take 480/60 = 8 in.
    expect(ruled({"walls.panelSupport": "columns", "walls.panelThicknessIn": 6}).found.panelThicknessIn).toBe(8);
  });

  test("have as many stories in a panel as a truck hauls, and panels as wide as it carries", () => {
    // Five stories of 15 ft are 75 ft in one piece; four are 60, and of those 8 in thick 48 kip.
    const tall = ruled({"bay.floors": 4, "walls.panelStories": 5, "walls.panelWidthFt": 8});
    expect([tall.found.panelStories < 5, tall.fails]).toEqual([true, []]);
    const {found, fails} = ruled({"walls.panelStories": 1, "walls.panelWidthFt": 16, "story.floorToFloorFt": 18});
    expect([found.panelWidthFt < 16, found.panelStories, fails]).toEqual([true, 1, []]);
  });

  test("deepen end spandrels in steps of 2 in until they cover the deck and stand by themselves", () => {
    // 34 in of deck below a spandrel that stands 30 in above it.
    const {found, fails} = ruled({"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 48, "walls.spandrelUpstandIn": 30});
    expect([found.spandrelDepthIn, fails]).toEqual([64, []]);
    expect(ruled({"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside", "column.sideIn": 36, "walls.spandrelDepthIn": 72}).found).toMatchObject({spandrelPlace: "between", spandrelDepthIn: 72});
  });

  test("close what whole tees leave by a piece or a strip, whichever holds", () => {
    // A foot is too little for both stems; as a strip of 12 + 10 in past 26 1/8 in of flange it takes 4.8 in: 2 of flange and 4 of topping.
    expect(ruled({"bay.beamSpanFt": 30.25, "walls.endFill": "piece", "deck.toppingIn": 4})).toMatchObject({found: {endFill: "strip"}, fails: []});
    // Six feet hold both stems, and as a strip would reach 9 ft.
    expect(ruled({"bay.beamSpanFt": 31.5, "walls.endFill": "strip"})).toMatchObject({found: {endFill: "piece"}, fails: []});
    // Where neither holds the design's own stays.
    for (const endFill of ["piece", "strip"]) expect(ruled({"bay.beamSpanFt": 31, "walls.endFill": endFill}).found.endFill).toBe(endFill);
  });
});
