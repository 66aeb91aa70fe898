import type {Design} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {fieldHandle, type Handle} from "../../components/handles.js";
import type {DesignStore} from "../../components/store.js";

/** What can be taken hold of in the member's elevation: its span, and how high the strands lie at midspan and at the ends. */
export function memberHandles(store: DesignStore, evaluated: (design: Design) => Evaluation): Handle[] {
  const spanIn = ({bay}: Design) => 12 * bay.spanFt;
  const center = (design: Design) => evaluated(design).member.layout.centroidCenterIn;
  const end = (design: Design) => evaluated(design).member.layout.centroidEndIn;
  const depressed = (design: Design) => evaluated(design).member.layout.profile !== "straight";
  const set = (centerIn: number | undefined, endIn: number | undefined) => store.setMany({"deck.strandHeightCenterIn": centerIn, "deck.strandHeightEndIn": endIn});
  /** One height that is left out counts as the other: both are given, the one that is held and the one that stays. */
  const giving = (handle: Handle, give: (valueIn: number | undefined) => void): Handle => ({...handle, number: {...handle.number, set: give}});
  return [
    fieldHandle(store, "bay.spanFt", {axis: "x", perUnit: 12, at: (design) => [spanIn(design), evaluated(design).member.shape.depthIn]}),
    giving(fieldHandle(store, "deck.strandHeightCenterIn", {axis: "y", perUnit: 1, usual: center, at: (design) => [spanIn(design) / 2, center(design)]}),
      (heightIn) => set(heightIn, depressed(store.get()) ? end(store.get()) : heightIn)),
    giving(fieldHandle(store, "deck.strandHeightEndIn", {axis: "y", perUnit: 1, usual: end, at: (design) => (depressed(design) ? [0, end(design)] : undefined)}),
      (heightIn) => set(center(store.get()), heightIn)),
  ];
}
