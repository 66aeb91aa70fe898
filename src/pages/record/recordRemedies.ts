import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {valuesOf} from "../../lib/remedies/changes.js";
import type {FoundRemedy} from "../../lib/remedies/firstRemedy.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {tables} from "../../components/notebook.js";
import type {DesignStore} from "../../components/store.js";
import {workPlace} from "../../components/worker/work.js";

/** What mends each check that the record has as open, in the places that it keeps for that. */
export interface RecordRemedies {
  show(design: Design): void;
}

/** How long no change must have come before the search begins, ms. */
const REST_MS = 500;

/** Fills the places of a section, one after the other as a search beside the page finds what mends each; every one has its own button. */
export function recordRemedies(store: DesignStore, section: HTMLElement): RecordRemedies {
  const start = workPlace(tables);
  let known: {readonly key: string; readonly found: Map<string, FoundRemedy>} | undefined;
  let cancel = () => {};
  let resting: ReturnType<typeof setTimeout> | undefined;

  const press = ({changes}: FoundRemedy, key: string) => {
    if (keyOf(store.get()) !== key) return;
    store.replace(withValues(store.get(), valuesOf(changes)));
    // The button goes with its check.
    section.focus();
  };
  const fill = (key: string, id: string, remedy: FoundRemedy | undefined) => {
    const place = [...section.querySelectorAll<HTMLElement>("[data-remedy]")].find(({dataset}) => dataset["remedy"] === id);
    if (!remedy || !place) return;
    const {words: {change, outcome}, lowers} = remedy;
    const act = change ? button(lowers ? "Do this" : "Do this all the same", () => press(remedy, key), {quiet: !lowers}) : null;
    act?.setAttribute("aria-label", `${act.textContent}: ${remedy.label}`);
    place.replaceChildren(element("span", {}, change ? `${change}: ${outcome}` : outcome), ...(act ? [" ", act] : []));
  };
  return {
    show(design) {
      const key = keyOf(design);
      const same = known?.key === key;
      for (const place of section.querySelectorAll<HTMLElement>("[data-remedy]")) {
        place.textContent = "Looking for what mends it.";
        if (same) fill(key, place.dataset["remedy"] as string, known?.found.get(place.dataset["remedy"] as string));
      }
      if (same) return;
      clearTimeout(resting);
      cancel();
      const found = new Map<string, FoundRemedy>();
      known = {key, found};
      if (!section.querySelector("[data-remedy]")) return;
      resting = setTimeout(() => {
        const work = start("everyRemedy", design, (remedy) => {
          found.set(remedy.id, remedy);
          fill(key, remedy.id, remedy);
        });
        cancel = work.cancel;
        work.done.catch(() => {
          for (const place of section.querySelectorAll<HTMLElement>("[data-remedy]:not(:has(button))")) place.textContent = "";
        });
      }, REST_MS);
    },
  };
}

/** All of a design that a remedy depends on: not its names and reasons, which are written on this page. */
function keyOf(design: Design): string {
  return JSON.stringify({...design, name: "", setting: "", brief: "", author: "", firm: "", reasons: "", writtenFor: ""});
}
