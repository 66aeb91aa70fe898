import type {UnitSystem} from "../../lib/reader/system.js";

/** Where a part is answered. */
export interface Entry {
  readonly node: HTMLElement;
  /** Whether it is one box, whose Enter checks the answer. */
  readonly box?: HTMLInputElement;
  /** What stands, also where the reader has not touched it; an order has always one. */
  readonly stands: () => string;
  /** Leaves what stands for good. */
  readonly close: () => void;
}

/** What an entry needs to know besides its part. */
export interface EntryPlace {
  /** What stood there before. */
  readonly standing: string;
  readonly system: UnitSystem;
  /** Id of the question, which names the entry for those who listen. */
  readonly askId: string;
  /** Hears of every change. */
  readonly changed: (standing: string) => void;
}
