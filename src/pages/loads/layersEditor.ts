import type {Catalog} from "../../lib/catalog.js";
import type {Layer} from "../../lib/design/design.js";
import {button, numberControl, textControl} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";
import {rows} from "../../components/shared/rows.js";

/** What lies on the deck or hangs from it, layer by layer; common ones may be picked, and any other written in. */
export function layersEditor(store: DesignStore, catalog: Catalog): HTMLElement {
  const editor = rows<Layer>({
    store, path: "loads.layers", noun: "layer", nameOf: (layer) => layer.name,
    controls: (index) => [
      textControl(store, `loads.layers.${index}.name`, {compact: true, label: "layer"}),
      numberControl(store, `loads.layers.${index}.loadPsf`, {compact: true, label: "weight", max: 40}),
    ],
  });
  const id = uniqueId("layer");
  const select = element(
    "select",
    {id},
    element("option", {value: ""}, "Add a layer…"),
    ...catalog.layers.map((layer, index) => element("option", {value: String(index)}, `${layer.name}: ${layer.loadPsf} psf`)),
    element("option", {value: "own"}, "Another, of your own"),
  );
  const add = () => {
    const picked = catalog.layers[Number(select.value)];
    if (select.value === "own") editor.add({name: "New layer", loadPsf: 1});
    else if (picked) editor.add({name: picked.name, loadPsf: picked.loadPsf});
    select.value = "";
  };
  const addButton = button("Add", () => {
    if (select.value === "") select.value = "own";
    add();
  });
  const picker = element("div", {class: "control choice compact editor-add"}, element("label", {for: id, class: "for-listeners"}, "Add a layer"), select, addButton);
  return element("section", {class: "editor-part", "aria-label": "Layers"}, editor.node, picker);
}
