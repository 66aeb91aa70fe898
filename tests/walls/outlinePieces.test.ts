import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import type {OutlinePiece, PieceKind, PlanPoint} from "../../lib/walls/pieces.js";
import {catalog, seed} from "../support/designs.js";
import {outlineOf} from "./outlineOf.js";

/** The library, 4 bays of 30 ft by 2 of 40: column lines 360 in and 480 in apart. */
const library = (changes: Readonly<Record<string, unknown>> = {}) => withValues(seed("branch-library"), changes);
const ofKind = (changes: Readonly<Record<string, unknown>>, kind: PieceKind): OutlinePiece[] => outlineOf(library(changes)).filter((piece) => piece.kind === kind);
const ft3 = ({plan, bottomIn, topIn}: OutlinePiece) => (Math.abs(plan.reduce((sum, [x, y], i) => {
  const [nx, ny] = plan[(i + 1) % plan.length] as PlanPoint;
  return sum + (x * ny - nx * y) / 2;
}, 0)) * (topIn - bottomIn)) / 1728;
/** From where to where a piece reaches: along, across and up, in. */
const reach = ({plan, bottomIn, topIn}: OutlinePiece) => [
  [Math.min(...plan.map(([x]) => x)), Math.max(...plan.map(([x]) => x))], [Math.min(...plan.map(([, y]) => y)), Math.max(...plan.map(([, y]) => y))], [bottomIn, topIn],
];

