import {FileAttachment} from "observablehq:stdlib";
import type {Design} from "../lib/design/design.js";
import {evaluate} from "../lib/evaluate.js";
import {readCatalog} from "../lib/catalog.js";
import type {RawTables} from "../lib/tables.js";
import {starterOfEmbed} from "./embed/alone.js";
import {openStore} from "./store/browser.js";

/** A starter design; `id` is the name of its file. */
export interface Seed {
  readonly id: string;
  readonly design: Design;
}

const [rawTables, seedList] = await Promise.all([
  FileAttachment("../data/catalog.json").json() as Promise<RawTables>,
  FileAttachment("../data/seeds.json").json() as Promise<Seed[]>,
]);

/** Members, strands, occupancies and the other tables. */
export const catalog = readCatalog(rawTables);

/** The starter designs in their fixed order. */
export const seeds: readonly Seed[] = seedList;

const starter = starterOfEmbed();
const firstSeed = seeds.find(({id}) => id === starter) ?? seeds[0];
if (!firstSeed) throw new Error("There is no starter design.");

/** The open design of this reader, shared by all pages; a change that cannot be computed is refused with its reason. */
export const store = openStore(firstSeed.design, (design) => evaluate(design, catalog), (before, by) => {
  void import("./moments.js").then(({keepBefore}) => keepBefore(catalog, seedList.map(({design}) => design), before, by));
});

/** The tables as text, for work that runs beside the page and makes its own catalog. */
export const tables: RawTables = rawTables;
