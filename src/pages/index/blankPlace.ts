import type {Catalog} from "../../lib/catalog.js";
import type {RawTables} from "../../lib/tables.js";
import {element} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";

/** The fold in which a reader begins from a blank brief; its form comes when it is first opened. */
export function blankPlace(store: DesignStore, catalog: Catalog, tables: RawTables): HTMLElement {
  const place = element("div", {"aria-live": "polite"}, "The form is on its way.");
  const fold = element("details", {class: "first-fold"}, element("summary", {}, "Say what the building must be"), place);
  const fill = async () => {
    try {
      const {blankBrief} = await import("./blankBrief.js");
      place.removeAttribute("aria-live");
      place.replaceChildren(blankBrief(store, catalog, tables));
    } catch {
      place.textContent = "The form could not be fetched. Close this and open it again to try once more.";
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
