import {readRecipe, recipeText, type Recipe} from "../../lib/practice/recipe.js";
import {InputError} from "../../lib/errors.js";
import {pack, unpack} from "../share/packed.js";
import {hrefOf} from "../shared/pageList.js";

/** What stands before a set in the fragment of an address. */
const BEGINS = "#set=";
/** The version of this way to write a set into an address; the recipe has a version of its own. */
const VERSION = "1";
/** Largest recipe that a link may hold when unpacked, bytes. */
const MOST_BYTES = 100_000;

/** Whether the fragment of an address claims to hold a set. */
export const holdsSet = (fragment: string): boolean => fragment.startsWith(BEGINS);

/** The fragment that holds a set: its recipe, and no name of a student. */
export async function fragmentOf(recipe: Recipe): Promise<string> {
  return `${BEGINS}${VERSION}.${await pack(recipeText(recipe))}`;
}

/** The address under which a student opens a set. */
export async function linkOfSet(recipe: Recipe): Promise<string> {
  return `${new URL(hrefOf("practice"), location.href).href}${await fragmentOf(recipe)}`;
}

/** The set in a fragment; throws InputError where it is of a newer kit, or where some of it is missing or changed. */
export async function setIn(fragment: string): Promise<Recipe> {
  const [version, packed = ""] = fragment.slice(BEGINS.length).split(".", 2);
  if (version !== VERSION) throw new InputError({path: "version", label: "version of the link", value: version, reads: `"${version ?? ""}"`, allowed: `this kit reads version ${VERSION}`});
  return readRecipe(await unpack(packed, "link to a set", MOST_BYTES));
}
