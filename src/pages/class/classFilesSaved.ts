import {strToU8, zipSync} from "fflate";
import type {ClassDesign} from "../../lib/classroom/classFiles.js";

/** The text of a design's file. */
export function designText({design}: ClassDesign): string {
  return `${JSON.stringify(design, null, 2)}\n`;
}

/** Design files in one archive, each under its own name; a name that would leave the archive's folder loses what leads there. */
export function zipped(designs: readonly ClassDesign[]): Blob {
  const files = Object.fromEntries(designs.map((one) => [one.fileName.replace(/^.*[\\/]/, ""), strToU8(designText(one))]));
  return new Blob([zipSync(files) as Uint8Array<ArrayBuffer>], {type: "application/zip"});
}
