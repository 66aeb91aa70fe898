import {outside, remedy, type Remedies} from "./remedy.js";
import {STEMS_ON_BEAM, SUPPORTS, columnsCloser, narrowerJoint} from "./sharedRemedies.js";
import {either, less, more, set, together} from "./way.js";

/** A girder beside the deck is as deep as that with its foot; a rectangle has a depth of its own. */
const deeperGirder = remedy(/deepen it|deeper girder|deeper/, either(more("girder.ledgeDepthIn"), more("girder.depthIn")));
const widerGirder = remedy(/widen(?! the ledge)|a wider(?! ledge)( girder)?|or wider/, more("girder.webWidthIn"));
const narrowerGirder = remedy(/narrower web/, less("girder.webWidthIn"));
const moreInGirder = remedy(/more strands/, more("girder.strands"));
const fewerInGirder = remedy(/fewer( strands)?/, less("girder.strands"));
const girderConcrete = remedy(/stronger concrete|concrete stronger/, more("girder.strengthPsi"));
const girderRelease = remedy(/more release strength/, either(more("girder.releaseStrengthPsi"), together(more("girder.strengthPsi"), more("girder.releaseStrengthPsi"))));
const widerGirderLedge = remedy(/widen the ledge|wider ledge/, more("girder.ledgeProjectionIn"));
const deeperGirderLedge = remedy(/deepen the ledge|make it deeper/, more("girder.ledgeDepthIn"));
const GIRDER_BENDING = [moreInGirder, deeperGirder, columnsCloser] as const;
const GIRDER_SQUEEZE = [girderConcrete, widerGirder, deeperGirder, columnsCloser] as const;
const GIRDER_YOUNG = [girderRelease, fewerInGirder, moreInGirder, columnsCloser] as const;

/** Remedies of the girder and of the floor as a diaphragm. */
export const GIRDER_REMEDIES: Remedies = {
  "girder stems on beam": STEMS_ON_BEAM,
  "girder ledge projection": [remedy(/widen them to 8 in/, set("girder.ledgeProjectionIn", 8))],
  "girder ledge depth": [remedy(/deepen them to 8 in/, set("girder.ledgeDepthIn", 8))],
  "girder seat tolerance": [widerGirderLedge, widerGirder, narrowerJoint],
  "girder strands": [deeperGirder, widerGirder, fewerInGirder],
  "girder load": GIRDER_BENDING,
  "girder strength": GIRDER_BENDING,
  "girder minimum strength": [moreInGirder, narrowerGirder, girderConcrete, fewerInGirder],
  "girder development": GIRDER_BENDING,
  "girder shear": [widerGirder, deeperGirder],
  "girder beam shear and torsion": [widerGirder, deeperGirder],
  "girder crack control": GIRDER_BENDING,
  "girder tension": GIRDER_BENDING,
  "girder sustained compression": [...GIRDER_SQUEEZE, fewerInGirder],
  "girder total compression": [...GIRDER_SQUEEZE, fewerInGirder],
  "girder sag": GIRDER_BENDING,
  "girder transfer compression end": GIRDER_YOUNG,
  "girder transfer compression midspan": GIRDER_YOUNG,
  "girder transfer tension end": GIRDER_YOUNG,
  "girder transfer tension midspan": GIRDER_YOUNG,
  "girder stripping tension soffit": [SUPPORTS, remedy(/shorter piece/, less("bay.beamSpanFt")), moreInGirder],
  "girder stripping compression": GIRDER_YOUNG,
  "girder hauling tension soffit": [SUPPORTS, remedy(/shorter piece/, less("bay.beamSpanFt")), moreInGirder],
  "girder hauling compression": [girderConcrete, fewerInGirder],
  "girder ledge line": [deeperGirderLedge],
  "girder ledge shear": [deeperGirderLedge, girderConcrete],
  "girder ledge punching": [deeperGirderLedge, girderConcrete],
  "girder pad stress": [widerGirderLedge, widerGirder],
  "girder ledge bearing": [widerGirderLedge, widerGirder, girderConcrete],
  "diaphragm topping": [remedy(/make it 2 in thick/, set("deck.toppingIn", 2))],
  "diaphragm shear": [
    outside(/more mesh/, "a design has no field for the mesh; the usual one is counted"),
    remedy(/walls closer together/, less("bay.baysAlong")),
  ],
};
