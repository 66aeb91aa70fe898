import {InputError} from "../../lib/errors.js";
import {checkedRecipe, plainRecipe, type Recipe, type RecipeKind} from "../../lib/practice/recipe.js";
import {keepText, keptText, plainIn} from "../../components/shared/keptText.js";

const RECIPE_KEY = "plank-and-tee/set-draft";
const NAMES_KEY = "plank-and-tee/set-names";

/** The set that is composed, which may have no exercise yet, and the class it is for. */
export interface Draft {
  readonly recipe: Recipe;
  /** Names or numbers as they were typed, one a line. */
  readonly names: string;
}

/** A set to begin with: an hour on the load's way from the room to the beam. */
const FIRST: Recipe = {
  title: "From the room to the beam", seed: 1, variants: true, hints: true, checked: false,
  kinds: [
    {kind: "superimposed-load", count: 1, points: 1}, {kind: "tributary-area", count: 2, points: 1}, {kind: "reduced-live-load", count: 1, points: 3},
    {kind: "deck-weight", count: 1, points: 1}, {kind: "edge-beam-load", count: 1, points: 2},
  ],
};

/** The draft as the reader changes it, kept in this browser. */
export interface DraftStore {
  get(): Draft;
  setRecipe(change: Partial<Recipe>): void;
  /** Sets one kind's entry, adds it at the end, or takes it out by undefined. */
  setKind(kind: string, entry: RecipeKind | undefined): void;
  /** Moves a kind by so many places. */
  move(kind: string, by: number): void;
  setNames(names: string): void;
  /** Takes another recipe in place of the open one, which can be brought back. */
  open(recipe: Recipe): void;
  bringBack(): void;
  observe(change: (draft: Draft) => void): void;
}

/** Makes the draft out of what this browser keeps. */
export function draftStore(): DraftStore {
  const listeners: ((draft: Draft) => void)[] = [];
  let draft: Draft = {recipe: keptRecipe(), names: keptText(NAMES_KEY) ?? ""};
  let before: Recipe | undefined;
  const change = (next: Draft) => {
    draft = next;
    keepText(RECIPE_KEY, JSON.stringify(plainRecipe(draft.recipe)));
    keepText(NAMES_KEY, draft.names === "" ? undefined : draft.names);
    for (const tell of listeners) tell(draft);
  };
  const setKinds = (kinds: readonly RecipeKind[]) => change({...draft, recipe: {...draft.recipe, kinds}});
  return {
    get: () => draft,
    setRecipe: (part) => change({...draft, recipe: {...draft.recipe, ...part}}),
    setKind(kind, entry) {
      const {kinds} = draft.recipe;
      const known = kinds.some((each) => each.kind === kind);
      setKinds(entry === undefined ? kinds.filter((each) => each.kind !== kind) : known ? kinds.map((each) => (each.kind === kind ? entry : each)) : [...kinds, entry]);
    },
    move(kind, by) {
      const kinds = [...draft.recipe.kinds];
      const from = kinds.findIndex((each) => each.kind === kind);
      const to = Math.min(kinds.length - 1, Math.max(0, from + by));
      const [moved] = kinds.splice(from, 1);
      if (moved) kinds.splice(to, 0, moved);
      setKinds(kinds);
    },
    setNames: (names) => change({...draft, names}),
    open(recipe) {
      before = draft.recipe;
      change({...draft, recipe});
    },
    bringBack() {
      if (before) change({...draft, recipe: before});
    },
    observe(tell) {
      listeners.push(tell);
      tell(draft);
    },
  };
}

/** The set that was composed last in this browser; one without exercises, or that cannot be read, gives way to the first. */
function keptRecipe(): Recipe {
  const content = plainIn(keptText(RECIPE_KEY));
  if (content === undefined) return FIRST;
  try {
    return checkedRecipe(content);
  } catch (problem) {
    if (problem instanceof InputError) return FIRST;
    throw problem;
  }
}
