import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {candidates} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const EVERY_KIND = {"consider.fieldToppedTees": true, "consider.pretoppedTees": true, "consider.planks": true};

describe("candidates", () => {
  const all = () => candidates(withValues(LIBRARY, EVERY_KIND), catalog);

  test("list those that work first, best first, then the others by what they carry", () => {
    const found = all();
    const works = found.map((candidate) => candidate.works);
    expect(works.lastIndexOf(true)).toBeLessThan(works.indexOf(false));
    const scores = found.filter((candidate) => candidate.works).map((candidate) => candidate.score);
    expect(scores).toEqual([...scores].sort((a, b) => a - b));
    const loads = found.filter((candidate) => !candidate.works).map((candidate) => candidate.safe.safeLoadPsf);
    expect(loads).toEqual([...loads].sort((a, b) => b - a));
  });

  test("have names of their own, a reason each, and finite scores", () => {
    const found = all();
    expect(new Set(found.map((candidate) => candidate.id)).size).toBe(found.length);
    for (const candidate of found) {
      expect(candidate.reason, candidate.id).toMatch(/[.]$/);
      expect(Number.isFinite(candidate.score), candidate.id).toBe(true);
    }
    expect(found[0]?.reason).toBe("The best by your weights.");
  });

  test("take the fewest strands that work", () => {
    const found = all();
    for (const candidate of found.filter((entry) => entry.works && entry.measures.strandPsf > 0).slice(0, 6)) {
      const row = catalog.deckMembers.find((entry) => entry.designation === candidate.designation);
      if (candidate.member.layout.count === row?.leastStrands) continue;
      const fewer = found.filter((entry) => entry.designation === candidate.designation && entry.profile === candidate.profile && entry.toppingIn === candidate.toppingIn);
      expect(fewer).toHaveLength(1);
    }
  });

  test("are none where no kind of member is considered", () => {
    expect(candidates(withValues(LIBRARY, {"consider.fieldToppedTees": false, "consider.pretoppedTees": false, "consider.planks": false}), catalog)).toEqual([]);
  });

  test("keep to the kinds that are considered", () => {
    const planks = candidates(withValues(LIBRARY, {"consider.fieldToppedTees": false, "consider.pretoppedTees": false, "consider.planks": true}), catalog);
    for (const candidate of planks) expect(candidate.designation).toMatch(/HC|FS/);
  });

  test("have scores without a first where none works", () => {
    const none = candidates(withValues(LIBRARY, {...EVERY_KIND, "bay.spanFt": 150}), catalog);
    expect(none.length).toBeGreaterThan(0);
    for (const candidate of none) {
      expect(candidate.works).toBe(false);
      expect(Number.isFinite(candidate.score)).toBe(true);
    }
  });

  test("move a depressed candidate down as straight strand is preferred", () => {
    const place = (straight: number) => {
      const list = candidates(withValues(LIBRARY, {...EVERY_KIND, "preferences.straight": straight}), catalog).filter((entry) => entry.works);
      return list.findIndex((entry) => entry.measures.depressed);
    };
    expect(place(10)).toBeGreaterThanOrEqual(place(0));
  });

  test("score nothing where no preference has weight", () => {
    const indifferent = withValues(LIBRARY, Object.fromEntries(["shallow", "fewStrands", "straight", "light", "wide"].map((key) => [`preferences.${key}`, 0])));
    for (const candidate of candidates(indifferent, catalog)) expect(candidate.score).toBe(0);
  });
});
