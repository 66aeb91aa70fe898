import {readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {parseDesign} from "../../lib/design/validate.js";
import type {Design} from "../../lib/design/design.js";
import {ROOT} from "./root.js";

/** A starter design and the name of its file without the ending. */
export interface Seed {
  readonly id: string;
  readonly design: Design;
}

/** The starter designs in order of their file names; throws on the first that is not a design. */
export function readSeeds(folder = join(ROOT, "seeds")): Seed[] {
  const files = readdirSync(folder).filter((file) => file.endsWith(".json")).sort();
  return files.map((file) => ({
    id: file.replace(/\.json$/, ""),
    design: parseDesign(readFileSync(join(folder, file), "utf8")),
  }));
}
