import {element} from "../dom.js";
import {asWritten} from "../reader/system.js";
import {findTerms, type FoundTerm, type TermIndex} from "./findTerms.js";

/** Blocks of prose. */
const PROSE = "p, li, dd, blockquote";

/** Where words stay as they are: what can be pressed or typed into, headings, equations, pictures, tables, numbers, veils, what is read aloud as it changes or is hidden from who listens. */
const LEFT_ALONE = [
  "a", "button", "label", "input", "textarea", "select", "form", "summary", "legend", "nav", "dialog", "figure", "code", "table", "svg", "math", "h1", "h2", "h3", "h4", "style", "script",
  ".math", ".live", ".veil", ".control", ".guess", ".popover", ".worked", ".why-body", ".onward", ".record-paper", ".words",
  "[role=button]", "[role=slider]", "[role=spinbutton]", "[role=status]", "[role=alert]", "[aria-live]", "[aria-hidden=true]", "[contenteditable]", "[data-quantity]", "[data-veiled]", "[data-no-terms]",
].join(", ");

/** More at once than this waits until the page has nothing else to do. */
const FEW_NODES = 60;

/** A text whose words are shown by a span behind it. */
interface Covered {
  readonly text: string;
  readonly span: HTMLElement;
}

/**
 * Marks the first occurrence of each term in each section of a page, and goes on doing so while sentences change. Whoever
 * made a text keeps it: it is emptied, and a span with its words and marks stands behind it until it is removed or
 * filled anew. Returns what takes all marks away again.
 */
export function markTerms(main: HTMLElement, index: TermIndex): () => void {
  const covered = new Map<Text, Covered>();
  let waiting: Node[] = [];
  let idle = 0;

  const uncover = (text: Text, restore: boolean) => {
    const cover = covered.get(text);
    if (!cover) return;
    covered.delete(text);
    cover.span.remove();
    if (restore) text.data = cover.text;
  };

  const scan = (roots: readonly Node[]) => {
    const texts = roots.filter((root) => root.isConnected).flatMap(proseTexts);
    // Most of what changes on a page is no prose.
    if (texts.length === 0) return;
    const headings = [...main.querySelectorAll("h1, h2")];
    const taken = new Set([...main.querySelectorAll<HTMLElement>(".term")].map(({dataset}) => `${dataset["section"]}|${dataset["term"]}`));
    for (const text of texts) {
      if (covered.has(text)) continue;
      const words = asWritten(text);
      const found = findTerms(words, index);
      if (found.length === 0) continue;
      const section = sectionOf(text, headings);
      const first = found.filter(({term}) => {
        const key = `${section}|${term}`;
        return !taken.has(key) && taken.add(key);
      });
      if (first.length === 0) continue;
      const span = element("span", {class: "words"}, ...pieces(words, first, section));
      covered.set(text, {text: words, span});
      text.after(span);
      text.data = "";
    }
  };

  const observer = new MutationObserver((records) => {
    const added: Node[] = [];
    for (const {type, target, removedNodes, addedNodes} of records) {
      if (type === "characterData" && target instanceof Text && target.data !== "") {
        uncover(target, false);
        added.push(target);
      }
      if (type === "attributes" && target instanceof Element && !target.hasAttribute("data-veiled")) added.push(target);
      for (const node of removedNodes) if (node instanceof Text && !node.isConnected) uncover(node, true);
      for (const node of addedNodes) if (!(node instanceof Element && node.matches(".words"))) added.push(node);
    }
    for (const text of covered.keys()) if (!text.isConnected) covered.delete(text);
    if (added.length === 0) return;
    if (added.length <= FEW_NODES && waiting.length === 0) {
      scan(added);
      return;
    }
    waiting.push(...added);
    idle ||= later(() => {
      idle = 0;
      scan(waiting.splice(0));
    });
  });
  scan([main]);
  observer.observe(main, {childList: true, characterData: true, subtree: true, attributes: true, attributeFilter: ["data-veiled"]});
  return () => {
    observer.disconnect();
    waiting = [];
    for (const text of [...covered.keys()]) uncover(text, true);
  };
}

/** Runs something when the page rests; not every browser says when that is. */
function later(run: () => void): number {
  return "requestIdleCallback" in window ? requestIdleCallback(run, {timeout: 500}) : (setTimeout as Window["setTimeout"])(run, 200);
}

/** The texts of prose within a node, itself included. */
function proseTexts(root: Node): Text[] {
  const element = root instanceof Element ? root : root.parentElement;
  if (!element || element.closest(LEFT_ALONE)) return [];
  const wanted = (text: Text) => /\p{L}/u.test(text.data) && text.parentElement?.closest(PROSE);
  if (root instanceof Text) return wanted(root) ? [root] : [];
  const texts: Text[] = [];
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT, (node) =>
    node instanceof Element && node.matches(LEFT_ALONE) ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_ACCEPT);
  while (walker.nextNode()) if (walker.currentNode instanceof Text && wanted(walker.currentNode)) texts.push(walker.currentNode);
  return texts;
}

/** The section that a text stands in, by its heading; what is folded away is a section of its own. */
function sectionOf(text: Text, headings: readonly Element[]): string {
  const before = headings.filter((heading) => heading.compareDocumentPosition(text) & Node.DOCUMENT_POSITION_FOLLOWING).length;
  return text.parentElement?.closest("details") ? `${before} folded` : String(before);
}

/** A text cut at its terms, each of which is a mark. */
function pieces(text: string, found: readonly FoundTerm[], section: string): (string | Node)[] {
  let at = 0;
  const parts = found.flatMap(({term, from, to}) => {
    const mark = element("span", {class: "term", role: "button", tabindex: 0, "aria-haspopup": "dialog", "aria-expanded": "false", "data-term": term, "data-section": section}, text.slice(from, to));
    const part = [text.slice(at, from), mark];
    at = to;
    return part;
  });
  return [...parts, text.slice(at)].filter((part) => part !== "");
}
