import type {Design} from "../lib/design/design.js";
import {element, svgElement} from "./dom.js";
import {SAVE_ICON} from "./icons.js";
import {hrefOf} from "./shared/pageList.js";
import type {RemedyLine} from "./remedyLine.js";
import {stripItems, type SummaryItem} from "./stripItems.js";
import {download} from "./store/browser.js";
import type {DesignStore} from "./store.js";

/** What the strip says of a design. */
export interface Summary {
  /** A small drawing, or null. */
  readonly thumbnail: SVGElement | null;
  /** A few facts, the worst first, each a link to the page where it is decided. */
  readonly items: readonly SummaryItem[];
  /** The same with more that takes too long to wait for, and how many of all checks fail: asked for when no change has come for a while. */
  readonly later?: () => {readonly items: readonly SummaryItem[]; readonly failing: number; readonly checks: number};
}

/** How long no change must have come before the slow items are computed, ms. */
const REST_MS = 400;

/** Paths of the buttons' pictures, in a square of 16. */
const ICONS = {
  undo: "M6 3L2.5 6.5L6 10M3 6.5h6.5a4 4 0 0 1 0 8H7",
  redo: "M10 3l3.5 3.5L10 10M13 6.5H6.5a4 4 0 0 0 0 8H9",
  open: "M1.5 13.5v-10h4.5l1.5 2h6v8zM1.5 13.5l2-5.5h12l-2 5.5z",
  link: "M6.5 9.5l3-3M7 4.5l1.7-1.7a2.8 2.8 0 0 1 4 4L11 8.5M5 7.5L3.3 9.2a2.8 2.8 0 0 0 4 4L9 11.5",
  save: SAVE_ICON,
  screen: "M1.5 2.5h13v8h-13zM8 10.5v3.5M5 14h6",
} as const;

/**
 * Fills the strip at the top of the page: the open design's name, drawing and numbers, with undo, redo, open and save.
 * The numbers follow the design a frame behind, so that the picture under the reader's hand comes first.
 */
export function strip(store: DesignStore, summarize: (design: Design) => Summary): void {
  const slot = document.getElementById("strip");
  if (!slot) return;
  const name = element("a", {class: "strip-name", href: hrefOf("index")});
  const drawing = element("span", {class: "strip-drawing", "aria-hidden": "true"});
  const {node: items, show: showItems} = stripItems(name);
  const undo = iconButton("undo", "Undo", store.undo);
  const redo = iconButton("redo", "Redo", store.redo);
  const file = element("input", {type: "file", accept: ".json,application/json", hidden: true, "aria-label": "Design file", class: "strip-file"});
  file.addEventListener("change", () => {
    const chosen = file.files?.[0];
    // The same file may be chosen again after it was mended.
    if (chosen) void store.openFile(chosen).then(() => (file.value = ""));
  });
  const tools = element(
    "div",
    {class: "strip-tools", role: "group", "aria-label": "Design"},
    undo,
    redo,
    iconButton("open", "Open a design file", () => file.click()),
    iconButton("save", "Save the design as a file", store.saveFile),
    iconButton("link", "Copy a link to the design", () => void import("./share/share.js").then(({copyLink}) => copyLink(store))),
    iconButton("screen", "Show this page on a projector", () => void import("./projector/projector.js").then(({project}) => project(store, ""))),
    file,
  );
  const summary = element("div", {class: "strip-summary", role: "region", "aria-label": "The open design"}, drawing, name, items);
  slot.replaceChildren(summary, tools);

  let remedy: Promise<RemedyLine> | undefined;
  const rest = ({items: all, failing, checks}: ReturnType<NonNullable<Summary["later"]>>) => {
    showItems(all);
    // Only a design that fails needs the line below the strip, and fetches it.
    if (failing) remedy ??= import("./remedyLine.js").then(({remedyLine}) => remedyLine(store, slot.parentElement ?? slot));
    void remedy?.then((line) => line.rest(failing, checks));
  };
  let waiting = false;
  let resting: ReturnType<typeof setTimeout> | undefined;
  const show = () => {
    waiting = false;
    const {thumbnail, items: shown, later} = summarize(store.get());
    // Nobody is read the small drawing, so it needs no words, which might tell what the page asks to guess.
    for (const words of thumbnail?.querySelectorAll("desc") ?? []) words.remove();
    thumbnail?.removeAttribute("aria-label");
    drawing.replaceChildren(...(thumbnail ? [thumbnail] : []));
    showItems(shown);
    clearTimeout(resting);
    if (later) resting = setTimeout(() => rest(later()), REST_MS);
  };
  store.observe((design) => {
    name.textContent = design.name;
    name.title = design.name;
    undo.disabled = !store.canUndo;
    redo.disabled = !store.canRedo;
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => requestAnimationFrame(show));
  });
  showNotices(store, slot.parentElement ?? slot);
}

function iconButton(icon: keyof typeof ICONS, name: string, act: () => void): HTMLButtonElement {
  const picture = svgElement("svg", {viewBox: "0 0 16 16", width: 16, height: 16, "aria-hidden": "true"}, svgElement("path", {d: ICONS[icon]}));
  return element("button", {type: "button", class: "icon-button", "aria-label": name, title: name, onclick: act}, picture);
}

/** A line below the strip for what the reader should know, until it is dismissed. */
function showNotices(store: DesignStore, bar: HTMLElement): void {
  const text = element("span", {});
  const actions = element("span", {class: "notice-actions"});
  const line = element("div", {class: "notice", role: "status", hidden: true}, text, actions);
  bar.append(line);
  store.observeNotice((notice) => {
    line.hidden = !notice;
    line.dataset["kind"] = notice?.kind ?? "";
    text.textContent = notice?.message ?? "";
    const keep = notice?.keep;
    actions.replaceChildren(
      ...(keep ? [element("button", {type: "button", class: "button quiet", onclick: () => download(keep.fileName, keep.text)}, "Save it as a file")] : []),
      element("button", {type: "button", class: "button quiet", onclick: () => store.dismissNotice()}, "Dismiss"),
    );
  });
}
