/** A page of the notebook, as its front matter and its first heading tell it. */
export interface PageEntry {
  /** Its folder: `loads`; the first page is `index`. */
  readonly name: string;
  readonly title: string;
  /** What it is about, in one sentence. */
  readonly description: string;
  /** Read in order, or consulted. */
  readonly kind: "step" | "reference";
  /** Its place among the pages; they stand ten apart, and chapters begin at round ones. */
  readonly order: number;
}

/** Pages that belong together. */
export interface Chapter {
  readonly title: string;
  /** Number of its first page in reading order, from 1; undefined of those to consult. */
  readonly first: number | undefined;
  readonly pages: readonly PageEntry[];
}

/** The parts of the tour, by the places where they begin. */
const CHAPTERS: readonly (readonly [from: number, title: string])[] = [
  [0, "To begin with"], [40, "The deck"], [110, "Beams, roof, columns"], [135, "The building"], [155, "The decision"], [161, "For a class"],
];

/** Pages in reading order by chapter, and those to consult last. */
export function chapters(pages: readonly PageEntry[]): Chapter[] {
  const steps = pages.filter(({kind}) => kind === "step");
  const told = CHAPTERS.map(([from, title], i) => {
    const to = CHAPTERS[i + 1]?.[0] ?? Infinity;
    const own = steps.filter(({order}) => order >= from && order < to);
    return {title, first: steps.indexOf(own[0] as PageEntry) + 1, pages: own};
  });
  return [...told, {title: "For reference", first: undefined, pages: pages.filter(({kind}) => kind === "reference")}].filter(({pages: own}) => own.length > 0);
}

/** The link to a page from any other, by the name of its folder. */
export function hrefOf(page: string): string {
  return new URL(page === "index" ? "../../../" : `../../../pages/${page}/`, import.meta.url).href;
}
