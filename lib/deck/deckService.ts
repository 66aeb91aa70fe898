import {bearingStrengthKip} from "../member/endBearing.js";
import type {Camber} from "../member/camber.js";
import {CRACK_CONTROL_KSI, crackedStateAt} from "../member/crackedSection.js";
import {liveDeflection, type LiveDeflection} from "../member/deflection.js";
import {fireRating, type FireRating} from "../member/fire.js";
import type {FlexuralStrength} from "../member/flexure.js";
import {handling, type Handling} from "../member/handling.js";
import {holdDown, type HoldDown} from "../member/holdDown.js";
import {horizontalShearKip} from "../member/horizontalShear.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {nearestShearShare} from "../member/shearPlace.js";
import {LASTING_MULTIPLIER, allowedSagIn, countedMovementIn} from "../member/sagLimit.js";
import {handled, type Handled} from "../member/stripping.js";
import {vibration, type Vibration} from "../member/vibration.js";
import type {Cell} from "./cell.js";
import {developmentLoad} from "./developmentLoad.js";

/** The load on a deck member, besides what the rules tell. */
export interface DeckLoads {
  readonly livePsf: number;
  readonly factoredPsf: number;
}

/** How a deck member behaves beside its strength and stresses: ends, sag, life, fire, handling. */
export interface DeckService {
  /** Strength where strands take hold, at the place where the factored moment comes nearest to it. */
  readonly development: {readonly share: number; readonly strength: FlexuralStrength; readonly factoredMomentKipIn: number};
  readonly liveDeflection: LiveDeflection;
  /** Deflection that the sag limit counts, and what it allows, in. */
  readonly movementIn: number;
  readonly allowedMovementIn: number;
  /** Camber in the long term under all that stays, in: dead load, and the lasting part of the live load. */
  readonly lastingCamberIn: number;
  /** Moment at which strands of a cracked section are stretched as far as crack control allows, and the service moment, kip-in. */
  readonly crackControlKipIn: number;
  readonly serviceMomentKipIn: number;
  /** Factored shear near the ends and what the contact with the topping passes on, kip; undefined without topping. */
  readonly contact: {readonly factoredKip: number; readonly designKip: number} | undefined;
  /** Factored reaction of one end and what its concrete can take, kip. */
  readonly bearing: {readonly factoredKip: number; readonly designKip: number};
  readonly vibration: Vibration | undefined;
  readonly fire: FireRating | undefined;
  readonly stripping: Handled;
  readonly onTheRoad: Handled;
  readonly handling: Handling;
  readonly holdDown: HoldDown | undefined;
}

/** Computes ends, sag, vibration, fire and handling of a deck member under its load; `shape` is its camber under the dead load. */
export function deckService(cell: Cell, loads: DeckLoads, shape: Camber): DeckService {
  const {member, spanFt, rules: {sagLimit, sustainedLiveShare, walking, fire, seatIn}, deadPlf, midspan} = cell;
  const livePlf = loads.livePsf * member.widthFt;
  const live = liveDeflection(member, spanFt, midspan, deadPlf, livePlf);
  const lastingIn = (share: number) => liveDeflection(member, spanFt, midspan, deadPlf, share * livePlf).deflectionIn;
  const nearest = nearestShearShare(member, spanFt);
  const factoredPlf = loads.factoredPsf * member.widthFt;
  const factoredKip = (share: number) => (factoredPlf * spanFt * (0.5 - share)) / 1000;
  const contactKip = horizontalShearKip(member);
  const {share, strength} = developmentLoad(cell);
  return {
    development: {share, strength, factoredMomentKipIn: uniformMomentKipIn(factoredPlf, spanFt, share)},
    liveDeflection: live,
    movementIn: countedMovementIn(sagLimit, shape, live.deflectionIn, sustainedLiveShare),
    allowedMovementIn: allowedSagIn(sagLimit, spanFt),
    lastingCamberIn: shape.longTermIn - LASTING_MULTIPLIER * lastingIn(sustainedLiveShare),
    crackControlKipIn: crackedStateAt(member, midspan, CRACK_CONTROL_KSI.most).momentKipIn,
    serviceMomentKipIn: uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf + deadPlf + livePlf, spanFt, 0.5),
    contact: contactKip === undefined ? undefined : {factoredKip: factoredKip(nearest), designKip: contactKip},
    bearing: {factoredKip: factoredKip(0), designKip: bearingStrengthKip(member, seatIn)},
    vibration: walking && vibration(member, spanFt, deadPlf, walking),
    fire: fire && fireRating(member, fire),
    stripping: handled(member, spanFt, "stripping"),
    onTheRoad: handled(member, spanFt, "hauling"),
    handling: handling(member, spanFt),
    holdDown: holdDown(member, spanFt),
  };
}
