import {existsSync} from "node:fs";
import {chromium, type Browser, type BrowserContext, type Page} from "playwright-core";

const ARGUMENTS = [
  "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync",
  "--no-first-run", "--disable-dev-shm-usage",
];

/** Where systems keep a browser of this kind; `CHROME_PATH` names another. */
const INSTALLED = [
  process.env["CHROME_PATH"],
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/** Starts an installed Chromium or Chrome, or the one that comes as a package. */
export async function launch(): Promise<Browser> {
  const installed = INSTALLED.find((path) => path && existsSync(path));
  if (installed) return chromium.launch({executablePath: installed, args: ARGUMENTS});
  const {default: packaged} = await import("@sparticuz/chromium");
  return chromium.launch({executablePath: await packaged.executablePath(), args: [...packaged.args, ...ARGUMENTS], headless: true});
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
