import type {Catalog, DeckMemberRow} from "../catalog.js";
import type {Design} from "../design/design.js";
import {InputError, under} from "../errors.js";
import type {Strand} from "../materials/strand.js";
import {makeMember, type Member} from "../member/member.js";
import {centroidLayout, usualLayout, type StrandLayout} from "../prestress/layout.js";
import {parsePattern, type Pattern} from "../prestress/pattern.js";
import {shapeOf} from "../sections/designation.js";
import type {Shape} from "../sections/shape.js";

/** The deck member of a design; throws {@link InputError} with the design's own paths. */
export function deckMember(design: Design, catalog: Catalog): Member {
  const {deck, criteria} = design;
  return under("deck", () => {
    const row = deckRow(catalog, deck.member);
    const shape = shapeOf(catalog, row.designation, deck.dimensions);
    const pattern = parsePattern(deck.pattern);
    return makeMember({
      shape,
      layout: layoutOf(shape, pattern, strandOf(catalog, pattern), row, deck.strandHeightEndIn, deck.strandHeightCenterIn),
      concreteKind: deck.concrete,
      strengthPsi: deck.strengthPsi,
      releaseStrengthPsi: deck.releaseStrengthPsi,
      toppingIn: deck.toppingIn,
      toppingStrengthPsi: deck.toppingStrengthPsi,
      humidityPercent: criteria.humidityPercent,
    });
  });
}

/** The catalog's row of a deck member; throws {@link InputError} listing the members there are. */
export function deckRow(catalog: Catalog, designation: string, path = "member"): DeckMemberRow {
  const row = catalog.deckMembers.find((entry) => entry.designation === designation);
  if (row) return row;
  throw new InputError({path, label: "deck member", value: designation, allowed: catalog.deckMembers.map((entry) => entry.designation).join(", ")});
}

/**
 * What is to be said of a pattern with fewer or more strands than the catalog lists for a member: it is computed all
 * the same. Undefined for the listed ones.
 */
export function unlistedStrands({designation, leastStrands, mostStrands}: DeckMemberRow, {count}: Pattern): string | undefined {
  if (count >= leastStrands && count <= mostStrands) return undefined;
  // Stryker disable next-line EqualityOperator: as many as the least are listed
  return `${count} strands are ${count < leastStrands ? "fewer" : "more"} than the ${leastStrands} to ${mostStrands} that the catalog lists for a ${designation}, so ask a producer`;
}

/** The strand that a pattern names; throws {@link InputError} if the catalog has no such size. */
export function strandOf(catalog: Catalog, pattern: Pattern): Strand {
  const strand = catalog.strands.find((entry) => entry.sixteenths === pattern.sixteenths);
  if (strand) return strand;
  throw new InputError({path: "pattern", label: "strand diameter", value: `${pattern.sixteenths}/16`, unit: "in",
    allowed: catalog.strands.map((entry) => entry.sixteenths).join(", ")});
}

/** The usual layout, or one by the centroid's heights where at least one of them is given. */
export function layoutOf(
  shape: Shape, pattern: Pattern, strand: Strand, row: DeckMemberRow, endIn: number | undefined, centerIn: number | undefined,
): StrandLayout {
  if (endIn === undefined && centerIn === undefined) return usualLayout(shape, pattern, strand, row.lowestStrandIn);
  return centroidLayout(shape, pattern, strand, endIn, centerIn);
}
