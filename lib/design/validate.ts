import {readJson, requireChoice, requireNumber} from "../check.js";
import {InputError, under} from "../errors.js";
import {DESIGN_FORMAT, type Design, type ReasonName} from "./design.js";
import type {Entries, Entry, Field} from "./entries.js";
import {DESIGN_FIELDS} from "./fieldTable.js";
import {DESIGN_VERSION, entryAt, isOptional} from "./fields.js";
import {migrate} from "./migrate.js";
import {isPlain, type Plain} from "./plain.js";
import {LEFT_OUT, REASON_NAMES, explainedPaths, writtenNow} from "./reasons.js";

/**
 * Reads a design file's text.
 *
 * @returns the design, checked field by field against `fieldTable.ts`
 * @throws InputError naming the first field that is wrong, its value and what is allowed
 */
export function parseDesign(fileText: string): Design {
  return validateDesign(readJson(fileText, "design file"));
}

/** Checks that a value is a design, of this version or an older one that is brought up to it; see {@link parseDesign}. Unknown fields are refused, so that a misspelled one is noticed. */
export function validateDesign(given: unknown): Design {
  if (!isPlain(given)) {
    throw new InputError({path: "", label: "design file", value: given, allowed: "an object with the fields of a design"});
  }
  const content = migrate(given);
  requireChoice(content["format"], {path: "format", label: "format", choices: [DESIGN_FORMAT]});
  checkVersion(content["version"]);
  checkEntries(DESIGN_FIELDS, "", content, ["format", "version", "writtenFor"]);
  checkWrittenFor(content["writtenFor"]);
  return withChoices(content as unknown as Design);
}

/** Checks that a file is of a version that was brought up to this one. */
function checkVersion(version: unknown): void {
  if (version === DESIGN_VERSION) return;
  throw new InputError({
    path: "version", label: "version of the design file", value: version, allowed: `this kit reads versions 1 to ${DESIGN_VERSION}`,
    // Stryker disable next-line EqualityOperator: this version is not refused
    advice: typeof version === "number" && version > DESIGN_VERSION ? "It was saved by a newer version of the kit; open it there" : undefined,
  });
}

/** Checks who wrote each reason and for what; a file may leave out all of it, or the choice. */
function checkWrittenFor(writtenFor: unknown): void {
  if (writtenFor === undefined) return;
  const names = REASON_NAMES.join(", ");
  if (!isPlain(writtenFor)) throw new InputError({path: "writtenFor", label: "writtenFor", value: writtenFor, allowed: `an object with any of ${names}`});
  for (const [name, written] of Object.entries(writtenFor)) {
    const path = `writtenFor.${name}`;
    if (!REASON_NAMES.includes(name as ReasonName)) throw new InputError({path, label: path, value: written, allowed: `no reason of this name; there are ${names}`});
    if (!isPlain(written) || Object.keys(written).some((key) => key !== "by" && key !== "choice")) {
      throw new InputError({path, label: path, value: written, allowed: "an object with by and choice"});
    }
    requireChoice(written["by"], {path: `${path}.by`, label: "writer of the reason", choices: ["reader", "starter", "rule"]});
    if (written["choice"] !== undefined) checkChoice(written["choice"], `${path}.choice`, explainedPaths(name as ReasonName));
  }
}

/** Checks that a choice has values that its fields allow, "none" for those that may be left out, and no others. */
function checkChoice(choice: unknown, branch: string, explained: readonly string[]): void {
  if (!isPlain(choice)) throw new InputError({path: branch, label: branch, value: choice, allowed: "an object of fields and their values"});
  for (const [path, value] of Object.entries(choice)) {
    if (!explained.includes(path)) throw new InputError({path: `${branch}.${path}`, label: `${branch}.${path}`, value, allowed: `no field of this choice; it has ${explained.join(", ")}`});
    if (value === LEFT_OUT && isOptional(path)) continue;
    under(branch, () => checkEntry(entryAt(path) as Entry, path, value));
  }
}

/** The design with a choice for each reason that has none, which is then the design as it stands; blank reasons have none. */
function withChoices(design: Design): Design {
  const {writtenFor} = design as Partial<Design>;
  const written = REASON_NAMES.filter((name) => design.reasons[name].trim());
  if (writtenFor && written.length === Object.keys(writtenFor).length && written.every((name) => writtenFor[name]?.choice)) return design;
  const entries = written.map((name) => [name, {...writtenNow(design, name), ...writtenFor?.[name]}]);
  return {...design, writtenFor: Object.fromEntries(entries) as Design["writtenFor"]};
}

/** Checks a value against an entry of the table and, where it is a group or a list, all that is in it; throws {@link InputError}. */
export function checkEntry(entry: Entry, path: string, value: unknown): void {
  switch (entry.kind) {
    case "group":
      if (!isPlain(value)) throw new InputError({path, label: path, value, allowed: `an object with ${Object.keys(entry.entries).join(", ")}`});
      checkEntries(entry.entries, path, value);
      return;
    case "list": {
      const {label, min, max} = entry;
      if (!Array.isArray(value) || value.length < min || value.length > max) {
        throw new InputError({path, label, value: Array.isArray(value) ? value.length : value, allowed: `a list of ${min} to ${max} entries`});
      }
      value.forEach((one, index) => checkEntry({kind: "group", label, entries: entry.entries}, `${path}.${index}`, one));
      return;
    }
    case "lengths":
      if (!isPlain(value)) throw new InputError({path, label: entry.label, value, allowed: "an object of names and inches"});
      for (const [name, length] of Object.entries(value)) requireNumber(length, {path: `${path}.${name}`, label: name, unit: "in", min: entry.min, max: entry.max});
      return;
    default:
      validateField(entry, path, value);
  }
}

/** Checks all that a group must have, and that it has nothing else but what is known to stand there besides. */
// Stryker disable next-line ArrayDeclaration: no one else knows what the mutant lets stand beside the fields
function checkEntries(entries: Entries, path: string, values: Plain, besides: readonly string[] = []): void {
  const at = (key: string) => (path ? `${path}.${key}` : key);
  for (const key of Object.keys(values)) {
    if (Object.hasOwn(entries, key) || besides.includes(key)) continue;
    throw new InputError({path: at(key), label: at(key), value: values[key], allowed: `no field of this name; ${path || "a design"} has ${Object.keys(entries).join(", ")}`});
  }
  for (const [key, entry] of Object.entries(entries)) {
    if (values[key] !== undefined || !entry.optional) checkEntry(entry, at(key), values[key]);
  }
}

/** Checks one value against its field; throws {@link InputError}. */
export function validateField(field: Field, path: string, value: unknown): void {
  switch (field.kind) {
    case "number":
      requireNumber(value, {path, label: field.label, unit: field.unit, min: field.min, max: field.max, integer: field.integer});
      return;
    case "choice":
      requireChoice(value, {path, label: field.label, choices: Object.keys(field.choices)});
      return;
    case "switch":
      if (typeof value !== "boolean") throw new InputError({path, label: field.label, value, allowed: "true or false"});
      return;
    case "text":
      if (typeof value !== "string" || value.length > field.maxLength) {
        throw new InputError({path, label: field.label, value, allowed: `text of at most ${field.maxLength} characters`});
      }
  }
}
