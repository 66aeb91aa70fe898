import {element, uniqueId} from "../../components/dom.js";
import {keep, recall} from "../../components/store/kept.js";

/** How much of the record is set on paper. */
export type RecordForm = "short" | "whole" | "worked";

const FORMS: Readonly<Record<RecordForm, {readonly label: string; readonly help: string}>> = {
  short: {label: "One page", help: "The decisions with their reasons, what is open, and the cautions; a second sheet only where reasons are long."},
  whole: {label: "Whole record", help: "Every decision with its drawing, facts, ways not taken and checks, and all inputs."},
  worked: {label: "With worked steps", help: "The whole record, and at its end the steps on which its numbers rest: many sheets."},
};
const KEY = "record/form";

/** The choice of a form, kept in this browser. */
export function recordForm(): {readonly node: HTMLElement; observe(change: (form: RecordForm) => void): void} {
  const kept = recall(KEY);
  let form: RecordForm = typeof kept === "string" && kept in FORMS ? (kept as RecordForm) : "whole";
  const listeners = new Set<(form: RecordForm) => void>();
  const name = uniqueId("form");
  const help = element("p", {class: "control-help", "aria-live": "polite"}, FORMS[form].help);
  const options = Object.entries(FORMS).flatMap(([value, {label}]) => {
    const input = element("input", {type: "radio", name, value, id: `${name}-${value}`, ...(value === form ? {checked: true} : {})});
    input.addEventListener("change", () => {
      form = value as RecordForm;
      keep(KEY, form);
      help.textContent = FORMS[form].help;
      for (const listener of listeners) listener(form);
    });
    return [input, element("label", {for: input.id}, label)];
  });
  return {
    node: element("fieldset", {class: "control choice"}, element("legend", {class: "control-label"}, "How much of it"), element("div", {class: "segments"}, ...options), help),
    observe(change) {
      listeners.add(change);
      change(form);
    },
  };
}
