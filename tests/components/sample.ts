import type {Design} from "../../lib/design/design.js";
import {validateDesign} from "../../lib/design/validate.js";

/** A design for tests that are about the handling of designs, not about floors. */
export function sampleDesign(): Design {
  return validateDesign({
    format: "plank-and-tee-design",
    version: 1,
    name: "Branch library, Alder Street",
    setting: "A market town.",
    brief: "Stacks and reading rooms.",
    bay: {spanFt: 52, beamSpanFt: 30, baysAlong: 5, baysAcross: 2, floors: 2},
    loads: {rooms: [{name: "reading room", occupancy: "reading"}], partitions: false, layers: [{name: "carpet", loadPsf: 2}]},
    deck: {
      member: "10DT24", pattern: "108-S", concrete: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500,
      toppingIn: 2, toppingStrengthPsi: 4000,
    },
    criteria: {tensionClass: "U", sustainedLiveShare: 0.5, humidityPercent: 70},
    preferences: {shallow: 5, fewStrands: 5, straight: 5, light: 5, wide: 5},
    edgeBeam: {
      webWidthIn: 12, ledgeProjectionIn: 8, ledgeDepthIn: 12, upstandIn: 30, jointGapIn: 1, claddingPlf: 200,
      strengthPsi: 5000, barSize: "#9", coverIn: 1.5,
    },
    storey: {floorToFloorFt: 14, finishIn: 0.5, ceiling: "flush", ceilingDropIn: 0},
    reasons: {loads: "", reduction: "", deck: "", topping: "", edgeBeam: "", storey: ""},
  });
}
