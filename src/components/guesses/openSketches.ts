import type {SketchName} from "../../lib/exercises/sketches.js";
import {element} from "../dom.js";
import {openGuesses} from "../veil/open.js";

const KEY = "plank-and-tee/sketch/";

/** A drawing's values, or null where the curve was asked for instead. */
export type Sketched = readonly number[] | null;

const known = new Map<SketchName, Sketched | undefined>();

function recall(name: SketchName): Sketched | undefined {
  try {
    const text = sessionStorage.getItem(`${KEY}${name}`);
    const said = text === null ? undefined : (JSON.parse(text) as unknown);
    return said === null || (Array.isArray(said) && said.every((value) => Number.isFinite(value))) ? (said as Sketched) : undefined;
  } catch {
    return undefined;
  }
}

/** Curves that wait to be drawn. */
export const openSketches = {
  said(name: SketchName): Sketched | undefined {
    if (!known.has(name)) known.set(name, recall(name));
    const said = known.get(name);
    // One who wants all answers wants the curves as well.
    return said ?? (openGuesses.takesWaivers() && (said === null || openGuesses.allWaived()) ? null : undefined);
  },
  settle(name: SketchName, said: Sketched): void {
    known.set(name, said);
    try {
      sessionStorage.setItem(`${KEY}${name}`, JSON.stringify(said));
    } catch {
      // Without storage it lasts as long as the page.
    }
    lift();
  },
};

function lift(): void {
  for (const node of document.querySelectorAll<HTMLElement>("[data-unsketched]")) {
    if (openSketches.said(node.dataset["unsketched"] as SketchName) !== undefined) show(node);
  }
}

openGuesses.observe(lift);

function show(node: HTMLElement): void {
  delete node.dataset["unsketched"];
  node.firstElementChild?.removeAttribute("inert");
  node.querySelector(":scope > .unsketched-note")?.remove();
}

/** Hides a chart in the room that it takes until its curve has been drawn or is asked for. */
export function untilSketched(name: SketchName, chart: HTMLElement): HTMLElement {
  if (openSketches.said(name) !== undefined) return chart;
  chart.setAttribute("inert", "");
  return element("div", {class: "unsketched", "data-unsketched": name}, chart, element("p", {class: "unsketched-note"}, "This chart comes once you have drawn its curve above, or asked for it."));
}
