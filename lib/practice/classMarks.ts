import type {Catalog} from "../catalog.js";
import {InputError} from "../errors.js";
import {readAnswerFile, type AnswerFile, type PartAnswer} from "./answerFile.js";
import {check, type Marks, type Outcome} from "./marks.js";
import {recipeKey, type Recipe} from "./recipe.js";
import {itemsOfSet, ownPoints} from "./setItems.js";
import {studentKey} from "./student.js";

/** A file as it was handed in. */
export interface HandedIn {
  readonly fileName: string;
  readonly text: string;
}

/** A usual mistake that a student made, with where. */
export interface MadeSlip {
  /** Number of the exercise, and of its part where it has several, both from 1. */
  readonly exercise: number;
  readonly part: number;
  readonly name: string;
  /** Whether a later try was right. */
  readonly mended: boolean;
}

/** One student's marks. */
export interface StudentMarks {
  readonly student: string;
  readonly fileName: string;
  readonly points: number;
  readonly of: number;
  /** For each exercise. */
  readonly exercises: readonly ExerciseMarks[];
  /** The usual slips of all tries, in the order of the exercises. */
  readonly slips: readonly MadeSlip[];
}

/** How one student fared with one exercise. */
export interface ExerciseMarks {
  readonly points: number;
  readonly of: number;
  /** Of each part, by the last try. */
  readonly outcomes: readonly Outcome[];
  /** Tries of all parts, and hints that were opened. */
  readonly tries: number;
  readonly hints: number;
}

/** A file that was not marked, and why. */
export interface RefusedFile {
  readonly fileName: string;
  readonly says: string;
}

/** A second file of a student whose other file counts. */
export interface SecondFile {
  readonly fileName: string;
  readonly student: string;
  /** The file that counts. */
  readonly counts: string;
  /** Whether the two hold the same answers. */
  readonly same: boolean;
  readonly points: number;
  readonly of: number;
}

/** How a class fared with one exercise of the set. */
export interface ExerciseDifficulty {
  /** From 1. */
  readonly number: number;
  readonly kind: string;
  readonly title: string;
  readonly of: number;
  /** Mean of the points, and shares of the students, 0 to 1, who have all of it right or left all of it unanswered. */
  readonly mean: number;
  readonly shareRight: number;
  readonly shareUnanswered: number;
  /** Usual slips with the number of students who made each, the most usual first. */
  readonly slips: readonly {readonly name: string; readonly students: number}[];
}

/** What a class handed in, marked. */
export interface ClassMarks {
  readonly students: readonly StudentMarks[];
  readonly refused: readonly RefusedFile[];
  readonly second: readonly SecondFile[];
  readonly exercises: readonly ExerciseDifficulty[];
  /** Of those who are expected, who handed in nothing. */
  readonly missing: readonly string[];
  /** Who handed in and is not expected; a name may be misspelled, and the numbers are then another student's. */
  readonly unexpected: readonly string[];
  /** Sets that files belong to that are of another one, each once. */
  readonly otherSets: readonly Recipe[];
}

/**
 * Marks the files of a class. One that is broken, was changed or is of another set is named and left out, and stops none of the others.
 *
 * @param expected - names or numbers of the class; empty where they are not known
 * @param counting - names of files that count where a student handed in several; otherwise the first does
 */
export function markClass(recipe: Recipe, files: readonly HandedIn[], catalog: Catalog, expected: readonly string[] = [], counting: ReadonlySet<string> = new Set()): ClassMarks {
  const refused: RefusedFile[] = [];
  const otherSets = new Map<string, Recipe>();
  const key = recipeKey(recipe);
  const marked = files.flatMap(({fileName, text}) => {
    try {
      const file = readAnswerFile(text);
      const own = recipeKey(file.recipe);
      if (own === key) return [{file, marks: studentMarks(file, fileName, catalog)}];
      otherSets.set(own, file.recipe);
      refused.push({fileName, says: otherSetWords(file.recipe, recipe)});
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      refused.push({fileName, says: problem.message});
    }
    return [];
  });
  const byStudent = new Map<string, typeof marked>();
  for (const each of marked) byStudent.set(studentKey(each.file.student), [...(byStudent.get(studentKey(each.file.student)) ?? []), each]);
  const second: SecondFile[] = [];
  const counted = [...byStudent.values()].map((own) => {
    const counts = own.find(({marks}) => counting.has(marks.fileName)) ?? (own[0] as (typeof own)[number]);
    for (const other of own) {
      if (other === counts) continue;
      const {fileName, student, points, of} = other.marks;
      second.push({fileName, student, counts: counts.marks.fileName, same: JSON.stringify(other.file.answers) === JSON.stringify(counts.file.answers), points, of});
    }
    return counts.marks;
  });
  const known = new Set(expected.map(studentKey));
  return {
    students: counted, refused, second, exercises: difficulties(recipe, counted, catalog),
    missing: expected.filter((name) => !byStudent.has(studentKey(name))),
    unexpected: known.size === 0 ? [] : counted.filter(({student}) => !known.has(studentKey(student))).map(({student}) => student),
    otherSets: [...otherSets.values()],
  };
}

