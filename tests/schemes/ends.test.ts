import {expect, test} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {withValues} from "../../lib/design/edit.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {schemesOf, type Scheme} from "../../lib/schemes/scheme.js";
import {wantedCeilingFt} from "../../lib/schemes/wanted.js";
import {catalog, seed} from "../support/designs.js";

/** Schemes of a starter's rooms on a few bays. */
function made(id: string, beamSpansFt: readonly number[]): Scheme[] {
  const design = seed(id);
  const schemes = schemesOf(briefOf(design, wantedCeilingFt(evaluate(design, catalog)), {spansFt: [28, 36, 44], beamSpansFt, baysAcross: [2]}), catalog);
  return Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
}

test.each(["branch-library", "records-store"])("beams of %s are sized for the strip of floor beyond the end column lines, as far as any size carries it", (id) => {
  const found = made(id, [24, 30]);
  const withStrip = found.filter(({floor}) => floor.endStrip && floor.endStrip.onStemKip > 0);
  expect(withStrip.length).toBeGreaterThan(0);
  for (const {floor, design, fails} of withStrip) {
    const failed = fails.map(({id: check}) => check);
    // A ledge that fails under the strip is the deepest that there is.
    if (failed.includes("end strip: ledge punching end")) expect(design.edgeBeam.ledgeDepthIn).toBe(24);
    if (failed.includes("end strip: girder ledge punching")) expect(design.girder.ledgeDepthIn).toBe(36);
    expect(floor.endStrip?.checks.length).toBeGreaterThan(1);
  }
  expect(withStrip.filter(({fails}) => !fails.some(({id: check}) => check.startsWith("end strip"))).length).toBeGreaterThan(withStrip.length / 2);
});

test("a member whose stems would stand off their beams is passed over on bays that are whole tees of another width", () => {
  let passed = 0;
  for (const {design, floor, found} of made("branch-library", [24, 30])) {
    expect(floor.checks.some(({id, verdict}) => id === "stems on beam" && verdict === "fails"), `${design.deck.member}, past ${found.deck.passedOver.join(", ")}`).toBe(false);
    passed += found.deck.passedOver.length;
  }
  expect(passed).toBeGreaterThan(0);
});

test("beams of the floors are sized for the open top level, where cars and snow are at the same time", () => {
  const design = seed("parking-structure");
  const of = (groundPsf: number) => {
    const snowy = withValues(design, {"snow.groundPsf": groundPsf});
    const schemes = schemesOf(briefOf(snowy, 8, {spansFt: [44, 60], beamSpansFt: [24, 36], baysAcross: [1, 2], edges: ["ledge", "pockets", "below"], girders: ["inverted tee", "rectangle"]}), catalog);
    return Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
  };
  const [without, found] = [of(0), of(20)];
  expect(found).toHaveLength(without.length);
  expect(found.length).toBeGreaterThan(20);
  let grown = 0;
  for (const [i, {floor, design: {edgeBeam, girder}, fails}] of found.entries()) {
    expect(floor.openTop?.checks.length).toBeGreaterThan(0);
    expect(fails.map(({id}) => id).filter((id) => id.startsWith("top level:"))).toEqual([]);
    const bare = without[i] as Scheme;
    expect(bare.floor.openTop).toBeUndefined();
    // More load takes no less of a ledge, a girder or its strands.
    if (bare.floor.member.shape.designation === floor.member.shape.designation && bare.floor.girder && floor.girder) {
      expect(floor.girder.belowDeckIn).toBeGreaterThanOrEqual(bare.floor.girder.belowDeckIn);
    }
    if (edgeBeam.kind === "ledge") expect(edgeBeam.ledgeDepthIn).toBeGreaterThanOrEqual(bare.design.edgeBeam.ledgeDepthIn);
    grown += Number(edgeBeam.ledgeDepthIn > bare.design.edgeBeam.ledgeDepthIn) + Number(girder.strands > bare.design.girder.strands);
  }
  expect(grown).toBeGreaterThan(found.length / 2);
});
