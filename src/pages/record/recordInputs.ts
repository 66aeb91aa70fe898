import type {Design} from "../../lib/design/design.js";
import {valueAt} from "../../lib/design/plain.js";
import type {Entry, ValueOf} from "../../lib/design/entries.js";
import {DESIGN_FIELDS} from "../../lib/design/fieldTable.js";
import {fieldWords, plain} from "../../lib/design/fieldWords.js";
import {isField, type GroupName} from "../../lib/design/fields.js";
import {fieldUsed} from "../../lib/design/used.js";

/** One group of a design's inputs, each with its words. */
export interface InputGroup {
  readonly title: string;
  /** Said in place of the inputs of a part that the design has not. */
  readonly without?: string;
  readonly inputs: readonly {readonly label: string; readonly value: string}[];
}

/** What is said of a group all of whose inputs are idle. */
const WITHOUT: Readonly<Partial<Record<GroupName, string>>> = {girder: "The floor has one bay across, and no girder."};
/** Not inputs: they stand on the record with what they explain. */
const EXPLAINING: GroupName = "reasons";

/** Everything that the reader has decided and the design uses, by the table of fields, so that no input is left off the record. */
export function recordInputs(design: Design): InputGroup[] {
  return Object.entries(DESIGN_FIELDS).flatMap(([name, group]) => {
    if (group.kind !== "group" || name === EXPLAINING) return [];
    const without = fieldUsed(design, name) ? undefined : WITHOUT[name as GroupName];
    const inputs = Object.entries<Entry>(group.entries).flatMap(([key, entry]) => inputsOf(design, `${name}.${key}`, entry));
    return [{title: group.label, ...(without ? {without} : {}), inputs}];
  });
}

function inputsOf(design: Design, path: string, entry: Entry): InputGroup["inputs"] {
  const value = valueAt(design, path);
  if (value === undefined || !fieldUsed(design, path)) return [];
  // Rooms and layers have tables of their own.
  if (isField(entry)) return [{label: entry.label, value: fieldWords(path, value)}];
  if (entry.kind !== "lengths") return [];
  return Object.entries(value as ValueOf<typeof entry>).map(([name, length]) => ({label: `changed dimension ${name}`, value: plain(length)}));
}
