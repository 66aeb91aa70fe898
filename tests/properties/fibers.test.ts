import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {memberStrength} from "../../lib/member/strength.js";
import {anyCatalogMember, anyOtherMember} from "./anyMember.js";
import {hold, within} from "./arbitrary.js";
import {fiberStrength} from "./fiberReference.js";

const TOLERANCE = 0.001;
const relative = (value: number, expected: number) => Math.abs(value - expected) / Math.abs(expected);

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
