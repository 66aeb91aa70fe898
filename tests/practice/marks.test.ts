import {describe, expect, test} from "vitest";
import {readCatalog} from "../../lib/catalog.js";
import type {Item} from "../../lib/practice/item.js";
import {keysOf, slipsOf, toleranceWords} from "../../lib/practice/keys.js";
import {itemOf} from "../../lib/practice/kinds.js";
import {check} from "../../lib/practice/marks.js";
import {mistakePart, numberPart, orderPart, slip} from "../../lib/practice/parts.js";
import {measure, measureText, prose, proseText} from "../../lib/practice/prose.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {once} from "../support/once.js";

const catalog = once(() => readCatalog(readRawTables()));

/** A beam of 20 ft under 1,000 plf: 50 kip-ft; then what two of them carry, by the reader's own answer. */
const made = (): Item => ({
  kind: "made-up", topic: "loads", level: 1, title: "A beam", seed: 1, turn: 1, number: 1, question: [prose`A beam.`], givens: [{name: "span", value: 20, unit: "ft"}],
  parts: [
    numberPart({ask: prose`Moment?`, label: "moment", unit: "kip-ft", key: 50, slips: [slip("span not squared", 2.5, "Square it."), slip("fixed ends", 33.3, "Free ends."), slip("as right", 50.5, "No slip."), slip("fixed once more", 33.4, "The same.")]}),
    numberPart({ask: prose`Of two?`, label: "both", unit: "kip-ft", key: (earlier) => 2 * Number(earlier[0]), slips: (earlier) => [slip("one only", Number(earlier[0]), "Two of them.")]}),
    orderPart({ask: prose`Order?`, by: "from the least", options: [{id: "b", text: ["B"]}, {id: "a", text: ["A"]}, {id: "c", text: ["C"]}], key: "a,b,c", slips: [{name: "turned", order: "c,b,a", says: "Turn it."}, {name: "right", order: "a,b,c", says: ""}, {name: "turned again", order: "c,b,a", says: ""}]}),
    mistakePart({ask: prose`Line?`, lines: [1, 2].map((result) => ({symbol: "x", label: "x", expression: String(result), values: {}, result, unit: "", source: "definition"})), wrong: 2, says: {"1": "Line 1 is right."}, working: {title: "", steps: []}}),
  ],
});
const first = (answer: string, system: "US" | "SI" = "US") => check(made(), [answer], system).parts[0];

