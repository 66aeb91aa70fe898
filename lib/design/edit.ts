import {InputError} from "../errors.js";
import type {Design} from "./design.js";
import {entryAt} from "./fields.js";
import {isPlain} from "./plain.js";
import {stamped} from "./reasons.js";
import {checkEntry, validateDesign} from "./validate.js";


/**
 * A copy of the design with one value changed. Undefined removes an optional field; a whole list or group may be given.
 * A reason that is written is written for the design as it stands ({@link stamped}).
 *
 * @throws InputError if the value does not fit its field; the given design is never altered
 */
export function withValue(design: Design, path: string, value: unknown): Design {
  const entry = entryAt(path);
  if (entry && !(value === undefined && entry.optional)) checkEntry(entry, path, value);
  const changed = replace(design, path.split("."), value, path) as Design;
  // What stands deeper than the table goes, or beside it, is checked with the whole.
  const whole = entry ? changed : validateDesign(changed);
  return path.startsWith("reasons") ? stamped(design, whole) : whole;
}

/** Several changes as one, in order. */
export function withValues(design: Design, changes: Readonly<Record<string, unknown>>): Design {
  // A reason among them is written for what all of them together have chosen.
  return stamped(design, Object.entries(changes).reduce((before, [path, value]) => withValue(before, path, value), design));
}

function replace(node: unknown, keys: readonly string[], value: unknown, path: string): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  const isList = Array.isArray(node);
  if (isList ? !Object.hasOwn(node, key) : !isPlain(node)) {
    throw new InputError({path, label: path, value, allowed: "the path of a field of a design"});
  }
  if (isList) return node.map((entry, index) => (String(index) === key ? replace(entry, rest, value, path) : entry));
  const branch = {...(node as Record<string, unknown>)};
  const next = replace(branch[key], rest, value, path);
  if (next === undefined) delete branch[key];
  else branch[key] = next;
  return branch;
}
