import {describe, expect, test} from "vitest";
import {airLevels, airParts, structureParts, type AirPart} from "../../lib/air/parts.js";
import {library} from "./model.js";

type Changes = Readonly<Record<string, unknown>>;
const rounded = (valueIn: number) => Number(valueIn.toFixed(6));
/** Where a part lies: along the building, across it and above the finished floor, in. */
const place = ({x0In, x1In, y0In, y1In, z0In, z1In}: AirPart) => [x0In, x1In, y0In, y1In, z0In, z1In].map(rounded);
const placed = (parts: readonly AirPart[]) => Object.fromEntries(parts.map((part) => [part.id, place(part)]));
const ducts = (changes: Changes) => placed(airParts(library(changes)));
const structure = (changes: Changes) => placed(structureParts(library(changes)));
/** Of parts by their names those that begin so. */
const named = (parts: Readonly<Record<string, readonly number[]>>, start: string) => Object.fromEntries(Object.entries(parts).filter(([id]) => id.startsWith(start)));

/** One main in the middle of two rows of bays, 15 ft of span on either side of a line of girders at 480 in: it serves 30 ft along them. */
const MIDDLE = {"air.place": "middle", "air.rows": 2, "services.servedFt2": 2400};

describe("the boxes of one main by hand: 34 in of deck in 15 ft of story, its soffit 146 in up", () => {
  // Hangers of 2 in: the main's top is at 144 in. Its collars reach up to the soffit, its feeders lie from there 10 in up.
  test("along the ledge: from the riser beside the first stem to the outside of the last feeder, each feeder from the main to 12 in before the girder", () => {
    const feeder = (i: number, at: number) => ({[`feeder ${i} collar`]: [at - 7, at + 7, 6, 32, 144, 146], [`feeder ${i} far to the end`]: [at - 7, at + 7, 6, 480 - 16 - 12, 146, 156]});
    expect(ducts({})).toEqual({
      // Half space of 26.125 in at the end; 1,600 cfm in a riser 24 in wide inside take 10 in, and 2 in of insulation.
      "riser 1": [7.0625, 19.0625, 6, 32, 0, 180],
      "main 1": [19.0625, 427, 6, 32, 134, 144],
      ...feeder(0, 60), ...feeder(2, 180), ...feeder(4, 300), ...feeder(6, 420),
    });
  });

  test("between two risers: each turned up from the main, the return's risers 2 in beside them", () => {
    const two = ducts({"air.way": "plenum", "air.riser": "ends"});
    // The second takes the space over the joint at 480 in, where this main's floor ends.
    expect(named(two, "riser")).toEqual({"riser 1": [8.0625, 18.0625, 6, 32, 0, 180], "riser 2": [475, 485, 6, 32, 0, 180]});
    expect(named(two, "return")).toEqual({"return riser 1": [8.0625, 18.0625, 34, 60, 0, 180], "return riser 2": [475, 485, 34, 60, 0, 180]});
    expect(named(two, "main")).toEqual({"main 1": [18.0625, 475, 6, 32, 134, 144]});
  });

  test("across the floor with its return beside it: both cut at the riser in the middle, feeders of both to both sides", () => {
    const parts = ducts({"air.way": "trunk", "air.riser": "middle", "air.place": "across", "air.acrossFt": 15});
    // 26 in of main, 2 in, 20 in of return: 48 in around 180 in. The riser stands over the joint at 240 in.
    expect(named(parts, "main")).toEqual({"main 1": [53, 232, 156, 182, 134, 144], "main 2": [248, 427, 156, 182, 134, 144]});
    expect(named(parts, "riser")).toEqual({"riser 1": [234, 246, 156, 182, 0, 180]});
    // The return gathers from two spaces over joints by feeders of 14 in and 2 in of insulation.
    expect(named(parts, "return")).toEqual({
      "return main 1": [112, 232, 184, 204, 134, 144], "return main 2": [248, 368, 184, 204, 134, 144], "return riser 1": [232, 248, 184, 204, 0, 180],
      "return feeder 1 collar": [112, 128, 184, 204, 144, 146], "return feeder 1 near to the end": [112, 128, 2 + 12, 184, 146, 156], "return feeder 1 far to the end": [112, 128, 184, 452, 146, 156],
      "return feeder 5 collar": [352, 368, 184, 204, 144, 146], "return feeder 5 near to the end": [352, 368, 14, 184, 146, 156], "return feeder 5 far to the end": [352, 368, 184, 452, 146, 156],
    });
    expect(named(parts, "feeder 2")).toEqual({"feeder 2 collar": [173, 187, 156, 182, 144, 146], "feeder 2 near to the end": [173, 187, 14, 156, 146, 156], "feeder 2 far to the end": [173, 187, 156, 452, 146, 156]});
  });

  test("whose return has grilles of its own: as long as the main, without feeders", () => {
    const parts = ducts({"air.way": "trunk", "air.returnEvery": 0});
    expect(Object.keys(named(parts, "return"))).toEqual(["return main 1", "return riser 1"]);
    expect(parts["return main 1"]?.[1]).toBe(427);
  });

  test("whose return in each feeder is less than a cubic foot a minute: without them", () => {
    const names = (exhaustPercent: number) => Object.keys(ducts({"air.way": "trunk", "services.airCfmPerFt2": 0.003, "air.exhaustPercent": exhaustPercent}));
    // 4.8 cfm go in; of three spaces each gives back 1.6, or 0.8 where half is exhausted.
    expect(names(0).filter((id) => id.startsWith("return feeder"))).toHaveLength(6);
    expect(names(50).filter((id) => id.startsWith("return feeder"))).toHaveLength(0);
    expect(names(50)).toContain("return main 1");
  });
});

