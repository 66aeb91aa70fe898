import {changesOf, type Change} from "../../lib/reader/turned.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {isNumbers, turnNumbers, unitOfCell} from "./cells.js";

/** Attributes that are read out or shown. */
export const NAMES = ["aria-label", "title", "placeholder", "aria-valuetext", "aria-description"];
/** What keeps its words: code, equations, and what says so itself. */
export const AS_IS = "[data-units=\"as is\"], math, script, style, code, pre, noscript, textarea";
/** Elements that a line of text runs through. */
const INLINE = new Set(["A", "ABBR", "B", "BDI", "CITE", "EM", "I", "KBD", "MARK", "OBSERVABLEHQ-LOADING", "Q", "S", "SMALL", "SPAN", "STRONG", "SUB", "SUP", "U", "VAR"]);
const isInline = (node: Element): boolean => INLINE.has(node.tagName) || node.classList.contains("live");

/** What a text node said in US units, and what was written in its place. */
interface Kept {
  readonly us: string;
  readonly shown: string;
}

const kept = new WeakMap<Text, Kept>();

/** A text node's words in US units. */
export function usText(node: Text): string {
  const before = kept.get(node);
  return before?.shown === node.data ? before.us : node.data;
}

/** An element's words in US units. */
export function usWords(node: Node): string {
  if (node.nodeType === Node.TEXT_NODE) return usText(node as Text);
  return [...node.childNodes].map(usWords).join("");
}

/** The element whose lines a node's text belongs to. */
export function blockOf(node: Node): Element | undefined {
  let up = node instanceof Element ? node : node.parentElement;
  while (up && isInline(up) && up.parentElement) up = up.parentElement;
  return up ?? undefined;
}

/** Writes the lines of an element in the reader's units; `deep` with those of all within it. */
export function turnRuns(root: Element, system: UnitSystem, deep: boolean): void {
  if (root.closest(AS_IS)) return;
  let run: Text[] = [];
  const end = () => {
    if (run.length > 0) turnRun(run, system);
    run = [];
  };
  const walk = (node: Node) => {
    if (node.nodeType === Node.TEXT_NODE) {
      run.push(node as Text);
      return;
    }
    if (!(node instanceof Element)) return;
    if (node !== root && isInline(node) && !node.matches(AS_IS)) {
      for (const child of node.childNodes) walk(child);
      return;
    }
    end();
    if (!node.matches(AS_IS) && (deep || node === root)) for (const child of node.childNodes) walk(child);
    end();
  };
  // A root within a line is written with its line.
  if (isInline(root)) {
    for (const child of root.childNodes) if (deep && child instanceof Element) turnRuns(child, system, true);
    const block = blockOf(root);
    if (block && block !== root) turnRuns(block, system, false);
    return;
  }
  walk(root);
  end();
}

const WORD = /[\w\u00b2\u00b3\u2074"'%]/;

/** Below this width of the window, px, a drawing has no room for two figures at each dimension. */
const ROOM_FOR_BOTH_PX = 640;

/** The system in which drawings are lettered: US units alone where both would leave no room for what is drawn. */
export function lettering(system: UnitSystem): UnitSystem {
  return system === "both" && window.innerWidth < ROOM_FOR_BOTH_PX ? "US" : system;
}

function turnRun(nodes: readonly Text[], chosen: UnitSystem): void {
  const system = nodes[0]?.parentElement?.closest("svg") ? lettering(chosen) : chosen;
  const texts = nodes.map(usText);
  let whole = "";
  const starts = texts.map((text, i) => {
    // Two words of a line that no space parts stand apart by style alone.
    if (i > 0 && whole !== "" && WORD.test(whole.charAt(whole.length - 1)) && WORD.test(text.charAt(0)) && !lowered(nodes[i]) && !lowered(nodes[i - 1])) whole += "\n";
    whole += text;
    return whole.length - text.length;
  });
  const plain = whole.replace(/[\n\t]/g, " ");
  const changes = changesOf(plain, system);
  nodes.forEach((node, i) => {
    const us = texts[i] as string;
    const shown = number(node, us, system) ?? part(us, starts[i] as number, changes);
    if (node.data !== shown) node.data = shown;
    if (shown !== us || kept.has(node)) kept.set(node, {us, shown});
  });
}

const lowered = (node: Text | undefined): boolean => node?.parentElement?.matches("sub, sup") ?? false;

/** Numbers alone, whose unit stands at the head of their column or is marked on their element. */
function number(node: Text, us: string, system: UnitSystem): string | undefined {
  if (system === "US" || !(isNumbers(us) || (/\d/.test(us) && node.parentElement?.dataset["unit"] !== undefined))) return undefined;
  const unit = unitOfCell(node, usWords);
  return unit && turnNumbers(us, unit, system);
}

/** A node's share of a line with its changes made: the words of a change stand in the node where it begins. */
function part(us: string, start: number, changes: readonly Change[]): string {
  const end = start + us.length;
  let made = "";
  let at = start;
  for (const {from, to, words} of changes) {
    if (to <= start || from >= end) continue;
    if (from > at) made += us.slice(at - start, from - start);
    if (from >= start) made += words;
    at = Math.min(end, Math.max(at, to));
  }
  return at === start && made === "" ? us : made + us.slice(at - start);
}
