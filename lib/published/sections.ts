import type {Catalog} from "../catalog.js";
import {HANDBOOK_STRENGTHS_PSI} from "../deck/criteria.js";
import {InputError} from "../errors.js";
import {concrete} from "../materials/concrete.js";
import {compositeSection, type Topping} from "../sections/composite.js";
import {shapeOf} from "../sections/designation.js";
import type {SectionProperties, Shape} from "../sections/shape.js";
import {IN2_PER_FT2, feet} from "../units.js";
import {compare, type Comparison} from "./compare.js";
import type {PublishedSection} from "./tables.js";

/** What is known of a printed section. */
interface Subject {
  readonly shape: Shape;
  readonly section: SectionProperties;
  readonly weightPlf: number;
}

/** Our value of each printed quantity. */
const QUANTITIES: Readonly<Record<string, {words: string; ours: (of: Subject) => number}>> = {
  "area": {words: "area", ours: ({section}) => section.areaIn2},
  "inertia": {words: "second moment of area", ours: ({section}) => section.inertiaIn4},
  "yb": {words: "centroid above the soffit", ours: ({section}) => section.ybIn},
  "yt": {words: "top above the centroid", ours: ({section}) => section.ytIn},
  "sb": {words: "section modulus, soffit", ours: ({section}) => section.sbIn3},
  "st": {words: "section modulus, top", ours: ({section}) => section.stIn3},
  "weight": {words: "weight", ours: ({weightPlf}) => weightPlf},
  "weight per area": {words: "weight per area", ours: ({weightPlf, shape}) => weightPlf / feet(shape.widthIn)},
  "volume to surface": {words: "volume over surface", ours: ({shape}) => shape.volumeToSurfaceIn},
  "web width": {words: "width of all webs", ours: ({shape}) => shape.webWidthIn},
};

/** Printed section properties beside ours, from the catalog's dimensions. */
export function compareSections(catalog: Catalog, rows: readonly PublishedSection[]): Comparison[] {
  return rows.map((row) => {
    const quantity = QUANTITIES[row.quantity];
    if (!quantity) throw new InputError({path: "quantity", label: "section quantity", value: row.quantity, allowed: Object.keys(QUANTITIES).join(", ")});
    const group = row.toppingIn > 0 ? `${row.member} + ${row.toppingIn} in` : row.member;
    return compare({group, quantity: quantity.words, unit: row.unit, published: row.value}, quantity.ours(subject(catalog, row)), row);
  });
}

/** Member of 5,000 psi normalweight concrete, topping of 3,000 psi over its whole width, as the handbook's pages have it. */
function subject(catalog: Catalog, row: PublishedSection): Subject {
  const shape = shapeOf(catalog, row.member);
  const bare = shape.section;
  const material = concrete("normalweight", HANDBOOK_STRENGTHS_PSI.member);
  const weightPlf = (bare.areaIn2 * material.unitWeightPcf) / IN2_PER_FT2;
  const topping: Topping = {
    thicknessIn: row.toppingIn, widthIn: shape.widthIn, concrete: concrete("normalweight", HANDBOOK_STRENGTHS_PSI.topping),
  };
  const toppingPlf = (topping.thicknessIn * topping.widthIn * topping.concrete.unitWeightPcf) / IN2_PER_FT2;
  return {shape, section: compositeSection(bare, material, topping), weightPlf: weightPlf + toppingPlf};
}