describe("the pieces of a building's outline", () => {
  test.each([
    ["branch-library", {"walls.shortSide": "solid panel"}], ["branch-library", {"walls.shortSide": "solid panel", "roof.given": "deck"}],
    ["branch-library", {"walls.shortSide": "solid panel", "walls.panelSupport": "columns", "walls.panelWidthFt": 6}],
    ["branch-library", {"walls.shortSide": "solid panel", "walls.panelSupport": "columns", "bay.baysAcross": 1, "roof.given": "deck"}],
    ["branch-library", {"walls.shortSide": "solid panel", "walls.panelStories": 1, "bay.floors": 3, "walls.panelWidthFt": 7}],
    ["branch-library", {"walls.shortSide": "solid panel", "walls.panelStories": 2, "bay.floors": 4}],
    ["branch-library", {"walls.shortSide": "spandrel", "walls.spandrelPieces": 3}], ["branch-library", {"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside", "walls.spandrelPieces": 2}],
    ["branch-library", {"walls.shortSide": "spandrel", "roof.given": "deck"}], ["branch-library", {"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside", "bay.baysAcross": 3}],
    ["branch-library", {"walls.shortSide": "not counted", "edgeBeam.kind": "below", "walls.teeEnds": "concrete", "roof.given": "deck"}],
    ["parking-structure", {"walls.shortSide": "spandrel"}],
  ] as const)("of a %s with %o hold as much concrete as its materials count", (starter, changes) => {
    const design = withValues(seed(starter), {"walls.parapetIn": 0, "walls.glassShare": 0, ...changes});
    const drawn = outlineOf(design).filter(({kind}) => ["panel", "spandrel", "closing strip", "parapet"].includes(kind)).reduce((sum, piece) => sum + ft3(piece), 0);
    expect(drawn).toBeGreaterThan(100);
    expect(drawn / 27).toBeCloseTo(evaluate(design, catalog).walls.materials.concreteYd3, 6);
  });

  test("leave windows out of the concrete, and count insulation as none", () => {
    const concrete = (changes: Readonly<Record<string, unknown>>) => evaluate(library({"walls.parapetIn": 0, ...changes}), catalog).walls.materials.concreteYd3;
    expect(concrete({"walls.glassShare": 0.25}) / concrete({"walls.glassShare": 0})).toBeCloseTo(0.75, 9);
    // 3 + 6 in of concrete beside 3 in of insulation.
    const drawn = ofKind({"walls.parapetIn": 0}, "panel").reduce((sum, piece) => sum + ft3(piece), 0);
    expect(concrete({"walls.glassShare": 0}) / (drawn / 27)).toBeCloseTo(9 / 12, 9);
  });

  test("stand on their lines: 15 columns of 20 in, those of the outer lines up to the beams' tops, those between to the deck's", () => {
    const columns = ofKind({}, "column");
    expect(columns).toHaveLength(15);
    expect(reach(columns[1] as OutlinePiece)).toEqual([[-10, 10], [470, 490], [0, 351.75]]);
    expect(reach(columns[14] as OutlinePiece)).toEqual([[1430, 1450], [950, 970], [0, 363.75]]);
    // A parapet comes down no farther than that; a roof of two loads is at 360 in, under beams that stand 29 3/4 in above it.
    expect(reach(ofKind({"roof.given": "loads", "walls.parapetIn": 36}, "column")[0] as OutlinePiece)[2]).toEqual([0, 360]);
    expect(reach(ofKind({"roof.given": "loads", "walls.parapetIn": 0}, "column")[0] as OutlinePiece)[2]).toEqual([0, 389.75]);
  });

  test("all run the same way round on the plan, those mirrored to the far sides too", () => {
    const turn = ({plan}: OutlinePiece) => Math.sign(plan.reduce((sum, [x, y], i) => {
      const [nx, ny] = plan[(i + 1) % plan.length] as PlanPoint;
      return sum + (x * ny - nx * y);
    }, 0));
    for (const corner of ["long", "short", "miter"]) {
      const pieces = outlineOf(library({"walls.shortSide": "spandrel", "walls.corner": corner, "edgeBeam.kind": "below", "walls.teeEnds": "concrete"}));
      expect(new Set(pieces.map(turn))).toEqual(new Set([1]));
    }
  });

  test("set an edge beam with its ledge between each two columns of both long sides, on every level", () => {
    const beams = (changes: Readonly<Record<string, unknown>>) => ofKind(changes, "edge beam").map(reach);
    expect(beams({})).toHaveLength(16);
    // Soffits at 145.75 and, under 26 in of roof deck, at 325.75 in: a ledge 13 in deep below them. The beams stand 30 in above the floor's structure at 179.75 in, 12 in above the roof's at 351.75 in.
    expect(beams({})[0]).toEqual([[11, 349], [-7, 7], [132.75, 209.75]]);
    expect(beams({})[15]).toEqual([[1091, 1429], [953, 967], [312.75, 363.75]]);
    // One that lies below the deck ends at its soffit, however high a parapet or an upstand is asked for.
    expect(beams({"edgeBeam.kind": "below"}).map(([, , up]) => up?.[1])).toEqual([...Array<number>(8).fill(145.75), ...Array<number>(8).fill(325.75)]);
    // Under a roof of two loads they are the floors': 30 in above its structure at 359.75 in.
    expect(beams({"roof.given": "loads"})[15]?.[2]).toEqual([312.75, 389.75]);
    const ledges = (kind: string) => ofKind({"edgeBeam.kind": kind, "bay.baysAcross": 1}, "ledge").map(reach);
    expect(ledges("ledge")).toHaveLength(16);
    expect([ledges("ledge")[0], ledges("ledge")[1]]).toEqual([[[11, 349], [7, 15], [132.75, 145.75]], [[11, 349], [465, 473], [132.75, 145.75]]]);
    expect([ledges("pockets"), ledges("below")]).toEqual([[], []]);
  });

  test("hang a girder between each two columns in the middle, and none in a building of one bay", () => {
    const girders = ofKind({"girder.ledgeDepthIn": 12}, "girder");
    expect(girders).toHaveLength(8);
    // 16 in wide about 480 in; columns of 20 in and a joint of 1 in at each end. From the structural floor, 179.75 in, 34 in of deck and 12 in of ledge down.
    expect(reach(girders[0] as OutlinePiece)).toEqual([[11, 349], [472, 488], [133.75, 179.75]]);
    // Under the roof, 26 in of deck: 351.75 to 313.75 in.
    expect(girders.map((piece) => reach(piece)[2])).toEqual([...Array<number[]>(4).fill([133.75, 179.75]), ...Array<number[]>(4).fill([313.75, 351.75])]);
    const ledges = ofKind({"girder.ledgeDepthIn": 12}, "ledge").map(reach);
    expect(ledges).toContainEqual([[11, 349], [464, 472], [133.75, 145.75]]);
    expect(ledges).toContainEqual([[11, 349], [488, 496], [133.75, 145.75]]);
    // A rectangle carries the deck on its top.
    const below = ofKind({"girder.kind": "rectangle", "girder.depthIn": 30}, "girder");
    expect(reach(below[0] as OutlinePiece)[2]).toEqual([115.75, 145.75]);
    expect(ofKind({"girder.kind": "rectangle"}, "ledge")).toHaveLength(16);
    expect(ofKind({"bay.baysAcross": 1}, "girder")).toEqual([]);
  });

  test("lay the deck from beam to beam, into the pockets or over the beams, as these are", () => {
    const deck = (changes: Readonly<Record<string, unknown>>) => ofKind(changes, "deck").map(reach);
    // A web of 14 in and a joint of 1 in; the girder's 16 in and its joints.
    // Whole from beam to girder on both levels, whose decks are level.
    expect(deck({})).toHaveLength(4);
    expect(deck({})[0]).toEqual([[0, 1440], [8, 471], [145.75, 179.75]]);
    expect(deck({})[1]?.[1]).toEqual([489, 952]);
    expect(deck({"edgeBeam.kind": "below"})[0]?.[1]).toEqual([-6, 471]);
    expect(deck({"edgeBeam.kind": "pockets", "edgeBeam.ledgeProjectionIn": 6})[0]?.[1]).toEqual([2, 471]);
    // Over a rectangle two tees meet, half a joint from its middle.
    expect(deck({"girder.kind": "rectangle"})[0]?.[1]).toEqual([8, 479.5]);
    // A roof that falls by its bearings to the girder, 10 in over 40 ft, is drawn level in halves.
    const stepped = deck({"roof.drainage": "bearing"}).slice(2);
    expect(stepped.map(([, across, up]) => [across?.[0], across?.[1], up?.[1]])).toEqual([[8, 240, 361.75], [240, 471, 351.75], [489, 720, 351.75], [720, 952, 361.75]]);
  });

  test("close the deck's edge by strips where walls pass the columns, and by none where nothing is to close", () => {
    expect(ofKind({"walls.shortSide": "not counted"}, "strip")).toEqual([]);
    // From the deck's end to a joint before the panels: 10 in, clear of columns and beams; flange and topping 4 in thick.
    expect(reach(ofKind({}, "strip")[0] as OutlinePiece)).toEqual([[-10, 0], [10, 470], [175.75, 179.75]]);
    // Beams wider than the columns end it at their face, unless they lie below it; between two bays the columns do.
    const across = (kind: string) => ofKind({"edgeBeam.kind": kind, "edgeBeam.webWidthIn": 24, "edgeBeam.ledgeProjectionIn": 6}, "strip").slice(0, 4).map((piece) => reach(piece)[1]);
    expect(across("pockets")).toEqual([[12, 470], [12, 470], [490, 948], [490, 948]]);
    expect(across("below")).toEqual([[10, 470], [10, 470], [490, 950], [490, 950]]);
    // What whole tees leave of 124 ft is part of the last strip: 48 + 10 in.
    const wide = ofKind({"bay.beamSpanFt": 31, "walls.endFill": "strip"}, "strip").map(reach);
    expect(wide[1]?.[0]).toEqual([1440, 1498]);
  });

  test("close the deck's ends in front of beams that lie below it, a level's deck high", () => {
    const strips = ofKind({"edgeBeam.kind": "below", "walls.teeEnds": "concrete", "walls.teeEndStripIn": 4}, "closing strip");
    // 4 bays on 2 sides and 2 levels; a web of 14 in; 34 in under the floor's structure, 26 in under the roof's.
    expect(strips).toHaveLength(16);
    expect(reach(strips[0] as OutlinePiece)).toEqual([[11, 349], [-11, -7], [145.75, 179.75]]);
    expect(reach(strips[8] as OutlinePiece)[2]).toEqual([325.75, 351.75]);
  });

  test("clad a short side from corner to corner and from the ground to the roof, by panels, spandrels or light cladding, or not at all", () => {
    // The wall stands an inch outside the columns, 12 in thick; nine panels with eight joints from 10 in before to 10 in past the corner columns' lines.
    const panels = ofKind({}, "panel");
    expect(panels).toHaveLength(18);
    expect(reach(panels[0] as OutlinePiece)[0]).toEqual([-23, -11]);
    expect([reach(panels[0] as OutlinePiece)[1]?.[0], reach(panels[16] as OutlinePiece)[1]?.[1]]).toEqual([-10, expect.closeTo(970, 9)]);
    expect(reach(panels[0] as OutlinePiece)[2]).toEqual([0, 404]);
    const clad = ofKind({"walls.shortSide": "cladding", "walls.parapetIn": 0}, "cladding");
    expect(clad.map((piece) => reach(piece).slice(1))).toEqual([[[-10, 970], [0, 368]], [[-10, 970], [0, 368]]]);
    // Spandrels between the columns are cut as beams are; past them they meet in joints over their middles. 30 in up, 18 in down.
    expect(reach(ofKind({"walls.shortSide": "spandrel"}, "spandrel")[0] as OutlinePiece)).toEqual([[-9, -1], [11, 469], [161.75, 209.75]]);
    const outside = ofKind({"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside"}, "spandrel").map(reach);
    expect([outside[0]?.[1], outside[2]?.[1]]).toEqual([[-10, 479.625], [480.375, 970]]);
    // The topmost ends under the parapet, at the roof's highest line.
    expect(outside.at(-1)?.[2]).toEqual([expect.any(Number), 368]);
    const open = {"walls.shortSide": "not counted"};
    for (const kind of ["panel", "spandrel", "cladding"] as const) expect(ofKind(open, kind)).toEqual([]);
  });

  test("cut spandrels into equal pieces that meet over posts, a joint of 3/4 in between two", () => {
    const first = (place: string, pieces: number) => ofKind({"walls.shortSide": "spandrel", "walls.spandrelPlace": place, "walls.spandrelPieces": pieces}, "spandrel").map(reach)
      .filter(([x, , up]) => (x?.[0] ?? 0) < 0 && (up?.[1] ?? 0) < 300).map(([, across]) => across?.map((at) => Number(at.toFixed(4))));
    // 458 in between two columns: (458 - 3/4)/2 = 228.625 in each.
    expect(first("between", 2)).toEqual([[11, 239.625], [240.375, 469], [491, 719.625], [720.375, 949]]);
    expect(first("between", 3).slice(0, 3)).toEqual([[11, 163.1667], [163.9167, 316.0833], [316.8333, 469]]);
    // Past the columns at the bays' halves, out to the corner columns' faces.
    expect(first("outside", 2)).toEqual([[-10, 239.625], [240.375, 479.625], [480.375, 719.625], [720.375, 970]]);
  });

  test("end at the top of a parapet, or without one at a roof's highest line", () => {
    const tops = (changes: Readonly<Record<string, unknown>>, kind: PieceKind) => Math.max(...ofKind(changes, kind).map(({topIn}) => topIn));
    expect(tops({"walls.panelSupport": "columns", "walls.parapetIn": 36}, "panel")).toBeCloseTo(404, 9);
    expect(tops({"walls.shortSide": "spandrel", "walls.parapetIn": 0, "walls.spandrelUpstandIn": 0}, "spandrel")).toBe(368);
    expect(tops({"walls.shortSide": "spandrel", "walls.parapetIn": 0, "walls.spandrelUpstandIn": 30}, "spandrel")).toBe(389.75);
    // Along sides of which nothing is said a parapet runs to the columns' outer faces.
    expect(ofKind({"walls.shortSide": "not counted", "walls.parapetIn": 36}, "parapet").map((piece) => reach(piece)[0])).toEqual(Array<number[]>(4).fill([-10, 1450]));
  });

  test("lie row on row from column to column, a joint between two rows and over each column line", () => {
    const lying = ofKind({"walls.panelSupport": "columns", "walls.panelWidthFt": 8, "walls.parapetIn": 0, "roof.given": "loads"}, "panel");
    // A story of 180 in in two rows of 89.25 in and a joint above each; the topmost in two with one joint: 89.625 in.
    const up = [...new Set(lying.map((piece) => reach(piece)[2]?.map((at) => Number(at.toFixed(3))).join(" to ")))];
    expect(up).toEqual(["0 to 89.25", "90 to 179.25", "180 to 269.625", "270.375 to 360"]);
    expect(reach(lying[0] as OutlinePiece)[1]).toEqual([-10, 479.625]);
    expect(reach(lying[2] as OutlinePiece)[1]).toEqual([480.375, 970]);
  });

  test("have a parapet only where one is asked for, on the beams and over the columns, and on the short sides where their walls stop below it", () => {
    expect(ofKind({"walls.parapetIn": 0}, "parapet")).toEqual([]);
    const tops = (changes: Readonly<Record<string, unknown>>) => ofKind(changes, "parapet").map((piece) => reach(piece)[2] as number[]);
    // On the roof's beams, 363.75 in, to the highest line of the roof, and 36 in more; panels rise by themselves.
    expect(tops({})).toEqual([[363.75, 368], [363.75, 368], [368, 404], [368, 404]]);
    expect(tops({"walls.shortSide": "cladding"}).filter(([from, to]) => from === 368 && to === 404)).toHaveLength(4);
    // Below the roof's highest line they end a joint of 3/4 in before the short sides' walls, 11 in out; above it light cladding 6 in thick may be passed.
    const along = (changes: Readonly<Record<string, unknown>>) => ofKind({"walls.shortSide": "cladding", ...changes}, "parapet").map(reach).filter(([, across]) => (across?.[1] ?? 0) - (across?.[0] ?? 0) < 10)
      .map(([x, , up]) => `${x?.join(" to ")}, ${up?.join(" to ")}`);
    const low = "-10.25 to 1450.25, 363.75 to 368";
    expect(along({"walls.corner": "long"})).toEqual([low, low, "-17 to 1457, 368 to 404", "-17 to 1457, 368 to 404"]);
    expect(along({"walls.corner": "short"})).toEqual([low, low, "-10.25 to 1450.25, 368 to 404", "-10.25 to 1450.25, 368 to 404"]);
    expect(along({"walls.shortSide": "solid panel"})).toEqual([low, low, "-10.25 to 1450.25, 368 to 404", "-10.25 to 1450.25, 368 to 404"]);
    // Over light cladding that of a short side is as thick as it, from joint to joint between the long ones, or past them.
    const short = (corner: string) => ofKind({"walls.shortSide": "cladding", "walls.corner": corner}, "parapet").map(reach).filter(([x]) => (x?.[1] ?? 0) - (x?.[0] ?? 0) < 10);
    expect(short("long")).toEqual([[[-17, -11], [-0.25, 960.25], [368, 404]], [[1451, 1457], [-0.25, 960.25], [368, 404]]]);
    expect(short("short").map(([, across]) => across)).toEqual([[-7, 967], [-7, 967]]);
    // Square where one reaches the corner, on its diagonal where both do.
    const plans = (corner: string) => ofKind({"walls.shortSide": "cladding", "walls.corner": corner}, "parapet").filter(({bottomIn, topIn}) => bottomIn === 368 && topIn === 404).map(({plan}) => plan);
    expect(plans("long")[0]).toEqual([[-17, -0.25], [-11, -0.25], [-11, 960.25], [-17, 960.25]]);
    expect(plans("long")[2]).toEqual([[-17, -7], [1457, -7], [1457, -1], [-17, -1]]);
    expect(plans("miter")[0]).toEqual([[-17, -7], [-11, -1], [-11, 961], [-17, 967]]);
    expect(plans("miter")[2]).toEqual([[-17, -7], [1457, -7], [1451, -1], [-11, -1]]);
    // Between beams that stand 29 3/4 in above a roof of two loads it comes down to the columns, over all five lines of both sides.
    expect(tops({"roof.given": "loads"}).filter(([from, to]) => from === 360 && to === 389.75)).toHaveLength(10);
  });
});
