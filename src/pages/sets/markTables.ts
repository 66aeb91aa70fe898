import {desc, from, op} from "arquero";
import {marksRows, slipText, type ClassMarks, type ExerciseDifficulty, type StudentMarks} from "../../lib/practice/classMarks.js";
import type {Recipe} from "../../lib/practice/recipe.js";
import {numberText} from "../../lib/practice/prose.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {fileNameOf} from "../../components/store.js";
import {downloadBlob} from "../../components/store/browser.js";

/* The tables of a class's marks; the table library comes with the first answer files. */

/** What a reader may do with the marks. */
export interface MarkActs {
  /** Counts another file of a student. */
  readonly count: (fileName: string) => void;
  /** Opens the set that files belong to. */
  readonly openSet: (recipe: Recipe) => void;
}

/** All that a class's files come to. */
export function markTables(marks: ClassMarks, recipe: Recipe, acts: MarkActs): HTMLElement {
  const node = element("div", {});
  node.append(...toldFiles(marks, acts));
  if (marks.students.length === 0) return node;
  node.append(element("h3", {}, "Marks"), element("p", {}, summaryWords(marks)), studentTable(marks),
    element("div", {class: "row"},
      button("Save the marks as CSV", () => saveCsv(`${fileNameOf(recipe.title)}-marks.csv`, marksRows(marks))),
      button("Save the exercises as CSV", () => saveCsv(`${fileNameOf(recipe.title)}-exercises.csv`, difficultyRows(marks)), {quiet: true})),
    element("h3", {}, "What went wrong where"), slipTable(marks), element("h3", {}, "How hard each exercise was"), difficultyTable(marks.exercises, marks.students.length));
  return node;
}

const points = (value: number) => numberText(Number(value.toFixed(2)));
const percent = (share: number) => `${Math.round(100 * share)} %`;

function summaryWords({students}: ClassMarks): string {
  const {mean, median, least, most} = from(students.map((each) => ({points: each.points}))).rollup({mean: op.mean("points"), median: op.median("points"), least: op.min("points"), most: op.max("points")}).object() as Record<"mean" | "median" | "least" | "most", number>;
  const of = students[0]?.of ?? 0;
  return students.length === 1 ? `One student: ${points(mean)} of ${points(of)} points.` : `Of ${points(of)} points, a mean of ${points(mean)} and a median of ${points(median)}; from ${points(least)} to ${points(most)}.`;
}

/** Files that need the teacher's eye, each by its name. */
function toldFiles({refused, second, missing, unexpected, otherSets, students}: ClassMarks, {count, openSet}: MarkActs): HTMLElement[] {
  const list = (title: string, items: readonly (readonly (Node | string)[])[]) => (items.length === 0 ? [] : [element("h3", {}, title), element("ul", {class: "told-files"}, ...items.map((words) => element("li", {}, ...words)))]);
  const [other] = otherSets;
  return [
    ...list("Not marked", refused.map(({fileName, says}) => [element("strong", {}, fileName), `: ${says}`])),
    ...(other && otherSets.length === 1 && students.length === 0 ? [element("p", {}, button(`Open their own set, \u201c${other.title}\u201d, and mark by it`, () => openSet(other)))] : []),
    ...list("Two files of one student", second.map(({fileName, student, counts, same, points: own, of}) => [
      element("strong", {}, fileName), `: another file of ${student}, ${same ? "with the same answers" : `with other answers, ${points(own)} of ${points(of)} points`}. ${counts} counts. `,
      ...(same ? [] : [button("Count this one instead", () => count(fileName), {quiet: true, name: `Count ${fileName} instead of ${counts}`})]),
    ])),
    ...list("Nothing handed in", missing.map((name) => [name])),
    ...list("Not on your list", unexpected.map((name) => [element("strong", {}, name), ": if the name is misspelled, the numbers were those of that spelling, and the marks are right for them."])),
  ];
}

type Order = "student" | "points";

function studentTable(marks: ClassMarks): HTMLElement {
  const body = element("tbody", {});
  const heads = new Map<Order, HTMLElement>();
  let [by, down]: [Order, boolean] = ["student", false];
  const show = () => {
    const held = from(marks.students.map((each, place) => ({place, student: each.student.toLowerCase(), points: each.points})));
    const order = held.orderby(down ? desc(by) : by, "place").array("place") as number[];
    body.replaceChildren(...order.map((place) => studentRow(marks.students[place] as StudentMarks, marks.exercises)));
    for (const [name, head] of heads) head.setAttribute("aria-sort", name === by ? (down ? "descending" : "ascending") : "none");
  };
  const head = (name: Order, words: string) => {
    const cell = element("th", {scope: "col", class: name === "points" ? "numeric" : undefined}, button(words, () => {
      [by, down] = [name, by === name ? !down : name === "points"];
      show();
    }, {quiet: true, name: `Order by ${words.toLowerCase()}`}));
    heads.set(name, cell);
    return cell;
  };
  const table = element("table", {class: "marks-table", "data-own-csv": true}, element("caption", {class: "for-listeners"}, "Marks of each student"),
    element("thead", {}, element("tr", {}, head("student", "Student"), head("points", "Points"), ...marks.exercises.map(({number, title, of}) => element("th", {scope: "col", class: "numeric", title}, `${number}`, element("small", {}, ` of ${points(of)}`))), element("th", {scope: "col"}, "Slips"))), body);
  show();
  return scrolls(table, "Marks of each student");
}

