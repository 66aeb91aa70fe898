import type {Catalog} from "../../lib/catalog.js";
import type {RawTables} from "../../lib/tables.js";
import {lazyFold} from "../../components/shared/lazyFold.js";
import type {DesignStore} from "../../components/store.js";

/** The fold in which a reader begins from a blank brief; its form comes when it is first opened. */
export function blankPlace(store: DesignStore, catalog: Catalog, tables: RawTables): HTMLElement {
  return lazyFold("Say what the building must be", "The form", async () => (await import("./blankBrief.js")).blankBrief(store, catalog, tables));
}
