import {occupancyOf, type Catalog} from "../../lib/catalog.js";
import type {Room} from "../../lib/design/design.js";
import {valueAt} from "../../lib/design/plain.js";
import {numberControl, switchControl, textControl} from "../../components/controls.js";
import {follow} from "../../components/controls/follow.js";
import {element, uniqueId} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";

/**
 * A room's live load of the reader's own: a switch, and while it is on the load, whether it may be reduced, and what
 * asks for it. It begins with the table's load for the room's use.
 */
export function ownLoadControl(store: DesignStore, catalog: Catalog, index: number): HTMLElement {
  const path = `loads.rooms.${index}`;
  const room = () => valueAt(store.get(), path) as Room | undefined;
  const id = uniqueId("own");
  const input = element("input", {id, type: "checkbox", role: "switch", class: "switch"});
  const label = element("label", {for: id}, "a load of your own");
  const parts = element("div", {class: "own-load-parts"});
  input.addEventListener("change", () => {
    const now = room();
    if (!now) return;
    const {livePsf} = occupancyOf(catalog, now.occupancy);
    const {own: _, ...plain} = now;
    store.set(path, input.checked ? {...plain, own: {livePsf, reducible: true, reason: ""}} : plain);
  });
  const node = element("div", {class: "control own-load", "data-path": `${path}.own`}, element("span", {class: "switch-line"}, input, label), parts);
  let shown = false;
  follow(store, node, () => {
    const now = room();
    const own = now?.own !== undefined;
    input.checked = own;
    input.setAttribute("aria-label", `${now?.name ?? "Room"}: a load of your own`);
    if (own === shown) return;
    shown = own;
    parts.replaceChildren(...(own ? [
      numberControl(store, `${path}.own.livePsf`, {compact: true, label: "live load", max: 300}),
      switchControl(store, `${path}.own.reducible`, {compact: true, label: "may be reduced over large areas"}),
      textControl(store, `${path}.own.reason`, {compact: true, label: "why", placeholder: "what calls for it"}),
    ] : []));
  });
  return node;
}
