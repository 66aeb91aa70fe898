import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {seed} from "../support/designs.js";

/** A design made by hand to fail a check that drawn ones seldom or never reach, and whether it is one of its columns'. */
export interface Odd {
  readonly id: string;
  readonly design: Design;
  readonly columns: boolean;
}

const odd = (id: string, from: string, changes: Readonly<Record<string, unknown>>, columns = false): Odd => ({id, design: withValues(seed(from), changes), columns});

const LIBRARY = "branch-library";
const WING = "classroom-wing";
const STORE = "records-store";
const CARS = "parking-structure";

/** One or two for each check that few of the drawn designs fail. */
export const ODD: readonly Odd[] = [
  odd("own live load", LIBRARY, {"loads.rooms.0.own": {livePsf: 30, reducible: true, reason: "Few books"}}),
  odd("deck frequency", WING, {"bay.spanFt": 40}),
  odd("deck walking", WING, {"bay.spanFt": 39, "deck.toppingIn": 0}),
  // A 4 in flange of siliceous stone, where an hour and a half takes 4.3 in of it, 4.0 of carbonate, 3.3 of lightweight.
  odd("deck fire thickness", CARS, {"criteria.fireHours": "1.5"}),
  odd("deck bearing", STORE, {"edgeBeam.ledgeProjectionIn": 5, "deck.strengthPsi": 4000, "deck.releaseStrengthPsi": 3000}),
  odd("deck crack control", LIBRARY, {"criteria.tensionClass": "C", "deck.pattern": "48-S"}),
  odd("deck hold-down", LIBRARY, {"deck.pattern": "2210-D1"}),
  odd("topping compression", LIBRARY, {"deck.toppingStrengthPsi": 2500, "bay.spanFt": 95}),
  odd("beam strength", LIBRARY, {"bay.beamSpanFt": 36, "edgeBeam.barSize": "#5", "edgeBeam.upstandIn": 0}),
  odd("beam ductility", LIBRARY, {"bay.beamSpanFt": 60, "edgeBeam.barSize": "#11", "edgeBeam.upstandIn": 0, "edgeBeam.strengthPsi": 3000}),
  odd("beam least steel", LIBRARY, {"edgeBeam.steel": "strands", "edgeBeam.strands": 60, "edgeBeam.webWidthIn": 10, "edgeBeam.ledgeDepthIn": 13, "edgeBeam.upstandIn": 0}),
  odd("beam cage", LIBRARY, {"edgeBeam.coverIn": 3.5, "edgeBeam.webWidthIn": 8}),
  odd("beam cracks", LIBRARY, {"edgeBeam.coverIn": 4, "edgeBeam.barSize": "#11", "edgeBeam.webWidthIn": 12, "edgeBeam.upstandIn": 10}),
  odd("beam sag", LIBRARY, {"bay.beamSpanFt": 60, "edgeBeam.upstandIn": 0, "edgeBeam.ledgeDepthIn": 8, "edgeBeam.webWidthIn": 20}),
  odd("beam shear", STORE, {"edgeBeam.kind": "pockets", "edgeBeam.webWidthIn": 9, "edgeBeam.ledgeProjectionIn": 6, "bay.beamSpanFt": 40}),
  odd("beam stripping tension", LIBRARY, {"bay.beamSpanFt": 38, "edgeBeam.upstandIn": 0, "edgeBeam.ledgeDepthIn": 8, "edgeBeam.strengthPsi": 3000}),
  odd("beam sustained compression", STORE, {"edgeBeam.steel": "strands", "edgeBeam.strands": 12, "edgeBeam.upstandIn": 0, "bay.beamSpanFt": 50, "edgeBeam.strengthPsi": 3000}),
  odd("beam strands", LIBRARY, {"edgeBeam.steel": "strands", "edgeBeam.strands": 60, "edgeBeam.coverIn": 1.25, "edgeBeam.upstandIn": 0, "edgeBeam.webWidthIn": 10}),
  odd("ledge layers", LIBRARY, {"edgeBeam.ledgeDepthIn": 5, "edgeBeam.coverIn": 2.5}),
  odd("ledge shear", STORE, {"edgeBeam.ledgeDepthIn": 5, "edgeBeam.coverIn": 1, "bay.spanFt": 60}),
  odd("ledge bars", STORE, {"edgeBeam.ledgeDepthIn": 6, "edgeBeam.ledgeProjectionIn": 16, "edgeBeam.coverIn": 2, "bay.spanFt": 50}),
  odd("ledge bearing", STORE, {"edgeBeam.padLengthIn": 2, "edgeBeam.padWidthIn": 3, "edgeBeam.strengthPsi": 3000, "deck.strengthPsi": 3500, "deck.releaseStrengthPsi": 3000}),
  odd("ledge line", WING, {"edgeBeam.ledgeDepthIn": 4, "edgeBeam.coverIn": 0.75, "bay.spanFt": 45}),
  odd("pocket stems", WING, {"edgeBeam.kind": "pockets"}),
  odd("pocket web", LIBRARY, {"edgeBeam.kind": "pockets", "edgeBeam.coverIn": 2, "edgeBeam.webWidthIn": 10}),
  odd("girder ledge depth", STORE, {"girder.ledgeDepthIn": 7}),
  odd("girder strands", STORE, {"girder.strands": 60, "girder.webWidthIn": 12}),
  odd("girder minimum strength", STORE, {"girder.strands": 6}),
  odd("girder shear", STORE, {"girder.webWidthIn": 8, "bay.beamSpanFt": 50}),
  odd("girder ledge bearing", STORE, {"girder.strengthPsi": 4000, "girder.releaseStrengthPsi": 3000, "girder.ledgeProjectionIn": 5}),
  odd("girder ledge shear", STORE, {"girder.ledgeDepthIn": 6, "bay.spanFt": 70, "girder.strengthPsi": 4000, "girder.releaseStrengthPsi": 3000}),
  odd("girder transfer tension midspan", STORE, {"girder.strands": 2, "bay.beamSpanFt": 60}),
  odd("diaphragm shear", LIBRARY, {"diaphragm.lateralPlf": 3000, "bay.baysAlong": 10}),
  odd("glass", WING, {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8, "story.frameIn": 8}),
  odd("branch duct depth", LIBRARY, {"services.branchDepthIn": 34}),
  odd("branch duct width", LIBRARY, {"services.branchWidthIn": 52.5}),
  odd("main duct shape", LIBRARY, {"services.mainDepthIn": 46, "services.mainWidthIn": 10}),
  odd("column strength", STORE, {"bay.floors": 12, "bay.beamSpanFt": 28, "column.strengthPsi": 4000}, true),
  odd("footing punching", STORE, {"bay.floors": 12, "bay.beamSpanFt": 40, "bay.spanFt": 60, "ground.allowablePsf": 1500}, true),
  odd("corbel shear", STORE, {"bay.floors": 1, "bay.beamSpanFt": 50, "bay.spanFt": 70}, true),
  odd("panel thickness", LIBRARY, {"walls.shortSide": "solid panel", "walls.panelThicknessIn": 5.5}),
  odd("panel reach", STORE, {"walls.shortSide": "insulated panel", "walls.panelSupport": "columns", "walls.innerWytheIn": 5}),
  odd("panel hauled width", LIBRARY, {"bay.spanFt": 36, "walls.shortSide": "solid panel", "walls.panelWidthFt": 16, "walls.parapetIn": 36}),
  odd("panel hauled width", LIBRARY, {"walls.shortSide": "solid panel", "walls.panelSupport": "columns", "walls.panelWidthFt": 16, "story.floorToFloorFt": 14}),
  odd("panel hauled length", LIBRARY, {"bay.floors": 5, "walls.shortSide": "solid panel", "walls.panelStories": 5}),
  odd("panel hauled length", LIBRARY, {"bay.spanFt": 62, "bay.baysAcross": 1, "walls.shortSide": "solid panel", "walls.panelSupport": "columns"}),
  odd("panel weight", LIBRARY, {"bay.floors": 5, "walls.shortSide": "solid panel", "walls.panelStories": 4}),
  odd("panel weight", LIBRARY, {"walls.shortSide": "insulated panel", "walls.panelSupport": "columns", "walls.panelWidthFt": 12, "walls.outerWytheIn": 6, "walls.innerWytheIn": 8}),
  odd("end spandrel depth", LIBRARY, {"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 27}),
  odd("end spandrel cracking", LIBRARY, {"walls.shortSide": "spandrel", "bay.spanFt": 60, "walls.spandrelDepthIn": 40}),
  odd("end spandrel over deck", LIBRARY, {"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 60}),
  odd("end spandrel story", WING, {"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 140, "story.floorToFloorFt": 11}),
  odd("end spandrel hauled length", LIBRARY, {"walls.shortSide": "spandrel", "bay.spanFt": 62}),
  odd("end spandrel weight", LIBRARY, {"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 72, "walls.spandrelThicknessIn": 18}),
  odd("deck edge", CARS, {"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside"}),
  odd("deck edge", LIBRARY, {"walls.shortSide": "solid panel", "walls.endFill": "strip", "bay.beamSpanFt": 30.5}),
  odd("last piece", LIBRARY, {"walls.shortSide": "solid panel", "bay.beamSpanFt": 31}),
  odd("parking height", CARS, {"parking.clearIn": 88, "girder.ledgeDepthIn": 8}),
  odd("parking height", CARS, {"parking.signDropIn": 20}),
  odd("van height", CARS, {"parking.vans": "inside"}),
  odd("van height", CARS, {"parking.vans": "inside", "bay.baysAcross": 1, "edgeBeam.ledgeDepthIn": 14}),
  odd("parking bays", CARS, {"parking.baysPerModule": 3}),
  odd("parking module", CARS, {"parking.setbackIn": 10, "bay.spanFt": 58}),
  odd("parking aisle", CARS, {"bay.spanFt": 33, "parking.baysPerModule": 2}),
  odd("parking aisle", CARS, {"bay.spanFt": 43, "parking.aisleIn": 300}),
  odd("usual aisle", CARS, {"parking.aisleIn": 240}),
  odd("stall width", CARS, {"parking.stallWidthIn": 96}),
  odd("parking stalls", CARS, {"bay.baysAlong": 1, "parking.endFt": 13}),
  odd("parking stalls", CARS, {"bay.spanFt": 34}),
  odd("accessible stalls", CARS, {"parking.ramp": "parked", "parking.rampRuns": 2, "parking.rampSlopePercent": 6}),
  odd("accessible stalls", CARS, {"bay.beamSpanFt": 14, "bay.baysAlong": 12, "parking.vans": "inside"}),
  odd("ramp slope", CARS, {"parking.rampSlopePercent": 18}),
  odd("ramp slope", CARS, {"parking.ramp": "parked"}),
  odd("ramp break", CARS, {"parking.rampBlendFt": 0}),
  odd("ramp break", CARS, {"parking.rampSlopePercent": 22}),
  odd("ramp length", CARS, {"bay.baysAlong": 2}),
  odd("parking drainage", CARS, {"parking.drainInPerFt": 0}),
  odd("accessible slope", CARS, {"parking.drainInPerFt": 0.375}),
  odd("vehicle barrier", CARS, {"edgeBeam.upstandIn": 24}),
  odd("vehicle barrier", CARS, {"edgeBeam.kind": "below"}),
  odd("topping load", LIBRARY, {"bay.spanFt": 43.3}),
  odd("topping ceiling", LIBRARY, {"story.floorToFloorFt": 11.46}),
  odd("deck fire cover", STORE, {"criteria.fireHours": "4", "criteria.fireRestrained": true}),
  odd("transfer compression end", LIBRARY, {"deck.releaseStrengthPsi": 2500}),
  odd("transfer compression hold-down", LIBRARY, {"deck.releaseStrengthPsi": 2500, "deck.pattern": "148-D2"}),
];
