import fc from "fast-check";
import {makeMember, type Member} from "../../lib/member/member.js";
import type {Profile} from "../../lib/prestress/pattern.js";
import {makeShape} from "../../lib/sections/designation.js";
import type {Shape} from "../../lib/sections/shape.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {anyConcrete, anyPattern, within} from "./arbitrary.js";

/** A member of the catalog in its usual layout. */
export const anyCatalogMember: fc.Arbitrary<Member> = fc.record({pattern: anyPattern, concretes: anyConcrete})
  .map(({pattern: [designation, text], concretes}) => memberWith(designation, text, concretes));

/** Shapes of every family in dimensions that no catalog lists. */
const anyShape: fc.Arbitrary<Shape> = fc.oneof(
  fc.record({
    widthIn: within(72, 180), depthIn: within(16, 48), flangeIn: within(1.5, 5), stemBottomIn: within(3.5, 8), taperIn: within(0, 4),
    stemSpacingIn: within(30, 50), chamferIn: fc.constantFrom(0, 1.5, 3),
  }).map(({taperIn, ...tee}) => makeShape("double tee", "any", {...tee, stemTopIn: tee.stemBottomIn + taperIn})),
  fc.record({depthIn: within(6, 16), voidCount: fc.integer({min: 2, max: 8}), hollow: within(0.2, 0.9)})
    .map(({depthIn, voidCount, hollow}) => makeShape("hollow core", "any", {widthIn: 48, depthIn, voidCount, voidDiameterIn: hollow * (Math.min(depthIn, 48 / voidCount) - 0.75)})),
  fc.record({widthIn: within(24, 96), depthIn: within(4, 12)}).map((slab) => makeShape("flat slab", "any", slab)),
  fc.record({widthIn: within(10, 24), depthIn: within(16, 48)}).map((beam) => makeShape("rectangular beam", "any", beam)),
  fc.record({family: fc.constantFrom("inverted tee" as const, "inverted tee" as const, "L-beam" as const), webWidthIn: within(8, 24), depthIn: within(20, 60), ledgeProjectionIn: within(4, 12), ledgeDepthIn: within(6, 16)})
    .map(({family, ...beam}) => makeShape(family, "any", beam)),
);

/** Strands in rows at any heights, straight or depressed, from hardly any to as much as the whole concrete can balance. */
const anyRows = fc.array(fc.record({count: fc.integer({min: 1, max: 6}), end: within(0.08, 0.8), center: within(0.05, 0.35)}), {minLength: 1, maxLength: 8});
const anyProfile = fc.constantFrom<Profile>("straight", "one-point", "two-point");

/** A member that no catalog lists. */
export const anyOtherMember: fc.Arbitrary<Member> = fc.record({
  shape: anyShape, rows: anyRows, profile: anyProfile, strand: fc.constantFrom(...catalog.strands), concretes: anyConcrete,
}).map(({shape, rows: given, profile, strand, concretes}) => {
  const rows = given.map(({count, end, center}) => {
    const centerIn = center * shape.depthIn;
    return {count, areaIn2: count * strand.areaIn2, centerIn, endIn: profile === "straight" ? centerIn : end * shape.depthIn};
  });
  const count = rows.reduce((sum, row) => sum + row.count, 0);
  const mean = (pick: (row: (typeof rows)[number]) => number) => rows.reduce((sum, row) => sum + row.count * pick(row), 0) / count;
  const layout = {strand, count, profile, rows, areaIn2: count * strand.areaIn2, centroidEndIn: mean((row) => row.endIn), centroidCenterIn: mean((row) => row.centerIn)};
  return makeMember({shape, layout, ...concretes});
}).filter(({layout, section, concrete}) => 270 * layout.areaIn2 < ((0.9 * 0.85 * concrete.strengthPsi) / 1000) * section.areaIn2);
