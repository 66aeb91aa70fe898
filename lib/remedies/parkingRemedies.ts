import {remedy, type Remedies} from "./remedy.js";
import {lowerPipes, raiseStory} from "./sharedRemedies.js";
import {either, less, more, set, together} from "./way.js";

const longerSpan = remedy(/longer span/, more("bay.spanFt"));
const columnsFarther = remedy(/columns farther apart/, more("bay.beamSpanFt"));
const narrowerAisle = remedy(/narrower aisle/, less("parking.aisleIn"));
const gentler = remedy(/gentler slope/, less("parking.rampSlopePercent"));

/** Remedies of stalls, aisles, heights and ramps. */
export const PARKING_REMEDIES: Remedies = {
  "parking height": [
    raiseStory, lowerPipes, remedy(/shallower girder/, either(less("girder.ledgeDepthIn"), less("girder.depthIn"))), remedy(/shallower ledge/, less("edgeBeam.ledgeDepthIn")), remedy(/stalls set back past it/, more("parking.setbackIn")),
    remedy(/signs that hang less low/, less("parking.signDropIn")), remedy(/flatter duct/, less("services.mainDepthIn")), remedy(/shallower (box|strip)/, less("air.casingDropIn")),
  ],
  "van height": [raiseStory, remedy(/park the vans outside/, set("parking.vans", "outside"))],
  "parking bays": [remedy(/fewer bays to a module/, less("parking.baysPerModule"))],
  "parking module": [longerSpan, columnsFarther, remedy(/stalls set back less/, less("parking.setbackIn")), narrowerAisle],
  "parking aisle": [remedy(/one bay to a module/, set("parking.baysPerModule", 1)), longerSpan, columnsFarther, narrowerAisle],
  "usual aisle": [remedy(/wider aisle/, more("parking.aisleIn"))],
  "stall width": [remedy(/wider stalls/, more("parking.stallWidthIn"))],
  "parking stalls": [longerSpan, columnsFarther, narrowerAisle, remedy(/narrower stalls/, less("parking.stallWidthIn")), remedy(/less kept free at the ends/, less("parking.endFt"))],
  "accessible stalls": [remedy(/a ramp for driving alone/, set("parking.ramp", "beside")), columnsFarther],
  "ramp slope": [gentler],
  "ramp break": [gentler, remedy(/a blend at each end/, more("parking.rampBlendFt"))],
  "ramp length": [remedy(/two runs to a story/, set("parking.rampRuns", 2)), remedy(/steeper slope/, more("parking.rampSlopePercent")), remedy(/longer building/, more("bay.baysAlong"))],
  "parking drainage": [remedy(/more slope to the drains/, more("parking.drainInPerFt"))],
  "accessible slope": [remedy(/less slope to the drains/, less("parking.drainInPerFt"))],
  "vehicle barrier": [remedy(/a beam beside the deck, with an upstand/, together(set("edgeBeam.kind", "ledge"), more("edgeBeam.upstandIn"))), remedy(/higher upstand/, more("edgeBeam.upstandIn"))],
};
