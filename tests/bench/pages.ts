import {readdirSync} from "node:fs";
import {join} from "node:path";
import {build} from "esbuild";
import type {Page} from "playwright-core";
import type {SweepInput} from "../../lib/deck/sweep.js";
import {ROOT} from "../../src/headless/root.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {launch, settled, watch} from "../pages/browser.js";
import {DIST, builtPages, placeOf} from "../pages/dist.js";
import {serve} from "../pages/serve.js";
import {weights, type Weight} from "../pages/weights.js";
import {ms, seconds, spread, whole, type Line} from "./measure.js";
import {HANDBOOK, MEMBER_SPANS, MIX, MIX_WORDS, RUNS, SPANS} from "./mix.js";

/** Changes of a control that are measured on each page, after some that warm up. */
const CHANGES = 50;
const WARM_UP = 10;

/** From a control's change to the painted pictures that the reader sees, on each page of the built site that has a slider. */
export async function pageLines(): Promise<Line[]> {
  const [site, browser] = await Promise.all([serve(DIST), launch()]);
  try {
    const context = await browser.newContext({viewport: {width: 1280, height: 900}});
    const {page} = await watch(context, site.origin);
    await page.goto(site.origin + "/");
    const lines: Line[] = [...(await memberSpanLines(page)), await sweepLine(page)];
    const {first, next} = await weights(browser, site.origin, builtPages());
    lines.push(weightLine(first, "the first page", "30 requests, 350 KB"), ...next.map((weight) => weightLine(weight, "beyond the first page", "100 KB")));
    for (const path of builtPages()) {
      await page.goto(site.origin + placeOf(path));
      await settled(page);
      if ((await page.locator("main .control.number .slider").count()) === 0) continue;
      const latencies = (await latenciesOf(page)).slice(WARM_UP);
      const charts = spread(latencies.map(({pictureMs}) => pictureMs));
      const all = spread(latencies.map(({pageMs}) => pageMs));
      lines.push({
        what: `control to painted pictures in the window, ${path}`, value: ms(charts.p95Ms), goal: "33 ms at p95",
        note: `p95; median ${ms(charts.medianMs)}; with all numbers and lists: median ${ms(all.medianMs)}, p95 ${ms(all.p95Ms)}`,
      });
    }
    return lines;
  } finally {
    await browser.close();
    await site.close();
  }
}

function weightLine({path, requests, bytes}: Weight, what: string, goal: string): Line {
  return {what: `${path}, ${what}`, value: `${requests} requests, ${whole(bytes / 1000)} KB`, goal, note: "compressed; charts are fetched ahead by the first page"};
}

/** From a change to the frame that shows the last altered picture in the window, and the last altered thing of any kind anywhere, ms. */
interface Latency {
  readonly pictureMs: number;
  readonly pageMs: number;
}

