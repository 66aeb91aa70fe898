import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {patternMember, usualPatterns, usualStrands} from "../../lib/deck/table.js";
import {girderSection} from "../../lib/girder/section.js";
import type {Member} from "../../lib/member/member.js";
import {handled} from "../../lib/member/stripping.js";
import {topSteelIn2} from "../../lib/member/topSteel.js";
import {transfer} from "../../lib/member/transfer.js";
import {catalog, seed} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {topRoomIn2} from "./topRoom.js";

/** How much of the room for bars in the top of a piece is taken where it is taken most: at release, in its form and on the road. */
function roomTaken(member: Member, spanFt: number): number {
  const stresses = [...transfer(member, spanFt).places.map((place) => place.stresses), ...(["stripping", "hauling"] as const).map((moment) => handled(member, spanFt, moment).atLift)];
  return Math.max(...stresses.map(({topKsi, bottomKsi}) => {
    const steelIn2 = topSteelIn2(member, {topKsi, bottomKsi});
    const zeroIn = bottomKsi > 0 ? (member.section.depthIn * bottomKsi) / (bottomKsi - topKsi) : 0;
    return steelIn2 === 0 ? 0 : steelIn2 / topRoomIn2(member.shape, zeroIn);
  }));
}

describe("bars in the top of a piece that would crack as it is made or moved", () => {
  test("have the room that a drawing shows", () => {
    // A flange of 2 in takes one row of #4 between two covers of 3/4 in: 120 - 1.5 - 0.5 leaves 78 pitches of 1 1/2 in, 79 bars of 0.196 in2.
    expect(topRoomIn2(memberWith("10DT24", "88-S").shape, 23)).toBeCloseTo(79 * 0.19635, 3);
    // A solid slab 8 in deep, in tension over its upper 2 in: #11, of 1.375 in by eighths, 2 3/4 in apart: (48 - 1.5 - 1.375) / 2.75 is 16, so 17 of 1.485 in2.
    expect(topRoomIn2(memberWith("4FS8", "88-S").shape, 6)).toBeCloseTo(17 * 1.4849, 3);
    // And a second row of them 2 3/8 in lower, once the tension reaches so far: 8 - 0.75 - 0.6875 - 2.375 = 4.1875 in.
    expect(topRoomIn2(memberWith("4FS8", "88-S").shape, 4.18)).toBeCloseTo(34 * 1.4849, 3);
    expect(topRoomIn2(memberWith("4FS8", "88-S").shape, 5.2)).toBeCloseTo(17 * 1.4849, 3);
  });

  test("take less than four tenths of it in any deck member, with the most strands of each profile", () => {
    const taken = catalog.deckMembers.flatMap((row) => usualStrands(row).slice(-1).flatMap((size) => {
      const most = usualPatterns(row, size).filter((text, i, all) => text.slice(-2) !== all[i + 1]?.slice(-2));
      return most.flatMap((text) => [12, 60].map((spanFt) => roomTaken(patternMember(catalog, row, text, {
        concreteKind: "normalweight", strengthPsi: 8000, releaseStrengthPsi: 6000, toppingIn: 0, toppingStrengthPsi: 3000, humidityPercent: 70,
      }), spanFt)));
    }));
    expect(Math.max(...taken)).toBeLessThan(0.4);
    expect(Math.max(...taken)).toBeGreaterThan(0.3);
  });

  test("take less than a third of it in any girder", () => {
    const taken = (["inverted tee", "rectangle"] as const).flatMap((kind) => [8, 12, 24].flatMap((webWidthIn) => [16, 40].flatMap((depthIn) => [6, 20, 60].map((strands) => roomTaken(
      girderSection(withValues(seed("records-store"), {
        "girder.kind": kind, "girder.webWidthIn": webWidthIn, "girder.depthIn": depthIn, "girder.ledgeDepthIn": 8, "girder.strands": strands, "girder.strengthPsi": 8000, "girder.releaseStrengthPsi": 6000,
      }), catalog, depthIn).member, 20)))));
    expect(Math.max(...taken)).toBeLessThan(1 / 3);
    expect(Math.max(...taken)).toBeGreaterThan(0.1);
  });
});
