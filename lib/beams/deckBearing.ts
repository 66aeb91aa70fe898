import type {Member} from "../member/member.js";
import {IN_PER_FT} from "../units.js";
import {supportAreaIn2, type Surround} from "./bearing.js";
import {stemWidthIn} from "./stemRow.js";

/** What carries the deck where it bears, and how the deck bears on it. */
export interface BearingPlace {
  /** Whether stems bear on it, or planks, which are looked at foot by foot. */
  readonly stemmed: boolean;
  /** Pads under the stems, along the beam, and what bears along the deck member, in. */
  readonly padWidthIn: number;
  readonly lengthIn: number;
  /** Room along the deck member in whose middle that stands, and depth of the concrete below it, in. */
  readonly roomIn: number;
  readonly depthIn: number;
  /** Least distance of stems from each other, and from the beam's end, in; undefined where there are none. */
  readonly spacingIn: number;
  readonly endDistanceIn: number | undefined;
  /** Concrete of the beam and of the deck member, psi. */
  readonly strengthPsi: number;
  readonly deckStrengthPsi: number;
}

/** What of the deck bears on what: a stem on its pad, or a foot of planks on their strip. */
export interface DeckBearing {
  /** Along the beam, and along the deck member, in. */
  readonly loadedWidthIn: number;
  readonly loadedLengthIn: number;
  readonly around: Surround;
  /** Area of the support that the load spreads to (A2), in2. */
  readonly supportIn2: number;
  /** The weaker concrete of deck and beam counts; the deck's own confinement does not. */
  readonly strengthPsi: number;
}

/** The bearing of a stem or of a foot of planks on an edge beam or a girder. */
export function deckBearing(deck: Pick<Member, "shape">, place: BearingPlace): DeckBearing {
  const loadedWidthIn = place.stemmed ? Math.min(place.padWidthIn, stemWidthIn(deck)) : IN_PER_FT;
  // A strip of planks has its like on both sides; a stem shares the beam with the next one, or stands near the beam's end.
  const toEdgeIn = place.stemmed ? Math.min(place.spacingIn / 2, place.endDistanceIn ?? 0) - loadedWidthIn / 2 : 0;
  const around = {alongBeamIn: Math.max(0, toEdgeIn), acrossBeamIn: Math.max(0, (place.roomIn - place.lengthIn) / 2), depthIn: place.depthIn};
  return {
    loadedWidthIn, loadedLengthIn: place.lengthIn, around,
    supportIn2: supportAreaIn2({widthIn: loadedWidthIn, lengthIn: place.lengthIn}, around),
    strengthPsi: Math.min(place.strengthPsi, place.deckStrengthPsi),
  };
}
