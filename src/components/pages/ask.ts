import type {Catalogue} from "../../lib/catalogue.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {GUESSES, type Guess, type GuessName} from "../../lib/exercises/guesses.js";
import {guessControl} from "../controls.js";
import type {DesignStore} from "../store.js";

/** A page's question to the reader about the open design; what is told afterwards follows the design. */
export function ask(store: DesignStore, catalogue: Catalogue, name: GuessName, reveal: (evaluation: Evaluation) => string): HTMLElement {
  const guess: Guess = GUESSES[name];
  const now = () => evaluate(store.get(), catalogue);
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
