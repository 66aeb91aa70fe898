import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {FIELDS} from "../../lib/design/fields.js";
import {fieldUsed, hasDucts, hasGirder, hasTopping} from "../../lib/design/used.js";
import {WITHOUT_WALLS, seed} from "../support/designs.js";

/** Groups whose fields ask tests of their own: a path of theirs is of no account elsewhere. */
const APART = ["walls.", "snow.", "roof", "air."];

/** Paths that a starter does not use after some changes, beside those it never uses: of one of these groups, or of all others. */
function unusedWith(changes: Readonly<Record<string, unknown>>, group = ""): string[] {
  const plain = {"bay.baysAcross": 2, "girder.kind": "rectangle", "edgeBeam.kind": "ledge", "edgeBeam.steel": "strands", "deck.toppingIn": 2, "roof.given": "loads", "story.ceiling": "below", "services.airCfmPerFt2": 1, "parking.place": "on", "parking.ramp": "beside"};
  const design = withValues(seed("branch-library"), {...WITHOUT_WALLS, ...plain, ...changes});
  return Object.keys(FIELDS).filter((path) => (APART.find((start) => path.startsWith(start)) ?? "") === group && !fieldUsed(design, path));
}
/** The same of the group on air, under a floor that has ducts. */
function airUnusedWith(changes: Readonly<Record<string, unknown>>): Set<string> {
  const plain = {"services.airCfmPerFt2": 1, "air.place": "fit", "air.run": "plenum", "air.casing": "derived", "air.serves": "floor", "air.way": "none"};
  const design = withValues(seed("branch-library"), {...plain, ...changes});
  return new Set(Object.keys(FIELDS).filter((path) => (path.startsWith("air.") || path === "services.servedFt2") && !fieldUsed(design, path)).map((path) => path.replace("air.", "")));
}
/** What only an inverted tee has. */
const LEDGES = ["girder.ledgeProjectionIn", "girder.ledgeDepthIn"];

