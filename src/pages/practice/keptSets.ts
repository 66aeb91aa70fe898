import type {Catalog} from "../../lib/catalog.js";
import {InputError} from "../../lib/errors.js";
import {answerFileText, type AnswerFile} from "../../lib/practice/answerFile.js";
import {sumOf} from "../../lib/practice/hash.js";
import type {Item} from "../../lib/practice/item.js";
import {UNIT_SYSTEMS, type UnitSystem} from "../../lib/reader/system.js";
import {readerSystem} from "../../components/reader/system.js";
import {checkedRecipe, recipeKey, type Recipe} from "../../lib/practice/recipe.js";
import {itemsOfSet} from "../../lib/practice/setItems.js";
import {requireName, studentKey} from "../../lib/practice/student.js";
import {keepText, keptText, keysBeginning, plainIn} from "../../components/shared/keptText.js";
import {BLANK, answerOf, isAnswered, isPartState, type PartState} from "./partState.js";

/** What sets that were begun are kept under in this browser. */
const PREFIX = "plank-and-tee/practice-set/";

/** A set that a student has begun in this browser. */
export interface BegunSet {
  readonly recipe: Recipe;
  readonly student: string;
  readonly states: readonly (readonly PartState[])[];
  /** In which units its questions were read: a number without a unit means these, whatever the reader chooses later. */
  readonly units: UnitSystem;
}

function keyOf(recipe: Recipe, student: string): string {
  return PREFIX + sumOf(`${recipeKey(recipe)}/${studentKey(student)}`);
}

/** What stands of a set in this browser; blank where nothing does. */
export function begunSet(recipe: Recipe, student: string, items: readonly Item[]): PartState[][] {
  const kept = readBegun(keyOf(recipe, student));
  return items.map(({parts}, i) => {
    const own = kept?.states[i];
    return parts.map((_, j) => (own?.length === parts.length ? own[j] as PartState : BLANK));
  });
}

/** In which units a set was begun; the reader's own for one that has no answer yet. */
export function unitsOfSet(recipe: Recipe, student: string): UnitSystem {
  const kept = readBegun(keyOf(recipe, student));
  return kept && kept.states.flat().some(isAnswered) ? kept.units : readerSystem();
}

/** Keeps what stands of a set; says whether the browser took it. */
export function keepBegun({recipe, student, states, units}: BegunSet): boolean {
  return keepText(keyOf(recipe, student), JSON.stringify({recipe, student, states, units}));
}

/** Takes a set out of this browser with all its answers. */
export function forgetBegun({recipe, student}: Pick<BegunSet, "recipe" | "student">): void {
  keepText(keyOf(recipe, student), undefined);
}

/** All sets that were begun in this browser and can still be read. */
export function begunSets(): BegunSet[] {
  return keysBeginning(PREFIX).flatMap((key) => readBegun(key) ?? []);
}

function readBegun(key: string): BegunSet | undefined {
  const content = plainIn(keptText(key)) as Record<string, unknown> | undefined;
  try {
    const {recipe, student, states, units} = content ?? {};
    const fit = Array.isArray(states) && states.every((parts) => Array.isArray(parts) && parts.every(isPartState));
    return content && fit ? {recipe: checkedRecipe(recipe), student: requireName(student), states: states as PartState[][], units: UNIT_SYSTEMS.find((each) => each === units) ?? "US"} : undefined;
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/** How many parts of a set there are, and how many of them were answered. */
export function progressOf(states: BegunSet["states"]): {readonly answered: number; readonly of: number} {
  const all = states.flat();
  return {answered: all.filter(isAnswered).length, of: all.length};
}

/** A begun set as the text of the file that the teacher marks. */
export function fileText({recipe, student, states, units}: BegunSet): string {
  return answerFileText({recipe, student, units, answers: states.map((parts) => parts.map(answerOf))});
}

/** What stands of a set out of its answer file, to go on with. */
export function begunFrom({recipe, student, units, answers}: AnswerFile, catalog: Catalog): BegunSet {
  const items = itemsOfSet(recipe, catalog, student);
  const states = items.map(({parts}, i) => parts.map((_, j): PartState => {
    const answer = answers[i]?.[j];
    return answer ? {...answer, standing: answer.tries.at(-1) ?? "", tries: recipe.checked ? answer.tries : []} : BLANK;
  }));
  return {recipe, student, states, units};
}
