import {element} from "../dom.js";
import {nameBy} from "../veil.js";
import {fileNameOf} from "../store.js";
import {saveCsv} from "./csv.js";

/** Tables that are saved elsewhere: by the picture whose numbers they are, or by a button of their own. */
const ELSEWHERE = "[data-own-csv], figure:has(.figure-save), .popover";
/** What a table scrolls in. */
const FRAME = ".scrolls";
/** How long the page must have been at rest before its tables are looked for again, ms. */
const REST_MS = 300;

/**
 * Gives every table of a page a quiet button that saves it as CSV. It stands before the table in the order of the keys, takes no room, and is seen
 * while the table is pointed at or touched, or the button has the focus.
 */
export function tableButtons(main: HTMLElement): void {
  const buttons = new Map<HTMLTableElement, HTMLElement>();
  const give = () => {
    for (const [table, button] of buttons) {
      if (table.isConnected && button.isConnected && button.nextElementSibling === frameOf(table)) continue;
      button.remove();
      buttons.delete(table);
    }
    for (const table of main.querySelectorAll("table")) {
      if (buttons.has(table) || table.rows.length < 2 || table.closest(ELSEWHERE)) continue;
      const button = csvButton(main, table);
      buttons.set(table, button);
      frameOf(table).before(button);
    }
  };
  const show = (table: HTMLTableElement | null) => {
    for (const [each, button] of buttons) {
      if (each === table) place(button, frameOf(each));
      button.toggleAttribute("data-shown", each === table);
    }
  };
  const pointed = ({target}: Event) => {
    if (!(target instanceof Element)) return;
    const button = target.closest(".table-csv");
    show(button ? ([...buttons].find(([, each]) => each === button)?.[0] ?? null) : target.closest("table"));
  };
  document.addEventListener("pointerover", pointed);
  main.addEventListener("focusin", pointed);
  main.addEventListener("focusout", () => show(null));
  let waiting: ReturnType<typeof setTimeout> | undefined;
  new MutationObserver(() => {
    clearTimeout(waiting);
    waiting = setTimeout(give, REST_MS);
  }).observe(main, {childList: true, subtree: true});
  give();
}

const frameOf = (table: HTMLTableElement): HTMLElement => table.closest<HTMLElement>(FRAME) ?? table;

function csvButton(main: HTMLElement, table: HTMLTableElement): HTMLButtonElement {
  const node = element("button", {type: "button", class: "table-csv no-print", title: "Save this table as CSV", onclick: () => saveCsv(fileName(main, table), table)}, "CSV");
  nameBy(node, () => `Save as CSV: ${labelOf(main, table)}`);
  return node;
}

/** By its page and what it is called: `loads-what-each-room-brings`. */
const fileName = (main: HTMLElement, table: HTMLTableElement): string =>
  fileNameOf(`${location.pathname.replace(/\/(index\.html)?$/, "").split("/").at(-1) || "start"} ${labelOf(main, table)}`);

/** What a table is called: by itself, by what it scrolls in, or by the heading above it. */
function labelOf(main: HTMLElement, table: HTMLTableElement): string {
  const named = table.caption?.textContent ?? table.getAttribute("aria-label") ?? table.closest("[aria-label]:not(main)")?.getAttribute("aria-label");
  const above = () => [...main.querySelectorAll("h1, h2, h3, h4, summary")].filter((heading) => heading.compareDocumentPosition(table) & Node.DOCUMENT_POSITION_FOLLOWING).at(-1)?.textContent;
  return (named ?? above() ?? "table").replace(/\s+/g, " ").trim();
}

/** Over the right end of the table's upper edge, or of what is seen of it; never beyond the window. */
function place(button: HTMLElement, frame: HTMLElement): void {
  button.style.transform = "";
  const own = button.getBoundingClientRect();
  const table = (frame.matches("table") ? frame : (frame.querySelector("table") ?? frame)).getBoundingClientRect();
  const box = frame.getBoundingClientRect();
  const bar = document.querySelector(".bar")?.getBoundingClientRect().bottom ?? 0;
  const x = Math.min(box.right, table.right) - own.right;
  const y = Math.min(Math.max(box.top - own.height, bar + 4), Math.max(box.top, box.bottom - own.height)) - own.top;
  button.style.transform = `translate(${Math.round(x)}px, ${Math.round(y)}px)`;
}
