import type {Design} from "../../lib/design/design.js";

/** A design as a file for the reader. */
export function asFile(design: Design): {readonly fileName: string; readonly text: string} {
  return {fileName: `${fileNameOf(design.name)}.json`, text: `${JSON.stringify(design, null, 2)}\n`};
}

/** A name that any file system takes: "Branch library, Lindow" becomes `branch-library-lindow`. */
export function fileNameOf(name: string): string {
  const plain = name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "");
  return plain.slice(0, 60) || "design";
}
