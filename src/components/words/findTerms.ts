import type {TermForms} from "./termList.js";

/** Terms by the first word of each form, the longest forms first. */
export type TermIndex = ReadonlyMap<string, readonly {readonly words: readonly string[]; readonly term: string}[]>;

/** A place of a text where a term stands. */
export interface FoundTerm {
  readonly term: string;
  readonly from: number;
  readonly to: number;
}

/** A word, with what a hyphen or an apostrophe joins to it. */
const WORD = /[\p{L}\p{N}]+(?:[-\u2010\u2011'\u2019][\p{L}\p{N}]+)*/gu;

const wordsOf = (text: string) => text.toLowerCase().match(WORD) ?? [];

/** Makes terms ready to be found on a page; those that mean something else there are left out. */
export function termIndex(terms: readonly TermForms[], page: string): TermIndex {
  const index = new Map<string, {words: string[]; term: string}[]>();
  for (const {term, forms, page: only} of terms) {
    if (only !== undefined && only !== page) continue;
    for (const form of forms) {
      const words = wordsOf(form);
      const [first] = words;
      if (first === undefined) continue;
      const own = index.get(first) ?? [];
      own.push({words, term});
      index.set(first, own);
    }
  }
  for (const own of index.values()) own.sort((a, b) => b.words.length - a.words.length);
  return index;
}

/** Every term of a text in order, none within another: where several begin with one word, the longest. */
export function findTerms(text: string, index: TermIndex): FoundTerm[] {
  const words = [...text.matchAll(WORD)].map((match) => ({word: match[0].toLowerCase().replace(/[\u2010\u2011]/g, "-"), from: match.index, to: match.index + match[0].length}));
  const found: FoundTerm[] = [];
  for (let i = 0; i < words.length; i++) {
    const match = index.get((words[i] as {word: string}).word)?.find(({words: wanted}) => wanted.every((word, k) => {
      const at = words[i + k];
      return at?.word === word && (k === 0 || /^\s+$/.test(text.slice((words[i + k - 1] as {to: number}).to, at.from)));
    }));
    if (!match) continue;
    const last = words[i + match.words.length - 1] as {to: number};
    found.push({term: match.term, from: (words[i] as {from: number}).from, to: last.to});
    i += match.words.length - 1;
  }
  return found;
}
