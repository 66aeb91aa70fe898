import {mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import {ROOT} from "../../src/headless/root.js";
import {commandOf, expectRefusal, type Command} from "./run.js";

const folder = mkdtempSync(join(tmpdir(), "files-"));
afterAll(() => rmSync(folder, {recursive: true}));

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** The design and the member file that the project itself shows. */
const DESIGN = readFileSync(join(ROOT, "seeds", "branch-library.json"), "utf8");
const MEMBER = /```json\n(\{[\s\S]*?"shape"[\s\S]*?)```/.exec(readFileSync(join(ROOT, "README.md"), "utf8"))?.[1] ?? "";

const COMMANDS: readonly {name: string; content: string; words: (file: string) => string[]}[] = [
  {name: "evaluate", content: DESIGN, words: (path) => [path]},
  {name: "member", content: MEMBER, words: (path) => [path]},
  {name: "capacity", content: MEMBER, words: (path) => ["--file", path, "--spans", "30:56:2"]},
];

/** A text in which one value holds lists within lists, far deeper than a program can follow by calling itself. */
const nested = (content: string) => content.replace(/"name": "[^"]*"/, () => `"name": ${"[".repeat(100_000)}${"]".repeat(100_000)}`);

describe.each(COMMANDS)("$name", ({name, content, words}) => {
  let command: Command;
  beforeAll(() => {
    command = commandOf(name);
  });
  afterAll(() => command.close());

  test("ends quietly where the pipe that it writes to is closed", async () => {
    expect(await command.runIntoClosedPipe(...words(file("good.json", content)))).toEqual({code: 0, stderr: ""});
  });

  test("reads standard input in place of the file -", () => {
    const direct = command.run(...words(file("good.json", content)));
    expect(direct.code).toBe(0);
    expect(command.runOn(content, ...words("-"))).toEqual(direct);
    expectRefusal(command.runOn("la la", ...words("-")), /^standard input: .*JSON text/);
  });

  test("names the file that it cannot use, and what is wrong with it, in one line", () => {
    const refuse = (path: string, says: string | RegExp) => expectRefusal(command.run(...words(path)), says);
    refuse(join(folder, "nowhere.json"), `${join(folder, "nowhere.json")}: there is no such file`);
    refuse(folder, `${folder}: is a directory, not a file`);
    refuse(join(file("plain.txt", "x"), "floor.json"), "floor.json: a part of the path is a file, not a directory");
    refuse(join(folder, `${"long".repeat(100)}.json`), /^.{1,100}\.json: the name is too long$/m);
    refuse(file("words.json", "la la"), /words\.json: .* is not possible \(JSON text\)/);
    expect(nested(content)).not.toBe(content);
    refuse(file("deep.json", nested(content)), /deep\.json: name.*: a list nested too deep is not possible/);
  });

  test.skipIf(process.platform === "win32")("names a link that leads in a circle", () => {
    const [one, other] = [join(folder, `${name}-one`), join(folder, `${name}-other`)] as const;
    symlinkSync(one, other);
    symlinkSync(other, one);
    expectRefusal(command.run(...words(one)), `${one}: its links lead in a circle`);
  });
});
