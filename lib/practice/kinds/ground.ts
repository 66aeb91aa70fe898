import type {Catalog, DeckMemberRow} from "../../catalog.js";
import type {Design} from "../../design/design.js";
import {isPlank, patternMember, usualPatterns} from "../../deck/table.js";
import {HANDBOOK_HUMIDITY_PERCENT, HANDBOOK_STRENGTHS_PSI} from "../../deck/criteria.js";
import type {Member} from "../../member/member.js";
import {placedStrands} from "../../prestress/layout.js";
import {blankDesign} from "../../schemes/blank.js";
import {shapeOf} from "../../sections/designation.js";
import type {Shape} from "../../sections/shape.js";
import type {Draw} from "../draw.js";
import type {SectionPicture} from "../item.js";

/** Some fields of a design, by group. */
type Changes = {readonly [G in keyof Design]?: Design[G] extends readonly unknown[] | string | number ? Design[G] : Partial<Design[G]>};

/** A common design with some fields changed. An exercise draws them within their ranges, so they are not checked again. */
export function designWith(changes: Changes): Design {
  const ground = blankDesign() as unknown as Readonly<Record<string, object>>;
  const groups = Object.entries(changes).map(([group, fields]) => [group, typeof fields === "object" ? {...ground[group], ...fields} : fields]);
  return {...ground, ...Object.fromEntries(groups)} as Design;
}

/** Shapes by catalog and designation: hundreds of exercises draw from a few dozen. */
const SHAPES = new WeakMap<Catalog, Map<string, Shape>>();

/** A catalog shape, made once. */
export function shapeNamed(catalog: Catalog, designation: string): Shape {
  const known = SHAPES.get(catalog) ?? new Map<string, Shape>();
  SHAPES.set(catalog, known);
  const shape = known.get(designation) ?? shapeOf(catalog, designation);
  known.set(designation, shape);
  return shape;
}

/** The catalog's double tees. */
export function tees(catalog: Catalog, use?: DeckMemberRow["use"]): readonly DeckMemberRow[] {
  return catalog.deckMembers.filter((row) => !isPlank(row) && (use === undefined || row.use === use));
}

/** The catalog's planks. */
export function planks(catalog: Catalog): readonly DeckMemberRow[] {
  return catalog.deckMembers.filter(isPlank);
}

/** Members by catalog and what makes them. */
const MEMBERS = new WeakMap<Catalog, Map<string, Member>>();

/** A member of the catalog with strands and topping, of the strengths that handbook tables use, or with another strength at release. */
export function catalogMember(catalog: Catalog, row: DeckMemberRow, pattern: string, toppingIn: number, releasePsi: number = HANDBOOK_STRENGTHS_PSI.release): Member {
  const known = MEMBERS.get(catalog) ?? new Map<string, Member>();
  MEMBERS.set(catalog, known);
  const name = `${row.designation}+${toppingIn} ${pattern} ${releasePsi}`;
  const member = known.get(name) ?? madeMember(catalog, row, pattern, toppingIn, releasePsi);
  known.set(name, member);
  return member;
}

function madeMember(catalog: Catalog, row: DeckMemberRow, pattern: string, toppingIn: number, releasePsi: number): Member {
  const {member, topping} = HANDBOOK_STRENGTHS_PSI;
  return patternMember(catalog, row, pattern, {
    concreteKind: "normalweight", strengthPsi: member, releaseStrengthPsi: releasePsi, toppingIn, toppingStrengthPsi: topping, humidityPercent: HANDBOOK_HUMIDITY_PERCENT,
  }, shapeNamed(catalog, row.designation));
}

/** A straight pattern that the catalog lists for a member, drawn. */
export function straightPattern(draw: Draw, row: DeckMemberRow): string {
  return draw.one(usualPatterns(row).filter((text) => text.endsWith("S")));
}

/** A member's section as a picture. */
export function sectionOf(member: Member, dimensions: boolean): SectionPicture {
  return {kind: "section", shape: member.shape, toppingIn: member.topping?.thicknessIn ?? 0, strands: placedStrands(member.shape, member.layout, 0.5), dimensions};
}

/** A bare section as a picture. */
export function shapePicture(shape: Shape, dimensions: boolean): SectionPicture {
  return {kind: "section", shape, toppingIn: 0, strands: [], dimensions};
}

/** A span that such a member is used for, ft: 18 to 27 times the depth of a tee, 29 to 43 times that of a plank. */
export function spanDrawn(draw: Draw, row: DeckMemberRow): number {
  const depthIn = row.dimensions["depthIn"] as number;
  const [least, most] = isPlank(row) ? [2.4, 3.6] : [1.5, 2.2];
  return draw.from(Math.ceil(least * depthIn), Math.floor(most * depthIn), 1);
}

/** A tee on a span that such a tee is used for. */
export function teeOnSpan(draw: Draw, catalog: Catalog, use: "field-topped" | "pretopped"): {readonly row: DeckMemberRow; readonly pattern: string; readonly toppingIn: number; readonly spanFt: number; readonly member: Member} {
  const row = draw.one(tees(catalog, use));
  const spanFt = spanDrawn(draw, row);
  const toppingIn = use === "pretopped" ? 0 : draw.from(2, 3.5, 0.5);
  const patterns = usualPatterns(row).filter((text) => text.endsWith("S"));
  // Half of the strands at least: fewer would not carry such a span.
  const pattern = draw.one(patterns.slice(Math.floor(patterns.length / 2)));
  return {row, pattern, toppingIn, spanFt, member: catalogMember(catalog, row, pattern, toppingIn)};
}

/** The article that a designation takes when it is read aloud: an 8DT24, a 10DT24. */
export function article(designation: string, capital: "a" | "A" = "a"): string {
  return designation.startsWith("8") ? `${capital}n` : capital;
}

/** A number to so many decimals, as a question states what was computed. */
export function stated(value: number, places: number): number {
  return Number(value.toFixed(places));
}
