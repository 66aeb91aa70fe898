import {readJson, requireChoice} from "../check.js";
import {InputError} from "../errors.js";
import {sumOf} from "./hash.js";
import {checkedRecipe, countOf, objectOf, plainRecipe, type Recipe} from "./recipe.js";
import type {UnitSystem} from "../reader/system.js";
import {requireName} from "./student.js";

/** What a student did with one part: every answer that was checked or left standing, the last of which counts. */
export interface PartAnswer {
  readonly tries: readonly string[];
  /** Hints that were opened. */
  readonly hints: number;
  /** Whether the worked steps were opened; the answers all came before. */
  readonly shown: boolean;
}

/** A student's answers to a set: for each exercise, for each of its parts. It holds no time and no key. */
export interface AnswerFile {
  readonly recipe: Recipe;
  readonly student: string;
  /** The units that a number without one was meant in. */
  readonly units: UnitSystem;
  readonly answers: readonly (readonly PartAnswer[])[];
}

/** Nothing answered yet. */
export const UNANSWERED: PartAnswer = {tries: [], hints: 0, shown: false};

/** Marks an answer file. */
const FORMAT = "plank-and-tee-answers";
/** The version of the file that is written and read. */
const VERSION = 1;
/** Longest answer, letters, and most tries, hints and parts that a file may hold. */
const MOST = {letters: 200, tries: 200, hints: 100, parts: 30} as const;

/** Answers as the text of a file, with a checksum over all of it. */
export function answerFileText(file: AnswerFile): string {
  const content = plainFile(file);
  return `${JSON.stringify({format: FORMAT, version: VERSION, ...content, sum: sumOf(JSON.stringify(content))}, null, 1)}\n`;
}

/**
 * The answers in a file.
 *
 * @throws InputError where it is none, is of a newer kit, holds what cannot be, or was changed after it was saved
 */
export function readAnswerFile(text: string): AnswerFile {
  const {format, version, sum, ...content} = objectOf(readJson(text, "answer file"), "", "answer file");
  if (format !== FORMAT) throw new InputError({path: "format", label: "answer file", value: format ?? "none", reads: "a file of another kind", allowed: "answers that were saved on the page for practice"});
  if (version !== VERSION) throw new InputError({path: "version", label: "version of the answer file", value: version, allowed: `this kit reads version ${VERSION}`});
  const file = fileOf(content);
  if (sum !== sumOf(JSON.stringify(plainFile(file)))) {
    throw new InputError({path: "sum", label: "answer file", value: sum, reads: "a file that was changed after it was saved", allowed: "as the page saved it", advice: "Ask for it anew"});
  }
  return file;
}

/** The file with its entries in their one order, as it is summed. */
function plainFile({recipe, student, units, answers}: AnswerFile): AnswerFile {
  return {recipe: plainRecipe(recipe), student, units, answers: answers.map((parts) => parts.map(({tries, hints, shown}) => ({tries: [...tries], hints, shown})))};
}

function fileOf({recipe, student, units, answers}: Record<string, unknown>): AnswerFile {
  const read = checkedRecipe(recipe);
  if (!Array.isArray(answers) || answers.length !== countOf(read)) {
    throw new InputError({path: "answers", label: "answers", value: Array.isArray(answers) ? answers.length : answers, allowed: `a list of ${countOf(read)}, one for each exercise`});
  }
  return {
    recipe: read, student: requireName(student), units: requireChoice(units, {path: "units", label: "units", choices: ["US", "SI", "both"]}),
    answers: answers.map((parts: unknown, i) => {
      const fits = Array.isArray(parts) && parts.length <= MOST.parts;
      if (!fits) throw new InputError({path: `answers.${i}`, label: `answers to exercise ${i + 1}`, value: parts, allowed: "a list of its parts"});
      return parts.map((part: unknown, j) => partAnswer(part, `answers.${i}.${j}`, `answer to exercise ${i + 1}, part ${j + 1}`));
    }),
  };
}

function partAnswer(content: unknown, path: string, label: string): PartAnswer {
  const {tries, hints, shown} = objectOf(content, path, label);
  const fits = Array.isArray(tries) && tries.length <= MOST.tries && tries.every((text) => typeof text === "string" && text.length <= MOST.letters)
    && Number.isInteger(hints) && (hints as number) >= 0 && (hints as number) <= MOST.hints && typeof shown === "boolean";
  if (!fits) throw new InputError({path, label, value: content, allowed: "texts that were tried, the number of hints that were opened, and whether the worked steps were"});
  return {tries: tries as string[], hints: hints as number, shown};
}
