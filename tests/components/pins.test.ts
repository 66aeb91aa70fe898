import {beforeEach, describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValue} from "../../lib/design/edit.js";
import {PIN_LETTERS} from "../../lib/compare/pinLetters.js";
import {InputError} from "../../lib/errors.js";
import {createPins, type PinStore} from "../../src/components/pins.js";
import {PIN_PREFIX, type PinStorage} from "../../src/components/pins/keptPins.js";
import {DESIGN_KEY} from "../../src/components/store/persistence.js";
import {sampleDesign} from "./sample.js";

/** A browser of plain objects with room for so many letters. */
class Browser {
  readonly kept = new Map<string, string>();
  room = Infinity;
  time = 1000;
  private ids = 0;
  readonly storage: PinStorage = {
    getItem: (key) => this.kept.get(key) ?? null,
    setItem: (key, value) => {
      const others = [...this.kept].filter(([one]) => one !== key).reduce((sum, [, text]) => sum + text.length, 0);
      if (others + value.length > this.room) throw new Error("full");
      this.kept.set(key, value);
    },
    removeItem: (key) => void this.kept.delete(key),
    keys: () => [...this.kept.keys()],
  };

  /** Stands in for the engine: a design of more than 120 ft cannot be worked out here. */
  open(storage: PinStorage | undefined = this.storage): PinStore {
    return createPins({
      storage, now: () => this.time++, newId: () => `id${++this.ids}`,
      check: (design) => {
        if (design.bay.spanFt > 120) throw new InputError({path: "bay.spanFt", label: "span", value: design.bay.spanFt, unit: "ft", allowed: "at most 120 ft here"});
      },
    });
  }
}

let browser: Browser;
beforeEach(() => {
  browser = new Browser();
});

const spanning = (spanFt: number): Design => withValue(sampleDesign(), "bay.spanFt", spanFt);
const names = (pins: PinStore) => pins.get().pins.map(({name}) => name);
const from = "a test";

describe("pinning", () => {
  test("keeps designs in their order, over a reload, with all that was said of them", () => {
    const pins = browser.open();
    const {pin: first} = pins.pin(spanning(40), {name: "Short", from});
    pins.pin(spanning(60), {name: "Long", from, note: "Too deep."});
    pins.note(first.id, "Cheap.");
    pins.rename(first.id, "  Shorter ");
    const again = browser.open();
    expect(again.get()).toEqual(pins.get());
    expect(again.get().pins.map(({name, note, design}) => [name, note, design.bay.spanFt])).toEqual([["Shorter", "Cheap.", 40], ["Long", "Too deep.", 60]]);
  });

  test("stands in its order even where the clock goes back", () => {
    const pins = browser.open();
    pins.pin(spanning(40), {name: "One", from});
    browser.time = 10;
    pins.pin(spanning(41), {name: "Two", from});
    expect(names(browser.open())).toEqual(["One", "Two"]);
  });

  test("of one and the same design happens once", () => {
    const pins = browser.open();
    const {pin, fresh} = pins.pin(spanning(40), {from});
    expect(fresh).toBe(true);
    expect(pins.pin(spanning(40), {name: "Other", from})).toEqual({pin, fresh: false});
    expect(names(pins)).toEqual(["Branch library, Alder Street"]);
  });

  test("gives each a name of its own, the design's where none is given", () => {
    const pins = browser.open();
    for (const spanFt of [40, 41, 42]) pins.pin(spanning(spanFt), {from});
    expect(names(pins)).toEqual(["Branch library, Alder Street", "Branch library, Alder Street (2)", "Branch library, Alder Street (3)"]);
    const [first] = pins.get().pins;
    pins.rename(first?.id ?? "", " ");
    expect(names(pins)[0]).toBe("Branch library, Alder Street");
  });

  test("cuts names and notes to what a pin may hold", () => {
    const pins = browser.open();
    pins.pin(spanning(40), {name: "n".repeat(200), note: "o".repeat(5000), from});
    pins.pin(spanning(41), {name: "n".repeat(200), from});
    expect(pins.get().pins.map(({name}) => name.length)).toEqual([PIN_LETTERS.name, PIN_LETTERS.name - 2]);
    expect(pins.get().pins[0]?.note).toHaveLength(PIN_LETTERS.note);
  });

  test.each([["cannot be computed", () => spanning(130)], ["is none", () => ({...sampleDesign(), bay: {}}) as never]])("of a design that %s is refused, and the pins are as they were", (_, design) => {
    const pins = browser.open();
    pins.pin(spanning(40), {from});
    const before = pins.get();
    expect(() => pins.pin(design(), {from})).toThrow(InputError);
    expect(pins.get()).toBe(before);
    expect(browser.kept.size).toBe(1);
  });
});

describe("removing", () => {
  test("takes a pin from the storage, and brings it back to its place", () => {
    const pins = browser.open();
    for (const spanFt of [40, 41, 42]) pins.pin(spanning(spanFt), {name: String(spanFt), from});
    const middle = pins.get().pins[1]?.id ?? "";
    pins.remove(middle);
    expect(names(browser.open())).toEqual(["40", "42"]);
    expect(pins.bringBack()?.name).toBe("41");
    expect(names(browser.open())).toEqual(["40", "41", "42"]);
    expect(pins.bringBack()).toBeUndefined();
  });
});

