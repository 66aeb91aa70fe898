import type {Gate, Limit, LoadLimit} from "./limit.js";
import {bearingLimit} from "./limits/bearing.js";
import {camberLimit} from "./limits/camber.js";
import {crackControlLimit} from "./limits/crackControl.js";
import {deflectionLimit} from "./limits/deflection.js";
import {developmentLimit} from "./limits/development.js";
import {fireLimit} from "./limits/fire.js";
import {haulingLimit} from "./limits/hauling.js";
import {horizontalShearLimit} from "./limits/horizontalShear.js";
import {minimumStrengthLimit} from "./limits/minimumStrength.js";
import {serviceTensionLimit} from "./limits/serviceTension.js";
import {shearLimit} from "./limits/shear.js";
import {soffitCompressionLimit} from "./limits/soffitCompression.js";
import {strengthLimit} from "./limits/strength.js";
import {strippingLimit} from "./limits/stripping.js";
import {sustainedCompressionLimit} from "./limits/sustainedCompression.js";
import {totalCompressionLimit} from "./limits/totalCompression.js";
import {transferLimit} from "./limits/transfer.js";
import {vibrationLimit} from "./limits/vibration.js";

/** Every limit on a deck member, in reading order: the only place that knows them all. Of two that allow the same load the first governs. */
const LIST = [
  strengthLimit, developmentLimit, minimumStrengthLimit, shearLimit, horizontalShearLimit, serviceTensionLimit, crackControlLimit, sustainedCompressionLimit, totalCompressionLimit,
  deflectionLimit, camberLimit, bearingLimit, transferLimit, soffitCompressionLimit, vibrationLimit, fireLimit, strippingLimit, haulingLimit,
] as const satisfies readonly Limit[];

export type LimitName = (typeof LIST)[number]["name"];

/** A limit of the list. */
export type ListedLimit = Limit & {readonly name: LimitName};
const LISTED: readonly ListedLimit[] = LIST;

const named = (which: (limit: Limit) => boolean): readonly LimitName[] => LISTED.filter(which).map(({name}) => name);

/** All limits in reading order, by name. */
export const LIMITS = named(() => true);
/** Those that bound the load. */
export const LOAD_LIMITS = named(({kind}) => kind === "load");
/** Those that a member passes or not, whatever the load. */
export const GATES = named(({kind}) => kind === "gate");
/** Those that bound the load of any floor; the others count where one asks for them. */
export const USUAL_LIMITS = named((limit) => limit.kind === "load" && !limit.onRequest);
/**
 * Those by which the trade handbook's load tables are made (PCI Design Handbook, MNL-120, ch. 3; the compressions from
 * memory), with development and bearing: these govern none of the printed cells, but short of the printed spans they
 * stop a member before the others do.
 */
// Stryker disable next-line ConditionalExpression: the kind is asked for the types' sake; no gate is of the handbook
export const HANDBOOK_LIMITS = named((limit) => limit.kind === "load" && limit.handbook === true);
/** What a candidate of the search must pass besides carrying the load; steel in the top and permits cure the rest. */
// Stryker disable next-line ConditionalExpression: the kind is asked for the types' sake; no limit on the load loses a search
export const WORKING_GATES = named((limit) => limit.kind === "gate" && limit.loses !== undefined);

const BY_NAME = Object.fromEntries(LISTED.map((limit) => [limit.name, limit])) as Readonly<Record<LimitName, ListedLimit>>;

/** A limit by its name. */
export function limitNamed(name: LimitName): ListedLimit {
  return BY_NAME[name];
}

/** What a limit asks of a cell, of one shape for all limits, because it is asked of every cell of a table. */
export interface Asked {
  readonly name: LimitName;
  readonly reached: LoadLimit["reached"] | undefined;
  readonly use: Gate["use"] | undefined;
}

const ASKED = LISTED.map((limit): Asked => ({
  // Stryker disable next-line ConditionalExpression: the kind is asked for the types' sake
  name: limit.name, reached: limit.kind === "load" ? limit.reached : undefined, use: limit.kind === "gate" ? limit.use : undefined,
}));
const COUNTED = new WeakMap<readonly LimitName[], readonly Asked[]>();

/** The limits of a list of names, in reading order; kept with the list. */
export function limitsOf(names: readonly LimitName[]): readonly Asked[] {
  let limits = COUNTED.get(names);
  // Stryker disable next-line ConditionalExpression: they are kept to be quick
  if (!limits) COUNTED.set(names, limits = ASKED.filter(({name}) => names.includes(name)));
  return limits;
}
