import {deeperMember} from "./deckMoves.js";
import {remedy, type Remedies} from "./remedy.js";
import {columnsCloser, moreInDeck, shorterSpan} from "./sharedRemedies.js";
import {either, less, more, set, together} from "./way.js";

/** Remedies of the roof and of the loads on it. */
export const ROOF_REMEDIES: Remedies = {
  "snow shelter": [remedy(/choose a partially exposed roof/, set("snow.exposure", "partly"))],
  "roof live load entered": [
    remedy(/enter at least that/, more("column.roofLivePsf")), remedy(/give the roof a deck of its own/, set("roof.given", "deck")),
  ],
  "fall": [
    remedy(/make the roof fall more steeply/, more("roof.slopeInPerFt")),
    remedy(/let tapered insulation or stepped bearings make the fall/, either(...["taper", "bearing"].map((drainage) => together(set("roof.drainage", drainage), more("roof.slopeInPerFt"))))),
  ],
  "trapped water": [
    remedy(/make the roof fall more steeply/, more("roof.slopeInPerFt")),
    remedy(/let tapered insulation or stepped bearings make the fall/, either(...["taper", "bearing"].map((drainage) => together(set("roof.drainage", drainage), more("roof.slopeInPerFt"))))),
  ],
  "ponding stiffness": [remedy(/a deeper member in the roof/, deeperMember), shorterSpan, columnsCloser],
  "water load": [remedy(/a deeper member in the roof/, deeperMember), moreInDeck, remedy(/a lower overflow/, together(less("snow.rainStaticIn"), less("snow.rainHydraulicIn")))],
};
