import {choice, count, group, number, since} from "../entries.js";

/** The beam along the wall. */
export const edgeBeamFields = group("Edge beam", {
  webWidthIn: number("web width", "in", 8, 24, 1, "Width of the beam above its ledge."),
  ledgeProjectionIn: number("ledge projection", "in", 4, 16, 0.5, "How far the ledge projects to carry the deck."),
  ledgeDepthIn: number("ledge depth", "in", 4, 24, 0.5, "Thickness of the ledge."),
  upstandIn: number("upstand", "in", 0, 60, 1, "Height of the beam above the structural floor: the sill under the glass."),
  jointGapIn: number("joint at the beam's face", "in", 0.25, 3, 0.25, "Clear gap between the end of the deck and the face of the beam's web."),
  claddingPlf: number("cladding and glass", "plf", 0, 1500, 10, "Weight of wall and window hung from the beam."),
  strengthPsi: number("beam concrete strength", "psi", 3000, 12000, 500, "Specified compressive strength of the beam at 28 days."),
  barSize: choice("bottom bars", {"#5": "#5", "#6": "#6", "#7": "#7", "#8": "#8", "#9": "#9", "#10": "#10", "#11": "#11"}, "Size of the deformed bars that carry the beam's bending."),
  coverIn: number("clear cover", "in", 0.75, 4, 0.25, "Concrete between the stirrup and the surface."),
  kind: since(3, "ledge", choice("edge beam", {"ledge": "L-beam: deck on a ledge along its side", "pockets": "spandrel: stems in pockets in its web", "below": "rectangle: deck on top"}, "How the beam carries the deck, and thus where its depth goes.")),
  steel: since(3, "bars", choice("bending steel", {"bars": "deformed bars", "strands": "prestressing strands"}, "What carries the beam's bending.")),
  /** Number of 1/2 in strands, where the beam has strands. */
  strands: since(3, 12, count("strands of the edge beam", "", 2, 60, "Half-inch strands in the bottom of the beam, where it is prestressed.")),
  padWidthIn: since(3, 4, number("pad width", "in", 2, 12, 0.5, "Width of the bearing pad under a stem, along the beam.")),
  padLengthIn: since(3, 4, number("pad length", "in", 2, 12, 0.5, "Length of the bearing pad under a stem, away from the beam's face.")),
  padThicknessIn: since(3, 0.375, number("pad thickness", "in", 0.25, 1, 0.125, "Thickness of the bearing pad.")),
});
