import {concreteFt, precastFt} from "../deck/measures.js";
import {SPAN_RANGE_FT, safeLoad, type SafeLoad} from "../deck/safeLoad.js";
import {daylight} from "../daylight/daylight.js";
import type {DaylightInput} from "../daylight/input.js";
import type {FloorShares} from "../daylight/shares.js";
import {columnLevels, positionsOf} from "../columns/frame.js";
import {GREATEST_VELOCITY_FPM, ductAreaFt2} from "../air/ducts.js";
import {levelAdds, takedown, type StoryLoad} from "../columns/takedown.js";
import {framingOf, type Evaluation} from "../evaluate.js";
import {loadOn} from "../loads/floorLoads.js";
import {ownPsf} from "../member/member.js";
import {camberToleranceIn} from "../topping/joint.js";
import {neighbors} from "../topping/neighbors.js";
import type {QuantityName} from "../quantities.js";
import {deepestSnowPsf} from "../snow/deepest.js";
import {IN2_PER_FT2, inches} from "../units.js";
import {buildingEnvelope} from "../story/envelope.js";
import type {Mistake} from "./guess.js";

/** A question that a page asks before it shows the answer. The answer comes from the open design. */
export interface Guess {
  readonly id: string;
  /** The page that asks it. */
  readonly page: string;
  /** Quantities that are the answer, or from which it follows at a glance: not shown on that page before a guess. */
  readonly hides: readonly QuantityName[];
  readonly question: string;
  readonly unit: string;
  /** How far off still counts as close, %. */
  readonly tolerancePercent: number;
  readonly answer: (evaluation: Evaluation) => number;
  /** Usual slips with this design, each with a word on where it comes from. */
  readonly mistakes: (evaluation: Evaluation) => readonly Mistake[];
}

