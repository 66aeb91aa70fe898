import {describe, expect, test} from "vitest";
import {withValue} from "../../lib/design/edit.js";
import {advance, amend, begin, redo, undo} from "../../lib/design/history.js";
import {seed} from "../support/designs.js";

const A = seed("branch-library");
const B = withValue(A, "bay.spanFt", 44);
const C = withValue(A, "bay.spanFt", 48);

describe("history", () => {
  test("has nothing to undo or redo when it begins", () => {
    const history = begin(A);
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
    expect(history.present).toBe(A);
  });

  test("goes back step by step and forward again", () => {
    const history = advance(advance(begin(A), B), C);
    const back = undo(undo(history));
    expect(back.present).toBe(A);
    expect(back.future).toEqual([B, C]);
    expect(redo(back).present).toBe(B);
    expect(redo(redo(back))).toEqual(history);
  });

  test("forgets what was undone once there is a new step", () => {
    const history = advance(undo(advance(begin(A), B)), C);
    expect(history).toEqual({past: [A], present: C, future: []});
    expect(redo(history)).toBe(history);
  });

  test("makes no step of the same design", () => {
    const history = advance(begin(A), B);
    expect(advance(history, B)).toBe(history);
  });

  test("amends the newest design without a step of its own", () => {
    const history = amend(advance(begin(A), B), C);
    expect(history).toEqual({past: [A], present: C, future: []});
    expect(undo(history).present).toBe(A);
  });

  test("remembers a hundred steps and forgets older ones", () => {
    let history = begin(A);
    for (let i = 0; i < 130; i++) history = advance(history, withValue(A, "bay.spanFt", 20 + i / 2));
    expect(history.past).toHaveLength(100);
    for (let i = 0; i < 100; i++) history = undo(history);
    expect(history.present.bay.spanFt).toBe(20 + 29 / 2);
    expect(undo(history)).toBe(history);
    for (let i = 0; i < 100; i++) history = redo(history);
    expect(history.present.bay.spanFt).toBe(20 + 129 / 2);
  });

  test("never alters a history that it was given", () => {
    const history = advance(advance(begin(A), B), C);
    const before = structuredClone(history);
    undo(history);
    redo(undo(history));
    amend(history, A);
    advance(history, A);
    expect(history).toEqual(before);
  });
});
