import {alternativesConsidered, type AlternativesConsidered} from "../../lib/record/alternatives.js";
import {element, uniqueId} from "../dom.js";
import type {Observe} from "../shared/deckSearch.js";
import {hrefOf} from "../shared/pageList.js";
import {keep, recall} from "../store/kept.js";
import {comparedOf, type CompareView} from "./view.js";
import {measureName} from "./words.js";

/** Where this browser keeps whether the record takes the comparison in. */
const KEY = "compare/in-record";

/** How long nothing must have changed before the sheets are counted anew, ms. */
const REST_MS = 300;

/** Whether the record takes the comparison in; it does not until the reader says so. */
export interface InRecord {
  readonly get: () => boolean;
  readonly set: (taken: boolean) => void;
  readonly observe: Observe<boolean>;
}

/** What this browser keeps of it. */
export function inRecord(): InRecord {
  const listeners = new Set<(taken: boolean) => void>();
  let taken = recall(KEY) === true;
  return {
    get: () => taken,
    set(next) {
      taken = next;
      keep(KEY, next);
      for (const listener of listeners) listener(next);
    },
    observe(change) {
      listeners.add(change);
      change(taken);
      return () => listeners.delete(change);
    },
  };
}

/** The switch of it, and what it adds to the record. */
export function recordSwitch(choice: InRecord, observe: Observe<CompareView>): HTMLElement {
  const [id, help] = [uniqueId("in-record"), uniqueId("in-record-help")];
  const box = element("input", {id, type: "checkbox", role: "switch", class: "switch", "aria-describedby": help});
  const words = element("p", {id: help, class: "control-help"});
  box.addEventListener("change", () => choice.set(box.checked));
  choice.observe((taken) => (box.checked = taken));
  let first = true;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  // Its sheets need not be counted at each letter of a note.
  observe((view) => {
    clearTimeout(waiting);
    if (first) words.replaceChildren(...addedWords(view));
    else waiting = setTimeout(() => words.replaceChildren(...addedWords(view)), REST_MS);
    first = false;
  });
  return element("div", {class: "control switch-control"},
    element("span", {class: "switch-line"}, box, element("label", {for: id, class: "control-label"}, "Take the pinned designs into the record")), words);
}

function addedWords(view: CompareView): (string | Node)[] {
  const count = view.pinned.length;
  if (count === 0) return ["Nothing is pinned yet. ", element("a", {href: hrefOf("compare")}, "What else was possible?"), " pins designs and compares them with this one."];
  const considered = consideredOf(view);
  const sheets = considered?.mostSheets ?? 1;
  return [`\u201cAlternatives considered\u201d: ${count === 1 ? "one pinned design" : `${count} pinned designs`} beside this one, what is better and by how much, and your notes. On paper it adds ${sheets === 1 ? "one sheet" : `${sheets} sheets`} at most.`];
}

/** The comparison as the record has it; undefined while a design of it is being computed. What cannot be computed is left out, and the card of it says so. */
export function consideredOf({open, pinned}: CompareView): AlternativesConsidered | undefined {
  const own = comparedOf(open);
  if (!own || pinned.some(({found}) => found === undefined)) return undefined;
  return alternativesConsidered(own, pinned.flatMap((entry) => {
    const compared = comparedOf(entry);
    return compared ? [{letter: entry.letter, name: entry.name, note: entry.pin?.note ?? "", compared}] : [];
  }), measureName);
}
