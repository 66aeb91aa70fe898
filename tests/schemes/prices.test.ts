import {describe, expect, test} from "vitest";
import {PRICE_LIST, priceRule, readPrices, type PriceName} from "../../lib/schemes/measures/prices.js";
import {refused} from "../support/errors.js";

describe("unit prices", () => {
  test("are blank until a reader enters them", () => {
    expect(readPrices({})).toEqual({});
    expect(readPrices({deckPerYd3: null, strandPerLb: undefined})).toEqual({});
  });

  test("are read by name; nothing is a price too, and so is the greatest", () => {
    expect(readPrices({deckPerYd3: 650, barsPerLb: 0, settingPerPiece: 1e6})).toEqual({deckPerYd3: 650, barsPerLb: 0, settingPerPiece: 1e6});
  });

  test("that cannot be are refused by their name and what is allowed", () => {
    refused(() => readPrices({strandPerLb: -0.01}), {path: "prices.strandPerLb", value: -0.01, message: /strand: -0.01 per lb is not possible \(0 to 1000000 per lb\)/});
    refused(() => readPrices({strandPerLb: 1_000_001}), {path: "prices.strandPerLb"});
    refused(() => readPrices({strandPerLb: "1"}), {path: "prices.strandPerLb", value: "1"});
    refused(() => readPrices({strandPerLb: NaN}), {path: "prices.strandPerLb"});
    refused(() => readPrices({cranePerDay: 1}), {path: "prices.cranePerDay", allowed: Object.keys(PRICE_LIST).join(", ")});
    for (const plain of [undefined, null, 12, [650]]) refused(() => readPrices(plain), {path: "prices"});
  });

  test("each say in words what they are for, and for which unit", () => {
    for (const [name, {name: words, unit}] of Object.entries(PRICE_LIST)) {
      expect(words.length, name).toBeGreaterThan(4);
      expect(name.toLowerCase().endsWith(`per${unit}`), name).toBe(true);
      expect(priceRule(name as PriceName)).toMatchObject({path: `prices.${name}`, min: 0});
    }
  });
});
