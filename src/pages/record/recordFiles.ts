import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {downloadBlob} from "../../components/store/browser.js";
import {fileNameOf, type DesignStore} from "../../components/store.js";
import type {RecordPaper} from "./recordPaper.js";

/** Prints the record in the form that is chosen, or hands it over as one HTML file or as Markdown; and the design file. */
export function recordFiles(store: DesignStore, paper: RecordPaper): HTMLElement {
  const name = () => `${fileNameOf(store.get().name)}-record`;
  return element("div", {class: "row no-print"},
    button("Print the record", async () => {
      await paper.complete();
      window.print();
    }),
    button("Save as HTML", async () => {
      await paper.complete();
      const {htmlFile} = await import("../../components/share/htmlFile.js");
      downloadBlob(`${name()}.html`, new Blob([await htmlFile(paper.node, `${store.get().name}: record`)], {type: "text/html"}));
    }, {quiet: true}),
    button("Save as Markdown", async () => {
      await paper.complete();
      const {markdownOf} = await import("../../components/share/markdown.js");
      downloadBlob(`${name()}.md`, new Blob([markdownOf(paper.node)], {type: "text/markdown"}));
    }, {quiet: true}),
    button("Save the design file", store.saveFile, {quiet: true}));
}
