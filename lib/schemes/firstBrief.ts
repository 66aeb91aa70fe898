import {occupancyOf, type Catalog} from "../catalog.js";
import {fieldOf} from "../design/fields.js";
import {decimals, feetText} from "../units.js";
import type {Brief} from "./brief.js";
import {checkAsked, firstWidthFt, type FirstAsked} from "./firstAsked.js";
import {BRIEF_FORMAT, BRIEF_VERSION, briefFrom} from "./readBrief.js";

/** Spans of beams that a first design tries, ft: what is hauled and lifted without trouble (common practice). */
const BEAM_SPAN_FT = {min: 20, max: 40} as const;
/** Most beam spans that are tried: of more that divide the length evenly so many are taken, from the longest to the shortest. */
const MOST_BEAM_SPANS = 6;
/** Longest deck span of the most bays across that a first design tries, where it tries more than two, ft. */
const SHORT_SPAN_FT = 40;
/** No deck of the table spans farther under the load of a floor, ft (the handbook's tables end before). */
const LONGEST_SPAN_FT = 110;

/**
 * The brief of a reader who begins from nothing: one use for the whole floor, beam spans that divide the length evenly
 * into 20 to 40 ft, one bay across or two (more where two would span over 40 ft each), every kind of deck with and without
 * a topping of 2 in, ledges at the edge and girders as inverted tees. What it does not say is as in common buildings. A
 * garage has no ceiling, no air and no partitions.
 *
 * @throws InputError naming what is out of range
 */
export function firstBrief(asked: FirstAsked, catalog: Catalog): Brief {
  const {occupancy, lengthFt, stories, ceilingFt} = checkAsked(asked);
  const use = occupancyOf(catalog, occupancy);
  const widthFt = firstWidthFt(asked);
  const cars = use.group === "Parking";
  return briefFrom({
    format: BRIEF_FORMAT, version: BRIEF_VERSION,
    name: `${use.name}, ${sizeText(widthFt)} by ${sizeText(lengthFt)} ft`,
    setting: "Made by rule from a blank brief.",
    building: {lengthFt, widthFt, stories},
    rooms: [{name: use.name, occupancy: use.id}],
    partitions: use.partitions,
    ...(cars ? {layers: [{name: "Traffic coating", loadPsf: 1}, {name: "Sprinklers and lights", loadPsf: 2}]} : {}),
    ceilingFt,
    fixed: {
      "brief": `${use.name}: ${stories} stories of ${feetText(widthFt)} by ${feetText(lengthFt)}, with ${feetText(ceilingFt)} ${cars ? "clear under all that hangs" : "of ceiling height"}.`,
      "criteria.sustainedLiveShare": use.sustainedShare,
      ...(cars ? GARAGE : {}),
    },
    vary: {
      baysAcross: baysAcross(widthFt), beamSpanFt: beamSpansFt(lengthFt), toppingIn: [0, 2], edge: ["ledge"], girder: ["inverted tee"],
    },
  }, catalog);
}

/** What a garage is without, and where its cars stand. */
const GARAGE = {"story.ceiling": "none", "story.finishIn": 0, "criteria.walking": "none", "services.airCfmPerFt2": 0, "parking.place": "on", "edgeBeam.upstandIn": 36} as const;

/** Spans of the beams that divide a length evenly, from the longest down, ft. */
function beamSpansFt(lengthFt: number): number[] {
  const [fewest, most] = [Math.ceil(lengthFt / BEAM_SPAN_FT.max - 1e-9), Math.floor(lengthFt / BEAM_SPAN_FT.min + 1e-9)];
  const count = Math.min(MOST_BEAM_SPANS, most - fewest + 1);
  return Array.from({length: count}, (_, i) => lengthFt / (fewest + (count === 1 ? 0 : Math.round((i * (most - fewest)) / (count - 1)))));
}

/** One bay across and two, as far as they give a span that a deck may have; more where two would be long. */
function baysAcross(widthFt: number): number[] {
  const {min} = fieldOf("bay.spanFt");
  const most = Math.max(2, Math.ceil(widthFt / SHORT_SPAN_FT - 1e-9));
  return Array.from({length: most}, (_, i) => i + 1).filter((bays) => widthFt / bays >= min && widthFt / bays <= LONGEST_SPAN_FT);
}

const sizeText = (lengthFt: number): string => decimals(lengthFt, Number.isInteger(lengthFt) ? 0 : 1);
