import type {Design} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {fieldHandle, type Handle} from "../../components/handles.js";
import type {DesignStore} from "../../components/store.js";

/** What can be taken hold of in the section of the edge beam: upstand, ledge, web. Its lower outer corner is the origin. */
export function beamHandles(store: DesignStore, evaluated: (design: Design) => Evaluation): Handle[] {
  const beam = (at: (web: number, projection: number, depth: number, ledge: number) => readonly [number, number] | undefined, kinds: readonly string[] = ["ledge", "pockets", "below"]) => (design: Design) => {
    const {edgeBeam} = evaluated(design);
    const {webWidthIn, ledgeProjectionIn, ledgeDepthIn} = design.edgeBeam;
    return kinds.includes(edgeBeam.kind) ? at(webWidthIn, ledgeProjectionIn, edgeBeam.depthIn, ledgeDepthIn) : undefined;
  };
  return [
    fieldHandle(store, "edgeBeam.upstandIn", {axis: "y", perUnit: 1, at: beam((web, _, depth) => [web / 2, depth], ["ledge", "pockets"])}),
    fieldHandle(store, "edgeBeam.ledgeDepthIn", {axis: "y", perUnit: -1, at: beam((web) => [web / 2, 0], ["ledge", "pockets"])}),
    fieldHandle(store, "edgeBeam.ledgeProjectionIn", {axis: "x", perUnit: 1, at: beam((web, projection, _, ledge) => [web + projection, ledge / 2], ["ledge"])}),
    fieldHandle(store, "edgeBeam.webWidthIn", {axis: "x", perUnit: 1, at: beam((web, _, depth, ledge) => [web, (depth + ledge) / 2 + (depth - ledge) / 3])}),
  ];
}
