import {existsSync, readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import type {PageEntry} from "../components/shared/pageList.js";
import {ROOT} from "./root.js";

/** The first page, which the generator wants at the root of its sources. */
const FIRST = "index";

/** The file with a page's prose, by the name of its folder. */
export function sourceOf(page: string): string {
  return page === FIRST ? join(ROOT, "src", "index.md") : join(ROOT, "src", "pages", page, "index.md");
}

/** Where a page is found on the site: `/`, `/pages/loads/`. */
export function addressOf(page: string): string {
  return page === FIRST ? "/" : `/pages/${page}/`;
}

/** All pages in reading order, as their front matter and first headings tell them. */
export function listPages(): PageEntry[] {
  const folders = readdirSync(join(ROOT, "src", "pages")).filter((name) => name !== FIRST && existsSync(sourceOf(name)));
  const pages = [FIRST, ...folders].map((name) => ({name, ...frontOf(readFileSync(sourceOf(name), "utf8"), name)}));
  return pages.sort((a, b) => a.order - b.order);
}

/** What a page says of itself before its prose; throws if a part is missing or of another kind. */
export function frontOf(text: string, page: string): Omit<PageEntry, "name"> {
  const front = /^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? "";
  const given = (key: string) => new RegExp(`^${key}: (.+)$`, "m").exec(front)?.[1] ?? "";
  const wrong = (key: string, wanted: string) => new Error(`page ${page}: ${key} in the front matter must be ${wanted}, not "${given(key)}"`);
  const description = /^"([^"]+\.)"$/.exec(given("description"))?.[1];
  if (!description) throw wrong("description", "a sentence in double quotes");
  const order = Number(given("order"));
  if (!(order > 0)) throw wrong("order", "a number above 0");
  const kind = given("kind");
  if (kind !== "step" && kind !== "reference") throw wrong("kind", "step or reference");
  const title = /^# (.+)$/m.exec(text)?.[1]?.trim();
  if (!title) throw new Error(`page ${page} has no first heading`);
  return {title, description, order, kind};
}
