import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import {MOST_SWEEP_CELLS, sweep, sweepSize, sweepSpansFt, type SweepInput, type SweepProgress, type SweepRow} from "../../lib/deck/sweep.js";
import {patternMember, safeLoadTable, usualPatterns} from "../../lib/deck/table.js";
import {camber} from "../../lib/member/camber.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const INPUT: SweepInput = {
  members: ["10DT24", "12DT30", "4HC8"],
  sixteenths: [6, 8],
  toppingsIn: [0, 2],
  spansFt: {fromFt: 18, toFt: 66, stepFt: 6},
  conditions: {concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingStrengthPsi: 3000, humidityPercent: 70},
  criteria: {untopped: handbookCriteria(false), topped: handbookCriteria(true)},
};

function all(input: SweepInput): {words: SweepProgress[]; rows: SweepRow[]; size: {rows: number; cells: number}} {
  const words: SweepProgress[] = [];
  const work = sweep(catalog, input);
  let step = work.next();
  for (; !step.done; step = work.next()) words.push(step.value);
  return {words, rows: words.flatMap(({rows}) => rows), size: step.value};
}

describe("sweep", () => {
  const swept = () => all(INPUT);

  test("equals the tables of its members, cell by cell", () => {
    const {rows} = swept();
    const spans = sweepSpansFt(INPUT.spansFt);
    for (const designation of INPUT.members) {
      const row = deckRow(catalog, designation);
      for (const toppingIn of row.use === "pretopped" ? [0] : INPUT.toppingsIn) {
        const conditions = {...INPUT.conditions, toppingIn};
        const patterns = [6, 8].flatMap((size) => usualPatterns(row, size));
        const table = safeLoadTable(catalog, row, patterns, spans, conditions, handbookCriteria(toppingIn > 0));
        const ours = rows.filter((entry) => entry.member === designation && entry.toppingIn === toppingIn);
        expect(ours.map(({pattern}) => pattern)).toEqual(patterns);
        expect(ours.map(({cells}) => cells.map(({spanFt, safeLoadPsf, governs}) => ({spanFt, safeLoadPsf, governs}))))
          .toEqual(table.map(({cells}) => cells.map(({spanFt, safeLoadPsf, governs}) => ({spanFt, safeLoadPsf, governs}))));
      }
    }
  });

  test("tells what a row is and how it arches", () => {
    const {rows} = swept();
    const member = patternMember(catalog, deckRow(catalog, "10DT24"), "128-D1", {...INPUT.conditions, toppingIn: 2});
    const row = rows.find((entry) => entry.member === "10DT24" && entry.pattern === "128-D1" && entry.toppingIn === 2);
    expect(row).toMatchObject({use: "field-topped", profile: "one-point", sixteenths: 8, depthIn: 26, strands: 12});
    expect(row?.weightPsf).toBeCloseTo((member.selfWeightPlf + member.toppingWeightPlf) / 10, 10);
    expect(row?.strandPsf).toBeCloseTo((12 * member.layout.strand.weightPlf) / 10, 10);
    const {erectionIn, longTermIn} = camber(member, 48, 150);
    expect(row?.cells.find(({spanFt}) => spanFt === 48)).toMatchObject({erectionCamberIn: erectionIn, longTermCamberIn: longTermIn});
  });

  test("gives pretopped members no topping, and each row once though a choice is named twice", () => {
    const {rows} = swept();
    expect(new Set(rows.filter(({member}) => member === "12DT30").map(({toppingIn}) => toppingIn))).toEqual(new Set([0]));
    expect(all({...INPUT, members: ["4HC8", "4HC8"], toppingsIn: [2, 2], sixteenths: [6, 6]}).rows).toHaveLength(4);
  });

  test("tells how far it is in even steps that add up to the whole, each row once", () => {
    const {words, rows, size} = swept();
    const steps = words.map(({cellsDone}, index) => cellsDone - (words[index - 1]?.cellsDone ?? 0));
    expect(steps.reduce((sum, step) => sum + step / size.cells, 0)).toBeCloseTo(1, 12);
    expect(Math.max(...steps)).toBeLessThanOrEqual(250);
    expect(words).toHaveLength(Math.ceil(size.cells / 250));
    expect(new Set(words.map(({cellsInAll}) => cellsInAll))).toEqual(new Set([size.cells]));
    expect(rows).toHaveLength(size.rows);
    expect(rows.reduce((sum, {cells}) => sum + cells.length, 0)).toBe(size.cells);
    expect(new Set(rows.map(({member, pattern, toppingIn}) => `${member} ${pattern} ${toppingIn}`)).size).toBe(size.rows);
  });

  test("is as large as was said beforehand, and can be sent to a worker and back", () => {
    const {words, size} = swept();
    expect(sweepSize(catalog, INPUT)).toEqual(size);
    expect(structuredClone(words)).toEqual(words);
  });
});

