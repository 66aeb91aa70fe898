import {elasticModulusKsi, ruptureModulusKsi} from "../materials/concrete.js";
import {deckState, type DeckState} from "../deck/deckResult.js";
import type {Criteria} from "../deck/criteria.js";
import {camberAfter, timeCamber} from "../member/timeCamber.js";
import {developmentOf} from "../member/development.js";
import type {Member} from "../member/member.js";
import type {PrestressState} from "../member/prestressState.js";
import {timeStepLosses} from "../member/timeLosses.js";
import {ultimateState} from "../member/ultimate.js";
import {JACKING_STRESS_KSI, RELAXATION_TO_RELEASE_KSI} from "../prestress/losses.js";
import type {SectionProperties} from "../sections/shape.js";
import {stressesAlong, strengthAlong} from "./alongSpan.js";
import {limitUses} from "./limitUse.js";
import type {MemberCase} from "./memberFile.js";

/** All that the engine knows of one member, as plain data whose keys end in their unit. */
export function memberReport({name, member, spanFt, livePsf, criteria}: MemberCase) {
  const state = deckState(member, spanFt, criteria, livePsf);
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  return {
    caution: "For learning and preliminary sizing only. Local codes govern; a licensed engineer and the producer design the real structure.",
    name, spanFt,
    section: {
      ...properties(member.section), designation: member.shape.designation, family: member.shape.family,
      dimensions: member.shape.dimensions, widthIn: member.shape.widthIn, webWidthIn: member.shape.webWidthIn, volumeToSurfaceIn: member.volumeToSurfaceIn,
      selfWeightPlf: member.selfWeightPlf, selfWeightPsf: member.selfWeightPlf / member.widthFt,
    },
    compositeSection: member.composite ? {
      ...properties(member.composite), modularRatio: member.composite.modularRatio, toppingIn: member.topping?.thicknessIn,
      toppingWeightPlf: member.toppingWeightPlf, toppingWeightPsf: member.toppingWeightPlf / member.widthFt,
    } : null,
    materials: materials(member),
    strands: strands(member, state),
    loads: {
      superimposedDeadPsf: criteria.superimposedDeadPsf, livePsf, demandPsf: state.demandPsf, factoredPsf: state.factoredPsf,
      sustainedLiveShare: criteria.sustainedLiveShare,
    },
    losses: {
      midspan: losses(state.midspan),
      governingPlace: {xFt: state.critical.share * spanFt, ...losses(state.critical)},
      byTimeSteps: timeSteps(member, spanFt, deadPlf),
    },
    strength: strength(member, spanFt, state),
    safeLoad: {safeLoadPsf: state.safe.safeLoadPsf, governs: state.safe.governs, utilization: use(state)},
    limits: limitUses(member, spanFt, criteria, state.demandPsf),
    checks: state.checks,
    camber: camber(member, spanFt, state, deadPlf),
    service: service(state),
    stressesAlong: stressesAlong(member, spanFt, state),
    strengthAlong: strengthAlong(member, spanFt, state),
    criteria: written(criteria),
  };
}

function properties({areaIn2, inertiaIn4, ybIn, ytIn, sbIn3, stIn3, depthIn}: SectionProperties) {
  return {areaIn2, inertiaIn4, ybIn, ytIn, sbIn3, stIn3, depthIn};
}

function materials(member: Member) {
  const {concrete, topping} = member;
  return {
    concrete: concrete.kind, strengthPsi: concrete.strengthPsi, releaseStrengthPsi: member.releaseStrengthPsi, unitWeightPcf: concrete.unitWeightPcf,
    modulusKsi: member.modulusKsi, releaseModulusKsi: member.releaseModulusKsi, ruptureModulusKsi: ruptureModulusKsi(concrete),
    humidityPercent: member.humidityPercent,
    ...(topping ? {
      toppingStrengthPsi: topping.concrete.strengthPsi, toppingModulusKsi: elasticModulusKsi(topping.concrete.unitWeightPcf, topping.concrete.strengthPsi),
    } : {}),
  };
}

function strands({layout}: Member, state: DeckState) {
  const {effectiveStressKsi} = state.midspan.losses;
  const {transferIn, developmentIn} = developmentOf(effectiveStressKsi, averageStressKsi(state, layout.areaIn2), layout.strand.diameterIn);
  return {
    count: layout.count, diameterIn: layout.strand.diameterIn, areaIn2: layout.areaIn2, profile: layout.profile,
    centroidEndIn: layout.centroidEndIn, centroidMidspanIn: layout.centroidCenterIn,
    rows: layout.rows.map(({count, endIn, centerIn}) => ({count, heightEndIn: endIn, heightMidspanIn: centerIn})),
    jackingStressKsi: JACKING_STRESS_KSI, transferLengthIn: transferIn, developmentLengthIn: developmentIn,
    holdDownForcePerStemKip: state.service.holdDown?.forcePerStemKip ?? null,
  };
}

function averageStressKsi(state: DeckState, areaIn2: number): number {
  return state.strength.compressionKip / areaIn2;
}

