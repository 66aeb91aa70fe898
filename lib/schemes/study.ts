import type {Catalog} from "../catalog.js";
import {readJson} from "../check.js";
import {InputError, under} from "../errors.js";
import {PlainReader} from "../report/plainReader.js";
import type {Brief} from "./brief.js";
import {gridOf} from "./grid.js";
import {briefFrom} from "./readBrief.js";

/** Marks a study's file. */
export const STUDY_FORMAT = "plank-and-tee-study";
const STUDY_VERSION = 1;
/** Most values of one field, most fields, and most schemes of a study. */
const MOST = {values: 200, fields: 12, schemes: 100_000_000} as const;

/** Briefs with the values of fields that differ from one to the next. */
export interface Study {
  readonly name: string;
  /** Whether columns, corbels and footings are sized as well. */
  readonly columns: boolean;
  /** The fields that vary from case to case, in the order of the file. */
  readonly fields: readonly string[];
  readonly cases: readonly StudyCase[];
  /** Schemes of all cases. */
  readonly count: number;
}

/** One brief with one value of each field. */
export interface StudyCase {
  readonly brief: Brief;
  /** Values of the study's fields, as the file has them. */
  readonly values: readonly (number | string | boolean)[];
  /** Number of the case's first scheme in the whole study. */
  readonly first: number;
  readonly count: number;
}

/**
 * Reads a study's file: briefs, written out in it, and for each of some fields the values that all briefs take in turn. A
 * field is one that a brief may have (`ceilingFt`, `floorToFloorFt`, `partitions`) or one of the design that it may fix
 * (`criteria.fireHours`).
 *
 * @throws InputError naming the first field that is missing, unknown or out of range
 */
export function readStudy(fileText: string, catalog: Catalog): Study {
  const file = new PlainReader(readJson(fileText, "study"), "", "study");
  file.choice("format", "format", [STUDY_FORMAT]);
  file.same("version", "version of the study", STUDY_VERSION, "This kit reads that version alone");
  const name = file.text("name");
  const {briefs, fields: given = {}, columns = false} = file.rest(["briefs", "fields", "columns"]);
  file.finish();
  if (typeof columns !== "boolean") throw new InputError({path: "columns", label: "columns", value: columns, allowed: "true or false"});
  if (!Array.isArray(briefs) || briefs.length === 0) throw new InputError({path: "briefs", label: "briefs", value: briefs, allowed: "a list of one or more briefs"});
  const fields = new PlainReader(given, "fields").entries().map(([path, values]) => ({path, values: valuesOf(path, values)}));
  if (fields.length > MOST.fields) throw new InputError({path: "fields", label: "fields", value: fields.length, allowed: `${MOST.fields} at most`});
  const cases: StudyCase[] = [];
  let count = 0;
  for (const [i, content] of (briefs as unknown[]).entries()) {
    for (const values of combinations(fields.map((field) => field.values))) {
      const brief = under(`briefs.${i}`, () => briefFrom(withFields(content, fields.map(({path}, at) => [path, values[at]])), catalog));
      const ofCase = gridOf(brief, catalog).count;
      cases.push({brief, values, first: count, count: ofCase});
      count += ofCase;
    }
  }
  if (count > MOST.schemes) throw new InputError({path: "fields", label: "schemes of the study", value: count, allowed: `${MOST.schemes} at most`});
  return {name, columns, fields: fields.map(({path}) => path), cases, count};
}

type Value = number | string | boolean;

function valuesOf(path: string, values: unknown): Value[] {
  const given: unknown[] = Array.isArray(values) ? values : [];
  const usable = given.filter((value): value is Value => typeof value === "number" || typeof value === "string" || typeof value === "boolean");
  if (usable.length > 0 && usable.length === given.length && usable.length <= MOST.values) return usable;
  throw new InputError({path: `fields.${path}`, label: `fields.${path}`, value: values, allowed: `a list of 1 to ${MOST.values} numbers or words`});
}

/** Every choice of one value from each list; the last list varies fastest. */
function* combinations(lists: readonly (readonly Value[])[], before: readonly Value[] = []): Generator<Value[]> {
  const [first, ...rest] = lists;
  if (!first) {
    yield [...before];
    return;
  }
  for (const value of first) yield* combinations(rest, [...before, value]);
}

/** Fields that stand in the brief itself; all others are among what it fixes. */
const OF_BRIEF: readonly string[] = ["ceilingFt", "floorToFloorFt", "partitions"];

/** A brief's content with other values of some fields. */
function withFields(content: unknown, fields: readonly (readonly [string, unknown])[]): unknown {
  if (typeof content !== "object" || content === null || Array.isArray(content)) return content;
  const brief: Record<string, unknown> = {...content};
  const fixed: Record<string, unknown> = {...(typeof brief["fixed"] === "object" ? brief["fixed"] : {})};
  for (const [path, value] of fields) (OF_BRIEF.includes(path) ? brief : fixed)[path] = value;
  return Object.keys(fixed).length > 0 ? {...brief, fixed} : brief;
}

/** The case of a scheme by its number in the study. */
export function caseAt({cases}: Study, index: number): StudyCase {
  const found = cases.findLast(({first}) => first <= index);
  if (!found || index >= found.first + found.count) throw new RangeError(`no scheme ${index} in the study`);
  return found;
}
