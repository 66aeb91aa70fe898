import type {Catalog} from "../../catalog.js";
import {simpleSpanMomentKipIn} from "../../beams/statics.js";
import type {Design} from "../../design/design.js";
import {edgeBeamSection} from "../../edgeBeam/section.js";
import {loadsOn} from "../../edgeBeam/loads.js";
import {evenGirderLoads} from "../../girder/loads.js";
import {factoredLoad} from "../../loads/combinations.js";
import {floorLoads} from "../../loads/floorLoads.js";
import {ownPsf, type Member} from "../../member/member.js";
import {given, type Step} from "../../step.js";
import {beamDepthWorking, seatWorking} from "../../steps/edgeBeam.js";
import {kipFt} from "../../units.js";
import type {Draw} from "../draw.js";
import type {Content, Kind} from "../item.js";
import {choicePart, numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {designWith, catalogMember, stated, straightPattern, tees} from "./ground.js";

/** A field-topped tee on a beam, drawn; its strands are of no matter to the beam. */
function deckDrawn(draw: Draw, catalog: Catalog): {readonly designation: string; readonly toppingIn: number; readonly member: Member} {
  const row = draw.one(tees(catalog, "field-topped"));
  const toppingIn = draw.from(2, 3.5, 0.5);
  return {designation: row.designation, toppingIn, member: catalogMember(catalog, row, straightPattern(draw, row), toppingIn)};
}

/** Depth of an edge beam with ledge, deck and upstand. */
function edgeBeamDepth(draw: Draw, catalog: Catalog): Content {
  const ledgeDepthIn = draw.from(8, 16, 1);
  const upstandIn = draw.from(6, 42, 2);
  const {designation, toppingIn, member} = deckDrawn(draw, catalog);
  const design = designWith({edgeBeam: {ledgeDepthIn, upstandIn, kind: "ledge"}, bay: {spanFt: 50}});
  const section = edgeBeamSection(design, member);
  const deckIn = member.shape.depthIn;
  return {
    question: [prose`An edge beam carries ${designation} with ${measure(toppingIn, "in")} of topping on a ledge ${measure(ledgeDepthIn, "in")} deep, and rises ${measure(upstandIn, "in")} above the topping as an upstand.`],
    givens: [{name: "deck", value: designation, unit: ""}, {name: "topping", value: toppingIn, unit: "in"}, {name: "ledge", value: ledgeDepthIn, unit: "in"}, {name: "upstand", value: upstandIn, unit: "in"}],
    picture: {kind: "stack", layers: [{name: "ledge", heightIn: ledgeDepthIn}, {name: designation, heightIn: deckIn}, {name: "topping", heightIn: toppingIn}, {name: "upstand", heightIn: upstandIn}]},
    parts: [numberPart({
      ask: prose`How deep is the beam from the underside of its ledge to the top of its upstand?`, label: "depth of the beam", unit: "in", key: section.depthIn, tolerance: {percent: 0.5},
      slips: [
        slip("forgot the topping", section.depthIn - toppingIn, "The upstand begins above the topping: its thickness counts."), slip("forgot the ledge", section.depthIn - ledgeDepthIn, "The ledge hangs below the deck: its depth counts too."),
        slip("forgot the upstand", section.depthIn - upstandIn, "The upstand above the floor is part of the beam."), slip("forgot the deck", section.depthIn - section.deckDepthIn, "Between ledge and upstand stands the deck."),
      ],
      working: {title: "Depth of the edge beam", steps: beamDepthWorking({design, edgeBeam: section}).steps},
    })],
  };
}

/** Seat of the deck after joint and tolerances. */
function seatLeft(draw: Draw, catalog: Catalog): Content {
  const ledgeProjectionIn = draw.from(5, 10, 0.5);
  const jointGapIn = draw.from(0.5, 1.5, 0.25);
  const spanFt = draw.from(36, 70, 1);
  const beamSpanFt = draw.from(20, 40, 2);
  const {designation, member} = deckDrawn(draw, catalog);
  const design = designWith({edgeBeam: {ledgeProjectionIn, jointGapIn, kind: "ledge"}, bay: {spanFt, beamSpanFt}});
  const section = edgeBeamSection(design, member);
  const {seat} = section;
  const [length = 0, place = 0, sweep = 0] = seat.losses.map(({lossIn}) => lossIn);
  const {steps} = seatWorking({design, edgeBeam: section, member});
  return {
    question: [
      prose`${designation} of ${measure(spanFt, "ft")} sits on a ledge that projects ${measure(ledgeProjectionIn, "in")}; its end stays ${measure(jointGapIn, "in")} off the web. Its length may be off by ${measure(length, "in")}, the bearing\u2019s place by ${measure(place, "in")}, and the beam\u2019s sweep, ${measure(0.125, "in")} for each 10 ft of its ${measure(beamSpanFt, "ft")}, may come on top.`,
    ],
    givens: [{name: "projection of the ledge", value: ledgeProjectionIn, unit: "in"}, {name: "joint", value: jointGapIn, unit: "in"}, {name: "span of the deck", value: spanFt, unit: "ft"}, {name: "length of the beam", value: beamSpanFt, unit: "ft"}, {name: "tolerance on the length", value: length, unit: "in"}, {name: "tolerance on the bearing", value: place, unit: "in"}],
    parts: [
      numberPart({
        ask: prose`How much seat is left if all of them come together?`, label: "seat", unit: "in", key: seat.worstIn, tolerance: {within: 0.06},
        slips: [slip("as drawn", seat.nominalIn, "That is the seat as drawn: no piece is exactly as drawn."), slip("forgot the joint", seat.worstIn + jointGapIn, "The deck does not begin at the web: the joint takes its share."), slip("forgot the sweep", seat.worstIn + sweep, "The beam bows a little as well."), slip("the likely loss for the worst", seat.likelyIn, "That is the likelier loss, the root of the squares; the question asks for all at once.")],
        working: {title: "Seat of the deck", steps: steps.slice(0, 1)},
      }),
      numberPart({
        ask: prose`How much must there be under a stem?`, label: "least seat", unit: "in", key: seat.neededIn, tolerance: {within: 0.06},
        slips: [slip("least under slabs", Math.max((12 * spanFt) / 180, 2), "Under stems it is 3 in at least."), slip("feet for inches", Math.max(spanFt / 180, 0.25), "A 180th of the span, in inches."), slip("the 3 in alone", 3, "A 180th of the span is more.")],
        working: {title: "Least seat", steps: steps.slice(1)},
      }),
      choicePart({
        ask: prose`Is it enough?`, key: (earlier) => (numberAt(earlier, 0) >= numberAt(earlier, 1) ? "yes" : "no"),
        options: [{id: "yes", text: ["yes"], slip: {name: "took less for more", says: "By your numbers there is less than there must be."}}, {id: "no", text: ["no"], slip: {name: "took more for less", says: "By your numbers there is as much as there must be."}}],
      }),
    ],
  };
}

/** A floor whose live load is stated and not reduced. */
export function statedFloor(spanFt: number, beamSpanFt: number, deadPsf: number, livePsf: number, edgeBeam: Partial<Design["edgeBeam"]> = {}): Design {
  return designWith({
    bay: {spanFt, beamSpanFt, baysAlong: 4, baysAcross: 2}, edgeBeam,
    loads: {rooms: [{name: "Room", occupancy: "office", own: {livePsf, reducible: false, reason: "as stated"}}], partitions: false, layers: [{name: "finishes", loadPsf: deadPsf}]},
  });
}

/** Load per foot of an edge beam. */
function edgeBeamLoad(draw: Draw, catalog: Catalog): Content {
  const spanFt = draw.from(36, 64, 1);
  const livePsf = draw.from(40, 100, 5);
  const deadPsf = draw.from(5, 25, 1);
  const claddingPlf = draw.from(100, 300, 25);
  const {member} = deckDrawn(draw, catalog);
  const design = statedFloor(spanFt, 30, deadPsf, livePsf, {claddingPlf, kind: "ledge", upstandIn: 24, ledgeDepthIn: 10});
  const on = loadsOn(design, member, floorLoads(design, catalog, member.widthFt), edgeBeamSection(design, member));
  const own = ownPsf(member);
  const b = given(on.tributaryWidthFt, "ft", "half the deck\u2019s span");
  const both = own + deadPsf;
  return {
    question: [
      prose`A deck weighs ${measure(stated(own, 1), "psf")} with its topping, ${measure(deadPsf, "psf")} of finishes lie on it, and the edge beam must hold ${measure(livePsf, "psf")} of live load. It spans ${measure(spanFt, "ft")} from the edge beam to the next line.`,
      prose`The edge beam itself weighs ${measure(stated(on.selfPlf, 0), "plf")} and carries ${measure(claddingPlf, "plf")} of cladding.`,
    ],
    givens: [{name: "deck with topping", value: stated(own, 1), unit: "psf"}, {name: "finishes", value: deadPsf, unit: "psf"}, {name: "live load", value: livePsf, unit: "psf"}, {name: "span of the deck", value: spanFt, unit: "ft"}, {name: "the beam itself", value: stated(on.selfPlf, 0), unit: "plf"}, {name: "cladding", value: claddingPlf, unit: "plf"}],
    parts: [
      numberPart({
        ask: prose`What dead load comes on each foot of the beam?`, label: "dead load", unit: "plf", key: on.deadPlf,
        slips: [
          slip("whole span for half", both * spanFt + on.selfPlf + claddingPlf, "The deck has two ends: the other half of its load goes to the next line."), slip("forgot the beam itself", on.deadPlf - on.selfPlf, "The beam weighs too."),
          slip("forgot the cladding", on.deadPlf - claddingPlf, "The cladding hangs from it as well."), slip("finishes for the whole deck", deadPsf * on.tributaryWidthFt + on.selfPlf + claddingPlf, "The deck and its topping have weight too."),
        ],
        working: {title: "Dead load on the edge beam", steps: [{symbol: "w_D", label: "dead load", expression: "(w_o + w_sd) * b + w_b + w_c", unit: "plf", source: "sum", result: on.deadPlf, values: {w_o: given(own, "psf", "deck with topping"), w_sd: given(deadPsf, "psf", "finishes"), b, w_b: given(on.selfPlf, "plf", "the beam itself"), w_c: given(claddingPlf, "plf", "cladding")}}]},
      }),
      numberPart({
        ask: prose`And for what factored load is it designed?`, label: "factored load", unit: "plf", key: (earlier) => factoredLoad(numberAt(earlier, 0), on.livePlf),
        slips: (earlier) => [
          slip("forgot the load factors", numberAt(earlier, 0) + on.livePlf, "That is the load without factors."), slip("live load over the whole span", factoredLoad(numberAt(earlier, 0), 2 * on.livePlf), "Half of the live load goes to the next line."),
          slip("forgot the live load", 1.2 * numberAt(earlier, 0), "The live load comes on top."), slip("swapped the factors", 1.6 * numberAt(earlier, 0) + 1.2 * on.livePlf, "The factors are swapped."),
        ],
        working: (earlier) => ({title: "Factored load", steps: factoredSteps(numberAt(earlier, 0), on.livePlf, livePsf, on.tributaryWidthFt, "half the deck\u2019s span")}),
      }),
    ],
  };
}

function factoredSteps(deadPlf: number, livePlf: number, livePsf: number, widthFt: number, widthLabel: string): Step[] {
  return [
    {symbol: "w_L", label: "live load", expression: "L * b", unit: "plf", source: "geometry", result: livePlf, values: {L: given(livePsf, "psf", "live load"), b: given(widthFt, "ft", widthLabel)}},
    {symbol: "w_u", label: "factored load", expression: "max(1.4 * w_D, 1.2 * w_D + 1.6 * w_L)", unit: "plf", source: "ASCE 7-16 2.3.1", result: factoredLoad(deadPlf, livePlf), values: {w_D: given(deadPlf, "plf", "dead load"), w_L: given(livePlf, "plf", "live load")}},
  ];
}

/** Load and moment of a girder between two bays. */
function girderMoment(draw: Draw, catalog: Catalog): Content {
  const spanFt = draw.from(30, 60, 1);
  const girderFt = draw.from(20, 40, 1);
  const livePsf = draw.from(40, 100, 5);
  const deadPsf = draw.from(5, 25, 5);
  const selfPlf = draw.from(500, 1000, 25);
  const {member} = deckDrawn(draw, catalog);
  const design = statedFloor(spanFt, girderFt, deadPsf, livePsf);
  const on = evenGirderLoads(design, member, floorLoads(design, catalog, member.widthFt), selfPlf);
  const own = ownPsf(member);
  const moment = (plf: number) => kipFt(simpleSpanMomentKipIn(plf, girderFt));
  return {
    question: [
      prose`A girder of ${measure(girderFt, "ft")} carries decks that span ${measure(spanFt, "ft")} on either side. The deck weighs ${measure(stated(own, 1), "psf")} with its topping, finishes ${measure(deadPsf, "psf")}; the live load on the girder is ${measure(livePsf, "psf")}. The girder itself weighs ${measure(selfPlf, "plf")}.`,
    ],
    givens: [{name: "span of the girder", value: girderFt, unit: "ft"}, {name: "span of the decks", value: spanFt, unit: "ft"}, {name: "deck with topping", value: stated(own, 1), unit: "psf"}, {name: "finishes", value: deadPsf, unit: "psf"}, {name: "live load", value: livePsf, unit: "psf"}, {name: "the girder itself", value: selfPlf, unit: "plf"}],
    picture: {kind: "beam", spanFt: girderFt, uniform: [{name: "deck and live load", plf: stated(on.superimposedPlf, 0)}, {name: "the girder itself", plf: selfPlf}], points: []},
    parts: [
      numberPart({
        ask: prose`What dead load comes on each foot of it, itself included?`, label: "dead load", unit: "plf", key: on.deadPlf,
        slips: [
          slip("half of one bay only", on.deckDeadPlf / 2 + selfPlf, "That is half of one bay: half of the other bay sits on its other side."), slip("both bays whole", 2 * on.deckDeadPlf + selfPlf, "Each deck has two ends: half of each bay goes to the other side."),
          slip("forgot the girder itself", on.deckDeadPlf, "The girder weighs too."), slip("finishes for the whole deck", deadPsf * spanFt + selfPlf, "The deck and its topping have weight too."),
        ],
        working: {title: "Dead load on the girder", steps: [{symbol: "w_D", label: "dead load", expression: "(w_o + w_sd) * b + w_b", unit: "plf", source: "sum", result: on.deadPlf, values: {w_o: given(own, "psf", "deck with topping"), w_sd: given(deadPsf, "psf", "finishes"), b: given(spanFt, "ft", "half a span on each side"), w_b: given(selfPlf, "plf", "the girder itself")}}]},
      }),
      numberPart({
        ask: prose`For what factored load?`, label: "factored load", unit: "plf", key: (earlier) => factoredLoad(numberAt(earlier, 0), on.livePlf),
        slips: (earlier) => [
          slip("forgot the load factors", numberAt(earlier, 0) + on.livePlf, "That is the load without factors."), slip("live load of one bay", factoredLoad(numberAt(earlier, 0), on.livePlf / 2), "Live load stands on both bays."), slip("swapped the factors", 1.6 * numberAt(earlier, 0) + 1.2 * on.livePlf, "The factors are swapped."),
        ],
        working: (earlier) => ({title: "Factored load", steps: factoredSteps(numberAt(earlier, 0), on.livePlf, livePsf, spanFt, "half a span on each side")}),
      }),
      numberPart({
        ask: prose`What moment does that make at midspan, the load taken as even?`, label: "moment", unit: "kip-ft", key: (earlier) => moment(numberAt(earlier, 1)),
        slips: (earlier) => [
          slip("span not squared", moment(numberAt(earlier, 1)) / girderFt, "The moment grows with the square of the span."), slip("the decks\u2019 span", kipFt(simpleSpanMomentKipIn(numberAt(earlier, 1), spanFt)), "The girder bends over its own span, not over that of the decks."),
          slip("fixed ends", (moment(numberAt(earlier, 1)) * 8) / 12, "Its ends turn freely: an eighth, not a twelfth."), slip("kip-in for kip-ft", 12 * moment(numberAt(earlier, 1)), "That is in kip-inches."),
        ],
        working: (earlier) => ({title: "Moment of the girder", steps: [{symbol: "M_u", label: "factored moment at midspan", expression: "w_u * L^2 / 8 / 1000", unit: "kip-ft", source: "statics", result: moment(numberAt(earlier, 1)), values: {w_u: given(numberAt(earlier, 1), "plf", "factored load"), L: given(girderFt, "ft", "span of the girder")}}]}),
      }),
    ],
  };
}

export const BEAMS_KINDS: readonly Kind[] = [
  {id: "edge-beam-depth", topic: "edge-beam", level: 1, title: "How deep an edge beam turns out", make: edgeBeamDepth},
  {id: "seat-left", topic: "edge-beam", level: 2, title: "What tolerances leave of the seat", make: seatLeft},
  {id: "edge-beam-load", topic: "edge-beam", level: 2, title: "Load on a foot of the edge beam", make: edgeBeamLoad},
  {id: "girder-moment", topic: "girder", level: 2, title: "Load and moment of a girder", make: girderMoment},
];
