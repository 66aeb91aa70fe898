import type {Design} from "../design/design.js";
import type {Group} from "../design/entries.js";
import {DESIGN_FIELDS} from "../design/fieldTable.js";
import {ENTRIES} from "../design/fields.js";
import {fieldLabel, fieldWords} from "../design/fieldWords.js";
import {valueAt} from "../design/plain.js";
import {fieldUsed} from "../design/used.js";

/** One input of which some designs have another value than the first. */
export interface DifferingInput {
  readonly path: string;
  /** The group of inputs that it belongs to: "bay". */
  readonly group: string;
  readonly label: string;
  /** The value of each design in words, in their order; {@link NOT_USED} where a design has not the part that it belongs to. */
  readonly values: readonly string[];
}

/** Stands for the value of a field that a design does not use. */
export const NOT_USED = "not used";

/** What says something of a design and decides nothing in it. */
const WORDS: ReadonlySet<string> = new Set<keyof Design>(["name", "setting", "brief", "author", "firm", "reasons", "comments"]);

/** Every path that holds an input: each field, each list as one, and the changed dimensions. */
const PATHS: readonly string[] = [...ENTRIES].filter(([path, {kind}]) => kind !== "group" && !path.includes("*") && !WORDS.has(path.split(".")[0] as string)).map(([path]) => path);

/**
 * The inputs that are not alike in all of some designs, in the order of the file. Words that decide nothing (name,
 * setting, reasons, comments) are left out, and so is a field that none of the designs uses.
 */
export function differingInputs(designs: readonly Design[]): DifferingInput[] {
  const words = designs.map(inputWords);
  return PATHS.flatMap((path, i) => {
    const values = words.map((one) => one[i] as string);
    if (values.every((value) => value === values[0])) return [];
    // What decides something belongs to a group; only words stand outside of them.
    const group = DESIGN_FIELDS[path.split(".")[0] as keyof typeof DESIGN_FIELDS] as Group;
    return [{path, group: group.label, label: fieldLabel(path), values}];
  });
}

/** The value of every input of a design in words, in the order of the file; {@link NOT_USED} where it has not the part that an input belongs to. */
export function inputWords(design: Design): string[] {
  return PATHS.map((path) => (fieldUsed(design, path) ? fieldWords(path, valueAt(design, path)) : NOT_USED));
}

/** How many changes of a step are named before the rest is counted. */
const NAMED = 2;

/** What the step from one design to the next has changed, in a few words: "span 40 ft \u2192 44 ft". */
export function stepWords(from: Design, to: Design): string {
  if (from.name !== to.name) return `the name \u201c${from.name}\u201d \u2192 \u201c${to.name}\u201d`;
  const changes = differingInputs([from, to]);
  if (changes.length === 0) return "words alone";
  const named = changes.slice(0, NAMED).map(({label, values: [then = "", now = ""]}) => `${label} ${short(then)} \u2192 ${short(now)}`);
  const left = changes.length - named.length;
  return `${named.join(", ")}${left > 0 ? ` and ${left} more` : ""}`;
}

/** Letters of a value that a step shows: a list of rooms would fill a screen. */
const VALUE_LETTERS = 28;

function short(words: string): string {
  return words.length > VALUE_LETTERS ? `${words.slice(0, VALUE_LETTERS - 1).trimEnd()}\u2026` : words;
}
