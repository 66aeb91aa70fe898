import {describe, expect, test} from "vitest";
import type {ColumnsResult} from "../../lib/columns/columnsResult.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {frameSection} from "../../lib/record/frame.js";
import {checksIn} from "../../lib/record/checkGroups.js";
import type {RecordSection} from "../../lib/record/parts.js";
import {designRecord} from "../../lib/record/record.js";
import {catalog, seed} from "../support/designs.js";
import {plainSentence} from "../support/sentence.js";

const NONE: ColumnsResult = {columns: [], unsized: [], checks: []};
const ALONE = {candidates: [], kinds: [], spans: []};

type Changes = Readonly<Record<string, unknown>>;
const evaluated = (id: string, changes: Changes = {}) => evaluate(withValues(seed(id), changes), catalog);

/** A section of a starter's record after some changes, without columns and ways not taken. */
function section(id: RecordSection["id"], changes: Changes = {}, starter = "branch-library"): RecordSection {
  const found = designRecord(evaluated(starter, changes), ALONE, "", NONE).sections.find((one) => one.id === id);
  if (!found) throw new Error(`no section ${id}`);
  return found;
}

const checkIds = ({checks}: RecordSection) => checks.flatMap(({rows}) => checksIn(rows)).map(({id}) => id);
const decision = (of: RecordSection) => plainSentence(of.decision);
/** The value of a fact; undefined where there is no such fact. */
function fact(of: RecordSection, label: string): string | undefined {
  const found = of.facts.find((one) => one.label === label);
  return found && plainSentence(found.value);
}

describe("the record of the loads", () => {
  test("names movable walls with the rooms that have any, and each layer with its weight", () => {
    const loads = section("loads");
    expect(fact(loads, "Stacks")).toBe("150 psf (Library, stack room)");
    expect(fact(loads, "Reading rooms")).toBe("60 psf (Library, reading room) and 15 psf for movable walls");
    expect(fact(loads, "Suspended ceiling")).toBe("2.0 psf");
    expect(fact(section("loads", {"loads.partitions": false}), "Reading rooms")).toBe("60 psf (Library, reading room)");
  });

  test("names each part's share of its live load, the area behind it and what decides", () => {
    const reduction = section("reduction", {}, "classroom-wing");
    // Two floors of 4 x 28 x 24 ft each under the inner column.
    expect(fact(reduction, "interior column")).toBe("45\u00a0% of 80 psf (Corridor), from 5,376 ft\u00b2 of influence area; formula, ASCE 7-16 4.7.2");
    expect(decision(reduction)).toMatch(/^Live load is reduced where/);
    expect(decision(section("reduction"))).toBe("No live load is reduced.");
  });
});