describe("listeners", () => {
  test("hear at once and on each change until they stop", () => {
    const pins = browser.open();
    const heard: number[] = [];
    const stop = pins.observe((now) => heard.push(now.pins.length));
    const {pin: {id}} = pins.pin(spanning(40), {from});
    pins.remove(id);
    stop();
    pins.pin(spanning(41), {from});
    expect(heard).toEqual([0, 1, 0]);
  });
});

describe("two tabs", () => {
  test("that pin at once lose nothing, and see each other's after a reload", () => {
    const [left, right] = [browser.open(), browser.open()];
    left.pin(spanning(40), {name: "Left", from});
    right.pin(spanning(41), {name: "Right", from});
    left.reload();
    expect(names(left)).toEqual(["Left", "Right"]);
    left.remove(left.get().pins[1]?.id ?? "");
    right.reload();
    expect(names(right)).toEqual(["Left"]);
  });

  test("leave a design that has not changed the very same, so that nothing is computed anew", () => {
    const [left, right] = [browser.open(), browser.open()];
    const {pin} = left.pin(spanning(40), {from});
    right.reload();
    const known = right.get().pins[0]?.design;
    left.pin(spanning(41), {from});
    right.reload();
    expect(right.get().pins[0]?.design).toBe(known);
    left.rename(pin.id, "Renamed");
    right.reload();
    expect(names(right)[0]).toBe("Renamed");
  });
});

describe("a storage", () => {
  test.each([
    ["no JSON", "{"], ["no object", "7"], ["a design that is none", JSON.stringify({name: "x", design: {}})],
    ["a newer version", JSON.stringify({name: "x", at: 3, design: {...sampleDesign(), version: 999}})],
  ])("with a pin that cannot be read, %s, loses neither the others nor the text until the reader removes it", (_, text) => {
    const before = browser.open();
    before.pin(spanning(40), {name: "Good", from});
    browser.kept.set(`${PIN_PREFIX}bad`, text);
    browser.kept.set(DESIGN_KEY, "the open design");
    const pins = browser.open();
    expect(names(pins)).toEqual(["Good"]);
    expect(pins.get().broken.map((one) => [one.id, one.text])).toEqual([["bad", text]]);
    expect(pins.get().broken[0]?.message).not.toBe("");
    pins.pin(spanning(41), {from});
    expect(browser.kept.get(`${PIN_PREFIX}bad`)).toBe(text);
    pins.remove("bad");
    expect(pins.get().broken).toEqual([]);
    expect([...browser.kept.keys()].filter((key) => key.endsWith("bad"))).toEqual([]);
    expect(browser.kept.get(DESIGN_KEY)).toBe("the open design");
    expect(names(browser.open())).toHaveLength(2);
  });

  test("whose pins lack words or time has the rest of them", () => {
    browser.kept.set(`${PIN_PREFIX}a`, JSON.stringify({design: spanning(40), note: 3, at: "now"}));
    expect(browser.open().get().pins).toMatchObject([{id: "a", name: "Unnamed", note: "", at: 0}]);
  });

  test("that is full says which pin is not kept, and takes it once there is room", () => {
    const pins = browser.open();
    const {pin: first} = pins.pin(spanning(40), {name: "Kept", from});
    browser.room = [...browser.kept.values()].join("").length + 200;
    const {pin: second} = pins.pin(spanning(41), {name: "Unkept", from});
    expect([...pins.get().unkept]).toEqual([second.id]);
    pins.reload();
    expect(names(pins)).toEqual(["Kept", "Unkept"]);
    expect(names(browser.open())).toEqual(["Kept"]);
    pins.note(second.id, "Still here.");
    expect(pins.get().pins[1]?.note).toBe("Still here.");
    pins.remove(first.id);
    expect(pins.get().unkept.size).toBe(0);
    expect(browser.open().get().pins.map(({name, note}) => [name, note])).toEqual([["Unkept", "Still here."]]);
  });

  test("that takes no longer note keeps the older one, and the page the newer", () => {
    const pins = browser.open();
    const {pin} = pins.pin(spanning(40), {from, note: "old"});
    browser.room = 10;
    pins.note(pin.id, "newer");
    expect(pins.get()).toMatchObject({pins: [{note: "newer"}], unkept: new Set([pin.id])});
    expect(browser.open().get().pins[0]?.note).toBe("old");
  });

  test("that the browser forbids keeps pins for as long as the page", () => {
    const pins = createPins({check: () => {}, storage: undefined, now: () => 1, newId: () => "a"});
    pins.pin(spanning(40), {from});
    expect([pins.get().pins.length, pins.get().unkept.size]).toEqual([1, 1]);
    pins.remove("a");
    expect(pins.get().pins).toEqual([]);
    const refusing = browser.open({getItem: () => { throw new Error("no"); }, setItem: () => { throw new Error("no"); }, removeItem: () => { throw new Error("no"); }, keys: () => { throw new Error("no"); }});
    refusing.pin(spanning(40), {from});
    expect(refusing.get().pins).toHaveLength(1);
  });
});
