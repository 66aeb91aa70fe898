import {readdirSync} from "node:fs";
import {join} from "node:path";
import {ROOT} from "../../src/headless/prepare.js";

/** The built site. */
export const DIST = join(ROOT, "dist");

/** The pages of the built site as paths: `/`, `/loads`. */
export function builtPages(): string[] {
  const names = readdirSync(DIST).filter((file) => file.endsWith(".html") && file !== "404.html");
  if (names.length === 0) throw new Error("There is no built site; run npm run build first.");
  return names.map((file) => `/${file.replace(/\.html$/, "")}`).map((path) => (path === "/index" ? "/" : path)).sort();
}
