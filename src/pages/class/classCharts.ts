import * as Plot from "@observablehq/plot";
import {REASON_NAMES} from "../../lib/design/reasons.js";
import {fieldOf} from "../../lib/design/fields.js";
import {element} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import {measureText, rowOf, SHOWN_MEASURES, type Student} from "./classData.js";

const ROW_PX = 64;
/** Failing checks that a chart names. */
const MOST_FAILS = 12;

/** How the class's choices spread, what fails most, and which decisions have a reason. */
export function classCharts(students: readonly Student[], widthPx: number): HTMLElement[] {
  const known = students.filter((student) => rowOf(student));
  if (known.length === 0) return [element("p", {class: "note"}, "Charts of depth, ceiling and carbon, of what fails and of reasons given stand here once there are designs.")];
  return [...SHOWN_MEASURES.map((shown) => spreadFigure(known, shown, widthPx)), failsFigure(known, widthPx), reasonsFigure(known, widthPx)].flat();
}

interface Dot {
  readonly who: string;
  readonly value: number;
  readonly fails: number;
}

function spreadFigure(students: readonly Student[], {measure, name, unit}: (typeof SHOWN_MEASURES)[number], widthPx: number): HTMLElement[] {
  const dots = students.flatMap((student): Dot[] => {
    const row = rowOf(student);
    const value = row && measure.read(row.measures);
    return row && value !== undefined ? [{who: student.who, value, fails: row.fails.length}] : [];
  });
  const [first] = dots;
  if (!first) return [];
  const sorted = dots.map(({value}) => value).sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] as number;
  const text = (value: number) => measureText(measure, value);
  const [least, middle, most] = [at(0), at(0.5), at(1)].map(text) as [string, string, string];
  const missing = students.length - dots.length;
  const heights = Math.max(...new Map(dots.map(({value}) => [text(value), dots.filter((dot) => text(dot.value) === text(value)).length])).values());
  const radius = dots.length > 60 ? 4 : 6;
  const span = at(1) - at(0) || 1;
  const chart = Plot.plot({
    width: widthPx, height: Math.max(ROW_PX, Math.min(12, heights) * (2 * radius + 1) + 2 * radius) + 44, marginLeft: 16, marginRight: 16, marginBottom: 40,
    style: {fontFamily: "var(--sans)", fontSize: "13px"},
    x: {label: `${name}, ${unit}`, domain: [at(0) - 0.06 * span, at(1) + 0.06 * span], ticks: Math.max(3, Math.floor(widthPx / 90)), labelArrow: "none"},
    marks: [
      Plot.ruleX([at(0.5)], {stroke: "var(--ink-soft)", strokeDasharray: "3 3"}),
      Plot.dot(dots, Plot.dodgeY({x: "value", anchor: "bottom", r: radius, padding: 1, title: ({who, value, fails}: Dot) => `${who}: ${text(value)} ${unit}${fails > 0 ? `, ${fails} fail` : ""}`,
        fill: ({fails}: Dot) => (fails > 0 ? "var(--paper)" : "var(--accent)"), stroke: ({fails}: Dot) => (fails > 0 ? "var(--fails)" : "var(--accent)"), strokeWidth: 2})),
    ],
  });
  return [figure(chart, {
    title: least === most ? `${name}: ${least} ${unit} in all of them` : `${name}: from ${least} to ${most} ${unit}, the middle one ${middle}`,
    caption: `Each dot is a design; an open one fails a check. The dashed line is the middle of the class.${missing > 0 ? ` ${missing} without this number are not drawn.` : ""}`,
    table: {columns: ["Who", `${name}, ${unit}`, "Checks that fail"], rows: [...dots].sort((a, b) => a.value - b.value).map(({who, value, fails}) => [who, text(value), String(fails)])},
  })];
}

