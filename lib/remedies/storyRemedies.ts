import {remedy, type Remedies} from "./remedy.js";
import {columnsCloser, lowerPipes, raiseStory} from "./sharedRemedies.js";
import {either, less, more, other, set, together} from "./way.js";

const shallowerGirder = remedy(/shallower one/, either(less("girder.ledgeDepthIn"), less("girder.depthIn")));
const girderBeside = remedy(/girder beside the deck instead of below it/, set("girder.kind", "inverted tee"));
const lowerCeiling = remedy(/lower(er)? (the )?ceiling/, together(set("story.ceiling", "below"), more("story.ceilingDropIn")));
const fewerServed = either(less("services.servedFt2"), less("air.baysServed"));
const anotherWayBack = remedy(/another way( back)?|return another way|air back another way/, other("air.way", "none"));
const rowForRow = remedy(/a main for each row of bays/, together(set("air.rows", 1), less("services.servedFt2")));
const lighterRoom = remedy(/lighter surfaces|lighten the back/, together(more("daylight.floorShare"), more("daylight.wallShare"), more("daylight.ceilingShare")));
const twoSides = remedy(/second window wall/, set("daylight.sides", "two"));
const lessDeepRoom = remedy(/room less deep|less deep room/, less("bay.spanFt"));

/** Remedies of the story, the ducts in it, and the light. */
export const STORY_REMEDIES: Remedies = {
  "ceiling height": [raiseStory, remedy(/hang the ceiling higher/, less("story.ceilingDropIn"))],
  "glass": [remedy(/lower the upstand/, less("edgeBeam.upstandIn")), raiseStory],
  "girder headroom": [girderBeside, shallowerGirder, raiseStory],
  "girder ceiling": [girderBeside, shallowerGirder, lowerCeiling],
  "edge beam headroom": [remedy(/beam beside the deck/, set("edgeBeam.kind", "ledge")), columnsCloser, remedy(/shallower ledge/, less("edgeBeam.ledgeDepthIn")), raiseStory],
  "served floor": [remedy(/state anew how much of it this main serves/, less("services.servedFt2"))],
  "main duct room": [remedy(/flatten the duct/, less("services.mainDepthIn")), lowerCeiling, raiseStory],
  "main duct velocity": [
    remedy(/larger duct/, together(more("services.mainWidthIn"), more("services.mainDepthIn"))),
    remedy(/several mains that share the floor/, fewerServed),
  ],
  "main friction": [
    remedy(/larger duct/, together(more("services.mainWidthIn"), more("services.mainDepthIn"))),
    remedy(/several mains that share the floor/, fewerServed),
  ],
  "feeder friction": [
    remedy(/larger branches/, together(more("services.branchWidthIn"), more("services.branchDepthIn"))),
    remedy(/feeders in more of the spaces/, less("air.supplyEvery")),
  ],
  "trunk room": [remedy(/narrower main/, less("services.mainWidthIn")), anotherWayBack],
  "feeder spaces": [remedy(/larger floor for each main/, either(more("services.servedFt2"), more("air.baysServed")))],
  "riser room": [remedy(/two risers/, set("air.riser", "ends")), remedy(/wider main/, more("services.mainWidthIn")), remedy(/more mains/, fewerServed)],
  "feeders under the girder": [remedy(/flatter branches/, less("services.branchDepthIn")), lowerCeiling, rowForRow],
  "casing width": [remedy(/wider (box|strip)/, more("air.casingWidthIn")), remedy(/narrower main/, less("services.mainWidthIn"))],
  "casing drop": [remedy(/deeper (box|strip)/, more("air.casingDropIn")), remedy(/flatter duct/, less("services.mainDepthIn"))],
  "casing headroom": [remedy(/shallower (box|strip)/, less("air.casingDropIn")), remedy(/flatter duct/, less("services.mainDepthIn")), raiseStory],
  "box share": [remedy(/narrower box/, either(less("air.casingWidthIn"), less("services.mainWidthIn"))), raiseStory],
  "return spaces": [
    remedy(/return in every free space/, set("air.returnEvery", 1)), remedy(/feeders in fewer spaces/, more("air.supplyEvery")), anotherWayBack,
  ],
  "return feeder width": [remedy(/return in more of the free spaces/, less("air.returnEvery")), remedy(/deeper branches/, more("services.branchDepthIn"))],
  "return duct shape": [remedy(/deeper main/, more("services.mainDepthIn")), remedy(/two risers/, set("air.riser", "ends"))],
  "return plenum": [remedy(/hang a ceiling/, together(set("story.ceiling", "below"), more("story.ceilingDropIn"))), lowerCeiling, anotherWayBack],
  "plenum at the girder": [lowerCeiling, rowForRow],
  "return velocity": [lowerCeiling, remedy(/two risers/, set("air.riser", "ends")), remedy(/return in more of the free spaces/, less("air.returnEvery")), anotherWayBack],
  "branch duct velocity": [remedy(/larger duct/, together(more("services.branchWidthIn"), more("services.branchDepthIn")))],
  "main duct shape": [
    remedy(/deeper/, more("services.mainDepthIn")), remedy(/narrower/, less("services.mainWidthIn")),
    remedy(/wider/, more("services.mainWidthIn")), remedy(/shallower/, less("services.mainDepthIn")),
  ],
  "branch duct shape": [
    remedy(/deeper/, more("services.branchDepthIn")), remedy(/narrower/, less("services.branchWidthIn")),
    remedy(/wider/, more("services.branchWidthIn")), remedy(/shallower/, less("services.branchDepthIn")),
  ],
  "branch duct depth": [remedy(/flatten it/, less("services.branchDepthIn"))],
  "branch duct width": [remedy(/narrow it/, less("services.branchWidthIn")), remedy(/make it flatter and hang it lower/, less("services.branchDepthIn"))],
  "service zones": [raiseStory, lowerPipes, remedy(/shallower box/, less("air.casingDropIn")), remedy(/flatter duct/, less("services.mainDepthIn")), remedy(/flatter lights/, less("services.lightIn")), lowerCeiling],
  "average daylight": [remedy(/more glass/, together(less("edgeBeam.upstandIn"), less("daylight.frameShare"))), raiseStory, lighterRoom, twoSides, lessDeepRoom],
  "room depth": [raiseStory, lighterRoom, lessDeepRoom],
  "sky seen": [raiseStory, lessDeepRoom],
};
