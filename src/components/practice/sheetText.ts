import type {Answer, ExercisePart, Item, Option, PracticeTable} from "../../lib/practice/item.js";
import {keysOf, slipsOf, toleranceWords} from "../../lib/practice/keys.js";
import {measureText, numberText, proseText, type Prose} from "../../lib/practice/prose.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import type {Step} from "../../lib/step.js";
import {toSi, unitText} from "../../lib/units.js";
import {commonScale, escaped, pictureText} from "./pictureText.js";

/** What stands on every printed set. */
const CAUTION = "For learning and preliminary sizing only. Local codes govern; a licensed engineer and the producer design the real structure.";

/** What a printed set holds. */
export interface SheetChoices {
  readonly title: string;
  /** Whether the key follows, on pages of its own. */
  readonly key: boolean;
  readonly system: UnitSystem;
  /** Writes a worked step: `stepMarkup` of `sheetSteps.ts`, which brings the typesetter; a set without its key needs none unless it shows a calculation with a mistake. */
  readonly steps: (step: Step) => string;
  /** Whose numbers these are. */
  readonly student?: string;
  /** Level of the set's heading; 1 where it is left out. */
  readonly heading?: number;
}

/** A set of exercises as a whole page to print, with space to work in, and with its key on pages of their own or without. */
export function setPage(items: readonly Item[], choices: SheetChoices): string {
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(choices.title)}</title><style>${SHEET_STYLE}</style></head>
<body>${setMarkup(items, choices)}</body></html>
`;
}

/** The same without head and style, to stand within a page. */
export function setMarkup(items: readonly Item[], choices: SheetChoices): string {
  const {student, heading = 1} = choices;
  const points = items.flatMap(({parts}) => parts).reduce((sum, part) => sum + part.points, 0);
  const name = student === undefined ? `<span class="blank"></span>` : `<b>${escaped(student)}</b>`;
  return [
    `<section class="set"><header><h${heading}>${escaped(choices.title)}</h${heading}><p class="name">Name ${name} Date <span class="blank short"></span> Points <span class="blank short"></span> of ${pointsText(points)}</p></header>`,
    ...items.map((item) => exercise(item, choices)),
    `<footer><p>${CAUTION}</p></footer></section>`,
    choices.key ? keyMarkup(items, choices) : "",
  ].join("\n");
}

/** The key: answers with their tolerance, worked steps, and what usual slips lead to. */
export function keyMarkup(items: readonly Item[], choices: SheetChoices): string {
  const {title, student, heading = 1} = choices;
  const whose = student === undefined ? "" : `<p class="name">Numbers of <b>${escaped(student)}</b></p>`;
  return `<section class="key"><header><h${heading}>Key: ${escaped(title)}</h${heading}>${whose}</header>\n${items.map((item) => solution(item, choices)).join("\n")}\n<footer><p>${CAUTION}</p></footer></section>`;
}

/** Points as they are written: what three parts share of four is 1.33 each. */
const pointsText = (points: number) => numberText(Number(points.toFixed(2)));

const letter = (index: number) => `${"abcdefghij"[index]})`;
const words = (prose: Prose, system: UnitSystem) => escaped(proseText(prose, system));

function exercise(item: Item, choices: SheetChoices): string {
  const {system, heading = 1} = choices;
  const {number, title, level, question, table, picture, parts} = item;
  return `<article class="exercise"><h${heading + 1}>${number}. ${escaped(title)} <small>level ${level}, ${item.kind} ${item.seed}.${item.turn}</small></h${heading + 1}>
<p>${question.map((sentence) => words(sentence, system)).join(" ")}</p>${table ? tableMarkup(table, system) : ""}${picture ? `<figure>${pictureText(picture, system)}</figure>` : ""}
${parts.map((part, i) => partMarkup(part, parts.length > 1 ? letter(i) : "", choices)).join("\n")}</article>`;
}

function partMarkup(part: ExercisePart, name: string, {system, steps}: SheetChoices): string {
  const ask = `<p class="ask"><b>${name}</b> ${words(part.ask, system)} <small>${part.points === 1 ? "1 point" : `${pointsText(part.points)} points`}</small></p>`;
  switch (part.type) {
    case "number":
      return `<div class="part">${ask}<div class="space"></div><p class="answer">${escaped(part.label)} <span class="blank"></span> ${escaped(unitText(shownUnit(part.unit, system)))} <small>${escaped(toleranceWords(part.tolerance, part.unit, system))}</small></p></div>`;
    case "choice":
      return `<div class="part">${ask}${optionsMarkup(part.options, "\u2610", system)}</div>`;
    case "order":
      return `<div class="part">${ask}<p class="answer">Number them ${escaped(part.by)}.</p>${optionsMarkup(part.options, `<span class="blank digit"></span>`, system)}<div class="space"></div></div>`;
    case "mistake":
      return `<div class="part">${ask}<ol class="steps">${part.lines.map((line) => `<li>${steps(line)}</li>`).join("")}</ol><p class="answer">line <span class="blank short"></span></p></div>`;
  }
}

/** The unit that a blank is filled in: SI where the sheet is in SI. */
function shownUnit(unit: string, system: UnitSystem): string {
  const si = toSi(1, unit).unit;
  return system === "SI" ? si : system === "both" && si !== unit ? `${unit} (${si})` : unit;
}

/** Width of a section among others, px. */
const OPTION_PX = 330;

/** What is chosen among, each with its picture; sections at one scale. */
function optionsMarkup(options: readonly Option[], before: string, system: UnitSystem): string {
  const scale = commonScale(options.map(({picture}) => picture), OPTION_PX);
  const shown = options.map(({text, picture}) => `<li>${before} ${words(text, system)}${picture ? `<br>${pictureText(picture, system, OPTION_PX, scale)}` : ""}</li>`);
  return `<ul class="options">${shown.join("")}</ul>`;
}

function tableMarkup({title, columns, rows, source}: PracticeTable, system: UnitSystem): string {
  const cell = (value: string | number, unit: string) => {
    if (typeof value === "string") return `<td>${escaped(value)}</td>`;
    const si = toSi(value, unit);
    const other = numberText(Number(si.value.toPrecision(4)));
    const text = si.unit === unit || system === "US" ? numberText(value) : system === "SI" ? other : `${numberText(value)} (${other})`;
    return `<td class="numeric">${text}</td>`;
  };
  return `<table><caption>${escaped(title)}</caption><thead><tr>${columns.map(({name, unit}) => `<th scope="col">${escaped(name)}${unit ? `, ${escaped(unitText(shownUnit(unit, system)))}` : ""}</th>`).join("")}</tr></thead>
