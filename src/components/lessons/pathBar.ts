import {lessonStops, timeText, type Lesson, type PlacedStop} from "../../lib/lessons/lesson.js";
import {boardsAt, boardsOf} from "../boards/boards.js";
import {button} from "../controls.js";
import {element} from "../dom.js";
import {followed, keepFollowed, lockedBy, namesPath, pathIn, type Followed} from "../followed.js";
import {hrefOf} from "../shared/pageList.js";
import type {DesignStore} from "../store.js";
import {lock} from "../veil/lock.js";
import {openGuesses} from "../veil/open.js";
import {lessonOf} from "./lessons.js";
import {pageHere, pageTitle, placeText, stopBeside, stopHref} from "./places.js";
import {predicted} from "./predicted.js";
import {stopWords} from "./stopWords.js";

/** The bar at the foot of each page while a path is followed. */
export interface PathBar {
  readonly node: HTMLElement;
  /** The stop that is here, if it is on this page. */
  here(): PlacedStop | undefined;
  /** Goes to the stop before or after, on the projector from a board of that page if it is named; false where there is none. */
  go(by: 1 | -1, show?: string): boolean;
}

const OPEN_KEY = "plank-and-tee/path-open";

/** Whether the bar shows more than its question: as the reader left it, else where there is room. */
let unfolded = window.innerWidth >= 640;
try {
  unfolded = (sessionStorage.getItem(OPEN_KEY) ?? (unfolded ? "yes" : "no")) === "yes";
} catch {
  // Without storage each page decides anew.
}

function unfold(now: boolean): void {
  unfolded = now;
  try {
    sessionStorage.setItem(OPEN_KEY, now ? "yes" : "no");
  } catch {
    // As above.
  }
}

let bar: (PathBar & {show(arriving: boolean): void}) | undefined;

/**
 * Shows the bar for the path that the address names or that is followed already, and goes to its stop on this page. Called
 * again when the address names another stop.
 *
 * @param project - shows this page on a projector, from the stop on
 */
export function followPath(store: DesignStore, project: () => void): PathBar | undefined {
  const arriving = namesPath(location.hash);
  const path = pathIn(location.hash) ?? followed();
  const lesson = path && lessonOf(path.lesson);
  if (arriving) history.replaceState(history.state, "", location.pathname + location.search);
  if (!path || !lesson) {
    keepFollowed(undefined);
    if (arriving && path) store.tell({kind: "problem", message: `There is no lesson path "${path.lesson}" in this notebook.`});
    return undefined;
  }
  const stop = Math.min(path.stop, lessonStops(lesson).length - 1);
  keepFollowed({...path, stop});
  // What is locked is settled as a page begins; what is not any more opens at once.
  if (bar && arriving && path.locked && !lock.on()) location.reload();
  else if (lock.on() && lockedBy() === undefined) openGuesses.unlock();
  bar ??= makeBar(store, project);
  bar.show(arriving);
  return bar;
}

