import {existsSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {addressOf} from "../../src/headless/pages.js";
import {ROOT} from "../../src/headless/root.js";

/** The built site. */
export const DIST = join(ROOT, "dist");

/** The pages of the built site as the notebook calls them: `/`, `/loads`; `placeOf` tells where they are. */
export function builtPages(): string[] {
  if (!existsSync(join(DIST, "pages"))) throw new Error("There is no built site; run npm run build first.");
  return ["/", ...readdirSync(join(DIST, "pages")).map((name) => `/${name}`).sort()];
}

/** Where a page of the built site is, by what the notebook calls it: `/loads` is at `/pages/loads/`. */
export function placeOf(path: string): string {
  return addressOf(path === "/" ? "index" : path.slice(1));
}
