import type {Catalog} from "../../lib/catalog.js";
import {kinships, type Kinship, type NamedDesign} from "../../lib/classroom/kinship.js";

/** Which designs of a class come from one another; no table is asked, and nothing is told on the way. */
export function* kinTask(_catalog: Catalog, {files, starters}: {readonly files: readonly NamedDesign[]; readonly starters: readonly NamedDesign[]}): Generator<never, readonly Kinship[]> {
  return kinships(files, starters);
}
