import {limitPart} from "../drawings/parts.js";

/**
 * Which part of a drawing a symbol of the worked steps belongs to, by the label that says what the symbol means; a step's
 * letters mean different things in different workings, its labels do not. The names are those of `data-part` in drawings.
 */
const PARTS: Readonly<Record<string, readonly string[]>> = {
  deck: ["deck and topping", "floor's deck and topping", "deck on the beam, after tolerances", "deck, with the topping that fills its camber", "clear height under the deck"],
  topping: ["topping at the ends", "topping at the quarter points", "topping at midspan", "average thickness along the span", "minimum thickness", "thickness", "modulus of the topping", "width of the topping"],
  precast: ["area of the member", "depth of the member", "second moment of the member", "modulus of the member", "its centroid", "member and topping"],
  strand: [
    "area of all strands", "effective prestress", "effective prestress force", "strands below the centroid", "jacking stress", "jacking stress, 0.75 of 270 ksi", "force at the jacks", "force at release",
    "strands below the centroid at the ends", "drop from the ends to midspan", "lift by the strands", "lift by the strands at release", "strain in the strands before the load", "depth of the lowest row", "strand diameter",
    "stress in the strands at nominal strength", "modulus of the strand", "prestress after losses",
  ],
  "loss by shortening": ["elastic shortening", "elastic shortening less later gains"],
  "loss by creep": ["creep"],
  "loss by shrinkage": ["shrinkage"],
  "loss by relaxation": ["relaxation", "relaxation of the steel"],
  tension: ["tension in the strands, equal to the compression in the concrete"],
  "stress-block": ["moment of the concrete compression about the top"],
  "neutral-axis": ["neutral axis depth"],
  "camber-release": ["camber at release"],
  "camber-erection": ["camber when the member is set", "camber when set"],
  "camber-long": ["long-term camber"],
  ledge: ["ledge", "ledge depth", "ledge projection", "effective depth of the ledge", "edge beam below the deck", "the edge beam's ledge below the deck", "length of ledge that works with the load"],
  upstand: ["upstand"],
  beam: ["depth of the beam", "the beam itself"],
  girder: ["depth of the girder", "the girder itself"],
  pad: ["thickness of the pad", "pad's stress in service", "width that bears, along the beam", "length that bears", "stress that the pad may carry"],
  bars: ["bars in the bottom", "steel in the bottom", "steel that the moment needs"],
  stirrup: ["one stirrup leg for torsion, per inch of beam", "all stirrup legs for shear, per inch of beam", "one leg for both, not below the least, per inch of beam", "area inside the stirrup's center line", "length round it", "leg for torsion", "legs for shear"],
  "side-bars": ["bars along the beam, round the stirrup"],
  "ledge-bar": ["bars at the ledge's top, for one load", "bars for bending", "bars for the horizontal force", "bars for shear friction", "hangers, for one load"],
  moment: ["factored moment", "factored moment where it is greatest"],
  shear: ["factored shear at the support", "factored reaction of one end"],
  torsion: ["factored torsion at the support"],
  stem: ["factored load of one stem", "service load of one stem", "stems on the span"],
  finish: ["floor finish"],
  ceiling: ["ceiling below the ledge"],
  room: ["ceiling height"],
  story: ["floor to floor"],
  glass: ["height of the glass", "head of the glass", "sill of the glass", "window area", "transmittance of the glass, square on"],
  frame: ["window frame", "share of frames"],
  desk: ["height of the work plane"],
  main: ["air of the main's floor", "air in the main beside a riser", "inside of the main", "velocity in the main", "floor that the main serves, as stated"],
  branch: ["air through a branch", "inside of a branch", "velocity in a branch"],
  "return-main": ["air in the return duct beside the riser", "inside of the return duct", "velocity in the return duct"],
  sprinkler: ["sprinkler zone"],
  light: ["lights above the ceiling"],
  tributary: ["tributary area on one floor", "tributary area"],
  influence: ["influence area", "influence area of these floors"],
  layer: ["superimposed dead load"],
  live: ["live load", "live load after reduction", "live load of the table"],
  "balanced-snow": ["balanced snow", "balanced snow on a flat roof", "height of the balanced snow"],
  drift: ["height of the drift", "width of the drift", "greatest load of the drift, on top of the balanced snow", "height of the drift by the figure"],
  wall: ["height of the parapet above the roof", "height of the higher part above the roof"],
  fall: ["fall of the roof", "longest way down"],
  column: ["side of the column", "the column itself in this story"],
  corbel: ["depth of the corbel"],
  footing: ["side of the footing, to 3 in"],
  soil: ["allowable pressure"],
  chord: ["tension in the chord along the edge", "tension in the chord", "chord steel"],
  lateral: ["stated lateral load"],
};

const BY_LABEL: ReadonlyMap<string, string> = new Map(Object.entries(PARTS).flatMap(([part, labels]) => labels.map((label) => [label, part] as const)));

/** Rows of strands are many; each is of the strands. */
const ROW = /^(?:(?:depth|area|strain|stress) of (?:the )?row\b|area of row )/;

/** What each limit allows lights with the limit's curve. */
const LIMIT = /^load that (.+) allows$/;

/** The part of a drawing that a symbol's label speaks of; undefined where none is drawn. */
export function partOfLabel(label: string): string | undefined {
  const limit = LIMIT.exec(label)?.[1];
  return BY_LABEL.get(label) ?? (limit !== undefined ? limitPart(limit) : ROW.test(label) ? "strand" : undefined);
}

/** All labels that the table names. */
export const labelsWithParts = (): string[] => [...BY_LABEL.keys()];
