import {anchorOf} from "./anchors.js";

/** Within this time whatever is still being written on a page that has just come is written, ms. */
const WRITTEN_ANEW_MS = 500;

/** Shows the place that an address names: unfolded, in view, and with the focus, so that reading and keys go on from there. */
export function landAt(hash: string, again = true): void {
  const id = decodeURIComponent(hash.slice(1));
  const node = document.getElementById(id) ?? controlAt(id);
  if (!node) return;
  for (let fold = node.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null) fold.open = true;
  node.scrollIntoView({block: node.matches(".control") ? "center" : "start"});
  const entry = node.matches(".control") ? node.querySelector<HTMLElement>("input:not([type=range]), select, input, textarea, button") : null;
  if (!entry && !node.hasAttribute("tabindex")) node.setAttribute("tabindex", "-1");
  (entry ?? node).focus({preventScroll: true});
  node.classList.add("landed");
  setTimeout(() => node.classList.remove("landed"), 2400);
  // A place that is written anew just then takes the focus away with it.
  if (again) setTimeout(() => document.activeElement === document.body && landAt(hash, false), WRITTEN_ANEW_MS);
}

/** The control of a field, where the address names one. */
function controlAt(id: string): HTMLElement | undefined {
  return [...document.querySelectorAll<HTMLElement>(".control[data-path]")].find(({dataset}) => anchorOf.input(dataset["path"] ?? "") === id);
}
