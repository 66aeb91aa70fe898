import {bearingStrengthKip} from "../member/endBearing.js";
import type {Camber} from "../member/camber.js";
import {CRACK_CONTROL_KSI, crackedStateAt} from "../member/crackedSection.js";
import {liveDeflection, type LiveDeflection} from "../member/deflection.js";
import {developmentShares, partlyDevelopedStrength} from "../member/development.js";
import {fireRating, type FireRating} from "../member/fire.js";
import type {FlexuralStrength} from "../member/flexure.js";
import {handling, type Handling} from "../member/handling.js";
import {holdDown, type HoldDown} from "../member/holdDown.js";
import {horizontalShearKip} from "../member/horizontalShear.js";
import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {nearestShearShare} from "../member/shearPlace.js";
import {LASTING_MULTIPLIER, allowedSagIn, countedMovementIn} from "../member/sagLimit.js";
import {memberStrength} from "../member/strength.js";
import {handled, type Handled} from "../member/stripping.js";
import {vibration, type Vibration} from "../member/vibration.js";
import type {Criteria} from "./criteria.js";

/** What is asked of a deck member on its span, besides the criteria. */
export interface DeckLoads {
  readonly superimposedDeadPsf: number;
  readonly livePsf: number;
  readonly factoredPsf: number;
}

/** How a deck member behaves beside its strength and stresses: ends, sag, life, fire, handling. */
export interface DeckService {
  /** Strength where strands take hold, at the place where the factored moment comes nearest to it. */
  readonly development: {readonly share: number; readonly strength: FlexuralStrength; readonly factoredMomentKipIn: number};
  readonly liveDeflection: LiveDeflection;
  /** Movement that the sag limit counts, and what it allows, in. */
  readonly movementIn: number;
  readonly allowedMovementIn: number;
  /** Camber after years under all that stays, in: dead load, and the lasting part of the live load. */
  readonly lastingCamberIn: number;
  /** Moment at which strands of a cracked section are stretched as far as crack control allows, and the service moment, kip-in. */
  readonly crackControlKipIn: number;
  readonly serviceMomentKipIn: number;
  /** Factored shear near the ends and what the contact with the topping passes on, kip; undefined without topping. */
  readonly contact: {readonly factoredKip: number; readonly designKip: number} | undefined;
  /** Factored reaction of one end and what its concrete bears, kip. */
  readonly bearing: {readonly factoredKip: number; readonly designKip: number};
  readonly vibration: Vibration | undefined;
  readonly fire: FireRating | undefined;
  readonly stripping: Handled;
  readonly onTheRoad: Handled;
  readonly handling: Handling;
  readonly holdDown: HoldDown | undefined;
}

/** Works out ends, sag, liveliness, fire and handling of a deck member under the floor's loads. */
export function deckService(member: Member, spanFt: number, criteria: Criteria, loads: DeckLoads, shape: Camber): DeckService {
  const deadPlf = loads.superimposedDeadPsf * member.widthFt;
  const livePlf = loads.livePsf * member.widthFt;
  const midspan = prestressState(member, spanFt, 0.5, deadPlf);
  const live = liveDeflection(member, spanFt, midspan, deadPlf, livePlf);
  const lastingIn = (share: number) => liveDeflection(member, spanFt, midspan, deadPlf, share * livePlf).deflectionIn;
  const {sagLimit, sustainedLiveShare, walking, fire, seatIn} = criteria;
  const nearest = nearestShearShare(member, spanFt);
  const factoredKip = (factoredPlf: number, share: number) => (factoredPlf * spanFt * (0.5 - share)) / 1000;
  const factoredPlf = loads.factoredPsf * member.widthFt;
  const contactKip = horizontalShearKip(member);
  return {
    development: weakestDevelopment(member, spanFt, deadPlf, factoredPlf, midspan),
    liveDeflection: live,
    movementIn: countedMovementIn(sagLimit, shape, live.deflectionIn, sustainedLiveShare),
    allowedMovementIn: allowedSagIn(sagLimit, spanFt),
    lastingCamberIn: shape.longTermIn - LASTING_MULTIPLIER * lastingIn(sustainedLiveShare),
    crackControlKipIn: crackedStateAt(member, midspan, CRACK_CONTROL_KSI.most).momentKipIn,
    serviceMomentKipIn: uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf + deadPlf + livePlf, spanFt, 0.5),
    contact: contactKip === undefined ? undefined : {factoredKip: factoredKip(factoredPlf, nearest), designKip: contactKip},
    bearing: {factoredKip: factoredKip(factoredPlf, 0), designKip: bearingStrengthKip(member, seatIn)},
    vibration: walking && vibration(member, spanFt, deadPlf, walking),
    fire: fire && fireRating(member, fire),
    stripping: handled(member, spanFt, "stripping"),
    onTheRoad: handled(member, spanFt, "hauling"),
    handling: handling(member, spanFt),
    holdDown: holdDown(member, spanFt),
  };
}

/** The place near the ends where the factored moment comes nearest to what partly developed strands carry. */
function weakestDevelopment(
  member: Member, spanFt: number, deadPlf: number, factoredPlf: number, midspan: PrestressState,
): DeckService["development"] {
  const fse = midspan.losses.effectiveStressKsi;
  const developed = memberStrength(member, 0.5, fse);
  const places = developmentShares(member, spanFt, fse, developed).map((share) => ({
    share,
    strength: partlyDevelopedStrength(member, spanFt, prestressState(member, spanFt, share, deadPlf), developed),
    factoredMomentKipIn: uniformMomentKipIn(factoredPlf, spanFt, share),
  }));
  const used = (place: (typeof places)[number]) => place.factoredMomentKipIn / place.strength.designMomentKipIn;
  return places.reduce((weakest, place) => (used(place) > used(weakest) ? place : weakest));
}
