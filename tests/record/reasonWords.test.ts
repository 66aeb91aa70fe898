import {describe, expect, test} from "vitest";
import type {ReasonCount, ReasonState} from "../../lib/design/reasons.js";
import {changesSentence, reasonTitle, reasonsSentence} from "../../lib/record/reasonWords.js";

/** Of eight decisions, as many as are named; the rest have none. */
function counted(some: Partial<Omit<ReasonCount, "all" | "none">>): ReasonCount {
  const {reader = 0, starter = 0, rule = 0, earlier = 0} = some;
  return {all: 8, reader, starter, rule, earlier, none: 8 - reader - starter - rule - earlier};
}

describe("the sentence on a design's reasons", () => {
  test.each([
    [{}, "None of its 8 decisions has a reason that stands."],
    [{reader: 1}, "1 of its 8 decisions has a reason that stands, in your words. 7 have none."],
    [{reader: 2}, "2 of its 8 decisions have a reason that stands, in your words. 6 have none."],
    [{starter: 7}, "7 of its 8 decisions have a reason that stands, in the starter\u2019s words. 1 has none."],
    [{reader: 8}, "All of its 8 decisions have a reason that stands, in your words."],
    [{starter: 8}, "All of its 8 decisions have a reason that stands, in the starter\u2019s words."],
    [{reader: 3, starter: 5}, "All of its 8 decisions have a reason that stands, 3 in your words and 5 in the starter\u2019s."],
    [{rule: 4}, "4 of its 8 decisions have a reason that stands, in the rules\u2019 words. 4 have none."],
    [{reader: 1, starter: 2, rule: 5}, "All of its 8 decisions have a reason that stands, 1 in your words, 2 in the starter\u2019s, 5 in the rules\u2019."],
    [{earlier: 8}, "None of its 8 decisions has a reason that stands. All were written for an earlier choice and do not count."],
    [{reader: 7, earlier: 1}, "7 of its 8 decisions have a reason that stands, in your words. 1 was written for an earlier choice and does not count."],
    [{reader: 4, earlier: 2}, "4 of its 8 decisions have a reason that stands, in your words. 2 were written for an earlier choice and do not count; 2 have none."],
  ])("counts only what stands: %o", (some, words) => {
    expect(reasonsSentence(counted(some))).toBe(words);
  });
});

const stands: ReasonState = {text: "It spans.", standing: "stands", by: "reader", changes: []};

test("a reason's title tells whose words it has and whether it counts", () => {
  expect(reasonTitle(stands)).toBe("Reason.");
  expect(reasonTitle({...stands, by: "starter"})).toBe("Reason, in the starter\u2019s words.");
  expect(reasonTitle({...stands, by: "rule"})).toBe("Reason, in the rule\u2019s words.");
  expect(reasonTitle({...stands, standing: "earlier choice"})).toBe("Reason, written for an earlier choice and not counted.");
  expect(reasonTitle({...stands, standing: "earlier choice", by: "starter"})).toBe("Reason in the starter\u2019s words, written for an earlier choice and not counted.");
});

test("up to eight changes are reported one by one, of more their number", () => {
  const changed = (count: number) => changesSentence({...stands, changes: Array.from({length: count}, (_, i) => ({label: `span ${i + 1}`, then: "40 ft", now: "60 ft"}))});
  expect(changed(0)).toBe("");
  expect(changed(1)).toBe("Changed since: span 1 40 ft \u2192 60 ft.");
  expect(changed(8)).toMatch(/; span 8 40 ft \u2192 60 ft\.$/);
  expect(changed(9)).toMatch(/; span 8 40 ft \u2192 60 ft; and 1 more\.$/);
});
