import {describe, expect, test} from "vitest";
import {boxesAcross, pipesUnderIn, type Casing} from "../../lib/air/casing.js";
import {checkOf, library} from "./model.js";

type Changes = Readonly<Record<string, unknown>>;

describe("boxes that hang over a floor", () => {
  const boxes = (changes: Changes) => {
    const {design, services} = library({"air.run": "box", "services.mainDepthIn": 16, ...changes});
    return boxesAcross(design, services.ducts).map(({y0In, y1In, footIn}) => [y0In, y1In, footIn]);
  };

  test("are the first main's and, in the other rows of bays, its like: beside the other ledge its mirror image", () => {
    // Beside the ledge from 6 to 32 in, an inch of air and one of board at each side: 4 to 34 in of 960 in. 2 + 16 + 1 in hang 6 in below the plenum's 13.
    const footIn = library({}).story.ceilingHeightIn - 6;
    expect(boxes({})).toEqual([[4, 34, footIn], [926, 956, footIn]]);
    // Mains one after the other in one row are over one another across the building.
    expect(boxes({"services.servedFt2": 400})).toEqual([[4, 34, footIn], [926, 956, footIn]]);
    expect(boxes({"air.rows": 2})).toEqual([[4, 34, footIn]]);
  });

  test("lie in a row between as far from its line as the first from its own", () => {
    const three = boxes({"bay.baysAcross": 3});
    expect(three.map(([y0In, y1In]) => [y0In, y1In])).toEqual([[4, 34], [484, 514], [1406, 1436]]);
  });

  test("that reach just to a line still lie in their own row, mirrored", () => {
    const of = (y0In: number, y1In: number) => {
      const {design, services: {ducts}} = library({"air.run": "box"});
      const casing = {...ducts?.casing as Casing, y0In, y1In, dropIn: 5, footIn: 100};
      return boxesAcross(design, ducts && {...ducts, casing}).map((one) => [one.y0In, one.y1In]);
    };
    expect([of(0, 40), of(440, 480)]).toEqual([[[0, 40], [920, 960]], [[440, 480], [480, 520]]]);
    // One that reaches past its row would reach into another's: there it lies as in its own.
    expect([of(-1, 40), of(440, 481)]).toEqual([[[-1, 40], [479, 520]], [[440, 481], [920, 961]]]);
  });

  test("are none where none drops, or no air comes through ducts", () => {
    const {design, services} = library({"air.run": "box", "services.mainDepthIn": 4});
    expect(boxesAcross(design, services.ducts)).toEqual([]);
    expect(boxesAcross(design, undefined)).toEqual([]);
    expect(boxesAcross(design, library({}).services.ducts)).toEqual([]);
  });
});

describe("sprinkler pipes without a ceiling", () => {
  // 146 in under the deck; a main of 16 in hangs in a box of 19 in down to 127 in; pipes take 4 in.
  const OPEN = {"story.ceiling": "none", "services.mainDepthIn": 16, "air.place": "across", "air.acrossFt": 20};
  const under = (changes: Changes) => library({...OPEN, ...changes}).services.pipesUnderIn;

  test("hang below the deck, or where they pass a box below that", () => {
    expect(under({})).toBe(142);
    expect(under({"air.run": "box"})).toBe(123);
    // A strip has them above it, from a main along the ledge they keep away, and none pass where there are none.
    expect([under({"air.run": "strip"}), under({"air.run": "box", "air.place": "ledge"}), under({"air.run": "box", "services.sprinklerIn": 0})]).toEqual([142, 142, 146]);
    // A box that is stated not to drop leaves them below the deck.
    expect(under({"air.run": "box", "air.casing": "stated", "air.casingDropIn": 0})).toBe(142);
    expect(library({"air.run": "box"}).services.pipesUnderIn).toBeUndefined();
    expect(pipesUnderIn(undefined, {alongLedge: false, underDeckIn: 100, sprinklerIn: 3})).toBe(97);
  });

  test("say whether they pass a box, and what mends that: a flatter duct, or a shallower box where its size is stated", () => {
    const low = {...OPEN, "story.floorToFloorFt": 10, "air.run": "box", "services.mainDepthIn": 10};
    const zones = (changes: Changes) => checkOf(library({...low, ...changes}), "service zones");
    // 86 in under the deck less 13 in of box and 4 in of pipes.
    expect(zones({})).toMatchObject({label: "Headroom under sprinkler pipes that pass the box", verdict: "fails", capacity: 69, message: expect.stringMatching(/^Where they pass under the box.* by 11 in: raise the story, a flatter duct, or keep less/) as string});
    expect(zones({"air.casing": "stated", "air.casingDropIn": 13})?.message).toMatch(/: raise the story, a shallower box, or keep less height for the pipes\.$/);
    expect(zones({"air.run": "plenum", "services.sprinklerIn": 8})).toMatchObject({label: "Headroom under sprinkler pipes", message: expect.stringMatching(/^The sprinkler pipes and a head below them collide by 2 in: raise the story, or keep/) as string});
  });
});
