import {moreStrands, teesWide} from "./deckMoves.js";
import {outside, remedy, type Remedy} from "./remedy.js";
import {less, more, toldNumber} from "./way.js";

// What several parts of a building mend by: its span, its columns, its story.

export const shorterSpan = remedy(/shorter span/, less("bay.spanFt"));
export const moreInDeck = remedy(/more strands/, moreStrands);
export const columnsCloser = remedy(/columns closer together/, less("bay.beamSpanFt"));
export const narrowerJoint = remedy(/narrow the joint/, less("edgeBeam.jointGapIn"));
export const raiseStory = remedy(/raise the story|higher story|higher head|raise the head/, more("story.floorToFloorFt"));
export const lowerPipes = remedy(/less height for the pipes/, less("services.sprinklerIn"));
export const STEMS_ON_BEAM: readonly Remedy[] = [
  remedy(/set the columns ([\d. or]+) ft apart/, toldNumber("bay.beamSpanFt")),
  remedy(/take tees ([\d. or]+) ft wide/, teesWide),
  outside(/begin the row of tees .*/, "a design's row of tees begins at the corner's column line"),
  remedy(/narrower columns/, less("column.sideIn")),
];
export const SUPPORTS = outside(/supports farther in/, "where a piece hangs or rides is the plant's and the hauler's to choose");
export const upstand = remedy(/higher upstand/, more("edgeBeam.upstandIn"));
