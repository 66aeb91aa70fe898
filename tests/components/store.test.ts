import {beforeEach, describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {InputError} from "../../lib/errors.js";
import {createStore, fileNameOf, type Notice} from "../../src/components/store.js";
import {DESIGN_KEY, HISTORY_KEY, type KeyValueStore} from "../../src/components/store/persistence.js";
import {sampleDesign} from "./sample.js";

/** A browser of plain objects: what waits is done when asked, time passes when told. */
class Browser {
  readonly kept = new Map<string, string>();
  readonly saved: {fileName: string; text: string}[] = [];
  readonly storage: KeyValueStore = {
    getItem: (key) => this.kept.get(key) ?? null,
    setItem: (key, value) => void this.kept.set(key, value),
  };
  time = 0;
  private waiting: (() => void)[] = [];

  /** Stands in for the engine: a design of more than 120 ft cannot be worked out here. */
  open(first: Design = sampleDesign()) {
    return createStore({
      first, check: (design) => {
        if (design.bay.spanFt > 120) throw new InputError({path: "bay.spanFt", label: "span", value: design.bay.spanFt, unit: "ft", allowed: "at most 120 ft here"});
      },
      storage: this.storage, now: () => this.time,
      later: (work) => void this.waiting.push(work),
      download: (fileName, text) => void this.saved.push({fileName, text}),
    });
  }

  idle(): void {
    for (const work of this.waiting.splice(0)) work();
  }
}

let browser: Browser;
beforeEach(() => {
  browser = new Browser();
});

const file = (name: string, content: string) => ({name, text: () => Promise.resolve(content)});

describe("changes", () => {
  test("a design whose parts do not fit each other is refused, and the open one stays", () => {
    const store = browser.open();
    const before = store.get();
    expect(() => store.set("bay.spanFt", 130)).toThrow("span: 130 ft is not possible (at most 120 ft here)");
    expect(store.get()).toBe(before);
    expect(store.canUndo).toBe(false);
  });

  test("a file with such a design is not opened", async () => {
    const store = browser.open();
    const before = store.get();
    const text = JSON.stringify({...before, bay: {...before.bay, spanFt: 130}});
    expect(await store.openFile(file("long.json", text))).toBe(false);
    expect(store.get()).toBe(before);
  });

  test("listeners hear at once, and again on each change", () => {
    const store = browser.open();
    const heard: number[] = [];
    const stop = store.observe((design) => heard.push(design.bay.spanFt));
    store.set("bay.spanFt", 60);
    stop();
    store.set("bay.spanFt", 61);
    expect(heard).toEqual([52, 60]);
  });

  test("an impossible value leaves the design as it was", () => {
    const store = browser.open();
    const before = store.get();
    expect(() => store.set("bay.spanFt", -3)).toThrow("span: -3 ft is not possible (10 to 150 ft)");
    expect(store.get()).toBe(before);
    expect(store.canUndo).toBe(false);
  });

  test("the same value again is no step", () => {
    const store = browser.open();
    store.set("bay.spanFt", 52);
    expect(store.canUndo).toBe(false);
  });

  test("nothing is written before there is time for it", () => {
    const store = browser.open();
    store.set("bay.spanFt", 60);
    expect(browser.kept.size).toBe(0);
    browser.idle();
    expect(JSON.parse(browser.kept.get(DESIGN_KEY) ?? "").bay.spanFt).toBe(60);
  });
});

describe("undo", () => {
  test("one drag of a control is one step", () => {
    const store = browser.open();
    for (const value of [53, 54, 55]) {
      store.set("bay.spanFt", value);
      browser.time += 100;
    }
    browser.time += 1000;
    store.set("bay.spanFt", 70);
    store.undo();
    expect(store.get().bay.spanFt).toBe(55);
    store.undo();
    expect(store.get().bay.spanFt).toBe(52);
    expect(store.canUndo).toBe(false);
  });

  test("two controls in quick succession are two steps", () => {
    const store = browser.open();
    store.set("bay.spanFt", 60);
    store.set("bay.beamSpanFt", 20);
    store.undo();
    expect([store.get().bay.spanFt, store.get().bay.beamSpanFt]).toEqual([60, 30]);
  });

  test("several values at once are one step", () => {
    const store = browser.open();
    store.setMany({"bay.spanFt": 60, "deck.toppingIn": 3});
    store.undo();
    expect(store.get()).toEqual(sampleDesign());
    store.redo();
    expect([store.get().bay.spanFt, store.get().deck.toppingIn]).toEqual([60, 3]);
  });

  test("goes on after the page has changed", () => {
    const first = browser.open();
    first.set("bay.spanFt", 60);
    first.flush();
    const second = browser.open();
    expect(second.get().bay.spanFt).toBe(60);
    second.undo();
    expect(second.get().bay.spanFt).toBe(52);
    second.flush();
    const third = browser.open();
    expect([third.get().bay.spanFt, third.canRedo]).toEqual([52, true]);
  });
});

describe("a kept history", () => {
  const withSteps = (steps: (text: string) => unknown) => {
    const store = browser.open();
    store.set("bay.spanFt", 60);
    browser.time += 1000;
    store.set("bay.spanFt", 61);
    browser.time += 1000;
    store.set("bay.spanFt", 62);
    store.undo();
    store.flush();
    browser.kept.set(HISTORY_KEY, JSON.stringify(steps(browser.kept.get(HISTORY_KEY) ?? "")));
    return browser.open();
  };

  test("leaves nothing out: all steps back and forward are there after a reload", () => {
    const store = withSteps((text) => JSON.parse(text));
    store.redo();
    expect([store.get().bay.spanFt, store.canRedo]).toEqual([62, false]);
    for (const span of [61, 60, 52]) {
      store.undo();
      expect(store.get().bay.spanFt).toBe(span);
    }
    expect(store.canUndo).toBe(false);
  });

  test.each<[string, (text: string) => unknown]>([
    ["no object", () => [1]], ["a number", () => 3], ["null", () => null], ["of another design", (text) => ({...JSON.parse(text), of: "{}"})],
    ["lists that are none", (text) => ({...JSON.parse(text), past: 7, future: {length: 2}})], ["steps that are no designs", (text) => ({...JSON.parse(text), past: [null, 1, {}, "x"], future: [[]]})],
  ])("that is spoilt, %s, costs the history and not the design", (_, spoil) => {
    const store = withSteps(spoil);
    expect([store.get().bay.spanFt, store.canUndo, store.canRedo]).toEqual([61, false, false]);
  });

  test("that no one can parse does the same", () => {
    withSteps((text) => JSON.parse(text));
    browser.kept.set(HISTORY_KEY, "{");
    expect([browser.open().get().bay.spanFt, browser.open().canUndo]).toEqual([61, false]);
  });

  test("goes past a step that can no longer be worked out", () => {
    const store = withSteps((text) => {
      const steps = JSON.parse(text) as {past: Design[]};
      return {...steps, past: steps.past.map((step, i) => (i === 1 ? {...step, bay: {...step.bay, spanFt: 130}} : step))};
    });
    store.undo();
    expect(store.get().bay.spanFt).toBe(52);
    store.redo();
    expect(store.get().bay.spanFt).toBe(61);
  });

  test("is cut to what the browser takes", () => {
    const store = browser.open();
    for (let span = 53; span < 93; span++) {
      browser.time += 1000;
      store.set("bay.spanFt", span);
    }
    const take = browser.storage.setItem;
    browser.storage.setItem = (key, value) => {
      if (value.length > 25 * JSON.stringify(store.get()).length) throw new Error("full");
      take(key, value);
    };
    store.flush();
    const again = browser.open();
    let steps = 0;
    for (; again.canUndo; steps++) again.undo();
    expect([steps, again.get().bay.spanFt]).toEqual([20, 72]);
  });
});

describe("tabs", () => {
  test("one takes over what the other has written, and gives up what it had not", () => {
    const [left, right] = [browser.open(), browser.open()];
    left.set("bay.spanFt", 60);
    right.set("bay.spanFt", 70);
    left.flush();
    right.reload();
    browser.idle();
    expect([left.get().bay.spanFt, right.get().bay.spanFt, browser.open().get().bay.spanFt]).toEqual([60, 60, 60]);
  });
});

describe("files", () => {
  test("a saved file opens as the same design", async () => {
    const store = browser.open();
    store.set("bay.spanFt", 66);
    store.saveFile();
    const [saved] = browser.saved;
    expect(saved?.fileName).toBe("branch-library-alder-street.json");
    store.undo();
    expect(await store.openFile(file("a.json", saved?.text ?? ""))).toBe(true);
    expect(store.get().bay.spanFt).toBe(66);
  });

  test.each([
    ["no JSON", "{", "design file"],
    ["a field out of range", JSON.stringify({...sampleDesign(), bay: {...sampleDesign().bay, spanFt: 999}}), "span: 999 ft is not possible (10 to 150 ft)"],
    ["another kind of file", "{}", "format"],
  ])("%s leaves the open design untouched and says why", async (_, content, reason) => {
    const store = browser.open();
    const before = store.get();
    let notice: Notice | undefined;
    store.observeNotice((next) => (notice = next));
    expect(await store.openFile(file("bad.json", content))).toBe(false);
    expect(store.get()).toBe(before);
    expect(notice?.kind).toBe("problem");
    expect(notice?.message).toContain("bad.json was not opened");
    expect(notice?.message).toContain(reason);
  });

  test("a name becomes a file name", () => {
    expect(fileNameOf("Étage 2: Nord/Süd")).toBe("etage-2-nord-sud");
    expect(fileNameOf("…")).toBe("design");
  });
});

test("what is remarked stands beside what is being told", () => {
  const store = browser.open();
  let notice: Notice | undefined;
  store.observeNotice((next) => (notice = next));
  store.remark("One.");
  expect(notice).toEqual({kind: "problem", message: "One."});
  store.remark("Two.");
  expect(notice?.message).toBe("One. Two.");
});

describe("a stored design that no longer fits", () => {
  test("is set aside once, told of, and offered as a file", () => {
    browser.kept.set(DESIGN_KEY, '{"format":"plank-and-tee-design","version":7}');
    const store = browser.open();
    let notice: Notice | undefined;
    store.observeNotice((next) => (notice = next));
    expect(store.get()).toEqual(sampleDesign());
    expect(notice?.keep?.text).toContain('"version":7');
    browser.idle();
    browser.open();
    expect([...browser.kept].filter(([key, text]) => key.includes("set-aside") && text.includes('"version":7'))).toHaveLength(1);
  });

  test("storage that refuses is reported, and the design stays open", () => {
    browser.storage.setItem = () => {
      throw new Error("full");
    };
    const store = browser.open();
    let notice: Notice | undefined;
    store.observeNotice((next) => (notice = next));
    store.set("bay.spanFt", 60);
    browser.idle();
    expect(store.get().bay.spanFt).toBe(60);
    expect(notice?.message).toContain("Save it as a file");
  });
});
