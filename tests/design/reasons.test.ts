import {describe, expect, test} from "vitest";
import {withValue, withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {FIELDS} from "../../lib/design/fields.js";
import {REASON_NAMES, choiceOf, countReasons, explainedPaths, reasonState, writtenNow} from "../../lib/design/reasons.js";
import {parseDesign, validateDesign} from "../../lib/design/validate.js";
import {reasonsSentence} from "../../lib/record/reasonWords.js";
import {refused} from "../support/errors.js";
import {seed, seeds} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const TEACHING = {"bay.spanFt": 60, "deck.member": "12DT36", "deck.pattern": "188-D1"};
/** The decisions of a floor whose roof is two loads: all but the roof's. */
const OF_FLOOR = REASON_NAMES.filter((name) => name !== "roof");
const states = (design: Design) => OF_FLOOR.map((name) => reasonState(design, name));

describe("what reasons explain", () => {
  test("is every field that is decided: only names, texts and the search's weights need no reason", () => {
    const explained = new Set(REASON_NAMES.flatMap(explainedPaths));
    const others = Object.keys(FIELDS).map((path) => path.replace(/\.\*.*$/, "")).filter((path) => !explained.has(path));
    expect(new Set(others.map((path) => path.split(".")[0]))).toEqual(new Set(["name", "setting", "brief", "author", "firm", "reasons", "comments", "preferences", "consider"]));
    expect(explained).toContain("deck.dimensions");
  });

  test("is held by path, with a word for what is left out", () => {
    const choice = choiceOf(LIBRARY, "deck");
    expect(choice).toMatchObject({"bay.spanFt": 40, "deck.member": "10DT32", "criteria.fireHours": "1", "deck.strandHeightEndIn": "none", "deck.dimensions": "none"});
    expect(choice).not.toHaveProperty("deck");
    expect(Object.keys(choice)).toEqual(explainedPaths("deck"));
  });
});

describe("a starter's reason", () => {
  test("stands as the starter's while nothing that it explains has changed", () => {
    for (const {design} of seeds) for (const state of states(design)) {
      expect(state.standing).toBe(state.text ? "stands" : "none");
      expect(state.by).toBe(state.text ? "starter" : undefined);
    }
    expect(reasonState(withValues(LIBRARY, {"name": "Mine", "preferences.wide": 9, "column.strengthPsi": 6000}), "deck").standing).toBe("stands");
  });

  test("belongs to an earlier choice once the deck is another, and tells what has changed", () => {
    const state = reasonState(withValues(LIBRARY, TEACHING), "deck");
    expect(state).toMatchObject({standing: "earlier choice", by: "starter", text: LIBRARY.reasons.deck});
    expect(state.changes).toEqual([
      {label: "span", then: "40 ft", now: "60 ft"},
      {label: "deck member", then: "10DT32", now: "12DT36"},
      {label: "strand pattern", then: "108-S", now: "188-D1"},
    ]);
  });

  test("stands again when the choice is what it was", () => {
    const back = withValues(withValues(LIBRARY, TEACHING), {"bay.spanFt": 40, "deck.member": "10DT32", "deck.pattern": "108-S"});
    expect(reasonState(back, "deck").standing).toBe("stands");
    const sized = withValue(LIBRARY, "deck.dimensions", {stemBottomIn: 5});
    expect(reasonState(sized, "deck").changes).toEqual([{label: "changed dimensions", then: "none", now: "stemBottomIn 5"}]);
    for (const none of [undefined, {}]) expect(reasonState(withValue(sized, "deck.dimensions", none), "deck").standing).toBe("stands");
  });

  test("is not touched by a field that the design does not use", () => {
    expect(reasonState(withValue(LIBRARY, "edgeBeam.strands", 20), "edgeBeam").standing).toBe("stands");
    expect(reasonState(withValues(LIBRARY, {"edgeBeam.strands": 20, "edgeBeam.steel": "strands"}), "edgeBeam").changes.map(({label}) => label)).toEqual(["bending steel", "strands of the edge beam"]);
  });

  test("names the rooms and layers that have come and gone, in whatever order the rest stand", () => {
    const [stacks, reading, stair] = LIBRARY.loads.rooms;
    expect(reasonState(withValue(LIBRARY, "loads.rooms", [stair, stacks, reading]), "loads").standing).toBe("stands");
    const lab = {name: "Laboratory", occupancy: "laboratory", own: {livePsf: 100, reducible: false, reason: "Benches"}};
    expect(reasonState(withValue(LIBRARY, "loads.rooms", [stacks, lab]), "loads").changes).toEqual([
      {label: "rooms", then: "Reading rooms (library-reading), Entrance stair (stair)", now: "Laboratory (laboratory, live load of your own: 100 psf, may be reduced: no, Benches)"},
    ]);
    expect(reasonState(withValue(LIBRARY, "loads.layers.0.loadPsf", 1.5), "loads").changes).toEqual([{label: "layers", then: "Carpet tile 1 psf", now: "Carpet tile 1.5 psf"}]);
    expect(reasonState(withValue(LIBRARY, "loads.layers", []), "loads").changes[0]).toMatchObject({now: "none"});
    // Of two layers alike one may go, and it has gone.
    const carpet = {name: "Carpet tile", loadPsf: 1};
    const twice = withValues(LIBRARY, {"loads.layers": [carpet, carpet], "reasons.loads": "Two carpets."});
    expect(reasonState(withValue(twice, "loads.layers", [carpet]), "loads").changes).toEqual([{label: "layers", then: "Carpet tile 1 psf", now: "none"}]);
  });
});

describe("a reason that the reader writes", () => {
  const changed = withValues(LIBRARY, TEACHING);

  test("is the reader's, for the design as it stands, and leaves the others alone", () => {
    const mine = withValue(changed, "reasons.deck", "Five twelve-foot tees fill the bay.");
    expect(reasonState(mine, "deck")).toMatchObject({standing: "stands", by: "reader", changes: []});
    expect(mine.writtenFor.deck).toEqual(writtenNow(mine, "deck"));
    expect(mine.writtenFor.topping).toBe(changed.writtenFor.topping);
    expect(reasonState(withValue(mine, "deck.toppingIn", 3), "deck")).toMatchObject({standing: "earlier choice", by: "reader"});
  });

  test("together with other changes is for all of them, in whatever order they are named", () => {
    const mine = withValues(LIBRARY, {"reasons.deck": "It spans the hall.", ...TEACHING});
    expect(reasonState(mine, "deck")).toMatchObject({standing: "stands", by: "reader"});
  });

  test("and takes out again is none", () => {
    const none = withValue(changed, "reasons.deck", " ");
    expect(reasonState(none, "deck")).toEqual({text: "", standing: "none", by: undefined, changes: []});
    expect(none.writtenFor).not.toHaveProperty("deck");
  });

  test("does not become the reader's by a blank at its end, nor by one less", () => {
    const blank = {...LIBRARY, reasons: {...LIBRARY.reasons, deck: `${LIBRARY.reasons.deck} `}};
    expect(withValue(blank, "reasons.deck", LIBRARY.reasons.deck).writtenFor).toBe(LIBRARY.writtenFor);
    expect(withValue(LIBRARY, "reasons.deck", `${LIBRARY.reasons.deck} `).writtenFor).toBe(LIBRARY.writtenFor);
  });

  test("or affirms, words and all, stands and is the reader's", () => {
    const affirmed = withValue(changed, "writtenFor.deck", writtenNow(changed, "deck"));
    expect(reasonState(affirmed, "deck")).toMatchObject({standing: "stands", by: "reader", text: LIBRARY.reasons.deck});
    expect(reasonState(affirmed, "frame").standing).toBe("earlier choice");
  });
});

describe("in a design file, a reason", () => {
  const file = (changes: (plain: Record<string, unknown>) => void) => {
    const plain = structuredClone(LIBRARY) as unknown as Record<string, unknown>;
    changes(plain);
    return plain;
  };

  test("without a choice was written for the file as it stands, by the reader if nobody is named", () => {
    const old = validateDesign(file((plain) => delete plain["writtenFor"]));
    for (const name of OF_FLOOR) expect(old.writtenFor[name]).toEqual(writtenNow(old, name));
    const starters = validateDesign(file((plain) => (plain["writtenFor"] = {deck: {by: "starter"}})));
    expect(starters.writtenFor.deck).toEqual({by: "starter", choice: choiceOf(LIBRARY, "deck")});
    expect(starters.writtenFor.loads?.by).toBe("reader");
  });

  test("is written for something exactly where there is one: a blank for nothing, every other for a choice", () => {
    const {deck, light} = LIBRARY.writtenFor;
    const read = (reasons: Record<string, string>, writtenFor: Record<string, unknown>) =>
      parseDesign(JSON.stringify({...LIBRARY, reasons: {...LIBRARY.reasons, ...reasons}, writtenFor: {...LIBRARY.writtenFor, ...writtenFor}})).writtenFor;
    expect(read({deck: " "}, {})).not.toHaveProperty("deck");
    expect(read({}, {deck: {by: "starter"}})).toEqual(LIBRARY.writtenFor);
    // As many entries as reasons, but one stands at a blank and is missing at another.
    const moved = read({light: ""}, {light, deck: undefined});
    expect(moved).not.toHaveProperty("light");
    expect(moved.deck).toEqual({by: "reader", choice: deck?.choice});
    expect(Object.keys(validateDesign(file((plain) => Object.assign(plain, {reasons: {...LIBRARY.reasons, deck: "  "}, writtenFor: undefined}))).writtenFor)).not.toContain("deck");
  });

  test("comes back from a file as it went in, whole and of an earlier choice", () => {
    const changed = withValues(LIBRARY, TEACHING);
    expect(parseDesign(JSON.stringify(changed))).toEqual(changed);
  });

  test("is refused with a choice that cannot have been, by its own place", () => {
    const choice = (of: unknown) => () => validateDesign(file((plain) => (plain["writtenFor"] = {deck: {by: "reader", choice: of}})));
    refused(choice({"bay.spanFt": -3}), {path: "writtenFor.deck.choice.bay.spanFt", value: -3});
    refused(choice({"bay.spanFt": "none"}), {path: "writtenFor.deck.choice.bay.spanFt", value: "none"});
    refused(choice({"girder.strands": 12}), {path: "writtenFor.deck.choice.girder.strands", allowed: /^no field of this choice/});
    refused(choice([3]), {path: "writtenFor.deck.choice"});
    refused(choice({"deck.dimensions": {stemBottomIn: -1}}), {path: "writtenFor.deck.choice.deck.dimensions.stemBottomIn"});
    for (const [writtenFor, path] of [[3, "writtenFor"], [{ceiling: {by: "reader"}}, "writtenFor.ceiling"], [{deck: {by: "me"}}, "writtenFor.deck.by"], [{deck: {by: "reader", on: "Monday"}}, "writtenFor.deck"]] as const) {
      refused(() => validateDesign(file((plain) => (plain["writtenFor"] = writtenFor))), {path});
    }
    const rooms = (of: unknown) => () => validateDesign(file((plain) => (plain["writtenFor"] = {loads: {by: "reader", choice: {"loads.rooms": of}}})));
    refused(rooms([{name: 3, occupancy: "office"}]), {path: "writtenFor.loads.choice.loads.rooms.0.name"});
  });
});

test("of eight decisions only those count whose reason was written for what stands there now", () => {
  const sentence = (design: Design) => reasonsSentence(countReasons(states(design)));
  expect(sentence(LIBRARY)).toBe("All of its 8 decisions have a reason that stands, in the starter\u2019s words.");
  // The span and the member concern all but the loads; the upstand and the beam's own span are not touched.
  const changed = withValues(LIBRARY, TEACHING);
  expect(countReasons(states(changed))).toEqual({all: 8, reader: 0, starter: 1, rule: 0, earlier: 7, none: 0});
  expect(sentence(changed)).toBe("1 of its 8 decisions has a reason that stands, in the starter\u2019s words. 7 were written for an earlier choice and do not count.");
  const mine = withValues(changed, {"reasons.deck": "It spans.", "reasons.light": ""});
  expect(sentence(mine)).toBe("2 of its 8 decisions have a reason that stands, 1 in your words and 1 in the starter\u2019s. 5 were written for an earlier choice and do not count; 1 has none.");
  expect(countReasons(states(withValue(mine, "deck.toppingIn", 3)))).toMatchObject({reader: 0, none: 1});
  const empty = withValues(LIBRARY, Object.fromEntries(REASON_NAMES.map((name) => [`reasons.${name}`, ""])));
  expect(sentence(empty)).toBe("None of its 8 decisions has a reason that stands.");
});

describe("a reason for the rooms of a floor", () => {
  const lab = {name: "Laboratory", occupancy: "office", own: {livePsf: 100, reducible: false, reason: "benches with instruments"}};
  const written = () => withValues(LIBRARY, {"loads.rooms": [lab], "reasons.loads": "The laboratory decides."});
  const standing = (room: object) => reasonState(withValue(written(), "loads.rooms", [room]), "loads").standing;

  test("stands while the room's own load is the same, in whatever order the file tells it", () => {
    expect(reasonState(written(), "loads")).toMatchObject({standing: "stands", by: "reader", changes: []});
    const {own, ...rest} = lab;
    expect(standing({own: {reason: own.reason, reducible: own.reducible, livePsf: own.livePsf}, ...rest})).toBe("stands");
  });

  test("is of an earlier choice once any part of that load is another, is left out, or comes anew", () => {
    for (const own of [{...lab.own, livePsf: 125}, {...lab.own, reducible: true}, {...lab.own, reason: "books"}]) expect(standing({...lab, own})).toBe("earlier choice");
    const {own: _, ...without} = lab;
    expect(standing(without)).toBe("earlier choice");
    const bare = withValues(LIBRARY, {"loads.rooms": [without], "reasons.loads": "The laboratory decides."});
    expect(reasonState(bare, "loads").standing).toBe("stands");
    expect(reasonState(withValue(bare, "loads.rooms", [lab]), "loads").standing).toBe("earlier choice");
    expect(reasonState(withValue(bare, "loads.rooms", [{...without, name: "Office"}]), "loads").standing).toBe("earlier choice");
  });
});
