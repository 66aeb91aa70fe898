import {readCatalogue} from "../../lib/catalogue.js";
import type {Design} from "../../lib/design/design.js";
import {readRawTables} from "../../src/headless/readCatalogue.js";
import {readSeeds} from "../../src/headless/readSeeds.js";

/** The catalogue of `data/`. */
export const catalogue = readCatalogue(readRawTables());
/** The starter designs. */
export const seeds = readSeeds();

/** A starter design by the name of its file. */
export function seed(id: string): Design {
  const found = seeds.find((entry) => entry.id === id);
  if (!found) throw new Error(`no starter design ${id}`);
  return found.design;
}
