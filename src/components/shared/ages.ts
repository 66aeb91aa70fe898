import {InputError} from "../../lib/errors.js";
import type {Design} from "../../lib/design/design.js";
import {USUAL_SCHEDULE, checkSchedule, type Schedule} from "../../lib/prestress/schedule.js";
import {follow} from "../controls/follow.js";
import {numberBox} from "../controls/numberBox.js";
import {element} from "../dom.js";
import type {DesignStore} from "../store.js";
import type {Observe} from "./deckSearch.js";

/** A member's ages, which a page lets its reader set. They belong to the page, not to the design. */
export interface Ages {
  readonly node: HTMLElement;
  get(): Schedule;
  /** Fits `Generators.observe`. */
  readonly observe: Observe<Schedule>;
  /** The store, notified as well when an age changes: for pictures of both. */
  readonly both: DesignStore;
}

const WORDS: readonly (readonly [keyof Schedule, string])[] = [
  ["releaseDay", "strands cut"], ["erectionDay", "at erection"], ["toppingDay", "topping cast"],
  ["loadingDay", "dead load added"], ["endDay", "looked at until"],
];

/** Boxes for the ages at which things happen to the deck member, in days after casting. */
export function ageControls(store: DesignStore): Ages {
  let schedule = USUAL_SCHEDULE;
  const listeners = new Set<(schedule: Schedule) => void>();
  const topped = (design: Design) => design.deck.toppingIn > 0;
  const rows = WORDS.map(([key, words]) => ageRow(words, () => schedule[key], (day) => {
    const next = checkSchedule({...schedule, [key]: day}, topped(store.get()));
    schedule = next;
    for (const tell of listeners) tell(schedule);
  }));
  const node = element(
    "fieldset", {class: "control ages"},
    element("legend", {class: "control-label"}, "Age of the member, days"),
    ...rows.map((row) => row.node),
    element("p", {class: "control-help"}, "Counted from casting. These ages belong to this page and are not saved with the design."),
  );
  follow(store, node, (design) => {
    // A deck that gets a topping may not have left it room between the crane and the load.
    try {
      checkSchedule(schedule, topped(design));
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      schedule = USUAL_SCHEDULE;
      for (const tell of listeners) tell(schedule);
    }
    rows.forEach((row, i) => {
      row.node.hidden = WORDS[i]?.[0] === "toppingDay" && !topped(design);
      row.show();
    });
  });
  const observe = (change: (schedule: Schedule) => void) => {
    listeners.add(change);
    change(schedule);
    return () => void listeners.delete(change);
  };
  return {
    node, observe,
    get: () => schedule,
    both: {
      ...store,
      observe(change) {
        const stop = store.observe(change);
        const again = () => change(store.get());
        listeners.add(again);
        return () => {
          stop();
          listeners.delete(again);
        };
      },
    },
  };
}

/** One age: label, box, and the reason where it is impossible. */
function ageRow(words: string, get: () => number, write: (day: number) => void): {node: HTMLElement; show: () => void} {
  const {input, message, show} = numberBox({rule: {path: "", label: words, unit: "days", min: 0, max: 36_500, step: 1}, get, set: (day) => write(day ?? NaN)});
  return {show, node: element("div", {class: "age"}, element("label", {for: input.id}, words), input, message.node)};
}
