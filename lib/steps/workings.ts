import type {Evaluation} from "../evaluate.js";
import {SCATTER} from "../topping/scatter.js";
import {mainFrictionWorking, mainHeightWorking, wayBackWorking} from "./air.js";
import {camberWorking} from "./camber.js";
import {cellWorking} from "./cell.js";
import {averageDaylightWorking, noSkyWorking, skyComponentWorking} from "./daylight.js";
import {factoredWorking, serviceStressWorking, shearWorking, strengthWorking} from "./deck.js";
import {beamDepthWorking, beamLoadsWorking, beamStrengthWorking, seatWorking} from "./edgeBeam.js";
import {ledgePunchingWorking, ledgeSteelWorking, padWorking} from "./edgeBeamLedge.js";
import {torsionDesignWorking, torsionWorking} from "./edgeBeamTwist.js";
import {diaphragmWorking} from "./columns.js";
import {openTopWorking, pondingWorking, roofDemandWorking, roofFallWorking, roofSafeLoadWorking, roofSagWorking} from "./roof.js";
import {girderCamberWorking, girderDepthWorking, girderLoadsWorking, girderServiceWorking, girderShearWorking, girderStrengthWorking, girderTwistWorking} from "./girder.js";
import {deadLoadWorking, demandWorking, reductionWorking} from "./loads.js";
import {developmentWorking, holdDownWorking, topSteelWorking} from "./ends.js";
import {parkingHeightWorking, parkingModuleWorking, parkingStallsWorking, rampWorking} from "./parking.js";
import {lossesWorking} from "./prestress.js";
import {sectionWorking} from "./section.js";
import {sagWorking, walkingWorking} from "./service.js";
import type {Working} from "../step.js";
import {roofLoadOn} from "../snow/roofLoads.js";
import {balancedSnowWorking, rainWorking, roofCombinationWorking, roofLiveWorking, snowDriftWorking, snowSpanWorking} from "./snow.js";
import {ductWorking, storyWorking} from "./story.js";
import {timeStepWorking} from "./timeStep.js";
import {buildingHeightWorking, deckEdgeWorking, endSpandrelWorking, endStripWorking, wallWeightWorking} from "./walls.js";
import {extraWeightWorking, spreadWorking, toppingWorking} from "./topping.js";

/** Every "why?" of a design by name, in the order of the job. Each is built when asked for. */
export const WORKINGS = {
  deadLoad: deadLoadWorking,
  demand: demandWorking,
  edgeBeamReduction: (e: Evaluation) => reductionWorking(e.edgeBeam.loads.load),
  section: (e: Evaluation) => sectionWorking(e.member),
  losses: (e: Evaluation) => lossesWorking(e.member, e.design.bay.spanFt, e.deck.midspan, e.deck.superimposedDeadPsf * e.member.widthFt),
  timeSteps: (e: Evaluation) => timeStepWorking(e.member, e.design.bay.spanFt, e.deck.superimposedDeadPsf * e.member.widthFt),
  serviceStress: (e: Evaluation) => serviceStressWorking(e.member, e.design.bay.spanFt, e.deck),
  factored: (e: Evaluation) => factoredWorking(e.member, e.design.bay.spanFt, e.deck),
  strength: (e: Evaluation) => strengthWorking(e.member, e.deck),
  shear: (e: Evaluation) => shearWorking(e.member, e.design.bay.spanFt, e.deck),
  safeLoad: (e: Evaluation) => cellWorking(e.member, e.design.bay.spanFt, e.deck.criteria),
  camber: (e: Evaluation) => camberWorking(e),
  development: (e: Evaluation) => developmentWorking(e.member, e.design.bay.spanFt, e.deck),
  sag: (e: Evaluation) => sagWorking(e.member, e.design.bay.spanFt, e.deck),
  walking: (e: Evaluation) => walkingWorking(e.member, e.design.bay.spanFt, e.deck),
  topSteel: (e: Evaluation) => topSteelWorking(e.member, e.deck),
  holdDown: (e: Evaluation) => holdDownWorking(e.member, e.design.bay.spanFt, e.deck),
  topping: toppingWorking,
  extraWeight: extraWeightWorking,
  spread: (e: Evaluation) => spreadWorking(e, SCATTER),
  beamDepth: beamDepthWorking,
  seat: seatWorking,
  beamLoads: beamLoadsWorking,
  beamStrength: beamStrengthWorking,
  torsion: torsionWorking,
  torsionDesign: torsionDesignWorking,
  ledgePunching: ledgePunchingWorking,
  ledgeSteel: ledgeSteelWorking,
  pad: padWorking,
  girderDepth: girderDepthWorking,
  girderLoads: girderLoadsWorking,
  girderStrength: girderStrengthWorking,
  girderService: girderServiceWorking,
  girderShear: girderShearWorking,
  girderTwist: girderTwistWorking,
  girderCamber: girderCamberWorking,
  snow: balancedSnowWorking,
  snowDrift: snowDriftWorking,
  snowSpan: snowSpanWorking,
  roofLive: (e: Evaluation) => roofLiveWorking(e, roofLoadOn(e.roofLoads, "deck member")),
  rain: rainWorking,
  roofCombination: (e: Evaluation) => roofCombinationWorking(roofLoadOn(e.roofLoads, "deck member")),
  openTop: openTopWorking,
  buildingHeight: buildingHeightWorking,
  walls: wallWeightWorking,
  endSpandrel: endSpandrelWorking,
  deckEdge: deckEdgeWorking,
  endStrip: endStripWorking,
  roofDemand: roofDemandWorking,
  roofFall: roofFallWorking,
  ponding: pondingWorking,
  roofSafeLoad: roofSafeLoadWorking,
  roofSag: roofSagWorking,
  diaphragm: diaphragmWorking,
  story: storyWorking,
  ducts: ductWorking,
  mainFriction: mainFrictionWorking,
  wayBack: wayBackWorking,
  mainHeight: mainHeightWorking,
  parkingModule: parkingModuleWorking,
  parkingStalls: parkingStallsWorking,
  parkingHeight: parkingHeightWorking,
  ramp: rampWorking,
  averageDaylight: averageDaylightWorking,
  noSky: noSkyWorking,
  skyComponent: skyComponentWorking,
} satisfies Record<string, (evaluation: Evaluation) => Working>;

export type WorkingName = keyof typeof WORKINGS;
