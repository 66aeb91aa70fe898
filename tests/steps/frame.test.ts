import {describe, expect, it} from "vitest";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {COLUMN_WORKINGS, diaphragmWorking} from "../../lib/steps/columns.js";
import {
  girderCamberWorking, girderDepthWorking, girderLoadsWorking, girderServiceWorking, girderShearWorking, girderStrengthWorking, girderTwistWorking,
} from "../../lib/steps/girder.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

/** Designs that take every branch of the workings of girder and columns. */
const variants: Readonly<Record<string, (design: Design) => Design>> = {
  "as it is": (design) => design,
  "a rectangle": (design) => withValues(design, {"girder.kind": "rectangle", "girder.depthIn": 44, "girder.strands": 20}),
  "stems off the grid": (design) => withValues(design, {"bay.beamSpanFt": 27}),
  "tall stories, light floors": (design) => withValues(design, {"story.floorToFloorFt": 30, "bay.spanFt": 20, "loads.rooms": [{name: "Desks", occupancy: "office"}]}),
  "many floors": (design) => withValues(design, {"bay.floors": 8}),
  "end spandrels and a parapet": (design) => withValues(design, {"walls.shortSide": "spandrel", "walls.parapetIn": 48, "column.roofLivePsf": 20}),
  "no roof": (design) => withValues(design, {"column.roofDeadPsf": 0, "column.roofLivePsf": 0}),
};

describe("every worked step of girder and columns says what the code computed", () => {
  for (const {id, design} of seeds) {
    for (const [name, vary] of Object.entries(variants)) {
      it(`${id}, ${name}`, () => {
        const result = evaluate(vary(design), catalog);
        const girder = [girderDepthWorking, girderLoadsWorking, girderStrengthWorking, girderServiceWorking, girderShearWorking, girderTwistWorking, girderCamberWorking, diaphragmWorking];
        expect(girder.reduce((count, working) => count + checkWorking(working(result)), 0)).toBeGreaterThan(25);
        const {columns} = columnsOf(result, catalog);
        expect(columns.map(({position}) => position)).toEqual(["interior column", "edge column", "girder end column", "corner column"]);
        for (const column of columns) {
          for (const working of Object.values(COLUMN_WORKINGS)) column.column.stories.forEach((_, story) => checkWorking(working(column, story)));
        }
      });
    }
  }

  it("says nothing of a girder that is not there", () => {
    const result = evaluate(withValues(seed("branch-library"), {"bay.baysAcross": 1}), catalog);
    expect(result.girder).toBeUndefined();
    expect(girderLoadsWorking(result).steps).toEqual([]);
  });
});
