import {describe, expect, test} from "vitest";
import type {Check, Verdict} from "../../lib/checks.js";
import type {Design} from "../../lib/design/design.js";
import {combined, onRoof, type Move} from "./moves.js";
import {ODD} from "./odd.js";
import {NEVER, OUTSIDE, REMEDIES, type Remedy} from "./remedies.js";
import {checksOf, oddDesigns, ofColumn, ofRoof, plainId} from "./sample.js";

/** Cases of one check that are mended, at most. */
const CASES = 4;
/** Odd designs that are drawn, and of how many one has its columns worked out. */
const DESIGNS = 400;
const WITH_COLUMNS = 5;

const HOLDS = new Set<Verdict>(["ok", "near"]);

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

/** A remedy with the words that name it. */
interface Named {
  readonly remedy: Remedy;
  readonly said: RegExpExecArray;
}

const named = (remedies: readonly Remedy[], {message}: Check): Named[] => remedies.flatMap((remedy) => {
  const said = remedy.says.exec(message);
  return said ? [{remedy, said}] : [];
});

/** Whether the check holds in one of the designs; the farthest from the first is tried first. */
function mended({check}: Case, designs: readonly Design[]): boolean {
  return [...designs].reverse().some((changed) => {
    const after = checksOf(changed, ofColumn(check));
    // A part that the design no longer has needs no check: pockets, once there is a ledge.
    return after !== undefined && HOLDS.has(after.find(({id}) => id === check.id)?.verdict ?? "ok");
  });
}

/** What of the floor's deck and beams mends them mends the roof's where it is done there. */
const where = ({check}: Case, move: Move): Move => (ofRoof(check) ? onRoof(move) : move);
const mends = (one: Case, {remedy: {move}, said}: Named): boolean => move !== undefined && mended(one, where(one, move)(one.design, said));
const together = (one: Case, all: readonly Named[]): boolean =>
  mended(one, combined(one.design, all.flatMap(({remedy: {move}, said}) => (move ? [(design: Design) => where(one, move)(design, said)] : []))));

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
    const all = named(remedies, one.check);
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
    const beyond = all.length > 0 && all.every(({remedy}) => !remedy.move);
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
