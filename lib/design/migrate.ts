import type {ReasonName} from "./design.js";
import type {Entries, Entry, Field, List} from "./entries.js";
import {DESIGN_FIELDS, RENAMED} from "./fieldTable.js";
import {DESIGN_VERSION, entryAt} from "./fields.js";
import {isPlain, valueAt, type Plain} from "./plain.js";
import {explainedPaths} from "./reasons.js";

/** The content of a design file of this or an older version, as one of this version; anything else comes back as it is. */
export function migrate(content: Plain): Plain {
  const from = content["version"] as number;
  if (!Number.isInteger(from) || from < 1 || from >= DESIGN_VERSION) return content;
  let current = renamed(content, from);
  // One version after the other: what a field is taken to have meant may hang on fields that came before it.
  for (let version = from + 1; version <= DESIGN_VERSION; version++) current = brought(current, version);
  return {...current, version: DESIGN_VERSION};
}

/** A file of the version before as one of this version, and its reasons as written for what its fields are taken to have meant. */
function brought(content: Plain, version: number): Plain {
  const fields = withAdded(DESIGN_FIELDS, content, version, content);
  const {writtenFor} = content;
  if (!isPlain(writtenFor)) return fields;
  const written = Object.entries(writtenFor).map(([name, entry]) => [name, isPlain(entry) && isPlain(entry["choice"])
    ? {...entry, choice: withAddedPaths(explainedPaths(name as ReasonName), entry["choice"], version, fields)} : entry]);
  return {...fields, writtenFor: Object.fromEntries(written) as Plain};
}

/** Values by path, in a file of the version before, with those that the file now has at the paths that are new. */
function withAddedPaths(paths: readonly string[], values: Plain, version: number, content: Plain): Plain {
  const filled: Record<string, unknown> = {...values};
  for (const path of paths) {
    const entry = entryAt(path) as Entry;
    // Stryker disable next-line ConditionalExpression: no entry of a list that a reason explains has grown a field so far
    if (path in values) filled[path] = added(entry, values[path], version, content);
    else if ((entry as Field | List).since?.version === version) filled[path] = valueAt(content, path);
  }
  return filled;
}

/**
 * A copy of a branch of an older file with the fields that a version added to it, where it has none of the name yet; what
 * is no branch is left for validation to name.
 *
 * @param content - the whole file, which tells what a field is taken to have meant
 */
export function withAdded(entries: Entries, branch: Plain, version: number, content: Plain): Plain {
  const filled: Record<string, unknown> = {...branch};
  for (const [key, entry] of Object.entries(entries)) {
    const value = key in branch && branch[key] === undefined ? undefined : added(entry, branch[key], version, content);
    if (value !== undefined) filled[key] = value;
  }
  return filled;
}

function added(entry: Entry, value: unknown, version: number, content: Plain): unknown {
  switch (entry.kind) {
    case "group": {
      if (value !== undefined) return isPlain(value) ? withAdded(entry.entries, value, version, content) : value;
      const whole = entry.optional ? {} : withAdded(entry.entries, {}, version, content);
      return Object.keys(whole).length > 0 ? whole : undefined;
    }
    case "list":
      if (value === undefined) return meantBy(entry, version, content);
      return Array.isArray(value) ? value.map((one: unknown) => (isPlain(one) ? withAdded(entry.entries, one, version, content) : one)) : value;
    // Stryker disable next-line ConditionalExpression: named for the types' sake; lengths came with the first version
    case "lengths":
      return value;
    default:
      return value === undefined ? meantBy(entry, version, content) : value;
  }
}

/** What a file of the version before is taken to have meant by a field or a list that this version brought; nothing by any other. */
function meantBy({since}: Field | List, version: number, content: Plain): unknown {
  if (since?.version !== version) return undefined;
  const {meant} = since;
  return typeof meant === "function" ? (meant as (content: Plain) => unknown)(content) : meant;
}

/** A copy with the names of today for those of a version before: of fields and groups, of reasons, and in what these were written for. */
function renamed(content: Plain, from: number): Plain {
  const since = RENAMED.filter((name) => name.since > from);
  const now = (path: string) => since.reduce((path, {was, is}) => (path === was || path.startsWith(`${was}.`) ? is + path.slice(was.length) : path), path);
  const named = (branch: unknown, nameOf: (key: string) => string, child: (value: unknown, key: string) => unknown = (value) => value): unknown =>
    // A name that the branch has already is not written over: validation names the other one.
    (isPlain(branch) ? Object.fromEntries(Object.entries(branch).map(([key, value]) => [nameOf(key) in branch ? key : nameOf(key), child(value, key)])) : branch);
  const fields = (value: unknown, group: string) => named(value, (key) => now(`${group}.${key}`).split(".").at(-1) as string);
  const written = (entry: unknown) => named(entry, (key) => key, (value) => named(value, now));
  return named(content, now, (value, key) =>
    key === "reasons" ? named(value, now) : key === "writtenFor" ? named(value, now, written) : fields(value, key)) as Plain;
}
