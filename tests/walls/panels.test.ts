import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {pieces, type PanelRun} from "../../lib/walls/panels.js";
import {wallReach} from "../../lib/walls/weights.js";
import {catalog, seed} from "../support/designs.js";

/** The library's short sides by solid panels of 8 in, 100 psf, without a parapet, under a roof of two loads: two stories of 180 in. */
const of = (changes: Readonly<Record<string, unknown>> = {}) => evaluate(withValues(seed("branch-library"), {
  "walls.shortSide": "solid panel", "walls.panelThicknessIn": 8, "walls.glassShare": 0, "walls.parapetIn": 0, "roof.given": "loads", ...changes,
}), catalog).walls;
const panels = (changes: Readonly<Record<string, unknown>> = {}) => of(changes).panels as PanelRun;

describe("pieces of one length with joints between them", () => {
  test("are as few as cover it: two of 10 ft and a joint of an inch cover 20 ft 1 in, and no more", () => {
    expect(pieces(241, 120, 1)).toEqual({count: 2, eachIn: 120});
    expect(pieces(241.1, 120, 1)).toEqual({count: 3, eachIn: expect.closeTo(239.1 / 3, 12)});
    expect(pieces(50, 120, 1)).toEqual({count: 1, eachIn: 50});
  });
});

describe("the panels of a short side", () => {
  test("weigh what is left of them beside their windows", () => {
    const {sizes: [whole]} = panels();
    const {sizes: [glazed]} = panels({"walls.glassShare": 0.3});
    expect(whole?.weightKip).toBeCloseTo((100 * (whole?.widthIn as number) * (whole?.heightIn as number)) / 144 / 1000, 9);
    expect((glazed?.weightKip as number) / (whole?.weightKip as number)).toBeCloseTo(0.7, 9);
  });

  test("are told by their heaviest, wherever it stands", () => {
    // Over 4 stories in tiers of 3 the lower tier is the heavier; with 48 in of parapet on tiers of 1 the topmost.
    const tiers = panels({"bay.floors": 3, "walls.panelStories": 3});
    expect(tiers.sizes.map(({where}) => where)).toEqual(["3 stories", "the topmost tier"]);
    expect(tiers.heaviest.where).toBe("3 stories");
    expect(panels({"walls.panelStories": 1, "walls.parapetIn": 48}).heaviest.where).toBe("the topmost tier");
    expect(panels({"walls.panelStories": 1}).sizes.map(({where}) => where)).toEqual(["each story", "the topmost tier"]);
    expect(panels({"walls.panelStories": 2}).sizes.map(({where}) => where)).toEqual(["the whole height"]);
  });

  test("are held from floor to floor, or to a roof that lies farther up", () => {
    expect(panels().heldIn).toBe(180);
    // A roof of 26 in in place of 34 lies lower on a soffit as high; stepped bearings lift its outer edge by 10 in.
    expect(panels({"roof.given": "deck"}).heldIn).toBe(180);
    expect(panels({"roof.given": "deck", "roof.drainage": "bearing"}).heldIn).toBe(361.75 - 179.75);
    // Lying ones by the columns, 40 ft apart.
    expect(panels({"walls.panelSupport": "columns"}).heldIn).toBe(480);
  });

  test("lie corner to corner over one bay, and shorter between two inner columns than at a corner", () => {
    const lying = (baysAcross: number) => panels({"walls.panelSupport": "columns", "walls.panelWidthFt": 8, "bay.baysAcross": baysAcross}).sizes;
    // Columns of 20 in reach 10 in past the lines. Two rows a story, a joint of 3/4 in over each but the topmost.
    expect(lying(1)).toMatchObject([
      {where: "corner to corner", widthIn: 500, heightIn: 89.25, count: 2}, {where: "corner to corner, top story", widthIn: 500, heightIn: 89.625, count: 2},
    ]);
    expect(lying(4)).toMatchObject([
      {where: "bays at the corners", widthIn: 489.625, count: 4}, {where: "bays at the corners, top story", widthIn: 489.625, count: 4},
      {where: "bays between", widthIn: 479.25, heightIn: 89.25, count: 4}, {where: "bays between, top story", widthIn: 479.25, heightIn: 89.625, count: 4},
    ]);
    expect(panels({"walls.panelSupport": "columns", "walls.panelWidthFt": 8, "bay.baysAcross": 4}).count).toBe(16);
    // Of four stories three are like the first: two rows of four panels each, and as many in the topmost.
    expect(panels({"walls.panelSupport": "columns", "walls.panelWidthFt": 8, "bay.baysAcross": 4, "bay.floors": 3}).sizes.map(({count}) => count)).toEqual([12, 4, 12, 4]);
  });
});

