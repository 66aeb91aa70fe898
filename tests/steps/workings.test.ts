import {describe, expect, it} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {reductionWorking} from "../../lib/steps/loads.js";
import {WORKINGS} from "../../lib/steps/workings.js";
import {catalog, seeds} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

/** Designs that take every branch of the workings. */
const variants: Readonly<Record<string, (design: Design) => Design>> = {
  "as it is": (design) => design,
  "depressed strand, two points": (design) => withValues(design, {"deck.member": "12DT32", "deck.pattern": "148-D2", "deck.toppingIn": 3}),
  "depressed strand, one point": (design) => withValues(design, {"deck.member": "12DT32", "deck.pattern": "128-D1", "deck.toppingIn": 0}),
  "many strands on the knee of the curve": (design) => withValues(design, {"deck.member": "4HC8", "deck.pattern": "78-S", "deck.toppingIn": 0}),
  "far too long": (design) => withValues(design, {"bay.spanFt": 120}),
  "no layers": (design) => withValues(design, {"loads.layers": []}),
  "a spandrel with pockets": (design) => withValues(design, {"edgeBeam.kind": "pockets"}),
  "a beam below the deck": (design) => withValues(design, {"edgeBeam.kind": "below"}),
  "strands in the edge beam, tees that do not fit its span": (design) => withValues(design, {"edgeBeam.steel": "strands", "edgeBeam.strands": 6, "bay.beamSpanFt": 26}),
  "girders deep below the deck, daylight from both sides": (design) => withValues(design, {"girder.kind": "rectangle", "girder.depthIn": 60, "daylight.sides": "two", "daylight.obstructionDeg": 5}),
  "a ledge too thin for its bars": (design) => withValues(design, {"edgeBeam.ledgeDepthIn": 4, "edgeBeam.coverIn": 4}),
  "loads of one's own, reduced and in full": (design) => withValues(design, {"loads.rooms": [
    {name: "Laboratory", occupancy: "laboratory", own: {livePsf: 100, reducible: false, reason: "Benches"}}, {name: "Desks", occupancy: "office", own: {livePsf: 90, reducible: true, reason: "Any tenant"}},
  ], "bay.floors": 3}),
  "upright panels with a parapet": (design) => withValues(design, {"walls.shortSide": "solid panel", "walls.glassShare": 0.1, "walls.parapetIn": 48, "column.roofLivePsf": 20}),
  "lying panels": (design) => withValues(design, {"walls.shortSide": "insulated panel", "walls.panelSupport": "columns"}),
  "end spandrels in pieces": (design) => withValues(design, {"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside", "walls.spandrelPieces": 2}),
  "end spandrels": (design) => withValues(design, {"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside", "bay.beamSpanFt": 29, "walls.endFill": "strip"}),
  "cladding, and the deck's ends closed": (design) => withValues(design, {"walls.shortSide": "cladding", "edgeBeam.kind": "below", "walls.teeEnds": "concrete"}),
  "a stem over a column line": (design) => withValues(design, {"bay.beamSpanFt": 22.5}),
  "cars on all levels, at an angle": (design) => withValues(design, {"parking.place": "both", "parking.angle": "60 one-way", "parking.ramp": "beside", "parking.rampBlendFt": 10, "story.floorToFloorFt": 12}),
  "cars in rows across, at a lesser angle": (design) => withValues(design, {"parking.place": "on", "parking.rows": "across", "parking.angle": "75 one-way", "parking.baysPerModule": 2}),
  "wide light bays": (design) => withValues(design, {"loads.rooms": [{name: "Desks", occupancy: "office"}], "bay.beamSpanFt": 60, "story.ceiling": "none"}),
};

describe("every worked step says what the code computed", () => {
  for (const {id, design} of seeds) {
    for (const [name, vary] of Object.entries(variants)) {
      it(`${id}, ${name}`, () => {
        const results = evaluate(vary(design), catalog);
        const steps = Object.values(WORKINGS).reduce((count, working) => count + checkWorking(working(results)), 0);
        expect(steps).toBeGreaterThan(40);
        for (const element of results.loads.elements) for (const room of element.rooms) checkWorking(reductionWorking(element, room));
      });
    }
  }
});
