import {describe, expect, test} from "vitest";
import {withValue, withValues} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import {seed} from "../support/designs.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");

describe("valueAt", () => {
  test("follows groups and lists", () => {
    expect(valueAt(LIBRARY, "bay.spanFt")).toBe(40);
    expect(valueAt(LIBRARY, "loads.rooms.1.name")).toBe("Reading rooms");
    expect(valueAt(LIBRARY, "loads.layers")).toHaveLength(4);
  });

  test("is undefined where there is nothing", () => {
    for (const path of ["", "bay.width", "loads.rooms.9.name", "bay.spanFt.x.y", "deck.dimensions.depthIn"]) expect(valueAt(LIBRARY, path)).toBeUndefined();
  });
});

describe("withValue", () => {
  test("changes a copy and shares what stays", () => {
    const changed = withValue(LIBRARY, "bay.spanFt", 44);
    expect(changed.bay.spanFt).toBe(44);
    expect(LIBRARY.bay.spanFt).toBe(40);
    expect(changed.deck).toBe(LIBRARY.deck);
  });

  test("changes one entry of a list", () => {
    const changed = withValue(LIBRARY, "loads.layers.2.loadPsf", 7);
    expect(changed.loads.layers.map((layer) => layer.loadPsf)).toEqual([1, 2, 7, 2]);
    expect(changed.loads.layers[0]).toBe(LIBRARY.loads.layers[0]);
  });

  test("puts a whole list or group in place", () => {
    expect(withValue(LIBRARY, "loads.layers", []).loads.layers).toEqual([]);
    expect(withValue(LIBRARY, "deck.dimensions", {depthIn: 30}).deck.dimensions).toEqual({depthIn: 30});
  });

  test("sets and removes an optional field", () => {
    const set = withValue(LIBRARY, "deck.strandHeightCenterIn", 5);
    expect(set.deck.strandHeightCenterIn).toBe(5);
    const removed = withValue(set, "deck.strandHeightCenterIn", undefined);
    expect(removed).toEqual(LIBRARY);
    expect("strandHeightCenterIn" in removed.deck).toBe(false);
    expect(withValue(withValue(LIBRARY, "deck.dimensions", {depthIn: 30}), "deck.dimensions", undefined)).toEqual(LIBRARY);
  });

  test("refuses a value that does not fit its field", () => {
    refused(() => withValue(LIBRARY, "bay.spanFt", -3), {path: "bay.spanFt", message: "span: -3 ft is not possible (10 to 150 ft)"});
    refused(() => withValue(LIBRARY, "bay.spanFt", undefined), {path: "bay.spanFt"});
    refused(() => withValue(LIBRARY, "loads.rooms", []), {path: "loads.rooms", value: 0});
    refused(() => withValue(LIBRARY, "deck.strandHeightCenterIn", -1), {path: "deck.strandHeightCenterIn", value: -1});
    refused(() => withValue(LIBRARY, "loads.rooms.0", undefined), {path: "loads.rooms.0"});
    refused(() => withValue(LIBRARY, "deck", {}), {path: "deck.member"});
  });

  test("refuses a path that leads nowhere", () => {
    for (const path of ["bay.width", "x", "", "constructor", "bay.spanFt.x", "loads.rooms.7.name", "deck.dimensions.depthIn"]) {
      refused(() => withValue(LIBRARY, path, 3));
    }
    refused(() => withValue(LIBRARY, "loads.rooms.7.name", "Attic"), {path: "loads.rooms.7.name", value: "Attic"});
  });
});

describe("withValues", () => {
  test("makes several changes in order", () => {
    const changed = withValues(LIBRARY, {"deck.member": "12DT32", "deck.pattern": "128-D1", "bay.spanFt": 60});
    expect(changed.deck).toMatchObject({member: "12DT32", pattern: "128-D1"});
    expect(changed.bay.spanFt).toBe(60);
  });

  test("with no changes is the same design", () => {
    expect(withValues(LIBRARY, {})).toBe(LIBRARY);
  });
});
