import {describe, expect, test} from "vitest";
import {columnLevels} from "../../lib/columns/frame.js";
import {takedown} from "../../lib/columns/takedown.js";
import {withValues} from "../../lib/design/edit.js";
import {atMost, type Check} from "../../lib/checks.js";
import {evaluate, framingOf} from "../../lib/evaluate.js";
import {edgeEndChecks, endStrip, girderEndChecks} from "../../lib/walls/endStrip.js";
import {catalog, seed} from "../support/designs.js";

/**
 * The library with solid panels past its columns: deck 10DT32 with 2 in of topping over 40 ft, beams over 30 ft, columns of
 * 20 in. The panels stand 1 in clear of the columns, so the floor ends 10 in beyond the column line, a joint of 1 in away.
 * Two rooms; the heavier for the deck is the stacks' 150 psf, if they are given alone; here one room of 60 psf and layers of 10 psf.
 */
const design = (changes: Readonly<Record<string, unknown>> = {}) => withValues(seed("branch-library"), {
  "walls.shortSide": "solid panel", "walls.panelSupport": "columns", "walls.glassShare": 0, "walls.parapetIn": 0, "roof.given": "loads", "bay.floors": 2, "loads.partitions": false,
  "loads.rooms": [{name: "Reading", occupancy: "library-reading"}], "loads.layers": [{name: "finish", loadPsf: 10}], ...changes,
});
const of = (changes: Readonly<Record<string, unknown>> = {}) => evaluate(design(changes), catalog);

