import {describe, expect, test} from "vitest";
import {checkedLedge, ledgeEffectiveDepthIn, lengthWithLoadIn, type Ledge} from "../../lib/beams/ledge.js";
import {refused} from "../support/errors.js";
import {LEDGE} from "./ledgeSample.js";

const of = (changes: Partial<Ledge>): Ledge => ({...LEDGE, ...changes});

test("ledgeEffectiveDepthIn is the depth less cover and half a bar", () => {
  expect(ledgeEffectiveDepthIn(LEDGE)).toBe(8.75);
});

test("lengthWithLoadIn spreads to both sides, not past half-way to the next load nor past the end", () => {
  expect(lengthWithLoadIn(LEDGE, 10)).toBe(24.75);
  expect(lengthWithLoadIn(of({spacingIn: 20}), 10)).toBe(20);
  expect(lengthWithLoadIn(of({endDistanceIn: 6}), 10)).toBe(18.375);
  expect(lengthWithLoadIn(of({endDistanceIn: 100}), 10)).toBe(24.75);
});

describe("checkedLedge", () => {
  test("takes a ledge whose parts just fit", () => {
    expect(checkedLedge(of({ledgeDepthIn: 3}))).toMatchObject({ledgeDepthIn: 3});
    expect(checkedLedge(of({bearingLengthIn: 6, shearSpanIn: 5})).shearSpanIn).toBe(5);
  });

  test("refuses a ledge thinner than two layers of bars and their cover", () => {
    // 2 (1 + 0.5) = 3 in.
    refused(() => checkedLedge(of({ledgeDepthIn: 2.9})), {path: "ledgeDepthIn", value: 2.9, allowed: "3 in or more"});
  });

  test("refuses a bearing or a load that does not lie on the ledge", () => {
    refused(() => checkedLedge(of({bearingLengthIn: 9})), {path: "bearingLengthIn", allowed: "1 to 8 in"});
    // A bearing may press harder at its outer edge, so the load need not stand over its middle.
    expect(checkedLedge(of({bearingLengthIn: 6, shearSpanIn: 6})).shearSpanIn).toBe(6);
    refused(() => checkedLedge(of({shearSpanIn: 8.1})), {path: "shearSpanIn", allowed: "0.5 to 8 in"});
    refused(() => checkedLedge(of({shearSpanIn: 0.4})), {path: "shearSpanIn"});
    refused(() => checkedLedge(of({endDistanceIn: 2})), {path: "endDistanceIn"});
    refused(() => checkedLedge(of({spacingIn: 4})), {path: "spacingIn"});
  });
});
