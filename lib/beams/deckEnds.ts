import type {Design} from "../design/design.js";
import {IN2_PER_FT2, feet} from "../units.js";

/** Thickness of light cladding with the studs that carry it, in (common practice). */
export const LIGHT_WALL_IN = 6;
/** Weight of precast concrete of walls, pcf (the trade handbook's tables). */
export const WALL_CONCRETE_PCF = 150;

/** What closes the ends of the deck in front of an edge beam that lies below it. */
export interface DeckEnds {
  readonly kind: "cladding" | "concrete";
  /** From the top of the structural floor down to the beam's top, and its thickness in front of the beam's face, in. */
  readonly heightIn: number;
  readonly thicknessIn: number;
  /** Weight that hangs on the beam, plf. */
  readonly plf: number;
}

/**
 * The strip that closes the deck's ends down to a beam below the deck; undefined where the beam stands beside the deck
 * and closes them itself, and where nothing is said of them.
 *
 * @param deckDepthIn - deck member and topping, in
 */
export function deckEnds({edgeBeam, walls}: Pick<Design, "edgeBeam" | "walls">, deckDepthIn: number): DeckEnds | undefined {
  const kind = walls.teeEnds;
  if (edgeBeam.kind !== "below" || kind === "not counted") return undefined;
  const thicknessIn = kind === "cladding" ? LIGHT_WALL_IN : walls.teeEndStripIn;
  const plf = kind === "cladding" ? walls.claddingPsf * feet(deckDepthIn) : (WALL_CONCRETE_PCF * thicknessIn * deckDepthIn) / IN2_PER_FT2;
  return {kind, heightIn: deckDepthIn, thicknessIn, plf};
}
