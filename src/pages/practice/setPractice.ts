import type {Catalog} from "../../lib/catalog.js";
import type {Item} from "../../lib/practice/item.js";
import {countOf, type Recipe} from "../../lib/practice/recipe.js";
import {itemsOfSet} from "../../lib/practice/setItems.js";
import {requireName} from "../../lib/practice/student.js";
import {button} from "../../components/controls.js";
import {messageFor} from "../../components/controls/frame.js";
import {element, uniqueId} from "../../components/dom.js";
import {fileNameOf} from "../../components/store.js";
import {download} from "../../components/store/browser.js";
import {begunSet, begunSets, fileText, keepBegun, progressOf, unitsOfSet} from "./keptSets.js";
import {recipeKey} from "../../lib/practice/recipe.js";
import {exerciseView} from "./exerciseView.js";
import {pointsWords} from "./partView.js";
import type {PartState} from "./partState.js";

/** A set that a teacher has handed out: who answers it, its exercises, and the file to hand in. */
export function setPractice(recipe: Recipe, catalog: Catalog, leave: () => void, student?: string): HTMLElement {
  const node = element("section", {class: "practice-set", "aria-label": recipe.title});
  const begun = begunSets().find((each) => recipeKey(each.recipe) === recipeKey(recipe));
  const begin = (name: string) => node.replaceChildren(...head(recipe, leave), ...answering(recipe, name, catalog, () => ask(name)));
  const ask = (before: string) => {
    node.replaceChildren(...head(recipe, leave), nameForm(before, begin));
    node.querySelector("input")?.focus();
  };
  const name = student ?? begun?.student;
  if (name === undefined) node.replaceChildren(...head(recipe, leave), nameForm("", begin));
  else begin(name);
  return node;
}

function head(recipe: Recipe, leave: () => void): HTMLElement[] {
  const points = recipe.kinds.reduce((sum, {count, points: each}) => sum + count * each, 0);
  const count = countOf(recipe);
  return [
    element("h2", {class: "set-title"}, recipe.title),
    element("p", {}, [
      `${count === 1 ? "One exercise" : `${count} exercises`}, ${pointsWords(points)}.`,
      recipe.variants ? "Each student has numbers of their own, which follow from the name or number." : "All have the same numbers.",
      recipe.hints ? "Hints can be opened: the worked steps, one at a time, with their numbers withheld." : "Hints are locked.",
      recipe.checked ? "Answers can be checked here, as often as you like; the last one counts, and every try goes into the file." : "Answers are marked by your teacher, and the worked steps are locked until then.",
    ].join(" ")),
    element("div", {class: "row"}, button("Leave this set for free practice", leave, {quiet: true})),
  ];
}

function nameForm(before: string, begin: (name: string) => void): HTMLElement {
  const id = uniqueId("student");
  const input = element("input", {id, type: "text", autocomplete: "off", maxlength: 80, value: before});
  const message = messageFor([input]);
  input.setAttribute("aria-describedby", `${id}-help ${message.id}`);
  const form = element("form", {class: "control text", novalidate: true},
    element("label", {for: id, class: "control-label"}, "Your name or number, as your teacher gave it"), input, message.node,
    element("p", {class: "control-help", id: `${id}-help`}, "Capital letters, accents and spaces at the ends do not matter; anything else does. It stays in this browser and in the file that you save."),
    element("p", {}, element("button", {type: "submit", class: "button"}, "Begin")));
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    let name = "";
    if (message.attempt(() => (name = requireName(input.value)))) begin(name);
  });
  return form;
}

function answering(recipe: Recipe, student: string, catalog: Catalog, other: () => void): HTMLElement[] {
  const items = itemsOfSet(recipe, catalog, student);
  const system = unitsOfSet(recipe, student);
  let states: PartState[][] = begunSet(recipe, student, items);
  const progress = element("p", {class: "set-progress", role: "status"});
  const saved = element("p", {class: "control-help", role: "status"});
  const show = (kept: boolean) => {
    const {answered, of} = progressOf(states);
    progress.textContent = `${answered} of ${of} questions answered.${kept ? "" : " This browser keeps nothing for this site: save the file before you close the page."}`;
  };
  const keep = () => {
    saved.textContent = "";
    show(keepBegun({recipe, student, states, units: system}));
  };
  show(keepBegun({recipe, student, states, units: system}));
  const name = `${fileNameOf(recipe.title)}-${fileNameOf(student)}.json`;
  const save = button("Save the answers as a file", () => {
    download(name, fileText({recipe, student, states, units: system}));
    saved.textContent = `Saved as ${name}. Hand that file to your teacher.`;
  });
  const view = (item: Item, i: number) => exerciseView(item, {
    rules: {hints: recipe.hints, checked: recipe.checked, inSet: true}, system, states: () => states[i] as PartState[],
    change: (index, state) => {
      states = states.map((parts, at) => (at === i ? parts.map((part, j) => (j === index ? state : part)) : parts));
      keep();
    },
  });
  return [
    element("p", {class: "set-student"}, recipe.variants ? "These are the numbers of " : "Answered by ", element("strong", {}, student), ". ", button("Another name", other, {quiet: true})),
    ...items.map((item, i) => element("div", {class: "set-exercise"}, view(item, i))),
    element("div", {class: "set-save"}, progress, save, saved),
    element("p", {class: "control-help set-note"}, "Answers are kept in this browser as you give them, also through a reload, and are sent nowhere. The file holds the set, your name and your answers, no time, and a checksum: one that was broken on its way or changed by hand is found out. It is no proof against someone who sets out to deceive."),
  ];
}
