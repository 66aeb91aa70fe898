/**
 * `npm run picture`: takes the picture in README anew from the built site: the chart on the page about decks with the first
 * starter design, its guess waived, in the light theme and of one size, whatever the machine.
 */
import {join} from "node:path";
import {ROOT} from "../../src/headless/root.js";
import {launch, settled, watch} from "./browser.js";
import {DIST, placeOf} from "./dist.js";
import {serve} from "./serve.js";

const FILE = join(ROOT, "src", "images", "deck.png");
const SIZE = {width: 1280, height: 860};

const [site, browser] = await Promise.all([serve(DIST), launch()]);
try {
  const context = await browser.newContext({viewport: SIZE, colorScheme: "light", deviceScaleFactor: 1, reducedMotion: "reduce"});
  const {page, problems} = await watch(context, site.origin);
  await page.goto(site.origin + placeOf("/deck"));
  await settled(page);
  await page.getByRole("button", {name: "Tell me", exact: true}).first().click();
  await page.evaluate(async () => {
    await document.fonts.ready;
    document.getElementById("how-far-does-it-reach")?.scrollIntoView({behavior: "instant"});
  });
  // The candidates' curves come when the search has ended, and the pointer's own marks are not wanted.
  await page.mouse.move(0, SIZE.height - 1);
  await page.waitForTimeout(1500);
  await page.screenshot({path: FILE, animations: "disabled"});
  if (problems.length) throw new Error(problems.join("\n"));
  console.log(`took ${FILE}`);
} finally {
  await browser.close();
  await site.close();
}
