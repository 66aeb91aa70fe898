import type {Catalog} from "../catalog.js";
import {strandOf} from "../deck/deckMember.js";
import {fireRating, type FireRow} from "../member/fire.js";
import {makeMember, type Member} from "../member/member.js";
import {layoutOfRows} from "../prestress/layout.js";
import {parsePattern} from "../prestress/pattern.js";
import {doubleTee} from "../sections/doubleTee.js";
import {flatSlab} from "../sections/prismatic.js";
import type {Shape} from "../sections/shape.js";

type Column = keyof FireRow["thicknessIn"];

/** What the kit's tables require of a slab for a rating, in; the key is a concrete and hours. */
export function fireTableIn(catalog: Catalog, what: "thicknessIn" | "coverIn", key: string): number {
  const [column = "", hours] = key.split("/");
  const row = catalog.fire.slabs.find((one) => one.hours === Number(hours));
  return row?.[what][column as Column] ?? NaN;
}

/** Rating of a restrained slab by the clear cover of its strand, h. */
export function restrainedHours(catalog: Catalog, coverIn: number): number {
  const slab = memberOf(catalog, flatSlab("slab", {widthIn: 48, depthIn: 8}), coverIn);
  return fireRating(slab, {tables: catalog.fire, aggregate: "siliceous", restrained: true}).byCoverHours ?? NaN;
}

/** Flange of the ribbed soffit that is tried, in; ribs stand as many of it apart as asked. */
const FLANGE_IN = 8;

/**
 * How much of the ribs' concrete counts toward a thick ribbed soffit, 0 to 1: the thickness that the kit finds beyond
 * the flange, over that of all concrete spread evenly beyond it.
 */
export function ribShare(catalog: Catalog, spacingOverThickness: number): number {
  const shape = doubleTee("ribs", {
    widthIn: 120, depthIn: 24, flangeIn: FLANGE_IN, stemBottomIn: 5, stemTopIn: 6, stemSpacingIn: spacingOverThickness * FLANGE_IN, chamferIn: 0,
  });
  // Stryker disable next-line BooleanLiteral: whether its ends are held bears on the cover, not on the thickness.
  const {thicknessIn} = fireRating(memberOf(catalog, shape, 4), {tables: catalog.fire, aggregate: "siliceous", restrained: false});
  return (thicknessIn - FLANGE_IN) / (shape.section.areaIn2 / shape.widthIn - FLANGE_IN);
}

function memberOf(catalog: Catalog, shape: Shape, coverIn: number): Member {
  const strand = strandOf(catalog, parsePattern("48-S"));
  const heightIn = coverIn + strand.diameterIn / 2;
  return makeMember({
    shape, layout: layoutOfRows(strand, "straight", [{count: 4, endIn: heightIn, centerIn: heightIn}]),
    concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn: 0, toppingStrengthPsi: 3000, humidityPercent: 70,
  });
}
