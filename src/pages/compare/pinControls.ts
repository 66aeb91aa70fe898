import {stepWords} from "../../lib/compare/inputs.js";
import type {Design} from "../../lib/design/design.js";
import {button} from "../../components/controls.js";
import {letterOf} from "../../components/compare/view.js";
import {element, uniqueId} from "../../components/dom.js";
import type {Seed} from "../../components/notebook.js";
import type {PinStore, PinWords} from "../../components/pins.js";
import {afterPaint} from "../../components/shared/deckSearch.js";
import type {DesignStore} from "../../components/store.js";
import {comparisonFiles, type PinIt} from "./comparisonFiles.js";

/** The ways to pin a design: the open one, a starter, an earlier or undone moment, a file. */
export interface PinControls {
  readonly node: HTMLElement;
  /** Tells what has just happened, for those who listen too; a button beside it may take it back. */
  say(words: string, act?: HTMLButtonElement): void;
}

/** The buttons and lists, with a line below them that tells what came of it. */
export function pinControls(store: DesignStore, pins: PinStore, seeds: readonly Seed[]): PinControls {
  const said = element("p", {class: "pin-said", role: "status"});
  const say = (words: string, act?: HTMLButtonElement) => said.replaceChildren(...(words ? [words] : []), ...(act ? [" ", act] : []));
  const pin = (design: Design, words: PinWords) => {
    const {pin: {id, name}, fresh} = pins.pin(design, words);
    const letter = letterOf(pins.get().pins.findIndex((one) => one.id === id));
    say(fresh ? `Pinned as ${letter}: \u201c${name}\u201d.` : `This design is pinned already, as ${letter}: \u201c${name}\u201d.`);
  };
  const starters = pickOne("A starter", "Pin this starter", (value) => {
    const seed = seeds.find(({id}) => id === value);
    if (seed) pin(seed.design, {from: "a starter"});
  });
  starters.fill(seeds.map(({id, design}) => ({value: id, label: design.name})));
  const moments = momentPicker(store, pin);
  const node = element("div", {class: "pin-controls control"},
    element("div", {class: "row"}, button("Pin the open design", () => pin(store.get(), {from: "the open design, as it stood"})), ...comparisonFiles(store, pins, pin, say)),
    element("div", {class: "pin-picks"}, starters.node, moments), said);
  return {node, say};
}

interface Option {
  readonly value: string;
  readonly label: string;
}

/** A list with a button that takes what is chosen in it. */
function pickOne(label: string, act: string, take: (value: string) => void): {readonly node: HTMLElement; fill(options: readonly Option[]): void} {
  const id = uniqueId("pin-pick");
  const select = element("select", {id});
  const press = button(act, () => take(select.value));
  let shown = "";
  return {
    node: element("div", {class: "pin-pick"}, element("label", {for: id, class: "control-label"}, label), element("div", {class: "row"}, select, press)),
    fill(options) {
      const key = JSON.stringify(options);
      if (key === shown) return;
      shown = key;
      const before = select.value;
      select.replaceChildren(...options.map(({value, label: words}) => element("option", {value}, words)));
      if (options.some(({value}) => value === before)) select.value = before;
      select.disabled = press.disabled = options.length === 0 || options[0]?.value === "";
    },
  };
}

/** Earlier moments of the open design, the nearest first, and those that were undone. */
function momentPicker(store: DesignStore, pin: PinIt): HTMLElement {
  const known = new WeakMap<Design, {readonly to: Design; readonly words: string}>();
  const step = (from: Design, to: Design) => {
    const before = known.get(from);
    if (before?.to === to) return before.words;
    const words = stepWords(from, to);
    known.set(from, {to, words});
    return words;
  };
  const at = (value: string): Design | undefined => {
    const {past, future} = store.steps();
    const steps = Number(value);
    return steps < 0 ? past[past.length + steps] : future[steps - 1];
  };
  const stepsText = (count: number) => `${count} ${count === 1 ? "step" : "steps"}`;
  const pick = pickOne("An earlier moment of the open design", "Pin this moment", (value) => {
    const design = at(value);
    const steps = Math.abs(Number(value));
    if (design) pin(design, {name: `${design.name}, ${stepsText(steps)} ${Number(value) < 0 ? "before" : "undone"}`, from: "an earlier moment"});
  });
  afterPaint(store)(() => {
    const {past, present, future} = store.steps();
    const backward = [...past, present];
    const options = [
      ...past.map((design, i) => ({value: String(i - past.length), label: `${stepsText(past.length - i)} back: before ${step(design, backward[i + 1] as Design)}`})).reverse(),
      ...future.map((design, i) => ({value: String(i + 1), label: `${stepsText(i + 1)} undone: after ${step(i === 0 ? present : future[i - 1] as Design, design)}`})),
    ];
    pick.fill(options.length > 0 ? options : [{value: "", label: "nothing has been changed yet"}]);
  });
  return pick.node;
}
