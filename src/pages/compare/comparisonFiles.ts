import {comparisonText, isComparison, readComparison, type ComparisonFile} from "../../lib/compare/comparisonFile.js";
import type {Design} from "../../lib/design/design.js";
import {parseDesign} from "../../lib/design/validate.js";
import {InputError} from "../../lib/errors.js";
import {button} from "../../components/controls.js";
import {sameDesign} from "../../lib/design/same.js";
import {element} from "../../components/dom.js";
import {takeDropped} from "../../components/shared/droppedFiles.js";
import type {PinStore, PinWords} from "../../components/pins.js";
import {fileNameOf, type DesignStore} from "../../components/store.js";
import {download} from "../../components/store/browser.js";

/** Pins a design and tells under which letter. */
export type PinIt = (design: Design, words: PinWords) => void;

/** The ways of a comparison to and from files: designs are pinned from files, chosen or dropped anywhere on the page; a whole comparison is saved, and read from one. */
export function comparisonFiles(store: DesignStore, pins: PinStore, pin: PinIt, say: (words: string) => void): HTMLElement[] {
  const read = async (files: readonly File[]) => {
    const told: string[] = [];
    for (const file of files) {
      try {
        const text = await file.text();
        if (isComparison(text)) told.push(...pinAll(readComparison(text), file.name, store, pins));
        else pin(parseDesign(text), {from: file.name});
      } catch (problem) {
        if (!(problem instanceof InputError)) throw problem;
        told.push(`${file.name} was not pinned. ${problem.message}`);
      }
    }
    if (told.length > 0) say(told.join(" "));
  };
  const input = element("input", {type: "file", accept: ".json,application/json", multiple: true, hidden: true, class: "pin-file", "aria-label": "Design files, or a saved comparison, to pin"});
  // The same file may be chosen again after it was mended.
  input.addEventListener("change", () => void read([...input.files ?? []]).then(() => (input.value = "")));
  takeDropped((files) => void read(files));
  const save = button("Save the comparison as a file", () => {
    const open = store.get();
    download(`${fileNameOf(open.name)}-comparison.json`, comparisonText({open, pins: pins.get().pins}));
  });
  pins.observe(({pins: now}) => (save.disabled = now.length === 0));
  return [element("span", {class: "pin-drop"}, button("Pin a file", () => input.click()), input, element("span", {class: "pin-drop-words"}, "or drop files on this page: designs, or a saved comparison")), save];
}

/** Pins what a comparison's file holds beside what is pinned already, the design that was open then too; tells what came of it. */
function pinAll({open, pins: saved}: ComparisonFile, fileName: string, store: DesignStore, pins: PinStore): string[] {
  const refused: string[] = [];
  let [fresh, known] = [0, 0];
  const then = {name: open.name, note: "", from: `the open design of ${fileName}`, design: open};
  for (const {name, note, from, design} of [...(sameDesign(open, store.get()) ? [] : [then]), ...saved]) {
    try {
      if (pins.pin(design, {name, note, from: from || fileName}).fresh) fresh += 1;
      else known += 1;
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      refused.push(`\u201c${name}\u201d was not pinned. ${problem.message}`);
    }
  }
  const told = `${fileName}: ${fresh === 1 ? "1 design" : `${fresh} designs`} pinned${known > 0 ? `, ${known} pinned already` : ""}.`;
  return [told, ...refused];
}
