import type {ComparedDesign, NotComputed} from "../../lib/compare/column.js";
import type {Design} from "../../lib/design/design.js";
import type {DesignStore} from "../store.js";
import type {PinStore} from "../pins.js";
import type {Pin} from "../pins/keptPins.js";
import {afterPaint, type Observe} from "../shared/deckSearch.js";
import type {Comparing} from "./comparing.js";

/** One design of a comparison: the open one, or one that is pinned beside it. */
export interface Entry {
  /** "A" for the first pin; the open design has none. */
  readonly letter: string;
  readonly name: string;
  readonly design: Design;
  /** Undefined for the open design. */
  readonly pin: Pin | undefined;
  /** Undefined while it is being computed. */
  readonly found: ComparedDesign | NotComputed | undefined;
}

/** The open design and those that are pinned beside it, in their order. */
export interface CompareView {
  readonly open: Entry;
  readonly pinned: readonly Entry[];
}

/** The comparison as it stands; told again, after the browser has painted, when the design, the pins or what is known of them change. */
export function compareView(store: DesignStore, pins: PinStore, work: Comparing): {get: () => CompareView; observe: Observe<CompareView>} {
  const get = (): CompareView => {
    const design = store.get();
    return {
      open: {letter: "", name: design.name, design, pin: undefined, found: work.known(design)},
      pinned: pins.get().pins.map((pin, i) => ({letter: letterOf(i), name: pin.name, design: pin.design, pin, found: work.known(pin.design)})),
    };
  };
  return {
    get,
    observe(change) {
      let ready = false;
      const renew = () => {
        if (!ready) return;
        work.want([store.get(), ...pins.get().pins.map(({design}) => design)]);
        change(get());
      };
      const stops = [afterPaint(store)(renew), pins.observe(renew), work.observe(() => ready && change(get()))];
      ready = true;
      renew();
      return () => {
        for (const stop of stops) stop();
      };
    },
  };
}

/** The letter that stands for a pin in tables and pictures: A to Z, then AA. */
export function letterOf(index: number): string {
  const rest = Math.floor(index / 26);
  return `${rest > 0 ? letterOf(rest - 1) : ""}${String.fromCharCode(65 + (index % 26))}`;
}

/** What is known of a design, if it could be computed. */
export function comparedOf({found}: Entry): ComparedDesign | undefined {
  return found && "measures" in found ? found : undefined;
}
