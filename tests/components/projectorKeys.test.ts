import {describe, expect, test} from "vitest";
import {askedBy, type KeyState} from "../../src/components/projector/keys.js";
import {thingWords} from "../../src/components/projector/things.js";

const FREE: KeyState = {dimmed: false, inControl: false, popover: false, pointing: false};

describe("keys of the projector view", () => {
  test.each([
    ["ArrowRight", "next"], ["PageDown", "next"], ["ArrowLeft", "before"], ["PageUp", "before"], ["Home", "first"], ["End", "last"],
    ["ArrowDown", "point on"], ["ArrowUp", "point back"], ["d", "dim"], ["D", "dim"], ["Escape", "leave"], ["x", undefined], ["Tab", undefined], ["Enter", undefined],
  ])("%s asks for %s", (key, asked) => expect(askedBy(key, FREE)).toBe(asked));

  test("a control that has the focus keeps its arrows and letters, and Escape lets go of it first", () => {
    const inControl = {...FREE, inControl: true, pointing: true};
    expect(["ArrowRight", "PageDown", "ArrowUp", "d", "Home"].map((key) => askedBy(key, inControl))).toEqual([undefined, undefined, undefined, undefined, undefined]);
    expect(askedBy("Escape", inControl)).toBe("let go");
  });

  test("Escape closes what is open, then stops pointing, then leaves", () => {
    expect([{...FREE, popover: true, pointing: true}, {...FREE, pointing: true}, FREE].map((state) => askedBy("Escape", state))).toEqual([undefined, "stop pointing", "leave"]);
    expect(askedBy("ArrowRight", {...FREE, popover: true})).toBe("next");
  });

  test("any key brings a dimmed screen back, and does nothing else; keys that do nothing alone leave it dimmed", () => {
    const dimmed = {...FREE, dimmed: true};
    expect(["ArrowRight", "Escape", "d", " "].map((key) => askedBy(key, dimmed))).toEqual(["bright", "bright", "bright", "bright"]);
    expect(["Shift", "Tab", "Control"].map((key) => askedBy(key, dimmed))).toEqual([undefined, undefined, undefined]);
  });
});

test("a part is told in words", () => expect(["ledge-bar", "precast", "limit shear"].map(thingWords)).toEqual(["ledge bar", "precast concrete", "limit shear"]));
