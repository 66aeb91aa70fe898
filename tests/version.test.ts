import {readFileSync} from "node:fs";
import {expect, test} from "vitest";
import {VERSION} from "../lib/version.js";

test("the library's version is the package's", () => {
  const {version} = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8")) as {version: string};
  expect(VERSION).toBe(version);
});
