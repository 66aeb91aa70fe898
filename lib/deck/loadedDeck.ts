import {factoredLoad} from "../loads/combinations.js";
import {USUAL_AGE_DAYS, camber, type Camber} from "../member/camber.js";
import type {FlexuralStrength} from "../member/flexure.js";
import {crackingMomentKipIn} from "../member/minimumStrength.js";
import {uniformMomentKipIn} from "../member/moments.js";
import type {PrestressState} from "../member/prestressState.js";
import {fiberStresses, type FiberStresses} from "../member/stress.js";
import {transfer, type Transfer} from "../member/transfer.js";
import {beyondCracking} from "./beyondCracking.js";
import {prestressAt, strengthAt, type Cell} from "./cell.js";
import {mostPressed, pressedPlaces, type MostPressed} from "./compression.js";
import {deckService, type DeckService} from "./deckService.js";
import {deckShear, type DeckShear} from "./deckShear.js";
import {leastPressed} from "./servicePlaces.js";

/** What a load does to a deck member on a span: all that its checks compare. */
export interface LoadedDeck {
  readonly superimposedDeadPsf: number;
  /** Live load on the member after reduction, with partitions, psf. */
  readonly livePsf: number;
  /** What the member must carry beyond its weight and topping, psf. */
  readonly demandPsf: number;
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
  /** The greatest compression in the member along its span, under what stays and under all of the load. */
  readonly heldCompression: MostPressed;
  readonly totalCompression: MostPressed;
  /** Stress in the soffit under all load where its tension is greatest, ksi, compression positive, and that place, 0 to 1. */
  readonly soffit: {readonly share: number; readonly bottomKsi: number};
  /** The place where shear comes nearest to what the section can carry, and the stirrups required. */
  readonly shear: DeckShear;
  readonly transfer: Transfer;
  readonly camber: Camber;
  /** Ends, sag, vibration, fire and handling. */
  readonly service: DeckService;
}

/**
 * Computes a deck member on its span under its dead load and a live load.
 *
 * @param livePsf - live load after reduction, with partitions, psf
 * @param ageDays - age when set
 */
export function loadedDeck(cell: Cell, livePsf: number, ageDays = USUAL_AGE_DAYS): LoadedDeck {
  const {member, spanFt, rules: {superimposedDeadPsf, sustainedLiveShare}, deadPlf, midspan} = cell;
  const livePlf = livePsf * member.widthFt;
  const ownPlf = member.selfWeightPlf + member.toppingWeightPlf;
  const factoredPsf = factoredLoad(ownPlf / member.widthFt + superimposedDeadPsf, livePsf);
  const minimum = beyondCracking(cell, factoredPsf);
  const {share} = minimum.strength;
  const critical = prestressAt(cell, share);
  const unitKipIn = uniformMomentKipIn(1, spanFt, 0.5);
  const inService = (lasting: number) => fiberStresses(member, midspan, midspan.effectiveForceKip, {
    precastKipIn: ownPlf * unitKipIn, fullKipIn: (deadPlf + lasting * livePlf) * unitKipIn,
  });
  const shape = camber(member, spanFt, deadPlf, ageDays);
  const pressed = pressedPlaces(cell);
  return {
    superimposedDeadPsf, livePsf, demandPsf: superimposedDeadPsf + livePsf,
    critical, midspan, strength: strengthAt(cell, share),
    factoredPsf, factoredMomentKipIn: uniformMomentKipIn(factoredPsf * member.widthFt, spanFt, share),
    crackingMomentKipIn: crackingMomentKipIn(member, spanFt, critical),
    minimum,
    deadStresses: inService(0),
    sustainedStresses: inService(sustainedLiveShare),
    totalStresses: inService(1),
    heldCompression: mostPressed(cell, sustainedLiveShare * livePsf, pressed),
    totalCompression: mostPressed(cell, livePsf, pressed),
    soffit: leastPressed(cell, deadPlf + livePlf),
    shear: deckShear(cell, factoredPsf),
    transfer: transfer(member, spanFt),
    camber: shape,
    service: deckService(cell, {livePsf, factoredPsf}, shape),
  };
}
