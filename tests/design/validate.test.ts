import {describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import type {Field} from "../../lib/design/entries.js";
import {DESIGN_VERSION, FIELDS, LISTS, fieldAt, isOptional} from "../../lib/design/fields.js";
import {parseDesign, validateDesign, validateField} from "../../lib/design/validate.js";
import {seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";

type Plain = Record<string, unknown>;
/** With a load of the reader's own in the first room and a comment, so that their fields are there to be altered. */
const LIBRARY = withValues(seed("branch-library"), {
  "loads.rooms.0.own": {livePsf: 160, reducible: false, reason: "Compact shelving"}, "comments": [{words: "Why not a shallower tee?", on: "deck", by: "Ms. Oduya"}],
});
const copy = (): Plain => structuredClone(LIBRARY) as unknown as Plain;

/** A design with one value set, or removed where it is undefined, at a path. */
function altered(path: string, value: unknown): Plain {
  const design = copy();
  const keys = path.split(".");
  const last = keys.pop() as string;
  const branch = keys.reduce<Plain>((node, key) => node[key] as Plain, design);
  if (value === undefined) delete branch[last];
  else branch[last] = value;
  return design;
}

/** Every field, with the first entry standing for those of a list. */
const PATHS = Object.entries(FIELDS).map(([pattern, field]) => ({path: pattern.replace(/\*/g, "0"), field}));

/** Values of a wrong type for a field. */
function wrongTypes(field: Field): unknown[] {
  const all = [null, [], {}, "text", 3, true];
  const right = {number: "number", choice: "string", text: "string", switch: "boolean"}[field.kind];
  return all.filter((value) => typeof value !== right);
}

/** Values of the right type that are not allowed. */
function outside(field: Field): unknown[] {
  switch (field.kind) {
    case "number":
      return [field.min - 0.001, field.max + 0.001, -1e9, 1e9, ...(field.integer ? [field.min + 0.5] : [])];
    case "choice":
      return ["", "something else", "constructor"];
    case "text":
      return ["x".repeat(field.maxLength + 1)];
    case "switch":
      return [];
  }
}

/** Values at the very ends of what is allowed. */
function limits(field: Field): unknown[] {
  switch (field.kind) {
    case "number":
      return [field.min, field.max];
    case "choice":
      return Object.keys(field.choices);
    case "text":
      return ["", "x".repeat(field.maxLength)];
    case "switch":
      return [true, false];
  }
}

describe("every field of a design", () => {
  test.each(PATHS)("$path takes the ends of its range", ({path, field}) => {
    for (const value of limits(field)) expect(() => validateDesign(altered(path, value)), String(value).slice(0, 20)).not.toThrow();
  });

  test.each(PATHS)("$path refuses a value outside its range and names it", ({path, field}) => {
    for (const value of outside(field)) {
      const error = refused(() => validateDesign(altered(path, value)), {path, value});
      expect(error.message.startsWith(`${field.label}: `)).toBe(true);
      expect(error.message).toContain(`is not possible (${error.allowed})`);
    }
  });

  test.each(PATHS)("$path refuses a value of another type", ({path, field}) => {
    for (const value of wrongTypes(field)) refused(() => validateDesign(altered(path, value)), {path, value});
  });

  test.each(PATHS)("$path may be left out only where its absence has a meaning", ({path}) => {
    if (isOptional(path)) expect(() => validateDesign(altered(path, undefined))).not.toThrow();
    else refused(() => validateDesign(altered(path, undefined)), {path, value: undefined});
  });
});

describe("a live load of one's own", () => {
  test("may be left out, and is whole where it is there", () => {
    expect(() => validateDesign(altered("loads.rooms.0.own", undefined))).not.toThrow();
    refused(() => validateDesign(altered("loads.rooms.0.own", 100)), {path: "loads.rooms.0.own", value: 100});
    refused(() => validateDesign(altered("loads.rooms.0.own", {livePsf: 100})), {path: "loads.rooms.0.own.reducible"});
    refused(() => validateDesign(altered("loads.rooms.0.own", {livePsf: 100, reducible: true, reason: "", psf: 3})), {path: "loads.rooms.0.own.psf"});
  });
});

describe("validateDesign", () => {
  test("returns the very design it was given, unaltered", () => {
    for (const {design} of seeds) {
      const before = structuredClone(design);
      expect(validateDesign(design)).toBe(design);
      expect(design).toEqual(before);
    }
  });

  test("refuses what is not an object", () => {
    for (const value of [null, undefined, 3, "design", true, [], [LIBRARY]]) {
      refused(() => validateDesign(value), {path: "", value, allowed: "an object with the fields of a design"});
    }
  });

  test("refuses another format, and another version", () => {
    refused(() => validateDesign({}), {path: "format", value: undefined, allowed: "plank-and-tee-design"});
    refused(() => validateDesign(altered("format", "a-song")), {path: "format"});
    const next = DESIGN_VERSION + 1;
    const reads = `(this kit reads versions 1 to ${DESIGN_VERSION})`;
    refused(() => validateDesign(altered("version", next)), {path: "version", value: next, message: `version of the design file: ${next} is not possible ${reads}. It was saved by a newer version of the kit; open it there`});
    refused(() => validateDesign(altered("version", 2.5)), {path: "version", message: `version of the design file: 2.5 is not possible ${reads}`});
    refused(() => validateDesign(altered("version", 0)), {path: "version"});
    // A text is no later version, whatever it reads.
    expect(refused(() => validateDesign(altered("version", `${next}`)), {path: "version"}).message).not.toContain("newer");
    refused(() => validateDesign(altered("version", "1")), {path: "version"});
    refused(() => validateDesign(altered("version", undefined)), {path: "version"});
  });

  test("refuses a misspelled field and lists those there are", () => {
    refused(() => validateDesign(altered("bay.spanFeet", 40)), {path: "bay.spanFeet", value: 40, allowed: /bay has spanFt, beamSpanFt/});
    refused(() => validateDesign(altered("color", "red")), {path: "color", allowed: /a design has name, setting/});
    refused(() => validateDesign(altered("loads.rooms.0.live", 40)), {path: "loads.rooms.0.live", allowed: /loads\.rooms\.0 has name, occupancy/});
  });

  test("refuses fields named like an object's own parts", () => {
    refused(() => validateDesign(JSON.parse(JSON.stringify(LIBRARY).replace("{", `{"__proto__": {"x": 1},`))), {path: "__proto__"});
    refused(() => validateDesign(altered("constructor", 1)), {path: "constructor"});
  });

  test("refuses a group that is not one", () => {
    for (const value of [null, 3, "bay", []]) refused(() => validateDesign(altered("bay", value)), {path: "bay", value, allowed: /an object with spanFt/});
    refused(() => validateDesign(altered("loads.rooms.1", null)), {path: "loads.rooms.1", value: null});
  });

  test("refuses a list that is not one, too short or too long", () => {
    for (const [path, {min, max}] of Object.entries(LISTS)) {
      const [entry] = path.split(".").reduce<unknown>((node, key) => (node as Plain)[key], LIBRARY) as unknown[];
      const many = (count: number) => Array.from({length: count}, () => structuredClone(entry));
      expect(() => validateDesign(altered(path, many(max)))).not.toThrow();
      expect(() => validateDesign(altered(path, many(min)))).not.toThrow();
      refused(() => validateDesign(altered(path, many(max + 1))), {path, value: max + 1, allowed: `a list of ${min} to ${max} entries`});
      if (min > 0) refused(() => validateDesign(altered(path, many(min - 1))), {path, value: min - 1});
      refused(() => validateDesign(altered(path, {0: entry})), {path});
    }
  });

  test("takes changed dimensions by name, and refuses what is not a length", () => {
    expect(() => validateDesign(altered("deck.dimensions", {depthIn: 30}))).not.toThrow();
    refused(() => validateDesign(altered("deck.dimensions", [30])), {path: "deck.dimensions"});
    refused(() => validateDesign(altered("deck.dimensions", {depthIn: "30"})), {path: "deck.dimensions.depthIn", value: "30"});
    refused(() => validateDesign(altered("deck.dimensions", {depthIn: -1})), {path: "deck.dimensions.depthIn", message: "depthIn: -1 in is not possible (0 to 240 in)"});
  });
});

describe("parseDesign", () => {
  test("reads back what was written, field by field", () => {
    for (const {design} of seeds) {
      const fileText = JSON.stringify(design, null, 2);
      const read: Design = parseDesign(fileText);
      expect(read).toEqual(design);
      expect(JSON.stringify(read, null, 2)).toBe(fileText);
    }
  });

  test("reads a file that begins with a byte order mark", () => {
    expect(parseDesign(`\uFEFF${JSON.stringify(LIBRARY)}`)).toEqual(LIBRARY);
    // Within a word the same mark is part of it.
    const marked = {...LIBRARY, name: "Branch\uFEFF library"};
    expect(parseDesign(JSON.stringify(marked)).name).toBe(marked.name);
  });

  test("refuses text that is not JSON, on one line", () => {
    for (const fileText of ["", " ", "{", "not JSON", "{\"format\":\n", "\u0000"]) {
      const {message} = refused(() => parseDesign(fileText), {path: "", allowed: "JSON text"});
      expect(message).not.toContain("\n");
    }
  });

  test("shows what the reader of JSON says without breaks and gaps, its words whole", () => {
    const {message} = refused(() => parseDesign("not\n\n\nJSON"), {allowed: "JSON text"});
    expect(message.split(". ").at(-1)).toMatch(/^\S+( \S+){3,}$/);
  });

  test("says of an empty file and of one that is not text what they are, and shows no bytes", () => {
    refused(() => parseDesign(" \n"), {message: "design file: an empty file is not possible (JSON text)"});
    for (const bytes of [[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0], [0xff, 0xd8, 0xff, 0xe0, 0x41, 0x42], [0x50, 0x4b, 0x03, 0x04]]) {
      refused(() => parseDesign(new TextDecoder().decode(new Uint8Array(bytes))), {message: "design file: a file that is not text is not possible (JSON text)"});
    }
  });

  test("takes a sign in a name that a bad copy has put there", () => {
    expect(parseDesign(JSON.stringify({...LIBRARY, name: "Caf\uFFFD"})).name).toBe("Caf\uFFFD");
  });

  test("refuses JSON that is no design", () => {
    for (const fileText of ["null", "3", "[]", "\"design\""]) refused(() => parseDesign(fileText), {allowed: "an object with the fields of a design"});
  });

  test("refuses a number too large to be one", () => {
    refused(() => parseDesign(JSON.stringify(LIBRARY).replace(`"spanFt":40`, `"spanFt":1e999`)), {path: "bay.spanFt", value: Infinity});
  });
});

describe("validateField and fieldAt", () => {
  test("find a field of a list under any index", () => {
    expect(fieldAt("loads.rooms.11.name")).toBe(FIELDS["loads.rooms.*.name"]);
    expect(fieldAt("loads.rooms.name")).toBeUndefined();
    expect(fieldAt("")).toBeUndefined();
    expect(fieldAt("bay")).toBeUndefined();
  });

  test("know no field by the name of an object's own part", () => {
    for (const path of ["constructor", "toString", "__proto__"]) expect(fieldAt(path)).toBeUndefined();
  });

  test("word a refusal by the field", () => {
    refused(() => validateField(FIELDS["bay.spanFt"] as Field, "bay.spanFt", -3), {message: "span: -3 ft is not possible (10 to 150 ft)"});
    refused(() => validateField(FIELDS["loads.partitions"] as Field, "loads.partitions", "yes"), {message: `movable partitions: "yes" is not possible (true or false)`});
    refused(() => validateField(FIELDS["name"] as Field, "name", 7), {message: "name of the design: 7 is not possible (text of at most 80 characters)"});
  });
});

describe("the table of fields", () => {
  test("counts in whole numbers what there are pieces of, and takes lines of text where reasons are given", () => {
    const counted = Object.entries(FIELDS).filter(([, field]) => field.kind === "number" && field.integer).map(([path]) => path);
    expect(counted).toEqual(expect.arrayContaining(["bay.baysAlong", "bay.baysAcross", "bay.floors", "edgeBeam.strands", "girder.strands"]));
    for (const path of counted) refused(() => validateDesign(altered(path, 2.5)), {path, value: 2.5, allowed: /^whole number/});
    const lines = Object.entries(FIELDS).filter(([, field]) => field.kind === "text" && field.multiline).map(([path]) => path);
    expect(lines).toEqual(expect.arrayContaining(["reasons.loads", "reasons.deck", "reasons.frame", "reasons.light"]));
    expect(lines).not.toContain("name");
  });

  test("has a label, a help text and a sensible range for each", () => {
    for (const [path, field] of Object.entries(FIELDS)) {
      expect(field.label, path).toMatch(/^[a-z]/);
      expect(field.help, path).toMatch(/\.$/);
      if (field.kind !== "number") continue;
      expect(field.min, path).toBeLessThan(field.max);
      expect(field.step, path).toBeGreaterThan(0);
    }
  });
});
