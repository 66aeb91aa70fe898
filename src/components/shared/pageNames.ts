/** A page of the notebook as its first heading names it. */
export interface PageName {
  /** From the site's root: `/loads`. */
  readonly path: string;
  readonly name: string;
  /** Whether it is consulted rather than read in order. */
  readonly reference: boolean;
}

/** The link to a page from any other, by the name of its folder. */
export function hrefOf(page: string): string {
  return new URL(page === "index" ? "../../../" : `../../../pages/${page}/`, import.meta.url).href;
}

/** The pages that are read in order after the first. */
export function stepsOf(pages: readonly PageName[]): PageName[] {
  return pages.filter((page) => !page.reference && page.path !== "/index");
}
