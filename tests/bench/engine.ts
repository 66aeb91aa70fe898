import {execFileSync} from "node:child_process";
import {readFileSync} from "node:fs";
import {join} from "node:path";
import {deckRow} from "../../lib/deck/deckMember.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {strengthShares} from "../../lib/deck/shares.js";
import {safeLoadTable, usualPatterns} from "../../lib/deck/table.js";
import {candidates, columnsOf, evaluate} from "../../lib/evaluate.js";
import type {Member} from "../../lib/member/member.js";
import {usualVary, type Brief} from "../../lib/schemes/brief.js";
import {measuresOf} from "../../lib/schemes/measures.js";
import {readBrief} from "../../lib/schemes/readBrief.js";
import {rowOf} from "../../lib/schemes/row.js";
import {schemesOf} from "../../lib/schemes/scheme.js";
import {isMade} from "../../lib/schemes/schemeRow.js";
import {floorSpread} from "../../lib/topping/floorSpread.js";
import {SCATTER} from "../../lib/topping/scatter.js";
import {spreadTask} from "../../src/components/worker/spreadTask.js";
import {catalog, seeds} from "../support/designs.js";
import {ms, perSecond, seconds, spread, timesMs, whole, type Line} from "./measure.js";
import type {KeptResults} from "./memory.js";
import {HANDBOOK, MEMBER_SPANS, MIX_WORDS, RUNS, STRENGTH_AND_SERVICE, perCell} from "./mix.js";
import {evaluateOne, mixMembers} from "./mixMembers.js";

/** Keeps results in use, so that no work is dropped as idle. */
let kept = 0;

const GOAL = "400,000/s";

/** A hundred thousand member-spans on one thread, with how many limits each has, and the memory that they take. */
export function memberSpanLines(): Line[] {
  const members = mixMembers().map(({member}) => member);
  return RUNS.map(({words, criteria, goal}): Line => {
    const run = () => {
      for (let i = 0; i < MEMBER_SPANS; i++) kept += evaluateOne(members, criteria, i).safeLoadPsf;
    };
    const {medianMs} = spread(timesMs(run, 7, 2));
    let limits = 0;
    for (let i = 0; i < MEMBER_SPANS; i++) limits += Object.keys(evaluateOne(members, criteria, i).limitsPsf).length;
    return {
      what: `${whole(MEMBER_SPANS)} member-spans, ${words}`, value: seconds(medianMs), goal: goal?.node,
      note: `${perCell(limits)} loads by limit each; ${MIX_WORDS}; ${whole((1000 * MEMBER_SPANS) / medianMs)}/s`,
    };
  });
}

/** The most memory that a process holds in which a hundred thousand results are made and kept. */
export function sweepMemoryLines(): Line[] {
  // In a process of its own: whoever keeps results teaches the engine to lay new ones where they live long, which slows all that is measured after.
  const printed = execFileSync(process.execPath, [...process.execArgv, join(import.meta.dirname, "memory.ts")], {encoding: "utf8"});
  const {mostMib, beforeMib, firstMs} = JSON.parse(printed) as KeptResults;
  return [{
    what: `${whole(MEMBER_SPANS)} results made and kept`, value: `${whole(mostMib)} MiB`, goal: "200 MiB",
    note: `most that the process held, Node and loader included; it held ${whole(beforeMib)} MiB before; made in ${seconds(firstMs)}, the engine's warming up included`,
  }];
}

function rateOf(members: readonly Member[]): number {
  return perSecond((i) => {
    kept += evaluateOne(members, STRENGTH_AND_SERVICE, i).safeLoadPsf;
  }, 40_000);
}

/** One safe load: losses, strength and service at every place that may govern. */
export function safeLoadLines(): Line[] {
  return mixMembers().map(({name, member}): Line => {
    const limits = Object.keys(safeLoad(member, 40, STRENGTH_AND_SERVICE).limitsPsf).join(", ");
    const places = strengthShares(member).length;
    return {what: `safe loads, ${name}`, value: `${whole(rateOf([member]))}/s`, goal: GOAL, note: `${places === 1 ? "1 place" : `${places} places`}, strand rows: ${member.layout.rows.length}; losses, ${limits}`};
  });
}

/** Whole tables of 12 patterns by 25 spans, members made anew. */
export function tableLines(): Line[] {
  const conditions = {concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn: 2, toppingStrengthPsi: 3000, humidityPercent: 70} as const;
  const spans = Array.from({length: 25}, (_, i) => 30 + 2 * i);
  return ["10DT32", "12DT32"].map((designation) => {
    const row = deckRow(catalog, designation);
    const all = usualPatterns(row);
    const patterns = [...all.filter((text) => text.endsWith("S")).slice(-6), ...all.filter((text) => !text.endsWith("S")).slice(-6)];
    const {medianMs, p95Ms} = spread(timesMs(() => {
      kept += safeLoadTable(catalog, row, patterns, spans, conditions, HANDBOOK).length;
    }, 400));
    return {what: `table of ${patterns.length} patterns x ${spans.length} spans, ${designation}+2`, value: ms(medianMs), goal: "5 ms", note: `p95 ${ms(p95Ms)}; half of the patterns depressed`};
  });
}

