import type {Options, SearchResult} from "minisearch";

/** What can be found, in the words of its heading. */
export const GROUPS = {page: "Pages", word: "Words", symbol: "Symbols", check: "Checks and limits", input: "Inputs"} as const;
export type GroupName = keyof typeof GROUPS;

/** Something that can be found. */
export interface Found {
  readonly group: GroupName;
  readonly title: string;
  /** What stands beside it: the page of a heading, a word's meaning, a check's clause. */
  readonly beside: string;
  /** The page, by the name of its folder. */
  readonly page: string;
  /** The place on it, as in an address; empty for its head. */
  readonly anchor: string;
}

/** The same with what it is found by. */
export interface Document extends Found {
  readonly id: string;
  /** Other names of it. */
  readonly also: string;
  readonly text: string;
}

/** Words that stand in every text and tell nothing of it. */
const EMPTY = new Set("a an and are as at be but by for from has have if in is it its of on or that the their them there these they this to too was what where which while with".split(" "));

const singular = (term: string) => (/^\p{L}{3,}[^s]s$/u.test(term) ? term.slice(0, -1) : term);

/** Words of a text: a symbol such as `f_se` is one, and can be typed without its underscore. */
export function tokens(text: string): string[] {
  return (text.match(/[\p{L}\p{N}_]+/gu) ?? []).flatMap((word) => (word.includes("_") ? [word, word.replaceAll("_", "")] : [word]));
}

/** How the index is made when the site is built and how it is read in the browser: the two must be alike. */
export const INDEX_OPTIONS: Options<Document> = {
  fields: ["title", "also", "beside", "text"],
  storeFields: ["group", "title", "beside", "page", "anchor"],
  tokenize: tokens,
  processTerm: (term) => {
    const word = term.toLowerCase();
    return EMPTY.has(word) ? null : singular(word);
  },
};

/** What the library does of an index, here. */
interface Index {
  search(query: string, options: object): (SearchResult & Partial<Found>)[];
}

/** Found things of one kind, the best first. */
export interface FoundGroup {
  readonly name: GroupName;
  readonly found: readonly Found[];
  /** How many more there are. */
  readonly more: number;
}

/** How many of a kind are listed. */
const MOST = 6;

/**
 * What answers a query, by kind, the kind with the best answer first. Beginnings of words count, and words with a letter
 * or two wrong; where nothing has all of the words, what has some of them.
 */
export function search(index: Index, query: string, most = MOST): FoundGroup[] {
  if (query.trim() === "") return [];
  const look = (combineWith: "AND" | "OR") => index.search(query, {
    combineWith,
    prefix: (term: string) => term.length > 1,
    fuzzy: (term: string) => (term.length > 3 ? 0.25 : false),
    boost: {title: 5, also: 4, beside: 1.5},
    weights: {prefix: 0.6, fuzzy: 0.3},
  });
  const all = look("AND");
  const results = all.length > 0 ? all : look("OR");
  const groups = new Map<GroupName, Found[]>();
  for (const {group, title, beside, page, anchor} of results) {
    if (group === undefined || title === undefined || beside === undefined || page === undefined || anchor === undefined) continue;
    const own = groups.get(group) ?? [];
    own.push({group, title, beside, page, anchor});
    groups.set(group, own);
  }
  return [...groups].map(([name, found]) => ({name, found: found.slice(0, most), more: Math.max(0, found.length - most)}));
}
