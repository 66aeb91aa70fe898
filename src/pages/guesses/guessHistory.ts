import * as Plot from "@observablehq/plot";
import {GUESSES, type Guess} from "../../lib/exercises/guesses.js";
import {progressOf, progressWords, type KeptGuess, type Progress} from "../../lib/exercises/progress.js";
import {SKETCHES, type Sketch} from "../../lib/exercises/sketches.js";
import {element} from "../../components/dom.js";
import {dataTable, figure} from "../../components/figure.js";
import {forgetGuesses, keptGuesses} from "../../components/keptGuesses.js";
import {hrefOf, type PageEntry} from "../../components/shared/pageList.js";

const QUESTIONS: Readonly<Record<string, Pick<Guess | Sketch, "page" | "question">>> = {...GUESSES, ...SKETCHES};

/** A reader's guesses so far: how near they came over time, topic by topic, and what is still to be guessed. */
export function guessHistory(pages: readonly PageEntry[], widthPx: number): HTMLElement {
  const node = element("div", {class: "guess-history", "data-no-terms": true});
  const show = () => {
    const guesses = keptGuesses();
    const progress = progressOf(guesses);
    const clear = element("button", {type: "button", class: "button quiet no-print", onclick: () => {
      forgetGuesses();
      show();
    }}, "Forget them all");
    node.replaceChildren(
      element("p", {class: "guess-progress"}, element("strong", {}, progressWords(progress)), otherWords(progress)),
      ...(progress.ratios.length > 0 ? [chartFigure(progress, titleOf, widthPx), byTopic(guesses, titleOf)] : []),
      stillOpen(guesses),
      ...(guesses.length > 0 ? [clear] : []),
    );
  };
  const titleOf = (name: string) => pages.find((page) => page.name === QUESTIONS[name]?.page)?.title ?? name;
  /** Questions that were never answered, each a link to its page. */
  const stillOpen = (guesses: readonly KeptGuess[]) => {
    const answered = new Set(guesses.map(({name}) => name));
    const open = Object.entries(QUESTIONS).filter(([name]) => !answered.has(name));
    return element("details", {class: "first-fold"}, element("summary", {}, open.length === 0 ? "Every question has been answered" : `${open.length} questions that you have not answered yet`),
      element("ul", {}, ...open.map(([name, {page, question}]) => element("li", {}, `${question} `, element("a", {href: hrefOf(page)}, titleOf(name))))));
  };
  show();
  return node;
}

function otherWords({sketches, picks}: Progress): string {
  const drawn = sketches.meanOffPercent === undefined ? "" : ` ${sketches.count === 1 ? "The curve that you drew lies" : `The ${sketches.count} curves that you drew lie`} ${Math.round(sketches.meanOffPercent)} % of the true one\u2019s height off on average.`;
  const picked = picks.count === 0 ? "" : ` Of ${picks.count} ${picks.count === 1 ? "section" : "sections"} that you picked ${picks.right} ${picks.right === 1 ? "was" : "were"} right.`;
  return drawn + picked;
}

/** How far guesses are off, page by page. */
function byTopic(guesses: readonly KeptGuess[], titleOf: (name: string) => string): HTMLElement {
  const topics = [...new Set(guesses.filter(({kind}) => kind === "number").map(({name}) => titleOf(name)))];
  const rows = topics.map((topic) => {
    const {ratios, typical, lean} = progressOf(guesses.filter(({name}) => titleOf(name) === topic));
    return [topic, ratios.length, typical === undefined ? "" : typical.toFixed(2), lean === undefined ? "" : lean.toFixed(2)];
  });
  return element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": "Guesses by topic"},
    dataTable({columns: ["Topic", "Guesses", "Off by a factor of", "Guess over truth, mean"], rows}));
}

/** Marks of the axis of ratios: even steps of a factor, so that twice and half lie equally far from right. */
const TICKS = [0.1, 0.25, 0.5, 1, 2, 4, 10];

function chartFigure({ratios}: Progress, titleOf: (name: string) => string, widthPx: number): HTMLElement {
  const width = Math.max(260, widthPx);
  const within = (ratio: number) => Math.min(10, Math.max(0.1, ratio));
  const rows = ratios.map(({name, ratio, at}, i) => ({order: i + 1, ratio: within(ratio), beyond: ratio !== within(ratio), topic: titleOf(name), date: new Date(at).toISOString().slice(0, 10)}));
  const last = rows.length;
  const chart = Plot.plot({
    width, height: 300, marginLeft: 46, marginTop: 30, marginBottom: 40, marginRight: 20,
    x: {label: "guess, first to last \u2192", domain: [0.5, Math.max(6, last) + 0.5], ticks: [...new Set([1, ...Array.from({length: 5}, (_, i) => Math.round(((i + 1) * Math.max(6, last)) / 5))])], tickFormat: (value: number) => String(value)},
    y: {label: "\u2191 guess over truth", type: "log", domain: [0.1, 10], ticks: TICKS, tickFormat: (value: number) => `${value}`, grid: true},
    marks: [
      Plot.rectY([0], {x1: 0.5, x2: Math.max(6, last) + 0.5, y1: 0.8, y2: 1.25, fill: "var(--accent)", fillOpacity: 0.1}),
      Plot.ruleY([1], {stroke: "var(--ink)"}),
      Plot.dot(rows, {x: "order", y: "ratio", r: 4.5, fill: "var(--accent)", stroke: "var(--paper)", symbol: (row: {beyond: boolean}) => (row.beyond ? "times" : "circle")}),
    ],
  });
  return figure(chart, {
    title: last === 1 ? "One guess so far" : `${last} guesses at numbers, the first to the left`,
    caption: "1 is right; guesses in the band are within a quarter. A step up is a factor, as a step down is. Guesses off by more than ten times stand at the edge.",
    table: {columns: ["Guess", "Day", "Topic", "Guess over truth"], rows: ratios.map(({ratio}, i) => [i + 1, rows[i]?.date ?? "", rows[i]?.topic ?? "", ratio.toFixed(2)])},
  });
}
