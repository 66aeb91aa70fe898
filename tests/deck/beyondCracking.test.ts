import {describe, expect, test} from "vitest";
import {beyondCracking, crackingLoad, strengthLoad} from "../../lib/deck/beyondCracking.js";
import {cellOf, prestressAt, strengthAt} from "../../lib/deck/cell.js";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {CRACKING_MARGIN, crackingMomentKipIn} from "../../lib/member/minimumStrength.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {memberWith} from "../support/members.js";

const CRITERIA: Criteria = {...handbookCriteria(true), limits: ["minimum strength"]};
/** Straight and depressed strands, topped and bare, tees and planks. */
const MEMBERS = [["12DT32", "48-S", 2, 40], ["12DT32", "128-D1", 2, 60], ["12DT32", "148-D2", 2, 60], ["10DT24", "68-S", 0, 40], ["8DT32", "68-S", 4, 35], ["4HC10", "66-S", 2, 30]] as const;

describe.each(MEMBERS)("a %s %s with %d in over %d ft", (name, text, toppingIn, spanFt) => {
  const cell = () => cellOf(memberWith(name, text, {toppingIn}), spanFt, CRITERIA);
  /** The least total load, psf, whose moment is a given one somewhere from a tenth of the span on. */
  const searched = (momentKipIn: (share: number) => number) => Math.min(...Array.from({length: 401}, (_, i) => {
    const share = 0.1 + i / 1000;
    return momentKipIn(share) / uniformMomentKipIn(cell().member.widthFt, spanFt, share);
  }));

  test("cracks first, and breaks first, where a search along the span finds it", () => {
    const of = cell();
    expect(crackingLoad(of).psf / searched((share) => crackingMomentKipIn(of.member, spanFt, prestressAt(of, share)))).toBeCloseTo(1, 2);
    expect(strengthLoad(of).psf / searched((share) => strengthAt(of, share).designMomentKipIn)).toBeCloseTo(1, 2);
  });

  test("has a limit only where strength lies less than a fifth above cracking, and there check and limit turn over together", () => {
    const of = cell();
    const {strength, cracking} = beyondCracking(of, 1e6);
    const {superimposedDeadPsf} = CRITERIA;
    const found = safeLoad(of.member, spanFt, CRITERIA).limitsPsf["minimum strength"];
    const verdictAt = (livePsf: number) => deckState(of.member, spanFt, CRITERIA, livePsf).checks.find(({id}) => id === "minimum strength")?.verdict;
    if (strength.psf >= CRACKING_MARGIN * cracking.psf) {
      expect(found).toBeUndefined();
      expect(verdictAt(5000)).not.toBe("fails");
    } else {
      const livePsf = (found as number) - superimposedDeadPsf;
      expect(verdictAt(livePsf + 1)).toBe("fails");
      if (livePsf > 1) expect(verdictAt(livePsf - 1)).not.toBe("fails");
    }
  });
});

test("loads are compared, not moments place by place: a topped tee that cracks late at its quarter points breaks no sooner for it", () => {
  const member = memberWith("8DT32", "68-S", {toppingIn: 4});
  const cell = cellOf(member, 35, CRITERIA);
  const ratio = (share: number) => strengthAt(cell, share).designMomentKipIn / crackingMomentKipIn(member, 35, prestressAt(cell, share));
  // Away from midspan the cracking moment is higher and the strength the same; the load that cracks it there is higher still.
  expect(ratio(0.25)).toBeLessThan(ratio(0.5));
  expect(crackingLoad(cell).share).toBe(0.5);
  const {strength, cracking} = beyondCracking(cell, 1e6);
  expect(strength.psf / cracking.psf).toBeCloseTo(ratio(0.5), 9);
});
