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
  const first = await filesOf(browser, origin, "/");
  const next: Weight[] = [];
  for (const path of paths.filter((each) => each !== "/")) {
    const files = await filesOf(browser, origin, path);
    next.push(weightOf(path, new Map([...files].filter(([url]) => !first.has(url)))));
  }
  return {first: weightOf("/", first), next};
}

function weightOf(path: string, files: ReadonlyMap<string, number>): Weight {
  return {path, requests: files.size, bytes: [...files.values()].reduce((sum, bytes) => sum + bytes, 0)};
}

/** Every file that a page asks for until it rests, by its address, and its size. */
async function filesOf(browser: Browser, origin: string, path: string): Promise<Map<string, number>> {
  const context = await browser.newContext({viewport: {width: 1280, height: 900}});
  try {
    const {page} = await watch(context, origin);
    const files = new Set<string>();
    page.on("response", (response) => {
      if (response.url().startsWith(origin)) files.add(new URL(response.url()).pathname);
    });
    await page.goto(origin + placeOf(path), {waitUntil: "networkidle"});
    await settled(page);
    return new Map([...files].map((file) => [file, sizeOf(file)]));
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
