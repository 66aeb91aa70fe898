import {InputError} from "../errors.js";
import type {Design} from "./design.js";
import {fieldAt, isOptional} from "./fields.js";
import {validateDesign, validateField} from "./validate.js";

/** The value at a dotted path such as `bay.spanFt` or `loads.rooms.0.name`; undefined where there is none. */
export function valueAt(design: Design, path: string): unknown {
  return path.split(".").reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], design);
}

/**
 * A copy of the design with one value changed. Undefined removes an optional field; a whole list or group may be given.
 *
 * @throws InputError if the value does not fit its field; the given design is never altered
 */
export function withValue(design: Design, path: string, value: unknown): Design {
  const field = fieldAt(path);
  if (field && !(value === undefined && isOptional(path))) validateField(field, path, value);
  const changed = replace(design, path.split("."), value, path) as Design;
  // A list or a group has no field of its own, so the whole is checked.
  return field ? changed : validateDesign(changed);
}

/** Several changes as one, in order. */
export function withValues(design: Design, changes: Readonly<Record<string, unknown>>): Design {
  return Object.entries(changes).reduce((changed, [path, value]) => withValue(changed, path, value), design);
}

function replace(node: unknown, keys: readonly string[], value: unknown, path: string): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  const isList = Array.isArray(node);
  if (typeof node !== "object" || node === null || (isList && !Object.hasOwn(node, key))) {
    throw new InputError({path, label: path, value, allowed: "the path of a field of a design"});
  }
  if (isList) return node.map((entry, index) => (String(index) === key ? replace(entry, rest, value, path) : entry));
  const branch = {...(node as Record<string, unknown>)};
  const next = replace(branch[key], rest, value, path);
  if (next === undefined) delete branch[key];
  else branch[key] = next;
  return branch;
}