function otherSetWords({title, seed}: Recipe, wanted: Recipe): string {
  const same = title === wanted.title;
  return same && seed !== wanted.seed ? `Its answers are to \u201c${title}\u201d with seed ${seed}, not ${wanted.seed}.` : same ? `Its answers are to another \u201c${title}\u201d, with other exercises, points or rules.` : `Its answers are to another set, \u201c${title}\u201d.`;
}

/** Marks one file by the numbers of its own student; throws {@link InputError} where its answers do not fit the parts. */
export function studentMarks(file: AnswerFile, fileName: string, catalog: Catalog): StudentMarks {
  const items = itemsOfSet(file.recipe, catalog, file.student);
  const slips: MadeSlip[] = [];
  const exercises = items.map((item, i): ExerciseMarks => {
    const answers = file.answers[i] as readonly PartAnswer[];
    if (answers.length !== item.parts.length) {
      throw new InputError({path: `answers.${i}`, label: `answers to exercise ${i + 1}`, value: answers.length, allowed: `a list of ${item.parts.length}, one for each part`});
    }
    const last = answers.map(({tries}) => tries.at(-1));
    const {parts, points, of}: Marks = check(item, last, file.units);
    answers.forEach(({tries}, part) => {
      const won = parts[part]?.points ?? 0;
      const names = tries.map((text, turn) => (turn === tries.length - 1 ? parts[part] : check(item, last.map((each, at) => (at === part ? text : each)), file.units).parts[part])?.slip);
      for (const name of new Set(names)) if (name !== undefined) slips.push({exercise: i + 1, part: part + 1, name, mended: won > 0});
    });
    return {points, of, outcomes: parts.map(({verdict}) => verdict), tries: sum(answers.map(({tries}) => tries.length)), hints: sum(answers.map(({hints}) => hints))};
  });
  return {student: file.student, fileName, points: sum(exercises.map(({points}) => points)), of: sum(exercises.map(({of}) => of)), exercises, slips};
}

function difficulties(recipe: Recipe, students: readonly StudentMarks[], catalog: Catalog): ExerciseDifficulty[] {
  return itemsOfSet(recipe, catalog).map(({kind, title, number, parts}): ExerciseDifficulty => {
    const own = students.map(({exercises}) => exercises[number - 1] as ExerciseMarks);
    const of = ownPoints({parts});
    const share = (counts: (marks: ExerciseMarks) => boolean) => (own.length === 0 ? 0 : own.filter(counts).length / own.length);
    const slips = new Map<string, number>();
    for (const {slips: made} of students) {
      for (const name of new Set(made.filter(({exercise}) => exercise === number).map((slip) => slip.name))) slips.set(name, (slips.get(name) ?? 0) + 1);
    }
    return {
      number, kind, title, of, mean: own.length === 0 ? 0 : sum(own.map(({points}) => points)) / own.length,
      shareRight: share(({points, of: most}) => points > most - 1e-9), shareUnanswered: share(({outcomes}) => outcomes.every((outcome) => outcome === "missing")),
      slips: [...slips].map(([name, count]) => ({name, students: count})).sort((a, b) => b.students - a.students || a.name.localeCompare(b.name, "en")),
    };
  });
}

/** A class's marks as rows of a table: a student a line, with the points of each exercise and the slips in words. */
export function marksRows({students, exercises, missing}: ClassMarks): Record<string, string | number>[] {
  const row = (student: string, marks?: StudentMarks): Record<string, string | number> => ({
    student: plainCell(student), points: rounded(marks?.points), of: rounded(marks?.of),
    ...Object.fromEntries(exercises.map(({number, kind}) => [`${number} ${kind}`, rounded(marks?.exercises[number - 1]?.points)])),
    unanswered: marks ? sum(marks.exercises.map(({outcomes}) => outcomes.filter((outcome) => outcome === "missing").length)) : "",
    tries: marks ? sum(marks.exercises.map(({tries}) => tries)) : "", hints: marks ? sum(marks.exercises.map(({hints}) => hints)) : "",
    slips: marks ? marks.slips.map(slipText).join("; ") : "", file: marks ? plainCell(marks.fileName) : "no file",
  });
  return [...students.map((marks) => row(marks.student, marks)), ...missing.map((name) => row(name))];
}

/** A slip in words: "3, part 2: forgot the load factor (mended)". */
export function slipText({exercise, part, name, mended}: MadeSlip): string {
  return `${exercise}${part > 1 ? `, part ${part}` : ""}: ${name}${mended ? " (mended)" : ""}`;
}

/** A text that no spreadsheet takes for a formula. */
function plainCell(text: string): string {
  return /^[=+@\-\t]/.test(text) ? `'${text}` : text;
}

function rounded(value: number | undefined): number | string {
  return value === undefined ? "" : Number(value.toFixed(3));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, each) => total + each, 0);
}
