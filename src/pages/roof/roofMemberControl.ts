import type {Catalog} from "../../lib/catalog.js";
import {changesForMember, type Changes} from "../../lib/deck/choose.js";
import type {Design} from "../../lib/design/design.js";
import {roofDesign} from "../../lib/roof/roofDesign.js";
import {follow} from "../../components/controls/follow.js";
import {messageFor} from "../../components/controls/frame.js";
import {element, uniqueId} from "../../components/dom.js";
import {memberList} from "../../components/shared/deckControls.js";
import type {DesignStore} from "../../components/store.js";

/** Exchanges the roof's member; pattern and topping come along as far as the new member can hold them. */
export function roofMemberControl(store: DesignStore, catalog: Catalog): HTMLElement {
  const id = uniqueId("roof-member");
  const select = memberList(catalog, {id});
  const message = messageFor([select]);
  const show = (design: Design) => {
    select.value = design.roof.member;
  };
  select.addEventListener("change", () => {
    if (!message.attempt(() => store.setMany(ofRoof(changesForMember(roofDesign(store.get(), 0), catalog, select.value))))) show(store.get());
  });
  const node = element("div", {class: "control choice", "data-path": "roof.member"}, element("label", {for: id, class: "control-label"}, "Roof member"), select, message.node);
  follow(store, node, (design) => {
    show(design);
    message.clear();
  });
  return node;
}

/** Changes of a floor's deck as the roof's; a changed shape belongs to the floor's member alone. */
function ofRoof(changes: Changes): Changes {
  return Object.fromEntries(Object.entries(changes).filter(([path]) => path !== "deck.dimensions").map(([path, value]) => [path.replace("deck.", "roof."), value]));
}

