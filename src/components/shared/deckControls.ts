import type {Catalog, DeckMemberRow} from "../../lib/catalog.js";
import {changesForMember} from "../../lib/deck/choose.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import {usualPatterns} from "../../lib/deck/table.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {button, choiceControl, textControl} from "../controls.js";
import {follow} from "../controls/follow.js";
import {helpFor, messageFor} from "../controls/frame.js";
import {numberBox, type NumberBox} from "../controls/numberBox.js";
import {element, uniqueId} from "../dom.js";
import type {DesignStore} from "../store.js";
import {KINDS, dimensionWords, patternWords} from "./deckWords.js";

/** The catalog's members as a list, kind by kind. */
export function memberList(catalog: Catalog, attributes: {id: string; "aria-describedby"?: string}): HTMLSelectElement {
  return element("select", attributes, ...KINDS.map(([use, words]) => element(
    "optgroup", {label: words},
    ...catalog.deckMembers.filter((row) => row.use === use).map((row) => element("option", {value: row.designation}, memberName(row))),
  )));
}

function memberName({designation, dimensions, family}: DeckMemberRow): string {
  return `${designation}: ${(dimensions["widthIn"] ?? 0) / 12} ft wide, ${dimensions["depthIn"]} in deep${family === "flat slab" ? ", solid" : ""}`;
}

/** Exchanges the deck member; pattern and topping come along as far as the new member can hold them. */
export function memberControl(store: DesignStore, catalog: Catalog): HTMLElement {
  const id = uniqueId("member");
  const help = helpFor("Width in feet, family, depth in inches: a 10DT24 is a double tee 10 ft wide and 24 in deep.");
  const select = memberList(catalog, {id, "aria-describedby": help.id});
  const message = messageFor([select]);
  const show = () => {
    select.value = store.get().deck.member;
  };
  select.addEventListener("change", () => {
    if (!message.attempt(() => store.setMany(changesForMember(store.get(), catalog, select.value)))) show();
  });
  const node = element("div", {class: "control choice", "data-path": "deck.member"},
    element("label", {for: id, class: "control-label"}, "Deck member"), select, message.node, help.node);
  follow(store, node, () => {
    show();
    message.clear();
  });
  return node;
}

/** The strand pattern of the floor's member or the roof's: its usual ones as a list, and any other as a text. */
export function patternControl(store: DesignStore, catalog: Catalog, of: "deck" | "roof" = "deck"): HTMLElement {
  const path = `${of}.pattern`;
  const list = choiceControl(store, path, {
    help: "Strands, diameter in sixteenths of an inch, S straight or D depressed.",
    options: (design) => {
      const row = deckRow(catalog, design[of].member);
      const {sixteenths} = parsePattern(design[of].pattern);
      const patterns = [...new Set([...usualPatterns(row), ...usualPatterns(row, sixteenths)])];
      return patterns.map((value) => ({value, label: `${value}: ${patternWords(value)}`}));
    },
  });
  return element("div", {}, list, element("details", {class: "fold"}, element("summary", {}, "Another pattern"), textControl(store, path)));
}

/** Every dimension of the member's cross-section, each free to differ from the catalog's. */
export function dimensionControls(store: DesignStore, catalog: Catalog): HTMLElement {
  const list = element("div", {class: "dimension-list"});
  const reset = button("Back to the catalog's section", () => store.setMany({"deck.dimensions": undefined}), {quiet: true});
  const node = element("div", {class: "control dimensions"}, list, element("p", {class: "row"}, reset));
  let boxes: readonly NumberBox[] = [];
  let shown = "";
  follow(store, node, ({deck}) => {
    const row = deckRow(catalog, deck.member);
    if (row.designation !== shown) {
      boxes = Object.keys(row.dimensions).map((name) => dimensionBox(store, row, name));
      list.replaceChildren(...boxes.map(({input, message}, i) => {
        const name = Object.keys(row.dimensions)[i] as string;
        return element("div", {class: "dimension"}, element("label", {for: input.id}, dimensionWords(name)), input, element("span", {class: "unit"}, unitOf(name)), message.node);
      }));
    }
    shown = row.designation;
    reset.hidden = !deck.dimensions;
    for (const {show} of boxes) show();
  });
  return node;
}

const unitOf = (name: string) => (name === "voidCount" ? "" : "in");

/** The box of one dimension; empty, or with the catalog's own value, it does not differ from the catalog. */
function dimensionBox(store: DesignStore, {dimensions: own}: DeckMemberRow, name: string): NumberBox {
  const usual = own[name] as number;
  return numberBox({
    rule: {path: `deck.dimensions.${name}`, label: dimensionWords(name), unit: unitOf(name), min: 0, max: 240, step: name === "voidCount" ? 1 : 0.25},
    get: () => store.get().deck.dimensions?.[name] ?? usual,
    usual: () => usual,
    set(value) {
      const entries = Object.entries({...store.get().deck.dimensions, [name]: value ?? usual}).filter(([key, one]) => one !== own[key]);
      store.setMany({"deck.dimensions": entries.length > 0 ? Object.fromEntries(entries) : undefined});
    },
  });
}
