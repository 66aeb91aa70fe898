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
  it("is legal up to 8.5 ft of width, on a routine permit up to 12 ft, and flat with an escort beyond", () => {
    const classOf = (widthFt: number) => handling({...tee(), widthFt}, 60).widthClass;
    expect([8.5, 8.51, 12, 12.01].map(classOf)).toEqual(["legal", "permit", "permit", "escort"]);
  });
  it("loads a truck with as many pieces as weigh 48 kip together", () => {
    // 800 plf on 60 ft: 48 kip, one piece; on 20 ft three.
    const heavy = {...tee(), selfWeightPlf: 800};
    expect(handling(heavy, 60)).toMatchObject({weightKip: 48, piecesPerTruck: 1, lengthFt: 60});
    expect(handling(heavy, 20).piecesPerTruck).toBe(3);
    expect(handling(heavy, 61).piecesPerTruck).toBe(0);
  });
  it("warns of weight beyond 48 kip, of length beyond 70 ft, of height beyond 10.5 ft, and of none of them at that", () => {
    const notes = (widthFt: number, selfWeightPlf: number, spanFt: number) => handling({...tee(), widthFt, selfWeightPlf}, spanFt).notes.join(" ");
    expect(notes(8, 800, 60)).toBe("");
    expect(notes(8, 801, 60)).toMatch(/overweight permit/);
    expect(notes(8, 100, 70)).toBe("");
    expect(notes(8, 100, 70.1)).toMatch(/turns/);
    expect(notes(10, 100, 30)).toMatch(/wider than a legal load/i);
    expect(notes(8, 100, 30)).not.toMatch(/wider/i);
    // 24 in deep: 13 ft wide it stands 7 ft high when tilted to 12 ft, 16 ft wide 11.6 ft.
    expect(notes(13, 100, 30)).toMatch(/tilted/);
    expect(notes(13, 100, 30)).not.toMatch(/too high/);
    expect(notes(16, 100, 30)).toMatch(/too high for many bridges/);
  });
  it("says what makes a haul hard", () => {
    expect(handling(plank(), 30).notes).toEqual([]);
    expect(handling(memberWith("15DT34", "188-S"), 80).notes).toHaveLength(3);
  });
});
