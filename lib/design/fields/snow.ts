import {choice, group, number, since, text} from "../entries.js";

/** What lies on the roof by the code. */
export const snowFields = group("Roof live load, snow and rain", {
  use: since(7, "ordinary", choice("use of the roof", {"ordinary": "nobody but for its upkeep", "occupied": "people or cars use it"}, "An ordinary roof has a roof live load of 20 psf for upkeep; one that is used has the live load of that use.")),
  /** What an occupied roof is used for: a row of the table of live loads. */
  occupancy: since(7, "roof-assembly", text("use of an occupied roof", 60, "A row of the table of live loads.")),
  groundPsf: since(7, 0, number("ground snow load", "psf", 0, 300, 1, "Snow on the ground that the code's map or the local authority gives for the place (ASCE 7-16 Figure 7.2-1); it is not guessed here, and 0 is right only where the map says so.")),
  terrain: since(7, "B", choice("terrain around", {"B": "B: town, suburb or woods", "C": "C: open country with scattered obstacles", "D": "D: flat and bare, beside open water", "mountain": "windswept mountain above the tree line", "alaska": "Alaska, no trees within two miles"}, "How rough the surroundings are (ASCE 7-16 26.7); over smooth ground the wind takes more snow from the roof.")),
  exposure: since(7, "partly", choice("exposure of the roof", {"fully": "fully exposed: no shelter from higher ground, buildings or trees", "partly": "partially exposed: all other roofs", "sheltered": "sheltered: conifers or buildings close around"}, "How well the wind reaches the roof (ASCE 7-16 Table 7.3-1); a roof with parapets or equipment higher than its snow is not fully exposed.")),
  thermal: since(7, "heated", choice("warmth below the roof", {"heated": "heated", "cool": "kept just above freezing, or a ventilated roof over much insulation", "unheated": "unheated or open", "frozen": "kept below freezing"}, "A cold roof keeps its snow (ASCE 7-16 Table 7.3-2).")),
  risk: since(7, "II", choice("risk category", {"I": "I: hardly any people, as barns", "II": "II: ordinary buildings", "III": "III: many people, as large schools", "IV": "IV: needed after a disaster, as hospitals"}, "How much depends on the building (ASCE 7-16 Table 1.5-1); it sets the importance factor for snow.")),
  /** Height of a higher part beside the roof above the roof's surface, ft; 0 for none. */
  higherFt: since(7, 0, number("higher part beside the roof", "ft", 0, 100, 0.5, "How far a higher part or building beside the roof rises above it; 0 means none. Snow blows off it and drifts against it.")),
  higherSide: since(7, "long", choice("side of the higher part", {"long": "along a long side, where deck members end", "short": "along a short side, beside a deck member"}, "Along which side of the roof the higher part stands.")),
  higherLengthFt: since(7, 60, number("length of the higher roof", "ft", 1, 1000, 5, "How far the higher roof reaches away from this one: the fetch from which the wind brings its snow.")),
  higherApartFt: since(7, 0, number("gap to the higher part", "ft", 0, 100, 0.5, "Clear distance between this roof and the higher part; 0 where it adjoins.")),
  /** Static head ds: depth of water up to the inlet of the secondary drains, the primary ones blocked, in. */
  rainStaticIn: since(7, 2, number("depth up to the overflow", "in", 0, 24, 0.25, "Depth of water on the roof at its drain, up to the inlet of the overflow, when the primary drains are blocked.")),
  /** Hydraulic head dh: depth of water above that inlet at its design flow, in. */
  rainHydraulicIn: since(7, 1, number("water above the overflow", "in", 0, 12, 0.25, "Depth of water above the overflow's inlet at the flow that it is designed for; the drainage design gives it.")),
});