/** The reader's guesses, one for each page that asks. */
export const GUESSES = {
  demand: {
    id: "demand", page: "loads", hides: ["demand, psf", "dead load, psf", "live load, psf"],
    question: "How much must each square foot of this floor carry, besides its own structure?", unit: "psf", tolerancePercent: 15,
    answer: (e) => e.deck.demandPsf,
    mistakes: (e) => [
      {value: e.deck.livePsf, message: "That is the live load alone: finishes, ceiling and services load the deck as well."},
      {value: e.deck.factoredPsf, message: "That is the factored load, structure included; here we ask for the actual load."},
    ],
  },
  columnReduction: {
    id: "columnReduction", page: "reduction", hides: [],
    question: "What share of its full live load should the most heavily loaded column be designed for?", unit: "%", tolerancePercent: 10,
    answer: (e) => 100 * mostLoadedColumn(e).governing.reduction.factor,
    mistakes: (e) => [{value: 100, message: `All of it: but ${mostLoadedColumn(e).governing.reduction.factor < 1 ? "it is unlikely that every part of its area is full on the same day" : "check the rule for this kind of room"}.`}],
  },
  deckDepth: {
    id: "deckDepth", page: "deck", hides: [],
    question: "How deep must the deck be, with its topping, to cross this span?", unit: "in", tolerancePercent: 12,
    answer: (e) => e.member.compression.depthIn,
    mistakes: (e) => [{value: e.member.shape.depthIn, message: "That is the member alone: the topping adds to its depth."}],
  },
  flatSlabThickness: {
    id: "flatSlabThickness", page: "trade-offs", hides: [],
    question: "If all the concrete of this deck were poured out as a flat slab, how thick would it be?", unit: "in", tolerancePercent: 12,
    answer: (e) => inches(concreteFt(e.member)),
    mistakes: (e) => [
      {value: e.member.compression.depthIn, message: "That is the depth of the deck: much of it is air, between the stems or in the voids."},
      {value: inches(precastFt(e.member)), message: "That is the precast piece alone: the topping is concrete as well."},
    ],
  },
  lossShare: {
    id: "lossShare", page: "member", hides: ["effective prestress, ksi"],
    question: "What share of the initial jacking stress is lost over the years?", unit: "%", tolerancePercent: 20,
    answer: (e) => (100 * e.deck.midspan.losses.totalKsi) / (e.deck.midspan.losses.totalKsi + e.deck.midspan.losses.effectiveStressKsi),
    mistakes: (e) => [{value: e.deck.midspan.losses.totalKsi, message: "That is the loss in ksi; the question asks for its share of the jacking stress."}],
  },
  halfSpan: {
    id: "halfSpan", page: "limits", hides: [],
    question: "How much could this piece safely carry, besides itself, over half its span (10 ft at least)?", unit: "psf", tolerancePercent: 15,
    answer: (e) => overHalfSpan(e).safeLoadPsf,
    mistakes: (e) => {
      const {safeLoadPsf} = e.deck.safe;
      const {spanFt} = e.design.bay;
      const own = ownPsf(e.member);
      const {governs, spanFt: halfFt} = overHalfSpan(e);
      return [
        {value: 2 * safeLoadPsf, message: "Twice as much would be right if bending grew with the span; it grows with the square of the span."},
        {value: (own + safeLoadPsf) * (spanFt / halfFt) ** 2 - own, message: `That would be right if the same limit went on governing as bending falls with the square of the span; over the short span ${governs} takes over.`},
      ];
    },
  },
  erectionCamber: {
    id: "erectionCamber", page: "camber", hides: ["camber when set, in"],
    question: "How much camber does the member have at midspan when the crane sets it?", unit: "in", tolerancePercent: 30,
    answer: (e) => e.deck.camber.erectionIn,
    mistakes: (e) => [{value: e.deck.camber.releaseIn, message: "That is its camber on the day the strands are cut; weeks of creep have raised it since."}],
  },
  toppingVolume: {
    id: "toppingVolume", page: "topping", hides: ["topping of a bay, yd3", "topping average, in"],
    question: "How many cubic yards of topping must the trucks deliver for one bay?", unit: "yd\u00b3", tolerancePercent: 5,
    answer: (e) => e.topping?.bayYd3 ?? 0,
    mistakes: (e) => (e.topping ? [
      {value: e.topping.bayYd3 * (e.topping.leastIn / e.topping.averageIn), message: "That would be right if the topping had its minimum thickness everywhere; the space that the camber leaves must be filled as well."},
      {value: e.topping.bayYd3 * (e.topping.greatestIn / e.topping.averageIn), message: "That is with its greatest thickness everywhere; it is that thick in only a few places."},
      {value: 27 * e.topping.bayYd3, message: "That is in cubic feet: a cubic yard is 27 of them."},
    ] : []),
  },
  neighborStep: {
    id: "neighborStep", page: "topping", hides: ["joint step, in"],
    question: "How far apart in height are two neighbors of this design at midspan, on average?", unit: "in", tolerancePercent: 30,
    answer: (e) => neighbors(e.member, e.deck.camber, e.design.bay.spanFt).meanIn,
    mistakes: (e) => [
      {value: e.deck.camber.erectionIn, message: "That is how far each of them cambers; what shows at their joint is the difference."},
      {value: camberToleranceIn(e.design.bay.spanFt), message: "That is the most that the trade lets them differ."},
    ],
  },
  beamDepth: {
    id: "beamDepth", page: "edge-beam", hides: ["beam depth, in"],
    question: "How deep does the edge beam turn out, from the underside of its ledge to the top of its upstand?", unit: "in", tolerancePercent: 8,
    answer: (e) => e.edgeBeam.depthIn,
    mistakes: (e) => (e.edgeBeam.kind === "below" ? [] : [
      {value: e.edgeBeam.depthIn - e.design.edgeBeam.ledgeDepthIn, message: "The ledge hangs below the deck: its depth counts too."},
      {value: e.edgeBeam.depthIn - e.design.edgeBeam.upstandIn, message: "The upstand above the floor is part of the beam."},
    ]),
  },
  girderLoad: {
    id: "girderLoad", page: "girder", hides: [],
    question: "How much does the girder carry per foot, besides its own weight, with live load on both bays?", unit: "plf", tolerancePercent: 12,
    answer: (e) => e.girder?.loads.superimposedPlf ?? 0,
    mistakes: (e) => (e.girder ? [
      {value: e.girder.loads.superimposedPlf / 2, message: "That is half of one bay: half of the other bay sits on the other ledge."},
      {value: 2 * e.girder.loads.superimposedPlf, message: "Each deck member has two ends: half of each bay goes to the other side."},
      {value: e.deck.demandPsf * e.design.bay.spanFt, message: "The deck and its topping have weight too: the girder carries them as well."},
    ] : []),
  },
  deepestSnow: {
    id: "deepestSnow", page: "snow", hides: ["deepest snow, psf"],
    question: "How much does the snow weigh on the one square foot of roof that carries the most?", unit: "psf", tolerancePercent: 15,
    answer: (e) => deepestSnowPsf(e.roofLoads),
    mistakes: (e) => {
      const {site, flatPsf} = e.roofLoads.snow;
      return [
        {value: site.groundPsf, message: "That is what lies on the ground: the wind takes some of it off a roof, and piles up some where it is sheltered."},
        {value: flatPsf, message: "That is what lies evenly: look for where the wind drops more."},
        {value: deepestSnowPsf(e.roofLoads) - flatPsf, message: "That is the drift alone: it lies on top of the balanced snow."},
      ];
    },
  },
  roofRise: {
    id: "roofRise", page: "roof", hides: ["roof rise, in"],
    question: "How far does the roof\u2019s surface rise from its drains to its highest line?", unit: "in", tolerancePercent: 10,
    answer: (e) => e.roof?.riseIn ?? 0,
    mistakes: (e) => (e.roof && e.roof.plan.riseIn > 0 ? [
      {value: (e.design.roof.slopeInPerFt / 12) * e.roof.plan.runFt, message: "The fall is in inches per foot: each foot of the way down adds it once."},
      {value: 2 * e.roof.plan.riseIn, message: "Water runs down both sides of its highest line: the way to the drain is half of that."},
      {value: e.roof.plan.riseIn / 2, message: "That is the mean over the way down; the highest line stands twice as high."},
    ] : []),
  },
  columnLoad: {
    id: "columnLoad", page: "columns", hides: ["interior column foot, kip", "edge column foot, kip", "girder end column foot, kip", "corner column foot, kip"],
    question: "How much load do the roof and floors bring to the most heavily loaded column, unfactored and without the column's own weight?", unit: "kip", tolerancePercent: 15,
    answer: (e) => bareColumn(e).governingService.kip,
    mistakes: (e) => {
      const {governingService, deadKip, unreducedLiveKip, governing, level} = bareColumn(e);
      const oneFloorKip = levelAdds(level);
      return [
        {value: deadKip + unreducedLiveKip, message: "That is with the full live load; over this much floor the code lets it be reduced."},
        {value: governing.kip, message: "That is the factored load, for which the concrete is designed; the soil feels the unfactored one."},
        ...(oneFloorKip.deadKip + oneFloorKip.liveKip < 0.8 * governingService.kip
          ? [{value: oneFloorKip.deadKip + oneFloorKip.liveKip, message: "That is one floor only: the column carries everything above it."}] : []),
      ];
    },
  },
  outerWall: {
    id: "outerWall", page: "walls", hides: [],
    question: "How many square feet of outer wall does this building need for each 100 ft² of its floors?", unit: "ft\u00b2", tolerancePercent: 20,
    answer: (e) => 100 * buildingEnvelope(e.design, e.story).wallPerFloor,
    mistakes: (e) => {
      const {lengthFt, heightFt, floorFt2} = buildingEnvelope(e.design, e.story);
      return [{value: (200 * lengthFt * heightFt) / floorFt2, message: "That is about what the long sides alone need: the short sides are walls as well."}];
    },
  },
  ceilingHeight: {
    id: "ceilingHeight", page: "story", hides: ["ceiling, in", "head, in", "glass, in"],
    question: "How high is the ceiling above the finished floor?", unit: "in", tolerancePercent: 4,
    answer: (e) => e.story.ceilingHeightIn,
    mistakes: (e) => [
      {value: e.story.clearUnderDeckIn, message: "That is the height under the deck: the ceiling hangs lower than that."},
      {value: e.story.ceilingHeightIn + e.story.finishIn, message: "The floor finish takes its share."},
    ],
  },
  floorPerStall: {
    id: "floorPerStall", page: "parking", hides: ["floor per stall, ft2"],
    question: "How many square feet of floor does each car take, aisles, columns and turns included?", unit: "ft\u00b2", tolerancePercent: 12,
    answer: (e) => e.parking?.ft2PerStall ?? 0,
    mistakes: (e) => {
      if (e.parking?.ft2PerStall === undefined) return [];
      const {stallWidthIn, stallLengthIn, aisleIn} = e.design.parking;
      return [
        {value: (stallWidthIn * stallLengthIn) / IN2_PER_FT2, message: "That is the stall alone: half of the aisle behind it is there for this car too."},
        {value: (stallWidthIn * (stallLengthIn + aisleIn / 2)) / IN2_PER_FT2, message: "That is the stall with its half of the aisle: columns, what is left over between them, and the turns at the ends take more."},
      ];
    },
  },
  quietFloor: {
    id: "quietFloor", page: "air", hides: [],
    question: "How much floor could the main serve before its air is too fast to be quiet?", unit: "ft\u00b2", tolerancePercent: 15,
    answer: (e) => e.services.ducts?.quietFt2 ?? 0,
    mistakes: (e) => (e.services.ducts ? [
      {value: e.services.ducts.servedFt2, message: "That is the floor that it serves now."},
      {value: outsideQuietFt2(e), message: "Its insulation takes an inch on every side: the air has only the inside."},
    ] : []),
  },
  daylitShare: {
    id: "daylitShare", page: "daylight", hides: ["daylit, %"],
    question: "Over what share of the floor\u2019s depth does a desk get 2 % of the outdoor light, or more?", unit: "%", tolerancePercent: 15,
    answer: (e) => (e.daylight ? 100 * (e.daylight.result.shares.good + e.daylight.result.shares.partial) : 0),
    mistakes: (e) => {
      if (!e.daylight) return [];
      const {input, result} = e.daylight;
      const ruleFt = (input.opposite ? 2 : 1) * result.headHeightFt.usualFt;
      return [
        {value: Math.min(100, (100 * ruleFt) / input.depthFt), message: "That is the rule of thumb, twice the window head; it knows nothing of the skyline, the frames or the glass."},
        {value: 100 * result.skySeenShare, message: "That is the share of the floor that sees some sky. A sliver of sky is not yet light to read by."},
      ];
    },
  },
  goodAcross60: {
    id: "goodAcross60", page: "width", hides: [],
    question: "If this floor were 60 ft wide, with this story and windows along both long sides, how much of it would have good daylight?", unit: "%", tolerancePercent: 20,
    answer: (e) => (e.daylight ? 100 * across60(e.daylight.input).good : 0),
    mistakes: (e) => {
      if (!e.daylight) return [];
      const {good, partial} = across60(e.daylight.input);
      return [
        {value: 100 * (good + partial), message: "That counts the partly lit floor as well, where electric light helps out now and then."},
        {value: 50 * good, message: "That is the light of one side alone: there are windows on both."},
      ];
    },
  },
} satisfies Record<string, Guess>;