<tbody>${rows.map((row) => `<tr>${row.map((value, i) => cell(value, columns[i]?.unit ?? "")).join("")}</tr>`).join("")}</tbody></table><p class="source">Source: ${escaped(source)}</p>`;
}

function solution(item: Item, {system, steps: written, heading = 1}: SheetChoices): string {
  const keys = keysOf(item);
  return `<article class="solution"><h${heading + 1}>${item.number}. ${escaped(item.title)}</h${heading + 1}>${item.parts.map((part, i) => {
    const {steps} = part.working(keys.slice(0, i));
    const said = [
      `<p class="ask"><b>${item.parts.length > 1 ? letter(i) : ""}</b> ${words(part.ask, system)}</p><p class="answer"><strong>${escaped(answerText(part, keys[i] as Answer, system))}</strong>${part.type === "number" ? ` <small>${escaped(toleranceWords(part.tolerance, part.unit, system))}</small>` : ""}</p>`,
      part.because ? `<p>${words(part.because, system)}</p>` : "",
      steps.length > 0 ? `<ol class="steps">${steps.map((step) => `<li>${written(step)}</li>`).join("")}</ol>` : "",
      slipMarkup(part, keys[i] as Answer, keys.slice(0, i), system),
    ];
    return `<div class="part">${said.join("")}</div>`;
  }).join("\n")}</article>`;
}

/** An answer in words. */
export function answerText(part: ExercisePart, answer: Answer, system: UnitSystem): string {
  if (part.type === "number") return measureText({value: Number(answer), unit: part.unit}, system);
  if (part.type === "mistake") return `line ${answer}`;
  return String(answer).split(",").map((id) => proseText(part.options.find((option) => option.id === id)?.text ?? [id], system)).join(" < ");
}

function slipMarkup(part: ExercisePart, key: Answer, earlier: readonly Answer[], system: UnitSystem): string {
  const slips = part.type === "number" ? slipsOf(part, earlier).map(({name, value}) => `${name}: ${measureText({value, unit: part.unit}, system)}`)
    : part.type === "order" ? part.slips.map(({name, order}) => `${name}: ${answerText(part, order, system)}`)
      : part.type === "choice" ? part.options.flatMap(({id, slip}) => (slip && id !== key ? [`${slip.name}: ${answerText(part, id, system)}`] : [])) : [];
  return slips.length > 0 ? `<p class="slips">Usual slips: ${escaped(slips.join("; "))}.</p>` : "";
}

/** The style of a printed set, for a page of its own. */
const SHEET_STYLE = `
@page { margin: 18mm 16mm; }
body { font: 11pt/1.45 Georgia, "Times New Roman", serif; color: #111; background: #fff; max-width: 46em; margin: 1.5em auto; padding: 0 1em; }
h1 { font-size: 16pt; margin: 0 0 .3em; } h2 { font-size: 12pt; margin: 1.2em 0 .3em; }
small, .source, .slips, footer { font-size: 9pt; color: #444; font-weight: normal; }
.blank { display: inline-block; border-bottom: 1px solid #111; min-width: 10em; } .short { min-width: 5em; } .digit { min-width: 1.6em; }
.exercise, .solution .part, table, figure { break-inside: avoid; }
.space { height: 3.4em; } .answer { margin: .2em 0 .6em; } .ask { margin: .6em 0 .2em; }
figure { margin: .6em 0; } table { border-collapse: collapse; margin: .6em 0; font-size: 10pt; } caption { text-align: left; font-weight: bold; }
th, td { border: 1px solid #999; padding: .15em .5em; text-align: left; } .numeric { text-align: right; font-variant-numeric: tabular-nums; }
.options { list-style: none; padding-left: .5em; margin: .2em 0; } .steps { margin: .2em 0; padding-left: 1.6em; }
.key { break-before: page; margin-top: 3em; border-top: 2px solid #111; padding-top: 1em; }
footer { border-top: 1px solid #999; margin-top: 1.5em; }
@media print { body { margin: 0; padding: 0; max-width: none; } .key { border: 0; margin: 0; padding: 0; } }
`;
