import {mkdtempSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import {commandOf, expectRefusal, script, throughTsx, type Command} from "./run.js";

const HEADER = "span_ft,safe_load_psf,governs,camber_erection_in,camber_long_in";
const BEAM_HEADER = "span_ft,safe_load_plf,governs,camber_erection_in,camber_long_in";
let command: Command;
beforeAll(() => {
  command = commandOf("capacity");
});
afterAll(() => command.close());

/** The rows of a table that was printed without complaint. */
function rowsOf(...words: string[]): string[][] {
  return rowsUnder(HEADER, ...words);
}

function rowsUnder(expectedHeader: string, ...words: string[]): string[][] {
  const {code, stdout, stderr} = command.run(...words);
  expect(stderr).toBe("");
  expect(code).toBe(0);
  const [header, ...lines] = stdout.trimEnd().split("\n");
  expect(header).toBe(expectedHeader);
  expect(stdout.endsWith("\n")).toBe(true);
  return lines.map((line) => line.split(","));
}

const beamRows = (...words: string[]) => rowsUnder(BEAM_HEADER, ...words);
const beam = (...words: string[]) => ["--member", "28IT28", "--strands", "13", ...words];
const tee = (...words: string[]) => ["--member", "10DT24", "--pattern", "68-S", ...words];

describe("capacity prints", () => {
  test("a header and a row for each span", () => {
    const rows = rowsOf(...tee("--spans", "30:56:2"));
    expect(rows.map(([spanFt]) => spanFt)).toEqual(["30", "32", "34", "36", "38", "40", "42", "44", "46", "48", "50", "52", "54", "56"]);
    for (const row of rows) {
      expect(row).toHaveLength(5);
      expect(row[1]).toMatch(/^\d+\.\d$/);
      expect(["strength", "service tension", "sustained compression", "total compression"]).toContain(row[2]);
      expect(row[3]).toMatch(/^-?\d+\.\d\d$/);
      expect(row[4]).toMatch(/^-?\d+\.\d\d$/);
    }
  });

  test("the same through npm, through tsx and through a bundle", () => {
    const words = tee("--spans", "30:34:2", "--ys", "4");
    const bundled = command.run(...words);
    expect(throughTsx("capacity", ...words)).toEqual(bundled);
    expect(script("capacity", ...words)).toBe(bundled.stdout);
  });

  test("the member's own layout where no height is given: 4 in for 68-S", () => {
    expect(rowsOf(...tee("--spans", "40"))[0]?.slice(3)).toEqual(rowsOf(...tee("--spans", "40", "--ys", "4"))[0]?.slice(3));
  });

  test("depressed strands by their heights at the ends and at midspan", () => {
    const rows = rowsOf("--member", "12DT28", "--pattern", "188-D1", "--spans", "60:70:5", "--ys", "14.39/4.00");
    expect(rows).toHaveLength(3);
    expect(Number(rows[0]?.[1])).toBeGreaterThan(Number(rows[2]?.[1]));
  });

  test("topped and lightweight members", () => {
    const plain = Number(rowsOf(...tee("--spans", "40"))[0]?.[1]);
    expect(Number(rowsOf(...tee("--spans", "40", "--lightweight"))[0]?.[1])).toBeGreaterThan(plain);
    expect(rowsOf(...tee("--spans", "40", "--topping", "2"))).toHaveLength(1);
    expect(rowsOf(...tee("--spans", "40", "--topping", "0"))).toEqual(rowsOf(...tee("--spans", "40")));
  });

  test("one span, spans by 1 ft, and spans between whole feet without the noise of binary fractions", () => {
    expect(rowsOf(...tee("--spans", "41.5")).map(([spanFt]) => spanFt)).toEqual(["41.5"]);
    expect(rowsOf(...tee("--spans", "40:43")).map(([spanFt]) => spanFt)).toEqual(["40", "41", "42", "43"]);
    expect(rowsOf(...tee("--spans", "40:40.5:0.1")).map(([spanFt]) => spanFt)).toEqual(["40", "40.1", "40.2", "40.3", "40.4", "40.5"]);
  });

  test("the ends of the range of spans", () => {
    expect(rowsOf(...tee("--spans", "10:150:70")).map(([spanFt]) => spanFt)).toEqual(["10", "80", "150"]);
  });

  test("nothing below nought, and no negative nought", () => {
    const rows = rowsOf("--member", "4HC6", "--pattern", "46-S", "--spans", "10:150:1");
    expect(rows.at(-1)?.[1]).toBe("0.0");
    for (const row of rows) for (const cell of row) expect(cell).not.toMatch(/^-0(\.0+)?$|NaN|Infinity/);
  });

  test("a table with a note for more strands or fewer than the catalog lists, and none for those it lists", () => {
    const words = (pattern: string) => ["--member", "10DT24", "--pattern", pattern, "--spans", "30"];
    for (const [pattern, says] of [["28-S", "2 strands are fewer than the 4 to 16"], ["188-S", "18 strands are more than the 4 to 16"]] as const) {
      const {code, stdout, stderr} = command.run(...words(pattern));
      expect(code).toBe(0);
      expect(stdout).toContain(HEADER);
      expect(stderr).toContain(`note: ${says} that the catalog lists for a 10DT24`);
    }
    for (const pattern of ["48-S", "168-S"]) expect(rowsOf(...words(pattern))).toHaveLength(1);
  });

  test("what the strands' bond and the ends' seat leave on spans shorter than the handbook prints", () => {
    const loads = rowsOf("--member", "10DT24", "--pattern", "610-S", "--spans", "10:25:5").map(([spanFt, psf, governs]) => [spanFt, Math.round(Number(psf)), governs]);
    // At 15 ft strength alone would allow 1,116 psf.
    expect(loads[1]?.[2]).toBe("development");
    expect(Math.abs(Number(loads[1]?.[1]) - 803)).toBeLessThan(8);
    expect(loads.map(([, , governs]) => governs)).toEqual(["bearing", "development", "development", "strength"]);
  });

  test("planks and slabs", () => {
    expect(rowsOf("--member", "4HC8", "--pattern", "76-S", "--spans", "20:30:5")).toHaveLength(3);
    expect(rowsOf("--member", "4FS6", "--pattern", "66-S", "--spans", "15", "--topping", "2")).toHaveLength(1);
  });
});

describe("capacity prints, for a beam,", () => {
  test("a header and a row for each span, in whole tens of plf", () => {
    const rows = beamRows(...beam("--spans", "20:30:2", "--ys", "3.08"));
    expect(rows.map(([spanFt]) => spanFt)).toEqual(["20", "22", "24", "26", "28", "30"]);
    for (const row of rows) {
      expect(row).toHaveLength(5);
      expect(row[1]).toMatch(/^\d+0$/);
      expect(row[2]).toBe("strength");
      expect(row[3]).toMatch(/^-?\d+\.\d\d$/);
      expect(row[4]).toMatch(/^-?\d+\.\d\d$/);
    }
    const loads = rows.map((row) => Number(row[1]));
    expect(loads).toEqual([...loads].sort((a, b) => b - a));
  });

  test("the handbook's own numbers", () => {
    expect(beamRows("--member", "28IT20", "--strands", "9", "--ys", "2.44", "--spans", "16:24:4").map((row) => row.slice(0, 3)))
      .toEqual([["16", "6510", "strength"], ["20", "4040", "strength"], ["24", "2710", "strength"]]);
  });

  test("rows of strands where no height is given: as high on average, the lowest row deeper and the beam stronger", () => {
    const [usual, given] = [beamRows(...beam("--spans", "24")), beamRows(...beam("--spans", "24", "--ys", "3.0769"))];
    expect(usual[0]?.[3]).toEqual(given[0]?.[3]);
    expect(Number(usual[0]?.[1])).toBeGreaterThan(Number(given[0]?.[1]));
  });

  test("rectangular and L-beams, lightweight too", () => {
    const rectangle = ["--member", "12RB24", "--strands", "6", "--spans", "24"];
    expect(Number(beamRows(...rectangle, "--lightweight")[0]?.[1])).toBeGreaterThan(0);
    expect(Number(beamRows(...rectangle)[0]?.[1])).toBeGreaterThan(0);
    expect(Number(beamRows("--member", "20LB20", "--strands", "6", "--spans", "24")[0]?.[1])).toBeGreaterThan(0);
  });

  test("nothing below nought over the whole range of spans", () => {
    const rows = beamRows(...beam("--spans", "10:150:2"));
    expect(rows.at(-1)?.[1]).toBe("0");
    for (const row of rows) for (const cell of row) expect(cell).not.toMatch(/^-0(\.0+)?$|NaN|Infinity/);
  });

  test("the same through npm", () => {
    const words = beam("--spans", "20", "--ys", "3.08");
    expect(script("capacity", ...words)).toBe(command.run(...words).stdout);
  });
});

describe("capacity refuses", () => {
  const cases: readonly [string, string[], string | RegExp][] = [
    ["an unknown member", ["--member", "9DT9", "--pattern", "68-S", "--spans", "30"], `deck member: "9DT9" is not possible`],
    ["a pattern for a beam", ["--member", "20LB20", "--pattern", "68-S", "--spans", "30"], "a beam such as 20LB20 takes --strands, not --pattern"],
    ["a beam without its strands", ["--member", "28IT28", "--spans", "30"], "takes --strands, the number of its 1/2 in strands"],
    ["a number of strands for a deck member", ["--member", "10DT24", "--strands", "6", "--spans", "30"], "a deck member such as 10DT24 takes --pattern, not --strands"],
    ["strands of a member that is not known", ["--member", "99IT9", "--strands", "6", "--spans", "30"], `member: "99IT9" is not possible`],
    ["strands that are no number", beam("--spans", "30").with(3, "many"), `strands: "many" is not possible`],
    ["part of a strand", beam("--spans", "30").with(3, "2.5"), "2.5 is not possible (whole number, 1 to 27)"],
    ["no strands", beam("--spans", "30").with(3, "0"), "0 is not possible"],
    ["more strands than the rows of a beam hold", beam("--spans", "30").with(3, "28"), "strands of a 28IT28: 28 is not possible"],
    ["two heights for straight strands of a beam", beam("--spans", "30", "--ys", "3/4"), "one height in inches"],
    ["a height above the beam", beam("--spans", "30", "--ys", "28"), "28 in is not possible (1 to 27 in in a 28 in member)"],
    ["a topping on a beam", beam("--spans", "30", "--topping", "2"), "a beam such as 28IT28 takes no --topping"],
    ["a beam's span below 10 ft", beam("--spans", "9"), "span: 9 ft is not possible"],
    ["a rectangle out of range", ["--member", "99RB200", "--strands", "6", "--spans", "30"], "depth: 200 in is not possible"],
    ["a pattern that does not parse", ["--member", "10DT24", "--pattern", "68", "--spans", "30"], `strand pattern: "68" is not possible`],
    ["a pattern that does not fit", ["--member", "10DT24", "--pattern", "968-S", "--spans", "30"], "at most 22 strands"],
    ["odd strands in a tee", ["--member", "10DT24", "--pattern", "78-S", "--spans", "30"], "a multiple of 2 strands"],
    ["odd strands in a tee whose height is given", ["--member", "10DT24", "--pattern", "78-S", "--spans", "30", "--ys", "4"], "a multiple of 2 strands"],
    ["depressed strands in a plank", ["--member", "4HC8", "--pattern", "68-D1", "--spans", "30"], "straight strands (S)"],
    ["depressed strands in a plank whose height is given", ["--member", "4HC8", "--pattern", "68-D1", "--spans", "30", "--ys", "4/2"], "straight strands (S)"],
    ["spans that are no numbers", tee("--spans", "thirty"), `spans: "thirty" is not possible`],
    ["spans without a number between the colons", tee("--spans", "30::2"), `spans: ""`],
    ["spans that fall", tee("--spans", "40:30:2"), `spans: "40:30:2" is not possible (from:to:step in feet, rising`],
    ["spans without a step", tee("--spans", "30:40:0"), `spans: "30:40:0"`],
    ["spans of four parts", tee("--spans", "30:40:2:1"), `spans: "30:40:2:1"`],
    ["too many spans", tee("--spans", "30:40:0.0001"), "at most 2000 spans"],
    ["a span below 10 ft", tee("--spans", "9:30:1"), "span: 9 ft is not possible (10 to 150 ft)"],
    ["a span above 150 ft", tee("--spans", "140:151:11"), "span: 151 ft is not possible (10 to 150 ft)"],
    ["a height that is no number", tee("--spans", "30", "--ys", "low"), `strand height: "low" is not possible (a number)`],
    ["a height that is missing after the stroke", tee("--spans", "30", "--ys", "4/"), `strand height: ""`],
    ["a height below the soffit", tee("--spans", "30", "--ys=-1"), "-1 in is not possible ("],
    ["a height above the member", tee("--spans", "30", "--ys", "24"), "24 in is not possible"],
    ["three heights", ["--member", "10DT24", "--pattern", "68-D1", "--spans", "30", "--ys", "5/4/3"], "one height in inches, or end/center"],
    ["ends that differ from midspan for straight strands", tee("--spans", "30", "--ys", "5/4"), "the strands of 68-S are straight"],
    ["a topping that is too thick", tee("--spans", "30", "--topping", "9"), "topping thickness: 9 in is not possible (0 to 6 in)"],
    ["a topping that is no number", tee("--spans", "30", "--topping", "two"), `topping thickness: "two"`],
    ["an option that is said twice", tee("--spans", "30", "--pattern", "88-S"), "--pattern is given more than once"],
    ["an unknown option", tee("--spans", "30", "--fast"), "--fast"],
    ["an option without its value", ["--pattern", "68-S", "--spans", "30", "--member"], "--member"],
    ["a stray word", tee("--spans", "30", "please"), "please"],
    ["a missing option", tee(), /^usage: /],
    ["no words at all", [], /^usage: /],
  ];
  test.each(cases)("%s", (_, words, says) => {
    expectRefusal(command.run(...words), says);
  });

  test("in the same way through tsx", () => {
    expectRefusal(throughTsx("capacity", "--member", "9DT9", "--pattern", "68-S", "--spans", "30"), `deck member: "9DT9"`);
  });
});

describe("capacity of a member's file", () => {
  const folder = mkdtempSync(join(tmpdir(), "capacity-"));
  afterAll(() => rmSync(folder, {recursive: true}));
  const file = (content: object) => {
    const path = join(folder, "member.json");
    writeFileSync(path, JSON.stringify({
      strands: {pattern: "68-S", heightMidspanIn: 4}, concrete: {strengthPsi: 5000, releaseStrengthPsi: 3500}, spanFt: 40,
      loads: {superimposedDeadPsf: 10, livePsf: 40}, ...content,
    }));
    return path;
  };

  test("is that of the same member by its designation", () => {
    const dimensions = {widthIn: 120, depthIn: 24, flangeIn: 2, stemBottomIn: 3.75, stemTopIn: 5.75, stemSpacingIn: 60, chamferIn: 0};
    expect(rowsOf("--file", file({shape: {family: "double tee", dimensions}}), "--spans", "30:56:2")).toEqual(rowsOf(...tee("--ys", "4", "--spans", "30:56:2")));
  });

  test("takes a beam per foot", () => {
    const shape = {family: "inverted tee", dimensions: {webWidthIn: 12, depthIn: 28, ledgeProjectionIn: 8, ledgeDepthIn: 16}};
    const strands = {diameterSixteenths: 8, rows: [{count: 13, heightMidspanIn: 3.08}]};
    const rows = beamRows("--file", file({shape, strands}), "--spans", "20:30:2");
    expect(rows).toHaveLength(6);
    for (const [, plf] of rows) expect(Number(plf)).toBeGreaterThan(1000);
  });

  test("refuses words that the file has already said, and a member beside the file", () => {
    expectRefusal(command.run("--file", file({shape: {designation: "10DT24"}}), "--spans", "30", "--topping", "2"), "--topping cannot be given as well");
    expectRefusal(command.run("--file", "x.json", ...tee("--spans", "30")), "usage");
    expectRefusal(command.run("--file", join(folder, "none.json"), "--spans", "30"), "there is no such file");
  });
});
