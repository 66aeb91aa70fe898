import {deckMember} from "../../lib/deck/deckMember.js";
import {deckPieces} from "../../lib/deck/pieces.js";
import {catalog} from "../support/designs.js";
import {
  deeperMember, depressedStrands, either, fewerStrands, flatterCourse, higherStrands, less, more, moreStrands, other, set, shallowerMember, tees, teesWide, thinnerStrands,
  together, told, twoPoints, type Move,
} from "./moves.js";

/** A remedy as a failed check words it, and what a reader who follows those words changes. */
export interface Remedy {
  /** Found in the check's message. */
  readonly says: RegExp;
  /** Undefined where a design has no field for it: then why. */
  readonly move: Move | undefined;
  readonly outside?: string;
}

const remedy = (says: RegExp, move: Move): Remedy => ({says, move});
/** A remedy that is no field of a design, and why it is named all the same. */
const outside = (says: RegExp, why: string): Remedy => ({says, move: undefined, outside: why});

const shorterSpan = remedy(/shorter span/, less("bay.spanFt"));
const deeperDeck = remedy(/deeper member/, deeperMember);
const moreInDeck = remedy(/more strands/, moreStrands);
const fewerInDeck = remedy(/fewer strands/, fewerStrands);
const depressed = remedy(/depressed ones/, depressedStrands);
const deckConcrete = remedy(/stronger concrete( in the deck)?/, more("deck.strengthPsi"));
const deckRelease = remedy(/more release strength/, together(more("deck.strengthPsi"), more("deck.releaseStrengthPsi")));
const strongerTopping = remedy(/stronger topping/, more("deck.toppingStrengthPsi"));
const thickerTopping = remedy(/thicker topping/, more("deck.toppingIn"));

/** A girder beside the deck is as deep as that with its foot; a rectangle has a depth of its own. */
const deeperGirder = remedy(/deepen it|deeper girder|deeper/, either(more("girder.ledgeDepthIn"), more("girder.depthIn")));
const widerGirder = remedy(/widen(?! the ledge)|a wider(?! ledge)( girder)?|or wider/, more("girder.webWidthIn"));
const narrowerGirder = remedy(/narrower web/, less("girder.webWidthIn"));
const shallowerGirder = remedy(/shallower one/, either(less("girder.ledgeDepthIn"), less("girder.depthIn")));
const girderBeside = remedy(/girder beside the deck instead of below it/, set("girder.kind", "inverted tee"));
const moreInGirder = remedy(/more strands/, more("girder.strands"));
const fewerInGirder = remedy(/fewer( strands)?/, less("girder.strands"));
const girderConcrete = remedy(/stronger concrete|concrete stronger/, more("girder.strengthPsi"));
const girderRelease = remedy(/more release strength/, together(more("girder.strengthPsi"), more("girder.releaseStrengthPsi")));
const columnsCloser = remedy(/columns closer together/, less("bay.beamSpanFt"));
const widerGirderLedge = remedy(/widen the ledge|wider ledge/, more("girder.ledgeProjectionIn"));
const deeperGirderLedge = remedy(/deepen the ledge|make it deeper/, more("girder.ledgeDepthIn"));

const deeperBeam = remedy(/beam deeper|make it deeper|deepen (the beam|it)|deeper( beam)?/, either(more("edgeBeam.ledgeDepthIn"), more("edgeBeam.upstandIn")));
const widerBeam = remedy(/wid(en|er)( (the|its|a))?( web| beam)?/, more("edgeBeam.webWidthIn"));
const strongerBeam = remedy(/stronger concrete|concrete stronger|stronger/, more("edgeBeam.strengthPsi"));
const largerBars = remedy(/bars larger|larger bars/, either(...["#8", "#9", "#10", "#11"].map((size) => set("edgeBeam.barSize", size))));
const smallerBars = remedy(/(more, )?smaller bars/, either(...["#8", "#7", "#6", "#5"].map((size) => set("edgeBeam.barSize", size))));
const lessCover = remedy(/less cover/, less("edgeBeam.coverIn"));
const moreInBeam = remedy(/more strands/, more("edgeBeam.strands"));
const fewerInBeam = remedy(/fewer strands/, less("edgeBeam.strands"));
const deeperLedge = remedy(/deepen the ledge|make it deeper|deepen it/, more("edgeBeam.ledgeDepthIn"));
const widerLedge = remedy(/widen the ledge|deepen the pocket/, more("edgeBeam.ledgeProjectionIn"));
const widerBelow = remedy(/widen the beam/, more("edgeBeam.webWidthIn"));
const largerPad = together(more("edgeBeam.padLengthIn"), more("edgeBeam.padWidthIn"));
const largerPadAndLedge = remedy(/(larger pad|longer pads) and (a wider ledge|a deeper pocket)/, together(more("edgeBeam.ledgeProjectionIn"), largerPad));
const largerPadAndBeam = remedy(/(larger pad|longer pads) and a wider beam/, together(more("edgeBeam.webWidthIn"), largerPad));
const narrowerJoint = remedy(/narrow the joint/, less("edgeBeam.jointGapIn"));

