import {beforeEach, describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {InputError} from "../../lib/errors.js";
import {createStore, type DesignStore, type Notice} from "../../src/components/store.js";
import {fileNameOf} from "../../src/components/store/designFile.js";
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
  /** What the engine refuses besides; see {@link open}. */
  refuses: (design: Design) => boolean = () => false;
  private waiting: (() => void)[] = [];

  /** Stands in for the engine: a design of more than 120 ft cannot be worked out here. */
  open(first: Design = sampleDesign()) {
    return createStore({
      first, check: (design) => {
        if (design.bay.spanFt > 120) throw new InputError({path: "bay.spanFt", label: "span", value: design.bay.spanFt, unit: "ft", allowed: "at most 120 ft here"});
        if (this.refuses(design)) throw new InputError({path: "bay.spanFt", label: "span", value: design.bay.spanFt, unit: "ft", allowed: "less here"});
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

/** What a store has told its reader last. */
function noticeOf(store: DesignStore): Notice | undefined {
  let last: Notice | undefined;
  store.observeNotice((notice) => (last = notice))();
  return last;
}

const spanned = (spanFt: number): Design => ({...sampleDesign(), bay: {...sampleDesign().bay, spanFt}});

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

  test("a clock that is set back does not make two changes one step", () => {
    const store = browser.open();
    browser.time = 10_000;
    store.set("bay.spanFt", 60);
    browser.time = 4000;
    store.set("bay.spanFt", 70);
    store.undo();
    expect(store.get().bay.spanFt).toBe(60);
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

describe("tabs", () => {
  test("one takes over what the other has written", () => {
    const [left, right] = [browser.open(), browser.open()];
    left.set("bay.spanFt", 60);
    left.flush();
    right.reload();
    expect(right.get().bay.spanFt).toBe(60);
    right.undo();
    expect(right.get().bay.spanFt).toBe(52);
  });

  test("changes in two of them at one time both hold, whether or not one has heard of the other", () => {
    for (const heard of [true, false]) {
      browser = new Browser();
      const [left, right] = [browser.open(), browser.open()];
      left.set("bay.spanFt", 60);
      right.set("bay.beamSpanFt", 24);
      right.set("deck.toppingIn", 3);
      left.flush();
      if (heard) right.reload();
      right.flush();
      left.reload();
      const kept = browser.open();
      for (const store of [left, right, kept]) {
        const {bay, deck} = store.get();
        expect([bay.spanFt, bay.beamSpanFt, deck.toppingIn], String(heard)).toEqual([60, 24, 3]);
      }
      for (const expected of [[60, 24, 2], [60, 30, 2], [52, 30, 2]]) {
        kept.undo();
        const {bay, deck} = kept.get();
        expect([bay.spanFt, bay.beamSpanFt, deck.toppingIn]).toEqual(expected);
      }
    }
  });

  test("of two changes of one value the last written holds, and the other is one step back", () => {
    const [left, right] = [browser.open(), browser.open()];
    left.set("bay.spanFt", 60);
    right.set("bay.spanFt", 70);
    left.flush();
    right.flush();
    left.reload();
    expect([left.get().bay.spanFt, right.get().bay.spanFt]).toEqual([70, 70]);
    left.undo();
    expect(left.get().bay.spanFt).toBe(60);
  });

  test("a drag goes on over what another has written, and is still one step", () => {
    const [left, right] = [browser.open(), browser.open()];
    right.set("bay.spanFt", 53);
    left.set("bay.beamSpanFt", 24);
    left.flush();
    right.reload();
    right.set("bay.spanFt", 54);
    expect([right.get().bay.spanFt, right.get().bay.beamSpanFt]).toEqual([54, 24]);
    right.undo();
    expect([right.get().bay.spanFt, right.get().bay.beamSpanFt]).toEqual([52, 24]);
  });

  test("a change that does not fit what the other has written is told of and offered as a file", () => {
    browser.refuses = ({bay}) => bay.spanFt === 60 && bay.beamSpanFt === 24;
    const [left, right] = [browser.open(), browser.open()];
    left.set("bay.spanFt", 60);
    right.set("bay.beamSpanFt", 24);
    left.flush();
    right.flush();
    expect(right.get().bay).toMatchObject({spanFt: 60, beamSpanFt: 30});
    expect(noticeOf(right)?.message).toContain("does not fit what another tab has changed");
    expect(JSON.parse(noticeOf(right)?.keep?.text ?? "")).toMatchObject({bay: {spanFt: 52, beamSpanFt: 24}});
  });

  test("a change that could not be written survives what another writes", () => {
    const [left, right] = [browser.open(), browser.open()];
    const write = browser.storage.setItem;
    browser.storage.setItem = () => {
      throw new Error("no");
    };
    right.set("bay.beamSpanFt", 24);
    right.flush();
    browser.storage.setItem = write;
    left.set("bay.spanFt", 60);
    left.flush();
    right.reload();
    expect(right.get().bay).toMatchObject({spanFt: 60, beamSpanFt: 24});
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

  test("gives way to the last one in its history that can be worked out, and nothing is lost", () => {
    const store = browser.open();
    for (const spanFt of [60, 70, 80]) {
      store.set("bay.spanFt", spanFt);
      browser.time += 1000;
    }
    store.flush();
    // As if a later engine refused what an earlier one took.
    browser.refuses = ({bay}) => bay.spanFt > 65;
    const again = browser.open();
    expect(again.get().bay.spanFt).toBe(60);
    expect(noticeOf(again)?.message).toContain("the last one that can");
    expect(JSON.parse(noticeOf(again)?.keep?.text ?? "")).toMatchObject({bay: {spanFt: 80}});
    again.flush();
    const third = browser.open();
    expect([third.get().bay.spanFt, noticeOf(third)]).toEqual([60, undefined]);
    third.undo();
    expect(third.get().bay.spanFt).toBe(52);
    browser.refuses = () => false;
    third.redo();
    third.redo();
    third.redo();
    expect(third.get().bay.spanFt).toBe(80);
  });

  test("gives way to a step that was undone where none before it can be worked out, and to the first design where none can at all", () => {
    const store = browser.open(spanned(70));
    store.set("bay.spanFt", 60);
    store.undo();
    store.flush();
    browser.refuses = ({bay}) => bay.spanFt > 65;
    expect(browser.open().get().bay.spanFt).toBe(60);
    browser.kept.clear();
    const other = browser.open(spanned(70));
    browser.refuses = () => false;
    other.set("bay.spanFt", 71);
    other.flush();
    browser.refuses = ({bay}) => bay.spanFt > 65;
    const last = browser.open();
    expect(last.get()).toEqual(sampleDesign());
    expect(noticeOf(last)?.message).toContain("a starter");
  });

  test("gives way to its history where its own text is damaged", () => {
    const store = browser.open();
    store.set("bay.spanFt", 60);
    browser.time += 1000;
    store.set("bay.spanFt", 70);
    store.flush();
    browser.kept.set(DESIGN_KEY, (browser.kept.get(DESIGN_KEY) ?? "").slice(0, 100));
    expect(browser.open().get().bay.spanFt).toBe(60);
  });

  test("that another tab has written does not take the place of the open one", () => {
    const store = browser.open();
    store.set("bay.spanFt", 60);
    store.flush();
    browser.kept.set(DESIGN_KEY, '{"format":"plank-and-tee-design","version":7}');
    store.reload();
    expect(store.get().bay.spanFt).toBe(60);
    expect(noticeOf(store)?.message).toContain("so the open one stays");
    expect(noticeOf(store)?.keep?.text).toContain('"version":7');
    store.set("bay.spanFt", 61);
    store.flush();
    expect(browser.open().get().bay.spanFt).toBe(61);
  });
});

describe("undo into a design that cannot be worked out", () => {
  const withHistory = (...past: number[]) => {
    const design = JSON.stringify(spanned(60));
    browser.kept.set(DESIGN_KEY, design);
    browser.kept.set(HISTORY_KEY, JSON.stringify({of: design, past: past.map(spanned), future: []}));
    return browser.open();
  };

  test("passes it over, tells why, and offers it as a file; redo passes over it alike", () => {
    const store = withHistory(40, 130, 131);
    store.undo();
    expect(store.get().bay.spanFt).toBe(40);
    expect(noticeOf(store)?.message).toContain("passed over. span: 131 ft is not possible (at most 120 ft here)");
    expect(JSON.parse(noticeOf(store)?.keep?.text ?? "")).toEqual(spanned(131));
    store.redo();
    expect(store.get().bay.spanFt).toBe(60);
    expect(noticeOf(store)?.message).toContain("130 ft is not possible");
  });

  test("leaves the open design where none before it can be worked out", () => {
    const store = withHistory(130, 131);
    const heard: number[] = [];
    store.observe((design) => heard.push(design.bay.spanFt));
    store.undo();
    expect(heard).toEqual([60]);
    expect(noticeOf(store)?.message).toContain("passed over");
    store.flush();
    expect(browser.open().get().bay.spanFt).toBe(60);
  });
});

describe("storage that refuses", () => {
  const refuse = (name: string) => {
    browser.storage.setItem = () => {
      throw Object.assign(new Error("no"), {name});
    };
  };

  test.each([
    ["for want of room", "QuotaExceededError", "has no more room for this site, so the last changes are lost"],
    ["for want of room, by the older name", "NS_ERROR_DOM_QUOTA_REACHED", "has no more room for this site"],
    ["by the reader's settings", "SecurityError", "keeps nothing for this site, so the design is lost"],
  ])("%s is told of, and the design stays open", (_, name, words) => {
    const store = browser.open();
    refuse(name);
    store.set("bay.spanFt", 60);
    browser.idle();
    expect(store.get().bay.spanFt).toBe(60);
    expect(noticeOf(store)?.message).toContain(words);
    expect(noticeOf(store)?.message).toContain("as a file");
  });

  test("and takes again what is written later is no longer told of", () => {
    const store = browser.open();
    const write = browser.storage.setItem;
    refuse("QuotaExceededError");
    store.set("bay.spanFt", 60);
    store.flush();
    expect(noticeOf(store)).toBeDefined();
    browser.storage.setItem = write;
    store.set("bay.spanFt", 61);
    store.flush();
    expect(noticeOf(store)).toBeUndefined();
  });

  test("for want of room takes the design with less of its history", () => {
    const store = browser.open();
    const write = browser.storage.setItem;
    browser.storage.setItem = (key, value) => {
      if (value.length > 60_000) throw Object.assign(new Error("no"), {name: "QuotaExceededError"});
      write(key, value);
    };
    for (let spanFt = 20; spanFt < 60; spanFt++) {
      store.set("bay.spanFt", spanFt);
      browser.time += 1000;
    }
    store.flush();
    expect(noticeOf(store)).toBeUndefined();
    expect(browser.open().get().bay.spanFt).toBe(59);
  });
});
