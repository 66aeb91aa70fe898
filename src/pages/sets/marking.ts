import type {Catalog} from "../../lib/catalog.js";
import {InputError} from "../../lib/errors.js";
import {markClass, type ClassMarks, type HandedIn} from "../../lib/practice/classMarks.js";
import {checkedRecipe} from "../../lib/practice/recipe.js";
import {studentsIn} from "../../lib/practice/student.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {takeDropped} from "../../components/shared/droppedFiles.js";
import type {DraftStore} from "./draft.js";

/** Largest answer file, bytes: some hundred times what the longest answers come to. */
const MOST_BYTES = 2_000_000;

/** Where answer files are dropped or chosen, and what they come to: marks, slips, difficulty, and files that were not marked. */
export function marking(draft: DraftStore, catalog: Catalog): HTMLElement {
  let files: HandedIn[] = [];
  let counting: ReadonlySet<string> = new Set();
  const told = element("p", {class: "control-help", role: "status"});
  const results = element("div", {class: "marking-results"});
  const input = element("input", {type: "file", accept: ".json,application/json", multiple: true, hidden: true, class: "answer-files", "aria-label": "Answer files"});
  const clear = button("Put all files aside", () => {
    files = [];
    counting = new Set();
    void show();
  }, {quiet: true});

  const take = async (chosen: readonly File[]) => {
    const read = await Promise.all(chosen.map(async (file): Promise<HandedIn> => ({fileName: file.name, text: file.size > MOST_BYTES ? "" : await file.text().catch(() => "")})));
    // A file that is dropped again is the newer one of its name.
    files = [...files.filter(({fileName}) => !read.some((each) => each.fileName === fileName)), ...distinct(read)];
    await show();
  };
  const show = async () => {
    clear.hidden = files.length === 0;
    if (files.length === 0) {
      told.textContent = "";
      results.replaceChildren();
      return;
    }
    try {
      const recipe = checkedRecipe(draft.get().recipe);
      const marks = markClass(recipe, files, catalog, expected(draft), counting);
      const {markTables} = await import("./markTables.js");
      told.textContent = wordsOf(files.length, marks);
      results.replaceChildren(markTables(marks, recipe, {
        count: (fileName) => {
          const student = marks.second.find((each) => each.fileName === fileName);
          counting = new Set([...[...counting].filter((name) => name !== student?.counts), fileName]);
          void show();
        },
        openSet: (other) => draft.open(other),
      }));
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      told.textContent = problem.message;
      results.replaceChildren();
    }
  };
  input.addEventListener("change", () => void take([...input.files ?? []]).then(() => (input.value = "")));
  const zone = element("div", {class: "drop-zone"}, button("Choose answer files", () => input.click()), input, element("span", {}, "or drop them here, all at once"), clear);
  takeDropped((dropped) => void take(dropped), zone);
  draft.observe(() => void show());
  return element("div", {class: "marking no-print"}, zone, told, results);
}

/** The class as far as its names can be read; what is wrong with them stands beside their box. */
function expected(draft: DraftStore): string[] {
  try {
    return studentsIn(draft.get().names);
  } catch (problem) {
    if (problem instanceof InputError) return [];
    throw problem;
  }
}

/** Files of one name from several folders are told apart. */
function distinct(files: readonly HandedIn[]): HandedIn[] {
  const seen = new Map<string, number>();
  return files.map(({fileName, text}) => {
    const turn = (seen.get(fileName) ?? 0) + 1;
    seen.set(fileName, turn);
    return {fileName: turn === 1 ? fileName : `${fileName} (${turn})`, text};
  });
}

function wordsOf(count: number, {students, refused, second, missing}: ClassMarks): string {
  const parts = [`${count === 1 ? "One file" : `${count} files`}: ${students.length === 1 ? "one student" : `${students.length} students`} marked`];
  if (refused.length > 0) parts.push(`${refused.length === 1 ? "one file" : `${refused.length} files`} not marked, see below`);
  if (second.length > 0) parts.push(`${second.length === 1 ? "one file is" : `${second.length} files are`} a student\u2019s second`);
  if (missing.length > 0) parts.push(`${missing.length === 1 ? "one" : missing.length} of the class handed in nothing`);
  return `${parts.join("; ")}.`;
}
