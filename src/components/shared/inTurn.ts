import {stepAside} from "../worker/work.js";

/** How near to the window counts as near. */
const NEAR = "300px";

/** Draws a part of a page; false where there was nothing to draw. */
export type Part = () => boolean;

/**
 * Draws parts of a page one after the other: the first at once, each of the others once what was drawn before it has been
 * painted, so that a control never waits for all of them. Begun anew, it leaves what has not been drawn yet: that is drawn
 * in its turn with what is known by then.
 */
export function inTurn(...parts: readonly Part[]): () => void {
  let begun = 0;
  return () => {
    const mine = ++begun;
    const from = (i: number) => {
      stepAside();
      const next = parts.findIndex((part, k) => k >= i && part()) + 1;
      // A task that is posted from a frame runs after that frame has been painted.
      if (next > 0 && next < parts.length) requestAnimationFrame(() => setTimeout(() => mine === begun && from(next)));
    };
    from(0);
  };
}

/** A part that waits, for as long as it may, until the reader comes near its place, or prints the page. */
export function onceNear(place: HTMLElement, draw: () => void, mayWait: () => boolean): Part {
  let near = true;
  let waits = false;
  const part = () => {
    waits = !near && mayWait();
    if (!waits) draw();
    return !waits;
  };
  new IntersectionObserver((entries) => {
    near = entries.at(-1)?.isIntersecting ?? true;
    if (near && waits) part();
  }, {rootMargin: NEAR}).observe(place);
  window.addEventListener("beforeprint", () => {
    if (waits) draw();
    waits = false;
  });
  return part;
}
