import {describe, expect, test} from "vitest";
import type {Entry} from "../../lib/design/entries.js";
import {FIELDS, LISTS, patternOf} from "../../lib/design/fields.js";
import {fieldLabel, fieldWords, plain} from "../../lib/design/fieldWords.js";

/** A value that an entry allows, and another one. */
const [sampleOf, otherOf] = [valueAt(0), valueAt(1)];
function valueAt(i: 0 | 1): (entry: Entry) => unknown {
  return (entry) => {
    switch (entry.kind) {
      case "number": return [entry.min, entry.max][i];
      case "choice": return Object.keys(entry.choices)[i];
      case "text": return ["one", "two"][i];
      case "switch": return i === 0;
      case "group": return Object.fromEntries(Object.entries<Entry>(entry.entries).map(([key, inside]) => [key, valueAt(i)(inside)]));
      default: throw new Error(`a list holds ${entry.kind}`);
    }
  };
}

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

  test("is a list entry by entry, each with its name and all else that the table has of it", () => {
    expect(fieldWords("loads.layers", [{name: "Carpet", loadPsf: 1.5}, {name: "Ceiling", loadPsf: 2}])).toBe("Carpet 1.5 psf, Ceiling 2 psf");
    expect(fieldWords("loads.rooms", [{name: "Desks", occupancy: "office"}])).toBe("Desks (office)");
    const own = (reducible: boolean, reason: string) => [{name: "Files", occupancy: "office", own: {livePsf: 120, reducible, reason}}];
    expect(fieldWords("loads.rooms", own(true, ""))).toBe("Files (office, live load of your own: 120 psf, may be reduced: yes)");
    expect(fieldWords("loads.rooms", own(false, "Shelves."))).toBe("Files (office, live load of your own: 120 psf, may be reduced: no, Shelves.)");
    expect(fieldWords("loads.layers", [])).toBe("none");
    expect(fieldWords("roof.layers", [{name: "Boards", loadPsf: 1, thicknessIn: 4, rValue: 22.4}])).toBe("Boards (1 psf, 4 in, resistance of the layer (R-value): 22.4)");
  });

  test("tells any two entries of a list apart, whatever part they differ in", () => {
    for (const [path, {entries}] of Object.entries(LISTS)) {
      const item = Object.fromEntries(Object.entries(entries).map(([key, entry]) => [key, sampleOf(entry)]));
      for (const [key, entry] of Object.entries(entries)) {
        const changed = {...item, [key]: otherOf(entry)};
        expect(fieldWords(path, [changed]), `${path} ${key}`).not.toBe(fieldWords(path, [item]));
      }
    }
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
  test("has what a reader tells at length in several lines: setting, brief, reasons and comments; names in one", () => {
    const long = Object.entries(FIELDS).filter(([, field]) => field.kind === "text" && field.multiline).map(([path]) => path);
    expect(long).toEqual(["setting", "brief", ...Object.keys(FIELDS).filter((path) => path.startsWith("reasons.")), "comments.*.words"]);
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
