import {choice, count, group, number, since} from "../entries.js";

/** Where the ducts run, and how the air comes back. */
export const airFields = group("Air", {
  /** Older files: anywhere below the deck where main, pipes and lights have room under one another, else along the ledge. */
  place: since(7, "fit", choice("where the main runs", {"fit": "wherever it fits", "ledge": "along the ledge", "middle": "down the middle", "across": "at a distance across"}, "Line of the main duct along the building. Wherever it fits: anywhere below the deck if pipes and lights pass under it, else along the ledge.")),
  acrossFt: since(7, 10, number("main from the first edge", "ft", 1, 1500, 1, "From the column line of the first long side to the middle of the main and what runs beside it.")),
  run: since(7, "plenum", choice("how the main runs", {"plenum": "in the plenum", "strip": "in a lowered strip of ceiling", "box": "boxed below the ceiling"}, "Above the ceiling of the whole floor; above a strip of ceiling that hangs lower, with its lights; or in a box around the ducts alone.")),
  casing: since(7, "derived", choice("box or strip", {"derived": "as large as the ducts need", "stated": "of a width and drop of its own"}, "Whether box or strip follow from the ducts or have the width and drop that the architect wants.")),
  casingWidthIn: since(7, 48, number("width of box or strip", "in", 8, 240, 2, "Outside width of the box or strip.")),
  casingDropIn: since(7, 12, number("drop of box or strip", "in", 0, 60, 1, "How far it hangs below the ceiling, or below the deck where there is no ceiling.")),
  /** Rows of bays across the building that one main serves. */
  rows: since(7, rowsOfMain, count("rows of bays that a main serves", "", 1, 10, "Spans of the deck side by side whose air one main brings; its feeders then cross the beams between them.")),
  serves: since(7, "floor", choice("what a main serves", {"floor": "a floor area", "bays": "a number of bays"}, "The floor that a main serves: an area as entered, or whole bays along the building, in each of its rows.")),
  baysServed: since(7, 2, count("bays along that a main serves", "", 1, 30, "Column spacings along the building whose air one main brings, in each of its rows.")),
  riser: since(7, "end", choice("riser", {"end": "one, at an end of the main", "middle": "one, at its middle", "ends": "two, one at each end"}, "Where the air comes up or down. Two risers, or one at the middle, halve the air in the main.")),
  /** A feeder in every n-th space between stems; 2 is one in each tee, between its two stems. */
  supplyEvery: since(7, 2, count("a feeder in every n-th space between stems", "", 1, 8, "2 puts one between the two stems of each tee and leaves the spaces over the joints free; 1 takes every space.")),
  way: since(7, "none", choice("return", {"none": "not shown", "trunk": "in a duct beside the supply", "stems": "between stems to a duct beside the supply", "plenum": "through the plenum", "rooms": "through the rooms"}, "How the air goes back to the risers.")),
  /** Of the spaces without a feeder every n-th; 0 is none. */
  returnEvery: since(7, 1, count("a return in every n-th free space", "", 0, 8, "Of the spaces without a feeder; 0 takes none, and the return duct has grilles of its own.")),
  exhaustPercent: since(7, 0, number("exhausted elsewhere", "%", 0, 100, 5, "Share of the supply air that leaves through toilets and kitchens and does not come back.")),
  wallsCrossed: since(7, 0, count("walls in the return's way", "", 0, 20, "Walls that the air must pass on its way back: of rooms, or those built up to the deck where it goes through the plenum.")),
  /** Friction for which ducts are sized; 0 asks for none, and velocities alone are checked. */
  frictionInPer100Ft: since(7, 0, number("friction rate", "in/100 ft", 0, 0.6, 0.01, "Loss of pressure in 100 ft of straight duct, inches of water, at which ducts are sized: 0.08 to 0.1 is usual. 0 checks velocities alone.")),
});

/** Rows of bays across that the one main of an older file must reach to serve the floor that it states; of a bay that is none validation names the bay. */
function rowsOfMain(content: Readonly<Record<string, unknown>>): number {
  const {spanFt, beamSpanFt, baysAlong, baysAcross} = (content["bay"] ?? {}) as Readonly<Record<string, unknown>>;
  const {servedFt2} = (content["services"] ?? {}) as Readonly<Record<string, unknown>>;
  const rows = Math.ceil(Number(servedFt2) / (Number(spanFt) * Number(beamSpanFt) * Number(baysAlong)) - 1e-9);
  return Number.isFinite(rows) ? Math.max(1, Math.min(10, Number(baysAcross) || 1, rows)) : 1;
}