function studentRow({student, points: own, of, exercises, slips, fileName}: StudentMarks, all: readonly ExerciseDifficulty[]): HTMLElement {
  return element("tr", {}, element("th", {scope: "row", title: fileName}, student), element("td", {class: "numeric"}, `${points(own)} of ${points(of)}`),
    ...all.map(({number}) => {
      const marks = exercises[number - 1];
      const missing = marks?.outcomes.every((outcome) => outcome === "missing");
      return element("td", {class: "numeric"}, missing ? "\u2013" : points(marks?.points ?? 0));
    }), element("td", {class: "slips-cell"}, slips.map(slipText).join("; ")));
}

/** Slips over the class, the most usual first. */
function slipTable({students}: ClassMarks): HTMLElement {
  const made = students.flatMap(({student, slips}) => slips.map(({exercise, name, mended}) => ({student, exercise, name, mended: mended ? 1 : 0})));
  if (made.length === 0) return element("p", {}, "No usual slip was made. What was wrong was wrong in some other way, or not answered.");
  const rows = from(made).groupby("name", "exercise").rollup({students: op.distinct("student"), mended: op.sum("mended"), times: op.count()}).orderby(desc("students"), "exercise", "name").objects() as {name: string; exercise: number; students: number; mended: number; times: number}[];
  return scrolls(element("table", {class: "marks-table"}, element("caption", {class: "for-listeners"}, "Usual slips"),
    element("thead", {}, element("tr", {}, element("th", {scope: "col"}, "Slip"), element("th", {scope: "col", class: "numeric"}, "Exercise"), element("th", {scope: "col", class: "numeric"}, "Students"), element("th", {scope: "col", class: "numeric"}, "Mended by a later try"))),
    element("tbody", {}, ...rows.map(({name, exercise, students: count, mended}) => element("tr", {}, element("th", {scope: "row"}, name), element("td", {class: "numeric"}, exercise), element("td", {class: "numeric"}, `${count} of ${students.length}`), element("td", {class: "numeric"}, mended))))), "Usual slips");
}

function difficultyTable(exercises: readonly ExerciseDifficulty[], students: number): HTMLElement {
  return scrolls(element("table", {class: "marks-table", "data-own-csv": true}, element("caption", {class: "for-listeners"}, "Exercises"),
    element("thead", {}, element("tr", {}, element("th", {scope: "col"}, "Exercise"), element("th", {scope: "col"}, "All right"), element("th", {scope: "col", class: "numeric"}, "Mean"), element("th", {scope: "col", class: "numeric"}, "Unanswered"), element("th", {scope: "col"}, "Most usual slip"))),
    element("tbody", {}, ...exercises.map(({number, title, of, mean, shareRight, shareUnanswered, slips: [slip]}) => element("tr", {}, element("th", {scope: "row"}, `${number}. ${title}`),
      element("td", {}, element("span", {class: "share-bar", style: `--share: ${shareRight}`, "aria-hidden": "true"}), ` ${percent(shareRight)}`), element("td", {class: "numeric"}, `${points(mean)} of ${points(of)}`), element("td", {class: "numeric"}, percent(shareUnanswered)),
      element("td", {}, slip ? `${slip.name} (${slip.students} of ${students})` : "\u2013"))))), "Exercises");
}

function difficultyRows({exercises, students}: ClassMarks): Record<string, string | number>[] {
  return exercises.map(({number, kind, title, of, mean, shareRight, shareUnanswered, slips}) => ({
    number, kind, title, students: students.length, of, mean: Number(mean.toFixed(3)), share_right: Number(shareRight.toFixed(3)), share_unanswered: Number(shareUnanswered.toFixed(3)), slips: slips.map(({name, students: count}) => `${name} (${count})`).join("; "),
  }));
}

function saveCsv(fileName: string, rows: readonly Record<string, string | number>[]): void {
  downloadBlob(fileName, new Blob([`${from([...rows]).toCSV()}\n`], {type: "text/csv"}));
}

function scrolls(table: HTMLElement, label: string): HTMLElement {
  return element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": label}, table);
}
