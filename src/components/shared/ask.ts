import type {Catalog} from "../../lib/catalog.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {GUESSES, type Guess, type GuessName} from "../../lib/exercises/guesses.js";
import {guessControl} from "../controls.js";
import type {DesignStore} from "../store.js";

/** A page's question to the reader about the open design; what is told afterwards follows the design. */
export function ask(store: DesignStore, catalog: Catalog, name: GuessName, reveal: (evaluation: Evaluation) => string): HTMLElement {
  const guess: Guess = GUESSES[name];
  const now = () => evaluate(store.get(), catalog);
  return guessControl({
    ...guess,
    store,
    answer: () => guess.answer(now()),
    get mistakes() {
      return guess.mistakes(now());
    },
    reveal: () => reveal(now()),
  });
}
