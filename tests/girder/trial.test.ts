import {describe, expect, test} from "vitest";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import {girder} from "../../lib/girder/girder.js";
import {girderTrial, type GirderTrial} from "../../lib/girder/trial.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {catalog, seed} from "../support/designs.js";

/** Checks that more strands mend. */
const MORE_STRANDS: ReadonlySet<string> = new Set([
  "girder load", "girder strength", "girder minimum strength", "girder tension", "girder crack control", "girder sag", "girder development",
]);

describe("a girder that is tried", () => {
  test.each(["U", "T", "C"] as const)("lacks strands just where one of its checks says so, class %s", (tensionClass) => {
    let [lacking, enough] = [0, 0];
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
            like = girderTrial(design, catalog, member, loads, like);
            const whole = girder(design, catalog, member, loads);
            const {checks} = like.whole();
            expect(like.lacks()).toBe(checks.some(({id, verdict}) => MORE_STRANDS.has(id) && verdict === "fails"));
            if (like.lacks()) lacking += 1;
            else enough += 1;
            // With its outline and loads from one that has other strands it is the girder of the design.
            expect(JSON.stringify(whole?.checks.slice(-checks.length))).toBe(JSON.stringify(checks));
            expect(checks).toEqual(expect.arrayContaining(like.ledge()));
          }
        }
      }
    }
    expect(Math.min(lacking, enough)).toBeGreaterThan(3);
  });
});
