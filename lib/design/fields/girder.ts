import {choice, count, group, number, since} from "../entries.js";

/** The beam between two bays. */
export const girderFields = group("Interior girder", {
  kind: since(3, "inverted tee", choice("interior girder", {"inverted tee": "inverted tee: deck on its ledges", "rectangle": "rectangle: deck on top"}, "The beam between two bays: beside the deck or below it.")),
  webWidthIn: since(3, 16, number("girder web width", "in", 8, 36, 1, "Width of the girder above its ledges, or of a rectangular girder.")),
  ledgeProjectionIn: since(3, 8, number("girder ledge projection", "in", 4, 16, 0.5, "How far each ledge of the girder projects.")),
  ledgeDepthIn: since(3, 12, number("girder ledge depth", "in", 6, 36, 1, "Thickness of the girder's foot, below the deck.")),
  /** Depth of a rectangular girder, which lies wholly below the deck, in. */
  depthIn: since(3, 32, number("girder depth", "in", 12, 72, 1, "Depth of a rectangular girder, all of it below the deck.")),
  strands: since(3, 16, count("strands of the girder", "", 2, 60, "Half-inch strands in the bottom of the girder.")),
  strengthPsi: since(3, 6000, number("girder concrete strength", "psi", 4000, 12000, 500, "Specified compressive strength of the girder at 28 days.")),
  releaseStrengthPsi: since(3, 4000, number("girder release strength", "psi", 2500, 10000, 100, "Compressive strength of the girder at release.")),
});
