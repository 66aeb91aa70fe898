import {boardsAt, boardsOf, headingText, type Board} from "../boards/boards.js";
import {element} from "../dom.js";
import {setRoom} from "../drawings/room.js";
import {followed} from "../followed.js";
import type {PathBar} from "../lessons/pathBar.js";
import type {DesignStore} from "../store.js";
import {projectorKeys} from "./keys.js";
import {clearStage, stage} from "./stage.js";
import {thingPointer} from "./things.js";

/** A page 800 by 450 pixels large fills the screen: so many lines are read from the last row. */
const PAGE_PX = {width: 800, height: 450};
const MOST_SCALE = 5;
/** Of the height, what heading, title and foot take, px before all is enlarged; and the least that is left for a drawing. */
const AROUND_PX = 120;
const LEAST_HEIGHT_PX = 270;

let running: {to(id: string): void} | undefined;

/**
 * Shows the page on a projector: one picture or question at a time, in large type. On a lesson path the boards of the stop
 * alone, and on to the next stop's page.
 *
 * @param at - name of the board to begin with; empty for the stop's first, or for the one that the reader is at; `last` for the last
 */
export async function project(store: DesignStore, at: string): Promise<void> {
  const main = document.getElementById("observablehq-main");
  if (!main) return;
  while (!main.dataset["arrived"] && main.dataset["arrived"] !== "") await new Promise((later) => setTimeout(later, 50));
  const bar = followed() ? (await import("../lessons/pathBar.js")).followPath(store, () => void project(store, "")) : undefined;
  running ??= start(main, bar);
  running.to(at);
}

function start(main: HTMLElement, bar: PathBar | undefined): NonNullable<typeof running> {
  const root = document.documentElement;
  const scrolled = nearest(boardsOf(main));
  const count = element("span", {class: "projector-count"});
  const thing = element("span", {class: "projector-thing", role: "status"});
  const tool = (name: string, label: string, act: () => void) => element("button", {type: "button", class: "projector-tool", "aria-label": name, title: name, onclick: act}, label);
  const foot = element("div", {class: "projector-foot no-print", role: "region", "aria-label": "Projector"},
    tool("Before", "\u2039", () => move(-1)), count, tool("Next", "\u203a", () => move(1)), thing,
    element("span", {class: "projector-caution"}, "For learning and preliminary sizing only; local codes govern."),
    tool("Dim the screen (D)", "Dim", () => dim(true)), tool("Leave the projector view (Escape)", "Leave", () => leave()));
  const shade = element("button", {type: "button", class: "projector-shade no-print", "aria-label": "The screen is dimmed; press to go on", hidden: true, onclick: () => dim(false)});
  const pointer = thingPointer((words) => (thing.textContent = words));
  let id = "";

  const boards = (): Board[] => {
    const all = boardsOf(main);
    const stop = bar?.here()?.stop;
    const own = stop ? boardsAt(all, stop) : [];
    const [first] = own;
    if (!first) return all;
    return stop?.predict?.kind === "choice" ? [{id: "predict", kind: "ask", heading: first.heading, anchor: undefined, pieces: [], before: []}, ...own] : own;
  };
  const dim = (now: boolean) => {
    shade.hidden = !now;
    if (now) shade.focus();
  };
  const show = () => {
    const all = boards();
    const index = Math.max(0, all.findIndex((board) => board.id === id));
    const board = all[index];
    if (!board) return;
    id = board.id;
    stage(main, board);
    root.toggleAttribute("data-asks", board.kind === "ask");
    const words = `${index + 1} of ${all.length}`;
    if (count.textContent !== words) count.textContent = words;
    count.title = headingText(board);
  };
  const to = (wanted: string) => {
    const all = boards();
    const stop = bar?.here() !== undefined;
    id = wanted === "last" ? (all.at(-1)?.id ?? "") : all.some((board) => board.id === wanted) ? wanted : stop ? (all[0]?.id ?? "") : (scrolled?.id ?? all[0]?.id ?? "");
    pointer.off();
    show();
    history.replaceState(history.state, "", `#show=${encodeURIComponent(id)}`);
    main.scrollTo(0, 0);
    thing.textContent = "";
  };
  const move = (by: 1 | -1) => {
    const all = boards();
    const next = all[all.findIndex((board) => board.id === id) + by];
    if (next) to(next.id);
    else bar?.go(by, by > 0 ? "" : "last");
  };
  const fit = () => {
    const scale = Math.max(1, Math.min(MOST_SCALE, window.innerWidth / PAGE_PX.width, window.innerHeight / PAGE_PX.height));
    root.style.fontSize = `${100 * scale}%`;
    root.dataset["projector"] = String(scale);
    const heightPx = (window.innerHeight - (bar?.node.offsetHeight ?? 0)) / scale - AROUND_PX;
    setRoom(scale === 1 ? undefined : {scale, heightPx: Math.max(LEAST_HEIGHT_PX, heightPx)});
  };
  // What is drawn anew loses its mark; it is marked again before anything is painted.
  const redrawn = new MutationObserver(show);
  const listening = new AbortController();
  const leave = () => {
    listening.abort();
    redrawn.disconnect();
    const {heading} = boards().find((board) => board.id === id) ?? {};
    pointer.off();
    clearStage(main);
    foot.remove();
    shade.remove();
    root.style.fontSize = "";
    delete root.dataset["projector"];
    root.removeAttribute("data-asks");
    setRoom();
    running = undefined;
    history.replaceState(history.state, "", location.pathname + location.search);
    window.dispatchEvent(new Event("resize"));
    heading?.scrollIntoView();
  };
  document.body.append(foot, shade);
  fit();
  window.dispatchEvent(new Event("resize"));
  window.addEventListener("resize", fit, {signal: listening.signal});
  redrawn.observe(main, {childList: true, subtree: true});
  projectorKeys({move, first: () => to(boards()[0]?.id ?? ""), last: () => to("last"), point: pointer.step, pointing: pointer.on, stopPointing: pointer.off, dim, dimmed: () => !shade.hidden, leave}, listening.signal);
  return {to};
}

/** The board whose heading or picture the reader has scrolled to. */
function nearest(boards: readonly Board[]): Board | undefined {
  const tops = boards.map((board) => ({board, top: (board.anchor ?? board.heading).getBoundingClientRect().top}));
  if (window.scrollY < 40) return boards[0];
  return tops.find(({top}) => top > 0)?.board ?? boards.at(-1);
}
