import {readdirSync} from "node:fs";
import {join} from "node:path";
import {describe, expect, test} from "vitest";
import {readCatalog} from "../../lib/catalog.js";
import {TOPICS, type Answer, type Item, type NumberPart} from "../../lib/practice/item.js";
import {hintsOf, keysOf, slipsOf, toleranceOf} from "../../lib/practice/keys.js";
import {KINDS, itemOf} from "../../lib/practice/kinds.js";
import {check} from "../../lib/practice/marks.js";
import {proseText} from "../../lib/practice/prose.js";
import {toSi} from "../../lib/units.js";
import {ROOT} from "../../src/headless/root.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {checkWorking} from "../steps/recomputed.js";
import {once} from "../support/once.js";

const SEEDS = 500;
const catalog = once(() => readCatalog(readRawTables()));

/** Calls back for every number in what an exercise holds, functions and the catalog's shapes aside. */
function eachNumber(node: unknown, place: string, seen: (value: number, place: string) => void): void {
  if (typeof node === "number") return seen(node, place);
  if (typeof node === "object" && node !== null) for (const key in node) if (key !== "shape") eachNumber((node as Record<string, unknown>)[key], key, seen);
}

/** What the reader is given, as one text. */
const stated = ({givens, table}: Item) => JSON.stringify([givens, table?.rows]);
const typed = (answer: Answer) => String(answer);
const isNumber = (part: Item["parts"][number]): part is NumberPart => part.type === "number";

