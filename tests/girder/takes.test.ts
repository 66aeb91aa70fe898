import {describe, expect, test} from "vitest";
import {
  girderTakes, leastGirderDepth, leastGirderStrands, longestGirderSpan, shallowestGirder, type GirderTake, type GirderTakes, type GirderTaking,
} from "../../lib/girder/takes.js";
import type {Check} from "../../lib/checks.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {withExtraTopping} from "../../lib/member/member.js";
import {catalog, seed} from "../support/designs.js";
import {floorOf, girderOf} from "../support/madeBeams.js";

/*
 * What girders of one bay under planks take: planks load a beam evenly, so that a beam is worked out in a fraction of the time
 * that stems need. `takesAll.test.ts` tries the same searches on stems.
 */
type Changes = Readonly<Record<string, unknown>>;
const wing = (changes: Changes = {}): Design => withValues(seed("classroom-wing"), changes);
const failing = ({checks}: {readonly checks: readonly Check[]}, ids = /./) => checks.filter(({id, verdict}) => ids.test(id) && verdict === "fails");
/** The check that fails by most. */
const worst = (checks: readonly Check[]) => [...checks].sort((a, b) => b.utilization - a.utilization)[0];

describe("what a girder under planks takes", () => {
  const taking = (design: Design, mayHangIn = 100): GirderTaking => ({design, catalog, ...floorOf(design), mayHangIn});
  const words = (check: Check | undefined) => check?.label.replace("Girder: ", "");

  test("is the fewest strands: one less fails by what stops it", () => {
    const take = leastGirderStrands(taking(wing())) as GirderTake;
    expect(take.changes).toEqual({"girder.strands": take.strands});
    expect(failing(girderOf(wing(), take.changes))).toEqual([]);
    for (let fewer = 2; fewer < take.strands; fewer++) expect(failing(girderOf(wing(), {"girder.strands": fewer})), `${fewer} strands`).not.toEqual([]);
    expect(take.stops).toBe(words(worst(failing(girderOf(wing(), {"girder.strands": take.strands - 1})))));
  });

  test("is no number of strands where the ledge is what fails, and none beyond those that have places", () => {
    expect(leastGirderStrands(taking(wing({"girder.ledgeProjectionIn": 5})))).toBeUndefined();
    // A narrow foot with few places under a long span.
    const narrow = wing({"girder.webWidthIn": 8, "girder.ledgeProjectionIn": 8, "girder.ledgeDepthIn": 8, "bay.beamSpanFt": 40});
    expect(leastGirderStrands(taking(narrow))).toBeUndefined();
    expect(shallowestGirder(taking(wing({"girder.ledgeProjectionIn": 5})))).toBeUndefined();
  });

  test("is the least depth of ledge or rectangle: an inch less fails by what stops it", () => {
    for (const [design, path, from] of [
      [wing({"bay.beamSpanFt": 28}), "girder.ledgeDepthIn", 6], [wing({"girder.kind": "rectangle"}), "girder.depthIn", 12],
    ] as const) {
      const take = leastGirderDepth(taking(design)) as GirderTake;
      const depthIn = take.changes[path] as number;
      expect(Object.keys(take.changes)).toEqual([path]);
      expect(take.belowDeckIn).toBe(depthIn);
      expect(failing(girderOf(design, take.changes))).toEqual([]);
      for (let less = from; less < depthIn; less++) expect(failing(girderOf(design, {[path]: less})), `${less} in`).not.toEqual([]);
      expect(take.stops).toBe(words(worst(failing(girderOf(design, {[path]: depthIn - 1})))));
    }
  });

  test("is the least depth of either kind with as many strands as it takes, and of these the fewest", () => {
    const design = wing();
    for (const [kind, path] of [["inverted tee", "girder.ledgeDepthIn"], ["rectangle", "girder.depthIn"]] as const) {
      const take = shallowestGirder(taking(design), kind) as GirderTake;
      const depthIn = take.changes[path] as number;
      expect(take.changes).toEqual({[path]: depthIn, "girder.strands": take.strands});
      const at = (changes: Changes) => girderOf(design, {"girder.kind": kind, ...take.changes, ...changes});
      expect(failing(at({}))).toEqual([]);
      expect(at({})).toMatchObject({depthIn: take.depthIn, belowDeckIn: take.belowDeckIn, spanFt: take.spanFt});
      const most = at({}).strandsMost;
      for (let strands = 2; strands < take.strands; strands++) expect(failing(at({"girder.strands": strands})), `${kind}, ${strands} strands`).not.toEqual([]);
      for (let strands = 2; strands <= most; strands++) expect(failing(at({[path]: depthIn - 1, "girder.strands": strands})), `${kind} an inch less, ${strands} strands`).not.toEqual([]);
      expect(take.stops).toBe(words(worst(failing(at({[path]: depthIn - 1})))));
    }
    // The kind is the design's own where none is named.
    expect(shallowestGirder(taking(wing({"girder.kind": "rectangle"})))?.changes).toHaveProperty(["girder.depthIn"]);
  });

  test("is the longest span, beyond which the next whole foot fails by what stops it", () => {
    const take = longestGirderSpan(taking(wing())) as GirderTake;
    expect(take.changes).toEqual({"bay.beamSpanFt": take.spanFt});
    expect(failing(girderOf(wing(), take.changes))).toEqual([]);
    const beyond = failing(girderOf(wing(), {"bay.beamSpanFt": take.spanFt + 1}));
    expect(take.stops).toBe(words(worst(beyond)));
    for (let spanFt = take.spanFt + 1; spanFt <= 80; spanFt++) expect(failing(girderOf(wing(), {"bay.beamSpanFt": spanFt})), `${spanFt} ft`).not.toEqual([]);
    // Under planks nothing stands in the way of a span between two that hold.
    expect(take.notFt).toEqual([]);
    expect(longestGirderSpan(taking(wing({"girder.ledgeDepthIn": 6})))).toBeUndefined();
  });

  test("is reported how far it hangs into the room that heads and ceiling need", () => {
    const deepIn = (leastGirderDepth(taking(wing())) as GirderTake).belowDeckIn;
    expect(leastGirderDepth(taking(wing(), deepIn))?.tooLowIn).toBe(0);
    expect(leastGirderDepth(taking(wing(), deepIn + 5))?.tooLowIn).toBe(0);
    expect(leastGirderDepth(taking(wing(), deepIn - 3))?.tooLowIn).toBeCloseTo(3, 9);
  });

  test("is nothing where there is no girder: in a building of one bay across", () => {
    const none = taking(wing({"bay.baysAcross": 1}));
    for (const take of [leastGirderStrands(none), leastGirderDepth(none), shallowestGirder(none), longestGirderSpan(none)]) expect(take).toBeUndefined();
  });

  test("may be the greatest that a design may have: a ledge of 36 in under 61 ft, a span of 80 ft; and the least, with nothing below it", () => {
    const strands = {"girder.strands": 30};
    const depth = (beamSpanFt: number) => leastGirderDepth(taking(wing({...strands, "bay.beamSpanFt": beamSpanFt})))?.changes;
    expect([depth(61), depth(62)]).toEqual([{"girder.ledgeDepthIn": 36}, undefined]);
    expect(longestGirderSpan(taking(wing({...strands, "girder.kind": "rectangle", "girder.depthIn": 70})))).toMatchObject({spanFt: 80, stops: undefined, notFt: []});
    const low = shallowestGirder(taking(wing({"bay.spanFt": 10, "bay.beamSpanFt": 8})), "rectangle");
    expect(low).toMatchObject({changes: {"girder.depthIn": 12, "girder.strands": 2}, stops: undefined});
  });

  test("of stems has spans between two that hold over which it does not, each named, and is not stopped by where they stand", () => {
    const store = (changes: Changes = {}) => withValues(seed("records-store"), {"column.sideIn": 18, "bay.baysAlong": 2, ...changes});
    const {spanFt, notFt = []} = longestGirderSpan(taking(store())) as GirderTake;
    expect(notFt.length).toBeGreaterThan(3);
    for (let foot = Math.min(...notFt) - 1; foot <= spanFt; foot++) {
      expect(failing(girderOf(store(), {"bay.beamSpanFt": foot})).length > 0, `${foot} ft`).toBe(notFt.includes(foot));
    }
    // 22 ft: a stem of bay 2 stands 6 in off its line, which neither strands nor depth mend.
    const off = store({"bay.beamSpanFt": 22, "bay.spanFt": 24});
    const take = leastGirderDepth(taking(off));
    expect(failing(girderOf(off, take?.changes)).map(({id}) => id)).toEqual(["girder stems on beam"]);
  });

  test("is answered one question after the other", () => {
    const work = girderTakes(catalog, {design: wing(), extraToppingPsf: 40, mayHangIn: 100});
    const told: number[] = [];
    let step = work.next();
    for (; !step.done; step = work.next()) told.push(step.value);
    const found: GirderTakes = step.value;
    expect(told).toEqual([1, 2, 3, 4]);
    // Topping that fills the camber weighs on the girder as well.
    const of = {...taking(wing()), deck: withExtraTopping(floorOf(wing()).deck, 40)};
    expect(found).toEqual({
      strands: leastGirderStrands(of), depth: leastGirderDepth(of), span: longestGirderSpan(of),
      invertedTee: shallowestGirder(of, "inverted tee"), rectangle: shallowestGirder(of, "rectangle"),
    });
  });
});