describe("a feeder that passes the girder between two rows of bays", () => {
  // The girder's foot is 32 in wide, from 464 to 496 in, and 12 in below the soffit; its web from 472 to 488 in.
  test("goes straight over one on which the deck sits", () => {
    expect(named(ducts({...MIDDLE, "girder.kind": "rectangle"}), "feeder 0")).toEqual({
      "feeder 0 collar": [53, 67, 494, 520, 144, 146], "feeder 0 near to the end": [53, 67, 14, 494, 146, 156], "feeder 0 far to the end": [53, 67, 494, 946, 146, 156],
    });
  });

  test("goes through the web of one that rises beside it, by an opening as long as the web is wide", () => {
    const parts = airParts(library(MIDDLE));
    expect(named(placed(parts), "feeder 0")).toEqual({
      "feeder 0 collar": [53, 67, 500, 526, 144, 146],
      "feeder 0 near to line 1": [53, 67, 14, 472, 146, 156], "feeder 0 near through line 1": [53, 67, 472, 488, 146, 156], "feeder 0 near to the end": [53, 67, 488, 500, 146, 156],
      "feeder 0 far to the end": [53, 67, 500, 946, 146, 156],
    });
    expect(parts.filter(({opening}) => opening).map(({id}) => id)).toEqual([0, 2, 4].map((i) => `feeder ${i} near through line 1`));
  });

  test("goes down 10 in before it, along an inch under its foot and up behind it, where the ceiling leaves room for that; the main keeps away by as much", () => {
    const parts = ducts({...MIDDLE, "story.ceiling": "below", "story.ceilingDropIn": 10});
    // Foot at 146 - 12 = 134 in: the feeder from 133 down to 123. The main lies 4 in and the leg's 11 in beside the foot, at 511 in.
    expect(named(parts, "feeder 2")).toEqual({
      "feeder 2 collar": [173, 187, 511, 537, 144, 146],
      "feeder 2 near to line 1": [173, 187, 14, 453, 146, 156], "feeder 2 near down at line 1": [173, 187, 453, 463, 123, 156], "feeder 2 near under line 1": [173, 187, 463, 497, 123, 133],
      "feeder 2 near up at line 1": [173, 187, 497, 507, 123, 156], "feeder 2 near to the end": [173, 187, 507, 511, 146, 156],
      "feeder 2 far to the end": [173, 187, 511, 946, 146, 156],
    });
  });

  test("passes two girders one after the other from one row through a second to a third", () => {
    const parts = ducts({"bay.baysAcross": 3, "air.rows": 3, "services.servedFt2": 3600});
    expect(Object.keys(named(parts, "feeder 0"))).toEqual(["collar", "far to line 1", "far through line 1", "far to line 2", "far through line 2", "far to the end"].map((name) => `feeder 0 ${name}`));
    expect(parts["feeder 0 far to line 2"]).toEqual([53, 67, 488, 952, 146, 156]);
    expect(parts["feeder 0 far to the end"]).toEqual([53, 67, 968, 1440 - 2 - 12, 146, 156]);
  });

  test("ends 12 in before the girders that bound its rows", () => {
    const parts = ducts({"bay.baysAcross": 4, "air.place": "across", "air.acrossFt": 60});
    expect([parts["feeder 0 near to the end"]?.[2], parts["feeder 0 far to the end"]?.[3]]).toEqual([480 + 16 + 12, 960 - 16 - 12]);
    // Columns wider than the girder's foot stand farther in.
    expect(ducts({"column.sideIn": 36})["feeder 0 far to the end"]?.[3]).toBe(480 - 18 - 12);
  });
});

