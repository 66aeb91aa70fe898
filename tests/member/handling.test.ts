import {describe, expect, it} from "vitest";
import {ROAD_WIDTH_FT, handling, truckLoads} from "../../lib/member/handling.js";
import {memberWith} from "../support/members.js";

const tee = () => memberWith("10DT24", "88-S");
const plank = () => memberWith("4HC8", "66-S");

describe("hauling", () => {
  it("counts trucks, one for each piece that is too heavy to share one", () => {
    expect(truckLoads(24, {piecesPerTruck: 5})).toBe(5);
    expect(truckLoads(24, {piecesPerTruck: 0})).toBe(24);
    expect(truckLoads(24, {piecesPerTruck: 1})).toBe(24);
  });
  it("weighs the piece and sorts it by width", () => {
    expect(handling(tee(), 60).weightKip).toBeCloseTo((449 * 150 * 60) / 144 / 1000, 2);
    expect(handling(tee(), 60).widthClass).toBe("permit");
    expect(handling(plank(), 30).widthClass).toBe("legal");
    expect(handling(memberWith("15DT34", "188-S"), 60).widthClass).toBe("escort");
  });
  it("tilts what is too wide, to the width of a routine permit", () => {
    const {tilt} = handling(memberWith("15DT34", "188-S"), 60);
    const angle = ((tilt?.degrees ?? 0) * Math.PI) / 180;
    expect(15 * Math.cos(angle) + (34 / 12) * Math.sin(angle)).toBeCloseTo(ROAD_WIDTH_FT.permit, 9);
    expect(tilt?.heightFt).toBeCloseTo(15 * Math.sin(angle) + (34 / 12) * Math.cos(angle), 9);
    expect(handling(tee(), 60).tilt).toBeUndefined();
    // Width against tilt rises before it falls, so no less tilt does: every hundredth of the way up to it is too wide.
    for (let i = 0; i < 100; i++) {
      const turned = (angle * i) / 100;
      expect(15 * Math.cos(turned) + (34 / 12) * Math.sin(turned)).toBeGreaterThan(ROAD_WIDTH_FT.permit);
    }
  });
  it("says what makes a haul hard", () => {
    expect(handling(plank(), 30).notes).toEqual([]);
    expect(handling(memberWith("15DT34", "188-S"), 80).notes).toHaveLength(3);
  });
});
