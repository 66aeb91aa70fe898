import {group, number, since, toggle} from "../entries.js";

/** The columns, and the loads of a roof that is given by its two loads. */
export const columnFields = group("Columns", {
  strengthPsi: since(3, 5000, number("column concrete strength", "psi", 4000, 12000, 500, "Specified compressive strength of the columns at 28 days.")),
  coverIn: since(3, 1.5, number("column cover", "in", 1, 3, 0.25, "Concrete outside the ties.")),
  steelPercent: since(3, 1.5, number("steel in the columns", "%", 1, 4, 0.25, "Area of the bars as a share of the column's; 1.5 to 2 is usual for a first size.")),
  /** Side of the columns that the beams' ends are cut for, in. */
  sideIn: since(4, 18, number("column side that the beams clear", "in", 12, 48, 2, "Beams are cut to end a joint short of columns this wide; the widest column on the floor decides.")),
  /** From the face of such a column to the beam's reaction on its corbel, in. */
  seatIn: since(3, 4, number("seat off the column's face", "in", 2, 16, 0.5, "From the face of such a column to the middle of the beam's bearing on its corbel.")),
  sways: since(3, false, toggle("frame sways", "Whether the columns themselves must keep the floors from swaying; with walls or braces they need not.")),
  roofDeadPsf: since(3, 80, number("dead load of the roof", "psf", 0, 200, 5, "Roof deck, insulation and what hangs from it.")),
  roofLivePsf: since(3, 20, number("live load of the roof", "psf", 0, 150, 5, "20 psf on an ordinary roof; snow is not counted here.")),
});