/** Moves the page's first slider to and fro, with the slider in the middle of the window, and times what follows. */
function latenciesOf(page: Page): Promise<Latency[]> {
  return page.evaluate(async (changes) => {
    const slider = document.querySelector<HTMLInputElement>("main .control.number .slider") as HTMLInputElement;
    const first = slider.valueAsNumber;
    const [min, max] = [Number(slider.min), Number(slider.max)];
    const stride = ((max - min) / 20) * (first > (min + max) / 2 ? -1 : 1);
    const latencies: Latency[] = [];
    slider.scrollIntoView({block: "center", behavior: "instant"});
    await new Promise((resolve) => setTimeout(resolve, 500));
    for (let i = 0; i < changes; i++) {
      const start = performance.now();
      const latency = {pictureMs: 0, pageMs: 0};
      const frames: Promise<void>[] = [];
      const observer = new MutationObserver((records) => {
        // What lies outside the window is drawn when the changes have come to rest. Marks in lists of checks are drawn too, but belong to the words.
        const ofPicture = records.some(({target, addedNodes}) => [target, ...addedNodes].some((node) => node instanceof Element &&
          [...node.querySelectorAll("figure"), node.closest("figure")].some((shown) => shown?.querySelector("svg") &&
            shown.getBoundingClientRect().bottom > 0 && shown.getBoundingClientRect().top < window.innerHeight)));
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

/** Address of the built site's worker, whose name carries a hash of its content. */
function engineAddress(): string {
  const file = readdirSync(join(DIST, "_import", "site")).find((entry) => /^engine\.[0-9a-f]+\.js$/.test(entry));
  if (!file) throw new Error("The built site has no worker; run npm run build first.");
  return `/_import/site/${file}`;
}

/** A worker of our own that evaluates a mix of member-spans with the library, made small as the site's is, and answers with the times of its runs. */
async function mixWorker(): Promise<string> {
  const imported = (names: string, file: string) => `import {${names}} from "./lib/${file}.js";`;
  const contents = `
    ${imported("readCatalog", "catalog")}
    ${imported("deckRow", "deck/deckMember")}
    ${imported("patternMember", "deck/table")}
    ${imported("safeLoad", "deck/safeLoad")}
    self.onmessage = ({data: {tables, mix, conditions, criteria, spans, count, runs}}) => {
      const catalog = readCatalog(tables);
      const members = mix.map(([member, pattern, toppingIn]) => patternMember(catalog, deckRow(catalog, member), pattern, {...conditions, toppingIn}));
      let kept = 0;
      const times = Array.from({length: runs}, () => {
        const start = performance.now();
        for (let i = 0; i < count; i++) kept += safeLoad(members[i % members.length], spans.fromFt + (i % spans.count), criteria).safeLoadPsf;
        return performance.now() - start;
      });
      self.postMessage({times, kept});
    };`;
  const {outputFiles} = await build({stdin: {contents, resolveDir: ROOT, loader: "js"}, bundle: true, format: "esm", minify: true, write: false});
  return (outputFiles[0] as {text: string}).text;
}

/** Concrete and climate of the handbook's tables. */
const CONDITIONS = {concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingStrengthPsi: 3000, humidityPercent: 70} as const;
const RUN_COUNT = 7;

/** A hundred thousand member-spans in a worker of the browser. */
async function memberSpanLines(page: Page): Promise<Line[]> {
  const source = await mixWorker();
  const lines: Line[] = [];
  for (const {words, criteria, goal} of RUNS) {
    const request = {tables: readRawTables(), mix: MIX, conditions: CONDITIONS, criteria, spans: SPANS, count: MEMBER_SPANS, runs: RUN_COUNT};
    const {times, kept} = await page.evaluate(async ({source, request}) => {
      const address = URL.createObjectURL(new Blob([source], {type: "text/javascript"}));
      const worker = new Worker(address, {type: "module"});
      try {
        return await new Promise<{times: number[]; kept: number}>((resolve, reject) => {
          worker.onmessage = ({data}) => resolve(data as {times: number[]; kept: number});
          worker.onerror = (event) => reject(new Error(event.message));
          worker.postMessage(request);
        });
      } finally {
        worker.terminate();
        URL.revokeObjectURL(address);
      }
    }, {source, request});
    const {medianMs} = spread(times.slice(1));
    lines.push({
      what: `${whole(MEMBER_SPANS)} member-spans in a worker, ${words}`, value: seconds(medianMs), goal: goal?.browser,
      note: `${MIX_WORDS}; ${whole((1000 * MEMBER_SPANS) / medianMs)}/s; checksum ${kept > 0 ? "kept" : "lost"}`,
    });
  }
  return lines;
}

/** Tables that a reader may ask for at once: all deck members, two sizes of strand, bare and topped. */
const SWEEP: SweepInput = {
  members: ["8DT24", "10DT24", "10DT32", "12DT28", "12DT32", "12DT34", "15DT34", "4HC8", "4HC12"], sixteenths: [8, 9], toppingsIn: [0, 2],
  spansFt: {fromFt: 20, toFt: 80, stepFt: 1}, conditions: CONDITIONS, criteria: {untopped: HANDBOOK, topped: {...HANDBOOK, superimposedDeadPsf: 15}},
};

/** The whole tables as the product's own worker makes them, progress and rows sent to the page included. */
async function sweepLine(page: Page): Promise<Line> {
  const request = {id: 1, task: "sweep", tables: readRawTables(), input: SWEEP};
  const {cells, tookMs} = await page.evaluate(async ({address, request}) => {
    const worker = new Worker(address, {type: "module"});
    let last = {cells: 0, tookMs: 0};
    // The first run warms up.
    for (let run = 0; run < 2; run++) last = await new Promise<{cells: number; tookMs: number}>((resolve, reject) => {
      const start = performance.now();
      worker.onmessage = ({data}: MessageEvent<{kind: string; message?: string; result?: {cells: number}}>) => {
        if (data.kind === "failed") reject(new Error(data.message));
        else if (data.kind === "done") resolve({cells: data.result?.cells ?? 0, tookMs: performance.now() - start});
      };
      worker.onerror = (event) => reject(new Error(event.message));
      worker.postMessage(request);
    });
    worker.terminate();
    return last;
  }, {address: engineAddress(), request});
  return {
    what: "tables by the site's own worker", value: seconds(tookMs),
    note: `${whole(cells)} cells of safe load (the handbook's limits) and camber, half of the tees' patterns depressed; ${whole((1000 * cells) / tookMs)}/s`,
  };
}
