import type {Evaluation} from "../../lib/evaluate.js";
import {leadsOf} from "../../lib/schemes/lead.js";
import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import {isMade, measureNamed, valueOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {ARGUED_FT, caseFor, widthFindings, type WidthFacts} from "../../lib/schemes/widthWords.js";
import {decimals, feetText} from "../../lib/units.js";
import {element} from "../../components/dom.js";
import {dataTable, figure} from "../../components/figure.js";
import {acrossSection} from "../../components/shared/acrossSection.js";
import {storyPicture} from "../../components/shared/pictures.js";
import {storySection} from "../../components/drawings/storySection.js";
import {untilGuessed} from "../../components/veil.js";
import {QUESTION, knownMeasures} from "./widthMeasures.js";

/** A scheme across the whole building and at its edge, true to scale. */
export function pictures(result: Evaluation, row: SchemeRow, widePx: number): HTMLElement {
  const {parking} = result.design;
  const modules = Math.max(0, Math.round(valueOf(row, "parkingModules") ?? 0));
  const across = acrossSection(result, {modules, stallLengthIn: parking.stallLengthIn, aisleIn: parking.aisleIn}, Math.max(240, widePx));
  return element("div", {},
    untilGuessed(QUESTION, figure(across, {wide: true, title: `${row.deck} over ${feetText(row.span_ft)}: the whole width at one scale`, caption: "True to scale: the daylight on the floor by its class, and below it a level of cars as far as a module fits. The columns are drawn at their places, cars in the middle of a bay." })),
    figure(storySection({...storyPicture(result), own: false, widthPx: Math.max(240, Math.min(widePx, 640)), mostHeightPx: 400}), {title: "The same story at its edge", caption: "A cut through the edge of the building, true to scale."}));
}

/** What the rows say, topic by topic. */
export function findingsOf(rows: readonly SchemeRow[], facts: WidthFacts): HTMLElement {
  return element("dl", {class: "width-list"}, ...widthFindings(rows, facts).flatMap(({topic, words}) => [element("dt", {}, topic), element("dd", {}, words)]));
}

/** The case for the width that practice likes, and how many of its points speak for it; undefined where no building is as wide. */
export function argued(rows: readonly SchemeRow[], facts: WidthFacts): {readonly title: string | undefined; readonly node: HTMLElement} {
  const now = caseFor(rows, facts);
  const points = now.speaksFor.length + now.speaksAgainst.length;
  return {title: now.row ? `A building ${ARGUED_FT} ft wide: ${now.speaksFor.length} of ${points} points speak for it` : undefined, node: verdictOf(now, rows)};
}

/** The leading scheme of every span in numbers. */
export function allSpans(rows: readonly SchemeRow[]): HTMLElement {
  const measures = knownMeasures(rows);
  return dataTable({
    columns: ["Span, ft", "Scheme", ...measures.map(({title: name}) => name), "Fails"],
    rows: leadsOf(rows).map((row) => [String(row.span_ft), row.deck, ...measures.map(({key: name}) => numberText(row, name)), row.fails || "nothing"]),
  });
}

function numberText(row: SchemeRow, key: MeasureKey): string {
  const value = valueOf(row, key);
  return value === undefined ? "\u2013" : decimals(value, measureNamed(key).decimals);
}

/** The schemes of one span beside each other, and the open design. */
export function readoutTable(here: readonly SchemeRow[], own: SchemeRow | undefined): HTMLElement {
  const made = here.filter(isMade);
  const columns = [...made.map((row) => ({name: row.kind, row})), ...(own ? [{name: `this design, ${feetText(own.span_ft)}`, row: own}] : [])];
  const table = dataTable({columns: ["", ...columns.map(({name}) => name)], rows: [
    ["deck", ...columns.map(({row}) => row.deck)],
    ...knownMeasures(columns.map(({row}) => row)).map(({key, title}) => [title, ...columns.map(({row}) => numberText(row, key))]),
    ["fails", ...columns.map(({row}) => (row.fails === "" ? "nothing" : row.fails))],
  ]});
  const ended = here.filter((row) => !isMade(row));
  return element("div", {}, element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": "The schemes at this span"}, table),
    ...ended.map((row) => element("p", {class: "note"}, `No ${row.kind}: ${row.fails}`)));
}

function verdictOf({speaksFor, speaksAgainst, row}: ReturnType<typeof caseFor>, rows: readonly SchemeRow[]): HTMLElement {
  if (rows.length === 0) return element("p", {}, "The schemes are not made yet.");
  if (!row && speaksAgainst.length === 0) return element("p", {}, `With these spans no building comes out ${ARGUED_FT} ft wide.`);
  const list = (head: string, points: readonly string[]) => element("div", {}, element("h3", {}, head), points.length > 0 ? element("ul", {}, ...points.map((words) => element("li", {}, `${words}.`))) : element("p", {}, "Nothing of what is computed here."));
  const here = row ? element("p", {}, `Here that is ${row.deck}, ${row.bays_across === 1 ? "one span" : `${row.bays_across} spans`} of ${feetText(row.span_ft)}.`) : null;
  return element("div", {}, here, element("div", {class: "pair"}, list(`For ${ARGUED_FT} ft`, speaksFor), list("Against it", speaksAgainst)));
}
