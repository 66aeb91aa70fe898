import type {Browser, BrowserContext, Page} from "playwright-core";
import {afterAll, beforeAll} from "vitest";
import {GUESSES} from "../../lib/exercises/guesses.js";
import {launch, settled, watch, type Watched} from "./browser.js";
import {DIST, placeOf} from "./dist.js";
import {OUTSIDE, serve, type Site} from "./serve.js";

/** A reader of the built site, for the tests of one file. */
export interface Reader {
  readonly origin: string;
  /** What has gone wrong on the pages of this visit: errors, and requests that left the site. */
  readonly problems: readonly string[];
  /**
   * Begins a visit with nothing kept from before, and opens a page, if one is named. Its reader has seen all answers, so that no number is
   * hidden, unless `asked` is set.
   */
  begin(path?: string, options?: {readonly asked?: boolean}): Promise<Page>;
  /** Opens a page as the notebook calls it: `/loads`. */
  open(path: string): Promise<void>;
  /** Another tab of the same visit. */
  another(): Promise<Watched>;
  end(): Promise<void>;
}

/** Where the browser keeps which visit it is in. */
const VISIT_KEY = "tests/visit";

/** Runs in each page of a visit, before its own scripts: in the first one, nothing is kept from the visit before. */
function beginVisit({key, visit, waived}: {key: string; visit: number; waived: string[]}): void {
  if (!location.protocol.startsWith("http")) return;
  if (Number(localStorage.getItem(key)) < visit) {
    localStorage.clear();
    sessionStorage.clear();
    localStorage.setItem(key, String(visit));
  }
  for (const name of waived) sessionStorage.setItem(`plank-and-tee/guess/${name}`, "null");
}

/** The built site, served, and a browser, for all tests of the file that calls it; to be read within a test. */
export function siteAndBrowser(hosted: Parameters<typeof serve>[1] = {}): {readonly origin: string; readonly browser: Browser} {
  let site: Site;
  let browser: Browser;
  beforeAll(async () => {
    [site, browser] = await Promise.all([serve(DIST, hosted), launch()]);
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

/** A window as wide as most. */
const WINDOW = {width: 1280, height: 900};

/**
 * Serves the built site and starts a browser for all tests of the file that calls it. Visits follow each other in one tab,
 * which spares the browser to start up and compile the site anew for each: that takes longer than most tests.
 */
export function siteReader(hosted: Parameters<typeof serve>[1] = {}): Reader {
  const served = siteAndBrowser(hosted);
  let context: BrowserContext | undefined;
  let watched: Watched;
  let visit = 0;
  /** What each page of the visit begins with. */
  let eachPage: Awaited<ReturnType<BrowserContext["addInitScript"]>> | undefined;
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
      if (!context) {
        context = await served.browser.newContext({viewport: WINDOW, acceptDownloads: true});
        watched = await watch(context, served.origin);
      }
      visit += 1;
      const begun = {key: VISIT_KEY, visit, waived: asked ? [] : [...Object.keys(GUESSES), "*"]};
      await eachPage?.dispose();
      eachPage = await context.addInitScript(beginVisit, begun);
      // The visit before has ended outside: to go there again would load it once more.
      if (watched.page.url() === served.origin + OUTSIDE) await watched.page.evaluate(beginVisit, begun);
      else await watched.page.goto(served.origin + OUTSIDE);
      watched.problems.length = 0;
      if (path) await open(path);
      return watched.page;
    },
    open,
    another: () => {
      if (!context) throw new Error("a visit begins in its first tab");
      return watch(context, served.origin);
    },
    async end() {
      const {page} = watched;
      for (const other of context?.pages() ?? []) if (other !== page) await other.close();
      await page.unrouteAll();
      // Outside first: a page that is left need not be drawn anew for the window of the next visit.
      await page.goto(served.origin + OUTSIDE);
      await page.emulateMedia({media: null, colorScheme: null, reducedMotion: null, forcedColors: null});
      await page.setViewportSize(WINDOW);
    },
  };
}
