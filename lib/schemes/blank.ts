import {DESIGN_FORMAT, type Design} from "../design/design.js";
import {validateDesign} from "../design/validate.js";

/** What a brief is built on that says nothing else: common sizes and criteria of a public building, no room of its own. */
const CONTENT = {
  format: DESIGN_FORMAT, version: 1, name: "", setting: "", brief: "",
  bay: {spanFt: 40, beamSpanFt: 30, baysAlong: 4, baysAcross: 1, floors: 1},
  loads: {
    rooms: [{name: "Rooms", occupancy: "office"}], partitions: true,
    // Weights of finishes, ceilings and services (common practice).
    layers: [
      {name: "Carpet tile", loadPsf: 1}, {name: "Suspended ceiling", loadPsf: 2}, {name: "Ducts, pipes and lights", loadPsf: 5}, {name: "Sprinklers", loadPsf: 2},
    ],
  },
  deck: {
    member: "10DT24", pattern: "68-S", concrete: "normalweight", aggregate: "siliceous", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn: 2, toppingStrengthPsi: 3000,
  },
  criteria: {
    tensionClass: "T", sagLimit: "L/360", keepCamber: false, walking: "quiet", fireHours: "1", fireRestrained: false, sustainedLiveShare: 0.25, humidityPercent: 70,
  },
  edgeBeam: {
    webWidthIn: 12, ledgeProjectionIn: 8, ledgeDepthIn: 8, upstandIn: 30, jointGapIn: 1, claddingPlf: 150, strengthPsi: 5000, barSize: "#8", coverIn: 1.5,
    kind: "ledge", steel: "bars",
  },
  girder: {kind: "inverted tee", webWidthIn: 16, ledgeProjectionIn: 8, ledgeDepthIn: 12, depthIn: 32, strands: 16, strengthPsi: 6000, releaseStrengthPsi: 4000},
  story: {floorToFloorFt: 14, finishIn: 0.25, ceiling: "flush", ceilingDropIn: 12, frameIn: 2},
  preferences: {shallow: 5, fewStrands: 5, straight: 6, light: 3, wide: 2},
  consider: {fieldToppedTees: true, pretoppedTees: true, planks: true},
  reasons: {loads: "", reduction: "", deck: "", topping: "", edgeBeam: "", story: ""},
};

let blank: Design | undefined;

/** A design that a brief is built on. */
export function blankDesign(): Design {
  return blank ??= validateDesign(CONTENT);
}
