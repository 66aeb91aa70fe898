import {describe, expect, it} from "vitest";
import {camber, type Camber} from "../../lib/member/camber.js";
import {camberParts, erectionChangeIn, type CamberStage} from "../../lib/member/camberParts.js";
import {memberWith} from "../support/members.js";

const SUMS: Readonly<Record<CamberStage, (camber: Camber) => number>> = {
  "release": (c) => c.releaseIn, "erection": (c) => c.erectionIn, "topped": (c) => c.toppedIn, "long term": (c) => c.longTermIn,
};

describe("camberParts", () => {
  for (const toppingIn of [0, 2]) {
    it(`add up to the camber of each stage with ${toppingIn} in of topping`, () => {
      const result = camber(memberWith("10DT24", "88-S", {toppingIn}), 50, 100);
      const parts = camberParts(result);
      const stages = [...new Set(parts.map((part) => part.stage))];
      expect(stages).toEqual(toppingIn > 0 ? ["release", "erection", "topped", "long term"] : ["release", "erection", "long term"]);
      for (const stage of stages) {
        const sum = parts.filter((part) => part.stage === stage).reduce((total, part) => total + part.movementIn, 0);
        expect(sum, stage).toBeCloseTo(SUMS[stage](result), 12);
      }
    });
  }

  it("leave out what moves nothing", () => {
    const causes = (deadPlf: number) => new Set(camberParts(camber(memberWith("10DT24", "88-S"), 50, deadPlf)).map((part) => part.cause));
    expect(causes(0)).toEqual(new Set(["strands", "own weight"]));
    expect(causes(100)).toEqual(new Set(["strands", "own weight", "superimposed dead load"]));
  });

  it("says how far a stronger lift moves the camber at erection", () => {
    const result = camber(memberWith("10DT24", "88-S"), 50, 100);
    expect(erectionChangeIn(result, 0.1)).toBeCloseTo(0.18 * result.prestressIn, 12);
  });
});