describe("a return between stems", () => {
  test("has the space from soffit to flange on both sides of a girder's web, and a collar as wide as a branch over the return duct", () => {
    // Stems 7.75 in wide under the flange, 90 and 150 in along the building; flange of 4 in with its topping, 30 in above the soffit.
    expect(named(ducts({...MIDDLE, "air.way": "stems"}), "return space 1")).toEqual({
      "return space 1 1": [93.875, 146.125, 14, 472, 146, 176], "return space 1 2": [93.875, 146.125, 488, 946, 146, 176], "return space 1 collar": [113, 127, 528, 576, 144, 146],
    });
    expect(Object.keys(named(ducts({...MIDDLE, "air.way": "stems", "girder.kind": "rectangle"}), "return space 1"))).toEqual(["return space 1 1", "return space 1 collar"]);
    // The girder that bounds a row does not part it, and a collar is no wider than the stems' feet leave: 60 - 4.75 in.
    const [along, wide] = [{"air.way": "stems"}, {"air.way": "stems", "services.branchWidthIn": 72}].map((changes) => named(ducts(changes), "return space 1"));
    expect(along?.["return space 1 1"]).toEqual([93.875, 146.125, 14, 452, 146, 176]);
    expect(Object.keys(along ?? {})).toHaveLength(2);
    const [from, to] = wide?.["return space 1 collar"] ?? [];
    expect((to ?? NaN) - (from ?? NaN)).toBeCloseTo(55.25, 6);
  });
});

describe("below planks of 8 in with 2 in of topping, 170 in up", () => {
  const ACROSS = {"deck.member": "4HC8", "air.place": "across", "air.acrossFt": 15};

  test("feeders leave the main at its sides, as high as it is", () => {
    const parts = ducts({...ACROSS, "air.riser": "middle"});
    expect(named(parts, "main")).toEqual({"main 1": [53, 234, 167, 193, 158, 168], "main 2": [246, 427, 167, 193, 158, 168]});
    expect(named(parts, "feeder 0")).toEqual({"feeder 0 near to the end": [53, 67, 14, 167, 158, 168], "feeder 0 far to the end": [53, 67, 193, 452, 158, 168]});
  });

  test("they pass over it where a return duct lies beside it, and both hang by as much lower", () => {
    const parts = ducts({...ACROSS, "air.way": "trunk"});
    expect(named(parts, "feeder 0")).toEqual({"feeder 0 near to the end": [53, 67, 14, 149, 158, 168], "feeder 0 far to the end": [53, 67, 149, 452, 158, 168]});
    expect([parts["main 1"], parts["return main 1"]]).toEqual([[36, 427, 149, 175, 148, 158], [36, 427, 177, 211, 148, 158]]);
    expect(Object.keys(named(parts, "return"))).toEqual(["return main 1", "return riser 1"]);
    expect(airLevels(library({...ACROSS, "air.way": "trunk"}))).toEqual({soffit: 170, main: [148, 158], feeder: [158, 168]});
  });

  test("there are none where the main reaches as far as they would", () => {
    // A row of 120 in, of which ledge and girder leave 102: a main of 94 in ends at 100 in, a feeder would end at 120 - 16 - 12 = 92 in.
    const narrow = {"deck.member": "4HC8", "bay.spanFt": 10, "services.servedFt2": 1200};
    expect(Object.keys(named(ducts({...narrow, "services.mainWidthIn": 94}), "feeder"))).toEqual([]);
    expect(Object.keys(named(ducts({...narrow, "services.mainWidthIn": 80}), "feeder")).length).toBeGreaterThan(0);
  });
});

