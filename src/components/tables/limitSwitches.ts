import {LIMITS, limitNamed, type LimitName} from "../../lib/deck/limits.js";
import type {Rules} from "../../lib/deck/rules.js";
import {LIMIT_LOOKS} from "../charts/limits.js";
import {element} from "../dom.js";
import {tick} from "./parts.js";

/** A box for each limit, to see what the loads would be without it. */
export interface LimitSwitches {
  readonly node: HTMLElement;
  chosen(): LimitName[];
  /** Ticks the limits of some rules; those that the criteria have no setting for, and any others that ask nothing, cannot be ticked. */
  set(limits: readonly LimitName[], criteria: Pick<Rules, "walking" | "fire">, nothingAsked?: readonly LimitName[]): void;
}

/** What is said of the limits that could be ticked and are not. */
export type SwitchNote = (left: readonly LimitName[]) => string;

const USUAL_NOTE: SwitchNote = (left) => left.length === 0
  ? "Nothing is left out."
  : `Left out here: ${left.join(", ")}. For learning: a real floor has to meet them all.`;

/** A change of a box reaches listeners of `change` on the node. */
export function limitSwitches(say?: SwitchNote): LimitSwitches {
  const boxes = LIMITS.map((name) => {
    const {letter, color} = LIMIT_LOOKS[name];
    const mark = element("span", {class: "limit-letter", "aria-hidden": "true"}, letter);
    mark.style.setProperty("--look", color);
    return {name, ...tick(element("span", {}, mark, " ", name), {title: limitNamed(name).asks})};
  });
  const note = element("p", {class: "table-note"});
  const chosen = () => boxes.filter(({input}) => input.checked).map(({name}) => name);
  const draw = () => {
    const left = boxes.filter(({input}) => !input.checked && !(say && input.disabled)).map(({name}) => name);
    note.textContent = (say ?? USUAL_NOTE)(left);
  };
  for (const {input} of boxes) input.addEventListener("change", draw);
  return {
    node: element("div", {}, element("div", {class: "ticks limit-ticks"}, ...boxes.map(({node}) => node)), note),
    chosen,
    set(limits, criteria, nothingAsked = []) {
      for (const {name, input, node} of boxes) {
        const limit = limitNamed(name);
        const missing = (limit.kind === "gate" && limit.setting !== undefined && !criteria[limit.setting]) || nothingAsked.includes(name);
        input.disabled = missing;
        input.checked = !missing && limits.includes(name);
        node.title = `${limit.asks}${missing ? " This floor requires nothing here; its own pages set it." : ""}`;
      }
      draw();
    },
  };
}
