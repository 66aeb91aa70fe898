import type {Page} from "playwright-core";
import {launch, settled, watch} from "../pages/browser.js";
import {DIST, builtPages} from "../pages/dist.js";
import {serve} from "../pages/serve.js";
import {ms, spread, type Line} from "./measure.js";

/** Changes of a control that are measured on each page, after some that warm up. */
const CHANGES = 50;
const WARM_UP = 10;

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
      const latencies = (await latenciesOf(page)).slice(WARM_UP);
      const charts = spread(latencies.map(({pictureMs}) => pictureMs));
      const all = spread(latencies.map(({pageMs}) => pageMs));
      lines.push({
        what: `control to painted charts, ${path}`, value: ms(charts.p95Ms), goal: "33 ms at p95",
        note: `p95; median ${ms(charts.medianMs)}; with all numbers and lists: median ${ms(all.medianMs)}, p95 ${ms(all.p95Ms)}`,
      });
    }
    return lines;
  } finally {
    await browser.close();
    await site.close();
  }
}

/** From a change to the frame that shows the last altered picture, and the last altered thing of any kind, ms. */
interface Latency {
  readonly pictureMs: number;
  readonly pageMs: number;
}

/** Moves the page's first slider to and fro, and times what follows. */
function latenciesOf(page: Page): Promise<Latency[]> {
  return page.evaluate(async (changes) => {
    const slider = document.querySelector<HTMLInputElement>("main .control.number .slider") as HTMLInputElement;
    const first = slider.valueAsNumber;
    const [min, max] = [Number(slider.min), Number(slider.max)];
    const stride = ((max - min) / 20) * (first > (min + max) / 2 ? -1 : 1);
    const latencies: Latency[] = [];
    for (let i = 0; i < changes; i++) {
      const start = performance.now();
      const latency = {pictureMs: 0, pageMs: 0};
      const frames: Promise<void>[] = [];
      const observer = new MutationObserver((records) => {
        const ofPicture = records.some(({target, addedNodes}) => [target, ...addedNodes].some((node) =>
          // Marks in lists of checks are drawn too, but belong to the words.
          node instanceof Element && (node.querySelector("figure svg") || (node.closest("figure") && (node.closest("svg") || node.querySelector("svg"))))));
        // The frame in which the change is drawn has been painted when the first message after it comes.
        frames.push(new Promise((resolve) => requestAnimationFrame(() => {
          const channel = new MessageChannel();
          channel.port1.onmessage = () => {
            latency.pageMs = performance.now() - start;
            if (ofPicture) latency.pictureMs = latency.pageMs;
            resolve();
          };
          channel.port2.postMessage(null);
        })));
      });
      observer.observe(document.querySelector("main") as Element, {subtree: true, childList: true, attributes: true, characterData: true});
      slider.value = String(first + (i % 2 === 0 ? stride : 0));
      slider.dispatchEvent(new Event("input", {bubbles: true}));
      // Long enough for everything that follows from the change, what is written to the store included.
      await new Promise((resolve) => setTimeout(resolve, 200));
      observer.disconnect();
      await Promise.all(frames);
      latencies.push(latency);
    }
    return latencies;
  }, CHANGES);
}
