import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {ElementLoad, FloorLoads} from "../loads/floorLoads.js";
import {loadOn} from "../loads/floorLoads.js";
import {factoredLoad} from "../loads/combinations.js";
import {USUAL_AGE_DAYS, camber, type Camber} from "../member/camber.js";
import type {FlexuralStrength} from "../member/flexure.js";
import type {Member} from "../member/member.js";
import {crackingMomentKipIn} from "../member/minimumStrength.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {memberStrength} from "../member/strength.js";
import {fiberStresses, type FiberStresses} from "../member/stress.js";
import {transfer, type Transfer} from "../member/transfer.js";
import {beyondCracking} from "./beyondCracking.js";
import {cellOf} from "./cell.js";
import {mostPressed, type MostPressed} from "./compression.js";
import {designCriteria, type Criteria} from "./criteria.js";
import {deckChecks} from "./deckChecks.js";
import {deckService, type DeckService} from "./deckService.js";
import {deckShear, type DeckShear} from "./deckShear.js";
import {safeLoad, type SafeLoad} from "./safeLoad.js";
import {leastPressed} from "./servicePlaces.js";
import {strengthShares} from "./shares.js";

/** All that is known of a deck member on a span under its loads. */
export interface DeckState {
  readonly criteria: Criteria;
  readonly superimposedDeadPsf: number;
  /** Live load on the member after reduction, with partitions, psf. */
  readonly livePsf: number;
  /** What the member must carry beyond its weight and topping, psf. */
  readonly demandPsf: number;
  readonly safe: SafeLoad;
  /** Prestress at the place where strength governs, and at midspan. */
  readonly critical: PrestressState;
  readonly midspan: PrestressState;
  readonly strength: FlexuralStrength;
  /** Factored load, psf of floor, and its moment at the critical place, kip-in. */
  readonly factoredPsf: number;
  readonly factoredMomentKipIn: number;
  readonly crackingMomentKipIn: number;
  /** The loads that strength holds, that cracks the soffit, and that strength must hold beyond it. */
  readonly minimum: ReturnType<typeof beyondCracking>;
  /** Stresses at midspan in service: under all dead load, with the sustained live load, with all of it. */
  readonly deadStresses: FiberStresses;
  readonly sustainedStresses: FiberStresses;
  readonly totalStresses: FiberStresses;
  /** The hardest squeeze of the member along its span, under what stays and under all of the load. */
  readonly heldCompression: MostPressed;
  readonly totalCompression: MostPressed;
  /** Stress in the soffit under all load where it is pulled most, ksi, compression positive, and that place, 0 to 1. */
  readonly soffit: {readonly share: number; readonly bottomKsi: number};
  /** The place where shear comes nearest to what the section can carry, and the stirrups asked. */
  readonly shear: DeckShear;
  readonly transfer: Transfer;
  readonly camber: Camber;
  /** Ends, sag, liveliness, fire and handling. */
  readonly service: DeckService;
  readonly checks: readonly Check[];
}

/** The deck member of a design: its state, and where its live load comes from. */
export interface DeckResult extends DeckState {
  readonly load: ElementLoad;
}

/** Works out the deck member of a design under the floor's loads. */
export function deckResult(design: Design, catalog: Catalog, member: Member, loads: FloorLoads): DeckResult {
  const load = loadOn(loads, "deck member");
  const criteria = designCriteria(design, catalog, loads.superimposedDeadPsf);
  return {load, ...deckState(member, design.bay.spanFt, criteria, load.governing.totalPsf, design.topping.ageDays)};
}

/**
 * Works out a deck member on a span, under the criteria's dead load and a live load.
 *
 * @param livePsf - live load after reduction, with partitions, psf
 * @param ageDays - age when set
 */
export function deckState(member: Member, spanFt: number, criteria: Criteria, livePsf: number, ageDays = USUAL_AGE_DAYS): DeckState {
  const {superimposedDeadPsf} = criteria;
  const deadPlf = superimposedDeadPsf * member.widthFt;
  const livePlf = livePsf * member.widthFt;
  const ownPlf = member.selfWeightPlf + member.toppingWeightPlf;
  const safe = safeLoad(member, spanFt, criteria);
  const factoredPsf = factoredLoad(ownPlf / member.widthFt + superimposedDeadPsf, livePsf);
  const {critical, strength, factoredMomentKipIn} = weakestPlace(member, spanFt, deadPlf, factoredPsf);
  const cell = cellOf(member, spanFt, criteria);
  const {midspan} = cell;
  const unitKipIn = uniformMomentKipIn(1, spanFt, 0.5);
  const inService = (share: number) => fiberStresses(member, midspan, midspan.effectiveForceKip, {
    precastKipIn: ownPlf * unitKipIn, fullKipIn: (deadPlf + share * livePlf) * unitKipIn,
  });
  const shape = camber(member, spanFt, deadPlf, ageDays);
  const partial = {
    criteria, superimposedDeadPsf, livePsf,
    demandPsf: superimposedDeadPsf + livePsf,
    safe, critical, midspan, strength, factoredPsf, factoredMomentKipIn,
    crackingMomentKipIn: crackingMomentKipIn(member, spanFt, critical),
    minimum: beyondCracking(cell, factoredPsf),
    deadStresses: inService(0),
    sustainedStresses: inService(criteria.sustainedLiveShare),
    totalStresses: inService(1),
    heldCompression: mostPressed(cell, criteria.sustainedLiveShare * livePsf),
    totalCompression: mostPressed(cell, livePsf),
    soffit: leastPressed(cell, deadPlf + livePlf),
    shear: deckShear(cell, factoredPsf),
    transfer: transfer(member, spanFt),
    camber: shape,
    service: deckService(member, spanFt, criteria, {superimposedDeadPsf, livePsf, factoredPsf}, shape),
  };
  return {...partial, checks: deckChecks(member, spanFt, partial)};
}

/** The place where the factored moment comes closest to the strength. */
function weakestPlace(member: Member, spanFt: number, deadPlf: number, factoredPsf: number) {
  const places = strengthShares(member).map((share) => {
    const critical = prestressState(member, spanFt, share, deadPlf);
    const strength = memberStrength(member, share, critical.losses.effectiveStressKsi);
    const factoredMomentKipIn = uniformMomentKipIn(factoredPsf * member.widthFt, spanFt, share);
    return {critical, strength, factoredMomentKipIn};
  });
  return places.reduce((weakest, place) =>
    place.factoredMomentKipIn / place.strength.designMomentKipIn > weakest.factoredMomentKipIn / weakest.strength.designMomentKipIn ? place : weakest);
}
