/** How many frames in a row nothing may have been drawn anew before a page counts as arrived. */
const CALM_FRAMES = 3;

/**
 * Keeps what stands below a page's title from being painted (the style does it) until its cells have drawn their figures
 * and put their numbers into the sentences, and the faces of the text have come: so nothing that a reader has begun to
 * read moves away. If something takes very long, the style shows the page as it is.
 */
export function showsWhole(main: HTMLElement): void {
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
  };
  requestAnimationFrame(look);
}
