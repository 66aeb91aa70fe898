import {readJson, requireNumber} from "../check.js";
import {isPlain} from "../design/plain.js";
import {InputError} from "../errors.js";
import {SEED_RANGE} from "./draw.js";
import {practiceKind} from "./kinds.js";

/** Exercises of one kind within a set. */
export interface RecipeKind {
  /** Id of the kind. */
  readonly kind: string;
  /** How many of it follow each other, each with other numbers. */
  readonly count: number;
  /** Points of each; its parts share them as the kind weighs them. */
  readonly points: number;
}

/** All that a set is made from: no exercise, no answer and no student's name stands in it. */
export interface Recipe {
  readonly title: string;
  readonly seed: number;
  /** In their order, each once. */
  readonly kinds: readonly RecipeKind[];
  /** Whether each student has numbers of their own, which follow from the seed and the student's name or number. */
  readonly variants: boolean;
  /** Whether a student may open the worked steps with their numbers withheld. */
  readonly hints: boolean;
  /** Whether a student may have an answer checked in the page, and then see the worked steps; otherwise only the teacher can. */
  readonly checked: boolean;
}

/** Marks a set's file. */
const FORMAT = "plank-and-tee-set";
/** The version of the file that is written and read. */
const VERSION = 1;

/** Ranges of a recipe's numbers. */
export const COUNT_RULE = {path: "count", label: "number of exercises", unit: "", min: 1, max: 20, integer: true, step: 1} as const;
export const POINTS_RULE = {path: "points", label: "points", unit: "", min: 0.5, max: 100, step: 0.5} as const;
export const SEED_RULE = {path: "seed", label: "seed", unit: "", ...SEED_RANGE, integer: true, step: 1} as const;
/** Most exercises of a set, and letters of its title. */
export const MOST_IN_SET = 100;
export const LONGEST_TITLE = 100;

/** How many exercises a set has. */
export function countOf({kinds}: Pick<Recipe, "kinds">): number {
  return kinds.reduce((sum, {count}) => sum + count, 0);
}

/** A recipe as the text of its file. */
export function recipeText(recipe: Recipe): string {
  return `${JSON.stringify({format: FORMAT, version: VERSION, ...plainRecipe(recipe)}, null, 2)}\n`;
}

/** A recipe with its entries in their one order and nothing else. */
export function plainRecipe({title, seed, kinds, variants, hints, checked}: Recipe): Recipe {
  return {title, seed, kinds: kinds.map(({kind, count, points}) => ({kind, count, points})), variants, hints, checked};
}

/** A text that stands for a recipe: the same for two that are the same, entry by entry. */
export function recipeKey(recipe: Recipe): string {
  return JSON.stringify(plainRecipe(recipe));
}

/**
 * The recipe in a text, of a file or a link.
 *
 * @throws InputError where it is none, of a newer kit, or holds what cannot be
 */
export function readRecipe(text: string): Recipe {
  return recipeOf(readJson(text, "set"));
}

/** The recipe in plain data; throws {@link InputError} as {@link readRecipe}. */
export function recipeOf(content: unknown): Recipe {
  const {format, version, ...rest} = objectOf(content, "", "set");
  if (format !== FORMAT) throw new InputError({path: "format", label: "set", value: format ?? "none", reads: "a file of another kind", allowed: "a set that was saved on the page that composes sets"});
  if (version !== VERSION) throw new InputError({path: "version", label: "version of the set", value: version, allowed: `this kit reads version ${VERSION}`});
  return checkedRecipe(rest);
}

/** A recipe whose every entry can be; throws {@link InputError} for the first that cannot. */
export function checkedRecipe(content: unknown): Recipe {
  const {title, seed, kinds, variants, hints, checked} = objectOf(content, "", "set");
  if (typeof title !== "string" || title.trim() === "" || title.length > LONGEST_TITLE) throw new InputError({path: "title", label: "title", value: title, allowed: `a text of 1 to ${LONGEST_TITLE} letters`});
  if (!Array.isArray(kinds) || kinds.length === 0) throw new InputError({path: "kinds", label: "kinds", value: kinds === undefined ? undefined : "none", reads: "none", allowed: "at least one"});
  const recipe: Recipe = {
    title: title.trim(), seed: requireNumber(seed, SEED_RULE), kinds: kinds.map((each, i) => recipeKind(each, `kinds.${i}`)),
    variants: flag(variants, "variants", "numbers of their own"), hints: flag(hints, "hints", "hints"), checked: flag(checked, "checked", "answers checked in the page"),
  };
  const twice = recipe.kinds.find(({kind}, i) => recipe.kinds.findIndex((other) => other.kind === kind) < i);
  if (twice) throw new InputError({path: "kinds", label: "kinds", value: twice.kind, reads: `${twice.kind} twice`, allowed: "each kind once, with a number of exercises"});
  requireNumber(countOf(recipe), {path: "kinds", label: "number of exercises of the set", unit: "", min: 1, max: MOST_IN_SET});
  return recipe;
}

function recipeKind(content: unknown, path: string): RecipeKind {
  const {kind, count, points} = objectOf(content, path, "kind of exercise");
  if (typeof kind !== "string") throw new InputError({path: `${path}.kind`, label: "kind", value: kind, allowed: "the name of a kind"});
  return {kind: practiceKind(kind).id, count: requireNumber(count, {...COUNT_RULE, path: `${path}.count`}), points: requireNumber(points, {...POINTS_RULE, path: `${path}.points`})};
}

function flag(value: unknown, path: string, label: string): boolean {
  if (typeof value === "boolean") return value;
  throw new InputError({path, label, value, allowed: "true or false"});
}

/** An object's entries; throws {@link InputError} for anything else. */
export function objectOf(content: unknown, path: string, label: string): Record<string, unknown> {
  if (isPlain(content)) return content;
  throw new InputError({path, label, value: content, allowed: "an object"});
}
