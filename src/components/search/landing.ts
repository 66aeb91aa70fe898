import {anchorOf} from "./anchors.js";

/** How often, and after which time, ms, a place is looked for again on a page that is still being written. */
const TRIES = 12;
const AGAIN_MS = 300;

/**
 * Shows the place that an address names: unfolded, in view, and with the focus, so that reading and keys go on from there.
 * A place that is not there yet, or is written anew and takes the focus with it, is looked for again, until the reader does
 * something else.
 */
export function landAt(hash: string): void {
  const over = new AbortController();
  for (const act of ["pointerdown", "wheel", "keydown"]) addEventListener(act, () => over.abort(), {once: true, passive: true, signal: over.signal});
  let shown: HTMLElement | undefined;
  const look = (left: number) => {
    if (over.signal.aborted) return;
    const focused = document.activeElement;
    const node = placeOf(hash);
    if (node && (shown === undefined || focused === document.body)) show(shown = node);
    if (left > 0) setTimeout(() => look(left - 1), AGAIN_MS);
    else over.abort();
  };
  look(TRIES);
}

function show(node: HTMLElement): void {
  for (let fold = node.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null) fold.open = true;
  node.scrollIntoView({block: node.matches(".control") ? "center" : "start"});
  const entry = node.matches(".control") ? node.querySelector<HTMLElement>("input:not([type=range]), select, input, textarea, button") : null;
  if (!entry && !node.hasAttribute("tabindex")) node.setAttribute("tabindex", "-1");
  (entry ?? node).focus({preventScroll: true});
  node.classList.add("landed");
  setTimeout(() => node.classList.remove("landed"), 2400);
}

function placeOf(hash: string): HTMLElement | undefined {
  const id = decodeURIComponent(hash.slice(1));
  return document.getElementById(id) ?? controlAt(id);
}

/** The control of a field, where the address names one. */
function controlAt(id: string): HTMLElement | undefined {
  return [...document.querySelectorAll<HTMLElement>(".control[data-path]")].find(({dataset}) => anchorOf.input(dataset["path"] ?? "") === id);
}
