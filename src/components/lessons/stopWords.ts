import type {Lesson, LessonStop, LessonTrial} from "../../lib/lessons/lesson.js";
import {GUESSES, type Guess} from "../../lib/exercises/guesses.js";
import {button} from "../controls.js";
import {element} from "../dom.js";
import type {DesignStore} from "../store.js";
import {openGuesses} from "../veil/open.js";
import {keepPredicted, predicted} from "./predicted.js";

interface StopWords {
  readonly store: DesignStore;
  readonly lesson: Lesson;
  readonly stop: LessonStop;
  readonly index: number;
  readonly locked: boolean;
  /** Hears of a prediction. */
  readonly onSaid: () => void;
}

/** What belongs to a stop besides its question: what to predict, what to look at once it is said, what to try, where to stop. */
export function stopWords(of: StopWords): HTMLElement[] {
  const {stop, store} = of;
  return [
    ...(stop.predict ? [line("Predict.", predictPart(of), stop.predict.kind === "guess" ? "path-predict is-guess" : "path-predict")] : []),
    line("Look.", lookPart(of), heard(of.lesson, stop, of.index) ? "path-look is-told" : stop.predict ? "path-look is-waiting" : "path-look"),
    // Trying it out would tell what is to be predicted.
    ...(stop.trials.length > 0 && (!stop.predict || heard(of.lesson, stop, of.index)) ? [line("Try.", [element("span", {class: "path-choices"}, ...stop.trials.map((trial) => trialButton(store, trial)))], "path-try")] : []),
    line("Enough", [" when: ", stop.enough], "path-enough"),
  ];
}

const line = (name: string, parts: readonly (Node | string)[], className: string): HTMLElement =>
  element("div", {class: className}, element("strong", {}, name), " ", ...parts);

function predictPart({lesson, stop: {predict}, index, onSaid}: StopWords): (Node | string)[] {
  if (predict?.kind === "guess") {
    const said = openGuesses.said(predict.guess);
    const question = (GUESSES[predict.guess] as Guess).question;
    if (said !== undefined) return [`${question} `, said === null ? "It was not guessed." : `The guess: ${said} ${(GUESSES[predict.guess] as Guess).unit}.`];
    return [`${question} `, button("Guess on the page", () => {
      const input = document.querySelector<HTMLInputElement>(`[data-guess="${predict.guess}"] input`);
      input?.scrollIntoView({block: "center"});
      input?.focus({preventScroll: true});
    }, {quiet: true})];
  }
  if (predict?.kind !== "choice") return [];
  const said = predicted(lesson.id, index);
  const choices = predict.choices.map((words, i) => element("button", {type: "button", class: "path-choice", "aria-pressed": String(said === i), onclick: () => {
    keepPredicted(lesson.id, index, i);
    onSaid();
  }}, words));
  return [`${predict.question} `, element("span", {class: "path-choices", role: "group", "aria-label": predict.question}, ...choices)];
}

/** What to look at, once something was said or where nothing is to be said; what is not locked can be asked for. */
function lookPart({lesson, stop, index, locked, onSaid}: StopWords): (Node | string)[] {
  if (heard(lesson, stop, index)) return [stop.look];
  if (locked && stop.predict) return ["Locked until somebody has predicted something."];
  const guess = stop.predict?.kind === "guess" ? stop.predict.guess : undefined;
  return [stop.predict ? "After the prediction. " : "", button(stop.predict ? "Show it now" : "Show what to look at", () => {
    if (guess) openGuesses.settle(guess, null);
    else keepPredicted(lesson.id, index, -1);
    onSaid();
  }, {quiet: true})];
}

/** Whether a prediction was made, or what to look at was asked for. */
function heard(lesson: Lesson, {predict}: LessonStop, index: number): boolean {
  return predict?.kind === "guess" ? openGuesses.said(predict.guess) !== undefined : predicted(lesson.id, index) !== undefined;
}

function trialButton(store: DesignStore, {say, set}: LessonTrial): HTMLElement {
  const node = element("button", {type: "button", class: "path-choice"}, say);
  node.addEventListener("click", () => {
    try {
      store.setMany(set);
    } catch (problem) {
      // A design of the reader's own may not take it.
      store.tell({kind: "problem", message: `This design does not take that change. ${problem instanceof Error ? problem.message : ""}`.trim()});
    }
  });
  return node;
}
