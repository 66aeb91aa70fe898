import {gradeGuess} from "../../lib/exercises/guess.js";
import {element, uniqueId} from "../dom.js";
import type {DesignStore} from "../store.js";
import {follow} from "./follow.js";

export interface GuessOptions {
  /** Name under which the guess is kept while the browser is open; one per question. */
  readonly id: string;
  readonly question: string;
  readonly unit: string;
  /** The answer for the design that is open now. */
  readonly answer: () => number;
  /** How near counts as close, in percent of the answer. */
  readonly tolerancePercent: number;
  /** Results of likely mistakes, each with the sentence that names it; see `gradeGuess`. */
  readonly mistakes?: Parameters<typeof gradeGuess>[3];
  /** What is said once the reader has guessed or has asked to be told; `guess` is undefined in the latter case. */
  readonly reveal: (guess: number | undefined) => string | Node;
  /** Given the store, the revealed answer follows the open design. */
  readonly store?: DesignStore;
}

/** An element whose value is the guess: undefined before, null where the reader asked to be told. Fits `view`. */
export type GuessElement = HTMLElement & {value: number | null | undefined};

/** Lets the reader guess before the answer shows. */
export function guessControl(options: GuessOptions): GuessElement {
  const key = `plank-and-tee/guess/${options.id}`;
  const inputId = uniqueId("guess");
  const input = element("input", {id: inputId, type: "text", inputmode: "decimal", autocomplete: "off", class: "number-box", "aria-describedby": `${inputId}-unit`});
  const problem = element("p", {class: "control-message", role: "alert", hidden: true});
  const answer = element("div", {class: "guess-answer", "aria-live": "polite"});
  const tell = element("button", {type: "button", class: "button quiet"}, "Tell me");
  const form = element(
    "form",
    {class: "guess-form", novalidate: true},
    element("label", {for: inputId, class: "guess-question"}, options.question),
    element(
      "span",
      {class: "guess-entry"},
      element("span", {class: "number-entry"}, input, element("span", {class: "unit", id: `${inputId}-unit`}, options.unit)),
      element("button", {type: "submit", class: "button"}, "Guess"),
      tell,
    ),
    problem,
  );
  const node = element("div", {class: "guess"}, form, answer) as unknown as GuessElement;

  const show = () => {
    const guess = node.value;
    if (guess === undefined) {
      answer.replaceChildren();
      return;
    }
    const told = options.reveal(guess ?? undefined);
    const parts: (string | Node)[] = [];
    if (guess !== null) {
      const graded = gradeGuess(guess, options.answer(), options.tolerancePercent, options.mistakes ?? []);
      node.dataset["verdict"] = graded.verdict;
      parts.push(element("strong", {}, graded.message), " ");
    }
    answer.replaceChildren(element("p", {}, ...parts, told));
  };
  const settle = (guess: number | null) => {
    node.value = guess;
    keep(key, guess);
    tell.hidden = true;
    show();
    node.dispatchEvent(new Event("input", {bubbles: true}));
  };

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const text = input.value.trim().replace(/,/g, "");
    const guess = Number(text);
    const usable = text !== "" && Number.isFinite(guess);
    problem.hidden = usable;
    problem.textContent = usable ? "" : "Type a number; any guess will do.";
    if (usable) settle(guess);
  });
  // The form's own events are no change of the guess.
  input.addEventListener("input", (event) => event.stopPropagation());
  tell.addEventListener("click", () => settle(null));

  const kept = recall(key);
  node.value = kept;
  if (typeof kept === "number") input.value = String(kept);
  tell.hidden = kept !== undefined;
  if (options.store) follow(options.store, node, show);
  else show();
  return node;
}

function keep(key: string, guess: number | null): void {
  try {
    sessionStorage.setItem(key, JSON.stringify(guess));
  } catch {
    // Without storage the guess lasts as long as the page.
  }
}

function recall(key: string): number | null | undefined {
  try {
    const text = sessionStorage.getItem(key);
    return text === null ? undefined : (JSON.parse(text) as number | null);
  } catch {
    return undefined;
  }
}
