import {requireNumber} from "../check.js";
import {fieldOf} from "../design/fields.js";

/** What a reader says who begins from nothing. */
export interface FirstAsked {
  /** Row of the table of occupancies that most of the floor is used for. */
  readonly occupancy: string;
  readonly lengthFt: number;
  /** Width of the building, ft, or the area of one of its floors, ft2. */
  readonly across: {readonly widthFt: number} | {readonly floorFt2: number};
  /** Stories of the building: the ground's, and one for each floor that is carried. */
  readonly stories: number;
  /** Ceiling that is wanted, or clear height where there is no ceiling, ft. */
  readonly ceilingFt: number;
}

/** Ranges of what may be asked. */
export const FIRST_RULES = {
  lengthFt: {path: "lengthFt", label: "length of the building", unit: "ft", min: 20, max: 600, step: 1},
  widthFt: {path: "widthFt", label: "width of the building", unit: "ft", min: 16, max: 240, step: 1},
  floorFt2: {path: "floorFt2", label: "area of one floor", unit: "ft2", min: 400, max: 100_000, step: 100},
  stories: {path: "stories", label: "stories", unit: "", min: 2, max: fieldOf("bay.floors").max + 1, step: 1, integer: true},
  ceilingFt: {path: "ceilingFt", label: "wanted ceiling", unit: "ft", min: 7, max: 30, step: 0.5},
} as const;

/** The width of the building, ft: what the area leaves of the length where the area is given. */
export function firstWidthFt({lengthFt, across}: Pick<FirstAsked, "lengthFt" | "across">): number {
  return "widthFt" in across ? across.widthFt : across.floorFt2 / lengthFt;
}

/**
 * Returns what is asked if all of it is possible.
 *
 * @throws InputError naming the first field that is out of range; an area that leaves an impossible width is named itself
 */
export function checkAsked(asked: FirstAsked): FirstAsked {
  const {widthFt, floorFt2, ...others} = FIRST_RULES;
  for (const key of ["lengthFt", "stories", "ceilingFt"] as const) requireNumber(asked[key], others[key]);
  if ("floorFt2" in asked.across) requireNumber(asked.across.floorFt2, floorFt2);
  requireNumber(firstWidthFt(asked), "widthFt" in asked.across ? widthFt : {...widthFt, path: floorFt2.path, label: "width that this area leaves"});
  return asked;
}
