import {createReadStream, createWriteStream, existsSync, mkdirSync, readFileSync, renameSync} from "node:fs";
import {createRequire} from "node:module";
import {dirname, join} from "node:path";
import {pipeline} from "node:stream/promises";
import {createBrotliDecompress} from "node:zlib";
import {chromium, type Browser, type BrowserContext, type Page} from "playwright-core";
import {ROOT} from "../../src/headless/root.js";

const ARGUMENTS = [
  "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync",
  "--no-first-run", "--disable-dev-shm-usage",
];

/** Where systems keep a browser of this kind. */
const INSTALLED = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/**
 * The browser that comes as a package, unpacked once, or none where it is not for this machine: it is for Linux. It draws no
 * window around the page, which saves a third of the work that an installed one does for each load.
 */
async function unpackedBrowser(): Promise<string | undefined> {
  if (process.platform !== "linux" || process.arch !== "x64") return undefined;
  const home = join(dirname(createRequire(import.meta.url).resolve("@sparticuz/chromium")), "..", "..");
  const {version} = JSON.parse(readFileSync(join(home, "package.json"), "utf8")) as {version: string};
  const file = join(ROOT, "node_modules", ".cache", `test-browser-${version}`, "chromium");
  if (existsSync(file)) return file;
  mkdirSync(dirname(file), {recursive: true});
  // Tests of two files may come to this at once: each writes its own, and the name is given to one that is whole.
  const own = `${file}-${process.pid}-${Date.now()}`;
  await pipeline(createReadStream(join(home, "bin", "chromium.br")), createBrotliDecompress(), createWriteStream(own, {mode: 0o755}));
  renameSync(own, file);
  return file;
}

/** Starts the browser that is asked for, or the one that comes as a package; where that does not run, an installed Chromium or Chrome. */
export async function launch(): Promise<Browser> {
  const start = (executablePath: string, args = ARGUMENTS) => chromium.launch({executablePath, args, headless: true});
  const asked = process.env["CHROME_PATH"];
  if (asked) return start(asked);
  const unpacked = await unpackedBrowser();
  // It does not start where libraries of the system are missing that an installed one brings along.
  const started = unpacked && (await start(unpacked).catch(() => undefined));
  if (started) return started;
  const installed = INSTALLED.find((path) => existsSync(path));
  if (installed) return start(installed);
  const {default: packaged} = await import("@sparticuz/chromium");
  return start(await packaged.executablePath(), [...packaged.args, ...ARGUMENTS]);
}

/** A page, and what went wrong on it: errors, and requests that left the site. */
export interface Watched {
  readonly page: Page;
  readonly problems: string[];
}

/** How long a page may take to come and to do what it is asked, on a machine that is busy with other things. */
const PATIENCE_MS = 90_000;

/** Opens a page that reports its errors and every request to another origin. */
export async function watch(context: BrowserContext, origin: string): Promise<Watched> {
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  const problems: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") problems.push(`${page.url()}: console: ${message.text()}`);
  });
  page.on("pageerror", (error) => problems.push(`${page.url()}: ${error.message}`));
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(`${origin}/`) && !/^(data|blob):/.test(url)) problems.push(`${page.url()}: asked for ${url}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) problems.push(`${page.url()}: ${response.status()} for ${response.url()}`);
  });
  return {page, problems};
}

/** Waits until the strip stands, the page is shown and no cell is still waiting. */
export async function settled(page: Page): Promise<void> {
  // A page that is begun on the projector hides it.
  await page.waitForSelector("#strip .strip-name", {state: "attached"});
  await page.waitForSelector("main[data-arrived]");
  await page.waitForFunction(() => document.querySelectorAll("observablehq-loading").length === 0);
  // The strip's numbers come two frames behind the design.
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(resolve)))));
}
