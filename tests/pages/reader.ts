import type {Browser, BrowserContext, Page} from "playwright-core";
import {afterAll, beforeAll} from "vitest";
import {launch, settled, watch, type Watched} from "./browser.js";
import {DIST} from "./dist.js";
import {serve, type Site} from "./serve.js";

/** A reader of the built site, for the tests of one file. */
export interface Reader {
  readonly origin: string;
  /** What has gone wrong on the pages of this visit: errors, and requests that left the site. */
  readonly problems: readonly string[];
  /** Begins a visit with nothing kept from before, and opens a page. */
  begin(path?: string): Promise<Page>;
  open(path: string): Promise<void>;
  /** Another tab of the same visit. */
  another(): Promise<Watched>;
  end(): Promise<void>;
}

/** Serves the built site and starts a browser for all tests of the file that calls it. */
export function siteReader(): Reader {
  let site: Site;
  let browser: Browser;
  let context: BrowserContext;
  let watched: Watched;
  beforeAll(async () => {
    [site, browser] = await Promise.all([serve(DIST), launch()]);
  });
  afterAll(async () => {
    await browser?.close();
    await site?.close();
  });
  const open = async (path: string) => {
    await watched.page.goto(site.origin + path);
    await settled(watched.page);
  };
  return {
    get origin() {
      return site.origin;
    },
    get problems() {
      return watched.problems;
    },
    async begin(path) {
      context = await browser.newContext({viewport: {width: 1280, height: 900}, acceptDownloads: true});
      watched = await watch(context, site.origin);
      if (path) await open(path);
      return watched.page;
    },
    open,
    another: () => watch(context, site.origin),
    end: () => context.close(),
  };
}
