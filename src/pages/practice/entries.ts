import type {ChoicePart, ExercisePart, MistakePart, NumberPart, Option} from "../../lib/practice/item.js";
import {toleranceWords} from "../../lib/practice/keys.js";
import {measureText, proseText} from "../../lib/practice/prose.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {readAnswer} from "../../lib/practice/typedAnswer.js";
import {toSi, unitText} from "../../lib/units.js";
import {commonScale, pictureText} from "../../components/practice/pictureText.js";
import {element, uniqueId} from "../../components/dom.js";
import type {Entry, EntryPlace} from "./entry.js";
import {orderEntry} from "./orderEntry.js";

/** The entry of a part of any type. */
export function entryOf(part: ExercisePart, place: EntryPlace): Entry {
  switch (part.type) {
    case "number":
      return numberEntry(part, place);
    case "choice":
      return choiceEntry(part, place);
    case "mistake":
      return mistakeEntry(part, place);
    case "order":
      return orderEntry(part, place, (option) => optionContent(option, place.system, scaleOf(part.options)));
  }
}

/** A box for a number with its unit; another unit may be typed behind it, and what it was read as stands below. */
function numberEntry({label, unit, tolerance}: NumberPart, {standing, system, askId, changed}: EntryPlace): Entry {
  const id = uniqueId("answer");
  const box = element("input", {id, type: "text", class: "answer-box", autocomplete: "off", spellcheck: "false", autocapitalize: "off", maxlength: 60, "aria-describedby": `${askId} ${id}-unit ${id}-read`, value: standing});
  const read = element("p", {id: `${id}-read`, class: "part-read", role: "status"});
  const shown = unitText(system === "SI" ? toSi(1, unit).unit : unit);
  const look = () => {
    const found = readAnswer(box.value, unit, system);
    read.textContent = found.state === "missing" ? "" : found.state === "read" ? (found.stated ? `Read as ${measureText({value: found.value, unit}, system)}.` : "") : found.says;
  };
  box.addEventListener("input", (event) => {
    event.stopPropagation();
    read.textContent = "";
    changed(box.value.trim());
  });
  box.addEventListener("change", look);
  if (standing !== "") look();
  return {
    box, stands: () => box.value.trim(), close: () => (box.readOnly = true),
    node: element("div", {class: "number-answer"}, element("label", {for: id}, label), " ",
      element("span", {class: "answer-entry"}, box, element("span", {id: `${id}-unit`, class: "unit"}, shown)), element("span", {class: "part-tolerance"}, toleranceWords(tolerance, unit, system)), read),
  };
}

/** One of several, each with its picture where it has one. */
function choiceEntry(part: ChoicePart, place: EntryPlace): Entry {
  const scale = scaleOf(part.options);
  return radios(part.options.map(({id}) => id), (i) => optionContent(part.options[i] as Option, place.system, scale), place, part.options.some(({picture}) => picture) ? "option-list has-pictures" : "option-list");
}

/** The lines of a calculation, one of which is wrong; their equations come with the typesetter. */
function mistakeEntry({lines}: MistakePart, place: EntryPlace): Entry {
  const places = lines.map(({label}) => element("span", {class: "mistake-line"}, label));
  void import("./partHelp.js").then(({lineMarkup}) => {
    lines.forEach((line, i) => ((places[i] as HTMLElement).innerHTML = lineMarkup(line)));
  });
  return radios(lines.map((_, i) => String(i + 1)), (i) => element("span", {}, `Line ${i + 1}: `, places[i] as HTMLElement), place, "option-list");
}

function radios(values: readonly string[], content: (index: number) => Node, {standing, askId, changed}: EntryPlace, className: string): Entry {
  const name = uniqueId("option");
  const inputs = values.map((value) => element("input", {type: "radio", name, value, id: `${name}-${value}`, checked: value === standing}));
  const node = element("div", {class: className, role: "radiogroup", "aria-labelledby": askId},
    ...inputs.map((input, i) => element("div", {class: "option"}, input, element("label", {for: input.id}, content(i)))));
  const stands = () => inputs.find(({checked}) => checked)?.value ?? "";
  node.addEventListener("change", (event) => {
    event.stopPropagation();
    changed(stands());
  });
  return {
    node, stands,
    close: () => {
      for (const input of inputs) input.disabled = true;
    },
  };
}

/** Width of a section among others, px. */
const OPTION_PX = 300;

function scaleOf(options: readonly Option[]): number {
  return commonScale(options.map(({picture}) => picture), OPTION_PX);
}

function optionContent({text, picture}: Option, system: UnitSystem, scale: number): HTMLElement {
  const node = element("span", {}, proseText(text, system));
  if (picture) {
    const drawn = element("span", {class: "exercise-picture"});
    drawn.innerHTML = pictureText(picture, system, OPTION_PX, scale);
    node.append(drawn);
  }
  return node;
}
