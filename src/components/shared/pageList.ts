/** A page of the notebook, as its front matter and its first heading tell it. */
export interface PageEntry {
  /** Its folder: `loads`; the first page is `index`. */
  readonly name: string;
  readonly title: string;
  /** What it is about, in one sentence. */
  readonly description: string;
  /** Read in order, or consulted. */
  readonly kind: "step" | "reference";
}

/** The link to a page from any other, by the name of its folder. */
export function hrefOf(page: string): string {
  return new URL(page === "index" ? "../../../" : `../../../pages/${page}/`, import.meta.url).href;
}
