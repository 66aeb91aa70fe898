/** What every page has, whatever its author wrote: the strip, and a page that prints whole. Loaded by the site's head. */
import {lightParts} from "./drawings/parts.js";
import {catalog, store} from "./notebook.js";
import {strip} from "./strip.js";
import {cssString} from "./cssString.js";
import {summarize} from "./summary.js";

strip(store, (design) => summarize(design, catalog));

// Every printed sheet says at its head which design it tells of; a browser that sets no such heads prints the page's title.
const {documentElement} = document;
store.observe(({name}) => documentElement.style.setProperty("--running-title", cssString(name)));

// A part of a drawing under the pointer or the focus lights wherever else it stands on the page.
const main = document.getElementById("observablehq-main");
if (main) lightParts(main);

// Folded parts print open; a "why?" prints as the reader left it.
const unfolded: HTMLDetailsElement[] = [];
const {title} = document;
window.addEventListener("beforeprint", () => {
  document.title = `${store.get().name}: ${title}`;
  for (const details of document.querySelectorAll<HTMLDetailsElement>("main details:not(.why):not([open])")) {
    details.open = true;
    unfolded.push(details);
  }
});
window.addEventListener("afterprint", () => {
  document.title = title;
  for (const details of unfolded.splice(0)) details.open = false;
});

// The list of pages gives way to the page that was chosen from it.
document.getElementById("pages")?.addEventListener("click", (event) => {
  if (event.target instanceof HTMLAnchorElement) (event.currentTarget as HTMLElement).hidePopover?.();
});