export type GuessName = keyof typeof GUESSES;

/** How far in from each window wall good daylight reaches on the floor of that question, ft; 0 without glass. */
export function goodReachAcross60Ft({daylight: lit}: Evaluation): number {
  return lit ? (across60(lit.input).good * ACROSS_FT) / 2 : 0;
}

const ACROSS_FT = 60;

/** Daylight of a floor 60 ft wide behind the design's own window on both long sides, with nothing hanging before them. */
function across60(input: DaylightInput): FloorShares {
  const {beams: _, ...window} = input.window;
  return daylight({...input, depthFt: ACROSS_FT, window, opposite: window}).shares;
}

/** The piece of the design over half its span. */
export function overHalfSpan({member, design, deck}: Evaluation): SafeLoad {
  return safeLoad(member, Math.max(SPAN_RANGE_FT.min, design.bay.spanFt / 2), deck.criteria);
}

/** The foot of the most loaded column, with what the levels bring and without its own weight. */
function bareColumn(evaluation: Evaluation): StoryLoad {
  const framing = framingOf(evaluation);
  const [position = "corner column"] = positionsOf(framing);
  return takedown({position, levels: columnLevels(framing, position), rooms: evaluation.loads.rooms, columnPlf: 0}).stories.at(-1) as StoryLoad;
}

/** The column under the largest area that the grid has. */
function mostLoadedColumn(evaluation: Evaluation) {
  const {elements} = evaluation.loads;
  return elements.find((element) => element.element === "interior column")
    ?? elements.find((element) => element.element === "edge column")
    ?? elements.find((element) => element.element === "girder end column")
    ?? loadOn(evaluation.loads, "corner column");
}

/** Floor that the main would serve if air filled its outside, ft2. */
function outsideQuietFt2({design: {services}, air: found}: Evaluation): number {
  const areaFt2 = ductAreaFt2({kind: "rectangular", widthIn: services.mainWidthIn, depthIn: services.mainDepthIn});
  return found ? ((GREATEST_VELOCITY_FPM.main * areaFt2) / services.airCfmPerFt2) * (found.plan.flowCfm / found.plan.peakCfm) : 0;
}