describe("a design does not use", () => {
  test("ledges of a rectangular girder, nor a depth of its own for an inverted tee, whose ledge and deck make it", () => {
    expect(unusedWith({})).toEqual(LEDGES);
    expect(unusedWith({"girder.kind": "inverted tee"})).toEqual(["girder.depthIn"]);
  });

  test("any field of a girder where one bay needs none", () => {
    const girder = Object.keys(FIELDS).filter((path) => path.startsWith("girder."));
    expect(girder.length).toBeGreaterThan(5);
    expect(unusedWith({"bay.baysAcross": 1})).toEqual(girder);
  });

  test("a ledge on a beam that lies below the deck, but one where stems stand in pockets", () => {
    expect(unusedWith({"edgeBeam.kind": "below"})).toEqual(expect.arrayContaining(["edgeBeam.ledgeProjectionIn", "edgeBeam.ledgeDepthIn"]));
    expect(unusedWith({"edgeBeam.kind": "pockets"})).toEqual(LEDGES);
  });

  test("strands in an edge beam of bars", () => {
    expect(new Set(unusedWith({"edgeBeam.steel": "bars"}))).toEqual(new Set([...LEDGES, "edgeBeam.strands"]));
  });

  test("the strength and the shape of a topping that is not cast", () => {
    expect(new Set(unusedWith({"deck.toppingIn": 0}))).toEqual(new Set([...LEDGES, "deck.toppingStrengthPsi", "topping.followShare"]));
  });

  test("a drop of a ceiling that does not hang below the ledge", () => {
    for (const ceiling of ["none", "flush", "head"]) expect(new Set(unusedWith({"story.ceiling": ceiling}))).toEqual(new Set([...LEDGES, "story.ceilingDropIn"]));
  });

  test("sizes of ducts where no air is asked for", () => {
    const ducts = ["services.servedFt2", "services.mainWidthIn", "services.mainDepthIn", "services.branchWidthIn", "services.branchDepthIn"];
    expect(new Set(unusedWith({"services.airCfmPerFt2": 0}))).toEqual(new Set([...LEDGES, ...ducts]));
    const air = Object.keys(FIELDS).filter((path) => path.startsWith("air."));
    expect(airUnusedWith({"services.airCfmPerFt2": 0}).size).toBe(air.length + 1);
  });

  test("what other places, ways and boxes of the ducts are told by", () => {
    const plain = ["acrossFt", "casing", "casingWidthIn", "casingDropIn", "baysServed", "returnEvery", "exhaustPercent", "wallsCrossed"];
    const left = (...used: readonly string[]) => new Set(plain.filter((path) => !used.includes(path)));
    expect(airUnusedWith({})).toEqual(left());
    expect(airUnusedWith({"air.place": "across"})).toEqual(left("acrossFt"));
    for (const run of ["box", "strip"]) {
      expect(airUnusedWith({"air.run": run})).toEqual(left("casing"));
      expect(airUnusedWith({"air.run": run, "air.casing": "stated"})).toEqual(left("casing", "casingWidthIn", "casingDropIn"));
    }
    expect(airUnusedWith({"air.serves": "bays"})).toEqual(new Set([...left("baysServed"), "services.servedFt2"]));
    for (const way of ["trunk", "stems"]) expect(airUnusedWith({"air.way": way})).toEqual(left("returnEvery", "exhaustPercent"));
    for (const way of ["plenum", "rooms"]) expect(airUnusedWith({"air.way": way})).toEqual(left("exhaustPercent", "wallsCrossed"));
  });

  test("the parts of a wall of another kind, of a wall that is not counted, or of a parapet that is none", () => {
    const unused = (changes: Readonly<Record<string, unknown>>) => new Set(unusedWith(changes, "walls.").map((path) => path.replace("walls.", "")));
    const panel = ["panelSupport", "panelWidthFt", "panelStories"];
    const wythes = ["outerWytheIn", "insulationIn", "innerWytheIn"];
    const spandrel = ["spandrelDepthIn", "spandrelThicknessIn", "spandrelUpstandIn", "spandrelPlace", "spandrelPieces"];
    const ends = ["teeEnds", "teeEndStripIn"];
    const parapet = ["parapetThicknessIn", "capIn"];
    expect(unused({"walls.shortSide": "not counted"})).toEqual(new Set([...panel, "panelThicknessIn", ...wythes, ...spandrel, ...ends, ...parapet, "jointIn", "glassShare", "claddingPsf", "strengthPsi", "corner", "endFill"]));
    expect(unused({"walls.shortSide": "solid panel", "walls.parapetIn": 1})).toEqual(new Set([...wythes, ...spandrel, ...ends, "claddingPsf", "corner"]));
    expect(unused({"walls.shortSide": "spandrel"})).toContain("corner");
    expect(unused({"column.roofDeadPsf": 0, "column.roofLivePsf": 0, "walls.shortSide": "spandrel", "walls.parapetIn": 1})).toEqual(new Set([...panel, "panelThicknessIn", ...wythes, ...ends, ...parapet, "parapetIn", "glassShare", "claddingPsf", "corner"]));
    expect(unused({"walls.shortSide": "insulated panel", "walls.parapetIn": 1, "walls.panelSupport": "columns"})).toEqual(new Set(["panelThicknessIn", "panelStories", ...spandrel, ...ends, "claddingPsf", "corner"]));
    expect(unused({"walls.shortSide": "spandrel", "walls.parapetIn": 1})).toEqual(new Set([...panel, "panelThicknessIn", ...wythes, ...ends, "glassShare", "claddingPsf"]));
    expect(unused({"walls.shortSide": "cladding", "walls.parapetIn": 1})).toEqual(new Set([...panel, "panelThicknessIn", ...wythes, ...spandrel, ...ends, "strengthPsi"]));
    const below = {"edgeBeam.kind": "below", "walls.shortSide": "spandrel", "walls.parapetIn": 1};
    expect(unused(below)).toEqual(new Set([...panel, "panelThicknessIn", ...wythes, "glassShare", "claddingPsf", "teeEndStripIn"]));
    expect(unused({...below, "walls.teeEnds": "cladding"})).toEqual(new Set([...panel, "panelThicknessIn", ...wythes, "glassShare", "teeEndStripIn"]));
    expect(unused({...below, "walls.teeEnds": "concrete"})).toEqual(new Set([...panel, "panelThicknessIn", ...wythes, "glassShare", "claddingPsf"]));
  });

  test("stalls where no car parks, nor slopes of a ramp that is not there; where cars park stays its to decide", () => {
    const parking = Object.keys(FIELDS).filter((path) => path.startsWith("parking.") && path !== "parking.place");
    expect(new Set(unusedWith({"parking.place": "none"}))).toEqual(new Set([...LEDGES, ...parking]));
    const ramp = ["parking.rampSlopePercent", "parking.rampBlendFt", "parking.rampRuns"];
    expect(new Set(unusedWith({"parking.ramp": "none"}))).toEqual(new Set([...LEDGES, ...ramp]));
  });
});

