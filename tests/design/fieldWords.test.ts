import {describe, expect, test} from "vitest";
import {FIELDS, patternOf} from "../../lib/design/fields.js";
import {fieldLabel, fieldWords, plain} from "../../lib/design/fieldWords.js";

describe("what a value is called", () => {
  test("is its field's or its list's name, and that of the changed dimensions; a path of none is its own", () => {
    expect(fieldLabel("bay.spanFt")).toBe("span");
    expect(fieldLabel("loads.rooms")).toBe("rooms");
    expect(fieldLabel("deck.dimensions")).toBe("changed dimensions");
    expect(fieldLabel("deck.color")).toBe("deck.color");
  });
});

describe("a value as a reader meets it", () => {
  test("has its unit where its field has one", () => {
    expect(fieldWords("bay.spanFt", 40)).toBe("40 ft");
    expect(fieldWords("bay.floors", 3)).toBe("3");
    expect(fieldWords("edgeBeam.claddingPlf", 1250)).toBe("1,250 plf");
  });

  test("is a choice in its words, a switch by yes and no, a text as it is, and none where there is nothing", () => {
    expect(fieldWords("story.ceiling", "head")).toBe("at the window's head");
    expect(fieldWords("story.ceiling", "unheard of")).toBe("unheard of");
    expect([fieldWords("column.sways", true), fieldWords("column.sways", false)]).toEqual(["yes", "no"]);
    expect(fieldWords("deck.member", "10DT24")).toBe("10DT24");
    expect(fieldWords("deck.strandHeightEndIn", undefined)).toBe("none");
    expect(fieldWords("bay.spanFt", "none")).toBe("none");
    expect(fieldWords("deck.color", "red")).toBe("red");
  });

  test("is a list entry by entry, a layer with its weight and a room with its use and a load of its own", () => {
    expect(fieldWords("loads.layers", [{name: "Carpet", loadPsf: 1.5}, {name: "Ceiling", loadPsf: 2}])).toBe("Carpet 1.5 psf, Ceiling 2 psf");
    const own = (reducible: boolean) => [{name: "Files", occupancy: "office", own: {livePsf: 120, reducible, reason: ""}}];
    expect(fieldWords("loads.rooms", own(true))).toBe("Files (office, 120 psf entered)");
    expect(fieldWords("loads.rooms", own(false))).toBe("Files (office, 120 psf entered and taken in full)");
    expect(fieldWords("loads.rooms", [{name: "Desks", occupancy: "office"}])).toBe("Desks (office)");
    expect(fieldWords("loads.layers", [])).toBe("none");
  });

  test("is changed dimensions by name, and none where none are changed", () => {
    expect(fieldWords("deck.dimensions", {depthIn: 26, stemBottomIn: 4.75})).toBe("depthIn 26, stemBottomIn 4.75");
    expect(fieldWords("deck.dimensions", {})).toBe("none");
  });

  test("is whole feet as a number, and other feet with their inches", () => {
    expect([fieldWords("bay.spanFt", 60), fieldWords("bay.spanFt", 176 / 12), fieldWords("story.floorToFloorFt", 13.5)]).toEqual(["60 ft", "14'-8\"", "13'-6\""]);
  });

  test("has as many decimals as it needs, four at the most", () => {
    expect([3, 0.5, 1234.25, 0.33333333, -2.5].map(plain)).toEqual(["3", "0.5", "1,234.25", "0.3333", "\u22122.5"]);
  });
});

describe("the table of fields", () => {
  test("has what a reader tells at length in several lines: setting, brief and reasons; names in one", () => {
    const long = Object.entries(FIELDS).filter(([, field]) => field.kind === "text" && field.multiline).map(([path]) => path);
    expect(long).toEqual(["setting", "brief", ...Object.keys(FIELDS).filter((path) => path.startsWith("reasons."))]);
  });

  test("counts bays and floors in whole numbers, and lengths in any", () => {
    const whole = (path: string) => {
      const field = FIELDS[path];
      return field?.kind === "number" && field.integer === true;
    };
    expect(["bay.baysAlong", "bay.baysAcross", "bay.floors", "girder.strands"].map(whole)).toEqual([true, true, true, true]);
    expect(["bay.spanFt", "deck.toppingIn"].map(whole)).toEqual([false, false]);
  });

  test("stands for any entry of a list by a star, whatever its number", () => {
    expect(patternOf("loads.rooms.0.name")).toBe("loads.rooms.*.name");
    expect(patternOf("loads.rooms.11")).toBe("loads.rooms.*");
    expect(patternOf("loads.rooms.1a.name")).toBe("loads.rooms.1a.name");
    expect(patternOf("bay.spanFt")).toBe("bay.spanFt");
  });
});
