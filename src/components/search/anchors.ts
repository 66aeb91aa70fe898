/** Places that a found thing leads to and that have no heading of their own: the same names when the index is made and on the page. */
export const anchorOf = {
  word: (term: string): string => `word-${term.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`,
  symbol: (name: string): string => `symbol-${name}`,
  /** The control of a field, by its path. */
  input: (path: string): string => `input-${path}`,
};
