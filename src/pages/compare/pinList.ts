import {countStandings} from "../../lib/compare/difference.js";
import {PIN_LETTERS} from "../../lib/compare/pinLetters.js";
import {sameDesign} from "../../lib/design/same.js";
import {button} from "../../components/controls.js";
import {comparedOf, type CompareView, type Entry} from "../../components/compare/view.js";
import {element, uniqueId} from "../../components/dom.js";
import type {PinStore} from "../../components/pins.js";
import {fileNameOf, type DesignStore} from "../../components/store.js";
import {download} from "../../components/store/browser.js";
import type {PinControls} from "./pinControls.js";
import {standingsOf} from "../../lib/compare/standings.js";
import {tallySentence} from "../../components/compare/words.js";

/** The pins as cards: name, note, what came of it, and what can be done with it. Cards stay while their words change, so that one can write in them. */
export function pinList(store: DesignStore, pins: PinStore, {say}: PinControls): {readonly node: HTMLElement; show(view: CompareView): void} {
  const list = element("ol", {class: "pin-cards", "aria-label": "Pinned designs"});
  const none = element("p", {class: "note"}, "Nothing is pinned yet. Pin the open design before you change it, and each change can be held against what you had.");
  const broken = element("div", {});
  const cards = new Map<string, Card>();
  const remove = (id: string) => {
    const index = pins.get().pins.findIndex((pin) => pin.id === id);
    const name = pins.get().pins[index]?.name ?? "";
    pins.remove(id);
    const back = button("Bring it back", () => {
      const pin = pins.bringBack();
      if (!pin) return;
      say(`\u201c${pin.name}\u201d is pinned again.`);
      cards.get(pin.id)?.node.querySelector("input")?.focus();
    }, {quiet: true});
    say(`\u201c${name}\u201d is no longer pinned.`, back);
    back.focus({preventScroll: true});
  };
  const put = ({name, pin}: Entry) => {
    if (!pin) return;
    store.replace(pin.design);
    say(`\u201c${name}\u201d is now the open design. Undo brings back the one before.`);
  };
  return {
    node: element("div", {}, list, none, broken),
    show(view) {
      for (const id of cards.keys()) if (!view.pinned.some(({pin}) => pin?.id === id)) cards.delete(id);
      const nodes = view.pinned.map((entry) => {
        const id = entry.pin?.id as string;
        const card = cards.get(id) ?? pinCard(pins, id, () => remove(id), put);
        cards.set(id, card);
        card.show(entry, view, pins.get().unkept.has(id));
        return card.node;
      });
      // Taking a node out and in again would take the cursor from one who writes in it.
      if (nodes.length !== list.children.length || nodes.some((node, i) => list.children[i] !== node)) list.replaceChildren(...nodes);
      none.hidden = nodes.length > 0;
      const unread = pins.get().broken;
      broken.replaceChildren(...unread.map(({id, text, message}) => element("div", {class: "note pin-broken"},
        element("p", {}, `A design that was pinned in this browser cannot be read. ${message}`),
        element("div", {class: "row"}, button("Save it as a file", () => download(`pinned-${id}.json`, text), {quiet: true}), button("Remove it", () => pins.remove(id), {quiet: true})))));
    },
  };
}

interface Card {
  readonly node: HTMLElement;
  show(entry: Entry, view: CompareView, unkept: boolean): void;
}

function pinCard(pins: PinStore, id: string, remove: () => void, put: (entry: Entry) => void): Card {
  const [nameId, noteId] = [uniqueId("pin-name"), uniqueId("pin-note")];
  const letter = element("span", {class: "pin-letter", "aria-hidden": "true"});
  const nameLabel = element("label", {for: nameId, class: "for-listeners"});
  const name = element("input", {id: nameId, type: "text", class: "pin-name", maxlength: PIN_LETTERS.name, autocomplete: "off"});
  const facts = element("p", {class: "pin-facts"});
  const outcome = element("div", {class: "pin-outcome"});
  const note = element("textarea", {id: noteId, rows: 2, maxlength: PIN_LETTERS.note, placeholder: "Why it was not taken, or might be."});
  const noteLabel = element("label", {for: noteId, class: "control-label"}, "Note");
  let current: Entry;
  let told: readonly unknown[] = [];
  // A name is taken when its box is left; a note as it is written.
  name.addEventListener("change", () => {
    pins.rename(id, name.value);
    name.value = pins.get().pins.find((pin) => pin.id === id)?.name ?? name.value;
  });
  note.addEventListener("input", () => pins.note(id, note.value));
  const take = button("Put it into the open design", () => put(current), {quiet: true});
  const drop = button("Remove", remove, {quiet: true});
  const unkeptLine = element("div", {class: "note", hidden: true}, element("p", {}, "This browser has no room left to keep it: it is lost when the page closes."),
    button("Save it as a file", () => download(`${fileNameOf(current.name)}.json`, `${JSON.stringify(current.design, null, 2)}\n`), {quiet: true}));
  const node = element("li", {class: "pin-card", "data-pin": id},
    element("div", {class: "pin-head"}, letter, nameLabel, name), facts, outcome,
    element("div", {class: "control text compact pin-note"}, noteLabel, note), unkeptLine, element("div", {class: "row pin-acts"}, take, drop));
  return {
    node,
    show(entry, view, unkept) {
      current = entry;
      const {pin, found, letter: sign} = entry;
      if (note.value !== (pin?.note ?? "")) note.value = pin?.note ?? "";
      const same = sameDesign(entry.design, view.open.design);
      // A note that is being written changes nothing else of its card.
      const from = [sign, entry.name, found, view.open.found, same, unkept];
      if (from.length === told.length && from.every((one, i) => one === told[i])) return;
      told = from;
      letter.textContent = sign;
      nameLabel.textContent = `Name of pinned design ${sign}`;
      note.setAttribute("aria-label", `Note on pinned design ${sign}`);
      if (document.activeElement !== name) name.value = entry.name;
      name.title = entry.name;
      const compared = comparedOf(entry);
      facts.textContent = [compared?.deck, pin?.from && `from ${pin.from}`].filter(Boolean).join(", ");
      outcome.replaceChildren(...(compared ? outcomeOf(entry, view) : [element("p", {}, found && "problem" in found ? `It cannot be computed: ${found.problem}` : "Being computed \u2026")]));
      take.disabled = same;
      take.textContent = same ? "It is the open design" : "Put it into the open design";
      take.setAttribute("aria-label", `${take.textContent}: ${sign}`);
      drop.setAttribute("aria-label", `Remove ${sign}`);
      unkeptLine.hidden = !unkept;
    },
  };
}

/** How the design fares: its checks, and how many measures are better or worse than the open design's. */
function outcomeOf(entry: Entry, {open}: CompareView): Node[] {
  const [own, base] = [comparedOf(entry), comparedOf(open)];
  if (!own) return [];
  const {fails} = own;
  return [
    ...(base ? [element("p", {}, tallySentence(countStandings(standingsOf(base.measures, own.measures))))] : []),
    element("p", {"data-verdict": fails.length > 0 ? "fails" : "ok"}, fails.length === 0 ? "No check fails." : `${fails.length === 1 ? "One check fails" : `${fails.length} checks fail`}: ${listed(fails)}.`),
  ];
}

/** Names that a card lists before it counts the rest. */
const LISTED = 3;

function listed(labels: readonly string[]): string {
  const left = labels.length - LISTED;
  return `${labels.slice(0, LISTED).join("; ")}${left > 0 ? `; and ${left} more` : ""}`;
}

