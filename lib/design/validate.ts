import {readJson, requireChoice, requireNumber} from "../check.js";
import {InputError, under} from "../errors.js";
import {DESIGN_FORMAT, DESIGN_VERSION, type Design, type ReasonName} from "./design.js";
import {LEFT_OUT, REASON_NAMES, explainedPaths, writtenNow} from "./reasons.js";
import {migrate} from "./migrate.js";
import {FIELDS, LISTS, fieldAt, isOptional, patternOf, type Field} from "./fields.js";

type Plain = Record<string, unknown>;

/**
 * Reads a design file's text.
 *
 * @returns the design, checked field by field against `fields.ts`
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
  checkBranch(content, "", new Set(["format", "version", "deck.dimensions", "writtenFor"]));
  const deck = content["deck"];
  if (isPlain(deck) && deck["dimensions"] !== undefined) checkDimensions(deck["dimensions"]);
  checkWrittenFor(content["writtenFor"]);
  return withChoices(content as unknown as Design);
}

/** Checks that a file is of a version that was brought up to this one. */
function checkVersion(version: unknown): void {
  if (version === DESIGN_VERSION) return;
  throw new InputError({
    path: "version", label: "version of the design file", value: version, allowed: `this kit reads versions 1 to ${DESIGN_VERSION}`,
    advice: typeof version === "number" && version > DESIGN_VERSION ? "A newer kit saved it; open it there" : undefined,
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
    requireChoice(written["by"], {path: `${path}.by`, label: "writer of the reason", choices: ["reader", "starter"]});
    if (written["choice"] !== undefined) checkChoice(written["choice"], `${path}.choice`, explainedPaths(name as ReasonName));
  }
}

/** Checks that a choice has values that its fields allow, "none" for those that may be left out, and no others. */
function checkChoice(choice: unknown, branch: string, explained: readonly string[]): void {
  if (!isPlain(choice)) throw new InputError({path: branch, label: branch, value: choice, allowed: "an object of fields and their values"});
  for (const [path, value] of Object.entries(choice)) {
    if (!explained.includes(path)) throw new InputError({path: `${branch}.${path}`, label: `${branch}.${path}`, value, allowed: `no field of this choice; it has ${explained.join(", ")}`});
    if (value === LEFT_OUT && isOptional(path)) continue;
    under(branch, () => (path === "deck.dimensions" ? checkDimensions(value) : checkNode(value, path, new Set())));
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

/** Checks one value against its field; throws {@link InputError}. */
export function validateField(field: Field, path: string, value: unknown): void {
  switch (field.kind) {
    case "number":
      requireNumber(value, {...field, path});
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

function checkBranch(branch: Plain, prefix: string, known: ReadonlySet<string>): void {
  const expected = expectedKeys(prefix);
  for (const key of Object.keys(branch)) {
    const path = join(prefix, key);
    if (!expected.has(key) && !known.has(path)) {
      throw new InputError({path, label: path, value: branch[key], allowed: `no field of this name; ${prefix || "a design"} has ${[...expected].join(", ")}`});
    }
  }
  for (const key of expected) checkNode(branch[key], join(prefix, key), known);
}

function checkNode(value: unknown, path: string, known: ReadonlySet<string>): void {
  const field = fieldAt(path);
  const list = LISTS[path];
  if (field) {
    if (value === undefined && isOptional(path)) return;
    validateField(field, path, value);
  } else if (list) {
    if (!Array.isArray(value) || value.length < list.min || value.length > list.max) {
      throw new InputError({path, label: list.label, value: Array.isArray(value) ? value.length : value, allowed: `a list of ${list.min} to ${list.max} entries`});
    }
    value.forEach((entry, index) => checkGroup(entry, `${path}.${index}`, known));
  } else if (value !== undefined || !isOptional(path)) {
    checkGroup(value, path, known);
  }
}

function checkGroup(value: unknown, path: string, known: ReadonlySet<string>): void {
  if (!isPlain(value)) throw new InputError({path, label: path, value, allowed: `an object with ${[...expectedKeys(path)].join(", ")}`});
  checkBranch(value, path, known);
}

/** Names of the fields and groups directly below a path, from the table of fields. */
function expectedKeys(prefix: string): ReadonlySet<string> {
  const pattern = patternOf(prefix);
  const keys = new Set<string>();
  for (const path of Object.keys(FIELDS)) {
    if (pattern && !path.startsWith(`${pattern}.`)) continue;
    const rest = pattern ? path.slice(pattern.length + 1) : path;
    keys.add(rest.split(".")[0] as string);
  }
  return keys;
}

function checkDimensions(dimensions: unknown): void {
  if (!isPlain(dimensions)) throw new InputError({path: "deck.dimensions", label: "dimensions", value: dimensions, allowed: "an object of names and inches"});
  for (const [name, value] of Object.entries(dimensions)) {
    requireNumber(value, {path: `deck.dimensions.${name}`, label: name, unit: "in", min: 0, max: 240});
  }
}

function join(prefix: string, key: string): string {
  return prefix ? `${prefix}.${key}` : key;
}

function isPlain(value: unknown): value is Plain {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
