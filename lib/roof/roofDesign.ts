import type {Design} from "../design/design.js";
import {fieldLabel} from "../design/fieldWords.js";
import {InputError} from "../errors.js";
import {roofLayers} from "./layers.js";

/** Sustained part of a roof's load: upkeep, rain and snow come and go. */
const SUSTAINED_SHARE = 0;

/**
 * A design whose floor is the roof of another: its deck, layers and rules in place of the floor's, on the same bays and
 * beams. Whatever computes a floor computes the roof from it: member, deck, edge beam, girder and search.
 *
 * The topping has one thickness and follows the deck; vibration from walking is not checked, and all that is required of camber is
 * that the water runs off.
 *
 * @param edgePlf - what sits on the roof's edge, such as a parapet; the floor's cladding does not hang there
 */
export function roofDesign(design: Design, edgePlf: number): Design {
  const {roof, deck, criteria, edgeBeam, topping} = design;
  const strengthPsi = roof.strengthPsi ?? deck.strengthPsi;
  return {
    ...design,
    loads: {rooms: [], partitions: false, layers: roofLayers(design).carried},
    deck: {
      member: roof.member, pattern: roof.pattern,
      // Stryker disable ConditionalExpression: a height that is undefined is none
      ...(roof.strandHeightEndIn === undefined ? {} : {strandHeightEndIn: roof.strandHeightEndIn}),
      ...(roof.strandHeightCenterIn === undefined ? {} : {strandHeightCenterIn: roof.strandHeightCenterIn}),
      // Stryker restore ConditionalExpression
      concrete: roof.concrete ?? deck.concrete, aggregate: deck.aggregate,
      strengthPsi, releaseStrengthPsi: roof.releaseStrengthPsi ?? Math.min(deck.releaseStrengthPsi, strengthPsi),
      toppingIn: roof.toppingIn, toppingStrengthPsi: deck.toppingStrengthPsi,
    },
    criteria: {
      ...criteria, sagLimit: roof.sagLimit, keepCamber: false, walking: "none", fireHours: roof.fireHours, sustainedLiveShare: SUSTAINED_SHARE,
    },
    edgeBeam: {...edgeBeam, upstandIn: roof.upstandIn, claddingPlf: edgePlf},
    topping: {...topping, followShare: 1},
    // Another kind of member than the floor's may suit it better.
    consider: {fieldToppedTees: true, pretoppedTees: true, planks: true},
  };
}

/** Runs work on a roof's design, so that what it refuses of its deck is named as a field of the roof. */
export function ofRoof<T>({roof}: Pick<Design, "roof">, work: () => T): T {
  try {
    return work();
  } catch (problem) {
    // Stryker disable next-line ConditionalExpression: what names no field is thrown on as it is, either way
    if (!(problem instanceof InputError)) throw problem;
    const [, name = ""] = /^deck\.(.*)$/.exec(problem.path) ?? [];
    throw roof[name as keyof typeof roof] === undefined ? problem : problem.at(`roof.${name}`, fieldLabel(`roof.${name}`));
  }
}
