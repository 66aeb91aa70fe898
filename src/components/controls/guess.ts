import {gradeGuess} from "../../lib/exercises/guess.js";
import type {GuessName} from "../../lib/exercises/guesses.js";
import {element, uniqueId} from "../dom.js";
import type {DesignStore} from "../store.js";
import {shownUnit, whenReadAnew} from "../reader/system.js";
import {lock, lockNote} from "../veil/lock.js";
import {openGuesses} from "../veil/open.js";
import {follow} from "./follow.js";

export interface GuessOptions {
  readonly name: GuessName;
  readonly question: string;
  readonly unit: string;
  /** The answer for the design that is open now. */
  readonly answer: () => number;
  /** How near counts as close, in percent of the answer. */
  readonly tolerancePercent: number;
  /** Results of likely mistakes, each with the sentence that names it; see `gradeGuess`. */
  readonly mistakes: () => NonNullable<Parameters<typeof gradeGuess>[3]>;
  /** What is said once the reader has guessed or has asked to be told. */
  readonly reveal: () => string;
  /** The revealed answer follows the open design. */
  readonly store: DesignStore;
}

/** Lets the reader guess before the answer shows, here and wherever else the page would give it away. */
export function guessControl({name, question, unit, answer, tolerancePercent, mistakes, reveal, store}: GuessOptions): HTMLElement {
  const inputId = uniqueId("guess");
  const input = element("input", {id: inputId, type: "text", inputmode: "decimal", autocomplete: "off", class: "number-box", "aria-describedby": `${inputId}-unit`});
  const problem = element("p", {class: "control-message", role: "alert", hidden: true});
  const told = element("div", {class: "guess-answer", "aria-live": "polite"});
  const tell = element("button", {type: "button", class: "button quiet"}, "Tell me");
  const tellAll = element("button", {type: "button", class: "button quiet"}, "Tell me on every page");
  const waivers = element("span", {class: "guess-waivers"}, tell, tellAll);
  // The guess is typed in the reader's own units and kept in the question's.
  const unitNode = element("span", {class: "unit", id: `${inputId}-unit`, "data-units": "as is"}, unit);
  const si = () => {
    const shown = shownUnit(unit);
    return shown?.beside ? undefined : shown;
  };
  let inUnits = "";
  const showUnits = () => {
    const shown = si();
    if (inUnits === (shown?.unit ?? unit)) return;
    inUnits = shown?.unit ?? unit;
    unitNode.textContent = inUnits;
    const guess = openGuesses.said(name);
    input.value = typeof guess !== "number" ? "" : String(shown ? Number((guess * shown.factor).toPrecision(6)) : guess);
  };
  const locked = lock.on() ? lockNote("The answer is locked", () => show()) : null;
  const form = element(
    "form",
    {class: "guess-form", novalidate: true},
    element("label", {for: inputId, class: "guess-question"}, question),
    element(
      "span",
      {class: "guess-entry"},
      element("span", {class: "number-entry"}, input, unitNode),
      element("button", {type: "submit", class: "button"}, "Guess"),
      waivers,
    ),
    problem,
    locked,
  );
  const node = element("div", {class: "guess", "data-guess": name}, form, told);

  const paragraph = (words: string) => element("p", {}, ...(words ? [element("strong", {}, words), " "] : []), reveal());
  const show = () => {
    showUnits();
    const guess = openGuesses.said(name);
    // Its room is kept, so that nothing on the page moves.
    waivers.classList.toggle("is-gone", guess !== undefined || lock.on());
    locked?.classList.toggle("is-gone", guess !== undefined || !lock.on());
    if (guess === undefined) return;
    const graded = guess === null ? undefined : gradeGuess(guess, answer(), tolerancePercent, mistakes());
    if (graded) node.dataset["verdict"] = graded.verdict;
    told.replaceChildren(paragraph(graded?.message ?? ""));
  };

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const text = input.value.trim().replace(/,/g, "");
    const guess = Number(text) / (si()?.factor ?? 1);
    const usable = text !== "" && Number.isFinite(guess);
    problem.hidden = usable;
    problem.textContent = usable ? "" : "Type a number; any guess will do.";
    if (!usable) return;
    if (openGuesses.said(name) !== guess) void import("../keptGuesses.js").then(({keepGuess}) => keepGuess({kind: "number", name, guess, truth: answer()}));
    openGuesses.settle(name, guess);
  });
  // The form's own events are no change of the design.
  input.addEventListener("input", (event) => event.stopPropagation());
  tell.addEventListener("click", () => openGuesses.settle(name, null));
  tellAll.addEventListener("click", () => openGuesses.waiveAll());
  openGuesses.observe(show);
  keepRoom(form, told, () => paragraph(mistakes().reduce((longest, {message}) => (message.length > longest.length ? message : longest), "Too high by 100 %.")));

  follow(store, node, show);
  whenReadAnew(node, showUnits);
  return node;
}

/** Keeps as much room for the answer as the longest takes: it is measured within one moment, and never shown or read. */
function keepRoom(form: HTMLElement, room: HTMLElement, longest: () => HTMLElement): void {
  let known = 0;
  new ResizeObserver(() => {
    if (form.offsetWidth === known || form.offsetWidth === 0) return;
    known = form.offsetWidth;
    const shown = [...room.childNodes];
    room.style.minHeight = "";
    room.replaceChildren(longest());
    const height = room.offsetHeight;
    room.replaceChildren(...shown);
    room.style.minHeight = `${height}px`;
  }).observe(form);
}