describe("marks", () => {
  test("count an answer within its tolerance, to either side, and none beyond it", () => {
    for (const answer of ["50", "50 kip-ft", "49.001", "50.999", "67.8 kN m", "600 kip-in"]) expect(first(answer), answer).toMatchObject({verdict: "right", points: 1, of: 1});
    for (const answer of ["48.9", "51.1"]) expect(first(answer), answer).toMatchObject({verdict: "wrong", points: 0});
    expect(first("51.1")?.says).toBe("Too much: you answered 51.1 kip-ft.");
    expect(first("48.9")?.says).toMatch(/^Too little/);
    expect(first("67.79", "SI")).toMatchObject({verdict: "right"});
  });

  test("tell a slip by its name, near its value as well", () => {
    expect(first("2.5")).toMatchObject({verdict: "slip", slip: "span not squared", says: "Square it.", points: 0});
    expect(first("33")).toMatchObject({verdict: "slip", slip: "fixed ends"});
    expect(first("40")).toMatchObject({verdict: "wrong"});
  });

  test("leave out a slip that comes to the right answer, or to another slip", () => {
    const part = made().parts[0];
    if (part?.type !== "number") throw new Error("no number");
    expect(slipsOf(part, []).map(({name}) => name)).toEqual(["span not squared", "fixed ends"]);
  });

  test("tell the unit that a number without one would be right in, a unit of another kind, and a wrong sign", () => {
    expect(first("600")).toMatchObject({verdict: "unit", slip: "kip-in for kip-ft", says: "The number would be right in kip-in; the question asks for kip-ft."});
    expect(first("50 kip")).toMatchObject({verdict: "unit", slip: "wrong kind of unit"});
    expect(first("600 kip-ft")).toMatchObject({verdict: "wrong"});
    expect(first("-50")).toMatchObject({verdict: "slip", slip: "wrong sign"});
    expect(first("ten")).toMatchObject({verdict: "unreadable"});
    expect(first("")).toMatchObject({verdict: "missing", points: 0});
  });

  test("count a later part as it follows from the reader's own earlier answer, and as the key has it", () => {
    const second = (one: string, two: string) => check(made(), [one, two]).parts[1];
    expect(second("40", "80")).toMatchObject({verdict: "right from there", points: 1});
    expect(second("40", "100")).toMatchObject({verdict: "right", points: 1});
    expect(second("", "100")).toMatchObject({verdict: "right"});
    expect(second("ten", "100")).toMatchObject({verdict: "right"});
    expect(second("40", "40")).toMatchObject({verdict: "slip", slip: "one only"});
    expect(second("40", "50")).toMatchObject({verdict: "slip", slip: "one only"});
    expect(second("40", "90")).toMatchObject({verdict: "wrong"});
  });

  test("tell orders and lines, and what is not offered", () => {
    const [, , order, line] = check(made(), ["", "", "c, b,a", "1"]).parts;
    expect(order).toMatchObject({verdict: "slip", slip: "turned"});
    expect(line).toMatchObject({verdict: "wrong", says: "Line 1 is right."});
    expect(check(made(), ["", "", "a, b ,c", "2"])).toMatchObject({points: 2, of: 4});
    expect(check(made(), ["", "", "b,a,c", "3"]).parts.slice(2)).toMatchObject([{verdict: "wrong", says: "1 of 3 stand in their place."}, {verdict: "unreadable", says: "There are lines 1 to 2."}]);
    for (const answer of ["a,b", "a,a,b", "a,b,d", "0.5"]) expect(check(made(), ["", "", answer]).parts[2], answer).toMatchObject({verdict: "unreadable"});
    const choice = itemOf("governing-combination", 1, catalog());
    expect(check(choice, ["neither"]).parts[0]).toMatchObject({verdict: "unreadable", says: "That is none of dead, both."});
  });

  test("never tell the answer, whatever is typed", () => {
    for (const kind of ["factored-load", "soffit-stress", "size-a-bay", "snow-drift"]) {
      const item = itemOf(kind, 3, catalog());
      const keys = keysOf(item);
      for (const answers of [item.parts.map(() => "1"), item.parts.map(() => "999999"), item.parts.map(() => "yes"), item.parts.map(() => "1 psf")]) {
        check(item, answers).parts.forEach(({says}, i) => {
          if (typeof keys[i] === "number") expect(says).not.toContain(measureText({value: keys[i] as number, unit: ""}));
        });
      }
    }
  });
});

describe("words", () => {
  test("show quantities in the reader's units", () => {
    const sentence = prose`Spans ${measure(40, "ft")}, carries ${measure(62, "psf")}, has ${3} ${prose`stems of ${measure(6, "in")}`}.`;
    expect(proseText(sentence)).toBe("Spans 40 ft, carries 62 psf, has 3 stems of 6 in.");
    expect(proseText(sentence, "SI")).toBe("Spans 12.19 m, carries 2.969 kPa, has 3 stems of 152.4 mm.");
    expect(proseText(sentence, "both")).toContain("40 ft (12.19 m)");
    expect([measureText(measure(12.5, "ft")), measureText(measure(1234.5678, "plf")), measureText(measure(0.8, "")), measureText(measure(7.123456, "ft")), measureText(measure(2, "in2"))]).toEqual(["12'-6\"", "1,235 plf", "0.8", "7.123 ft", "2 in\u00b2"]);
  });

  test("state the tolerance", () => {
    expect([toleranceWords({percent: 2}, "ft"), toleranceWords({within: 0.5}, "in"), toleranceWords({within: 0.5}, "in", "SI"), toleranceWords({within: 0}, "")]).toEqual(["to within 2 %", "to within 0.5 in", "to within 12.7 mm", "exactly"]);
  });
});
