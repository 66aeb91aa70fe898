import type {Catalog} from "../../lib/catalog.js";
import {PIN_LETTERS} from "../../lib/compare/pinLetters.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import type {Design} from "../../lib/design/design.js";
import {placedStrands} from "../../lib/prestress/layout.js";
import {feetAndInches, feetText} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import {thumbnail} from "../../components/drawings/crossSection.js";
import {momentsOf} from "../../components/moments.js";
import type {Pin} from "../../components/pins/keptPins.js";
import {pinDesign} from "../../components/pinned.js";
import {hrefOf} from "../../components/shared/pageList.js";
import type {DesignStore} from "../../components/store.js";

/** Keeps the open design under a name, and shows what was kept, the latest first, to go back to or to compare. */
export function momentsPanel(store: DesignStore, catalog: Catalog): HTMLElement {
  const moments = momentsOf(catalog);
  const id = uniqueId("moment");
  const name = element("input", {id, type: "text", maxlength: PIN_LETTERS.name, placeholder: "before the deeper tee"});
  const said = element("p", {class: "control-help", role: "status"});
  const keep = () => {
    const {pin, fresh} = moments.pin(store.get(), {name: name.value.trim() || store.get().name, from: "the reader"});
    name.value = "";
    say(fresh ? `Kept as \u201c${pin.name}\u201d.` : `This very design is kept already, as \u201c${pin.name}\u201d.`);
  };
  name.addEventListener("keydown", (event) => {
    if (event.key === "Enter") keep();
  });
  const list = element("ul", {class: "cards moments"});
  const unread = element("p", {class: "control-message", hidden: true});
  const say = (words: string, ...acts: Node[]) => said.replaceChildren(words, ...acts.flatMap((act) => [" ", act]));

  const card = (pin: Pin): HTMLElement => {
    const title = uniqueId("moment-name");
    const words = element("input", {id: title, type: "text", class: "moment-name", maxlength: PIN_LETTERS.name, value: pin.name, "aria-label": "Name of this moment"});
    words.addEventListener("change", () => moments.rename(pin.id, words.value));
    const back = button("Go back to it", () => {
      store.replace(pin.design);
      say(`\u201c${pin.name}\u201d is open. Undo leads back to what was open before.`);
    });
    const compare = button("Compare", () => {
      pinDesign(pin.design, pin.name, "a moment of a design");
      say(`\u201c${pin.name}\u201d is pinned beside the open design.`, element("a", {href: hrefOf("compare")}, "Compare them."));
    }, {quiet: true});
    const remove = button("Remove", () => {
      moments.remove(pin.id);
      const undo = button("Bring it back", () => {
        moments.bringBack();
        say("It is back.");
      }, {quiet: true});
      say(`\u201c${pin.name}\u201d is removed.`, undo);
      undo.focus();
    }, {quiet: true});
    for (const act of [back, compare, remove]) act.setAttribute("aria-describedby", title);
    return element("li", {class: "card"},
      element("div", {class: "card-drawing", "aria-hidden": "true"}, picture(pin.design, catalog)), words,
      element("p", {class: "card-facts"}, `${when(pin.at)}. ${facts(pin.design)}`), element("div", {class: "row"}, back, compare, remove));
  };

  const cards = new Map<Pin, HTMLElement>();
  moments.observe(({pins, broken, unkept}) => {
    const latest = [...pins].reverse();
    for (const pin of cards.keys()) if (!pins.includes(pin)) cards.delete(pin);
    for (const pin of latest) if (!cards.has(pin)) cards.set(pin, card(pin));
    list.replaceChildren(...latest.map((pin) => cards.get(pin) as HTMLElement));
    const lost = [
      ...(broken.length > 0 ? [`${broken.length === 1 ? "One moment" : `${broken.length} moments`} cannot be read by this kit and ${broken.length === 1 ? "is" : "are"} left as ${broken.length === 1 ? "it is" : "they are"}. ${broken[0]?.message ?? ""}`] : []),
      ...(unkept.size > 0 ? [`This browser has no room for ${unkept.size === 1 ? "one of them, which lasts" : `${unkept.size} of them, which last`} as long as this page: save the design as a file.`] : []),
    ];
    unread.hidden = lost.length === 0;
    unread.textContent = lost.join(" ");
  });
  return element("div", {},
    element("div", {class: "control text"}, element("label", {for: id, class: "control-label"}, "Name of this moment"), element("div", {class: "row moment-keep"}, name, button("Keep this moment", keep))),
    said, unread, list);
}

function picture(design: Design, catalog: Catalog): SVGElement {
  const member = deckMember(design, catalog);
  return thumbnail(member.shape, placedStrands(member.shape, member.layout, 0.5), design.deck.toppingIn, 54, 230);
}

function facts({bay, deck, story}: Design): string {
  const topping = deck.toppingIn > 0 ? `+${Number(deck.toppingIn.toFixed(2))}` : "";
  return `${feetText(bay.spanFt)} span, ${deck.member}${topping} ${deck.pattern}, ${feetAndInches(story.floorToFloorFt * 12)} floor to floor`;
}

function when(at: number): string {
  return new Date(at).toLocaleString("en-US", {month: "short", day: "numeric", hour: "numeric", minute: "2-digit"});
}
