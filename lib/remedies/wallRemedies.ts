import {deckMember} from "../deck/deckMember.js";
import {deckPieces} from "../deck/pieces.js";
import {beamSpans, shallowerMember} from "./deckMoves.js";
import {remedy, type Remedies} from "./remedy.js";
import {raiseStory} from "./sharedRemedies.js";
import {either, less, more, set, together} from "./way.js";

const endColumnsCloser = remedy(/set the columns of the short sides closer together|columns of the short sides closer together/, less("bay.spanFt"));
const deeperSpandrel = remedy(/deepen it/, more("walls.spandrelDepthIn"));
const shallowerSpandrel = remedy(/make it shallower/, less("walls.spandrelDepthIn"));
const morePieces = remedy(/cut it into more pieces, on posts between the columns/, more("walls.spandrelPieces"));
const smallerPanel = remedy(/(use )?narrower( panels)?|(use )?lower panels(, in more rows)?/, less("walls.panelWidthFt"));
const fewerStoriesInPanel = remedy(/let fewer stories be in one panel|fewer stories in one/, less("walls.panelStories"));
const wholePieces = remedy(/(choose )?columns at such a distance that whole pieces cover the length/,
  beamSpans((design, catalog) => deckPieces(design, deckMember(design, catalog)).fittingBaysFt));

/** Remedies of what closes the short sides. */
export const WALL_REMEDIES: Remedies = {
  "panel thickness": [
    remedy(/thicken it/, either(more("walls.panelThicknessIn"), more("walls.innerWytheIn"))), remedy(/lower the story/, less("story.floorToFloorFt")),
  ],
  "panel reach": [
    remedy(/thicken it/, either(more("walls.panelThicknessIn"), more("walls.innerWytheIn"))), endColumnsCloser, remedy(/stand the panels upright/, set("walls.panelSupport", "footing")),
  ],
  "panel hauled width": [smallerPanel],
  "panel hauled length": [fewerStoriesInPanel, endColumnsCloser],
  "panel weight": [
    smallerPanel, fewerStoriesInPanel, endColumnsCloser,
    remedy(/thinner ones/, either(less("walls.panelThicknessIn"), together(less("walls.outerWytheIn"), less("walls.innerWytheIn")))),
  ],
  "end spandrel depth": [deeperSpandrel, endColumnsCloser],
  "end spandrel cracking": [deeperSpandrel, remedy(/make it of stronger concrete/, more("walls.strengthPsi")), endColumnsCloser],
  "end spandrel over deck": [deeperSpandrel, remedy(/let it stand less above the floor/, less("walls.spandrelUpstandIn")), remedy(/take a shallower deck/, shallowerMember)],
  "end spandrel story": [shallowerSpandrel, raiseStory, remedy(/close the side with wall panels/, set("walls.shortSide", "solid panel"))],
  "end spandrel hauled width": [shallowerSpandrel],
  "end spandrel hauled length": [morePieces, endColumnsCloser],
  "end spandrel weight": [shallowerSpandrel, remedy(/thinner/, less("walls.spandrelThicknessIn")), morePieces, endColumnsCloser],
  "deck edge": [
    remedy(/thicken the topping/, more("deck.toppingIn")), remedy(/take a last piece cut narrower/, set("walls.endFill", "piece")), wholePieces,
    remedy(/spandrels between the columns/, set("walls.spandrelPlace", "between")),
  ],
  "last piece": [wholePieces, remedy(/a strip cast in place/, set("walls.endFill", "strip"))],
};
