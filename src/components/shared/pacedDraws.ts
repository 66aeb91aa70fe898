import {stepAside} from "../worker/work.js";

/** A page that follows a run is drawn no more often than this, ms. */
const LEAST_MS = 400;
/** And no oftener than lets it rest so many times as long as a drawing takes: what searches beside the page has the same processors. */
const REST = 8;
/** The longer a run goes on, the less a drawing has that is new: each waits for such a part of the time that has gone by. */
const PART_OF_RUN = 0.1;

/**
 * Draws what a run has found while it goes on, however often it tells of more: the first at once, those that follow once
 * the last one has been painted and a while has gone by, which is the longer the more there is to draw.
 *
 * @returns to be called when there is more; `atOnce` draws without a wait, as when a run begins or ends
 */
export function pacedDraws(draw: () => void): (atOnce: boolean) => void {
  let drawings = 0;
  let beganMs = performance.now();
  let nextMs = -Infinity;
  let later: ReturnType<typeof setTimeout> | undefined;
  const now = () => {
    clearTimeout(later);
    later = undefined;
    const fromMs = performance.now();
    const mine = ++drawings;
    nextMs = fromMs + Math.max(LEAST_MS, PART_OF_RUN * (fromMs - beganMs));
    stepAside();
    draw();
    painted(() => {
      // What a drawing of an earlier run took says nothing of the next one.
      if (drawings === mine) nextMs = Math.max(nextMs, fromMs + REST * (performance.now() - fromMs));
    });
  };
  const when = () => {
    const leftMs = nextMs - performance.now();
    if (leftMs <= 0) now();
    else later = setTimeout(when, leftMs);
  };
  return (atOnce) => {
    if (atOnce) {
      beganMs = performance.now();
      now();
    } else if (later === undefined) when();
  };
}

/** Calls when what was just begun has been painted, with all that it has put off by a frame or two. */
function painted(then: () => void): void {
  requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(then))));
}
