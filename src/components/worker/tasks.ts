/**
 * The long work that a page can ask for, by name: each is fetched when it is first asked for, so that no page waits for
 * what others ask. Each is a generator of the library's: it yields how far it is, and what it has so far if that is of
 * use, and returns its result. Inputs and results are plain data.
 */
export const TASKS = {
  /** Whole tables of safe loads. */
  sweep: async () => (await import("../../lib/deck/sweep.js")).sweep,
  /** What girder would just do. */
  girderTakes: async () => (await import("../../lib/girder/takes.js")).girderTakes,
  /** Decks that no other beats. */
  tradeOffs: async () => (await import("../../lib/tradeOffs.js")).tradeOffs,
  /** Designs beside each other. */
  compareDesigns: async () => (await import("../../lib/compare/column.js")).compareDesigns,
  /** The designs of a class. */
  classRows: async () => (await import("../../lib/classroom/classRow.js")).classRows,
  /** Which of them come from one another. */
  classKin: async () => (await import("./kinTask.js")).kinTask,
  /** Pieces of one design that differ at random. */
  spread: async () => (await import("./spreadTask.js")).spreadTask,
  /** Whole designs by rule, as rows. */
  schemes: async () => (await import("./schemeTasks.js")).schemeBatches,
  /** One of them, to be drawn or opened. */
  oneScheme: async () => (await import("./schemeTasks.js")).oneScheme,
  /** The same with its rules' words, to be opened. */
  wordedScheme: async () => (await import("./wordedScheme.js")).wordedScheme,
  /** The best of a blank brief's. */
  firstDesign: async () => (await import("../../lib/schemes/firstDesign.js")).firstDesign,
  /** What mends the first check that fails. */
  firstRemedy: async () => (await import("../../lib/remedies/firstRemedy.js")).firstRemedy,
  /** What mends each of them. */
  everyRemedy: async () => (await import("../../lib/remedies/firstRemedy.js")).everyRemedy,
  /** The open design as a row beside them. */
  designRow: async () => (await import("./schemeTasks.js")).rowOfOpen,
};

/** What each task is once it has come. */
export type Tasks = {readonly [Name in keyof typeof TASKS]: Awaited<ReturnType<(typeof TASKS)[Name]>>};
