import type {Catalog} from "../catalog.js";
import {readJson, requireChoice, requireNumber} from "../check.js";
import type {Criteria} from "../deck/criteria.js";
import {deckRow, strandOf} from "../deck/deckMember.js";
import {LIMITS, USUAL_LIMITS, type LimitName} from "../deck/limits.js";
import {fieldOf} from "../design/fields.js";
import {InputError, under} from "../errors.js";
import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import type {Aggregate} from "../materials/concrete.js";
import {makeMember, type Member} from "../member/member.js";
import {centroidLayout, rowLayout, usualLayout, type StrandLayout} from "../prestress/layout.js";
import {parsePattern, patternText, type Profile} from "../prestress/pattern.js";
import {makeShape, shapeOf} from "../sections/designation.js";
import {DECK_FAMILIES, FAMILIES, isDeckFamily, type Family, type Shape} from "../sections/shape.js";
import {PlainReader} from "./plainReader.js";

/** One member on one span under its loads, with the rules by which it is judged. */
export interface MemberCase {
  readonly name: string;
  readonly member: Member;
  readonly spanFt: number;
  readonly livePsf: number;
  readonly criteria: Criteria;
}

const PROFILES = ["straight", "one-point", "two-point"] as const satisfies readonly Profile[];
/** Highest centroid of strands that a file may ask for, in: a beam may be deeper than any deck. */
const HIGHEST_STRAND_IN = 150;
/** Lowest strands of a shape that is not in the catalog, in (common practice). */
const LOWEST_STRAND_IN: Readonly<Record<Family, number>> = {
  "double tee": 2, "hollow core": 1.5, "flat slab": 1.5, "rectangular beam": 2, "L-beam": 2, "inverted tee": 2,
};

/**
 * Reads a member's file: its shape by designation or by family and every dimension, its strands by pattern, by heights of
 * the centroid or row by row, its concretes, span, loads and criteria.
 *
 * @throws InputError naming the first field that is missing, unknown or out of range
 */
export function readMemberFile(text: string, catalog: Catalog): MemberCase {
  const file = new PlainReader(readJson(text, "member file"), "", "member file");
  const name = file.text("name", "");
  const shape = readShape(file.branch("shape"), catalog);
  const layout = readStrands(file.branch("strands"), catalog, shape);
  const concrete = file.branch("concrete");
  const topping = file.optionalBranch("topping");
  const strengthPsi = concrete.field("strengthPsi", fieldOf("deck.strengthPsi"));
  const kind = concrete.field("kind", fieldOf("deck.concrete"), "normalweight");
  const releaseStrengthPsi = concrete.field("releaseStrengthPsi", {...fieldOf("deck.releaseStrengthPsi"), max: strengthPsi});
  const aggregate = concrete.field("aggregate", fieldOf("deck.aggregate"), "siliceous");
  const member = makeMember({
    shape, layout, concreteKind: kind, strengthPsi, releaseStrengthPsi,
    toppingIn: topping?.field("thicknessIn", fieldOf("deck.toppingIn")) ?? 0,
    toppingStrengthPsi: topping?.field("strengthPsi", fieldOf("deck.toppingStrengthPsi")) ?? 3000,
    humidityPercent: file.field("humidityPercent", fieldOf("criteria.humidityPercent"), 70),
  });
  const spanFt = file.field("spanFt", fieldOf("bay.spanFt"));
  const loads = file.branch("loads");
  const superimposedDeadPsf = loads.number("superimposedDeadPsf", "superimposed dead load", "psf", 0, 2000);
  const livePsf = loads.number("livePsf", "live load", "psf", 0, 5000);
  const sustainedLiveShare = loads.field("sustainedLiveShare", fieldOf("criteria.sustainedLiveShare"), 0);
  const criteria = readCriteria(file.optionalBranch("criteria"), catalog, {superimposedDeadPsf, sustainedLiveShare, aggregate});
  if (!isDeckFamily(shape.family) && (criteria.fire || criteria.walking)) {
    throw new InputError({path: "criteria", label: "fire rating or people walking", value: shape.family, allowed: `of a deck member only: ${DECK_FAMILIES.join(", ")}`});
  }
  for (const reader of [loads, concrete, topping]) reader?.finish();
  file.finish();
  return {name, member, spanFt, livePsf, criteria};
}

/** A shape by designation, with some dimensions changed if wanted, or by family with every dimension. */
function readShape(reader: PlainReader, catalog: Catalog): Shape {
  const designation = reader.text("designation", "");
  const dimensions = reader.numbers("dimensions");
  const family = reader.has("family") ? reader.choice("family", "family", FAMILIES) : undefined;
  reader.finish();
  if (family) return under("shape", () => makeShape(family, designation || family, dimensions));
  if (designation) return under("shape", () => shapeOf(catalog, designation, dimensions));
  throw new InputError({path: "shape", label: "shape", value: Object.keys(dimensions), allowed: "a designation such as 10DT24, or a family with its dimensions"});
}

