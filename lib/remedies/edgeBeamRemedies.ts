import {outside, remedy, type Remedies} from "./remedy.js";
import {STEMS_ON_BEAM, SUPPORTS, columnsCloser, narrowerJoint, upstand} from "./sharedRemedies.js";
import {either, larger, less, more, set, smaller, together} from "./way.js";

const deeperBeam = remedy(/beam deeper|make it deeper|deepen (the beam|it)|deeper( beam)?/, either(more("edgeBeam.ledgeDepthIn"), more("edgeBeam.upstandIn")));
const widerBeam = remedy(/wid(en|er)( (the|its|a))?( web| beam)?/, more("edgeBeam.webWidthIn"));
const strongerBeam = remedy(/stronger concrete|concrete stronger|stronger/, more("edgeBeam.strengthPsi"));
const largerBars = remedy(/bars larger|larger bars/, larger("edgeBeam.barSize"));
const smallerBars = remedy(/(more, )?smaller bars/, smaller("edgeBeam.barSize"));
const lessCover = remedy(/less cover/, less("edgeBeam.coverIn"));
const moreInBeam = remedy(/more strands/, more("edgeBeam.strands"));
const fewerInBeam = remedy(/fewer strands/, less("edgeBeam.strands"));
const deeperLedge = remedy(/deepen the ledge|make it deeper|deepen it/, more("edgeBeam.ledgeDepthIn"));
const widerLedge = remedy(/widen the ledge|deepen the pocket/, more("edgeBeam.ledgeProjectionIn"));
const widerBelow = remedy(/widen the beam/, more("edgeBeam.webWidthIn"));
const largerPad = together(more("edgeBeam.padLengthIn"), more("edgeBeam.padWidthIn"));
const largerPadAndLedge = remedy(/(larger pad|longer pads) and (a wider ledge|a deeper pocket)/, together(more("edgeBeam.ledgeProjectionIn"), largerPad));
const largerPadAndBeam = remedy(/(larger pad|longer pads) and a wider beam/, together(more("edgeBeam.webWidthIn"), largerPad));
const BEAM = [deeperBeam, widerBeam, largerBars, strongerBeam] as const;
const BEAM_SQUEEZE = [deeperBeam, strongerBeam, fewerInBeam] as const;
const BEAM_YOUNG = [strongerBeam, fewerInBeam, moreInBeam, columnsCloser, upstand] as const;

/** Remedies of the edge beam. */
export const EDGE_BEAM_REMEDIES: Remedies = {
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
};
