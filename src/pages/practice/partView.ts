import type {Answer, Item} from "../../lib/practice/item.js";
import {hintsOf, keysOf} from "../../lib/practice/keys.js";
import {check, type PartMark} from "../../lib/practice/marks.js";
import {numberText, proseText} from "../../lib/practice/prose.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import {entryOf} from "./entries.js";
import type {PartState} from "./partState.js";

/** What a reader may do with an exercise. */
export interface ExerciseRules {
  readonly hints: boolean;
  /** Whether answers are checked here, and worked steps shown. */
  readonly checked: boolean;
  /** Whether it belongs to a set: points are shown, and an answer is final once its worked steps are shown. */
  readonly inSet: boolean;
}

/** The place of a part within its exercise. */
export interface PartPlace {
  readonly item: Item;
  readonly index: number;
  readonly rules: ExerciseRules;
  readonly system: UnitSystem;
  readonly states: () => readonly PartState[];
  readonly change: (state: PartState) => void;
  /** Hears of each answer that is checked; `first` for the first of this part. */
  readonly marked?: (mark: PartMark, first: boolean) => void;
}

const RIGHT: ReadonlySet<PartMark["verdict"]> = new Set(["right", "right from there"]);

/** A part of an exercise: what is asked, where it is answered, what came of it, hints one after the other, and the worked steps. */
export function partView({item, index, rules, system, states, change, marked}: PartPlace): HTMLElement {
  const part = item.parts[index] as Item["parts"][number];
  const state = () => states()[index] as PartState;
  const askId = uniqueId("ask");
  const says = element("p", {class: "part-says", role: "status"});
  const help = element("div", {class: "part-help", "aria-live": "polite"});
  const hintList = element("ol", {class: "part-hints"});
  const entry = entryOf(part, {
    standing: state().standing || (state().tries.at(-1) ?? ""), system, askId,
    changed: (standing) => {
      delete says.dataset["verdict"];
      says.replaceChildren();
      change({...state(), standing});
    },
  });

  const tell = (mark: PartMark) => {
    const right = RIGHT.has(mark.verdict);
    says.dataset["verdict"] = right ? "right" : mark.verdict === "slip" || mark.verdict === "unit" ? "near" : "wrong";
    says.replaceChildren(element("span", {"aria-hidden": "true", class: "part-sign"}, right ? "\u2713" : "\u2717"), " ", ...(mark.slip ? [element("strong", {}, `${sentence(mark.slip)}.`), " "] : []), mark.says);
  };
  const markNow = () => check(item, states().map(({standing, tries}) => standing || tries.at(-1)), system);
  const checkIt = () => {
    const standing = entry.stands();
    const first = state().tries.length === 0;
    if (standing === "") {
      says.dataset["verdict"] = "wrong";
      says.textContent = part.type === "number" ? "Type a number first." : "Choose one first.";
      return;
    }
    change({...state(), standing, tries: standing === state().tries.at(-1) ? state().tries : [...state().tries, standing]});
    const mark = markNow().parts[index] as PartMark;
    tell(mark);
    marked?.(mark, first);
  };
  /** Answers of the parts before: the reader's own where they can be read, the key's elsewhere. */
  const earlier = (): Answer[] => {
    const keys = keysOf(item);
    return markNow().parts.slice(0, index).map(({read}, i) => read ?? (keys[i] as Answer));
  };

  const hints = rules.hints ? hintsOf(part, keysOf(item).slice(0, index)) : [];
  const hintButton = button("", () => void showHint(state().hints + 1), {quiet: true});
  const showHint = async (count: number) => {
    const {hintNode} = await import("./partHelp.js");
    change({...state(), hints: Math.max(state().hints, Math.min(count, hints.length))});
    hintList.replaceChildren(...hints.slice(0, state().hints).map(hintNode));
    if (!hintList.isConnected) help.prepend(hintList);
    nameHint();
  };
  const nameHint = () => {
    const left = hints.length - state().hints;
    hintButton.textContent = `${state().hints === 0 ? "A hint" : "Another hint"} (${state().hints + 1} of ${hints.length})`;
    hintButton.hidden = left <= 0 || state().shown;
  };
  const stepsButton = button(rules.inSet ? "Show the worked steps; your answer is then final" : "Show the worked steps", () => void showSteps(), {quiet: true});
  const checkButton = button("Check", checkIt, {name: `Check ${part.type === "number" ? part.label : `part ${index + 1}`} of exercise ${item.number}`});
  const showSteps = async () => {
    const {workedNode} = await import("./partHelp.js");
    const standing = entry.stands();
    if (standing !== "" && part.type !== "order" && rules.inSet) change({...state(), standing, tries: standing === state().tries.at(-1) ? state().tries : [...state().tries, standing]});
    change({...state(), shown: true});
    if (rules.inSet) {
      entry.close();
      checkButton.hidden = true;
    }
    stepsButton.hidden = true;
    nameHint();
    help.append(workedNode(part, earlier(), keysOf(item)[index] as Answer, system));
  };
  const keepOrder = part.type === "order" && !rules.checked ? button("Keep this order", () => {
    change({...state(), standing: entry.stands()});
    says.textContent = "Kept.";
  }) : null;

  entry.box?.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && rules.checked && !state().shown) checkIt();
  });
  if (hints.length > 0) {
    nameHint();
    if (state().hints > 0) void showHint(state().hints);
  }
  if (rules.checked && state().tries.length > 0) tell(markNow().parts[index] as PartMark);
  if (rules.checked && state().shown) void showSteps();
  const letter = item.parts.length > 1 ? `${"abcdefghij"[index]}) ` : "";
  return element("div", {class: "part", role: "group", "aria-labelledby": askId},
    element("p", {class: "part-ask", id: askId}, element("b", {}, letter), proseText(part.ask, system), " ", rules.inSet && element("span", {class: "part-points"}, pointsWords(part.points))),
    entry.node,
    element("div", {class: "row part-buttons"}, rules.checked && checkButton, keepOrder, hints.length > 0 && hintButton, rules.checked && stepsButton),
    says, help);
}

/** Points in words: "1 point", "1.33 points". */
export function pointsWords(points: number): string {
  const text = numberText(Number(points.toFixed(2)));
  return text === "1" ? "1 point" : `${text} points`;
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
