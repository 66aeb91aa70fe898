import type {Catalog, Occupancy} from "../../lib/catalog.js";
import type {Room} from "../../lib/design/design.js";
import {valueAt} from "../../lib/design/plain.js";
import {button, textControl} from "../../components/controls.js";
import {follow} from "../../components/controls/follow.js";
import {messageFor} from "../../components/controls/frame.js";
import {element, uniqueId} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";
import {ownLoadControl} from "./ownLoad.js";
import {rows} from "../../components/shared/rows.js";

/** The rooms of the plan: what each is called, what it is used for with its live load, and a load of one's own. */
export function roomsEditor(store: DesignStore, catalog: Catalog): HTMLElement {
  const editor = rows<Room>({
    store, path: "loads.rooms", noun: "room", nameOf: (room) => room.name,
    controls: (index) => [
      textControl(store, `loads.rooms.${index}.name`, {compact: true, label: "room"}),
      occupancyControl(store, catalog, `loads.rooms.${index}.occupancy`),
      ownLoadControl(store, catalog, index),
    ],
  });
  const first = catalog.occupancies[0] as Occupancy;
  const add = button("Add a room", () => editor.add({name: "New room", occupancy: first.id}));
  return element("section", {class: "editor-part", "aria-label": "Rooms"}, editor.node, add);
}

/** The occupancies in their groups, each with its load. */
function occupancyControl(store: DesignStore, catalog: Catalog, path: string): HTMLElement {
  const id = uniqueId("occupancy");
  const groups = [...new Set(catalog.occupancies.map((row) => row.group))];
  const select = element(
    "select",
    {id},
    ...groups.map((group) => element("optgroup", {label: group}, ...catalog.occupancies.filter((row) => row.group === group).map(choice))),
  );
  const message = messageFor([select]);
  const show = () => {
    const value = valueAt(store.get(), path);
    if (typeof value === "string") select.value = value;
  };
  select.addEventListener("change", () => {
    if (!message.attempt(() => store.set(path, select.value))) show();
  });
  const node = element(
    "div",
    {class: "control choice compact", "data-path": path},
    element("label", {for: id, class: "for-listeners"}, "Used as"),
    select,
    message.node,
  );
  follow(store, node, () => {
    show();
    message.clear();
  });
  return node;
}

function choice(row: Occupancy): HTMLElement {
  return element("option", {value: row.id}, `${row.name}: ${row.livePsf} psf`);
}
