import {InputError} from "../../lib/errors.js";
import {checkedRecipe, readRecipe, recipeText} from "../../lib/practice/recipe.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {linkOfSet} from "../../components/practice/setLink.js";
import {fileNameOf} from "../../components/store.js";
import {download} from "../../components/store/browser.js";
import type {DraftStore} from "./draft.js";

/** The ways of a set to students and back to its teacher: a link with the recipe in it, and a file. */
export function handOut(draft: DraftStore): HTMLElement {
  const told = element("p", {class: "control-help set-told", role: "status"});
  const back = button("Bring the set from before back", () => {
    draft.bringBack();
    back.hidden = true;
    told.textContent = "The set from before is open again.";
  }, {quiet: true});
  back.hidden = true;
  const input = element("input", {type: "file", accept: ".json,application/json", hidden: true, "aria-label": "A saved set"});
  input.addEventListener("change", () => {
    const [file] = input.files ?? [];
    if (file) void open(file).then(() => (input.value = ""));
  });
  const open = async (file: File) => {
    try {
      draft.open(readRecipe(await file.text()));
      told.textContent = `Opened ${file.name}.`;
      back.hidden = false;
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      told.textContent = `${file.name} was not opened. ${problem.message}`;
    }
  };
  const copy = () => {
    const recipe = checkedRecipe(draft.get().recipe);
    void linkOfSet(recipe).then(async (link) => {
      const what = "It holds the recipe only: kinds, numbers, points, seed, title and rules; no answer, and no student\u2019s name.";
      try {
        await navigator.clipboard.writeText(link);
        told.textContent = `Copied a link to the set (${link.length.toLocaleString("en-US")} characters). ${what}`;
      } catch {
        told.replaceChildren("The browser does not let this page copy. Here is ", element("a", {href: link}, "the link to the set"), `. ${what}`);
      }
    });
  };
  const save = () => {
    const recipe = checkedRecipe(draft.get().recipe);
    const name = `${fileNameOf(recipe.title)}-set.json`;
    download(name, recipeText(recipe));
    told.textContent = `Saved as ${name}.`;
  };
  const see = element("a", {class: "set-see", href: "#"}, "See it as a student does");
  draft.observe(({recipe}) => {
    see.hidden = true;
    if (recipe.kinds.length > 0 && recipe.title.trim() !== "") void linkOfSet(recipe).then((link) => {
      if (draft.get().recipe !== recipe) return;
      see.href = link;
      see.hidden = false;
    });
  });
  return element("div", {class: "hand-out no-print"}, element("div", {class: "row"}, button("Copy a link for students", copy), button("Save the set", save), button("Open a set", () => input.click()), input, see), told, back);
}
