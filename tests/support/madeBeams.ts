import {edgeBeam, type EdgeBeamResult} from "../../lib/edgeBeam/edgeBeam.js";
import {girder, type GirderResult} from "../../lib/girder/girder.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {floorLoads, type FloorLoads} from "../../lib/loads/floorLoads.js";
import type {Member} from "../../lib/member/member.js";
import {catalog} from "./designs.js";

/** The deck of a design under its least topping, and the loads of its floor. */
export function floorOf(design: Design): {deck: Member; loads: FloorLoads} {
  const deck = deckMember(design, catalog);
  return {deck, loads: floorLoads(design, catalog, deck.widthFt)};
}

/**
 * The edge beam of a design with some changes, made anew at every call and alone: `evaluate` keeps what it has made, so
 * that of all tests of one design only the first would run the beam's code.
 */
export function edgeBeamOf(design: Design, changes: Readonly<Record<string, unknown>> = {}): EdgeBeamResult {
  const changed = withValues(design, changes);
  const {deck, loads} = floorOf(changed);
  return edgeBeam(changed, catalog, deck, loads);
}

/** The girder of a design with some changes, made alike. */
export function girderOf(design: Design, changes: Readonly<Record<string, unknown>> = {}): GirderResult {
  const changed = withValues(design, changes);
  const {deck, loads} = floorOf(changed);
  const made = girder(changed, catalog, deck, loads);
  if (!made) throw new Error("no girder");
  return made;
}
