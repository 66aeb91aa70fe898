import type {Catalog} from "../../lib/catalog.js";
import {InputError} from "../../lib/errors.js";
import {itemOf} from "../../lib/practice/kinds.js";
import {checkedRecipe} from "../../lib/practice/recipe.js";
import {itemsOfSet} from "../../lib/practice/setItems.js";
import {studentsIn} from "../../lib/practice/student.js";
import type {Step} from "../../lib/step.js";
import {button} from "../../components/controls.js";
import {messageFor} from "../../components/controls/frame.js";
import {element, uniqueId} from "../../components/dom.js";
import {readerSystem, whenReadAnew} from "../../components/reader/system.js";
import {pageChoice} from "../../components/shared/pageValue.js";
import type {Draft, DraftStore} from "./draft.js";

const WHAT = [
  {value: "set", label: "The set"}, {value: "key", label: "Its key"}, {value: "sets", label: "A set for each name"}, {value: "keys", label: "The key for each name"},
] as const;
type What = (typeof WHAT)[number]["value"];

/** How long the paper waits while the set is changed. */
const QUIET_MS = 120;

/** The class, what goes on paper, and the paper itself as it will be printed. */
export function paper(draft: DraftStore, catalog: Catalog): {readonly controls: HTMLElement; readonly sheets: HTMLElement} {
  const id = uniqueId("names");
  const names = element("textarea", {id, rows: 4, spellcheck: "false"});
  const message = messageFor([names]);
  names.setAttribute("aria-describedby", `${id}-help ${message.id}`);
  names.addEventListener("input", () => draft.setNames(names.value));
  const what = pageChoice<What>("On paper", WHAT, "set");
  const told = element("p", {class: "control-help", role: "status"});
  const print = button("Print", () => window.print());
  const sheets = element("div", {class: "set-paper", "data-units": "as is", tabindex: 0, role: "region", "aria-label": "The sheets as they will be printed"});
  let wanted = 0;
  const make = async () => {
    const turn = ++wanted;
    const wantsKey = what.get().startsWith("key");
    const [{keyMarkup, setMarkup}, steps] = await Promise.all([import("../../components/practice/sheetText.js"), stepsFor(draft.get(), wantsKey, catalog)]);
    if (turn !== wanted) return;
    try {
      const made = sheetsOf(draft.get(), what.get(), catalog);
      const markup = wantsKey ? keyMarkup : setMarkup;
      sheets.innerHTML = made.map(({items, title, student}) => markup(items, {title, key: false, system: readerSystem(), steps, heading: 3, ...(student === undefined ? {} : {student})})).join("\n");
      told.textContent = wordsOf(made.length, what.get());
      print.disabled = false;
      document.documentElement.style.setProperty("--set-title", JSON.stringify(`${what.get().startsWith("key") ? "Key: " : ""}${draft.get().recipe.title}`.replace(/[^\p{L}\p{N}\p{P}\p{Zs}]/gu, " ")));
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      sheets.replaceChildren();
      told.textContent = problem.message;
      print.disabled = true;
    }
    sheets.dataset["made"] = "";
  };
  whenReadAnew(sheets, () => soon());
  let timer = 0;
  const soon = () => {
    delete sheets.dataset["made"];
    clearTimeout(timer);
    timer = window.setTimeout(() => void make(), QUIET_MS);
  };
  draft.observe(({names: text}) => {
    if (names.value !== text) names.value = text;
    message.attempt(() => studentsIn(text));
    soon();
  });
  what.observe(soon);
  const {title} = document;
  // After the listener that every page has: the file of a printed set is called by the set.
  window.addEventListener("beforeprint", () => (document.title = `${what.get().startsWith("key") ? "Key: " : ""}${draft.get().recipe.title}`));
  window.addEventListener("afterprint", () => (document.title = title));
  return {
    sheets,
    controls: element("div", {class: "paper-controls no-print"},
      element("div", {class: "control text"}, element("label", {for: id, class: "control-label"}, "Names or numbers of the class, one a line"), names, message.node,
        element("p", {class: "control-help", id: `${id}-help`}, "Typed or pasted. They stay in this browser, stand in no link, and are needed only for sheets by name and to see who handed in nothing.")),
      what.node, element("div", {class: "row"}, print), told),
  };
}

/** How steps are written; the typesetter comes with the first key, or the first calculation with a mistake. */
async function stepsFor({recipe}: Draft, key: boolean, catalog: Catalog): Promise<(step: Step) => string> {
  const shown = key || recipe.kinds.some(({kind}) => itemOf(kind, recipe.seed, catalog).parts.some(({type}) => type === "mistake"));
  return shown ? (await import("../../components/practice/sheetSteps.js")).stepMarkup : ({label}) => label;
}

/** What each bundle of sheets holds. */
function sheetsOf({recipe, names}: Draft, what: What, catalog: Catalog): {items: ReturnType<typeof itemsOfSet>; title: string; student?: string}[] {
  const checked = checkedRecipe(recipe);
  if (what === "set" || what === "key") return [{items: itemsOfSet(checked, catalog), title: checked.title}];
  const students = studentsIn(names);
  if (students.length === 0) throw new InputError({path: "names", label: "names of the class", value: undefined, allowed: "at least one, typed or pasted above"});
  return students.map((student) => ({items: itemsOfSet(checked, catalog, student), title: checked.title, student}));
}

function wordsOf(count: number, what: What): string {
  switch (what) {
    case "set":
      return "The set with the seed\u2019s own numbers, with space to work in. It prints on letter paper or A4.";
    case "key":
      return "Answers with their tolerance, worked steps, and what usual slips lead to, for the seed\u2019s own numbers.";
    case "sets":
      return `${count === 1 ? "One set" : `${count} sets`}, each with its name and on sheets of its own.`;
    case "keys":
      return `${count === 1 ? "One key" : `${count} keys`}, each with its name and on sheets of its own.`;
  }
}
