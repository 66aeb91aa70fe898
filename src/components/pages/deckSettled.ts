import type {Design} from "../../lib/design/design.js";
import type {DesignStore} from "../store.js";

/**
 * The open design, told after the browser has painted what hangs on the design itself: for searches and tables that may
 * lag a frame behind the picture under the reader's hand. Fits `Generators.observe`.
 */
export function afterPaint(store: DesignStore): (change: (design: Design) => void) => () => void {
  return (change) => {
    let waiting = false;
    let first = true;
    return store.observe((design) => {
      if (first) {
        first = false;
        change(design);
        return;
      }
      if (waiting) return;
      waiting = true;
      // A task that is posted from a frame runs after that frame has been painted; the second frame lets cells finish.
      requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => {
        waiting = false;
        change(store.get());
      })));
    });
  };
}
