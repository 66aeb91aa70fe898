import type {DesignStore} from "../store.js";
import {followTabs, onSystem, readerSystem} from "./system.js";

/**
 * Shows the reader's units at the switch that stands in every page, and writes the page in them. What turns texts is fetched when a reader wants other
 * units than the texts' own; then all that follows the design is made anew, for a drawing has laid out its words by their width.
 */
export function unitSwitch(store: Pick<DesignStore, "refresh">): void {
  const show = () => {
    for (const input of document.querySelectorAll<HTMLInputElement>(".unit-switch input")) input.checked = input.value === readerSystem();
    if (readerSystem() === "US") delete document.documentElement.dataset["units"];
    else document.documentElement.dataset["units"] = readerSystem();
  };
  let turned = false;
  const turn = async () => {
    show();
    if (!turned && readerSystem() === "US") return;
    turned = true;
    const {turnPage} = await import("./pageUnits.js");
    turnPage(readerSystem());
    store.refresh();
  };
  followTabs();
  onSystem(() => void turn());
  void turn();
}