function makeBar(store: DesignStore, project: () => void): NonNullable<typeof bar> {
  const node = element("aside", {class: "path-bar no-print", "aria-label": "Lesson path"});
  document.body.append(node);
  new ResizeObserver(() => document.documentElement.style.setProperty("--path-bar", `${node.offsetHeight}px`)).observe(node);
  const now = (): {path: Followed; lesson: Lesson; placed: PlacedStop} | undefined => {
    const path = followed();
    const lesson = path && lessonOf(path.lesson);
    const placed = path && lesson && lessonStops(lesson)[path.stop];
    return path && lesson && placed ? {path, lesson, placed} : undefined;
  };
  const leave = () => {
    bar = undefined;
    node.remove();
    keepFollowed(undefined);
    lock.wait(false);
    openGuesses.unlock();
    document.documentElement.style.removeProperty("--path-bar");
    for (const marked of document.querySelectorAll("[data-stop]")) marked.removeAttribute("data-stop");
    document.removeEventListener("keydown", keys);
  };
  const go = (by: 1 | -1, shown?: string): boolean => {
    const at = now();
    const next = at && stopBeside(at.lesson, at.placed.index, by);
    if (!at || !next) return false;
    location.href = `${stopHref(at.lesson, next.index, at.path.locked)}${shown === undefined ? "" : `&show=${shown}`}`;
    return true;
  };
  const keepShowing = (event: Event, by: 1 | -1) => {
    if (document.documentElement.dataset["projector"] === undefined) return;
    event.preventDefault();
    go(by, "");
  };
  const keys = (event: KeyboardEvent) => {
    if (!event.altKey || event.ctrlKey || event.metaKey || (event.key !== "PageDown" && event.key !== "PageUp")) return;
    event.preventDefault();
    go(event.key === "PageDown" ? 1 : -1, document.documentElement.dataset["projector"] === undefined ? undefined : "");
  };
  document.addEventListener("keydown", keys);

  const show = (arriving: boolean) => {
    const at = now();
    if (!at) return leave();
    const {lesson, placed: {stop, index, fromMinute, part}, path} = at;
    const onPage = stop.page === pageHere();
    const waits = onPage && stop.predict?.kind === "choice" && predicted(lesson.id, index) === undefined;
    lock.wait(waits && path.locked);
    const wordy = element("div", {class: "path-words", hidden: !unfolded});
    const fill = () => wordy.replaceChildren(...stopWords({store, lesson, stop, index, locked: path.locked, onSaid: () => show(false)}));
    if (onPage) fill();
    const toggle = element("button", {type: "button", class: "button quiet", "aria-expanded": String(!wordy.hidden)}, wordy.hidden ? "More" : "Less");
    toggle.addEventListener("click", () => {
      wordy.hidden = !wordy.hidden;
      unfold(!wordy.hidden);
      toggle.textContent = wordy.hidden ? "More" : "Less";
      toggle.setAttribute("aria-expanded", String(!wordy.hidden));
    });
    const before = stopBeside(lesson, index, -1);
    const after = stopBeside(lesson, index, 1);
    const step = (to: PlacedStop | undefined, words: string, name: string) => (to
      ? element("a", {class: "path-step", href: stopHref(lesson, to.index, path.locked), onclick: (event: Event) => keepShowing(event, to.index > index ? 1 : -1), "aria-label": `${name}: ${placeText(to.stop)}`, title: placeText(to.stop)}, words)
      : element("span", {class: "path-step", "aria-hidden": "true"}, words));
    const clock = lesson.parts.length > 1 ? `${part.title}, ` : "";
    node.replaceChildren(
      element("div", {class: "path-head"},
        step(before, "\u2039", "Stop before"),
        element("div", {class: "path-now"},
          element("p", {class: "path-place"}, element("a", {href: `${hrefOf("lessons")}#${lesson.id}`}, lesson.title), `: stop ${index + 1} of ${lessonStops(lesson).length}`,
            element("span", {class: "path-clock"}, ` \u00b7 ${clock}${timeText(stop.minutes)}, from minute ${fromMinute}`)),
          onPage ? element("p", {class: "path-ask"}, element("strong", {}, "Ask. "), stop.ask)
            : element("p", {class: "path-ask"}, "This page is off the path. ", element("a", {href: stopHref(lesson, index, path.locked)}, `Back to stop ${index + 1}: ${pageTitle(stop.page)}`)),
        ),
        step(after, "Next \u203a", "Next stop"),
      ),
      wordy,
      element("div", {class: "path-tools"}, onPage ? toggle : null, onPage ? button("On the projector", project, {quiet: true}) : null, button("Leave the path", leave, {quiet: true})),
    );
    mark(onPage, index);
    if (arriving && onPage) void arrived().then(() => target(lesson, index)?.scrollIntoView());
  };
  openGuesses.observe(() => {
    // A bar that was left hears no more.
    if (node.isConnected) show(false);
  });
  return {
    node, show, go,
    here: () => {
      const at = now();
      return at?.placed.stop.page === pageHere() ? at.placed : undefined;
    },
  };
}

/** Where a stop is on this page: its heading, which stays while pictures are drawn anew. */
function target(lesson: Lesson, index: number): HTMLElement | undefined {
  const main = document.getElementById("observablehq-main");
  const stop = lessonStops(lesson)[index]?.stop;
  if (!main || !stop) return undefined;
  const boards = boardsAt(boardsOf(main), stop);
  const shown = boards.find(({kind}) => kind !== "question") ?? boards[0];
  const pictures = boardsOf(main).filter(({heading, kind}) => heading === shown?.heading && kind === "picture");
  return shown && (pictures.length > 1 && pictures[0]?.id !== shown.id ? shown.anchor : shown.heading);
}

function mark(onPage: boolean, index: number): void {
  const path = followed();
  const lesson = path && lessonOf(path.lesson);
  void arrived().then(() => {
    for (const marked of document.querySelectorAll("[data-stop]")) marked.removeAttribute("data-stop");
    if (onPage && lesson && followed()) target(lesson, index)?.setAttribute("data-stop", String(index + 1));
  });
}

/** When the page stands, see `arrival.ts`. */
async function arrived(): Promise<void> {
  while (!document.querySelector("main[data-arrived]")) await new Promise((later) => setTimeout(later, 50));
}
