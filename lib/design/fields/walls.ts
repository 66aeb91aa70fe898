import {choice, count, group, number, since} from "../entries.js";

/** What closes the short sides, and what stands on the roof's edge. */
export const wallsFields = group("Walls", {
  shortSide: since(7, "not counted", choice("short sides", {"not counted": "not counted", "solid panel": "solid precast wall panels", "insulated panel": "insulated precast wall panels", "spandrel": "spandrels that carry no deck, and glass", "cladding": "light cladding past the columns"}, "What closes the two short sides of the building. Their area and weight count on columns and footings, unless they are not counted.")),
  panelSupport: since(7, "footing", choice("how the panels are carried", {"footing": "upright, on a footing of their own", "columns": "lying, from column to column"}, "Upright panels stand on a strip footing, and the floors hold them sideways; lying panels reach from column to column, which carry them.")),
  panelThicknessIn: since(7, 8, number("panel thickness", "in", 4, 16, 0.5, "Thickness of a solid wall panel.")),
  outerWytheIn: since(7, 3, number("outer wythe", "in", 2, 6, 0.5, "Concrete outside the insulation of an insulated panel.")),
  insulationIn: since(7, 3, number("insulation in the panel", "in", 0.5, 8, 0.5, "Rigid insulation between the two wythes of a panel.")),
  innerWytheIn: since(7, 6, number("inner wythe", "in", 2, 12, 0.5, "Concrete inside the insulation, which carries the panel by itself.")),
  panelWidthFt: since(7, 10, number("panel width", "ft", 4, 16, 0.5, "Width of an upright panel, or the greatest height of a lying one: the side that lies across the truck.")),
  panelStories: since(7, 1, count("stories in one panel", "", 1, 6, "Stories that an upright panel is high.")),
  jointIn: since(7, 0.75, number("joint between panels", "in", 0.25, 2, 0.25, "Open joint between one piece of wall and the next, which sealant closes.")),
  glassShare: since(7, 0, number("glass in the short sides", "", 0, 0.8, 0.05, "Share of windows in panels and cladding of the short sides, by area.")),
  spandrelDepthIn: since(7, 48, number("depth of the end spandrel", "in", 12, 144, 1, "Whole depth of the spandrel on the short sides, which carries no deck.")),
  spandrelThicknessIn: since(7, 8, number("thickness of the end spandrel", "in", 4, 24, 0.5, "Thickness of the spandrel on the short sides.")),
  spandrelUpstandIn: since(7, 30, number("end spandrel above the floor", "in", 0, 72, 1, "How far the spandrel on the short sides stands above the structural floor: sill, or guard of a parking deck.")),
  spandrelPlace: since(7, "between", choice("place of the end spandrel", {"between": "between the columns", "outside": "past the columns' outer faces"}, "Whether the spandrel on the short sides ends at each column or passes outside them, with its joints at the columns' middles.")),
  spandrelPieces: since(8, 1, count("pieces of the end spandrel in a bay", "", 1, 4, "Pieces into which the end spandrel of one bay is cut, so that each can be hauled. Where two meet, a post from the ground up carries them; such posts are not designed here.")),
  claddingPsf: since(7, 15, number("weight of light cladding", "psf", 0, 80, 1, "Weight of a square foot of light wall with its framing: some 15 psf for metal panels on studs, 40 with brick.")),
  strengthPsi: since(7, 5000, number("wall concrete strength", "psi", 3000, 10000, 500, "Specified compressive strength of panels and spandrels on the short sides.")),
  corner: since(7, "long", choice("corner", {"long": "long side runs through", "short": "short side runs through", "miter": "mitered"}, "Which side's parapet reaches the corner of the roof where two meet. Panels on the short sides always run through, and below the roof a column stands in the corner.")),
  teeEnds: since(7, "not counted", choice("in front of the deck's ends", {"not counted": "not counted", "cladding": "light cladding down to the beam", "concrete": "a precast strip down to the beam"}, "What closes the ends of the deck along the long sides where the edge beam lies below it.")),
  teeEndStripIn: since(7, 4, number("thickness of that strip", "in", 2, 12, 0.5, "Thickness of the precast strip in front of the deck's ends.")),
  endFill: since(7, "piece", choice("where whole pieces do not cover the length", {"piece": "a last piece cut narrower", "strip": "a strip cast in place"}, "What fills the deck where the building's length is no whole number of pieces.")),
  /** Top of the wall above the roof's finished surface, in; 0 for none. */
  parapetIn: since(7, 0, number("parapet", "in", 0, 96, 1, "Height of the wall's top above the roof's surface, cap included; 0 means none. Where the roof's edge beam stands above the roof, that is the parapet's lower part.")),
  parapetThicknessIn: since(7, 6, number("parapet thickness", "in", 3, 16, 0.5, "Thickness of the concrete parapet along the long sides; over the short sides their own wall rises.")),
  capIn: since(7, 0, number("cap of the parapet", "in", 0, 12, 0.5, "Thickness of a precast cap on the parapet; 0 for a metal one, whose weight is neglected.")),
});
