import type {Evaluation} from "../evaluate.js";
import {USUAL_CLEARANCE} from "../air/ductRoom.js";
import {ductAreaFt2} from "../air/ducts.js";
import {BRANCH_SPACING_FT} from "../air/spaces.js";
import {given, type Step, type Working} from "../step.js";

/** Ceiling height and glass from the story's parts. */
export function storyWorking({design, story}: Pick<Evaluation, "design" | "story">): Working {
  const parts = {
    h_f: given(story.floorToFloorIn, "in", "floor to floor"), t_f: given(story.finishIn, "in", "floor finish"),
    h_d: given(story.deckDepthIn, "in", "deck and topping"),
  };
  const ledge = {h_l: given(story.ledgeDepthIn, "in", "edge beam below the deck")};
  const frame = {w: given(story.frameIn, "in", "window frame")};
  const dropIn = design.story.ceiling === "below" ? design.story.ceilingDropIn : design.story.ceiling === "head" ? story.frameIn : 0;
  const ceiling: Step = design.story.ceiling === "none"
    ? {symbol: "h_c", label: "clear height under the deck", expression: "h_f - t_f - h_d", values: parts, result: story.ceilingHeightIn, unit: "in", source: "geometry"}
    : {
      symbol: "h_c", label: "ceiling height", expression: "h_f - t_f - h_d - h_l - s",
      values: {...parts, ...ledge, s: given(dropIn, "in", "ceiling below the ledge")}, result: story.ceilingHeightIn, unit: "in", source: "geometry",
    };
  return {title: "Ceiling and glass", steps: [
    ceiling,
    {
      symbol: "h_g", label: "height of the glass", expression: "min(h_f - t_f - h_d - h_l - w, h_c) - (max(0, h_u - t_f) + w)",
      values: {...parts, ...ledge, ...frame, h_c: given(story.ceilingHeightIn, "in", "ceiling height"), h_u: given(design.edgeBeam.upstandIn, "in", "upstand")},
      result: story.glassIn, unit: "in", source: "geometry",
    },
  ]};
}

/** Air of the floor that the main serves and of one branch, its velocity in main and branch, and the height that main, pipes and lights take below the deck. */
export function ductWorking({design, services}: Evaluation): Working {
  const {ducts, sprinklerIn, lightIn} = services;
  if (!ducts) return {title: "No air through ducts", steps: []};
  const {services: input} = design;
  const q = given(input.airCfmPerFt2, "cfm/ft2", "air for a square foot");
  const deeperIn = ducts.hungIn - USUAL_CLEARANCE.hangerIn;
  return {title: "Ducts", steps: [
    {
      symbol: "Q", label: "air of the main's floor", expression: "q * A", unit: "cfm", source: "common practice",
      values: {q, A: given(ducts.servedFt2, "ft2", "floor that the main serves, as stated")}, result: ducts.flowCfm,
    },
    {
      symbol: "v_m", label: "velocity in the main", expression: "Q / A_m", unit: "ft/min", source: "continuity",
      values: {Q: given(ducts.peakCfm, "cfm", "air in the main beside a riser"), A_m: given(ductAreaFt2(ducts.main), "ft2", "inside of the main")}, result: ducts.result.mainVelocityFpm,
    },
    {
      symbol: "Q_b", label: "air through a branch", expression: "q * A_b", unit: "cfm", source: "common practice",
      values: {q, A_b: given(ducts.branchFt2, "ft2", ducts.branchesBetweenStems ? "floor that a branch serves, between two feeders over the span" : `floor that a branch serves, a strip of ${BRANCH_SPACING_FT} ft`)}, result: ducts.branchFlowCfm,
    },
    {
      symbol: "v_b", label: "velocity in a branch", expression: "Q_b / A_b", unit: "ft/min", source: "continuity",
      values: {Q_b: given(ducts.branchFlowCfm, "cfm", "air through a branch"), A_b: given(ductAreaFt2(ducts.branch), "ft2", "inside of a branch")},
      result: ducts.result.branchVelocityFpm,
    },
    {
      symbol: "h_s", label: "stacked below the deck: hangers, main, pipes, lights", expression: "t_h + d_m + z_s + z_l", unit: "in", source: "geometry",
      values: {
        t_h: given(USUAL_CLEARANCE.hangerIn, "in", "hangers"), d_m: given(deeperIn, "in", "deeper duct with insulation"),
        z_s: given(sprinklerIn, "in", "sprinkler zone"), z_l: given(lightIn, "in", "lights above the ceiling"),
      }, result: ducts.stackedIn,
    },
  ]};
}
