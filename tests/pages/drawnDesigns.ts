import fc from "fast-check";
import type {Design} from "../../lib/design/design.js";
import {withValue} from "../../lib/design/edit.js";
import {FIELDS} from "../../lib/design/fields.js";
import {evaluate} from "../../lib/evaluate.js";
import {ifMade} from "../../lib/schemes/least.js";
import {SEED, valueOf} from "../properties/arbitrary.js";
import {catalog, seeds} from "../support/designs.js";
import {once} from "../support/once.js";

const RANDOM_DESIGNS = 30;

/** One field of a design with any value that it allows; names and words are left, and lists. */
const anyChange = fc.constantFrom(...Object.entries(FIELDS).filter(([path, field]) => field.kind !== "text" && !path.includes("*")))
  .chain(([path, field]) => valueOf(field).map((value) => [path, value] as const));
/** A starter with a few fields changed, wildly or not: what a reader comes by who tries things out. */
const changedStarter = fc.record({start: fc.constantFrom(...seeds), changes: fc.array(anyChange, {minLength: 2, maxLength: 8})})
  .map(({start, changes}) => changes.reduce((design, [path, value]) => withValue(design, path, value), start.design));

/** Designs drawn at random that the library can work out, each with a name of its own. */
export const drawnDesigns = once((): readonly Design[] => fc.sample(changedStarter, {seed: SEED, numRuns: 4 * RANDOM_DESIGNS}).filter((design) => ifMade(() => evaluate(design, catalog))).slice(0, RANDOM_DESIGNS)
  .map((design, i) => withValue(design, "name", `Drawn at random, ${i}`)));
