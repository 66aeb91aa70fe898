import type {Catalog, DeckMemberRow} from "../../lib/catalog.js";
import {changesForMember} from "../../lib/deck/choose.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import {usualPatterns} from "../../lib/deck/table.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {choiceControl, textControl} from "../controls.js";
import {follow} from "../controls/follow.js";
import {helpFor, messageFor} from "../controls/frame.js";
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

/** The strand pattern: the member's usual ones as a list, and any other as a text. */
export function patternControl(store: DesignStore, catalog: Catalog): HTMLElement {
  const list = choiceControl(store, "deck.pattern", {
    help: "Strands, diameter in sixteenths of an inch, S straight or D depressed.",
    options: ({deck}) => {
      const row = deckRow(catalog, deck.member);
      const {sixteenths} = parsePattern(deck.pattern);
      const patterns = [...new Set([...usualPatterns(row), ...usualPatterns(row, sixteenths)])];
      return patterns.map((value) => ({value, label: `${value}: ${patternWords(value)}`}));
    },
  });
  return element("div", {}, list, element("details", {class: "fold"}, element("summary", {}, "Another pattern"), textControl(store, "deck.pattern")));
}

/** Every dimension of the member's cross-section, each free to differ from the catalog's. */
export function dimensionControls(store: DesignStore, catalog: Catalog): HTMLElement {
  const list = element("div", {class: "dimension-list"});
  const message = messageFor([list]);
  const reset = element("button", {type: "button", class: "button quiet"}, "Back to the catalog's section");
  reset.addEventListener("click", () => message.attempt(() => store.setMany({"deck.dimensions": undefined})));
  const node = element("div", {class: "control dimensions"}, list, message.node, reset);
  let boxes = new Map<string, HTMLInputElement>();
  let shown = "";
  const change = (name: string, box: HTMLInputElement) => {
    const {deck} = store.get();
    const own = deckRow(catalog, deck.member).dimensions;
    const value = box.value.trim() === "" ? NaN : Number(box.value);
    const entries = Object.entries({...deck.dimensions, [name]: Number.isNaN(value) ? (own[name] as number) : value}).filter(([key, one]) => one !== own[key]);
    message.attempt(() => store.setMany({"deck.dimensions": entries.length > 0 ? Object.fromEntries(entries) : undefined}));
  };
  const rebuild = (row: DeckMemberRow) => {
    boxes = new Map();
    list.replaceChildren(...Object.keys(row.dimensions).map((name) => {
      const id = uniqueId("dimension");
      const box = element("input", {id, type: "text", inputmode: "decimal", autocomplete: "off", class: "number-box"});
      box.addEventListener("change", () => change(name, box));
      boxes.set(name, box);
      return element("div", {class: "dimension"}, element("label", {for: id}, dimensionWords(name)), box, element("span", {class: "unit"}, name === "voidCount" ? "" : "in"));
    }));
  };
  follow(store, node, ({deck}) => {
    const row = deckRow(catalog, deck.member);
    if (row.designation !== shown) rebuild(row);
    shown = row.designation;
    reset.hidden = !deck.dimensions;
    message.clear();
    for (const [name, box] of boxes) box.value = String(deck.dimensions?.[name] ?? row.dimensions[name]);
  });
  return node;
}
