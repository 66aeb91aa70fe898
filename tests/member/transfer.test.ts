import {describe, expect, test} from "vitest";
import {transfer, transferLengthIn} from "../../lib/member/transfer.js";
import {memberWith} from "../support/members.js";

const verdicts = (result: ReturnType<typeof transfer>) => Object.fromEntries(result.checks.map((check) => [check.id, check.verdict]));

describe("transferLengthIn", () => {
  test("is a third of the stress in ksi times the diameter", () => {
    expect(transferLengthIn(150, 0.5)).toBe(25);
    expect(transferLengthIn(150, 0.6)).toBe(30);
  });
});

describe("transfer", () => {
  test("looks at the end of the transfer length and at midspan, with the member's own weight", () => {
    const member = memberWith("10DT24", "68-S");
    const result = transfer(member, 40, "T");
    expect(result.end.share).toBeCloseTo(result.transferLengthIn / 480, 12);
    expect(result.midspan.share).toBe(0.5);
  });

  test("gives the release strength at which compression just holds", () => {
    // Straight strands press hardest at the ends: stress = 0.70 f'ci.
    const member = memberWith("10DT32", "128-S", {strengthPsi: 8000, releaseStrengthPsi: 5000});
    const result = transfer(member, 50, "T");
    const greatest = Math.max(...[result.end, result.midspan].map(({place, stresses}) => stresses.bottomKsi / (place === "end" ? 0.7 : 0.6)));
    expect(result.releaseStrengthNeededPsi).toBeCloseTo(1000 * greatest, 9);
    // With that strength the check is met exactly; elastic shortening changes with the modulus, so it is found again.
    let releaseStrengthPsi = result.releaseStrengthNeededPsi;
    for (let i = 0; i < 30; i++) releaseStrengthPsi = transfer(memberWith("10DT32", "128-S", {strengthPsi: 8000, releaseStrengthPsi}), 50, "T").releaseStrengthNeededPsi;
    const exact = transfer(memberWith("10DT32", "128-S", {strengthPsi: 8000, releaseStrengthPsi}), 50, "T");
    expect(Math.max(...exact.checks.filter((check) => check.id.includes("compression")).map((check) => check.utilisation))).toBeCloseTo(1, 9);
  });

  test("fails a top that straight strands would crack, and saves it by depressing them", () => {
    const straight = memberWith("12DT32", "188-S", {releaseStrengthPsi: 4500, endIn: 4, centreIn: 4});
    const depressed = memberWith("12DT32", "188-D1", {releaseStrengthPsi: 4500});
    expect(verdicts(transfer(straight, 70, "T"))["transfer tension end"]).toBe("fails");
    expect(verdicts(transfer(depressed, 70, "T"))["transfer tension end"]).toBe("ok");
  });

  test("stays within the half span however long the transfer length is", () => {
    const result = transfer(memberWith("4HC6", "410-S"), 10, "T");
    expect(result.end.share).toBeLessThanOrEqual(0.5);
  });
});
