import {describe, expect, test} from "vitest";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import {girder} from "../../lib/girder/girder.js";
import {GirderTrial} from "../../lib/girder/trial.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {catalog, seed} from "../support/designs.js";

/** Checks that more strands mend. */
const MORE_STRANDS: ReadonlySet<string> = new Set([
  "girder load", "girder strength", "girder minimum strength", "girder tension", "girder crack control", "girder sag", "girder development",
]);
/** Checks of the young concrete under its strands. */
const YOUNG: ReadonlySet<string> = new Set(["girder transfer compression end", "girder transfer compression midspan", "girder stripping compression"]);

describe("a girder that is tried", () => {
  test.each(["U", "T", "C"] as const)("lacks strands, and crushes its young concrete, just where one of its checks says so, class %s", (tensionClass) => {
    const [lacking, crushing] = [[0, 0], [0, 0]] as [[number, number], [number, number]];
    for (const kind of ["inverted tee", "rectangle"] as const) {
      for (const beamSpanFt of [20, 36]) {
        for (const size of [16, 30]) {
          let like: GirderTrial | undefined;
          for (let strands = 8; strands <= 40; strands += 8) {
            const design = withValues(seed("records-store"), {
              "bay.baysAcross": 2, "bay.beamSpanFt": beamSpanFt, "girder.kind": kind, "girder.ledgeDepthIn": size, "girder.depthIn": size + 16, "girder.strands": strands, "criteria.tensionClass": tensionClass,
            });
            const member = deckMember(design, catalog);
            const loads = floorLoads(design, catalog, member.widthFt);
            like = new GirderTrial(design, catalog, member, loads, like);
            const whole = girder(design, catalog, member, loads);
            const {checks} = like.whole();
            const fails = (ids: ReadonlySet<string>) => checks.some(({id, verdict}) => ids.has(id) && verdict === "fails");
            expect(like.lacks()).toBe(fails(MORE_STRANDS));
            expect(like.crushes()).toBe(fails(YOUNG));
            lacking[like.lacks() ? 0 : 1] += 1;
            crushing[like.crushes() ? 0 : 1] += 1;
            // With its outline and loads from one that has other strands, and with what was known before it was whole, it is the girder of the design.
            expect(JSON.stringify({...whole, checks: whole?.checks.slice(-checks.length)})).toBe(JSON.stringify(like.whole()));
            expect(checks).toEqual(expect.arrayContaining(like.ledge()));
          }
        }
      }
    }
    expect(Math.min(...lacking)).toBeGreaterThan(3);
    expect(Math.min(...crushing)).toBeGreaterThan(3);
  });

  test("that crushes its young concrete does so with any more strands, and lacks at midspan nothing that it has as a whole", () => {
    let turned = 0;
    for (const kind of ["inverted tee", "rectangle"] as const) {
      for (const [beamSpanFt, webWidthIn, size] of [[18, 16, 8], [24, 20, 12], [30, 16, 20], [36, 24, 14], [50, 30, 30], [60, 16, 36]] as const) {
        const design = withValues(seed("records-store"), {
          "bay.baysAcross": 2, "bay.beamSpanFt": beamSpanFt, "girder.kind": kind, "girder.webWidthIn": webWidthIn, "girder.ledgeDepthIn": size, "girder.depthIn": size + 12,
        });
        const member = deckMember(design, catalog);
        const loads = floorLoads(design, catalog, member.widthFt);
        let like: GirderTrial | undefined;
        let crushed = false;
        for (let strands = 2; strands <= (like?.at.strandsMost ?? 2); strands++) {
          like = new GirderTrial({...design, girder: {...design.girder, strands}}, catalog, member, loads, like);
          const crushes = like.crushes();
          if (crushed) expect(crushes, `${kind} of ${size} in over ${beamSpanFt} ft with ${strands} strands`).toBe(true);
          if (crushes && !crushed) turned += 1;
          crushed = crushes;
          if (like.lacksAtMidspan()) expect(like.lacks()).toBe(true);
        }
      }
    }
    expect(turned).toBeGreaterThan(8);
  });
});
