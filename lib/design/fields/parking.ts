import {choice, count, group, number, since} from "../entries.js";

/** Cars on these floors or beneath them. */
export const parkingFields = group("Parking", {
  place: since(7, "none", choice("cars park", {"none": "nowhere in this building", "below": "on the ground below these floors", "on": "on these floors", "both": "on the ground and on these floors"}, "Where cars stand in this building, if anywhere: each level of cars is laid out alike.")),
  /** Direction of the rows of stalls and of their aisle. */
  rows: since(7, "along", choice("rows of stalls", {"along": "along the edge", "across": "across, along the deck's span"}, "Along the edge the columns stand at the stalls' heads; across, they stand between stalls or in the aisle.")),
  /** Bays that one module takes in the direction across its rows. */
  baysPerModule: since(7, 1, count("bays to a module", "", 1, 4, "A module is an aisle with a row of stalls on each side; this many bays, counted across the rows, hold one.")),
  angle: since(7, "90 two-way", choice("stalls and traffic", {"90 two-way": "at right angles, two-way aisle", "90 one-way": "at right angles, one-way aisle", "75 one-way": "at 75 degrees, one-way aisle", "60 one-way": "at 60 degrees, one-way aisle"}, "Angled stalls are easier to enter and want a narrower aisle, but each takes more of its row.")),
  stallWidthIn: since(7, 108, number("stall width", "in", 90, 144, 3, "Square to the car: 8'-6\" where cars stay all day, 9'-0\" where they come and go (common practice).")),
  stallLengthIn: since(7, 216, number("stall length", "in", 180, 264, 6, "Along the car: 18'-0\" for all but the longest pickups (common practice).")),
  aisleIn: since(7, 288, number("aisle width", "in", 132, 360, 6, "Least clear width between the rows: 24'-0\" at right angles, 22'-0\" at 75 degrees, 18'-0\" at 60 (common practice).")),
  /** From the wall's face, or from the line between two bays, to the stalls' heads, in. */
  setbackIn: since(7, 0, number("heads of stalls set back", "in", 0, 60, 1, "From the wall's face or the column line to the head of a stall, where a wheel stop or bumper holds the car. Set back past the columns, a row runs on without a gap.")),
  doorIn: since(7, 12, number("door clearance", "in", 0, 36, 1, "Added to a column or wall that stands beside a car's doors (common practice).")),
  /** Length at each end of a stall where a car has no doors, in. */
  doorFreeIn: since(7, 48, number("free of doors at each end", "in", 0, 90, 6, "Length at each end of a stall, along the car, beside which a column hinders no door: bumper, hood or trunk (common practice).")),
  endFt: since(7, 24, number("kept free at each end", "ft", 0, 80, 1, "For turning from one aisle into the next at each end of the rows: about 24 ft for two-way traffic (common practice); 0 where an aisle ends dead.")),
  clearIn: since(7, 84, number("clear height for cars", "in", 84, 180, 1, "7'-0\" is the code's minimum for cars and those who walk to them (IBC 2021 406.2.2); 7'-4\" lets tall cars pass with a hand's breadth.")),
  vans: since(7, "inside", choice("accessible vans park", {"inside": "in this building", "outside": "outside, in the open"}, "Their stalls and all of their way there need 8'-2\" of height (ADA 2010 Standards 502.5); all of them may stand in one place (208.3.1).")),
  signDropIn: since(7, 6, number("signs below the deck", "in", 0, 36, 1, "How far signs and lights over the aisle hang below the deck's underside.")),
  drainInPerFt: since(7, 0.1875, number("slope for drainage", "in/ft", 0, 0.5, 0.0625, "Fall of the parked floor toward its drains: 1/8 to 1/4 in per foot (common practice); accessible stalls may not slope more than 1:48, which is 1/4 (ADA 2010 Standards 502.4).")),
  ramp: since(7, "none", choice("ramp", {"none": "none: cars drive in level", "beside": "beside the building", "within": "in place of one row of stalls", "parked": "a module slopes, and cars park on it"}, "How cars climb one story.")),
  rampSlopePercent: since(7, 12, number("ramp slope", "%", 2, 25, 0.5, "12 % is comfortable, 16 % about the most (common practice); a ramp on which cars park climbs 1:15, or 6.67 %, at most (IBC 2021 406.4.3).")),
  rampBlendFt: since(7, 10, number("blend at each end of the ramp", "ft", 0, 20, 1, "Length at top and bottom at half the slope, so that cars do not scrape: 8 to 12 ft (common practice).")),
  rampRuns: since(7, 1, count("runs to a story", "", 1, 2, "Straight runs in which the ramp climbs one story: two turn back on each other, or are two sloping modules side by side.")),
});
