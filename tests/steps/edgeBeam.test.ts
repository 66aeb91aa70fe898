import {describe, expect, test} from "vitest";
import {ledgePunching} from "../../lib/beams/ledgePunching.js";
import type {Ledge} from "../../lib/beams/ledge.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {beamDepthWorking, beamLoadsWorking, beamStrengthWorking, seatWorking} from "../../lib/steps/edgeBeam.js";
import {ledgePunchingWorking, ledgeSteelWorking, padWorking} from "../../lib/steps/edgeBeamLedge.js";
import {torsionWorking} from "../../lib/steps/edgeBeamTwist.js";
import type {Working} from "../../lib/step.js";
import {catalog, seed} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

const library = (changes: Readonly<Record<string, unknown>> = {}) => evaluate(withValues(seed("branch-library"), changes), catalog);
const of = (kind: string) => library({"edgeBeam.kind": kind});
const step = (working: Working, symbol: string) => {
  checkWorking(working);
  const found = working.steps.find((one) => one.symbol === symbol);
  if (!found) throw new Error(`${working.title} has no ${symbol}`);
  return found;
};
const label = (working: Working, symbol: string, value: string) => step(working, symbol).values[value]?.label;

describe("a value is called by what it is in this kind of beam:", () => {
  test.each([
    ["ledge", "ledge", "ledge projection", "web width", "ledge projection"],
    ["pockets", "foot below the pockets", "reach of a pocket into the web", "web behind a pocket", "reach of a pocket into the web"],
  ])("%s", (kind, foot, reach, web, lever) => {
    const depth = beamDepthWorking(of(kind));
    expect([Object.keys(step(depth, "h").values), step(depth, "h").source]).toEqual([["h_l", "h_d", "h_u"], "geometry"]);
    expect(label(depth, "h", "h_l")).toBe(foot);
    expect(label(seatWorking(of(kind)), "l_b", "p")).toBe(reach);
    expect(label(beamStrengthWorking(of(kind)), "phi_Vc", "b_n")).toBe(web);
    expect(label(torsionWorking(of(kind)), "e", "p")).toBe(lever);
    expect(step(torsionWorking(of(kind)), "e").source).toMatch(/^PCI/);
  });

  test("below the deck, where the depth is found by trial and the deck lies over the web", () => {
    const depth = step(beamDepthWorking(of("below")), "h");
    expect([Object.keys(depth.values), depth.source]).toEqual([["h_b"], "trial"]);
    expect(label(seatWorking(of("below")), "l_b", "p")).toBe("width of the beam's top");
    expect(label(beamStrengthWorking(of("below")), "phi_Vc", "b_n")).toBe("web width");
    expect(step(torsionWorking(of("below")), "e").source).toBe("geometry");
  });
});

describe("stems where they stand", () => {
  test("the worse end may be either: the one that more of them stand near", () => {
    // Of 27 ft a left end, of 29 ft a right one: 6 in from it stands a stem, and five more at every 5 ft.
    for (const beamSpanFt of [27, 29]) {
      const shear = step(beamLoadsWorking(library({"bay.beamSpanFt": beamSpanFt})), "V_u");
      expect([shear.values["n"]?.value, shear.values["s"]?.value]).toEqual([6, 0.5 + 5.5 + 10.5 + 15.5 + 20.5 + 25.5]);
    }
  });

  test("the stem under which the moment is greatest is none of those before it", () => {
    // Stems at 2.5, 7.5, 12.5 ft and so on of 25 ft: greatest under the middle one, with 2 before it.
    const moment = step(beamLoadsWorking(library({"bay.beamSpanFt": 25})), "M_u");
    expect([moment.values["x"]?.value, moment.values["n"]?.value, moment.values["s"]?.value]).toEqual([12.5, 2, 10]);
  });

  test("bars that no section of this depth could match are not worked out: the least steel against sudden breaking is", () => {
    const weak = beamStrengthWorking(evaluate(withValues(seed("records-store"), {"bay.beamSpanFt": 40, "edgeBeam.strengthPsi": 3000, "edgeBeam.upstandIn": 0, "edgeBeam.webWidthIn": 8}), catalog));
    checkWorking(weak);
    expect(weak.steps.map(({symbol}) => symbol)).toEqual(["A_s", "A_scr", "M_d", "phi_Vc"]);
  });
});

