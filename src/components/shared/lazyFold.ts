import {element} from "../dom.js";

/**
 * A fold whose content comes when it is first opened, and is asked for again where it did not come.
 *
 * @param what - what is on its way, as a sentence begins: "The form"
 */
export function lazyFold(summary: string, what: string, content: () => Promise<HTMLElement>): HTMLElement {
  const place = element("div", {"aria-live": "polite"}, `${what} ${what.endsWith("s") ? "are" : "is"} on the way.`);
  const fold = element("details", {class: "first-fold"}, element("summary", {}, summary), place);
  const fill = async () => {
    try {
      const node = await content();
      place.removeAttribute("aria-live");
      place.replaceChildren(node);
    } catch {
      place.textContent = `${what} could not be fetched. Close this and open it again to try once more.`;
      fold.addEventListener("toggle", asked);
    }
  };
  const asked = () => {
    if (!fold.open) return;
    fold.removeEventListener("toggle", asked);
    void fill();
  };
  fold.addEventListener("toggle", asked);
  return fold;
}