/** Wants an exercise to be finite, sensible in words and numbers, and right by its own key. */
function expectSound(item: Item): void {
  eachNumber(item, item.kind, (value, place) => {
    if (!Number.isFinite(value)) expect.fail(`${place} of seed ${item.seed} is ${value}`);
  });
  const keys = keysOf(item);
  const words = [...item.question, ...item.parts.map(({ask}) => ask)].flatMap((each) => [proseText(each), proseText(each, "SI")]).join(" ");
  if (/undefined|NaN|null|Infinity|\[object|\d\.\d{7}/.test(words)) expect.fail(`${item.kind}, seed ${item.seed}: ${words}`);
  for (const [i, part] of item.parts.entries()) {
    const earlier = keys.slice(0, i);
    const working = part.working(earlier);
    checkWorking(working);
    const hints = JSON.stringify(hintsOf(part, earlier));
    if (hints.includes("result") || hints.includes('"value"')) expect.fail(`${item.kind}: hints tell numbers`);
    if (!isNumber(part)) continue;
    const key = keys[i] as number;
    if (!(Number.isFinite(key) && Math.abs(key) > 1e-4 && Math.abs(key) < 1e7)) expect.fail(`${item.kind}, seed ${item.seed}: the key is ${key}`);
    const last = working.steps.at(-1);
    if (last && Math.abs(last.result - key) > 1e-9 * Math.abs(key)) expect.fail(`${item.kind}, seed ${item.seed}: the steps end in ${last.result}, the key is ${key}`);
  }
  // The key as it is, to four digits with its unit, and in SI with and without its unit.
  const four = item.parts.map((part, i) => (isNumber(part) ? `${Number((keys[i] as number).toPrecision(4))} ${part.unit}` : typed(keys[i] as Answer)));
  const si = item.parts.map((part, i) => (isNumber(part) ? toSi(keys[i] as number, part.unit) : {value: keys[i], unit: ""}));
  for (const marks of [check(item, keys.map(typed)), check(item, four), check(item, si.map(({value, unit}) => `${value} ${unit}`)), check(item, si.map(({value}) => `${value}`), "SI")]) {
    if (marks.points !== marks.of) expect.fail(`${item.kind}, seed ${item.seed}: the key gets ${JSON.stringify(marks)}`);
  }
}

/** Wants each usual slip to be told by its name, and none to count as right. */
function expectSlipsTold(item: Item, told: Map<string, number>): void {
  const keys = keysOf(item);
  for (const [i, part] of item.parts.entries()) {
    const withAnswer = (answer: string) => check(item, [...Array<undefined>(i), answer]).parts[i]!;
    const count = (name: string) => told.set(`${i} ${name}`, (told.get(`${i} ${name}`) ?? 0) + 1);
    if (isNumber(part)) {
      for (const slip of slipsOf(part, keys.slice(0, i))) {
        const mark = withAnswer(`${slip.value} ${part.unit}`);
        if (mark.verdict !== "slip" || mark.slip !== slip.name || mark.points !== 0) expect.fail(`${item.kind}, seed ${item.seed}: ${slip.name} (${slip.value}, key ${keys[i]}) is marked ${JSON.stringify(mark)}`);
        if (Math.abs(slip.value - (keys[i] as number)) <= toleranceOf(part, keys[i] as number)) expect.fail(`${item.kind}: ${slip.name} is right`);
        count(slip.name);
      }
    } else if (part.type === "choice") {
      for (const option of part.options) {
        const mark = withAnswer(option.id);
        if ((mark.verdict === "right") !== (option.id === keys[i])) expect.fail(`${item.kind}: ${option.id} is marked ${mark.verdict}`);
        if (option.slip && option.id !== keys[i] && mark.slip !== option.slip.name) expect.fail(`${item.kind}: ${option.id} is not told`);
        if (option.slip && option.id !== keys[i]) count(option.slip.name);
      }
      if (new Set(part.options.map(({id}) => id)).size < part.options.length) expect.fail(`${item.kind}: two options of one id`);
    } else if (part.type === "order") {
      for (const slip of part.slips.filter(({order}) => order !== keys[i])) {
        if (withAnswer(slip.order).slip !== slip.name) expect.fail(`${item.kind}: ${slip.name} is not told`);
        count(slip.name);
      }
    } else {
      part.lines.forEach((_, line) => {
        if ((withAnswer(String(line + 1)).verdict === "right") !== (String(line + 1) === keys[i])) expect.fail(`${item.kind}: line ${line + 1}`);
      });
    }
  }
}

describe.each(KINDS.map((kind) => [kind.id, kind] as const))("%s", (_, kind) => {
  test(`is sound in ${SEEDS} seeds, each with numbers of its own, and every usual slip is told`, () => {
    const given = new Map<string, number>();
    const told = new Map<string, number>();
    const names = new Set<string>();
    for (let seed = 1; seed <= SEEDS; seed++) {
      const item = itemOf(kind.id, seed, catalog());
      expectSound(item);
      expectSlipsTold(item, told);
      const before = given.get(stated(item));
      if (before !== undefined) expect.fail(`seeds ${before} and ${seed} give the same: ${stated(item)}`);
      given.set(stated(item), seed);
      const keys = keysOf(item);
      item.parts.forEach((part, i) => isNumber(part) && part.slips(keys.slice(0, i)).forEach(({name}) => names.add(`${i} ${name}`)));
    }
    // A slip that hardly ever shows apart from the answer is none.
    for (const name of names) expect(told.get(name) ?? 0, name).toBeGreaterThan(0);
  });

  test("is the same for the same seed, and other in the next turn of a set", () => {
    const plain = (item: Item) => JSON.stringify([item, keysOf(item)]);
    expect(plain(itemOf(kind.id, 7, catalog()))).toBe(plain(itemOf(kind.id, 7, catalog())));
    const turns = Array.from({length: 12}, (_, i) => stated(itemOf(kind.id, 7, catalog(), i + 1)));
    expect(new Set(turns).size).toBe(12);
  });
});

test("kinds have ids of their own, in words, and belong to a page that there is", () => {
  expect(new Set(KINDS.map(({id}) => id)).size).toBe(KINDS.length);
  for (const {id, title, level, topic} of KINDS) {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(title.length).toBeGreaterThan(8);
    expect([1, 2, 3]).toContain(level);
    expect(TOPICS).toContain(topic);
  }
  const pages = readdirSync(join(ROOT, "src", "pages"));
  for (const topic of TOPICS) expect(pages).toContain(topic);
});
