/** The name of the one figure that this page shows alone, in a page of another site; undefined on a whole page (`headless/embedScript.ts`). */
export const ALONE: string | undefined = document.documentElement.dataset["embed"];

/** The starter design that an embed begins with, by its file's name, where the address says one. */
export const starterOfEmbed = (): string | null => (ALONE === undefined ? null : new URLSearchParams(location.search).get("starter"));
