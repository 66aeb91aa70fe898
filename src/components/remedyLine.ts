import type {Design} from "../lib/design/design.js";
import {withValues} from "../lib/design/edit.js";
import {valuesOf} from "../lib/remedies/changes.js";
import type {FirstRemedy, FoundRemedy} from "../lib/remedies/firstRemedy.js";
import {remedyText} from "../lib/remedies/remedyWords.js";
import {checkMark} from "./checks.js";
import {element, uniqueId} from "./dom.js";
import {tables} from "./notebook.js";
import type {DesignStore} from "./store.js";
import {keep, recall} from "./store/kept.js";
import {workPlace} from "./worker/work.js";

/** The line below the strip of a design that fails. */
export interface RemedyLine {
  /** To be called when no change has come for a while: looks for a remedy, or takes the line away where nothing fails. */
  rest(failing: number, checks: number): void;
}

/** Whether the reader has folded the line. */
const FOLDED_KEY = "remedy-folded";
/** In a narrower window the words would cover the page, so they come when they are asked for. */
const WIDE = "(min-width: 60rem)";

/**
 * How many checks fail, the first of them, and the smallest change that mends it, with the button that makes it. It is
 * looked for beside the page once the reader's hand rests; a change of the design takes its button away at once.
 */
export function remedyLine(store: DesignStore, bar: HTMLElement): RemedyLine {
  const start = workPlace(tables);
  const count = element("span", {});
  const whole = element("span", {id: uniqueId("remedy"), class: "remedy-words"});
  const fold = element("button", {type: "button", class: "remedy-fold", "aria-controls": whole.id}, checkMark("fails"), " ", count);
  const first = element("span", {class: "remedy-first"});
  const wait = element("span", {class: "remedy-wait"}, "Looking for what mends the first of them.");
  const act = element("button", {type: "button", class: "button", hidden: true, onclick: () => press()});
  const back = element("button", {type: "button", class: "button quiet", hidden: true, onclick: () => store.undo()}, "Undo it");
  const node = element("section", {class: "remedy", "aria-label": "First remedy", hidden: true},
    fold, wait, element("div", {class: "remedy-said", role: "status"}, first, " ", whole), element("span", {class: "remedy-acts"}, act, back));
  bar.append(node);

  let shown: {readonly design: Design; readonly remedy: FoundRemedy | undefined} | undefined;
  /** What the line itself has made of the design last. */
  let done: Design | undefined;
  let cancel = () => {};

  const folded = (now: boolean) => {
    node.dataset["folded"] = String(now);
    fold.setAttribute("aria-expanded", String(!now));
  };
  folded(recall(FOLDED_KEY) === true || (recall(FOLDED_KEY) !== false && !matchMedia(WIDE).matches));
  fold.addEventListener("click", () => {
    const now = node.dataset["folded"] !== "true";
    folded(now);
    keep(FOLDED_KEY, now);
  });

  const press = () => {
    if (!shown?.remedy || shown.design !== store.get()) return;
    done = withValues(shown.design, valuesOf(shown.remedy.changes));
    store.replace(done);
  };
  const say = (design: Design, known: FirstRemedy | undefined, searching: boolean) => {
    const remedy = known && useOf(known);
    shown = {design, remedy};
    wait.hidden = true;
    put(first, known ? `First: ${known.first.label}.` : "");
    put(whole, known ? wholeWords(known, searching) : "Undo brings the design of before back.");
    put(act, remedy && !remedy.lowers ? "Do this all the same" : "Do this");
    // A button that goes hands its focus on.
    const had = [act, back].find((each) => each === document.activeElement);
    act.hidden = !remedy;
    back.hidden = design !== done;
    if (had?.hidden) (remedy ? act : back.hidden ? fold : back).focus();
    live(true);
  };
  const head = (words: string, verdict: "fails" | "ok") => {
    put(count, words);
    node.dataset["verdict"] = verdict;
    fold.querySelector("svg")?.replaceWith(checkMark(verdict));
    node.hidden = false;
  };
  const live = (now: boolean) => {
    node.dataset["stale"] = String(!now);
    act.setAttribute("aria-disabled", String(!now));
  };
  store.observe((design) => {
    if (design === shown?.design) return;
    cancel();
    live(false);
  });
  return {
    rest(failing, checks) {
      const design = store.get();
      if (failing) head(`${failing} of ${checks} checks ${failing === 1 ? "fails" : "fail"}`, "fails");
      if (design === shown?.design) return live(true);
      if (!failing) {
        node.hidden ||= design !== done;
        if (node.hidden) return;
        head("No check fails any more", "ok");
        return say(design, undefined, false);
      }
      const work = start("firstRemedy", design, (known) => say(design, known, true));
      cancel = work.cancel;
      // Where the search itself fails the design's own pages still say what fails.
      void work.done.then((known) => known && design === store.get() && say(design, known, false), () => (node.hidden = true));
    },
  };
}

/** The remedy that a press does: of the first check that fails, or of the next that one mends. */
function useOf({first, next}: FirstRemedy): FoundRemedy | undefined {
  return first.lowers ? first : next ?? (first.changes.length > 0 ? first : undefined);
}

function wholeWords({first, next, failing}: FirstRemedy, searching: boolean): string {
  const own = remedyText(first.words);
  if (next) return `${own} Next: ${next.label}. ${remedyText(next.words)}`;
  return searching && failing > 1 ? `${own} Looking at the others.` : own;
}

/** Sets a text only where it is another, so that nobody is read the same twice. */
function put(node: HTMLElement, text: string): void {
  if (node.textContent !== text) node.textContent = text;
}
