import type {Page} from "playwright-core";
import type {Design} from "../../lib/design/design.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {QUANTITIES, type QuantityName} from "../../lib/quantities.js";
import {catalog} from "../support/designs.js";
import {readShown, reads} from "../support/shownNumber.js";

/** All of a page is in sight, so that no picture waits until it is. */
export const WHOLE_PAGE = {width: 1280, height: 12_000};
/** Words lag behind the design by some frames, on a busy machine by many, ms. */
export const LAG_MS = 20_000;

/** A number that a page shows, and what it stands for. */
export interface Mark {
  readonly quantity: QuantityName;
  readonly text: string;
  readonly inStrip: boolean;
}

/** Opens a design in the page that is open, as a reader opens a file. */
export async function openDesign(page: Page, design: Design): Promise<void> {
  await page.locator(".strip-file").setInputFiles({name: "floor.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(design))});
  await page.waitForFunction((name) => document.querySelector(".strip-name")?.textContent === name, design.name);
}

/** What the page shows once its frames have passed; parts that the design has not are left out. */
export function marks(page: Page): Promise<Mark[]> {
  return page.evaluate(async () => {
    for (let i = 0; i < 4; i++) await new Promise(requestAnimationFrame);
    return [...document.querySelectorAll<HTMLElement | SVGElement>("[data-quantity]")].filter((node) => !node.closest("[hidden]"))
      .map((node) => ({quantity: node.dataset["quantity"] as never, text: node.textContent, inStrip: node.closest("#strip") !== null}));
  });
}

/** What each quantity of a design is by the library; the columns are worked out when one of theirs is asked for. */
export function quantitiesOf(design: Design): (quantity: QuantityName) => number | undefined {
  const evaluation = evaluate(design, catalog);
  let columns: ReturnType<typeof columnsOf> | undefined;
  const known = new Map<QuantityName, number | undefined>();
  return (quantity) => {
    if (!known.has(quantity)) known.set(quantity, QUANTITIES[quantity](evaluation, () => (columns ??= columnsOf(evaluation, catalog))));
    return known.get(quantity);
  };
}

/** What a page says otherwise than the library. */
export function faultsOf(name: string, valueOf: (quantity: QuantityName) => number | undefined, shown: readonly Mark[]): string[] {
  return shown.flatMap(({quantity, text}) => {
    const value = valueOf(quantity);
    const unit = quantity.split(", ")[1] ?? "";
    return value !== undefined && reads(readShown(text, unit), value) ? [] : [`${name}: ${quantity} reads ${text}, and is ${value}`];
  });
}

/** Looks until there is no fault or the patience has an end, and gives back what it saw last. */
export async function seenWithoutFault<T>(look: () => Promise<T>, faults: (seen: T) => readonly string[]): Promise<T> {
  const until = Date.now() + LAG_MS;
  let seen = await look();
  while (faults(seen).length > 0 && Date.now() < until) seen = await look();
  return seen;
}
