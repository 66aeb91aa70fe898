import {readCatalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {readSeeds} from "../../src/headless/readSeeds.js";

/** The catalog of `data/`. */
export const catalog = readCatalog(readRawTables());
/** The starter designs. */
export const seeds = readSeeds();

/** Changes that leave uncounted what closes the short sides, and take the parapet off. */
export const WITHOUT_WALLS = {"walls.shortSide": "not counted", "walls.parapetIn": 0} as const;

/** A starter design by the name of its file. */
export function seed(id: string): Design {
  const found = seeds.find((entry) => entry.id === id);
  if (!found) throw new Error(`no starter design ${id}`);
  return found.design;
}