describe("the record of the deck", () => {
  test("tells a span in whole feet, or in feet and inches", () => {
    expect(decision(section("deck"))).toMatch(/spans 40 ft and/);
    expect(decision(section("deck", {"bay.spanFt": 40.5}))).toMatch(/spans 40'-6" and/);
  });

  test("says whether its live load is reduced, and whether its strands are depressed", () => {
    expect(decision(section("deck"))).not.toContain("reduced");
    const long = section("deck", {"bay.spanFt": 60, "deck.member": "12DT32", "deck.pattern": "128-D1", "loads.rooms": [{name: "Desks", occupancy: "office"}]});
    expect(decision(long)).toContain("is required, its live load reduced; ");
    expect(fact(long, "Strands")).toMatch(/^12 of 0\.5 in, depressed; /);
    expect(fact(section("deck"), "Strands")).toBe("10 of 0.5 in, straight; centroid 6.00 in above the soffit at midspan, 6.00 in at the ends");
  });

  test("lists as ways not taken the first five of the search that are not the one taken, and no more", () => {
    const evaluation = evaluated("branch-library");
    const found = ["10DT32+2 108-S", "a", "b", "c", "d", "e", "f"].map((id) => ({id, reason: `${id} is heavier`}));
    const {sections} = designRecord(evaluation, {...ALONE, candidates: found as never}, "", NONE);
    expect(sections.find(({id}) => id === "deck")?.alternatives).toEqual([{title: "Other decks", ways: ["a", "b", "c", "d", "e"].map((name) => ({name, outcome: `${name} is heavier`}))}]);
    for (const one of sections) if (one.id !== "deck") expect(one.alternatives).toEqual([]);
  });
});

describe("the record of camber and topping", () => {
  test("calls a negative camber a sag, by its size", () => {
    expect(fact(section("topping", {}, "classroom-wing"), "Long-term camber")).toBe("\u22120.32 in: a sag");
    expect(fact(section("topping"), "Long-term camber")).toMatch(/^0\.\d\d in$/);
    const sagging = {"deck.member": "10DT24", "deck.pattern": "48-S", "deck.toppingIn": 3, "bay.spanFt": 60};
    expect(decision(section("topping", sagging))).toMatch(/levels a sag of \d+\.\d\d in: /);
    expect(decision(section("topping"))).toMatch(/levels a camber of 0\.71 in: /);
  });

  test("tells a level surface from one that follows the camber", () => {
    expect(fact(section("topping"), "Finished surface")).toBe("level");
    expect(fact(section("topping", {"topping.followShare": 0.5}), "Finished surface")).toBe("follows 50\u00a0% of the camber");
  });

  test("has the topping's thickness where one is cast, and the step between neighbors where none is", () => {
    const topped = section("topping");
    expect(fact(topped, "Thickness")).toMatch(/^2\.00 in at the least/);
    expect(fact(topped, "Neighbors")).toBeUndefined();
    expect(checkIds(topped)).toContain("wet topping");
    const bare = section("topping", {}, "parking-structure");
    expect(fact(bare, "Thickness")).toBeUndefined();
    expect(fact(bare, "Neighbors")).toMatch(/^differ by 0\.\d\d in on average/);
    expect(bare.checks.length).toBeGreaterThan(0);
  });
});

describe("the record of the edge beam", () => {
  test("tells what each kind is, and how wide at its foot: a ledge adds to the web", () => {
    expect(decision(section("edgeBeam"))).toBe("An L-beam 6'-5\" deep and 1'-10\" wide at its foot, with 5 #9 bars in the bottom, spans 30 ft.");
    const pockets = section("edgeBeam", {"edgeBeam.kind": "pockets"});
    expect(decision(pockets)).toMatch(/^A spandrel with pockets for the stems .* and 1'-2" wide at its foot/);
    expect(fact(pockets, "Parts of its depth")).toBe("13.0 in below the pockets, 34.0 in deck, 30.0 in upstand");
    expect(fact(section("edgeBeam"), "Parts of its depth")).toBe("13.0 in ledge, 34.0 in deck, 30.0 in upstand");
    const below = section("edgeBeam", {"edgeBeam.kind": "below"});
    expect(decision(below)).toMatch(/^A rectangular beam below the deck/);
    expect(fact(below, "Depth")).toBe("all of it below the deck");
    expect(fact(below, "Parts of its depth")).toBeUndefined();
  });

  test("counts bars beside strands only where there are any", () => {
    const strands = {"edgeBeam.strengthPsi": 5000, "edgeBeam.steel": "strands", "edgeBeam.strands": 12};
    const {bars} = evaluated("branch-library", strands).edgeBeam;
    expect(decision(section("edgeBeam", strands))).toContain(bars.count > 0 ? `12 strands and ${bars.count} #9 bars` : "with 12 strands in the bottom");
    expect(bars.count).toBe(0);
    const few = {"edgeBeam.steel": "strands", "edgeBeam.strands": 4};
    expect(evaluated("branch-library", few).edgeBeam.bars.count).toBeGreaterThan(0);
    expect(decision(section("edgeBeam", few))).toMatch(/with 4 strands and \d+ #9 bars in the bottom/);
  });

  test("has stems' loads under tees, and none under planks", () => {
    expect(fact(section("edgeBeam"), "Factored load")).toMatch(/ plf, of which \d+\.\d kip by each stem$/);
    expect(fact(section("edgeBeam", {}, "classroom-wing"), "Factored load")).toMatch(/^[\d,]+ plf$/);
  });

  test("has stirrups and a couple where the load twists it, and a ledge's bars where it has a ledge", () => {
    const {twist, momentKipIn, torsionKipIn} = evaluated("branch-library").edgeBeam;
    const ledge = section("edgeBeam");
    expect(fact(ledge, "Stirrups")).toMatch(/^#4 closed, /);
    expect(fact(ledge, "Couple that holds an end upright")).toBe(`${Math.round(Math.abs(twist?.rotation.topKip ?? NaN))} kip, 5'-5" apart`);
    expect(fact(ledge, "Ledge")).toMatch(/bars across it/);
    expect(fact(ledge, "Factored moment and shear")).toContain(`${Math.round(momentKipIn / 12).toLocaleString("en-US")} kip-ft, `);
    expect(fact(ledge, "Factored torsion")).toBe(`${Math.round(torsionKipIn / 12)} kip-ft at the ends`);
    const below = section("edgeBeam", {"edgeBeam.kind": "below"});
    expect(fact(below, "Ledge")).toBeUndefined();
  });
});

describe("the record of the frame", () => {
  const library = evaluated("branch-library");

  test("tells an inverted tee from a rectangle, and where one bay has neither", () => {
    const of = (changes: Changes) => frameSection(evaluated("branch-library", changes), NONE);
    expect(decision(of({}))).toMatch(/^An inverted tee 3'-11" deep, 1'-1" of it below the deck, with 16 strands, spans 30 ft between two bays\.$/);
    expect(decision(of({"girder.kind": "rectangle"}))).toMatch(/^A rectangular girder /);
    const one = of({"bay.baysAcross": 1});
    expect(decision(one)).toBe("The floor has one bay across, and no girder.");
    expect([one.title, of({}).title]).toEqual(["Columns", "Girder and columns"]);
    expect(fact(one, "Girder")).toBeUndefined();
  });

  test("says where a girder's twist is so small that the code leaves it out", () => {
    expect(fact(frameSection(library, NONE), "Torsion with one bay loaded")).toMatch(/kip-ft$/);
    const {girder} = library;
    if (!girder) throw new Error("no girder");
    const small = {...library, girder: {...girder, twist: {...girder.twist, design: {...girder.twist.design, negligible: true}}}};
    expect(fact(frameSection(small, NONE), "Torsion with one bay loaded")).toMatch(/kip-ft, left out$/);
  });

  test("has each column with its corbel and footing, or says that it has none, and why one is not sized", () => {
    const sized = columnsOf(library, catalog);
    const whole = frameSection(library, sized);
    expect(decision(whole)).toMatch(/ The interior column is 20 in square\.$/);
    expect(whole.facts.map(({label}) => label)).toEqual(expect.arrayContaining(["interior column", "edge column", "girder end column", "corner column"]));
    expect(fact(whole, "corner column")).toMatch(/; corbel 1'-4" deep; footing 7'-3" square, 1'-6" thick$/);
    const bare = {...sized, columns: sized.columns.map((column) => ({...column, corbel: undefined, footing: undefined})), unsized: [{position: "corner column", reason: "It bends too much."}]} as ColumnsResult;
    const without = frameSection(library, bare);
    expect(fact(without, "interior column")).toMatch(/; no corbel covers its beam; no single footing$/);
    expect(without.facts.map(({value}) => plainSentence(value))).toContain("not sized. It bends too much.");
    expect(checkIds(whole).sort()).toEqual([...(library.girder?.checks ?? []), ...sized.checks, ...library.diaphragm.checks].map(({id}) => id).sort());
  });

  test("has the floor's chord where the floor can be taken as a beam", () => {
    expect(fact(frameSection(library, NONE), "Floor as a diaphragm")).toMatch(/^10\.0 kip in its chord under a stated 400 plf\. /);
    const none = {...library, diaphragm: {...library.diaphragm, result: undefined}};
    expect(fact(frameSection(none as never, NONE), "Floor as a diaphragm")).toBeUndefined();
  });
});

describe("the record of story and light", () => {
  test("names the ceiling where there is one, and the plenum above it", () => {
    expect(decision(section("story"))).toBe("15'-0\" floor to floor leaves 11'-0 3/4\" under the ceiling and 8'-3\" of glass.");
    expect(fact(section("story"), "Plenum")).toBe("1'-1\"");
    expect(decision(section("story", {"story.ceiling": "none"}))).toContain(" under the deck and ");
    expect(fact(section("story", {"story.ceiling": "none"}), "Plenum")).toBe("none");
    expect(decision(section("story", {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8}))).toContain(" and nothing of glass.");
  });

  test("tells one main that serves the floor from several, and branches between the stems from those below planks", () => {
    expect(fact(section("story"), "Main duct")).toMatch(/; the floor takes 6 such mains$/);
    expect(fact(section("story", {"bay.baysAlong": 1, "bay.baysAcross": 1}), "Main duct")).toMatch(/; it serves the whole floor$/);
    expect(fact(section("story"), "Branches")).toMatch(/between the stems$/);
    expect(fact(section("story", {}, "classroom-wing"), "Branches")).toMatch(/below the deck$/);
    expect(fact(section("story"), "Ducts")).toBeUndefined();
    expect(fact(section("story", {}, "parking-structure"), "Ducts")).toBe("none: no air is required");
  });

  test("tells windows on one long side from windows on both, and rooms where no one works", () => {
    expect(decision(section("light", {}, "records-store"))).toMatch(/^Windows on one long side /);
    expect(decision(section("light"))).toMatch(/^Windows on both long sides .* the average is 4\.4 %\.$/);
    expect(decision(section("light", {}, "parking-structure"))).toMatch(/ No one works there, so nothing is required of it\.$/);
  });

  test("puts a no-sky line into the room, or none: no line lies behind the back wall", () => {
    // Sky ends 25 ft from either window of a floor 120 ft deep.
    expect(fact(section("light", {}, "parking-structure"), "No-sky line")).toMatch(/^25 ft from a window, under a skyline of 10 degrees$/);
    // It would end 38 ft from the window of a room 30 ft deep.
    expect(fact(section("light", {}, "records-store"), "No-sky line")).toBe("none: sky is seen from everywhere");
    expect(fact(section("light", {"daylight.obstructionDeg": 0}), "No-sky line")).toBe("none: sky is seen from everywhere");
    // Here a head below the desks ends it at the glass.
    const low = {"daylight.obstructionDeg": 60, "daylight.revealIn": 36, "edgeBeam.upstandIn": 0, "story.floorToFloorFt": 8, "story.ceiling": "head"};
    expect(fact(section("light", low), "No-sky line")).toBe("none: sky is seen from nowhere");
  });
});
