import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FieldChange} from "./changes.js";
import {mended} from "./search.js";
import {Trial, allChecks, type Mend} from "./trial.js";
import {remedyWords, type RemedyWords} from "./remedyWords.js";

/** What can be done about one failed check: plain data, so that a search beside the page can send it. */
export interface FoundRemedy {
  readonly id: string;
  readonly label: string;
  /** Empty where nothing that was tried makes the check hold. */
  readonly changes: readonly FieldChange[];
  /** Whether fewer checks fail with it than without. */
  readonly lowers: boolean;
  /** How many checks fail once it is done; as many as now where there is nothing to do. */
  readonly failing: number;
  readonly words: RemedyWords;
}

/** How many designs were evaluated for a remedy. */
export interface Tried {
  readonly designs: number;
}

/** Checks that fail, in the order of the job: deck before beam before column. */
export function failing(checks: readonly Check[]): Check[] {
  return checks.filter(({verdict}) => verdict === "fails");
}

/**
 * What mends one failed check of a design: see {@link mended}; and what it says where nothing does.
 *
 * @param checks - every check of the design, those of its columns included
 */
export function remedyFor(design: Design, catalog: Catalog, check: Check, checks: readonly Check[]): FoundRemedy & Tried {
  const trial = new Trial(design, catalog, checks, check);
  const mend = mended(trial);
  const now = failing(checks).length;
  const then = mend ? failing(mend.checks).length : now;
  return {
    id: check.id, label: check.label, changes: mend?.changes ?? [], lowers: mend !== undefined && then < now && opened(mend) < opened({checks}), failing: then,
    words: remedyWords(check, mend, {checks, catalog}), designs: trial.tried,
  };
}

function opened({checks}: Pick<Mend, "checks">): number {
  return checks.filter(({verdict}) => verdict === "fails" || verdict === "out of range").length;
}

/** What the line under the strip tells of a design that fails. */
export interface FirstRemedy {
  readonly failing: number;
  readonly checks: number;
  /** Of the first check that fails, in the order of the job. */
  readonly first: FoundRemedy;
  /** Where nothing lowers the number by the first: that of the next one that something does, if there is one. */
  readonly next: FoundRemedy | undefined;
}

/**
 * What to do about the first check that fails, and where nothing that was tried makes it hold, about the next one that
 * something does. Yields what is known after each check that was looked at.
 *
 * @returns undefined where no check fails
 */
export function* firstRemedy(catalog: Catalog, design: Design): Generator<FirstRemedy, FirstRemedy | undefined> {
  const checks = allChecks(design, catalog) ?? [];
  const fails = failing(checks);
  let known: FirstRemedy | undefined;
  for (const check of fails) {
    const found = remedyFor(design, catalog, check, checks);
    known ??= {failing: fails.length, checks: checks.length, first: found, next: undefined};
    if (found.lowers) return known.first.lowers ? known : {...known, next: found};
    yield known;
  }
  return known;
}

/** What mends each check that fails, one after the other, each by itself. */
export function* everyRemedy(catalog: Catalog, design: Design): Generator<FoundRemedy, number> {
  const checks = allChecks(design, catalog) ?? [];
  const fails = failing(checks);
  for (const check of fails) yield remedyFor(design, catalog, check, checks);
  return fails.length;
}