describe("what cannot be swept", () => {
  const wrong = (change: Partial<SweepInput>) => () => sweepSize(catalog, {...INPUT, ...change});
  const spans = (change: Partial<SweepInput["spansFt"]>) => wrong({spansFt: {...INPUT.spansFt, ...change}});

  test("spans outside 10 to 150 ft, a last before the first, a step of nothing", () => {
    refused(spans({fromFt: 9}), {path: "spansFt.fromFt", message: "first span: 9 ft is not possible (10 to 150 ft)"});
    refused(spans({toFt: 151}), {path: "spansFt.toFt", message: "last span: 151 ft is not possible (18 to 150 ft)"});
    refused(spans({toFt: 17}), {path: "spansFt.toFt"});
    // 140 ft lie between the first and the last of all spans.
    for (const stepFt of [0, -2, NaN, 141]) refused(spans({stepFt}), {path: "spansFt.stepFt"});
  });

  test("a choice of nothing, a member or strand that is not there, a topping too thick", () => {
    refused(wrong({members: []}), {path: "members", allowed: "at least one"});
    refused(wrong({sixteenths: []}), {path: "sixteenths"});
    refused(wrong({toppingsIn: []}), {path: "toppingsIn"});
    refused(wrong({members: ["9DT99"]}), {path: "members", value: "9DT99"});
    refused(wrong({sixteenths: [8, 11]}), {path: "pattern"});
    refused(wrong({toppingsIn: [7]}), {path: "toppingsIn", allowed: "0 to 6 in"});
    refused(wrong({conditions: {...INPUT.conditions, strengthPsi: 500}}), {path: "strengthPsi"});
  });

  test("more cells than anyone would read", () => {
    const members = catalog.deckMembers.map(({designation}) => designation);
    const error = refused(wrong({members, sixteenths: [6, 7, 8, 9, 10], spansFt: {fromFt: 10, toFt: 150, stepFt: 0.5}}), {path: "spansFt.stepFt"});
    expect(error.message).toContain(`at most ${MOST_SWEEP_CELLS}`);
    // Just as many are read: four numbers of strands under twenty toppings over 1,250 spans; over one span more they are too many.
    const large = (toFt: number): SweepInput => ({...INPUT, members: ["4HC8"], sixteenths: [6], toppingsIn: Array.from({length: 20}, (_, i) => 0.25 * i), spansFt: {fromFt: 10, toFt, stepFt: 0.1}});
    expect(sweepSize(catalog, large(134.9))).toEqual({rows: 80, cells: MOST_SWEEP_CELLS});
    refused(() => sweepSize(catalog, large(135)), {path: "spansFt.stepFt"});
  });

  test("is refused before any work", () => {
    refused(() => sweep(catalog, {...INPUT, members: []}).next(), {path: "members"});
  });
});

describe("sweepSpansFt", () => {
  test("ends where the steps end", () => {
    expect(sweepSpansFt({fromFt: 20, toFt: 31, stepFt: 5})).toEqual([20, 25, 30]);
    expect(sweepSpansFt({fromFt: 20, toFt: 21, stepFt: 0.1})).toEqual([20, 20.1, 20.2, 20.3, 20.4, 20.5, 20.6, 20.7, 20.8, 20.9, 21]);
    expect(sweepSpansFt({fromFt: 20, toFt: 20, stepFt: 5})).toEqual([20]);
  });
});
