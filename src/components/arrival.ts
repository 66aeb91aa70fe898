/** How many frames in a row nothing may have been drawn anew before a page counts as arrived. */
const CALM_FRAMES = 3;

/**
 * Keeps what stands below a page's title from being painted (the style does it) until its cells have drawn their figures
 * and put their numbers into the sentences, and the faces of the text have come: so nothing that a reader has begun to
 * read moves away. If something takes very long, the style shows the page as it is.
 */
export function showsWhole(main: HTMLElement, arrived: () => void): void {
  let calm = 0;
  const changes = new MutationObserver(() => (calm = 0));
  changes.observe(main, {childList: true, characterData: true, subtree: true});
  const look = () => {
    const waits = main.querySelector("observablehq-loading") !== null || document.fonts.status === "loading";
    calm = waits ? 0 : calm + 1;
    if (calm <= CALM_FRAMES) {
      requestAnimationFrame(look);
      return;
    }
    changes.disconnect();
    main.dataset["arrived"] = "";
    arrived();
  };
  requestAnimationFrame(look);
}

/** What shows that somebody is at the page. */
const SIGNS = ["pointermove", "pointerdown", "keydown", "scroll"] as const;
/** How long is waited for such a sign, ms. */
const WAIT_MS = 4000;

/** Runs something once the page has arrived and somebody reads it, so that it takes nothing from what the page itself fetches. */
export function onceRead(main: HTMLElement, run: () => void): void {
  let done = false;
  const go = () => {
    if (done || main.dataset["arrived"] === undefined) return;
    done = true;
    for (const sign of SIGNS) removeEventListener(sign, go);
    run();
  };
  for (const sign of SIGNS) addEventListener(sign, go, {passive: true});
  setTimeout(function wait() {
    go();
    if (!done) setTimeout(wait, WAIT_MS);
  }, WAIT_MS);
}
