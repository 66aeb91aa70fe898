import type {Catalog} from "../catalog.js";
import type {ExercisePart, Item} from "./item.js";
import {itemOf} from "./kinds.js";
import type {Recipe} from "./recipe.js";
import {studentSeed} from "./student.js";

/**
 * The exercises of a set, with the points of its recipe.
 *
 * @param student - name or number of who has numbers of their own, where the recipe says so; without one, the numbers of the set's own seed
 */
export function itemsOfSet(recipe: Recipe, catalog: Catalog, student?: string): Item[] {
  const seed = recipe.variants && student !== undefined ? studentSeed(recipe.seed, student) : recipe.seed;
  let number = 0;
  return recipe.kinds.flatMap(({kind, count, points}) => Array.from({length: count}, (_, i) => {
    number += 1;
    return withPoints(itemOf(kind, seed, catalog, i + 1, number), points);
  }));
}

/** Points of an exercise as its kind has them. */
export function ownPoints({parts}: Pick<Item, "parts">): number {
  return parts.reduce((sum, {points}) => sum + points, 0);
}

/** An exercise whose parts share other points, as its kind weighs them. */
function withPoints(item: Item, points: number): Item {
  const share = points / ownPoints(item);
  return share === 1 ? item : {...item, parts: item.parts.map((part): ExercisePart => ({...part, points: part.points * share}))};
}
