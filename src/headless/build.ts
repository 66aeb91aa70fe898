/**
 * `npm run build`: builds the site into `dist` and fails on what the generator lets pass: an error in a cell, a broken
 * link or anchor, an address on another origin, a bundled package without its license.
 */
import {readFileSync, rmSync, writeFileSync} from "node:fs";
import {join} from "node:path";
import {bundleSite} from "./bundle.js";
import {dataAhead} from "./dataAhead.js";
import {runGenerator} from "./framework.js";
import {inspectSite, listFiles} from "./inspect.js";
import {notices} from "./notices.js";
import {clearCache, prepare} from "./prepare.js";
import {ROOT} from "./root.js";
import {fontsAsFiles} from "./fonts.js";

const DIST = join(ROOT, "dist");

clearCache();
prepare();
rmSync(DIST, {recursive: true, force: true});
const [{code, printed}] = await Promise.all([runGenerator(["build"], {capture: true}), dataAhead()]);
if (code !== 0) {
  fail([printed.trim()]);
} else {
  for (const file of listFiles(DIST).filter((name) => name.endsWith(".html"))) finishPage(join(DIST, file));
  const {packages} = await bundleSite(DIST);
  fontsAsFiles(DIST);
  writeFileSync(join(DIST, "notices.txt"), notices(packages));
  // Some hosts hide folders whose names begin with an underscore unless this file says otherwise.
  writeFileSync(join(DIST, ".nojekyll"), "");
  const problems = inspectSite(DIST);
  if (problems.length) fail(problems);
  else console.log(`built ${listFiles(DIST).filter((name) => name.endsWith(".html")).length} pages into dist`);
}

/** Puts the language and a viewport that can be zoomed into the page itself, for a reader without scripts. */
function finishPage(file: string): void {
  const html = readFileSync(file, "utf8");
  writeFileSync(file, html.replace("<html>", '<html lang="en">').replace(", maximum-scale=1", ""));
}

function fail(problems: readonly string[]): void {
  console.error(problems.join("\n"));
  process.exitCode = 1;
}
