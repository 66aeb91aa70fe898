import {readFileSync} from "node:fs";
import {join} from "node:path";
import {gzipSync} from "node:zlib";
import type {Browser} from "playwright-core";
import {settled, watch} from "./browser.js";
import {DIST, placeOf} from "./dist.js";

/** What a page asks for. */
export interface Weight {
  readonly path: string;
  readonly requests: number;
  /** All files together, each compressed as a plain host does it (gzip); fonts are compressed as they are. */
  readonly bytes: number;
}

/** What the first page asks for, and what each other page asks for beyond it when a reader comes from there. */
export async function weights(browser: Browser, origin: string, paths: readonly string[]): Promise<{readonly first: Weight; readonly next: readonly Weight[]}> {
  const asked = new Map<string, ReadonlySet<string>>();
  for (const path of ["/", ...paths.filter((each) => each !== "/")]) asked.set(path, await filesOf(browser, origin, path));
  return weightsOf(asked);
}

/** What the first page weighs, and what each other page does beyond it, from the files that each asks for. */
export function weightsOf(asked: ReadonlyMap<string, ReadonlySet<string>>): {readonly first: Weight; readonly next: readonly Weight[]} {
  const first = asked.get("/") ?? new Set();
  const next = [...asked].filter(([path]) => path !== "/").map(([path, files]) => weightOf(path, [...files].filter((file) => !first.has(file))));
  return {first: weightOf("/", [...first]), next};
}

function weightOf(path: string, files: readonly string[]): Weight {
  return {path, requests: files.length, bytes: files.reduce((sum, file) => sum + sizeOf(file), 0)};
}

/** Every file that a page asks for until it rests, by its address. */
async function filesOf(browser: Browser, origin: string, path: string): Promise<Set<string>> {
  const context = await browser.newContext({viewport: {width: 1280, height: 900}});
  try {
    const {page} = await watch(context, origin);
    const files = new Set<string>();
    page.on("response", (response) => {
      if (response.url().startsWith(origin)) files.add(new URL(response.url()).pathname);
    });
    await page.goto(origin + placeOf(path), {waitUntil: "networkidle"});
    await settled(page);
    return files;
  } finally {
    await context.close();
  }
}

/** A file of the built site, compressed: the browser does not tell what was fetched ahead. */
function sizeOf(path: string): number {
  const file = join(DIST, path, path.endsWith("/") ? "index.html" : "");
  const bytes = readFileSync(file);
  return file.endsWith(".woff2") ? bytes.length : gzipSync(bytes).length;
}
