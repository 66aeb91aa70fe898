import {expect, test} from "vitest";
import {sure} from "../../src/components/shared/sure.js";

test("a value that must be there is handed on, none is refused by its name", () => {
  expect([sure(0, "zero"), sure("", "word")]).toEqual([0, ""]);
  expect(() => sure(([] as number[])[0], "first of none")).toThrow("there is no first of none");
});