describe("the structure around one main by hand", () => {
  test("has edge beams outside of the bearings, ledges to 2 in inside of them, and a girder's foot below the deck and its web beside it", () => {
    const parts = structure({});
    // Up to 240 in past the 480 in that the main serves.
    expect(named(parts, "first")).toEqual({"first edge beam": [0, 720, -20, -6, 133, 180], "first ledge": [0, 720, -6, 2, 133, 146]});
    expect(named(parts, "last")).toEqual({"last edge beam": [0, 720, 966, 980, 133, 180], "last ledge": [0, 720, 958, 966, 133, 146]});
    expect(named(parts, "girder")).toEqual({"girder 1": [0, 720, 464, 496, 134, 146], "girder 1 web": [0, 720, 472, 488, 146, 180]});
    expect(parts["column 2.2"]).toEqual([350, 370, 470, 490, 0, 180]);
    expect([parts["column 1.1"]?.slice(2, 4), parts["column 3.3"]?.slice(2, 4)]).toEqual([[-23, -3], [963, 983]]);
    expect(parts["flange"]).toEqual([0, 720, 0, 960, 176, 180]);
  });

  test("has each stem as wide as it is at the top of a feeder, and above that as under the flange", () => {
    const parts = structure({});
    // 4.75 in at the foot and 7.75 in 30 in higher: 5.75 in at the top of a feeder of 10 in.
    expect(named(parts, "stem 2 ")).toEqual({"stem 2 foot": [87.125, 92.875, 0, 960, 146, 156], "stem 2 head": [86.125, 93.875, 0, 960, 156, 176]});
    // Tees of 10 ft along 60 ft: twelve stems.
    expect(Object.keys(named(parts, "stem"))).toHaveLength(24);
    // A feeder as deep as the space leaves no head of a stem above it.
    for (const deepIn of [30, 36]) expect(named(structure({"services.branchDepthIn": deepIn}), "stem 2 ")).toEqual({"stem 2 foot": [86.125, 93.875, 0, 960, 146, 176]});
  });

  test("has its top a finish below the next floor's, and is as long as the building at the most", () => {
    // An inch of finish: deck and beams end an inch lower, and so does the soffit.
    const finished = structure({"story.finishIn": 1});
    expect([finished["flange"], finished["first edge beam"], finished["girder 1 web"]].map((part) => part?.slice(4))).toEqual([[175, 179], [132, 179], [145, 179]]);
    expect(finished["column 1.1"]?.slice(4)).toEqual([0, 179]);
    expect(structure({"services.servedFt2": 4800})["flange"]?.[1]).toBe(1440);
    expect(structure({"deck.member": "4HC8", "story.finishIn": 1})["deck"]).toEqual([0, 720, 0, 960, 169, 179]);
  });

  test("has edge beams below the deck without ledges, and a girder below it without a web beside it", () => {
    const parts = structure({"edgeBeam.kind": "below", "girder.kind": "rectangle"});
    expect([named(parts, "first"), named(parts, "girder")].map((some) => Object.keys(some))).toEqual([["first edge beam"], ["girder 1"]]);
    expect(parts["first edge beam"]?.[5]).toBe(146);
    expect(parts["girder 1"]?.[5]).toBe(146);
    expect(parts["girder 1"]?.slice(2, 4)).toEqual([472, 488]);
    // One with pockets has no ledge: its web of 14 in rises beside the deck, which bears in it, and reaches as far in as the ledge did.
    expect(named(structure({"edgeBeam.kind": "pockets"}), "first")).toEqual({"first edge beam": [0, 720, -12, 2, 133, 180]});
  });
});
