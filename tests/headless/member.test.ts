import {mkdtempSync, readFileSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {afterAll, beforeAll, expect, test} from "vitest";
import {ROOT} from "../../src/headless/root.js";
import {commandOf, expectRefusal, script, type Command} from "./run.js";

let command: Command;
const folder = mkdtempSync(join(tmpdir(), "members-"));
beforeAll(() => {
  command = commandOf("member");
});
afterAll(() => {
  command.close();
  rmSync(folder, {recursive: true});
});

/** The file that the README shows. */
const shown = /```json\n(\{[\s\S]*?"shape"[\s\S]*?)```/.exec(readFileSync(join(ROOT, "README.md"), "utf8"))?.[1] ?? "";

function file(text: string): string {
  const path = join(folder, "member.json");
  writeFileSync(path, text);
  return path;
}

test("the README's file gives a member's report as JSON, through the package's script", () => {
  const report = JSON.parse(script("member", file(shown))) as Record<string, unknown>;
  expect(Object.keys(report)).toEqual(expect.arrayContaining(["section", "compositeSection", "losses", "stressesAlong", "strength", "strengthAlong", "camber", "limits", "checks", "safeLoad"]));
});

test("a file that cannot be used gives one line and exit code 2", () => {
  expectRefusal(command.run(file(shown.replace(/"spanFt": \d+/, '"spanFt": 9'))), "span: 9 ft is not possible (10 to 150 ft)");
  expectRefusal(command.run(file("{")), "design file".replace("design", "member"));
  expectRefusal(command.run(join(folder, "none.json")), "there is no such file");
  expectRefusal(command.run(), "usage: npm run -s member -- FILE.json");
});
