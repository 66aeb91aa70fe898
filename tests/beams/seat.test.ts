import {describe, expect, test} from "vitest";
import {leastProjectionIn, leastSeatIn, seat, type SeatInput} from "../../lib/beams/seat.js";
import {refused} from "../support/errors.js";

const of = (changes: Partial<SeatInput> = {}) =>
  seat({ledgeProjectionIn: 8, jointGapIn: 1, spanFt: 40, beamSpanFt: 30, stemmed: true, padLengthIn: 5, ...changes});
const verdicts = (changes: Partial<SeatInput>) => Object.fromEntries(of(changes).checks.map(({id, verdict}) => [id, verdict]));

describe("seat", () => {
  test("loses length, place and sweep", () => {
    // 8 - 1 = 7; 1 + 0.5 + 3/8 = 1.875; sqrt(1 + 0.25 + 0.140625) = 1.179248.
    expect(of()).toMatchObject({
      nominalIn: 7, worstLossIn: 1.875, likelyLossIn: expect.closeTo(1.179248, 6), worstIn: 5.125, likelyIn: expect.closeTo(5.820752, 6), neededIn: 3,
    });
    // A 60 ft beam sweeps by 3/4 in.
    expect(of({beamSpanFt: 60}).losses.map(({lossIn}) => lossIn)).toEqual([1, 0.5, 0.75]);
  });

  test("needs span/180, 3 in under stems, 2 in under slabs", () => {
    expect([leastSeatIn(60, true), leastSeatIn(40, true), leastSeatIn(45, true), leastSeatIn(20, false), leastSeatIn(40, false)])
      .toEqual([4, 3, 3, 2, expect.closeTo(2.666667, 6)]);
  });

  test("fails where tolerances can take it", () => {
    // 3 + 1.875 + 1 = 5.875 in of ledge.
    expect(verdicts({ledgeProjectionIn: 5.88, padLengthIn: undefined})).toEqual({"seat tolerance": "near"});
    expect(verdicts({ledgeProjectionIn: 5.87, padLengthIn: undefined})).toEqual({"seat tolerance": "fails"});
    // A ledge that tolerances can leave without any deck.
    expect(of({ledgeProjectionIn: 2.5}).checks[0]).toMatchObject({verdict: "fails", utilization: 99});
  });

  test("is reported by what it is a seat on, and mended by more of that: a ledge where nothing else is said", () => {
    const words = (support: SeatInput["support"]) => {
      const checks = of({ledgeProjectionIn: 4, ...(support ? {support} : {})}).checks;
      return checks.map(({label, message}) => `${label}. ${message}`).join(" ");
    };
    expect(words(undefined)).toBe(words("ledge"));
    expect(words("ledge")).toMatch(/Deck on the ledge, after.*widen the ledge or narrow.*Room for the pad on the ledge.*edge of the ledge.*or widen the ledge/);
    expect(words("pocket")).toMatch(/Deck in the pocket, after.*deepen the pocket or narrow.*Room for the pad in the pocket.*edge of the pocket.*or deepen the pocket/);
    expect(words("beam")).toMatch(/Deck on the beam, after.*widen the beam or narrow.*Room for the pad on the beam.*or widen the beam/);
    const holds = (support: "pocket" | "beam") => of({support}).checks[1]?.message;
    expect(holds("pocket")).toMatch(/fits in the pocket/);
    expect(holds("beam")).toMatch(/fits on the beam/);
  });

  test("has room for the pad, half an inch from the edge", () => {
    expect(verdicts({padLengthIn: 6.5})).toMatchObject({"pad place": "ok"});
    expect(verdicts({padLengthIn: 6.6})).toMatchObject({"pad place": "fails"});
    expect(of({padLengthIn: undefined}).checks).toHaveLength(1);
  });

  test("refuses what cannot be", () => {
    refused(() => of({jointGapIn: 8}), {path: "jointGapIn", allowed: "0 to 7.75 in"});
    refused(() => of({ledgeProjectionIn: 0}), {path: "ledgeProjectionIn"});
    refused(() => of({spanFt: NaN}), {path: "spanFt"});
    refused(() => of({padLengthIn: 0}), {path: "padLengthIn"});
  });
});

test("a support that projects just as far as it must keeps seat and pad; a hundredth less does not", () => {
  for (const stemmed of [true, false]) {
    for (const [spanFt, beamSpanFt, padLengthIn] of [[60, 36, 5], [100, 60, 4], [30, 20, 9.5]] as const) {
      const of = {jointGapIn: 1, spanFt, beamSpanFt, stemmed, ...(stemmed ? {padLengthIn} : {})};
      const least = leastProjectionIn(of);
      expect(seat({...of, ledgeProjectionIn: least}).checks.some(({verdict}) => verdict === "fails")).toBe(false);
      expect(seat({...of, ledgeProjectionIn: least - 0.01}).checks.some(({verdict}) => verdict === "fails")).toBe(true);
    }
  }
});
