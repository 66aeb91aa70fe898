import type {Design} from "../../lib/design/design.js";
import type {Followed} from "../store.js";

/** Keeps an element in step with the open design until it has left the page. */
export function follow(store: Followed, node: Element, update: (design: Design) => void): void {
  let wasShown = false;
  const stop = store.observe((design) => {
    if (node.isConnected) wasShown = true;
    else if (wasShown) {
      stop();
      return;
    }
    update(design);
  });
}
