import {GUESSES, type Guess, type GuessName} from "../lib/exercises/guesses.js";
import type {QuantityName} from "../lib/quantities.js";
import type {Working} from "../lib/step.js";
import {element} from "./dom.js";
import {openGuesses} from "./veil/open.js";

/** What those hear who listen, in place of a number that is hidden. */
export const HIDDEN = "hidden until you have guessed";

/** What stands veiled in the page: for which questions, and how it is shown again. */
const veiled = new WeakMap<Element, {readonly names: readonly GuessName[]; readonly show: () => void}[]>();

/** Veils an element until none of the questions is open any more. */
function veil(node: Element, names: readonly GuessName[], show: () => void): void {
  node.setAttribute("data-veiled", "");
  veiled.set(node, [...(veiled.get(node) ?? []), {names, show}]);
}

/** Shows all that no open question hides any more. */
function lift(): void {
  // In the order of the page: a title is shown before the name of the chart below it is read from it.
  for (const node of document.querySelectorAll("[data-veiled]")) {
    const left = (veiled.get(node) ?? []).filter(({names, show}) => {
      if (names.some(openGuesses.has)) return true;
      show();
      return false;
    });
    veiled.set(node, left);
    if (left.length === 0) node.removeAttribute("data-veiled");
  }
}

openGuesses.observe(lift);

/** Hides the number in an element that shows a quantity, as long as a question of this page asks for it. */
export function veilQuantity(name: QuantityName, node: HTMLElement | SVGElement): void {
  const names = openGuesses.all().filter((guess) => (GUESSES[guess] as Guess).hides.includes(name));
  if (names.length === 0) return;
  // A part of a drawing belongs to one picture, which has its own name.
  const named = node instanceof HTMLElement && !node.hasAttribute("aria-label");
  const show = hideNumbers(node, named);
  if (named) {
    node.setAttribute("aria-label", HIDDEN);
    if (node.tagName === "SPAN") node.setAttribute("role", "img");
  }
  veil(node, names, () => {
    show();
    if (!named) return;
    node.removeAttribute("aria-label");
    if (node.tagName === "SPAN") node.removeAttribute("role");
  });
}

/**
 * Hides every number in a part of the page, its names for listeners included, as long as the question is open.
 *
 * @param parts - a selector, where only some of what is within it is to be hidden
 */
export function untilGuessed<T extends Element>(name: GuessName, node: T, parts?: string): T {
  if (!openGuesses.has(name)) return node;
  for (const part of parts === undefined ? [node] : node.querySelectorAll(parts)) veil(part, [name], hideNumbers(part));
  return node;
}

/**
 * Other words in place of a sentence that would give the answer away, as long as the question is open. They stand in
 * lines of their own and take as much room as the longer of the two, so that nothing moves when the answer comes.
 */
export function elseGuessed(name: GuessName, neutral: string, words: string | Node): string | Node {
  if (!openGuesses.has(name)) return words;
  const node = element("span", {class: "else-guessed"}, neutral);
  const stop = keepRoomOf(node, words);
  veil(node, [name], () => {
    stop();
    node.replaceChildren(words);
  });
  return node;
}

/** Keeps as much room in a block as its own words or others take, whichever is more; the others are measured within one moment, and never shown or read. */
function keepRoomOf(node: HTMLElement, others: string | Node): () => void {
  let known = 0;
  const observer = new ResizeObserver(() => {
    if (node.offsetWidth === known || node.offsetWidth === 0) return;
    known = node.offsetWidth;
    const shown = [...node.childNodes];
    node.style.minHeight = "";
    const own = node.getBoundingClientRect().height;
    node.replaceChildren(others);
    const room = Math.max(own, node.getBoundingClientRect().height);
    node.replaceChildren(...shown);
    node.style.minHeight = `${room}px`;
  });
  observer.observe(node);
  return () => observer.disconnect();
}

/** Names an element for those who listen by words that may hold hidden numbers; once they are shown it is named anew. */
export function nameBy(node: Element, words: () => string): void {
  const set = () => node.setAttribute("aria-label", words());
  set();
  for (const name of openGuesses.all()) veil(node, [name], set);
}

/** Hides the numbers of worked steps that lead to an answer which is still asked for. */
export function veilWorking(working: Working, steps: HTMLElement): HTMLElement {
  for (const name of openGuesses.all()) {
    const numbers = working.steps.flatMap((step) => [step.result, ...Object.values(step.values).map(({value}) => value)]);
    if (openGuesses.answers(name).some((answer) => numbers.some((number) => tells(number, answer)))) untilGuessed(name, steps);
  }
  return steps;
}

/** Inches and feet, pounds and kips, parts and percent, feet and yards: the same number in another unit. */
const UNITS = [1, 12, 100, 1000, 27];

/** Whether a number is the answer, in its own unit or in another. */
function tells(number: number, answer: number): boolean {
  return answer !== 0 && UNITS.some((times) => [answer * times, answer / times].some((value) => Math.abs(Math.abs(number) - Math.abs(value)) <= 1e-9 * Math.abs(value)));
}

/** Attributes that are read aloud or shown beside the pointer. */
const SPOKEN = ["aria-label", "aria-description", "aria-valuetext", "title", "alt"];
/** What shows text alone, or is for typing. */
const PLAIN = "svg, math, select, textarea";

/** Puts a veil over each number within an element; returns what shows them again. */
function hideNumbers(root: Element, named = false): () => void {
  const shows: (() => void)[] = [];
  const texts: Text[] = [];
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) texts.push(walker.currentNode as Text);
  for (const text of texts) {
    const {data, parentElement} = text;
    if (!/\d/.test(data) || parentElement?.closest("style, script, .veil")) continue;
    if (parentElement?.closest(PLAIN)) {
      text.data = data.replace(/\d/g, "?");
      shows.push(() => void (text.data = data));
    } else {
      const parts = veiledParts(data, named);
      text.replaceWith(...parts);
      shows.push(() => {
        parts[0]?.replaceWith(text);
        for (const part of parts.slice(1)) part.remove();
      });
    }
  }
  for (const node of named ? [] : [root, ...root.querySelectorAll(SPOKEN.map((name) => `[${name}]`).join(", "))]) {
    for (const name of SPOKEN) {
      const words = node.getAttribute(name);
      if (words === null || !/\d/.test(words)) continue;
      node.setAttribute(name, words.replace(/\d/g, "?"));
      shows.push(() => node.setAttribute(name, words));
    }
  }
  return () => {
    for (const show of shows) show();
  };
}

/** A text with a question mark in the room of each run of digits, so that nothing moves when they come back. */
function veiledParts(text: string, named: boolean): ChildNode[] {
  let spoken = named;
  return text.split(/(\S*\d\S*)/).filter((piece) => piece !== "").map((piece) => {
    if (!/\d/.test(piece)) return document.createTextNode(piece);
    return element("span", {class: "veiled"}, ...piece.split(/(\d+)/).filter((run) => run !== "").map((run) => {
      if (!/\d/.test(run)) return run;
      const node = element("span", {class: "veil", style: `--digits: ${run.length}`, ...(spoken ? {"aria-hidden": "true"} : {role: "img", "aria-label": HIDDEN})}, "?");
      spoken = true;
      return node;
    }));
  });
}
