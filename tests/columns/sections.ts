import {columnSection, type ColumnSection, type ColumnSectionInput} from "../../lib/columns/section.js";
import {catalog} from "../support/designs.js";
import {barOf} from "../../lib/catalog.js";

export const bar = (size: string) => barOf(catalog, size);

/** A 16 in square column of 5,000 psi with eight #8 bars on all faces and 1.5 in cover, or another that differs from it. */
export function columnOf(different: Partial<ColumnSectionInput> = {}): ColumnSection {
  return columnSection({widthIn: 16, depthIn: 16, strengthPsi: 5000, bar: bar("#8"), count: 8, faces: "all", coverIn: 1.5, ...different});
}

/** Columns of several sizes, strengths and shares of steel. */
export const COLUMNS: Readonly<Record<string, () => ColumnSection>> = {
  "16 in, eight #8": () => columnOf(),
  "12 in, four #7": () => columnOf({widthIn: 12, depthIn: 12, count: 4, bar: bar("#7")}),
  "12 in, four #9, 4 ksi": () => columnOf({widthIn: 12, depthIn: 12, count: 4, bar: bar("#9"), strengthPsi: 4000}),
  "16 x 28 in, ten #9, 6 ksi": () => columnOf({depthIn: 28, count: 10, bar: bar("#9"), strengthPsi: 6000}),
  "24 x 14 in, two faces": () => columnOf({widthIn: 24, depthIn: 14, count: 8, bar: bar("#9"), faces: "two"}),
  "24 in, sixteen #11, 9 ksi": () => columnOf({widthIn: 24, depthIn: 24, count: 16, bar: bar("#11"), strengthPsi: 9000}),
};