describe("what closes the sides", () => {
  test("has a cap on the short sides only where they are closed, in place of the wall's own top", () => {
    const cap = {"walls.parapetIn": 36, "walls.capIn": 3};
    expect(of({...cap, "walls.shortSide": "not counted"}).weights.endCapPlf).toBe(0);
    // 3 in of cap, 8 + 2 in wide, less 3 in of an 8 in wall: 150 (30 - 24)/144.
    expect(of(cap).weights.endCapPlf).toBeCloseTo((150 * 6) / 144, 9);
    expect(of({...cap, "walls.shortSide": "spandrel", "walls.spandrelThicknessIn": 8}).weights.endCapPlf).toBeCloseTo((150 * 6) / 144, 9);
  });

  test("hangs on an edge column over a bay, on a corner column over half of one, at the roof alone", () => {
    const design = withValues(seed("branch-library"), {"edgeBeam.kind": "below", "walls.teeEnds": "concrete", "walls.teeEndStripIn": 4, "roof.given": "loads"});
    const {walls} = evaluate(design, catalog);
    const closing = (column: "edge column" | "corner column" | "girder end column") => wallReach(design, walls, column).roof.find(({name}) => name === "closing strip of the long side")?.lengthFt;
    // From column to column, 360 - 22 in.
    expect([closing("edge column"), closing("corner column"), closing("girder end column")]).toEqual([338 / 12, 169 / 12, undefined]);
  });

  test("is checked for what it is, and the deck's edge with it; nothing where nothing is counted", () => {
    const ids = (changes: Readonly<Record<string, unknown>>) => of(changes).checks.map(({id}) => id);
    const [edge, road] = [["deck edge", "last piece"], (name: string) => [`${name} hauled width`, `${name} hauled length`, `${name} weight`]];
    expect(ids({})).toEqual(["panel thickness", ...road("panel"), ...edge]);
    expect(ids({"walls.panelSupport": "columns"})).toEqual(["panel reach", ...road("panel"), ...edge]);
    expect(ids({"walls.shortSide": "spandrel"})).toEqual([
      "end spandrel depth", "end spandrel cracking", "end spandrel over deck", "end spandrel story", ...road("end spandrel"), ...edge]);
    expect(ids({"walls.shortSide": "cladding"})).toEqual(edge);
    expect(ids({"walls.shortSide": "not counted"})).toEqual([]);
  });

  test("travels by its largest piece, wherever that stands", () => {
    // Story by story 179.25 in and, with 48 in of parapet, 228 in: 19 ft; 108.2 in wide.
    const road = (changes: Readonly<Record<string, unknown>>, id: string) => of({"walls.panelStories": 1, ...changes}).checks.find((check) => check.id === id)?.demand;
    expect(road({"walls.parapetIn": 48}, "panel hauled length")).toBe(19);
    expect(road({"bay.floors": 3, "walls.panelStories": 3}, "panel hauled length")).toBe((3 * 180 - 0.75) / 12);
    // Six panels of (980 - 5 x 3/4)/6 = 162.7 in: in a story of 12 ft they travel lying, 143.25 in high, in the topmost of 192 in standing.
    const wide = {"walls.panelWidthFt": 16, "story.floorToFloorFt": 12, "walls.parapetIn": 48};
    const [usual, top] = panels({"walls.panelStories": 1, ...wide}).sizes;
    expect([usual?.heightIn, (usual?.widthIn as number) > 143.25, (top?.heightIn as number) > (top?.widthIn as number)]).toEqual([143.25, true, true]);
    expect(road(wide, "panel hauled width")).toBeCloseTo((top?.widthIn as number) / 12, 9);
  });

  test("says of the deck's edge what it is and what would mend it", () => {
    const edge = (changes: Readonly<Record<string, unknown>>, id = "deck edge") => of(changes).checks.find((check) => check.id === id);
    expect(edge({})?.label).toBe("Flange beyond the outermost stem, thickness");
    expect(edge({})?.message).toBe("The deck carries the strip up to the wall.");
    expect(edge({"walls.shortSide": "spandrel"})?.message).toBe("The deck's edge reaches the end line by itself.");
    const thick = edge({"column.sideIn": 36})?.message;
    expect(thick).toMatch(/past the outermost stem for its thickness: thicken the topping\.$/);
    // A strip that may be a piece instead; spandrels that may stand between the columns.
    expect(edge({"bay.beamSpanFt": 31, "walls.endFill": "strip"})?.message).toMatch(/thicken the topping, take a last piece cut narrower, or columns at such a distance that whole pieces cover the length\.$/);
    const outside = {"walls.shortSide": "spandrel", "column.sideIn": 36};
    expect(edge({...outside, "walls.spandrelPlace": "outside"})?.message).toMatch(/thicken the topping, or spandrels between the columns\.$/);
    expect(edge({"bay.beamSpanFt": 31}, "last piece")?.message).toMatch(/whole pieces cover the length, or a strip cast in place\.$/);
    // Panels pass the columns whatever is said of spandrels; spandrels between the columns are there already.
    expect(edge({"column.sideIn": 36, "walls.spandrelPlace": "outside"})?.message).toMatch(/thicken the topping\.$/);
    expect(edge({"walls.shortSide": "spandrel", "walls.spandrelPlace": "between", "bay.beamSpanFt": 31, "walls.endFill": "strip"})).toMatchObject({verdict: "fails", message: expect.stringMatching(/whole pieces cover the length\.$/) as string});
    // A last tee just as wide as over its stems, 67.75 in, is as good as any; one tee alone over the whole length leaves no strip beside it.
    expect(edge({"bay.beamSpanFt": 31, "bay.baysAlong": 4, "deck.member": "10DT32"}, "last piece")?.verdict).toBe("fails");
    expect(edge({"bay.beamSpanFt": (120 + 67.75 / 12) / 4}, "last piece")).toMatchObject({verdict: "ok", utilization: expect.closeTo(1, 9)});
    expect(edge({"deck.member": "15DT30", "deck.pattern": "128-S", "bay.beamSpanFt": 8, "bay.baysAlong": 1}, "last piece")).toMatchObject({verdict: "fails", message: expect.stringMatching(/whole pieces cover the length\.$/) as string});
    const planks = evaluate(withValues(seed("classroom-wing"), {"walls.shortSide": "solid panel"}), catalog).walls.checks;
    expect(planks.find(({id}) => id === "deck edge")?.label).toBe("Strip beyond the outermost plank, thickness");
    expect(planks.map(({id}) => id)).toEqual(["panel thickness", "panel hauled width", "panel hauled length", "panel weight", "deck edge"]);
  });
});

