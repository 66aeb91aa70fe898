import {count, group, number} from "../entries.js";

/** The grid of columns, and how many floors stand on it. */
export const bayFields = group("Grid", {
  spanFt: number("span", "ft", 10, 150, 1, "Length of a deck member between the centers of its bearings."),
  beamSpanFt: number("beam span", "ft", 8, 80, 1, "Spacing of the columns along the edge: the span of the edge beam."),
  baysAlong: count("bays along the edge", "", 1, 30, "Number of beam spans in the building's length."),
  baysAcross: count("bays across", "", 1, 10, "Number of deck spans in the building's width."),
  floors: count("floors carried", "", 1, 12, "Floors of this kind above the lowest column; each counts toward the column's live load."),
});
