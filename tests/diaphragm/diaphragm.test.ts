import {describe, expect, test} from "vitest";
import {diaphragm, DIAPHRAGM_NOTE, type DiaphragmInput} from "../../lib/diaphragm/diaphragm.js";
import {refused} from "../support/errors.js";

const TOPPED: DiaphragmInput = {
  kind: "topped", wallSpanFt: 150, depthFt: 60, lateralPlf: 400, toppingIn: 2, toppingStrengthPsi: 4000, meshIn2PerFt: 0.058,
};
const PRETOPPED: DiaphragmInput = {kind: "pretopped", wallSpanFt: 150, depthFt: 60, lateralPlf: 400, connectorSpacingFt: 5};
const of = (input: DiaphragmInput, different: Partial<DiaphragmInput> = {}) => diaphragm({...input, ...different});
const verdictOf = (result: ReturnType<typeof of>, id: string) => result.checks.find((check) => check.id === id)?.verdict;

describe("a floor between two walls", () => {
  test("has chords and end shear of a simple beam", () => {
    const result = of(TOPPED);
    // 0.4 x 150^2 / 8 = 1,125 kip-ft; over 54 ft 20.83 kip; over 54 ksi 0.386 in2; shear 30 kip, 0.5 kip/ft.
    expect(result.momentKipFt).toBeCloseTo(1125, 9);
    expect(result.chordKip).toBeCloseTo(1125 / 54, 9);
    expect(result.chordSteelIn2).toBeCloseTo(1125 / 54 / 54, 9);
    expect(result).toMatchObject({endShearKip: 30, shearKipPerFt: 0.5});
  });

  test("says that the lateral system is not designed", () => {
    expect(of(TOPPED).note).toBe(DIAPHRAGM_NOTE);
    expect(DIAPHRAGM_NOTE).toMatch(/^The lateral system is not designed/);
  });

  test("may be taken as rigid up to three times its depth; a longer one does not fail but is out of that idealization's range", () => {
    expect(verdictOf(of(TOPPED, {wallSpanFt: 180}), "diaphragm proportions")).toBe("ok");
    expect(verdictOf(of(TOPPED, {wallSpanFt: 181}), "diaphragm proportions")).toBe("out of range");
    expect(of(TOPPED, {wallSpanFt: 181}).checks[0]?.message).toMatch(/rigid/);
  });
});

describe("a topped floor", () => {
  test("carries what its mesh clamps across the joints", () => {
    // Mesh 0.058 x 60 = 3.48 kip/ft; slab 2 sqrt(4,000) x 24 in2 = 3.036 more; 0.75 x 3.48 = 2.61.
    expect(of(TOPPED).strengthKipPerFt).toBeCloseTo(2.61, 9);
    expect(verdictOf(of(TOPPED), "diaphragm shear")).toBe("ok");
    expect(verdictOf(of(TOPPED, {lateralPlf: 2100}), "diaphragm shear")).toBe("fails");
    expect(of(TOPPED, {meshIn2PerFt: 0}).strengthKipPerFt).toBe(0);
    expect(verdictOf(of(TOPPED, {meshIn2PerFt: 0}), "diaphragm shear")).toBe("fails");
  });

  test("is bounded by its concrete where the mesh is heavy", () => {
    // 8 sqrt(4,000) x 24 in2 = 12.143 kip/ft.
    expect(of(TOPPED, {meshIn2PerFt: 0.5}).strengthKipPerFt).toBeCloseTo(0.75 * 8 * 0.0632456 * 24, 4);
  });

  test("needs 2 in of topping", () => {
    expect(verdictOf(of(TOPPED), "diaphragm topping")).toBe("ok");
    expect(verdictOf(of(TOPPED, {toppingIn: 1.9}), "diaphragm topping")).toBe("fails");
  });
});

describe("a pretopped floor", () => {
  test("tells what a connector must carry, and leaves its strength to the producer", () => {
    const result = of(PRETOPPED);
    expect(result).toMatchObject({neededConnectorKip: 2.5, connectors: 12, strengthKipPerFt: undefined});
    expect(verdictOf(result, "diaphragm shear")).toBe("out of range");
  });

  test("compares with a strength that is stated", () => {
    expect(verdictOf(of(PRETOPPED, {connectorKip: 3}), "diaphragm shear")).toBe("ok");
    expect(verdictOf(of(PRETOPPED, {connectorKip: 2.4}), "diaphragm shear")).toBe("fails");
    expect(of(PRETOPPED, {connectorKip: 3}).strengthKipPerFt).toBeCloseTo(0.6, 12);
  });
});

test("what cannot be is refused", () => {
  refused(() => of(TOPPED, {lateralPlf: -1}), {path: "lateralPlf"});
  refused(() => of(TOPPED, {toppingIn: undefined}), {path: "toppingIn"});
  refused(() => of(TOPPED, {depthFt: 0}), {path: "depthFt"});
  refused(() => of(PRETOPPED, {connectorSpacingFt: undefined}), {path: "connectorSpacingFt"});
  expect(of(PRETOPPED, {depthFt: 10, connectorSpacingFt: 10}).connectors).toBe(1);
  refused(() => of(PRETOPPED, {depthFt: 10, connectorSpacingFt: 12}), {path: "connectorSpacingFt"});
  refused(() => of(PRETOPPED, {kind: "none" as "topped"}), {path: "kind"});
});
