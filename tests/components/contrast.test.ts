import {readFileSync} from "node:fs";
import {join} from "node:path";
import {describe, expect, test} from "vitest";
import {ROOT} from "../../src/headless/root.js";

const TEXT = 4.5;
const MARK = 3;

/** Colors that carry words, and colors that fill or draw. */
const WORDS = ["ink", "ink-soft", "accent", "pinned", "near", "fails", "ok", "steel", "load"];
const MARKS = ["concrete-plant-edge", "concrete-site-edge", "daylight", "edge"];

const tokens = readFileSync(join(ROOT, "src", "style", "tokens.css"), "utf8");
const print = readFileSync(join(ROOT, "src", "style", "print.css"), "utf8");
const [light = "", dark = ""] = tokens.split("prefers-color-scheme: dark");
const themes = {light: colors(light), dark: colors(dark), print: {...colors(light), ...colors(print)}};

describe.each(Object.entries(themes))("%s", (_, theme) => {
  test.each(WORDS)("--%s can be read on paper and on raised ground", (name) => {
    for (const ground of ["paper", "raised", "sunken"]) {
      expect(contrast(theme, name, ground), `${name} on ${ground}`).toBeGreaterThanOrEqual(name === "ink" || name === "ink-soft" || ground !== "sunken" ? TEXT : MARK);
    }
  });

  test.each(MARKS)("--%s can be seen on paper", (name) => expect(contrast(theme, name, "paper")).toBeGreaterThanOrEqual(MARK));

  test("words on the accent can be read", () => expect(contrast(theme, "paper", "accent")).toBeGreaterThanOrEqual(TEXT));

  test.each(["concrete-plant", "concrete-site"])("words and steel can be seen on --%s", (ground) => {
    expect(contrast(theme, "ink", ground)).toBeGreaterThanOrEqual(TEXT);
    expect(contrast(theme, "steel", ground)).toBeGreaterThanOrEqual(MARK);
  });

  test("the two concretes can be told apart by a reader who sees no red or no green", () => {
    for (const view of [protan, deutan]) {
      for (const part of ["", "-edge"]) {
        expect(distance(view(theme[`concrete-plant${part}`]), view(theme[`concrete-site${part}`]))).toBeGreaterThan(15);
      }
    }
  });
});

test("light and dark define the same colors, and print changes none but what it names among them", () => {
  expect(Object.keys(themes.dark).sort()).toEqual(Object.keys(themes.light).sort());
  expect(Object.keys(themes.print).sort()).toEqual(Object.keys(themes.light).sort());
  expect(tokens).toContain("@media screen and (prefers-color-scheme: dark)");
  for (const [name, color] of Object.entries(colors(print))) expect(color, name).not.toEqual(colors(light)[name]);
});

type Rgb = readonly [number, number, number];

function colors(css: string): Record<string, Rgb> {
  return Object.fromEntries([...css.matchAll(/--([a-z-]+):\s*#([0-9a-f]{6});/g)].map(([, name, hex]) => [name as string, parse(hex as string)]));
}

function parse(hex: string): Rgb {
  return [0, 2, 4].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255) as unknown as Rgb;
}

/** sRGB to linear light. */
function linear(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
}

/** Relative luminance and contrast ratio of WCAG 2.2. */
function luminance(color: Rgb): number {
  const [r, g, b] = color.map(linear) as unknown as Rgb;
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(theme: Record<string, Rgb>, first: string, second: string): number {
  const [high, low] = [theme[first], theme[second]].map((color) => luminance(color as Rgb)).sort((a, b) => b - a) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/** How a color looks to one who lacks one kind of cone (matrices of Viénot, Brettel and Mollon 1999, linear light). */
function protan(color: Rgb | undefined): Rgb {
  return project(color as Rgb, [[0.11238, 0.88762, 0], [0.11238, 0.88762, 0], [0.00401, -0.00401, 1]]);
}

function deutan(color: Rgb | undefined): Rgb {
  return project(color as Rgb, [[0.29275, 0.70725, 0], [0.29275, 0.70725, 0], [-0.02234, 0.02234, 1]]);
}

function project(color: Rgb, matrix: readonly Rgb[]): Rgb {
  const light = color.map(linear);
  return matrix.map((row) => row.reduce((sum, factor, index) => sum + factor * (light[index] as number), 0)) as unknown as Rgb;
}

/** Distance in CIE L*a*b*; about 2 can just be seen. */
function distance(first: Rgb, second: Rgb): number {
  const [a, b] = [lab(first), lab(second)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function lab([r, g, b]: Rgb): Rgb {
  const f = (t: number) => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
