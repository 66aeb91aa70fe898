import type {Board} from "../boards/boards.js";
import {projectorScale} from "../drawings/room.js";

/** How a piece of the page stands while one board is shown; the style does the rest (`style/projector.css`). */
type Place = "off" | "way" | "heading" | "picture" | "words" | "late";

/** More controls than these push the sentence that says what the picture shows out of sight, so that it comes before them. */
const MANY_CONTROLS = 3;
/** A picture too high for the room is still shown so large, as a share of the view's scale, and scrolled: type that nobody reads is no picture. */
const LEAST_SHARE = 0.8;

const ANCHORS = "figure, .guess";

/** Shows one board of a page and nothing else of it: every piece stays where it is, live, and is marked with its place. */
export function stage(main: HTMLElement, board: Board): void {
  clearStage(main);
  main.dataset["stage"] = board.kind === "picture" && board.anchor?.classList.contains("wide") ? "wide" : board.kind;
  place(main, board);
  const controls = [...main.querySelectorAll<HTMLElement>('[data-place="words"] .control')].filter((control) => control.getClientRects().length > 0);
  main.toggleAttribute("data-many-controls", controls.length > MANY_CONTROLS);
  for (const drawing of main.querySelectorAll<SVGElement>('[data-place="picture"] figure .figure-body svg[viewBox]')) {
    const [, , width = 0, height = 0] = (drawing.getAttribute("viewBox") ?? "").split(/[\s,]+/).map(Number);
    if (width === 0 || height === 0) continue;
    drawing.style.setProperty("--ratio", String(width / height));
    drawing.style.setProperty("--least", `${Math.round(LEAST_SHARE * projectorScale() * width)}px`);
  }
}

/** Takes all marks away: the page is as it was. */
export function clearStage(main: HTMLElement): void {
  delete main.dataset["stage"];
  main.removeAttribute("data-many-controls");
  for (const node of main.querySelectorAll("[data-place]")) node.removeAttribute("data-place");
}

function place(within: Element, board: Board): void {
  for (const child of within.children as HTMLCollectionOf<HTMLElement>) {
    if (child === board.heading) mark(child, "heading");
    else if (board.pieces.includes(child)) placePiece(child, board);
    else if (child.contains(board.heading) || board.pieces.some((piece) => child.contains(piece))) {
      mark(child, "way");
      place(child, board);
    } else mark(child, "off");
  }
}

function placePiece(piece: HTMLElement, board: Board): void {
  const {anchor, kind} = board;
  if (kind === "picture" && anchor && piece.contains(anchor)) narrow(piece, anchor);
  else mark(piece, board.before.includes(piece) ? "late" : "words");
}

/** Finds the part of a piece that holds the picture alone; what stands beside it are words, and other pictures are left out. */
function narrow(node: HTMLElement, anchor: HTMLElement): void {
  const others = [...node.querySelectorAll(ANCHORS)].some((other) => other !== anchor && !anchor.contains(other));
  if (node === anchor || (!others && !node.matches(".beside, .pair"))) {
    mark(node, "picture");
    return;
  }
  mark(node, "way");
  for (const child of node.children as HTMLCollectionOf<HTMLElement>) {
    if (child.contains(anchor)) narrow(child, anchor);
    else mark(child, child.matches(ANCHORS) || child.querySelector(ANCHORS) ? "off" : "words");
  }
}

const mark = (node: HTMLElement, as: Place): void => void (node.dataset["place"] = as);
