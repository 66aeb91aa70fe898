import type {Design} from "../../lib/design/design.js";
import {button, numberControl, textControl} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {rows} from "../../components/shared/rows.js";
import type {DesignStore} from "../../components/store.js";

type RoofLayer = Design["roof"]["layers"][number];

/** What lies on the roof's deck or hangs from it, layer by layer: weight, thickness and resistance to heat. */
export function roofLayersEditor(store: DesignStore): HTMLElement {
  const at = (index: number, name: string) => `roof.layers.${index}.${name}`;
  const editor = rows<RoofLayer>({
    store, path: "roof.layers", noun: "layer", nameOf: ({name}) => name,
    controls: (index) => [
      textControl(store, at(index, "name"), {compact: true, label: "layer"}),
      numberControl(store, at(index, "loadPsf"), {compact: true, label: "weight", max: 40}),
      numberControl(store, at(index, "thicknessIn"), {compact: true, label: "thickness", max: 12}),
      numberControl(store, at(index, "rValue"), {compact: true, label: "R-value", max: 60}),
    ],
  });
  const add = button("Add a layer", () => editor.add({name: "New layer", loadPsf: 1, thicknessIn: 0, rValue: 0}));
  const heads = element("p", {class: "roof-layer-heads", "aria-hidden": "true"}, ...["layer", "weight", "thickness", "R-value"].map((word) => element("span", {}, word)));
  return element("section", {class: "editor-part roof-layers", "aria-label": "Layers of the roof"}, heads, editor.node, element("div", {class: "editor-add"}, add));
}