describe("a roof", () => {
  const roof = Object.keys(FIELDS).filter((path) => path.startsWith("roof."));
  const unused = (changes: Readonly<Record<string, unknown>>) => {
    const design = withValues(seed("branch-library"), changes);
    return Object.keys(FIELDS).filter((path) => /^(roof|column\.roof)/.test(path) && !fieldUsed(design, path));
  };

  test("of two loads has no deck and no layers, but may be given them", () => {
    expect(roof.length).toBeGreaterThan(10);
    expect(new Set(unused({"roof.given": "loads"}))).toEqual(new Set(roof.filter((path) => path !== "roof.given")));
  });

  test("of its own is not two loads, has a fall of its own unless its camber makes it, and a taper only of insulation", () => {
    const loads = ["column.roofDeadPsf", "column.roofLivePsf"];
    const by = (drainage: string) => new Set(unused({"roof.given": "deck", "roof.drainage": drainage}));
    expect(by("taper")).toEqual(new Set(loads));
    expect(by("bearing")).toEqual(new Set([...loads, "roof.taperPcf"]));
    expect(by("camber")).toEqual(new Set([...loads, "roof.taperPcf", "roof.slopeInPerFt", "roof.drainsAt"]));
  });

  test("with a topping needs its strength, whether the floor has one or not", () => {
    const strength = (given: string, toppingIn: number) => fieldUsed(withValues(seed("branch-library"), {"deck.toppingIn": 0, "roof.given": given, "roof.toppingIn": toppingIn}), "deck.toppingStrengthPsi");
    expect([strength("deck", 2), strength("deck", 0), strength("loads", 2)]).toEqual([true, false, false]);
  });
});

describe("of what lies on the roof, a design does not use", () => {
  const snow = Object.keys(FIELDS).filter((path) => path.startsWith("snow."));
  const unused = (changes: Readonly<Record<string, unknown>>) =>
    unusedWith({"snow.groundPsf": 30, "snow.higherFt": 10, "snow.use": "occupied", ...changes}, "snow.");

  test("the look of a higher part that is not there", () => {
    expect(unused({})).toEqual([]);
    expect(unused({"snow.higherFt": 0})).toEqual(["snow.higherSide", "snow.higherLengthFt", "snow.higherApartFt"]);
  });

  test("anything of snow where none falls, but its live load and rain", () => {
    const stays = ["snow.use", "snow.occupancy", "snow.groundPsf", "snow.rainStaticIn", "snow.rainHydraulicIn"];
    expect(unused({"snow.groundPsf": 0})).toEqual(snow.filter((path) => !stays.includes(path)));
  });

  test("the use of a roof that nobody uses", () => expect(unused({"snow.use": "ordinary"})).toEqual(["snow.occupancy"]));
});

test("a girder comes with the second bay, a topping with its first inch, ducts with the first air", () => {
  const design = (changes: Readonly<Record<string, unknown>>) => withValues(seed("branch-library"), changes);
  expect([1, 2, 3].map((bays) => hasGirder(design({"bay.baysAcross": bays})))).toEqual([false, true, true]);
  expect([0, 2].map((inches) => hasTopping(design({"deck.toppingIn": inches})))).toEqual([false, true]);
  expect([0, 0.5].map((cfm) => hasDucts(design({"services.airCfmPerFt2": cfm})))).toEqual([false, true]);
});