describe("walls of a long side by area", () => {
  /** Areas of one kind on both long sides, ft2. */
  const ft2 = (kind: string, changes: Readonly<Record<string, unknown>>) => of(changes).areas.parts.find((part) => part.side === "long" && part.kind === kind)?.ft2 ?? 0;
  /** Between columns of 20 in: four bays of 340 in. */
  const BETWEEN_FT = (4 * 340) / 12;

  test("have, where the beam lies below the deck, what closes the deck's ends above it, and a sill only by an upstand", () => {
    const below = {"edgeBeam.kind": "below", "walls.teeEnds": "concrete", "edgeBeam.upstandIn": 30};
    // 34 in of deck and the finish of 1/4 in over it, on two stories and two sides.
    expect(ft2("closing strip", below)).toBeCloseTo(2 * 2 * BETWEEN_FT * (34.25 / 12), 6);
    expect(ft2("closing strip", {})).toBe(0);
    // A beam beside the deck stands 29 3/4 in above the finished floor, on the ground as a sill; none where it stands lower than the finish.
    expect(ft2("sill", {"edgeBeam.upstandIn": 30})).toBeCloseTo(2 * BETWEEN_FT * (29.75 / 12), 6);
    expect(ft2("sill", {"edgeBeam.upstandIn": 0})).toBe(0);
  });

  test("have windows on one side, and wall in their place on the other", () => {
    const [one, two] = [{"daylight.sides": "one"}, {"daylight.sides": "two"}];
    expect(ft2("windows", two)).toBeCloseTo(2 * ft2("windows", one), 6);
    expect(ft2("frames and wall", one) - ft2("frames and wall", two)).toBeCloseTo(ft2("windows", one), 6);
  });
});
