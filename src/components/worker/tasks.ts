import type {Catalog} from "../../lib/catalog.js";
import {compareDesigns} from "../../lib/compare/column.js";
import {girderTakes} from "../../lib/girder/takes.js";
import {sweep} from "../../lib/deck/sweep.js";
import {spread, type SpreadInput} from "../../lib/topping/spread.js";
import {tradeOffs} from "../../lib/tradeOffs.js";
import {oneScheme, rowOfOpen, schemeBatches} from "./schemeTasks.js";

/**
 * The long work that a page can ask for, by name. Each is a generator of the library's: it yields how far it is, and
 * what it has so far if that is of use, and returns its result. Inputs and results are plain data.
 */
export const TASKS = {
  /** Whole tables of safe loads. */
  sweep,
  /** What girder would just do. */
  girderTakes,
  /** Decks that no other beats. */
  tradeOffs,
  /** Designs beside each other. */
  compareDesigns,
  /** Pieces of one design that differ at random. */
  * spread(_catalog: Catalog, input: SpreadInput) {
    return yield* spread(input);
  },
  /** Whole designs by rule, as rows. */
  schemes: schemeBatches,
  /** One of them, to be drawn or opened. */
  oneScheme,
  /** The open design as a row beside them. */
  designRow: rowOfOpen,
};

export type Tasks = typeof TASKS;
