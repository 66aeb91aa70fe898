import {expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {LOAD_LIMITS} from "../../lib/deck/limits.js";
import {reachOf, reaches} from "../../lib/deck/reach.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {memberWith} from "../support/members.js";

/** With the combination of dead load alone, which takes over where hardly any load is left. */
const CRITERIA = {...handbookCriteria(false), deadOnlyFactor: 1.4};

test("the reach of a member is the same as by looking every tenth of a foot, gaps and all", () => {
  const criteria = {...CRITERIA, superimposedDeadPsf: 10, sustainedLiveShare: 0.3, limits: [...LOAD_LIMITS.filter((name) => name !== "camber"), "transfer" as const]};
  let gapped = 0;
  let begun = 0;
  for (const [designation, pattern, toppingIn] of [
    ["4FS8", "66-S", 2], ["4FS6", "56-S", 2], ["4HC8", "56-S", 2], ["4HC10", "66-S", 2], ["4HC12", "68-S", 0], ["10DT24", "88-S", 0], ["10DT32", "88-S", 2], ["10DT32", "108-D1", 2],
  ] as const) {
    const member = memberWith(designation, pattern, {toppingIn});
    const spansFt = Array.from({length: 800}, (_, i) => 10 + i / 10);
    const loads = spansFt.map((spanFt) => safeLoad(member, spanFt, criteria).safeLoadPsf);
    for (const loadPsf of [30, 50, 80]) {
      const reach = reachOf(member, criteria, loadPsf);
      // Within a tenth of a foot of where the answer changes the two may differ.
      const turnsFt = reach ? [reach.shortestFt, reach.longestFt, ...reach.gaps.flatMap(({fromFt, toFt}) => [fromFt, toFt])] : [];
      spansFt.forEach((spanFt, i) => {
        if (turnsFt.some((turnFt) => Math.abs(turnFt - spanFt) < 0.02)) return;
        expect(reach !== undefined && reaches(reach, spanFt), `${designation} ${pattern} ${loadPsf} psf at ${spanFt} ft`).toBe((loads[i] as number) >= loadPsf);
      });
      gapped += reach?.gaps.length ?? 0;
      begun += Number((reach?.shortestFt ?? 10) > 10);
    }
  }
  expect(gapped).toBeGreaterThan(2);
  expect(begun).toBeGreaterThan(1);
});