/** Strands by a pattern in their usual places, by the heights of their centroid, or row by row. */
function readStrands(reader: PlainReader, catalog: Catalog, shape: Shape): StrandLayout {
  const inStrands = <T>(work: () => T): T => under("strands", work);
  const layout = reader.has("rows") ? inRows(reader, catalog, shape) : (() => {
    const pattern = inStrands(() => parsePattern(reader.text("pattern")));
    const center = reader.optionalField("heightMidspanIn", {...fieldOf("deck.strandHeightCenterIn"), max: HIGHEST_STRAND_IN});
    const end = reader.optionalField("heightEndIn", {...fieldOf("deck.strandHeightEndIn"), max: HIGHEST_STRAND_IN});
    return inStrands(() => {
      const strand = strandOf(catalog, pattern);
      return (center ?? end) === undefined ? usualLayout(shape, pattern, strand, lowestIn(catalog, shape)) : centroidLayout(shape, pattern, strand, end, center);
    });
  })();
  reader.finish();
  return layout;
}

function inRows(reader: PlainReader, catalog: Catalog, shape: Shape): StrandLayout {
  const profile = reader.choice("profile", "strand profile", PROFILES, "straight");
  const sixteenths = reader.number("diameterSixteenths", "strand diameter", "sixteenths of an inch", 6, 10);
  const max = shape.depthIn - 1;
  const rows = reader.list("rows").map((row) => {
    const count = row.number("count", "strands in a row", "", 1, 200);
    requireNumber(count, {path: row.at("count"), label: "strands in a row", unit: "", min: 1, max: 200, integer: true});
    const centerIn = row.field("heightMidspanIn", {...fieldOf("deck.strandHeightCenterIn"), max});
    const endIn = row.field("heightEndIn", {...fieldOf("deck.strandHeightEndIn"), max}, centerIn);
    row.finish();
    if (profile === "straight" && endIn !== centerIn) {
      throw new InputError({path: row.at("heightEndIn"), label: "strand height at the ends", value: endIn, unit: "in", allowed: `${centerIn} in, as at midspan: the strands are straight`});
    }
    return {count, endIn, centerIn};
  });
  const count = rows.reduce((sum, row) => sum + row.count, 0);
  return under("strands", () => {
    const pattern = {text: patternText(count, sixteenths, profile), count, sixteenths, profile};
    return rowLayout(shape, pattern, strandOf(catalog, pattern), rows);
  });
}

function lowestIn(catalog: Catalog, shape: Shape): number {
  const known = catalog.deckMembers.some((row) => row.designation === shape.designation);
  return known ? deckRow(catalog, shape.designation).lowestStrandIn : LOWEST_STRAND_IN[shape.family];
}

/** Criteria of the file, with every limit on the load counted unless it names its own. */
function readCriteria(
  reader: PlainReader | undefined, catalog: Catalog,
  from: {superimposedDeadPsf: number; sustainedLiveShare: number; aggregate: Aggregate},
): Criteria {
  const walking = reader?.field("walking", fieldOf("criteria.walking"), "none") ?? "none";
  const hours = reader?.number("fireHours", "fire rating", "h", 0, 4, 0) ?? 0;
  const restrained = reader?.field("fireRestrained", fieldOf("criteria.fireRestrained"), false) ?? false;
  const limits = reader?.texts("limits")?.map((name, i): LimitName => requireChoice(name, {path: `criteria.limits.${i}`, label: "limit", choices: LIMITS}));
  const criteria: Criteria = {
    superimposedDeadPsf: from.superimposedDeadPsf,
    sustainedLiveShare: from.sustainedLiveShare,
    tensionClass: reader?.field("tensionClass", fieldOf("criteria.tensionClass"), "T") ?? "T",
    deadFactor: DEAD_FACTOR, liveFactor: LIVE_FACTOR, deadOnlyFactor: DEAD_ONLY_FACTOR,
    limits: limits ?? USUAL_LIMITS,
    sagLimit: reader?.field("sagLimit", fieldOf("criteria.sagLimit"), "L/360") ?? "L/360",
    seatIn: reader?.number("seatIn", "bearing length", "in", 1, 24, 6) ?? 6,
    walking: walking === "none" ? undefined : walking,
    fire: hours > 0 ? {hours, tables: catalog.fire, aggregate: from.aggregate, restrained} : undefined,
  };
  reader?.finish();
  return criteria;
}
