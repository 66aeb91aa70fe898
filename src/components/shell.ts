/** What every page has, whatever its author wrote: the strip, and a page that prints whole. Loaded by the site's head. */
import {onceRead, showsWhole} from "./arrival.js";
import {ALONE} from "./embed/alone.js";
import {lightParts} from "./drawings/parts.js";
import {followed, namesPath, shownIn} from "./followed.js";
import {catalog, seeds, store} from "./notebook.js";
import {printsWhole} from "./printing.js";
import {holdsDesign} from "./share/fragment.js";
import {awaitsUnits} from "./reader/system.js";
import {strip} from "./strip.js";
import {summarize} from "./summary.js";

// One figure alone, in a page of another site, has none of it.
if (ALONE === undefined) strip(store, (design) => summarize(design, catalog));
else void showAlone(ALONE);
async function showAlone(name: string): Promise<void> {
  const {embed} = await import("./embed/embed.js");
  await embed(store, seeds, name);
}

printsWhole(store);

// Units other than the texts' own: at once for a reader who has chosen them, else with the first touch of the switch.
awaitsUnits(() => void import("./reader/unitSwitch.js").then(({unitSwitch}) => unitSwitch(store)));

// What a moving control leaves of the design as it was comes with the first change.
const opened = store.get();
const stopWaiting = store.observe((design) => {
  if (design === opened || ALONE !== undefined) return;
  stopWaiting();
  void import("./trace.js").then(({trace}) => trace(store, catalog, opened));
});

// A link that holds a design, followed from elsewhere or put into the address of this very page.
const openLinked = () => {
  if (holdsDesign(location.hash) && ALONE === undefined) void import("./share/share.js").then(({openLink}) => openLink(store));
};
openLinked();
window.addEventListener("hashchange", openLinked);

// A lesson path that is followed or that a link sets out on, and what an address shows on a projector.
const project = (at: string | null = null) => void import("./projector/projector.js").then((projector) => projector.project(store, at ?? ""));
const settle = async () => {
  const shown = shownIn(location.hash);
  if (namesPath(location.hash) || followed()) await import("./lessons/pathBar.js").then(({followPath}) => followPath(store, project));
  if (shown !== null) project(shown);
};
void settle();
window.addEventListener("hashchange", () => {
  if (namesPath(location.hash) || shownIn(location.hash) !== null) void settle();
});

document.addEventListener("click", (event) => {
  const button = event.target instanceof Element ? event.target.closest<HTMLElement>(".figure-save") : null;
  if (button) void import("./share/figureMenu.js").then(({openFigureMenu}) => openFigureMenu(button, store));
});

// The place that an address names is where it will stay once the page has arrived, and may have come with its figures.
const landed = () => {
  if (location.hash.length > 1 && !location.hash.includes("=")) void import("./search/landing.js").then(({landAt}) => landAt(location.hash));
};
window.addEventListener("hashchange", landed);

// What is typed before the search has come is looked for once it is there.
const openSearch = () => {
  let typed = "";
  const note = (event: KeyboardEvent) => {
    const {key, ctrlKey, metaKey, altKey} = event;
    if (ctrlKey || metaKey || altKey || (key.length > 1 && key !== "Backspace")) return;
    typed = key === "Backspace" ? typed.slice(0, -1) : typed + key;
    event.preventDefault();
  };
  document.addEventListener("keydown", note, true);
  void import("./search/dialog.js").then(({searchDialog}) => searchDialog(typed)).finally(() => document.removeEventListener("keydown", note, true));
};
document.querySelector(".search-button")?.addEventListener("click", openSearch);
document.addEventListener("keydown", (event) => {
  const {key, ctrlKey, metaKey, altKey, target, defaultPrevented} = event;
  const slash = key === "/" && !ctrlKey && !metaKey && !altKey && !(target instanceof Element && target.closest("input, textarea, select, [contenteditable]"));
  if (defaultPrevented || ALONE !== undefined || !(slash || (key.toLowerCase() === "k" && (ctrlKey || metaKey) && !altKey))) return;
  event.preventDefault();
  openSearch();
});

// A part under the pointer or the focus lights wherever else it stands on the page, in the worked steps beside a number too.
lightParts(document.body, () => document.querySelectorAll("main, .popover-body"));
const main = document.getElementById("observablehq-main");
if (main) {
  showsWhole(main, landed);
  if (ALONE === undefined) onceRead(main, () => {
    void import("./words/words.js").then(({startWords}) => startWords(main));
    void import("./share/tableButtons.js").then(({tableButtons}) => tableButtons(main));
  });
}

// The list of pages gives way to the page that was chosen from it.
document.getElementById("pages")?.addEventListener("click", (event) => {
  if (event.target instanceof HTMLAnchorElement) (event.currentTarget as HTMLElement).hidePopover?.();
});