describe("the strip of floor beyond the end column line", () => {
  test("is summed by hand from its concrete, its layers and its live load to the ground", () => {
    const e = of();
    const strip = e.endStrip;
    if (!strip) throw new Error("no strip");
    const L = e.deck.livePsf;
    expect(L).toBe(60);
    // 10 in of 2 in flange and 2 in topping: 150 x 10 x 4 / 144 = 41.67 plf; layers 10 x 10/12 = 8.33: 50 plf. Live 60 x 10/12 = 50 plf.
    expect(strip).toMatchObject({widthIn: 10, deadPlf: expect.closeTo(50, 9) as number, livePlf: expect.closeTo(50, 9) as number});
    // Over a tee of 10 ft: 10 psf. Half of 40 ft: 1.2 x 1.0 + 1.6 x 1.0 = 2.8 kip at the end of the edge beam.
    expect(strip.onPiecePsf).toBeCloseTo(10, 9);
    expect(strip.endKip).toBeCloseTo(2.8, 9);
    // The outermost stem stands 30 in inside the edge, the other 60 in farther: moments about that one, 2.8 (90 + 5) / 60.
    expect(strip.onStemKip).toBeCloseTo((2.8 * 95) / 60, 9);
    const check = (id: string) => e.checks.find((one) => one.id === id);
    const piece = check("end strip: deck load");
    expect(piece).toMatchObject({sense: "at most", demand: expect.closeTo(e.deck.demandPsf + 10, 9) as number});
    expect(piece?.capacity).toBe(e.deck.safe.safeLoadPsf);
    expect(check("end strip: beam shear")).toMatchObject({demand: e.edgeBeam.shearKip + strip.endKip, capacity: e.edgeBeam.greatestShearKip});
    expect(check("end strip: ledge punching end")?.demand).toBeCloseTo(e.edgeBeam.demand.stemKip + strip.onStemKip, 9);
    const girderShear = e.girder?.checks.find(({id}) => id === "girder shear");
    expect(check("end strip: girder shear")?.demand).toBeCloseTo((girderShear?.demand ?? NaN) + 5.6, 9);
  });

  test("goes down the columns at the ends with the floors', unreduced, and down no other", () => {
    const framing = framingOf(of());
    const bare = framingOf(of({"walls.shortSide": "not counted"}));
    const down = (of: typeof framing, position: "corner column" | "girder end column" | "edge column" | "interior column") =>
      takedown({position, levels: columnLevels(of, position), columnPlf: 0}).stories.at(-1);
    // Two floors of 60 psf on 10 in by 20 ft: 2 x 1 kip; by 40 ft twice that. The roof's 20 psf: a third of a kip, and two thirds.
    for (const [position, share] of [["corner column", 1], ["girder end column", 2]] as const) {
      const [with_, without] = [down(framing, position), down(bare, position)];
      expect((with_?.liveKip ?? NaN) - (without?.liveKip ?? NaN)).toBeCloseTo(2 * share, 9);
      expect((with_?.unreducedLiveKip ?? NaN) - (without?.unreducedLiveKip ?? NaN)).toBeCloseTo(2 * share, 9);
      expect((with_?.roofKip ?? NaN) - (without?.roofKip ?? NaN)).toBeCloseTo((share * 20 * 10 * 20) / 12 / 1000, 9);
    }
    for (const position of ["edge column", "interior column"] as const) expect(down(framing, position)?.liveKip).toBe(down(bare, position)?.liveKip);
  });

  test("is none where the deck ends at the column line, and bears on several planks", () => {
    for (const changes of [{"walls.shortSide": "not counted"}, {"walls.shortSide": "spandrel", "walls.spandrelPlace": "between"}]) {
      expect(of(changes).endStrip).toBeUndefined();
      expect(of(changes).checks.some(({id}) => id.startsWith("end strip"))).toBe(false);
    }
    // Planks of 4 ft over 28 ft: a quarter of the span, 7 ft, shares it; none has a stem.
    const planks = evaluate(withValues(seed("classroom-wing"), {"walls.shortSide": "cladding"}), catalog).endStrip;
    expect(planks?.onStemKip).toBe(0);
    expect(planks?.onPiecePsf).toBeCloseTo(((planks?.deadPlf ?? NaN) + (planks?.livePlf ?? NaN)) / 7, 9);
  });

  test("is checked on both sides of what deck and ledge carry", () => {
    const verdict = (id: string, changes: Readonly<Record<string, unknown>>) => of(changes).checks.find((one) => one.id === id);
    const {deck, endStrip} = of();
    // As many psf of layers as the deck still carries: the outermost piece has its strip's part less.
    const room = deck.safe.safeLoadPsf - deck.demandPsf;
    const layers = (loadPsf: number) => ({"loads.layers": [{name: "finish", loadPsf: 10 + loadPsf}]});
    expect(room).toBeGreaterThan(endStrip?.onPiecePsf ?? NaN);
    expect(verdict("end strip: deck load", layers(0))?.verdict).not.toBe("fails");
    // Each psf of layers is a psf on the deck, and over the outermost tee 10.83 in 10 ft; what is safe falls as the sustained share rises.
    expect(verdict("end strip: deck load", layers(Math.min(140, room)))?.verdict).toBe("fails");
    expect(verdict("end strip: ledge punching end", {"edgeBeam.ledgeDepthIn": 13})?.verdict).not.toBe("fails");
    expect(verdict("end strip: ledge punching end", {"edgeBeam.ledgeDepthIn": 6})?.verdict).toBe("fails");
  });

  test("is at the far end what whole pieces leave besides, where a strip and no cut piece closes that", () => {
    // Four bays of 30'-6" are 122 ft: twelve tees and 24 in, with 10 in to the wall 34 in of strip, 3.4 times as much as at the first end.
    const e = of({"bay.beamSpanFt": 30.5, "walls.endFill": "strip"});
    const strip = e.endStrip;
    expect(strip).toMatchObject({widthIn: 34, beyondIn: 10, deadPlf: expect.closeTo(170, 9) as number, livePlf: expect.closeTo(170, 9) as number, onPiecePsf: expect.closeTo(34, 9) as number});
    // Of 9.52 kip at the piece's end the beam has 2.8 kip beyond the column line; the rest lies over it. The middle of the strip is 17 in beyond the tee's edge: 90 + 17 in.
    expect(strip?.endKip).toBeCloseTo(2.8, 9);
    expect(strip?.onStemKip).toBeCloseTo((9.52 * 107) / 60, 9);
    expect(e.checks.find(({id}) => id === "end strip: deck load")?.demand).toBeCloseTo(e.deck.demandPsf + 34, 9);
    // Spandrels between the columns leave the column line as it is: no beam has more than its own load, the last piece has its strip.
    const between = of({"bay.beamSpanFt": 30.5, "walls.endFill": "strip", "walls.shortSide": "spandrel", "walls.spandrelPlace": "between"});
    expect(between.endStrip).toMatchObject({widthIn: 24, beyondIn: 0, endKip: 0, onPiecePsf: expect.closeTo(24, 9) as number});
    expect(between.endStrip?.checks.map(({id}) => id)).toEqual(["end strip: deck load", "end strip: ledge punching end", "end strip: girder ledge punching"]);
    // A cut piece carries itself.
    expect(of({"bay.beamSpanFt": 30.5}).endStrip).toMatchObject({widthIn: 10, beyondIn: 10});
  });

  test("is a load: what takes nearly all of a strength is near its limit, all of it still holds, a hair more fails", () => {
    const e = of();
    const {deck} = e;
    const one = (demandPsf: number) => endStrip(e.design, {
      member: e.member, edge: e.walls.edge, loads: e.loads, deck: {...deck, demandPsf}, edgeBeam: e.edgeBeam, girder: e.girder,
    })?.checks.find(({id}) => id === "end strip: deck load");
    const safe = deck.safe.safeLoadPsf;
    expect([0.94 * safe - 10, 0.96 * safe - 10, safe - 10, 1.001 * safe - 10].map((psf) => one(psf)?.verdict)).toEqual(["ok", "near", "near", "fails"]);
    // A stem of 80 kip with 15 kip more, and a shear of 160 kip with 10: strengths of 95 to 101 kip and of 170 to 181.
    const beam = (punchingKip: number, shearKip: number) => ({checks: [limit("ledge punching end", 80, punchingKip)], shearKip: 160, greatestShearKip: shearKip});
    const edge = (punchingKip: number, shearKip: number) => verdicts(edgeEndChecks(beam(punchingKip, shearKip), {endKip: 10, onStemKip: 15}));
    expect([edge(101, 181), edge(95, 170), edge(94.9, 169.9)]).toEqual([["ok", "ok"], ["near", "near"], ["fails", "fails"]]);
    // A girder's end has the strips of both bays, its ledge the stem of one.
    const girder = (punchingKip: number, shearKip: number) => verdicts(girderEndChecks({checks: [limit("girder ledge punching", 80, punchingKip), limit("girder shear", 150, shearKip)]}, {endKip: 10, onStemKip: 15}));
    expect([girder(101, 181), girder(95, 170), girder(94.9, 169.9)]).toEqual([["ok", "ok"], ["near", "near"], ["fails", "fails"]]);
  });

  test("is asked of a ledge only under a stem, and of a girder only what it has", () => {
    const ids = (checks: readonly Check[]) => checks.map(({id}) => id);
    const beam = {checks: [limit("ledge punching end", 80, 200)], shearKip: 10, greatestShearKip: 100};
    expect(ids(edgeEndChecks(beam, {endKip: 1, onStemKip: 1}))).toEqual(["end strip: ledge punching end", "end strip: beam shear"]);
    expect(ids(edgeEndChecks(beam, {endKip: 1, onStemKip: 0}))).toEqual(["end strip: beam shear"]);
    expect(ids(edgeEndChecks({...beam, checks: []}, {endKip: 1, onStemKip: 1}))).toEqual(["end strip: beam shear"]);
    const [punching, shear] = [limit("girder ledge punching", 80, 200), limit("girder shear", 80, 200)];
    expect(ids(girderEndChecks({checks: [punching, shear]}, {endKip: 1, onStemKip: 1}))).toEqual(["end strip: girder ledge punching", "end strip: girder shear"]);
    expect(ids(girderEndChecks({checks: [punching, shear]}, {endKip: 1, onStemKip: 0}))).toEqual(["end strip: girder shear"]);
    expect(ids(girderEndChecks({checks: [shear]}, {endKip: 1, onStemKip: 1}))).toEqual(["end strip: girder shear"]);
    expect(ids(girderEndChecks({checks: []}, {endKip: 1, onStemKip: 1}))).toEqual([]);
    // One row of bays has no girder.
    expect(ids(of({"bay.baysAcross": 1}).endStrip?.checks ?? [])).toEqual(["end strip: deck load", "end strip: ledge punching end", "end strip: beam shear"]);
  });
});

/** A strength that takes so much already, in kip. */
const limit = (id: string, demand: number, capacity: number): Check => atMost({id, label: id, unit: "kip", clause: "", holds: "", fails: ""}, demand, capacity);
const verdicts = (checks: readonly Check[]) => checks.map(({verdict}) => verdict);
