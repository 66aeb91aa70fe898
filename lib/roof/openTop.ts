import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import {deckResult, type DeckResult} from "../deck/deckResult.js";
import type {Design} from "../design/design.js";
import {hasOpenTop} from "../design/used.js";
import {edgeBeam, type EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import {girder, type GirderResult} from "../girder/girder.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import type {RoofLoads} from "../snow/roofLoads.js";
import {ofLevel, otherThan} from "./levelChecks.js";
import {asFloorLoads, variablePsf} from "./roofFloor.js";

/** The highest floor of a building without a roof, on which people or cars and snow are at the same time. */
export interface OpenTopResult {
  /** What lies on it, element by element. */
  readonly snow: RoofLoads;
  /** The same as one live load in the form of a floor's. */
  readonly loads: FloorLoads;
  readonly deck: DeckResult;
  readonly edgeBeam: EdgeBeamResult;
  /** Undefined where the building has one bay across. */
  readonly girder: GirderResult | undefined;
  readonly checks: readonly Check[];
}

/** The floors' beams as the open top level has them. */
export type BeamsOnTop = Pick<OpenTopResult, "edgeBeam" | "girder">;

/** What the floors of the design are by themselves, whose pieces lie on the open top level as well. */
interface Floors {
  readonly member: Member;
  /** With all the topping that fills its camber, as beams feel it. */
  readonly laid: Member;
  readonly loads: FloorLoads;
  readonly deck: DeckResult;
  readonly edgeBeam: EdgeBeamResult;
  readonly girder: GirderResult | undefined;
}

/**
 * The floors' deck, edge beam and girder on the open top level: under the live load of its use with snow or rain, by the
 * combinations in which they act together (ASCE 7-16 2.3.1, combinations 2 and 3; 2.4.1, combinations 2 to 4), live load
 * in full in the third, as the code demands of garages and assemblies. Undefined where a roof is over it, or no ground
 * snow load is given; rain alone does not count where no snow is given. Of checks only those that give other numbers than the floors'.
 *
 * @param snow - what lies on the level, with the floors' live load as that of its use
 * @param known - its beams, where they were made already
 */
export function openTopResult(design: Design, catalog: Catalog, snow: RoofLoads, floors: Floors, known?: BeamsOnTop): OpenTopResult | undefined {
  if (!hasOpenTop(design)) return undefined;
  const {member, laid} = floors;
  const {top, loads} = asOpenTop(design, snow, floors.loads);
  const deck = deckResult(top, catalog, member, loads);
  const {edgeBeam: edge, girder: inner} = known ?? {edgeBeam: edgeBeam(top, catalog, laid, loads), girder: girder(top, catalog, laid, loads)};
  return {
    snow, loads, deck, edgeBeam: edge, girder: inner,
    checks: ofLevel(otherThan(
      [...deck.checks, ...edge.checks, ...inner?.checks ?? []], [...floors.deck.checks, ...floors.edgeBeam.checks, ...floors.girder?.checks ?? []],
    ), "top level", "live load and snow"),
  };
}

/** A design's floors as its open top level: with what lies there as their live load, and of that the share that stays. */
export function asOpenTop(design: Design, snow: Pick<RoofLoads, "elements">, {superimposedDeadPsf}: Pick<FloorLoads, "superimposedDeadPsf">): {readonly top: Design; readonly loads: FloorLoads} {
  // Snow is not sustained: of the whole, only what stays of the live load; of all elements the greatest share.
  const stays = Math.max(0, ...snow.elements.map((element) => element.loads.L / Math.max(1e-9, variablePsf(element))));
  return {
    top: {...design, criteria: {...design.criteria, sustainedLiveShare: design.criteria.sustainedLiveShare * stays}},
    loads: asFloorLoads(snow, superimposedDeadPsf, "live load with snow or rain"),
  };
}
