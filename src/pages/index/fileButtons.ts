import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";

/** Opens a design file, saves the open design as one, and copies a link that holds it. */
export function fileButtons(store: DesignStore): HTMLElement {
  const file = element("input", {type: "file", accept: ".json,application/json", hidden: true, "aria-label": "Design file"});
  file.addEventListener("change", () => {
    const chosen = file.files?.[0];
    // The same file may be chosen again after it was mended.
    if (chosen) void store.openFile(chosen).then(() => (file.value = ""));
  });
  return element("div", {class: "row no-print"}, button("Save as a file", store.saveFile), button("Open a file", () => file.click()),
    button("Copy a link", () => void import("../../components/share/share.js").then(({copyLink}) => copyLink(store))), file);
}
