import {describe, expect, test} from "vitest";
import {atLeast, atMost, outOfRange} from "../../lib/checks.js";
import {checkNumbers} from "../../src/components/checks.js";

const text = {id: "x", label: "X", clause: "geometry", holds: "It holds.", fails: "It fails."};

describe("the numbers of a check", () => {
  test("read the same way for limits from above and from below: what was found, then the limit with its side", () => {
    expect(checkNumbers(atMost({...text, unit: "ft/min"}, 1400, 1300))).toEqual({found: "1,400 ft/min", limit: "at most 1,300 ft/min"});
    expect(checkNumbers(atLeast({...text, unit: "in2"}, 4.25, 3.245))).toEqual({found: "4.25 in²", limit: "at least 3.25 in²"});
    expect(checkNumbers(atLeast({...text, unit: ""}, 0.9, 1))).toEqual({found: "0.9", limit: "at least 1"});
  });

  test("are left out where no method covers the case", () => {
    expect(checkNumbers(outOfRange({...text, unit: "h", message: ""}, 2, 0))).toEqual({found: "", limit: "not covered"});
  });
});
