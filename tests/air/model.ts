import {airResult} from "../../lib/air/air.js";
import type {AirModel} from "../../lib/air/parts.js";
import {services, type ServicesResult} from "../../lib/air/services.js";
import type {Check} from "../../lib/checks.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {storyStack} from "../../lib/story/stack.js";
import {catalog, seed} from "../support/designs.js";

/** 6 ft 8 in of headroom under what hangs. */
export const HEADROOM = {leastIn: 80, clause: "IBC 2021 1003.3.1"};

/** The air of a design without the rest of its pipeline: undefined where no air comes through ducts. */
export function airOf(design: Design): AirModel & {readonly checks: readonly Check[]; readonly services: ServicesResult} | undefined {
  const shape = shapeOf(catalog, design.deck.member, design.deck.dimensions);
  const story = storyStack(design, shape.depthIn + design.deck.toppingIn);
  const serviced = services(design, shape, story, HEADROOM);
  const air = airResult(design, shape, story, serviced, HEADROOM);
  return air && {design, shape, story, air, services: serviced, checks: [...serviced.checks, ...air.checks]};
}

/** The library with some changes, and its air. */
export function library(changes: Readonly<Record<string, unknown>> = {}): NonNullable<ReturnType<typeof airOf>> {
  const found = airOf(withValues(seed("branch-library"), {...PLAIN, ...changes}));
  if (!found) throw new Error("This floor has no air through ducts.");
  return found;
}

/** One main of 1,600 ft2 along the ledge of tees 10 ft wide over 40 ft, no return: as the starter was before it had a group on air. */
const PLAIN = {
  "air.place": "ledge", "air.run": "plenum", "air.way": "none", "air.rows": 1, "air.serves": "floor", "air.riser": "end", "air.supplyEvery": 2, "air.returnEvery": 1,
  "air.exhaustPercent": 0, "air.wallsCrossed": 0, "air.frictionInPer100Ft": 0, "air.casing": "derived",
  "bay.spanFt": 40, "bay.beamSpanFt": 30, "bay.baysAlong": 4, "bay.baysAcross": 2, "deck.member": "10DT32", "deck.toppingIn": 2,
  "services.airCfmPerFt2": 1, "services.servedFt2": 1600, "services.mainWidthIn": 26, "services.mainDepthIn": 10, "services.branchWidthIn": 14, "services.branchDepthIn": 10,
  "services.sprinklerIn": 4, "services.lightIn": 4, "story.ceiling": "flush", "story.floorToFloorFt": 15, "story.finishIn": 0, "edgeBeam.ledgeDepthIn": 13, "girder.kind": "inverted tee", "girder.ledgeDepthIn": 12,
};

/** A failed or passed check by its name; undefined where there is none. */
export const checkOf = (model: {readonly checks: readonly Check[]}, id: string): Check | undefined => model.checks.find((one) => one.id === id);
