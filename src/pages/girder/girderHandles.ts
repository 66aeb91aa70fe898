import type {Design} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {fieldHandle, type Handle} from "../../components/handles.js";
import type {DesignStore} from "../../components/store.js";

/** What can be taken hold of in the girder's section: its depth below the deck, ledges and web. The middle of its underside is the origin. */
export function girderHandles(store: DesignStore, evaluated: (design: Design) => Evaluation): Handle[] {
  const half = (design: Design) => (evaluated(design).girder?.member.shape.widthIn ?? 0) / 2;
  const seat = (design: Design) => evaluated(design).girder?.belowDeckIn ?? 0;
  const ifAny = (at: (design: Design) => readonly [number, number]) => (design: Design) => (evaluated(design).girder ? at(design) : undefined);
  return [
    fieldHandle(store, "girder.ledgeDepthIn", {axis: "y", perUnit: -1, at: ifAny(() => [0, 0])}),
    fieldHandle(store, "girder.depthIn", {axis: "y", perUnit: -1, at: ifAny(() => [0, 0])}),
    // Both sides grow at once: each by the whole of a ledge, and by half of the web.
    fieldHandle(store, "girder.ledgeProjectionIn", {axis: "x", perUnit: 1, at: ifAny((design) => [half(design), seat(design) / 2])}),
    fieldHandle(store, "girder.webWidthIn", {axis: "x", perUnit: 0.5, at: ifAny((design) => [design.girder.webWidthIn / 2, seat(design) + 5])}),
  ];
}
