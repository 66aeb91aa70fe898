// The stories that ask most of every column of the starter designs.
import {expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {catalog, seeds} from "../support/designs.js";
import {gridStrength} from "./gridFibers.js";

test("every corner, edge and girder end column of the starters, on small squares: in the load's direction, and as strong as told", () => {
  for (const {id, design} of seeds) {
    for (const kind of ["ledge", "pockets"]) {
      const {columns} = columnsOf(evaluate(withValues(design, {"edgeBeam.kind": kind}), catalog), catalog);
      for (const {position, column: {section, worst}} of columns) {
        const {state, capped} = worst.capacity;
        if (capped || state.angleRad === 0) continue;
        const theirs = gridStrength({...section, areaIn2: section.bar.areaIn2, places: section.bars.places}, state.neutralAxisIn, state.angleRad);
        const at = `${id}, ${kind}, ${position}`;
        const share = worst.utilization;
        expect(Math.abs(worst.axialKip / (share * theirs.phi * theirs.axialKip) - 1), at).toBeLessThan(0.02);
        const most = share * theirs.phi * Math.hypot(theirs.depthMomentKipIn, theirs.widthMomentKipIn);
        expect(Math.abs(worst.asked.depthMomentKipIn - share * theirs.phi * theirs.depthMomentKipIn) / most, at).toBeLessThan(0.01);
        expect(Math.abs(worst.asked.widthMomentKipIn - share * theirs.phi * theirs.widthMomentKipIn) / most, at).toBeLessThan(0.01);
      }
    }
  }
});
