import type {Catalog} from "../catalog.js";
import type {Check, Verdict} from "../checks.js";
import type {Design} from "../design/design.js";
import {columnsOf, evaluateWith} from "../evaluate.js";
import {changesBetween, sizeOf, type FieldChange} from "./changes.js";
import {isOfColumn} from "./checkNames.js";
import {allowed} from "./way.js";

const HOLDS: ReadonlySet<Verdict> = new Set<Verdict>(["ok", "near"]);
/** Whether a check holds, or a remedy that it names has been built in. */
export const isHolding = ({verdict}: Check): boolean => HOLDS.has(verdict);

/** A changed design under which a check holds that failed before. */
export interface Mend {
  readonly design: Design;
  readonly changes: readonly FieldChange[];
  /** How much the change is ({@link sizeOf}). */
  readonly size: number;
  /** Every check of the changed design, those of its columns included. */
  readonly checks: readonly Check[];
  /** The check that was to hold; undefined where the changed design has it no longer. */
  readonly check: Check | undefined;
  /** Checks that held before, or were not there, and now fail or are beyond their method. */
  readonly newly: readonly Check[];
}

/** Every check of a design, those of its columns last; undefined where its parts do not fit each other. */
export function allChecks(design: Design, catalog: Catalog): readonly Check[] | undefined {
  return allowed(() => {
    const evaluation = evaluateWith(design, catalog, {});
    return [...evaluation.checks, ...columnsOf(evaluation, catalog).checks];
  });
}

/** Tries changed designs on one failed check of a design, and counts how many it has tried. */
export class Trial {
  /** How many designs have been evaluated. */
  tried = 0;
  readonly #open: ReadonlySet<string>;

  constructor(readonly design: Design, readonly catalog: Catalog, checks: readonly Check[], readonly check: Check) {
    this.#open = new Set(checks.filter((one) => !isHolding(one)).map(({id}) => id));
  }

  sizeOf(changed: Design): number {
    return sizeOf(changesBetween(this.design, changed), this.catalog);
  }

  /** What a changed design makes of the check; undefined where it still fails, or its parts do not fit each other. */
  at(changed: Design): Mend | undefined {
    this.tried += 1;
    const {catalog, check} = this;
    return allowed(() => {
      const evaluation = evaluateWith(changed, catalog, {});
      const same = ({id}: Check) => id === check.id;
      // Columns take long, so they are asked only where they could matter.
      if (!isOfColumn(check) && !evaluation.checks.filter(same).every(isHolding)) return undefined;
      const checks = [...evaluation.checks, ...columnsOf(evaluation, catalog).checks];
      // A part that the design no longer has needs no check: pockets, once there is a ledge.
      if (!checks.filter(same).every(isHolding)) return undefined;
      const changes = changesBetween(this.design, changed);
      return {
        design: changed, changes, size: sizeOf(changes, catalog), checks, check: checks.find(same),
        newly: checks.filter((one) => !isHolding(one) && !this.#open.has(one.id)),
      };
    });
  }
}
