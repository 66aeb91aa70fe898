import {TOPICS} from "./lib/practice/item.js";
import {askFilesOnce} from "./src/headless/askedOnce.js";
import {EMBED_SCRIPT} from "./src/headless/embedScript.js";
import {mathInText} from "./src/headless/mathInText.js";
import {chapters, type Chapter, type PageEntry} from "./src/components/shared/pageList.js";
import {addressOf, listPages} from "./src/headless/pages.js";
import {prepare} from "./src/headless/prepare.js";

prepare();
if (process.argv.includes("build")) askFilesOnce();

const TITLE = "Plank & Tee";
const CAUTION =
  "For learning and preliminary sizing only. Local codes govern; a licensed engineer and the producer design the real structure.";

/** For a browser without scripts, in which most sentences would lack their numbers. */
const WITHOUT_SCRIPTS =
  "Plank & Tee is a notebook about the first design of precast concrete floors. It works out every number in your browser, and needs scripts for that: " +
  "turn JavaScript on for this site, or open it in another browser. Nothing that you enter leaves your machine.";

/** A drawing of a tee, so that no browser asks for an icon that is not there. */
const ICON =
  "data:image/svg+xml," +
  encodeURIComponent(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path fill="#7d8f96" d="M1 8h30v5H25l-1 13h-4l-1-13h-6l-1 13H8L7 13H1z"/></svg>',
  );

/** Opens the search, as `/` and Ctrl+K do. */
const SEARCH_BUTTON =
  '<button type="button" class="search-button icon-button" aria-label="Search" title="Search: / or Ctrl+K" aria-keyshortcuts="/ Control+K">' +
  '<svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true"><path d="M7 2.2a4.8 4.8 0 1 1 0 9.6a4.8 4.8 0 0 1 0-9.6M10.5 10.5l4 4"/></svg></button>';

/** In which units the reader sees quantities; lives in `components/reader/unitSwitch.ts`. */
const UNIT_SWITCH = [
  '<fieldset class="choice unit-switch"><legend>Units</legend><div class="segments">',
  ...["US", "SI", "both"].map((name, i) => `<input type="radio" name="units" id="units-${name}" value="${name}"${i === 0 ? " checked" : ""}><label for="units-${name}">${name}</label>`),
  "</div></fieldset>",
].join("");

const escape = (text: string) => text.replace(/&/g, "&amp;").replace(/</g, "&lt;");

/** The generator names a page by its file, a link by its folder. */
const siteAddress = (file: string) => file.replace(/index$/, "");

/** The list of pages by chapter, the page's own open. A popover opened by a button on a phone; a column on a wide screen, where the style shows it. */
function pageList(path: string): string {
  const here = ({name}: PageEntry) => addressOf(name) === path;
  const item = (page: PageEntry, number: number | undefined) =>
    `<li><a href="${addressOf(page.name)}"${number === undefined ? "" : ` data-number="${number}"`}${here(page) ? ' aria-current="page"' : ""}>${escape(page.title)}</a></li>`;
  const chapter = ({title, first, pages}: Chapter) => {
    const range = first === undefined ? "" : ` <span>${first}${pages.length > 1 ? `\u2013${first + pages.length - 1}` : ""}</span>`;
    const items = pages.map((page, i) => item(page, first === undefined ? undefined : first + i)).join("");
    return `<details${pages.some(here) ? " open" : ""}><summary>${escape(title)}${range}</summary><ol${first === undefined ? "" : ` start="${first}"`}>${items}</ol></details>`;
  };
  return [
    '<nav id="pages" class="pages" aria-label="Pages" popover>',
    `<p class="pages-title"><a href="/">${escape(TITLE)}</a></p>`,
    ...chapters(listPages()).map(chapter),
    UNIT_SWITCH,
    "</nav>",
  ].join("");
}

/** The pages before and after, for one who reads in order. */
function neighbors(path: string): string {
  const pages = listPages();
  const at = pages.findIndex((page) => addressOf(page.name) === path);
  if (at < 0) return "";
  const link = (page: PageEntry | undefined, rel: string) => (page ? `<a rel="${rel}" href="${addressOf(page.name)}"><span>${escape(page.title)}</span></a>` : "");
  return `<nav aria-label="Before and after">${link(pages[at - 1], "prev")}${link(pages[at + 1], "next")}</nav>`;
}

/** From a page that exercises are about to those exercises. */
function practiceThis(path: string): string {
  const topic = TOPICS.find((name) => addressOf(name) === path);
  return topic === undefined ? "" : `<p class="practice-this"><a href="/pages/practice/?topic=${topic}">Practice this page with numbers of your own</a></p>`;
}

export default {
  title: TITLE,
  root: "src",
  output: "dist",
  pages: chapters(listPages()).map(({title, pages}) => ({name: title, pages: pages.map((page) => ({path: addressOf(page.name), name: page.title}))})),
  pager: false,
  sidebar: false,
  toc: false,
  search: false,
  globalStylesheets: [],
  style: "style.css",
  typographer: true,
  markdownIt: mathInText,
  head: [
    // The generator's template has no language and forbids zooming on a phone; a built page carries both from the start.
    `<script>document.documentElement.lang="en";document.querySelector("meta[name=viewport]").content="width=device-width, initial-scale=1"</script>`,
    `<script>${EMBED_SCRIPT}</script>`,
    `<link rel="icon" href="${ICON}">`,
    '<meta name="color-scheme" content="light dark">',
    // Where scripts run, a browser holds what `noscript` has as text and would show it as such.
    "<noscript><style>noscript { display: contents } #observablehq-main > :not(h1), .bar { display: none }</style></noscript>",
    '<script type="module" src="/components/shell.js"></script>',
  ].join("\n"),
  header: ({path}: {path: string}) =>
    [
      '<a class="skip" href="#observablehq-main">Skip to the page</a>',
      `<noscript><p class="without-scripts">${escape(WITHOUT_SCRIPTS)}</p></noscript>`,
      pageList(siteAddress(path)),
      '<div class="bar"><button type="button" class="pages-button" popovertarget="pages">Pages</button><div id="strip" class="strip"></div>' + SEARCH_BUTTON + "</div>",
    ].join("\n"),
  footer: ({path}: {path: string}) => `${practiceThis(siteAddress(path))}${neighbors(siteAddress(path))}<p class="caution"><strong>Caution.</strong> ${CAUTION}</p>`,
};
