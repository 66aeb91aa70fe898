import type {Design} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {USUAL_CLEARANCE} from "../../lib/air/ductRoom.js";
import {beamEnd} from "../../components/drawings/storyParts.js";
import {fieldHandle, type Handle} from "../../components/handles.js";
import {storyPicture} from "../../components/shared/pictures.js";
import type {DesignStore} from "../../components/store.js";

/** From the beam's inner face to the handles of what spans over the room, in. */
const INSIDE_IN = 96;

/** What can be taken hold of in the story's section: its height, the upstand, ledge, ceiling, window's head and main. */
export function storyHandles(store: DesignStore, evaluated: (design: Design) => Evaluation): Handle[] {
  const drawn = (at: (result: Evaluation) => readonly [number, number] | undefined) => (design: Design) => at(evaluated(design));
  const web = ({design}: Evaluation) => design.edgeBeam.webWidthIn;
  const soffit = ({story, design, member}: Evaluation) => story.floorToFloorIn - story.finishIn - design.deck.toppingIn - member.shape.depthIn;
  return [
    fieldHandle(store, "story.floorToFloorFt", {axis: "y", perUnit: 12, at: drawn((now) => [web(now) + INSIDE_IN, now.story.floorToFloorIn])}),
    // At the inner edge of the sill, clear of the handle of the window's head.
    fieldHandle(store, "edgeBeam.upstandIn", {axis: "y", perUnit: 1, at: drawn((now) => [web(now), now.design.edgeBeam.upstandIn - now.story.finishIn])}),
    fieldHandle(store, "edgeBeam.ledgeDepthIn", {axis: "y", perUnit: -1, at: drawn((now) => [
      now.design.edgeBeam.kind === "ledge" ? web(now) + now.design.edgeBeam.ledgeProjectionIn / 2 : web(now) / 2, soffit(now) - now.story.ledgeDepthIn,
    ])}),
    fieldHandle(store, "story.frameIn", {axis: "y", perUnit: -1, at: drawn((now) => (now.story.glassIn > 0 ? [0, now.story.glassHeadIn] : undefined))}),
    fieldHandle(store, "story.ceilingDropIn", {axis: "y", perUnit: -1, at: drawn((now) => [web(now) + INSIDE_IN + 24, now.story.ceilingHeightIn])}),
    fieldHandle(store, "services.mainDepthIn", {axis: "y", perUnit: -1, at: drawn((now) => {
      const {ducts} = now.services;
      if (!ducts || ducts.mainPlace === "down the middle" || ducts.mainPlace === "across the floor") return undefined;
      const {mainWidthIn, mainDepthIn} = now.design.services;
      // Where `drawServices` draws it.
      const left = beamEnd({...storyPicture(now), widthPx: 0}) + (ducts.mainPlace === "along the ledge" ? 4 : 30);
      return [left + mainWidthIn / 2, soffit(now) - USUAL_CLEARANCE.hangerIn - mainDepthIn];
    })}),
  ];
}
