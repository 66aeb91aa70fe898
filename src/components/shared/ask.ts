import type {Catalog} from "../../lib/catalog.js";
import {columnsOf, evaluate, type Evaluation} from "../../lib/evaluate.js";
import {GUESSES, type Guess, type GuessName} from "../../lib/exercises/guesses.js";
import {QUANTITIES} from "../../lib/quantities.js";
import {guessControl} from "../controls.js";
import type {DesignStore} from "../store.js";
import {openGuesses} from "../veil/open.js";

/** A page's question to the reader about the open design; what is shown afterward follows the design. */
export function ask(store: DesignStore, catalog: Catalog, name: GuessName, reveal: (evaluation: Evaluation) => string): HTMLElement {
  const {question, unit, tolerancePercent, answer, mistakes, hides}: Guess = GUESSES[name];
  const now = () => evaluate(store.get(), catalog);
  openGuesses.tellAnswers(name, () => {
    const evaluation = now();
    return [answer(evaluation), ...hides.map((quantity) => QUANTITIES[quantity](evaluation, () => columnsOf(evaluation, catalog)) ?? 0)];
  });
  return guessControl({name, question, unit, tolerancePercent, store, answer: () => answer(now()), mistakes: () => mistakes(now()), reveal: () => reveal(now())});
}
