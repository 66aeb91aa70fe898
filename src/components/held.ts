/**
 * While a control moves: what each picture showed when the hand took hold. Small enough for every page; what is drawn of
 * it (`trace.ts`) comes with the first change.
 */

/** Changes that follow each other within this time belong to one hand, ms. */
export const HELD_MS = 700;

/** By the place of a picture: what stood there when the hand took hold. */
const stood = new Map<HTMLElement, Element>();
let last = -Infinity;
let over: ((place: HTMLElement, stood: Element) => void) | undefined;

/** Puts a picture into its place; what stood there when the hand took hold is remembered, and a trace of it laid over it. */
export function redraw(place: HTMLElement, next: HTMLElement): void {
  const before = place.firstElementChild;
  // What the reader has unfolded stays open.
  const open = before?.querySelector("details")?.open === true;
  const details = next.querySelector("details");
  if (details) details.open = open;
  place.replaceChildren(next);
  // Until somebody follows, time alone tells one hand from the next.
  if (!over && performance.now() - last > HELD_MS) stood.clear();
  last = performance.now();
  if (before && !stood.has(place)) stood.set(place, before);
  const then = stood.get(place);
  if (then) over?.(place, then);
}

/** Lays what stood over each picture that is drawn again, over those drawn already as well. */
export function overRedrawn(lay: (place: HTMLElement, stood: Element) => void): void {
  over = lay;
  for (const [place, then] of stood) lay(place, then);
}

/** The hand has let go: what stands now is what the next one starts from. */
export function letGo(): void {
  stood.clear();
}
