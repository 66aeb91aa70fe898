import {expect, test} from "vitest";
import {BY_ITSELF, surplus} from "../../src/components/moments.js";
import {sampleDesign} from "./sample.js";

test("of moments that nobody asked for the latest dozen stays, and what the reader named always does", () => {
  const design = sampleDesign();
  const all = Array.from({length: 40}, (_, at) => ({id: String(at), name: "", note: "", from: at % 2 === 0 ? BY_ITSELF : "the reader", at, design}));
  // Twenty came by themselves, at 0, 2, 4 and so on: the eight oldest of them go.
  expect(surplus(all).map(({id}) => id)).toEqual(["0", "2", "4", "6", "8", "10", "12", "14"]);
  expect(surplus(all.slice(0, 24))).toEqual([]);
});