const raiseStory = remedy(/raise the story|higher story|higher head|raise the head/, more("story.floorToFloorFt"));
const lowerCeiling = remedy(/lower(er)? (the )?ceiling/, together(set("story.ceiling", "below"), more("story.ceilingDropIn")));
const fewerServed = either(less("services.servedFt2"), less("air.baysServed"));
const anotherWayBack = remedy(/another way( back)?|return another way|air back another way/, other("air.way"));
const rowForRow = remedy(/a main for each row of bays/, together(set("air.rows", 1), less("services.servedFt2")));
const followCamber = remedy(/let the surface follow the camber/, more("topping.followShare"));
const lighterRoom = remedy(/lighter surfaces|lighten the back/, together(more("daylight.floorShare"), more("daylight.wallShare"), more("daylight.ceilingShare")));
const twoSides = remedy(/second window wall/, set("daylight.sides", "two"));
const lessDeepRoom = remedy(/room less deep|less deep room/, less("bay.spanFt"));
const lowerPipes = remedy(/less height for the pipes/, less("services.sprinklerIn"));
const lessFloor = remedy(/less floor on each (column|beam)/, either(less("bay.beamSpanFt"), less("bay.floors"), together(less("bay.beamSpanFt"), less("bay.spanFt"), less("bay.floors"))));
const columnConcrete = remedy(/stronger concrete( in the columns)?/, more("column.strengthPsi"));

const longerSpan = remedy(/longer span/, more("bay.spanFt"));
const columnsFarther = remedy(/columns farther apart/, more("bay.beamSpanFt"));
const narrowerAisle = remedy(/narrower aisle/, less("parking.aisleIn"));
const gentler = remedy(/gentler slope/, less("parking.rampSlopePercent"));

const STEMS_ON_BEAM: readonly Remedy[] = [
  remedy(/set the columns ([\d. or]+) ft apart/, told("bay.beamSpanFt")),
  remedy(/take tees ([\d. or]+) ft wide/, teesWide),
  outside(/begin the row of tees .*/, "a design's row of tees begins at the corner's column line"),
  remedy(/narrower columns/, less("column.sideIn")),
];

const SUPPORTS = outside(/supports farther in/, "where a piece hangs or rides is the plant's and the hauler's to choose");

/** Bending of a deck, and what it leaves of its soffit and its strength. */
const DECK_BENDING = [moreInDeck, deeperDeck, shorterSpan] as const;
const DECK_SQUEEZE = [deckConcrete, strongerTopping, deeperDeck, shorterSpan, fewerInDeck, depressed] as const;
const DECK_YOUNG = [deckRelease, fewerInDeck, depressed, moreInDeck, shorterSpan] as const;
const GIRDER_BENDING = [moreInGirder, deeperGirder, columnsCloser] as const;
const GIRDER_SQUEEZE = [girderConcrete, widerGirder, deeperGirder, columnsCloser] as const;
const GIRDER_YOUNG = [girderRelease, fewerInGirder, moreInGirder, columnsCloser] as const;
const BEAM = [deeperBeam, widerBeam, largerBars, strongerBeam] as const;
const BEAM_SQUEEZE = [deeperBeam, strongerBeam, fewerInBeam] as const;
const upstand = remedy(/higher upstand/, more("edgeBeam.upstandIn"));
const BEAM_YOUNG = [strongerBeam, fewerInBeam, moreInBeam, columnsCloser, upstand] as const;

