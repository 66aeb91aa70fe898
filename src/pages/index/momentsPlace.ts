import type {Catalog} from "../../lib/catalog.js";
import {lazyFold} from "../../components/shared/lazyFold.js";
import type {DesignStore} from "../../components/store.js";

/** The fold with the moments of the design that were kept; it comes when it is first opened. */
export function momentsPlace(store: DesignStore, catalog: Catalog): HTMLElement {
  return lazyFold("Keep this moment, or go back to an earlier one", "The moments", async () => (await import("./momentsPanel.js")).momentsPanel(store, catalog));
}
