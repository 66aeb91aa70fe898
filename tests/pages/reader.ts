import type {Browser, BrowserContext, Page} from "playwright-core";
import {afterAll, beforeAll} from "vitest";
import {GUESSES} from "../../lib/exercises/guesses.js";
import {launch, settled, watch, type Watched} from "./browser.js";
import {DIST, placeOf} from "./dist.js";
import {serve, type Site} from "./serve.js";

/** A reader of the built site, for the tests of one file. */
export interface Reader {
  readonly origin: string;
  /** What has gone wrong on the pages of this visit: errors, and requests that left the site. */
  readonly problems: readonly string[];
  /**
   * Begins a visit with nothing kept from before, and opens a page. Its reader has seen all answers, so that no number is
   * hidden, unless `asked` is set.
   */
  begin(path?: string, options?: {readonly asked?: boolean}): Promise<Page>;
  /** Opens a page as the notebook calls it: `/loads`. */
  open(path: string): Promise<void>;
  /** Another tab of the same visit. */
  another(): Promise<Watched>;
  end(): Promise<void>;
}

/** Runs in the page, before its own scripts. */
function waiveAll(names: string[]): void {
  for (const name of names) sessionStorage.setItem(`plank-and-tee/guess/${name}`, "null");
}

/** The built site, served, and a browser, for all tests of the file that calls it; to be read within a test. */
export function siteAndBrowser(): {readonly origin: string; readonly browser: Browser} {
  let site: Site;
  let browser: Browser;
  beforeAll(async () => {
    [site, browser] = await Promise.all([serve(DIST), launch()]);
  });
  afterAll(async () => {
    await browser?.close();
    await site?.close();
  });
  return {
    get origin() {
      return site.origin;
    },
    get browser() {
      return browser;
    },
  };
}

/** Serves the built site and starts a browser for all tests of the file that calls it. */
export function siteReader(): Reader {
  const served = siteAndBrowser();
  let context: BrowserContext;
  let watched: Watched;
  const open = async (path: string) => {
    await watched.page.goto(served.origin + placeOf(path));
    await settled(watched.page);
  };
  return {
    get origin() {
      return served.origin;
    },
    get problems() {
      return watched.problems;
    },
    async begin(path, {asked = false} = {}) {
      context = await served.browser.newContext({viewport: {width: 1280, height: 900}, acceptDownloads: true});
      if (!asked) await context.addInitScript(waiveAll, Object.keys(GUESSES));
      watched = await watch(context, served.origin);
      if (path) await open(path);
      return watched.page;
    },
    open,
    another: () => watch(context, served.origin),
    end: () => context.close(),
  };
}
