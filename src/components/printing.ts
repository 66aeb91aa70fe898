import type {Followed} from "./store.js";

/** What paper leaves out, as the style for print has it. */
const UNPRINTED = ".control, .button, .guess-form, .popover, .no-print, .bar, summary, script, style";
/** What may be left with nothing to print: folds, guesses, rows of controls, cells. */
const HOLDERS = "main :is(details, .guess, .beside, .pair, .row, .observablehq--block)";

/** A text as a string of CSS, in quotes; whatever would end it early is escaped by its code. */
function cssString(text: string): string {
  return `"${text.replace(/["\\\p{Cc}]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`;
}

/**
 * Makes every page print whole: the open design's name for the head of each sheet, and as the title of the file; folded
 * parts open, a "why?" as the reader left it; and no room for what paper leaves out, so that a heading keeps to what
 * follows it and no fold prints its name alone.
 */
export function printsWhole(store: Followed): void {
  store.observe(({name}) => document.documentElement.style.setProperty("--running-title", cssString(name)));
  const {title} = document;
  const unfolded: HTMLDetailsElement[] = [];
  const empty: Element[] = [];
  window.addEventListener("beforeprint", () => {
    document.title = `${store.get().name}: ${title}`;
    for (const details of document.querySelectorAll<HTMLDetailsElement>("main details:not(.why):not([open])")) {
      details.open = true;
      unfolded.push(details);
    }
    for (const holder of document.querySelectorAll(HOLDERS)) {
      if (holder.classList.contains("no-print") || !printsNothing(holder)) continue;
      holder.classList.add("no-print");
      empty.push(holder);
    }
  });
  window.addEventListener("afterprint", () => {
    document.title = title;
    for (const details of unfolded.splice(0)) details.open = false;
    for (const holder of empty.splice(0)) holder.classList.remove("no-print");
  });
}

/** Whether all words and pictures of a part are such as paper leaves out. */
function printsNothing(holder: Element): boolean {
  return ![holder, ...holder.querySelectorAll("*")].some((node) => !node.closest(UNPRINTED) && !node.closest("[hidden]") && (node instanceof SVGElement || hasWords(node)));
}

function hasWords(node: Element): boolean {
  return [...node.childNodes].some((child) => child.nodeType === Node.TEXT_NODE && child.textContent?.trim());
}