function failsFigure(students: readonly Student[], widthPx: number): HTMLElement[] {
  const counts = new Map<string, number>();
  for (const student of students) for (const label of rowOf(student)?.fails ?? []) counts.set(label, (counts.get(label) ?? 0) + 1);
  const all = [...counts].map(([label, count]) => ({label, count})).sort((a, b) => b.count - a.count || (a.label < b.label ? -1 : 1));
  const [most] = all;
  if (!most) return [element("p", {}, "No check fails in any of the designs.")];
  const shown = all.slice(0, MOST_FAILS);
  const rest = all.length - shown.length;
  const chart = Plot.plot({
    width: widthPx, height: 22 * shown.length + 44, marginLeft: Math.min(240, 0.45 * widthPx), marginRight: 30, marginBottom: 40, style: {fontFamily: "var(--sans)", fontSize: "13px"},
    x: {label: "designs", domain: [0, students.length], ticks: Math.min(students.length, 6), tickFormat: "d", labelArrow: "none"}, y: {label: null, domain: shown.map(({label}) => label), tickFormat: (label: string) => shortened(label, widthPx)},
    marks: [
      Plot.barX(shown, {x: "count", y: "label", fill: "var(--fails)", fillOpacity: 0.75, insetTop: 3, insetBottom: 3}),
      Plot.text(shown, {x: "count", y: "label", text: ({count}: {count: number}) => String(count), textAnchor: "start", dx: 5, fill: "var(--ink)"}),
    ],
  });
  return [figure(chart, {
    title: `What fails most often: ${most.label}, in ${most.count} of ${students.length}`, caption: `How many of the designs fail a check.${rest > 0 ? ` ${rest} more are in the numbers.` : ""}`,
    table: {columns: ["Check", "Designs that fail it"], rows: all.map(({label, count}) => [label, String(count)])},
  })];
}

function shortened(label: string, widthPx: number): string {
  const letters = Math.floor(Math.min(240, 0.45 * widthPx) / 6.6);
  return label.length > letters ? `${label.slice(0, letters - 1).trimEnd()}\u2026` : label;
}

/** How a reason may stand, from the best: the letter that stands in its part of a bar, and the part's look. */
const STANDINGS = [
  {key: "own", words: "in their own words", fill: "var(--accent)", ink: "var(--paper)"}, {key: "starter", words: "the starter\u2019s or a rule\u2019s words", fill: "var(--concrete-plant)", ink: "var(--ink)"},
  {key: "earlier", words: "written for an earlier choice", fill: "var(--concrete-site)", ink: "var(--ink)"}, {key: "none", words: "none", fill: "var(--paper)", ink: "var(--ink)"},
] as const;

function reasonsFigure(students: readonly Student[], widthPx: number): HTMLElement[] {
  const labels = fieldOf("comments.*.on").choices;
  const rows = REASON_NAMES.flatMap((name) => {
    const states = students.flatMap((student) => rowOf(student)?.reasons.filter((reason) => reason.name === name) ?? []);
    if (states.length === 0) return [];
    const count = {
      own: states.filter(({standing, by}) => standing === "stands" && by === "reader").length, starter: states.filter(({standing, by}) => standing === "stands" && by !== "reader").length,
      earlier: states.filter(({standing}) => standing === "earlier choice").length, none: states.filter(({standing}) => standing === "none").length,
    };
    return [{label: labels[name], count, all: states.length}];
  });
  const parts = rows.flatMap(({label, count}) => STANDINGS.flatMap(({key, fill, ink}, i) => {
    const from = STANDINGS.slice(0, i).reduce((sum, one) => sum + count[one.key], 0);
    return count[key] > 0 ? [{label, from, to: from + count[key], key, fill, ink}] : [];
  }));
  const inOwn = rows.reduce((sum, {count}) => sum + count.own, 0);
  const all = rows.reduce((sum, row) => sum + row.all, 0);
  const [margin, least] = [Math.min(170, 0.38 * widthPx), students.length * 46 / Math.max(1, widthPx - 200)];
  const chart = Plot.plot({
    width: widthPx, height: 26 * rows.length + 44, marginLeft: margin, marginRight: 16, marginBottom: 40, style: {fontFamily: "var(--sans)", fontSize: "13px"},
    x: {label: "designs", domain: [0, students.length], ticks: Math.min(students.length, 6), tickFormat: "d", labelArrow: "none"}, y: {label: null, domain: rows.map(({label}) => label)},
    marks: [
      Plot.barX(parts, {x1: "from", x2: "to", y: "label", fill: "fill", stroke: "var(--ink-soft)", insetTop: 3, insetBottom: 3}),
      Plot.text(parts, {x: ({from, to}: {from: number; to: number}) => (from + to) / 2, y: "label", fill: "ink", text: ({from, to, key}: {from: number; to: number; key: string}) => (to - from >= least ? key : "")}),
    ],
  });
  return [figure(chart, {
    title: `${inOwn} of ${all} decisions have a reason in the student\u2019s own words`,
    caption: `Decision by decision: ${STANDINGS.map(({key, words}) => (key === words ? key : `${key}, ${words}`)).join("; ")}.`,
    table: {columns: ["Decision", ...STANDINGS.map(({key}) => key)], rows: rows.map(({label, count}) => [label, ...STANDINGS.map(({key}) => String(count[key]))])},
  })];
}
