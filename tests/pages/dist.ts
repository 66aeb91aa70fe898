import {existsSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {ROOT} from "../../src/headless/prepare.js";

/** The built site. */
export const DIST = join(ROOT, "dist");

/** The pages of the built site as the notebook calls them: `/`, `/loads`; `addressOf` tells where they are. */
export function builtPages(): string[] {
  if (!existsSync(join(DIST, "pages"))) throw new Error("There is no built site; run npm run build first.");
  return ["/", ...readdirSync(join(DIST, "pages")).map((name) => `/${name}`).sort()];
}
