import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {LIMITS, LOAD_LIMITS} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {evaluate} from "../../lib/evaluate.js";
import {limitCurvesOf, limitFinding, limitPicture, limitTable, limitsAbove} from "../../src/pages/limits/limitPicture.js";
import {limitRows} from "../../src/pages/limits/limitUseList.js";
import {firstTwo, hoursWords, moreOrLess, sagOf, walkingOf} from "../../src/pages/limits/limitWords.js";
import {decimals} from "../../lib/units.js";
import {catalog, seeds} from "../support/designs.js";

describe.each(seeds)("the limits of $id", ({design}) => {
  const result = evaluate(design, catalog);
  const picture = limitPicture(result, limitCurvesOf()(result), result.deck.criteria.limits);

  test("the picture holds the design, its load and where its curve ends", () => {
    expect(picture.spansFt[0]).toBeLessThan(design.bay.spanFt);
    expect(picture.spansFt[1]).toBeGreaterThan(design.bay.spanFt);
    expect(picture.mostPsf).toBeGreaterThan(2.5 * result.deck.demandPsf);
    expect(picture.envelope.at(-1)?.safeLoadPsf).toBeLessThan(20);
  });

  test("the title names what governs at the design's own span, or by how far it is off", () => {
    const near = picture.envelope.reduce((best, point) => (Math.abs(point.spanFt - design.bay.spanFt) < Math.abs(best.spanFt - design.bay.spanFt) ? point : best));
    expect(limitFinding(picture).toLowerCase()).toContain(near.governs);
    expect(limitFinding({...picture, envelope: []})).toContain("No limit is switched on");
  });

  test("the table tells the loads that the limits allow", () => {
    const {columns, rows} = limitTable(picture);
    const [first] = rows;
    const {limitsPsf} = safeLoad(result.member, Number(first?.[0]), {...result.deck.criteria, limits: LOAD_LIMITS});
    expect(first?.slice(1)).toEqual(columns.slice(1).map((name) => decimals(Math.max(0, limitsPsf[name.replace(/^. /, "").replace(/, psf$/, "") as (typeof LOAD_LIMITS)[number]] as number))));
    expect(limitsAbove({...picture, mostPsf: 1e9})).toBe("");
  });

  test("every limit has a row: those that are asked first, from the most used down, and those that fail are not hidden", () => {
    const rows = limitRows(result);
    expect(rows.map(({name}) => name).sort()).toEqual([...LIMITS].sort());
    const asked = rows.filter((row) => row.asked);
    expect(rows.slice(0, asked.length)).toEqual(asked);
    asked.slice(1).forEach((row, i) => expect(row.utilization as number).toBeLessThanOrEqual(asked[i]?.utilization as number));
    expect(rows.filter(({utilization}) => utilization === null).every(({word}) => word === "does not apply")).toBe(true);
    const failing = limitRows(evaluate(withValues(design, {"bay.spanFt": 90}), catalog));
    expect(failing.find(({name}) => name === "strength")?.word).toBe("fails");
  });

  test("the sag's chart reaches today's load, the walkers' the design's span", () => {
    expect(sagOf(result).points.at(-1)?.livePsf).toBeGreaterThan(result.deck.livePsf);
    expect(walkingOf(result).curve.points.at(-1)?.spanFt).toBeGreaterThan(design.bay.spanFt);
    const [first, second] = firstTwo(result);
    expect(first?.name).toBe(result.deck.safe.governs);
    expect(second?.psf).toBeGreaterThanOrEqual(first?.psf as number);
  });
});

test("curves are kept while only the span changes", () => {
  const curvesOf = limitCurvesOf();
  const design = seeds[0]?.design as (typeof seeds)[number]["design"];
  const at = (changes: Parameters<typeof withValues>[1]) => curvesOf(evaluate(withValues(design, changes), catalog));
  const first = at({});
  expect(at({"bay.spanFt": 44})).toBe(first);
  expect(at({"deck.toppingIn": 3})).not.toBe(first);
});

test("words for shares and hours", () => {
  expect(moreOrLess(110, 100)).toBe("10\u00a0% more than");
  expect(moreOrLess(90, 100)).toBe("10\u00a0% less than");
  expect(moreOrLess(100.2, 100)).toBe("just as much as");
  expect(moreOrLess(99.8, 100)).toBe("a hair less than");
  // 1.97 hours are no rating of 2.
  expect([1.97, 3.999].map(hoursWords)).toEqual(["1.9 hours", "3.9 hours"]);
  expect([0, 1, 1.5, 4, undefined].map(hoursWords)).toEqual(["less than 1 hour", "1 hour", "1.5 hours", "4 hours or more", "a time that only a test can establish"]);
});
