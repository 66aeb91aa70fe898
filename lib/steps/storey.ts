import type {Evaluation} from "../evaluate.js";
import {given, type Step, type Working} from "./step.js";

/** Ceiling height and glass from the storey's parts. */
export function storeyWorking({design, storey}: Evaluation): Working {
  const parts = {
    h_f: given(storey.floorToFloorIn, "in", "floor to floor"), t_f: given(storey.finishIn, "in", "floor finish"),
    h_d: given(storey.deckDepthIn, "in", "deck and topping"),
  };
  const ledge = {h_l: given(storey.ledgeDepthIn, "in", "ledge")};
  const dropIn = design.storey.ceiling === "below" ? design.storey.ceilingDropIn : 0;
  const ceiling: Step = design.storey.ceiling === "none"
    ? {symbol: "h_c", label: "clear height under the deck", expression: "h_f - t_f - h_d", values: parts, result: storey.ceilingHeightIn, unit: "in", source: "geometry"}
    : {
      symbol: "h_c", label: "ceiling height", expression: "h_f - t_f - h_d - h_l - s",
      values: {...parts, ...ledge, s: given(dropIn, "in", "ceiling below the ledge")}, result: storey.ceilingHeightIn, unit: "in", source: "geometry",
    };
  return {title: "Ceiling and glass", steps: [
    ceiling,
    {
      symbol: "h_g", label: "height of the glass", expression: "min(h_f - t_f - h_d - h_l, h_c) - max(0, h_u - t_f)",
      values: {...parts, ...ledge, h_c: given(storey.ceilingHeightIn, "in", "ceiling height"), h_u: given(design.edgeBeam.upstandIn, "in", "upstand")},
      result: storey.glassIn, unit: "in", source: "geometry",
    },
  ]};
}
