import type {ClassFile, NotTaken} from "../../lib/classroom/classFiles.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {takeDropped} from "../../components/shared/droppedFiles.js";

/** Files are chosen, or dropped anywhere on the page; those that could not be taken are named. */
export function intake(take: (files: readonly ClassFile[]) => void, others: readonly HTMLElement[]): {readonly node: HTMLElement; show(refused: readonly NotTaken[]): void} {
  const reading = element("p", {role: "status", class: "class-said"});
  const refusedList = element("ul", {class: "class-refused"});
  const refusedPart = element("div", {class: "note", hidden: true, role: "status"}, element("p", {}), refusedList);
  const read = async (files: readonly File[]) => {
    if (files.length === 0) return;
    reading.textContent = `Reading ${files.length === 1 ? "a file" : `${files.length} files`} \u2026`;
    // A file that cannot be read, as one that was moved meanwhile, is an empty text here, which is named as one.
    const texts = await Promise.all(files.map(async (file): Promise<ClassFile> => ({fileName: file.name, text: await file.text().catch(() => "")})));
    take(texts);
    reading.textContent = "";
  };
  const input = element("input", {type: "file", accept: ".json,application/json", multiple: true, hidden: true, class: "class-files", "aria-label": "Design files of the class"});
  // The same files may be chosen again after they were mended.
  input.addEventListener("change", () => void read([...input.files ?? []]).then(() => (input.value = "")));
  takeDropped((files) => void read(files));
  return {
    node: element("div", {class: "class-intake"}, element("div", {class: "row"}, button("Choose design files", () => input.click()), input, element("span", {class: "pin-drop-words"}, "or drop up to 200 anywhere on this page"), ...others), reading, refusedPart),
    show(refused) {
      refusedPart.hidden = refused.length === 0;
      (refusedPart.firstElementChild as HTMLElement).textContent = refused.length === 1 ? "One file was not taken:" : `${refused.length} files were not taken:`;
      refusedList.replaceChildren(...refused.map(({fileName, problem}) => element("li", {}, element("strong", {}, fileName), ` ${problem}`)));
    },
  };
}
