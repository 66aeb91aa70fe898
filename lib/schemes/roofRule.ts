import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import {hasRoof, hasRoofDeck} from "../design/used.js";
import {ownPsf} from "../member/member.js";
import {roofBuilt} from "../roof/roof.js";
import {decimals} from "../units.js";

/**
 * A design whose roof is two loads on the columns, as schemes have it: a deck of its own is chosen once the floor is. Where
 * the design has one, its dead load is that of this deck with its layers, rounded up to 5 psf; what lies on it follows by
 * the rule of the story.
 */
export function roofAsLoads(design: Design, catalog: Catalog): Design {
  const built = roofBuilt(design, catalog);
  if (!built) return design;
  const {min, max, step} = fieldOf("column.roofDeadPsf");
  const psf = ownPsf(built.member) + built.layers.psf;
  return {...design, roof: {...design.roof, given: "loads"}, column: {...design.column, roofDeadPsf: Math.min(max, Math.max(min, Math.ceil(psf / step - 1e-9) * step))}};
}

/** How a design's roof is counted, in a word for a row. */
export function roofCounted(design: Design): "deck" | "loads" | "none" {
  return hasRoofDeck(design) ? "deck" : hasRoof(design) ? "loads" : "none";
}

/** How a scheme's roof is counted, in a sentence. */
export function roofWords(design: Design): string {
  const {roofDeadPsf, roofLivePsf} = design.column;
  return hasRoof(design)
    ? `The roof counts as its two loads on the columns, ${decimals(roofDeadPsf)} psf dead and ${decimals(roofLivePsf)} psf live; a deck of its own is chosen once the floor is.`
    : "No roof is over the highest floor, whose beams are those of the others.";
}