const endColumnsCloser = remedy(/set the columns of the short sides closer together|columns of the short sides closer together/, less("bay.spanFt"));
const deeperSpandrel = remedy(/deepen it/, more("walls.spandrelDepthIn"));
const shallowerSpandrel = remedy(/make it shallower/, less("walls.spandrelDepthIn"));
const smallerPanel = remedy(/(use )?narrower( panels)?|(use )?lower panels(, in more rows)?/, less("walls.panelWidthFt"));
const fewerStoriesInPanel = remedy(/let fewer stories be in one panel|fewer stories in one/, less("walls.panelStories"));
const wholePieces = remedy(/(choose )?columns at such a distance that whole pieces cover the length/, (design, said) =>
  deckPieces(design, deckMember(design, catalog)).fittingBaysFt.flatMap((bayFt) => set("bay.beamSpanFt", bayFt)(design, said)));

/** Remedies by the check whose failure names them; a check of a column goes by its name without the column's. */
export const REMEDIES: Readonly<Record<string, readonly Remedy[]>> = {
  "own live load": [
    remedy(/enter at least that/, more("loads.rooms.0.own.livePsf")),
    outside(/choose the room's actual use/, "only the reader knows for what a room is used"),
  ],

  "snow shelter": [remedy(/choose a partially exposed roof/, set("snow.exposure", "partly"))],
  "roof live load entered": [
    remedy(/enter at least that/, more("column.roofLivePsf")), remedy(/give the roof a deck of its own/, set("roof.given", "deck")),
  ],

  "deck load": DECK_BENDING,
  "deck strength": DECK_BENDING,
  "deck shear": [deeperDeck, shorterSpan, remedy(/tees/, tees)],
  "deck tension": DECK_BENDING,
  "deck sustained compression": DECK_SQUEEZE,
  "deck total compression": DECK_SQUEEZE,
  "topping sustained compression": DECK_SQUEEZE,
  "topping compression": DECK_SQUEEZE,
  "minimum strength": [moreInDeck, remedy(/shallower member/, shallowerMember)],
  "transfer compression end": DECK_YOUNG,
  "transfer compression hold-down": DECK_YOUNG,
  "transfer compression midspan": DECK_YOUNG,
  "transfer tension end": DECK_YOUNG,
  "transfer tension hold-down": DECK_YOUNG,
  "transfer tension midspan": DECK_YOUNG,
  "deck development": [moreInDeck, remedy(/thinner ones/, thinnerStrands), shorterSpan],
  "deck bearing": [remedy(/longer seat/, more("edgeBeam.ledgeProjectionIn")), deckConcrete],
  "deck sag": DECK_BENDING,
  "deck camber": DECK_BENDING,
  "deck crack control": DECK_BENDING,
  "deck walking": [thickerTopping, deeperDeck, shorterSpan],
  "deck frequency": [deeperDeck, shorterSpan],
  "deck fire thickness": [thickerTopping, remedy(/carbonate/, set("deck.aggregate", "carbonate")), remedy(/lightweight aggregate/, set("deck.concrete", "sand-lightweight"))],
  "deck fire cover": [
    remedy(/higher strands/, higherStrands),
    remedy(/a frame that restrains the (floor|roof)/, set("criteria.fireRestrained", true)),
    outside(/wider stems or a coating that insulates them/, "stems are as wide as the plant's forms, and a coat is no part of a deck's design"),
  ],
  "stripping tension soffit": [SUPPORTS, remedy(/shorter piece/, less("bay.spanFt")), moreInDeck],
  "stripping compression": DECK_YOUNG,
  "hauling tension soffit": [SUPPORTS, remedy(/shorter piece/, less("bay.spanFt")), moreInDeck],
  "hauling compression": [deckConcrete, fewerInDeck],
  "deck hold-down": [remedy(/two points/, twoPoints), fewerInDeck, remedy(/flatter profile/, flatterCourse)],

  "stems on beam": STEMS_ON_BEAM,
  "ledge projection": [remedy(/widen it to 8 in/, set("edgeBeam.ledgeProjectionIn", 8))],
  "ledge depth": [remedy(/deepen it to 8 in/, set("edgeBeam.ledgeDepthIn", 8))],
  "seat tolerance": [widerLedge, widerBelow, narrowerJoint],
  "upstand": [remedy(/lower it to 36 in/, set("edgeBeam.upstandIn", 36))],
  "beam strength": BEAM,
  "beam least steel": [largerBars, fewerInBeam, strongerBeam],
  "beam ductility": BEAM,
  "beam bottom steel": BEAM,
  "beam shear": BEAM,
  "beam cage": [widerBeam, lessCover],
  "beam shear and torsion": BEAM,
  "beam stirrups": BEAM,
  "beam cracks": [smallerBars, lessCover],
  "beam sag": BEAM,
  "beam sustained compression": BEAM_SQUEEZE,
  "beam total compression": BEAM_SQUEEZE,
  "beam transfer compression end": BEAM_YOUNG,
  "beam transfer compression midspan": BEAM_YOUNG,
  "beam transfer tension end": BEAM_YOUNG,
  "beam transfer tension midspan": BEAM_YOUNG,
  "beam stripping tension": [strongerBeam, upstand, outside(/lift it closer to its middle/, "the plant chooses where a beam is lifted")],
  "beam stripping tension soffit": [SUPPORTS, remedy(/shorter piece/, less("bay.beamSpanFt")), moreInBeam],
  "beam stripping compression": BEAM_YOUNG,
  "beam hauling tension": [strongerBeam, upstand, outside(/lift it closer to its middle/, "the plant chooses where a beam is lifted")],
  "beam hauling tension soffit": [SUPPORTS, remedy(/shorter piece/, less("bay.beamSpanFt")), moreInBeam],
  "beam hauling compression": BEAM_YOUNG,
  "ledge layers": [deeperLedge, lessCover],
  "ledge line": [deeperLedge],
  "ledge shear": [deeperLedge, strongerBeam],
  "ledge bars": [deeperLedge],
  "ledge punching interior": [deeperLedge, strongerBeam],
  "ledge punching end": [deeperLedge, strongerBeam],
  "ledge bearing": [largerPadAndLedge, largerPadAndBeam, remedy(/larger pad(?! and)|longer pads(?! and)/, largerPad), remedy(/, (a wider ledge|a deeper pocket)/, more("edgeBeam.ledgeProjectionIn")), remedy(/, a wider beam/, more("edgeBeam.webWidthIn")), remedy(/stronger concrete/, together(more("edgeBeam.strengthPsi"), more("deck.strengthPsi")))],
  "pad place": [remedy(/use a shorter pad/, less("edgeBeam.padLengthIn")), widerLedge, widerBelow],
  "pad width": [remedy(/wider pad/, more("edgeBeam.padWidthIn"))],
  "pad stress": [largerPadAndLedge, largerPadAndBeam, remedy(/longer/, more("edgeBeam.padLengthIn")), remedy(/thinner pad/, less("edgeBeam.padThicknessIn"))],
  "beam strand cover": [remedy(/1\.25 in of cover/, set("edgeBeam.coverIn", 1.25))],
  "beam strands": [fewerInBeam, widerBeam],
  "pocket stems": [remedy(/they need a ledge/, set("edgeBeam.kind", "ledge")), remedy(/the beam's top/, set("edgeBeam.kind", "below"))],
  "pocket web": [widerBeam, remedy(/make the pocket shallower/, less("edgeBeam.ledgeProjectionIn"))],

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

  "diaphragm topping": [remedy(/make it 2 in thick/, set("deck.toppingIn", 2))],
  "diaphragm shear": [
    outside(/more mesh/, "a design has no field for the mesh; the usual one is counted"),
    remedy(/walls closer together/, less("bay.baysAlong")),
  ],

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
    remedy(/thinner ones/, together(either(less("walls.panelThicknessIn"), together(less("walls.outerWytheIn"), less("walls.innerWytheIn"))))),
  ],
  "end spandrel depth": [deeperSpandrel, endColumnsCloser],
  "end spandrel cracking": [deeperSpandrel, remedy(/make it of stronger concrete/, more("walls.strengthPsi")), endColumnsCloser],
  "end spandrel over deck": [deeperSpandrel, remedy(/let it stand less above the floor/, less("walls.spandrelUpstandIn")), remedy(/take a shallower deck/, shallowerMember)],
  "end spandrel story": [shallowerSpandrel, raiseStory, remedy(/close the side with wall panels/, set("walls.shortSide", "solid panel"))],
  "end spandrel hauled width": [shallowerSpandrel],
  "end spandrel hauled length": [endColumnsCloser],
  "end spandrel weight": [shallowerSpandrel, remedy(/thinner/, less("walls.spandrelThicknessIn")), endColumnsCloser],
  "deck edge": [
    remedy(/thicken the topping/, more("deck.toppingIn")), remedy(/take a last piece cut narrower/, set("walls.endFill", "piece")), wholePieces,
    remedy(/spandrels between the columns/, set("walls.spandrelPlace", "between")),
  ],
  "last piece": [wholePieces, remedy(/a strip cast in place/, set("walls.endFill", "strip"))],

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

  "wet topping": [followCamber, outside(/prop the member while the topping sets/, "how a deck is built is no field of its design"), deeperDeck, shorterSpan],
  "topping load": [followCamber, deeperDeck, shorterSpan],
  "topping ceiling": [raiseStory, followCamber],

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

  "column strength": [columnConcrete, lessFloor],
  "beam ends": [remedy(/set the column side that their ends are cut for to (\d+) in/, told("column.sideIn"))],
  "corbel shear": [columnConcrete, lessFloor],
  "corbel bearing": [
    columnConcrete, remedy(/a seat farther off the column's face/, more("column.seatIn")),
    remedy(/a wider beam/, together(more("girder.webWidthIn"), more("edgeBeam.webWidthIn"))),
  ],
  "footing one-way shear": [remedy(/stronger concrete in it/, more("ground.footingStrengthPsi")), lessFloor],
  "footing punching": [remedy(/stronger concrete in it/, more("ground.footingStrengthPsi")), lessFloor],
  "column bearing": [
    remedy(/footing's concrete be stronger/, more("ground.footingStrengthPsi")),
    outside(/bars across the joint must take the rest/, "the dowels of a column's foot are detailed later"),
  ],
};

/** Checks whose every remedy is no field of a design, and what it is. */
export const OUTSIDE: Readonly<Record<string, string>> = {
  "deck contact": "ties across the joint, which are detailed later",
  "joint step": "how the pieces are sorted and set",
};

const CHOSEN = "the first size of a column is the least that keeps it";
const TOP_STEEL = "bonded bars take the tension of the top";
/** Checks that fail in no design, and why. */
export const NEVER: Readonly<Record<string, string>> = {
  "deck hauling": "a heavy piece needs a permit",
  "beam weight": "a heavy beam needs a permit",
  "ledge lever": "a longer lever is out of the method's range",
  "girder ledge lever": "a longer lever is out of the method's range",
  "girder pad place": "the pad is made to fit its room",
  "girder pad width": "the pad is made as wide as the stem",
  "stripping tension top": TOP_STEEL, "hauling tension top": TOP_STEEL, "girder stripping tension top": TOP_STEEL, "girder hauling tension top": TOP_STEEL,
  "beam stripping tension top": TOP_STEEL, "beam hauling tension top": TOP_STEEL,
  "beam tension": "a beam that cracks is out of the method's range",
  "diaphragm proportions": "a longer floor is out of the method's range",
  "girder web opening": "an opening that the engineer may allow is a remedy itself",
  "footing side": "a larger footing is out of the method's range",
  "pocket foot": "no method covers it",
  "pocket twist": "no method covers it",
  "first size": "no method covers it",
  "daylight depth": "no method covers it",
  "snow exposure": "no method covers it",
  "unbalanced snow": "no method covers it",
  "column slenderness": "a more slender column is out of the method's range",
  "column least steel": CHOSEN, "column most steel": CHOSEN, "column bar spacing": CHOSEN, "column buckling": CHOSEN, "column magnifier": CHOSEN,
  "corbel arm": "the corbel is made as deep as it must be", "corbel bending": "the corbel is made as deep as it must be",
};
