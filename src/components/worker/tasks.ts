import type {Catalogue} from "../../lib/catalogue.js";

/**
 * The long work that a page can ask for, by name. Each is a generator of the library's: it yields how far it is, and
 * what it has so far if that is of use, and returns its result. Inputs and results are plain data.
 */
export const TASKS = {
  /** Counts; to see that the worker runs. */
  * probe(_: Catalogue, input: {readonly steps: number}): Generator<number, number> {
    for (let i = 1; i <= input.steps; i++) yield i / input.steps;
    return input.steps;
  },
};

export type Tasks = typeof TASKS;