function losses({losses: l, initialForceKip, effectiveForceKip, eccentricityIn}: PrestressState) {
  return {
    eccentricityIn, concreteStressAtStrandsKsi: l.concreteStressKsi,
    elasticShorteningKsi: l.elasticKsi, creepKsi: l.creepKsi, shrinkageKsi: l.shrinkageKsi, relaxationKsi: l.relaxationKsi,
    totalKsi: l.totalKsi, totalPercent: (100 * l.totalKsi) / JACKING_STRESS_KSI, relaxationBeforeReleaseKsi: RELAXATION_TO_RELEASE_KSI,
    initialStressKsi: l.initialStressKsi, effectiveStressKsi: l.effectiveStressKsi, initialForceKip, effectiveForceKip,
  };
}

function timeSteps(member: Member, spanFt: number, deadPlf: number) {
  const last = timeStepLosses(member, spanFt, 0.5, deadPlf).at(-1)!;
  const {elastic, creep, shrinkage, relaxation} = last.lostKsi;
  return {
    ageDays: last.day, elasticShorteningKsi: elastic, creepKsi: creep, shrinkageKsi: shrinkage, relaxationKsi: relaxation,
    totalKsi: JACKING_STRESS_KSI - last.stressKsi, effectiveStressKsi: last.stressKsi,
  };
}

function strength(member: Member, spanFt: number, state: DeckState) {
  const {critical, strength: found} = state;
  const {rows, blockIn} = ultimateState(member, critical.share, critical.losses.effectiveStressKsi, found);
  return {
    xFt: critical.share * spanFt, neutralAxisIn: found.neutralAxisIn, stressBlockIn: blockIn, tensileStrain: found.tensileStrain, phi: found.phi,
    strandStressKsi: averageStressKsi(state, member.layout.areaIn2),
    rows: rows.map(({depthIn, strain, stressKsi}) => ({depthIn, strain, stressKsi})),
    compressionKip: found.compressionKip, nominalMomentKipIn: found.nominalMomentKipIn, designMomentKipIn: found.designMomentKipIn,
    factoredMomentKipIn: state.factoredMomentKipIn, crackingMomentKipIn: state.crackingMomentKipIn,
  };
}

function camber(member: Member, spanFt: number, {camber: c, service: s}: DeckState, deadPlf: number) {
  const history = timeCamber(member, spanFt, deadPlf);
  const after = (moment: Parameters<typeof camberAfter>[1]) => camberAfter(history, moment).camberIn;
  return {
    byMultipliers: {
      elasticPrestressIn: c.prestressIn, elasticSelfIn: c.selfIn, elasticToppingIn: c.toppingIn, elasticSuperimposedIn: c.superimposedIn,
      releaseIn: c.releaseIn, erectionIn: c.erectionIn, afterToppingIn: c.toppedIn, longTermIn: c.longTermIn,
    },
    byTimeSteps: {releaseIn: after("release"), erectionIn: after("erection"), afterLoadingIn: after("loading"), longTermIn: after("end")},
    liveDeflectionIn: s.liveDeflection.deflectionIn, crackedInertiaIn4: s.liveDeflection.crackedInertiaIn4,
  };
}

function service({service: s, transfer, shear}: DeckState) {
  return {
    releaseStrengthNeededPsi: transfer.releaseStrengthNeededPsi,
    topSteelAtTransferIn2: Math.max(...transfer.places.map((place) => place.topSteelIn2)),
    movementIn: s.movementIn, allowedMovementIn: s.allowedMovementIn, lastingCamberIn: s.lastingCamberIn,
    governingShear: {share: shear.state.share, factoredKip: shear.factoredKip, concreteKip: shear.strength.concreteKip, designKip: shear.designKip},
    mostStirrups: {share: shear.stirrups.share, forShearIn2PerFt: shear.stirrups.forShearIn2PerFt, leastIn2PerFt: shear.stirrups.leastIn2PerFt},
    contactShearKip: s.contact?.factoredKip ?? null, contactStrengthKip: s.contact?.designKip ?? null,
    endReactionKip: s.bearing.factoredKip, endBearingStrengthKip: s.bearing.designKip,
    frequencyHz: s.vibration?.frequencyHz ?? null, walkingAccelerationOfGravity: s.vibration?.acceleration ?? null,
    fireThicknessIn: s.fire?.thicknessIn ?? null, fireByThicknessHours: s.fire?.byThicknessHours ?? null, fireByCoverHours: s.fire?.byCoverHours ?? null,
    strippingTensionKsi: s.stripping.tensionKsi, haulingTensionKsi: s.onTheRoad.tensionKsi,
    pieceWeightKip: s.handling.weightKip, widthClass: s.handling.widthClass, tiltDegrees: s.handling.tilt?.degrees ?? null, haulingNotes: s.handling.notes,
  };
}

/** The criteria without the tables that stand behind them. */
function written({fire, walking, ...rest}: Criteria) {
  return {...rest, walking: walking ?? "none", fireHours: fire?.hours ?? 0, fireRestrained: fire?.restrained ?? false, aggregate: fire?.aggregate ?? null};
}

function use({demandPsf, safe}: DeckState): number {
  return safe.safeLoadPsf > 0 ? demandPsf / safe.safeLoadPsf : 99;
}
