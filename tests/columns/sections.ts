import {columnSection, type ColumnSection, type ColumnSectionInput} from "../../lib/columns/section.js";
import {catalogue} from "../support/designs.js";
import {barOf} from "../../lib/catalogue.js";

export const bar = (size: string) => barOf(catalogue, size);

/** A 16 in square column of 5,000 psi with eight #8 bars on all faces and 1.5 in cover, or another that differs from it. */
export function columnOf(different: Partial<ColumnSectionInput> = {}): ColumnSection {
  return columnSection({widthIn: 16, depthIn: 16, strengthPsi: 5000, bar: bar("#8"), count: 8, faces: "all", coverIn: 1.5, ...different});
}
