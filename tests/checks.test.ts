import {describe, expect, test} from "vitest";
import {atLeast, atMost, comparison, outOfRange, worst, type Check} from "../lib/checks.js";

const text = {id: "x", label: "X", unit: "kip", clause: "geometry", holds: "It holds.", fails: "It fails."};

describe("atMost", () => {
  test("holds below the limit, is near it from 95 %, and fails beyond it", () => {
    expect(atMost(text, 94.9, 100)).toMatchObject({verdict: "ok", utilization: expect.closeTo(0.949, 12), message: "It holds."});
    expect(atMost(text, 95, 100)).toMatchObject({verdict: "near", message: "It holds."});
    expect(atMost(text, 100, 100)).toMatchObject({verdict: "near", utilization: 1});
    expect(atMost(text, 100.1, 100)).toMatchObject({verdict: "fails", message: "It fails."});
  });

  test("does not fail a demand that exceeds its limit by rounding alone", () => {
    expect(atMost(text, 0.1 + 0.2, 0.3).verdict).toBe("near");
  });

  test("calls a limit that is just met good where meeting it is enough", () => {
    expect(atMost({...text, meetingIsEnough: true}, 36, 36).verdict).toBe("ok");
    expect(atMost({...text, meetingIsEnough: true}, 37, 36).verdict).toBe("fails");
  });

  test("asks nothing of a capacity where there is no demand", () => {
    expect(atMost(text, 0, 100)).toMatchObject({verdict: "ok", utilization: 0});
    expect(atMost(text, -5, 100)).toMatchObject({verdict: "ok", utilization: 0});
    expect(atMost(text, 0, 0).verdict).toBe("ok");
  });

  test("fails where there is a demand and no capacity, with a finite utilization", () => {
    expect(atMost(text, 5, 0)).toMatchObject({verdict: "fails", utilization: 99});
    expect(atMost(text, 5, -1)).toMatchObject({verdict: "fails", utilization: 99});
    expect(atMost(text, 1e9, 1e-9).utilization).toBe(99);
  });

  test("fails where even no demand lies above the capacity", () => {
    expect(atMost(text, 0, -10)).toMatchObject({verdict: "fails", utilization: 99});
  });

  test("makes words with numbers in them only where they are said", () => {
    let made = 0;
    const counted = {...text, fails: () => `It lacks ${++made} kip.`};
    expect(atMost(counted, 99, 100).message).toBe("It holds.");
    expect(made).toBe(0);
    expect(atMost(counted, 101, 100).message).toBe("It lacks 1 kip.");
  });

  test("carries its texts and numbers", () => {
    expect(atMost(text, 3, 4)).toEqual({
      id: "x", label: "X", unit: "kip", clause: "geometry", sense: "at most", demand: 3, capacity: 4, utilization: 0.75, verdict: "ok", message: "It holds.",
    });
  });
});

describe("atLeast", () => {
  test("compares what is needed with what is given", () => {
    // 3 in needed of 6 in given uses up half.
    expect(atLeast(text, 6, 3)).toMatchObject({demand: 3, capacity: 6, utilization: 0.5, verdict: "ok"});
    expect(atLeast(text, 2.9, 3).verdict).toBe("fails");
    expect(atLeast(text, -1, 3)).toMatchObject({verdict: "fails", utilization: 99});
  });
});

describe("outOfRange", () => {
  test("says so whatever the numbers are", () => {
    const check = outOfRange({id: "x", label: "X", unit: "kip", clause: "geometry", message: "Not covered."}, 1, 2);
    expect(check).toMatchObject({verdict: "out of range", utilization: 0.5, message: "Not covered."});
  });
});

describe("worst", () => {
  const checks = (...verdicts: Check["verdict"][]) => verdicts.map((verdict) => ({...atMost(text, 0, 1), verdict}));

  test("is good where there is nothing to check", () => {
    expect(worst([])).toBe("ok");
  });

  test("takes a failure before what is out of range before what is near", () => {
    expect(worst(checks("ok", "near"))).toBe("near");
    expect(worst(checks("near", "out of range", "ok"))).toBe("out of range");
    expect(worst(checks("out of range", "fails", "near"))).toBe("fails");
  });
});

describe("comparison", () => {
  test("an upper limit is held against what is demanded, a lower one against what is given", () => {
    expect(comparison(atMost({...text, label: "Velocity in the main"}, 1400, 1300))).toEqual({found: 1400, limit: 1300, side: "at most"});
    expect(comparison(atLeast({...text, label: "Ceiling height"}, 84, 90))).toEqual({found: 84, limit: 90, side: "at least"});
  });

  test("nothing is compared where no method covers the case, as no limit is known", () => {
    expect(comparison(outOfRange({...text, message: ""}, 3, 0))).toBeUndefined();
  });
});
