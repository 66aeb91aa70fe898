import {existsSync, readFileSync} from "node:fs";
import {join} from "node:path";
import {ROOT} from "./prepare.js";

/** A page in the list of pages. */
export interface Page {
  /** What the notebook calls it: `/loads`. */
  readonly path: string;
  readonly name: string;
}

/** The notebook in reading order: folder, and the title that stands in until the page names itself. */
const ORDER: readonly (readonly [string, string])[] = [
  ["index", "Begin with a floor"],
  ["loads", "What must the floor hold?"],
  ["reduction", "When is a big floor never full?"],
  ["deck", "Which deck spans it?"],
  ["tables", "What does every member carry?"],
  ["trade-offs", "What does each choice cost?"],
  ["member", "What happens inside the member?"],
  ["limits", "What stops it?"],
  ["camber", "Why does it arch?"],
  ["topping", "How much concrete levels it?"],
  ["edge-beam", "What carries the edge?"],
  ["girder", "What carries the middle?"],
  ["columns", "Where does the load go?"],
  ["story", "What is left of the story?"],
  ["daylight", "How far does the light reach?"],
  ["record", "Why this floor?"],
  ["trust", "How far to trust it"],
  ["methods", "Methods and assumptions"],
  ["glossary", "Words and symbols"],
];

/** Pages from here on are consulted rather than read in order, and stand apart in the list. */
const REFERENCE_FROM = "trust";

/** The pages that exist, in reading order, each named by its first heading. */
export function listPages(): Page[] {
  return ORDER.flatMap(([file, name]) => {
    const source = sourceOf(file);
    if (!existsSync(source)) return [];
    const heading = /^# (.+)$/m.exec(readFileSync(source, "utf8"))?.[1]?.trim();
    return [{path: `/${file}`, name: heading ?? name}];
  });
}

/** The file with a page's prose. The generator wants the first page at the root of its sources. */
export function sourceOf(page: string): string {
  return page === "index" ? join(ROOT, "src", "index.md") : join(ROOT, "src", "pages", page, "index.md");
}

/** Where a page is found on the site: `/`, `/pages/loads/`. */
export function addressOf(path: string): string {
  return path === "/" || path === "/index" ? "/" : `/pages${path}/`;
}

/** Whether a page belongs to the reference part at the end. */
export function isReference(page: Page): boolean {
  const position = (file: string) => ORDER.findIndex(([name]) => `/${name}` === file);
  return position(page.path) >= position(`/${REFERENCE_FROM}`);
}