/** The whole pipeline and the deck search, for each starter design. */
export function designLines(): Line[] {
  return seeds.flatMap(({id, design}) => {
    const all = {...design, consider: {fieldToppedTees: true, pretoppedTees: true, planks: true}};
    const once = spread(timesMs(() => {
      // A design of its own each time: the result of one and the same is kept.
      kept += evaluate({...design}, catalog).checks.length;
    }, 300));
    const evaluation = evaluate(design, catalog);
    const columns = spread(timesMs(() => {
      kept += columnsOf(evaluation, catalog).checks.length;
    }, 300));
    const search = spread(timesMs(() => {
      kept += candidates(all, catalog).length;
    }, 100));
    const known = columnsOf(evaluation, catalog);
    const measures = spread(timesMs(() => {
      for (let i = 0; i < 100; i++) kept += measuresOf(evaluation, known, {factors: catalog.carbonFactors, prices: {}}).piecesWithoutColumns;
    }, 100));
    return [
      {what: `evaluate, ${id}`, value: ms(once.medianMs), note: `p95 ${ms(once.p95Ms)}`},
      {what: `columns, ${id}`, value: ms(columns.medianMs), note: `p95 ${ms(columns.p95Ms)}; with corbels and footings`},
      {what: `a hundred designs measured, ${id}`, value: ms(measures.medianMs), goal: "3 ms", note: `p95 ${ms(measures.p95Ms)}`},
      {what: `deck search, all kinds, ${id}`, value: ms(search.medianMs), note: `p95 ${ms(search.p95Ms)}`},
    ];
  });
}

/** All schemes of the starter brief, made anew each time, for one of them: by rule with all results, without and with columns. */
export function schemeLines(): Line[] {
  const brief = readBrief(readFileSync(join(import.meta.dirname, "../../seeds/briefs/teaching-building.json"), "utf8"), catalog);
  return [false, true].map((columns): Line => {
    const {count} = schemesOf(brief, catalog, {columns});
    const {medianMs} = spread(timesMs(() => {
      const schemes = schemesOf(brief, catalog, {columns});
      for (let i = 0; i < count; i++) kept += schemes.at(i).index;
    }, 5, 1));
    return {what: `one scheme, ${columns ? "with" : "without"} columns`, value: ms(medianMs / count), goal: columns ? "2 ms" : "0.5 ms", note: `of ${whole(count)} of the starter brief; sized by rule, with all results`};
  });
}

/** A grid of some twenty thousand schemes, once through: every span with every beam span, deck, concrete, edge and girder. */
export function gridLines(): Line[] {
  const {base, ...brief} = readBrief(readFileSync(join(import.meta.dirname, "../../seeds/briefs/teaching-building.json"), "utf8"), catalog);
  const grid: Brief = {
    ...brief, base, outline: {floorFt2: 10_800},
    vary: {...usualVary(base), toppingsIn: [2, 3], concretes: ["normalweight", "sand-lightweight"]},
  };
  const schemes = schemesOf(grid, catalog);
  const started = performance.now();
  const cpu = process.cpuUsage();
  let firstMs = 0;
  let made = 0;
  for (let i = 0; i < schemes.count; i++) {
    if (isMade(rowOf(schemes.at(i), {factors: catalog.carbonFactors, prices: {}}))) made += 1;
    if (i === 0) firstMs = performance.now() - started;
  }
  const {user, system} = process.cpuUsage(cpu);
  kept += made;
  const of = `of ${whole(schemes.count)}, of which ${whole(made)} could be made; with their rows, without columns`;
  return [
    {what: "one scheme of a large grid", value: ms((user + system) / 1000 / schemes.count), goal: "0.5 ms", note: `processor's time; ${of}`},
    {what: "a large grid on two workers", value: seconds((performance.now() - started) / 2), goal: "15 s", note: `half of what one thread takes; its first row after ${ms(firstMs)}`},
  ];
}

/** Pieces of one design that differ by chance, by the worker's own task, for each starter design. */
export function spreadLines(): Line[] {
  return seeds.map(({id, design}): Line => {
    const input = floorSpread(evaluate(design, catalog), {scatter: SCATTER, seed: 1, count: 5000, raisedIn: 0});
    const {medianMs, p95Ms} = spread(timesMs(() => {
      const work = spreadTask(catalog, input);
      let step = work.next();
      while (!step.done) step = work.next();
      kept += step.value.count;
    }, 40));
    return {what: `${whole(input.count)} pieces by chance, ${id}`, value: seconds(medianMs), goal: "0.5 s", note: `p95 ${ms(p95Ms)}; ${input.basis.topping ? "with their topping" : "no topping"}; the worker's task, here in Node`};
  });
}

/** Memory after all of the above. */
export function memoryLines(): Line[] {
  const {heapUsed, rss} = process.memoryUsage();
  return [{what: "memory", value: `${whole(heapUsed / 2 ** 20)} MiB`, note: `heap in use; ${whole(rss / 2 ** 20)} MiB for the process; checksum ${kept > 0 ? "kept" : "lost"}`}];
}
