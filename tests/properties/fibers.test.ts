import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {makeMember, type Member} from "../../lib/member/member.js";
import {memberStrength} from "../../lib/member/strength.js";
import type {Profile} from "../../lib/prestress/pattern.js";
import {makeShape} from "../../lib/sections/designation.js";
import type {Shape} from "../../lib/sections/shape.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {anyConcrete, anyPattern, hold, within} from "./arbitrary.js";
import {fiberStrength} from "./fiberReference.js";

const TOLERANCE = 0.001;
const relative = (value: number, expected: number) => Math.abs(value - expected) / Math.abs(expected);

/** A member of the catalog in its usual layout. */
const anyCatalogMember: fc.Arbitrary<Member> = fc.record({pattern: anyPattern, concretes: anyConcrete})
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

const anyOtherMember: fc.Arbitrary<Member> = fc.record({
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

const anyCase = fc.record({member: fc.oneof(anyCatalogMember, anyOtherMember), share: within(0.1, 0.5), effectiveStressKsi: within(110, 190)});

describe("strength in bending and a sum over thousands of layers", () => {
  test("agree to a thousandth in moment, neutral axis, strain and phi", () => {
    const seen = new Map<string, number>();
    const count = (kind: string) => seen.set(kind, (seen.get(kind) ?? 0) + 1);
    hold(500, fc.property(anyCase, ({member, share, effectiveStressKsi}) => {
      const ours = memberStrength(member, share, effectiveStressKsi);
      const layers = fiberStrength(member, share, effectiveStressKsi);
      expect(relative(ours.nominalMomentKipIn, layers.nominalMomentKipIn), "nominal moment").toBeLessThan(TOLERANCE);
      expect(relative(ours.designMomentKipIn, layers.phi * layers.nominalMomentKipIn), "design moment").toBeLessThan(TOLERANCE);
      expect(relative(ours.neutralAxisIn, layers.neutralAxisIn), "neutral axis").toBeLessThan(TOLERANCE);
      expect(Math.abs(ours.tensileStrain - layers.tensileStrain), "strain").toBeLessThan(TOLERANCE * (0.003 + Math.abs(layers.tensileStrain)));
      expect(relative(ours.phi, layers.phi), "phi").toBeLessThan(TOLERANCE);
      count(member.shape.family);
      count(member.topping ? "topped" : "bare");
      count(member.layout.profile);
      count(`${member.layout.strand.sixteenths}/16 in`);
      count(ours.tensileStrain >= 0.005 ? "ductile" : ours.tensileStrain <= 0.002 ? "brittle" : "between");
    }));
    // Every kind must have had its turn, or the law says little.
    const kinds = ["double tee", "hollow core", "flat slab", "rectangular beam", "inverted tee", "L-beam", "topped", "bare",
      "straight", "one-point", "two-point", "6/16 in", "8/16 in", "10/16 in", "ductile", "between", "brittle"];
    for (const kind of kinds) expect(seen.get(kind) ?? 0, kind).toBeGreaterThanOrEqual(10);
  });
});
