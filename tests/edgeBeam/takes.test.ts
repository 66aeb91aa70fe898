import {describe, expect, test} from "vitest";
import {edgeBeamTakes, type BeamTake, type EdgeBeamTakes} from "../../lib/edgeBeam/takes.js";
import type {Check} from "../../lib/checks.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {catalog, seed} from "../support/designs.js";
import {edgeBeamOf, floorOf} from "../support/madeBeams.js";

/*
 * What edge beams of one bay under planks take: planks load a beam evenly, so that a beam is worked out in a fraction of the
 * time that stems need. `takesAll.test.ts` tries the same searches on stems.
 */
type Changes = Readonly<Record<string, unknown>>;
const wing = (changes: Changes = {}): Design => withValues(seed("classroom-wing"), changes);
const failing = ({checks}: {readonly checks: readonly Check[]}, ids = /./) => checks.filter(({id, verdict}) => ids.test(id) && verdict === "fails");
/** The check that fails by most. */
const worst = (checks: readonly Check[]) => [...checks].sort((a, b) => b.utilization - a.utilization)[0];

describe("what an edge beam under planks takes", () => {
  const takesOf = (design: Design): EdgeBeamTakes => {
    const {deck, loads} = floorOf(design);
    return edgeBeamTakes(design, catalog, deck, loads);
  };
  const LEDGE = /^ledge (depth|layers|line|shear|lever|bars)$|^beam stirrups$/;
  const WEB = /^beam (cage|strength|least steel|ductility|bottom steel|shear|shear and torsion|stirrups|cracks)$/;

  test("is the least ledge: every ledge less deep fails, the next one by what governs", () => {
    const take = takesOf(wing()).ledgeDepth as BeamTake;
    const depthIn = take.changes["edgeBeam.ledgeDepthIn"] as number;
    expect(Object.keys(take.changes)).toEqual(["edgeBeam.ledgeDepthIn"]);
    expect(depthIn).toBeGreaterThan(4);
    expect(take.beam.belowDeckIn).toBe(depthIn);
    expect(failing(take.beam, LEDGE)).toEqual([]);
    for (let less = 4; less < depthIn; less += 0.5) expect(failing(edgeBeamOf(wing(), {"edgeBeam.ledgeDepthIn": less}), LEDGE), `${less} in`).not.toEqual([]);
    expect(take.governs.id).toBe(worst(failing(edgeBeamOf(wing(), {"edgeBeam.ledgeDepthIn": depthIn - 0.5}), LEDGE))?.id);
  });

  test("is the least web, and where the narrowest that is cast will do, what it is used for most governs", () => {
    const heavy = wing({"bay.beamSpanFt": 30, "bay.spanFt": 36, "edgeBeam.upstandIn": 6, "edgeBeam.barSize": "#9"});
    const take = takesOf(heavy).webWidth as BeamTake;
    const widthIn = take.changes["edgeBeam.webWidthIn"] as number;
    expect(failing(take.beam, WEB)).toEqual([]);
    for (let less = 8; less < widthIn; less++) expect(failing(edgeBeamOf(heavy, {"edgeBeam.webWidthIn": less}), WEB), `${less} in`).not.toEqual([]);
    expect(take.governs.id).toBe(worst(failing(edgeBeamOf(heavy, {"edgeBeam.webWidthIn": widthIn - 1}), WEB))?.id);
    const light = wing({"bay.beamSpanFt": 12, "bay.spanFt": 16});
    const least = takesOf(light).webWidth as BeamTake;
    expect(least.changes).toEqual({"edgeBeam.webWidthIn": 8});
    expect(least.governs.verdict).toMatch(/ok|near/);
    expect(least.governs).toEqual(worst(edgeBeamOf(light, {"edgeBeam.webWidthIn": 8}).checks.filter(({id}) => WEB.test(id))));
  });

  test("is the size of bar with the least steel, of equal areas the larger", () => {
    const sizes = ["#5", "#6", "#7", "#8", "#9", "#10", "#11"];
    for (const changes of [{}, {"bay.beamSpanFt": 30}]) {
      const {bars, strands} = takesOf(wing(changes));
      expect(strands).toBeUndefined();
      const holding = sizes.map((size) => edgeBeamOf(wing(changes), {"edgeBeam.barSize": size}))
        .filter((beam) => failing(beam, /^beam (strength|least steel|ductility|bottom steel|cracks|sag|shear and torsion)$/).length === 0);
      const leastIn2 = Math.min(...holding.map((beam) => beam.bars.areaIn2));
      expect(bars?.beam.bars.areaIn2).toBe(leastIn2);
      expect(bars?.changes).toEqual({"edgeBeam.barSize": holding.findLast((beam) => beam.bars.areaIn2 < leastIn2 + 1e-9)?.bars.bar.size});
      expect(bars?.governs.id).toMatch(/^beam/);
    }
  });

  test("is the fewest strands that need no bars besides; bars are asked only where there are bars", () => {
    const design = wing({"edgeBeam.steel": "strands"});
    const {bars, strands} = takesOf(design);
    expect(bars).toBeUndefined();
    const count = strands?.changes["edgeBeam.strands"] as number;
    expect(count).toBeGreaterThan(2);
    expect(strands?.beam.bars.count).toBe(0);
    for (let fewer = 2; fewer < count; fewer++) {
      const beam = edgeBeamOf(design, {"edgeBeam.strands": fewer});
      expect(beam.bars.count > 0 || failing(beam).length > 0, `${fewer} strands`).toBe(true);
    }
  });

  test("says what it breaks: a web as narrow as carries the beam is pulled too far in service; none where it is so already", () => {
    const few = (spanFt: number) => wing({"edgeBeam.steel": "strands", "edgeBeam.strands": 2, "edgeBeam.coverIn": 1.25, "edgeBeam.strengthPsi": 5000, "bay.beamSpanFt": spanFt});
    const breaks = (take: BeamTake | undefined) => take?.breaks.map(({id}) => id);
    expect(edgeBeamOf(few(40)).checks.find(({id}) => id === "beam tension")?.verdict).toMatch(/ok|near/);
    expect(breaks(takesOf(few(40)).webWidth)).toEqual(["beam tension"]);
    expect(edgeBeamOf(few(50)).checks.find(({id}) => id === "beam tension")?.verdict).toBe("out of range");
    expect(breaks(takesOf(few(50)).webWidth)).toEqual([]);
    expect(breaks(takesOf(few(40)).ledgeDepth)).toEqual([]);
  });

  test("breaks nothing by strands that pull the top as the beam is lifted: bars take that tension", () => {
    const few = wing({"edgeBeam.steel": "strands", "edgeBeam.strands": 4, "edgeBeam.coverIn": 1.25});
    const {strands} = takesOf(few);
    expect(strands?.breaks).toEqual([]);
    expect(strands?.beam.checks.filter(({word}) => word === "needs top steel").map(({id}) => id)).toEqual(expect.arrayContaining(["beam stripping tension top", "beam hauling tension top"]));
  });

  test("may be the greatest that a design may have: a ledge of 24 in under a beam of 70 ft", () => {
    const long = wing({"bay.beamSpanFt": 70, "bay.spanFt": 36, "edgeBeam.upstandIn": 6, "edgeBeam.barSize": "#11"});
    expect(takesOf(long).ledgeDepth?.changes).toEqual({"edgeBeam.ledgeDepthIn": 24});
  });

  test("takes for a size that makes no beam only what is refused as one", () => {
    const {deck} = floorOf(wing());
    expect(() => edgeBeamTakes(wing(), catalog, deck, undefined as never)).toThrow(TypeError);
  });

  test("is passed over where a size makes no beam: a ledge of 4 in under a plank of 4 in", () => {
    // 4 + 4 in are less than the 10 in of the lowest beam that is cast, so a ledge of 6 in is the first that makes one.
    const low = wing({"deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "bay.spanFt": 12, "bay.beamSpanFt": 8, "edgeBeam.upstandIn": 0});
    expect(takesOf(low).ledgeDepth?.changes["edgeBeam.ledgeDepthIn"]).toBeGreaterThanOrEqual(6);
    expect(takesOf(withValues(low, {"edgeBeam.ledgeDepthIn": 4}))).toMatchObject({webWidth: undefined, bars: undefined});
  });

  test("is nothing that would do under a load too great, and no ledge for a beam without one", () => {
    const heavy = wing({"bay.spanFt": 150, "bay.beamSpanFt": 80, "edgeBeam.upstandIn": 0, "edgeBeam.strengthPsi": 3000});
    expect(takesOf(heavy)).toEqual({ledgeDepth: undefined, webWidth: undefined, bars: undefined, strands: undefined});
    expect(takesOf(wing({"edgeBeam.kind": "below"})).ledgeDepth).toBeUndefined();
  });
});
