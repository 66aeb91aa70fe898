import {describe, expect, it} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {pondingWorking, roofDemandWorking, roofFallWorking, roofSafeLoadWorking, roofSagWorking} from "../../lib/steps/roof.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

const WORKINGS = [roofDemandWorking, roofFallWorking, pondingWorking, roofSafeLoadWorking, roofSagWorking];

/** Designs that take every branch of the workings of a roof. */
const variants: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  "a taper": {"roof.drainage": "taper"},
  "by its camber, of planks": {"roof.drainage": "camber", "roof.member": "4HC8", "roof.pattern": "76-S", "roof.toppingIn": 0},
  "without layers, on one bay": {"roof.drainage": "bearing", "roof.layers": [], "bay.baysAcross": 1},
  "with people on it, under snow": {"snow.use": "occupied", "snow.groundPsf": 40, "walls.parapetIn": 40},
  "with ceilings that could be damaged": {"roof.sagLimit": "L/480"},
  "so flexible that water gathers without end": {"roof.member": "4FS4", "roof.pattern": "46-S", "roof.toppingIn": 0, "bay.spanFt": 60},
};

describe("every worked step of a roof says what the code computed", () => {
  for (const {id, design} of seeds) {
    for (const [name, changes] of Object.entries(variants)) {
      it(`${id}, ${name}`, () => {
        const result = evaluate(withValues(design, {"roof.given": "deck", ...changes}), catalog);
        expect(WORKINGS.reduce((count, working) => count + checkWorking(working(result)), 0)).toBeGreaterThan(12);
      });
    }
  }

  it("names what there is: a fall that no camber makes, growth where water does not gather without end, layers, and one live load", () => {
    const roof = (changes: Readonly<Record<string, unknown>>) => evaluate(withValues(seed("branch-library"), {"roof.given": "deck", ...changes}), catalog);
    const symbols = (working: {readonly steps: readonly {readonly symbol: string}[]}) => working.steps.map(({symbol}) => symbol).join(" ");
    expect(symbols(roofFallWorking(roof({"roof.drainage": "camber"})))).toBe("n A_d");
    expect(symbols(pondingWorking(roof(variants["so flexible that water gathers without end"] ?? {})))).toBe("C_s C_p C");
    const step = (changes: Readonly<Record<string, unknown>>, symbol: string) => roofDemandWorking(roof(changes)).steps.find((one) => one.symbol === symbol);
    expect(step({"roof.drainage": "bearing", "roof.layers": []}, "w_d")?.expression).toBe("0");
    expect(step({"roof.drainage": "bearing", "roof.layers": [{name: "Gravel", loadPsf: 11, thicknessIn: 1, rValue: 0}, {name: "Boards", loadPsf: 2, thicknessIn: 4, rValue: 20}]}, "w_d"))
      .toMatchObject({expression: "w_1 + w_2", result: 13, values: {w_1: {value: 11, label: "Gravel"}, w_2: {value: 2, label: "Boards"}}});
    expect(step({"snow.use": "ordinary"}, "w_v")?.expression).toBe("X");
    expect(Object.keys(step({"snow.use": "occupied"}, "w_v")?.values ?? {})).toEqual(["L", "X"]);
  });

  it("says nothing of a roof that is two loads", () => {
    const result = evaluate(withValues(seed("branch-library"), {"roof.given": "loads"}), catalog);
    expect(WORKINGS.flatMap((working) => working(result).steps)).toEqual([]);
  });
});
