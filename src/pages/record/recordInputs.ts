import type {Design} from "../../lib/design/design.js";
import {valueAt} from "../../lib/design/edit.js";
import {FIELDS} from "../../lib/design/fields.js";
import {fieldWords, plain} from "../../lib/design/fieldWords.js";
import {fieldUsed} from "../../lib/design/used.js";

/** Groups of fields as they stand on the record. */
const GROUPS: readonly (readonly [string, string])[] = [
  ["bay.", "Grid"], ["loads.", "Loads"], ["deck.", "Deck"], ["criteria.", "Criteria"], ["edgeBeam.", "Edge beam"], ["girder.", "Interior girder"], ["column.", "Columns"], ["ground.", "Ground"], ["diaphragm.", "Diaphragm"],
  ["story.", "Story"], ["services.", "Services"], ["daylight.", "Daylight"], ["topping.", "Topping"],
  ["preferences.", "Weights of the search, 0 to 10"], ["consider.", "Kinds looked at"],
];

/** One group of a design's inputs, each with its words. */
export interface InputGroup {
  readonly title: string;
  /** Said in place of the inputs of a part that the design has not. */
  readonly without?: string;
  readonly inputs: readonly {readonly label: string; readonly value: string}[];
}

/** What is said of a group all of whose inputs are idle. */
const WITHOUT: Readonly<Record<string, string>> = {"girder.": "The floor has one bay across, and no girder."};

/** Everything that the reader has decided and the design uses, by the table of fields, so that no input is left off the record. */
export function recordInputs(design: Design): InputGroup[] {
  return GROUPS.map(([prefix, title]) => ({
    title,
    ...(WITHOUT[prefix] && !fieldUsed(design, prefix.slice(0, -1)) ? {without: WITHOUT[prefix]} : {}),
    inputs: Object.entries(FIELDS).filter(([path]) => path.startsWith(prefix) && !path.includes("*") && fieldUsed(design, path)).flatMap(([path, field]) => {
      const value = valueAt(design, path);
      if (value === undefined) return [];
      return [{label: field.label, value: fieldWords(path, value)}];
    }).concat(prefix === "deck." ? Object.entries(design.deck.dimensions ?? {}).map(([name, value]) => ({label: `changed dimension ${name}`, value: plain(value)})) : []),
  }));
}
