import {describe, expect, test} from "vitest";
import type {Check} from "../../lib/checks.js";
import type {Design} from "../../lib/design/design.js";
import {isOfColumn, plainId} from "../../lib/remedies/checkNames.js";
import {OUTSIDE, REMEDIES, namedBy, type Named} from "../../lib/remedies/remedies.js";
import type {Remedy} from "../../lib/remedies/remedy.js";
import {isHolding} from "../../lib/remedies/trial.js";
import {allAlong, outward, type Way} from "../../lib/remedies/way.js";
import {catalog} from "../support/designs.js";
import {NEVER} from "./never.js";
import {ODD} from "./odd.js";
import {checksOf, oddDesigns} from "./sample.js";

/** Cases of one check that are mended, at most. */
const CASES = 4;
/** Odd designs that are drawn, and of how many one has its columns worked out. */
const DESIGNS = 400;
const WITH_COLUMNS = 5;

/** A design with a check that fails in it. */
interface Case {
  readonly design: Design;
  readonly check: Check;
}

/** Every check of the odd designs by name, and those of them that fail. */
function checks(): {readonly names: ReadonlySet<string>; readonly failed: ReadonlyMap<string, readonly Case[]>} {
  const names = new Set<string>();
  const failed = new Map<string, Case[]>();
  const look = (design: Design, columns: boolean) => {
    for (const check of checksOf(design, columns) ?? []) {
      names.add(plainId(check));
      if (check.verdict === "fails") failed.set(plainId(check), [...failed.get(plainId(check)) ?? [], {design, check}]);
    }
  };
  oddDesigns(DESIGNS).forEach((design, i) => look(design, i % WITH_COLUMNS === 0));
  for (const {design, columns} of ODD) look(design, columns);
  return {names, failed};
}

/** A few of the cases, from the one that is passed least to the one in the middle: a worse one may be beyond all help. */
function mild(cases: readonly Case[]): Case[] {
  const sorted = [...cases].sort((a, b) => a.check.utilization - b.check.utilization);
  return sorted.filter((_, i) => 2 * i <= cases.length && i % Math.ceil(cases.length / 2 / CASES) === 0);
}

/** Whether the check holds at one of a few steps of the ways; the farthest are tried first. */
function mended({check}: Case, ways: readonly Way[]): boolean {
  return ways.some((way) => outward(way).reverse().some((step) => {
    const changed = way.at(step);
    const after = changed && checksOf(changed, isOfColumn(check));
    // A part that the design no longer has needs no check: pockets, once there is a ledge.
    return after !== undefined && after.filter(({id}) => id === check.id).every(isHolding);
  }));
}

const mends = (one: Case, {ways}: Named): boolean => ways !== undefined && mended(one, ways(one.design));
const together = (one: Case, all: readonly Named[]): boolean => mended(one, allAlong(one.design, all.flatMap(({ways}) => ways ?? [])));

/** Words between remedies. */
const BETWEEN = /^(a|an|the|its|it|or|and|to|of|in|at|with|so|that|take|takes|use|make|keep|set|add|look|on|count|must|be|one|girder|beam|whose|stems|stirrups|clear|columns|another|bay)$/i;

/** Words of a message's remedies that none of the table's accounts for. */
function unknown({message}: Check, remedies: readonly Remedy[]): string[] {
  const from = Math.max(message.lastIndexOf(": "), message.lastIndexOf(". "));
  const left = remedies.reduce((text, {says}) => text.replace(says, " "), message.slice(from));
  return left.split(/[^A-Za-z']+/).filter((word) => word !== "" && !BETWEEN.test(word));
}

/** What is wrong with the remedies that the messages of one check name. */
function faultsOf(id: string, cases: readonly Case[], remedies: readonly Remedy[]): string[] {
  const faults: string[] = [];
  const tried = new Set<Remedy>();
  const helped = new Set<Remedy>();
  for (const one of cases) {
    const told = `${one.check.message} (${one.check.utilization.toFixed(3)})`;
    const all = namedBy(one.check, catalog, remedies);
    const words = unknown(one.check, remedies);
    if (words.length > 0) faults.push(`${id}: the table does not know "${words.join(" ")}": ${told}`);
    let alone = false;
    for (const each of all) {
      if (each.remedy.move) tried.add(each.remedy);
      // One that has helped before need not show it again where another does now.
      if ((alone && helped.has(each.remedy)) || !mends(one, each)) continue;
      helped.add(each.remedy);
      alone = true;
    }
    // What a design has no field for cannot be tried.
    const beyond = all.length > 0 && all.every(({ways}) => !ways);
    if (!alone && !beyond && !together(one, all)) faults.push(`${id}: ${all.length === 0 ? "names no remedy" : "not mended"}: ${told}`);
  }
  return [...faults, ...[...tried].filter((remedy) => !helped.has(remedy)).map(({says}) => `${id}: ${says} never mends it: ${cases[0]?.check.message}`)];
}

describe("a failed check", () => {
  const found = () => (known ??= checks());
  let known: ReturnType<typeof checks> | undefined;

  test("is known with its remedies, or as one that a design's fields cannot mend or that never fails", () => {
    const {names, failed} = found();
    expect([...names].filter((id) => ![REMEDIES, OUTSIDE, NEVER].some((table) => Object.hasOwn(table, id)))).toEqual([]);
    expect([...failed.keys()].filter((id) => Object.hasOwn(NEVER, id))).toEqual([]);
  });

  test("is met by the design that was made for it", () => {
    const {failed} = found();
    expect(ODD.filter(({id, design}) => !failed.get(id)?.some((one) => one.design === design)).map(({id}) => id)).toEqual([]);
  });

  test("names a remedy that mends it, and none that does not", () => {
    const faults = [...found().failed].flatMap(([id, cases]) => (Object.hasOwn(OUTSIDE, id) ? [] : faultsOf(id, mild(cases), REMEDIES[id] ?? [])));
    expect(faults).toEqual([]);
  });
});
