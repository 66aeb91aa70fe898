import type {Page} from "playwright-core";
import {launch, settled, watch} from "../pages/browser.js";
import {DIST, builtPages} from "../pages/dist.js";
import {serve} from "../pages/serve.js";
import {ms, spread, type Line} from "./measure.js";

/** Changes of a control that are measured on each page. */
const CHANGES = 60;

/** From a control's change to the painted charts, on each page of the built site that has a slider. */
export async function pageLines(): Promise<Line[]> {
  const [site, browser] = await Promise.all([serve(DIST), launch()]);
  try {
    const context = await browser.newContext({viewport: {width: 1280, height: 900}});
    const {page} = await watch(context, site.origin);
    const lines: Line[] = [];
    for (const path of builtPages()) {
      await page.goto(site.origin + path);
      await settled(page);
      if ((await page.locator("main .control.number .slider").count()) === 0) continue;
      const {medianMs, p95Ms} = spread((await latenciesMs(page)).slice(CHANGES / 6));
      lines.push({what: `control to painted charts, ${path}`, value: ms(medianMs), goal: "33 ms at p95", note: `p95 ${ms(p95Ms)}; last change of the page to the frame after it`});
    }
    return lines;
  } finally {
    await browser.close();
    await site.close();
  }
}

/**
 * Moves the page's first slider to and fro; each time the clock runs from the change to the frame that shows the last
 * thing that the page altered because of it.
 */
function latenciesMs(page: Page): Promise<number[]> {
  return page.evaluate(async (changes) => {
    const slider = document.querySelector<HTMLInputElement>("main .control.number .slider") as HTMLInputElement;
    const painted = () => new Promise<number>((resolve) => {
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => resolve(performance.now());
        channel.port2.postMessage(null);
      });
    });
    const times: number[] = [];
    for (let i = 0; i < changes; i++) {
      let last = performance.now();
      const start = last;
      const pending: Promise<void>[] = [];
      const observer = new MutationObserver(() => {
        pending.push(painted().then((at) => {
          last = Math.max(last, at);
        }));
      });
      observer.observe(document.body, {subtree: true, childList: true, attributes: true, characterData: true});
      if (i % 2 === 0) slider.stepUp();
      else slider.stepDown();
      slider.dispatchEvent(new Event("input", {bubbles: true}));
      // Long enough for everything that follows from the change, the strip and what is written to the store included.
      await new Promise((resolve) => setTimeout(resolve, 250));
      observer.disconnect();
      await Promise.all(pending);
      times.push(last - start);
    }
    return times;
  }, CHANGES);
}
