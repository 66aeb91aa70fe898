import type {ConcreteKind} from "../../materials/concrete.js";
import {choice, group, list, number, optional, since, text} from "../entries.js";
import {of} from "./olderFile.js";

/** What an older file's roof would have on its deck, if it had one (weights of a code's tables of materials, from memory; common practice). */
const USUAL_ROOF_LAYERS = [
  {name: "membrane and cover board", loadPsf: 3, thicknessIn: 0.75, rValue: 0.5},
  {name: "rigid insulation", loadPsf: 1.5, thicknessIn: 5.5, rValue: 30},
  {name: "services and ceiling below", loadPsf: 8, thicknessIn: 0, rValue: 0},
];

/** What closes the building on top. */
export const roofFields = group("Roof", {
  given: since(7, "loads", choice("roof", {"loads": "given by its two loads", "deck": "a deck of its own"}, "Whether the roof is only a dead and a live load on the columns, or a level of its own with deck, layers and drainage.")),
  member: since(7, ({deck}) => of(deck, "member"), text("roof member", 20, "Designation of the roof's deck member, such as 10DT24 or 4HC8; it lies on the same bays as the floors'.")),
  pattern: since(7, ({deck}) => of(deck, "pattern"), text("roof strand pattern", 12, "Strands of the roof's member, as the deck's: 68-S, 108-D1.")),
  strandHeightEndIn: optional(number("roof strand height at the ends", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at the ends of the roof's member.")),
  strandHeightCenterIn: optional(number("roof strand height at midspan", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at midspan of the roof's member.")),
  toppingIn: since(7, ({deck}) => of(deck, "toppingIn"), number("roof topping", "in", 0, 6, 0.25, "Concrete cast on the roof's deck in one thickness; 0 means none.")),
  /** The concrete of the floor's member where left out; likewise the strengths. */
  concrete: optional(choice("roof concrete", {"normalweight": "normalweight", "sand-lightweight": "sand-lightweight"} satisfies Record<ConcreteKind, string>, "Concrete of the roof's member; the floor's if nothing is chosen.")),
  strengthPsi: optional(number("roof concrete strength", "psi", 3000, 12000, 500, "Specified strength of the roof's member at 28 days; the floor's if nothing is given.")),
  releaseStrengthPsi: optional(number("roof release strength", "psi", 2500, 10000, 100, "Strength of the roof's member at release; the floor's if nothing is given, but no more than its own at 28 days.")),
  /** Top down. */
  layers: since(7, USUAL_ROOF_LAYERS, list("layers of the roof", 0, 12, {
    name: text("layer of the roof", 60, "What lies on or hangs from the roof's deck: membrane, insulation, ballast, ceiling, services."),
    loadPsf: number("weight of the layer", "psf", 0, 150, 0.1, "Weight of the layer per square foot of roof."),
    thicknessIn: number("thickness of the layer", "in", 0, 24, 0.25, "Thickness of the layer on the deck, at its thinnest; 0 for what hangs below."),
    rValue: number("resistance of the layer (R-value)", "", 0, 100, 0.5, "Resistance to heat of the layer, ft2 h F/Btu: about 5.6 an inch in polyisocyanurate boards, next to none in a membrane."),
  })),
  drainage: since(7, "taper", choice("fall by", {"bearing": "stepped bearings: the deck itself falls", "taper": "tapered insulation on a level deck", "camber": "the deck's camber alone"}, "What makes the water run to the drains.")),
  slopeInPerFt: since(7, 0.25, number("fall of the roof", "in/ft", 0, 2, 0.0625, "Fall along the deck's span toward the drains; 1/4 in per ft is the least for most membranes.")),
  drainsAt: since(7, "inside", choice("drains", {"inside": "inside: water runs away from the long edges", "edges": "along the long edges"}, "Where the water leaves the roof.")),
  drainSpacingFt: since(7, 30, number("spacing of drains", "ft", 5, 300, 5, "Distance between drains along the building.")),
  /** Of what makes the taper; counts only where the fall is by taper. */
  taperPcf: since(7, 2, number("weight of the taper", "pcf", 1, 150, 1, "Unit weight of what makes the fall: about 2 of insulation boards, 30 of insulating concrete.")),
  sagLimit: since(7, "L/180", choice("sag limit of the roof", {"L/180": "span/180, roof load alone: nothing is fixed to it that could be damaged", "L/240": "span/240, after ceilings or partitions that tolerate it", "L/480": "span/480, after ceilings or partitions that could be damaged"}, "How far the roof may deflect (ACI 318-19 Table 24.2.2).")),
  fireHours: since(7, ({criteria}) => of(criteria, "fireHours") as "0", choice("fire rating of the roof", {"0": "none required", "1": "1 hour", "1.5": "1 1/2 hours", "2": "2 hours", "3": "3 hours", "4": "4 hours"}, "Hours required of the roof; codes often ask less of it than of the floors.")),
  /** Of the edge beam at the roof; 0 where another parapet stands on it. */
  upstandIn: since(7, 0, number("upstand of the roof's edge beam", "in", 0, 60, 1, "Height of the roof's edge beam above the structural roof; 0 where walls or a parapet are built on the beam.")),
});
