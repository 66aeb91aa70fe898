import {atLeast, atMost, requires, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import {written, type LeastHeight, type StoryStack} from "../story/stack.js";
import {DUCT_PLACES, ductWidthIn} from "./ductRoom.js";
import {GREATEST_ASPECT} from "./ducts.js";
import type {AirPlan} from "./plan.js";
import type {AirResult} from "./result.js";
import {GREATEST_PLENUM_FPM, LEAST_PLENUM_IN} from "./wayBack.js";

type Result = Pick<AirResult, "plan" | "ducts" | "main" | "feeder" | "backFeeder" | "wayBack">;
type Judge = (design: Design, shape: Shape, stack: StoryStack, result: Result, headroom: LeastHeight) => readonly Check[];

const PRACTICE = "common practice (from memory)";

/**
 * Checks of supply and return. What an older file does not give is not checked: where its main lies in plan, how the air
 * goes back, and at what friction.
 */
export function airChecks(...[design, shape, stack, result, headroom]: Parameters<Judge>): Check[] {
  const says = design.air.place !== "fit" || design.air.run !== "plenum" || design.air.way !== "none";
  const judges = [friction, ...(says ? [plan, casingChecks, back] : [])];
  return judges.flatMap((judge) => judge(design, shape, stack, result, headroom));
}

const friction: Judge = ({air}, _shape, _stack, {main, feeder}) => (air.frictionInPer100Ft <= 0 ? [] : [
  atMost({
    id: "main friction", label: "Friction in the main", unit: "in/100 ft", clause: PRACTICE, meetingIsEnough: true,
    holds: "The fan works no harder for the main than is intended.",
    fails: "The fan works harder for the main than is intended: a larger duct, or several mains that share the floor.",
  }, main.friction.inPer100Ft, air.frictionInPer100Ft),
  atMost({
    id: "feeder friction", label: "Friction in a feeder", unit: "in/100 ft", clause: PRACTICE, meetingIsEnough: true,
    holds: "Every feeder gets its air at the rate intended.",
    fails: "The feeders ask more pressure than is intended: larger branches, or feeders in more of the spaces.",
  }, feeder.friction.inPer100Ft, air.frictionInPer100Ft),
]);

const plan: Judge = ({services}, shape, _stack, {plan: {trunk, risers, crossings, spaced, supply}}) => {
  const tee = shape.family === "double tee";
  // Every main has one.
  // Stryker disable next-line EqualityOperator: of two as narrow one is told
  const riser = risers.reduce((least, one) => (one.space.topIn < least.space.topIn ? one : least));
  return [
    trunkRoom(trunk),
    atLeast({
      id: "feeder spaces", label: tee ? "Spaces between stems for feeders" : "Strips for feeders", unit: "", clause: "geometry", meetingIsEnough: true,
      holds: "Feeders and risers have places of their own.",
      fails: "Where this main runs no place is left to a feeder beside riser and columns: a larger floor for each main.",
    }, spaced ? supply.length : 0, 1),
    atMost({
      id: "riser room", label: tee ? "Riser between stems" : "Riser between feeders", unit: "in", clause: "geometry", meetingIsEnough: true,
      holds: tee ? "The riser passes the deck between two stems." : "The riser passes the deck between two feeders; the planks there are cut for it.",
      fails: `The riser is too large to pass between two ${tee ? "stems" : "feeders"}: two risers, a wider main or more mains.`,
    },
    // Stryker disable next-line ArithmeticOperator: twice an inch of air is as much as two over it
    riser.alongIn + 2 * RISER_SIDE_IN, tee ? riser.space.topIn : riserRoomIn(riser, supply, services.branchWidthIn)),
    ...crossings.slice(0, 1).flatMap(({how, neededIn, underIn}) => (
      how === "through its web" ? [requires({
        id: "girder web opening", label: "Feeders that pass the girder", unit: "in", clause: "geometry", word: "needs openings",
        message: "Between ceiling and girder there is no room for a feeder, so each passes through an opening in the girder's web, which its engineer must allow: a main for each row of bays crosses no girder.",
      }, neededIn, underIn)]
        : how === "under the girder" ? [atLeast({
          id: "feeders under the girder", label: "Room under the girder for a feeder", unit: "in", clause: "geometry", meetingIsEnough: true,
          holds: "The feeders dip under the girder and stay above the ceiling.",
          fails: "The feeders do not pass under the girder: flatter branches, a lower ceiling, or a main for each row of bays.",
        }, underIn, neededIn)] : [])),
  ];
};

/** The strip between the beams holds the main, and beside it the return: its duct, or the riser to which it finds another way. */
function trunkRoom({neededIn, rowFromIn, rowToIn, backY0In}: AirPlan["trunk"]): Check {
  const alone = backY0In === undefined;
  return atMost({
    id: "trunk room", label: `Width of ${alone ? "the main" : "main and return"} between beams`, unit: "in", clause: "geometry", meetingIsEnough: true,
    holds: alone ? "The main lies between the beams, with room to join it." : "Main and return lie side by side between the beams, with room to join them.",
    fails: alone ? "The main is too wide for the strip between the beams: a narrower main."
      : "Main and return are too wide for the strip between the beams: a narrower main, or the air back another way.",
  }, neededIn, rowToIn - rowFromIn);
}

/** Room that the feeders next to a riser below a flat deck leave it along the building, in; below 0 where they are wider than their strips. */
function riserRoomIn({space}: AirPlan["risers"][number], supply: AirPlan["supply"], feederIn: number): number {
  return 2 * Math.min(...supply.map(({centerIn}) => Math.abs(centerIn - space.centerIn))) - feederIn;
}

/** Room at each side of a riser in its opening, in (common practice). */
export const RISER_SIDE_IN = 1;

const casingChecks: Judge = ({air, story, bay}, _shape, stack, {ducts: {casing}, plan: {zone}}, headroom) => {
  if (!casing) return [];
  const {kind, widthIn, dropIn, neededWidthIn, neededDropIn, footIn} = casing;
  const stated = air.casing === "stated";
  const least = kind === "strip" ? stack.least : headroom;
  const floorIn2 = 144 * bay.spanFt * zone.rows * (zone.lengthIn / 12);
  return [
    ...(stated ? [
      atLeast({
        id: "casing width", label: `Width of the ${kind}`, unit: "in", clause: "geometry", meetingIsEnough: true,
        holds: `The ducts fit into the ${kind}.`,
        fails: () => `The ducts are wider than the ${kind} allows by ${written(neededWidthIn - widthIn)} in: a wider ${kind}, or a narrower main.`,
      }, widthIn, neededWidthIn),
      atLeast({
        id: "casing drop", label: `Drop of the ${kind}`, unit: "in", clause: "geometry", meetingIsEnough: true,
        holds: `The ducts fit over the ${kind}'s underside.`,
        fails: () => `The ducts hang ${written(neededDropIn - dropIn)} in lower than the ${kind}: a deeper ${kind}, or a flatter duct.`,
      }, dropIn, neededDropIn),
    ] : []),
    ...(dropIn > 0 ? [atLeast({
      id: "casing headroom", label: `Height under the ${kind}`, unit: "in", clause: least.clause, meetingIsEnough: true,
      holds: kind === "strip" ? "The strip is as high as a ceiling must be." : "A head passes under the box.",
      fails: () => `The ${kind} and the height that people need collide by ${written(least.leastIn - footIn)} in: ${stated ? `a shallower ${kind}` : "a flatter duct"}, or a higher story.`,
    }, footIn, least.leastIn)] : []),
    ...(kind === "box" && dropIn > 0 && story.ceiling !== "none" && footIn < stack.least.leastIn ? [atMost({
      id: "box share", label: "Share of the ceiling that the box takes", unit: "%", clause: "IBC 2021 1003.3.1", meetingIsEnough: true,
      holds: "Most of the ceiling stays at its full height.",
      fails: "More than half of the ceiling hangs lower than a ceiling may: a narrower box, or a higher story.",
    }, (100 * widthIn * zone.lengthIn) / floorIn2, 50)] : []),
  ];
};

/** Bare width that the narrowest of the return's spaces leaves a duct, in; 0 where it is too deep for them. */
function returnFeederRoomIn(shape: Shape, returns: AirPlan["returns"], depthIn: number): number {
  return Math.min(...DUCT_PLACES.filter((place) => returns.some((space) => space.place === place)).map((place) => ductWidthIn(shape, place, depthIn)));
}

const back: Judge = ({air, story}, shape, _stack, {plan: {returns, returnMain, crossings}, wayBack, backFeeder}) => {
  const tee = shape.family === "double tee";
  const spaces = air.way === "stems" || (air.way === "trunk" && tee && air.returnEvery > 0);
  const [crossing] = crossings;
  return [
    ...(spaces ? [atLeast({
      id: "return spaces", label: "Spaces between stems for the return", unit: "", clause: "geometry", meetingIsEnough: true,
      holds: "Supply and return have spaces of their own.",
      fails: !tee ? "A flat deck has no stems between which air could go back: a return another way."
        : air.returnEvery === 0 ? "No space between stems is left to the return: a return in every free space, or another way back."
        : "Feeders or risers take every space between stems, and none is left to the return: feeders in fewer spaces, or a return another way.",
    }, returns.length, 1)] : []),
    ...(backFeeder && tee ? [atMost({
      id: "return feeder width", label: "Width of a return feeder between stems", unit: "in", clause: "geometry", meetingIsEnough: true,
      holds: "The return feeders fit between the stems with their insulation.",
      fails: "The return feeders are too wide for the spaces between stems: a return in more of the free spaces, or deeper branches.",
    }, backFeeder.size.widthIn, returnFeederRoomIn(shape, returns, backFeeder.size.depthIn))] : []),
    ...(returnMain ? [atMost({
      id: "return duct shape", label: "Longer over shorter side of the return duct", unit: "", clause: "common practice", meetingIsEnough: true,
      holds: "The return duct is no flatter than is good for it.",
      fails: "A return duct this flat takes a lot of sheet metal and rumbles: a deeper main, or two risers.",
    }, Math.max(returnMain.size.widthIn / returnMain.size.depthIn, returnMain.size.depthIn / returnMain.size.widthIn), GREATEST_ASPECT)] : []),
    ...(wayBack?.freeHeightIn === undefined ? [] : [atLeast({
      id: "return plenum", label: "Plenum left to the return", unit: "in", clause: "our choice", meetingIsEnough: true,
      holds: "Above the ceiling the air finds its way back.",
      fails: story.ceiling === "none" ? "Without a ceiling there is no plenum for the return: hang a ceiling, or another way back."
        : "Between lights and deck no height is left to the return: a lower ceiling, or another way back.",
    }, wayBack.freeHeightIn, LEAST_PLENUM_IN)]),
    ...(air.way === "plenum" && crossing ? [atLeast({
      id: "plenum at the girder", label: "Plenum under the girder", unit: "in", clause: "our choice", meetingIsEnough: true,
      holds: "The air of the far row of bays passes under the girder.",
      fails: "The girder's foot closes the plenum between two rows of bays: a lower ceiling, or a main for each row of bays.",
    }, crossing.underIn, LEAST_PLENUM_IN)] : []),
    ...(wayBack?.velocityFpm === undefined ? [] : [atMost({
      id: "return velocity", label: air.way === "plenum" ? "Velocity of the return in the plenum" : "Velocity of the return between stems", unit: "ft/min", clause: PRACTICE,
      holds: "The return drifts back without a sound.",
      fails: `The return rushes: ${air.way === "plenum" ? "a lower ceiling, two risers" : "a return in more of the free spaces"}, or another way back.`,
    }, wayBack.velocityFpm, GREATEST_PLENUM_FPM)]),
  ];
};
