import type {Followed} from "../store.js";
import type {Observe} from "./deckSearch.js";

/** The store, notified as well when a value of the page changes: for pictures of both. */
export function storeWith(store: Followed, ...also: readonly Observe<unknown>[]): Followed {
  return {
    get: store.get,
    observe(change) {
      // Each calls at once; the store's own call is enough.
      let ready = false;
      const again = () => {
        if (ready) change(store.get());
      };
      const stops = [store.observe(change), ...also.map((observe) => observe(again))];
      ready = true;
      return () => {
        for (const stop of stops) stop();
      };
    },
  };
}

/** What is chosen in an element that fits `view`, as something to observe. */
export function inputOf(node: HTMLElement): Observe<void> {
  return (change) => {
    const tell = () => change();
    node.addEventListener("input", tell);
    return () => node.removeEventListener("input", tell);
  };
}
