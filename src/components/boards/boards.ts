import type {LessonStop} from "../../lib/lessons/lesson.js";

/**
 * What is shown at one time where a page is shown piece by piece: a picture, a question, or words, with what belongs to it.
 * A path that wants a choice before its picture has a board of its own for that, `ask`, with nothing of the page on it.
 */
export interface Board {
  /** Its name in an address: the heading's and the count below it, `the-section.1`; the opening of a page is `top`. */
  readonly id: string;
  readonly kind: "words" | "question" | "picture" | "ask";
  readonly heading: HTMLElement;
  /** The picture or the question; none where there are words alone. */
  readonly anchor: HTMLElement | undefined;
  /** Pieces of the page that are shown, in order. */
  readonly pieces: readonly HTMLElement[];
  /** Pieces that lead up to the picture; the reader's eyes go to the picture first. */
  readonly before: readonly HTMLElement[];
}

const HEADINGS = "h1, h2, h3";
const ANCHORS = "figure, .guess";
/** What holds pieces side by side, or is one. */
const WHOLE = ".beside, .pair, .observablehq--block, .guess, figure, .scrolls";
/** Words alone that are worth a board of their own even after a picture. */
const APART = ".beside, .pair, table, .checks, :has(.checks, table, .scrolls)";

/** What only holds pieces; a cell does where what it shows has headings of its own. */
const holds = (node: HTMLElement): boolean => node.matches("div, section, article")
  && (node.matches(WHOLE) ? node.matches(".observablehq--block") && node.querySelector(HEADINGS) !== null : node.querySelector(`${HEADINGS}, ${ANCHORS}, .beside, .pair`) !== null);

/** Pieces of a page in order: what stands in it, wrappers that only hold several left out. */
function piecesOf(node: Element): HTMLElement[] {
  return ([...node.children] as HTMLElement[]).filter((child) => !child.hidden).flatMap((child) => (holds(child) ? piecesOf(child) : [child]));
}

/** Whether a piece has something to see: cells that only compute have not. */
const shows = (piece: HTMLElement): boolean => !piece.matches("style, script, .onward, .table-csv") && (piece.textContent?.trim() !== "" || piece.querySelector("svg, input") !== null);

/** The boards of a page as it stands now. */
export function boardsOf(main: Element): Board[] {
  const boards: Board[] = [];
  for (const {heading, pieces} of sectionsOf(main)) boards.push(...boardsBelow(heading, pieces));
  return boards;
}

function sectionsOf(main: Element): {heading: HTMLElement; pieces: HTMLElement[]}[] {
  const sections: {heading: HTMLElement; pieces: HTMLElement[]}[] = [];
  for (const piece of piecesOf(main)) {
    if (piece.matches(HEADINGS)) sections.push({heading: piece, pieces: []});
    else if (shows(piece)) sections.at(-1)?.pieces.push(piece);
  }
  return sections;
}

function boardsBelow(heading: HTMLElement, pieces: readonly HTMLElement[]): Board[] {
  const name = heading.tagName === "H1" ? "top" : heading.id || headingText({heading}).toLowerCase().replace(/[^a-z0-9]+/g, "-");
  const boards: {kind: Board["kind"]; anchor: HTMLElement | undefined; pieces: HTMLElement[]; before: HTMLElement[]}[] = [];
  let leading: HTMLElement[] = [];
  const words = () => {
    if (leading.length > 0) boards.push({kind: "words", anchor: undefined, pieces: leading, before: []});
    leading = [];
  };
  for (const piece of pieces) {
    const anchors = anchorsIn(piece);
    const last = boards.at(-1);
    if (anchors.length === 0) {
      if (!last) leading.push(piece);
      else if (last.kind === "picture" && piece.matches(APART)) boards.push({kind: "words", anchor: undefined, pieces: [piece], before: []});
      else last.pieces.push(piece);
      continue;
    }
    // A page's opening words are a board of their own; elsewhere they go with the picture that they lead up to.
    if (heading.tagName === "H1") words();
    for (const anchor of anchors) {
      boards.push({kind: anchor.matches("figure") ? "picture" : "question", anchor, pieces: [...leading, piece], before: leading});
      leading = [];
    }
  }
  words();
  return boards.map((board, i) => ({...board, heading, id: i === 0 ? name : `${name}.${i + 1}`}));
}

/** Pictures and questions of a piece that are there for this design, those within another left out. */
function anchorsIn(piece: HTMLElement): HTMLElement[] {
  const all = piece.matches(ANCHORS) ? [piece] : [...piece.querySelectorAll<HTMLElement>(ANCHORS)];
  return all.filter((node) => !node.closest("[hidden]") && !node.parentElement?.closest(ANCHORS) && node.textContent?.trim() !== "");
}

/** The heading's words, without what a link in it adds. */
export const headingText = ({heading}: Pick<Board, "heading">): string => (heading.textContent ?? "").trim();

/** Boards where a path halts: the page's own question first, if it is what is to be predicted, then the picture, all that stands below the heading, or the whole page. */
export function boardsAt(boards: readonly Board[], {heading, figure, predict}: LessonStop): Board[] {
  const whole = heading === undefined && figure === undefined;
  const below = boards.filter((board) => whole || (heading === undefined ? board.heading.tagName === "H1" : headingText(board) === heading));
  const pictures = below.filter(({kind}) => kind === "picture");
  const chosen = figure === undefined ? below : pictures.slice(figure - 1, figure);
  const question = predict?.kind === "guess" ? boards.filter(({anchor}) => anchor?.dataset["guess"] === predict.guess) : [];
  return [...question, ...chosen.filter((board) => !question.includes(board))];
}
