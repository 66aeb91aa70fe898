import {readCatalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {readSeeds} from "../../src/headless/readSeeds.js";

/** The catalog of `data/`. */
export const catalog = readCatalog(readRawTables());
/** The starter designs. */
export const seeds = readSeeds();

/** Changes that leave uncounted what closes the short sides, and take the parapet off. */
export const WITHOUT_WALLS = {"walls.shortSide": "not counted", "walls.parapetIn": 0} as const;

/** The library with the beams that tests work by hand: an edge beam of 5,000 psi, girders with a foot of 12 in. */
export function libraryByHand(): Design {
  return withValues(seed("branch-library"), {"edgeBeam.strengthPsi": 5000, "girder.ledgeDepthIn": 12});
}

/** A starter design by the name of its file. */
export function seed(id: string): Design {
  const found = seeds.find((entry) => entry.id === id);
  if (!found) throw new Error(`no starter design ${id}`);
  return found.design;
}