describe("the ledge under a stem", () => {
  /** The library's ledge with its weakest stem standing on another one. */
  function standing(changes: Partial<Ledge>): Working {
    const evaluation = library();
    const {ledge} = evaluation.edgeBeam;
    const [place] = ledge?.punching ?? [];
    if (!ledge || !place) throw new Error("no stem on a ledge");
    const at = {...place.ledge, ...changes};
    const punching = [{...place, ledge: at, punching: ledgePunching(at, place)}];
    return ledgePunchingWorking({...evaluation, edgeBeam: {...evaluation.edgeBeam, ledge: {...ledge, punching}}} as Evaluation);
  }

  test.each([["inside", undefined], ["near the beam's end", 8]])("that stands closer to the next than their cones reach shares them, %s", (_, endDistanceIn) => {
    const pad = {bearingWidthIn: 4, bearingLengthIn: 4, ledgeDepthIn: 12, ledgeProjectionIn: 8, ...(endDistanceIn === undefined ? {} : {endDistanceIn})};
    // Cones of 4 + 12 in part from 16 in on; perimeters of the two-way view from 4 in and the effective depth.
    for (const spacingIn of [15.9, 16, 16.1, 30]) {
      const working = standing({...pad, spacingIn});
      expect(checkWorking(working)).toBe(9);
      expect("s" in step(working, "P_h").values).toBe(spacingIn <= 16);
    }
    const meets = (spacingIn: number) => step(standing({...pad, spacingIn}), "b_o").expression;
    const depthIn = step(standing({...pad, spacingIn: 30}), "b_o").values["d"]?.value ?? NaN;
    expect(meets(4 + depthIn)).toBe(meets(14));
    expect(meets(4 + depthIn + 0.01)).toBe(meets(30));
    expect(meets(14)).not.toBe(meets(30));
  });

  test("on a long narrow pad or on a shallow ledge the shape of its perimeter lowers what two-way shear allows", () => {
    for (const [bearingWidthIn, bearingLengthIn] of [[12, 4], [4, 12]] as const) {
      const working = standing({bearingWidthIn, bearingLengthIn, ledgeProjectionIn: 13, ledgeDepthIn: 12, spacingIn: 60});
      expect(step(working, "P_t").values["r"]?.value).toBe(3);
    }
    const shallow = (endDistanceIn?: number) => step(standing({bearingWidthIn: 12, bearingLengthIn: 12, ledgeProjectionIn: 13, ledgeDepthIn: 4.5, spacingIn: 60, ...(endDistanceIn ? {endDistanceIn} : {})}), "P_t").values["a"];
    expect([shallow()?.value, shallow()?.label]).toEqual([30, "factor for a stem along the ledge"]);
    expect([shallow(7)?.value, shallow(7)?.label]).toEqual([20, "factor for a stem at the end of the ledge"]);
  });

  test("needs its bars closest where less of it works with the load: beside the beam's end", () => {
    const evaluation = library({"bay.beamSpanFt": 27, "edgeBeam.strengthPsi": 5000});
    const {ledge} = evaluation.edgeBeam;
    const [inner, end] = (ledge?.places ?? []).map(({steel}) => steel);
    if (!inner || !end) throw new Error("no places");
    expect(end.topIn2PerFt).toBeGreaterThan(inner.topIn2PerFt);
    expect(step(ledgeSteelWorking(evaluation), "A_sc").values["l_w"]?.value).toBe(end.workingLengthIn);
    for (const id of ["branch-library", "records-store", "parking-structure"]) for (const beamSpanFt of [21, 24, 27, 33, 36]) {
      const [within, beside] = evaluate(withValues(seed(id), {"bay.beamSpanFt": beamSpanFt}), catalog).edgeBeam.ledge?.places ?? [];
      expect(beside?.steel.topIn2PerFt ?? NaN).toBeGreaterThanOrEqual((within?.steel.topIn2PerFt ?? NaN) * (1 - 1e-9));
    }
    expect(label(ledgeSteelWorking(evaluation), "N_u", "V_u")).toBe("factored load of one stem");
    expect(label(ledgeSteelWorking(evaluate(seed("classroom-wing"), catalog)), "N_u", "V_u")).toBe("factored load of a foot of planks");
  });

  test("bears on no more of its pad than lies on the seat", () => {
    // A ledge of 6 in less a joint of 1 in: of a pad 8 in long 5 in lie on it.
    const working = padWorking(library({"edgeBeam.ledgeProjectionIn": 6, "edgeBeam.jointGapIn": 1, "edgeBeam.padLengthIn": 8}));
    for (const symbol of ["f_p", "f_pa", "P_b"]) expect(step(working, symbol).values["l"]?.value).toBe(5);
  });
});
