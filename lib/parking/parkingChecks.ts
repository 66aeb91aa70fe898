import {atLeast, atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {pairText} from "../pair.js";
import {feetAndInches} from "../units.js";
import {VAN_CLEAR_IN} from "./accessible.js";
import type {ClearPlace, Overhead} from "./heights.js";
import {BREAK_PERCENT, DRIVEN_SLOPE_PERCENT, PARKED_SLOPE_PERCENT} from "./ramp.js";
import type {ParkingResult} from "./result.js";
import {USUAL_AISLE_IN} from "./stall.js";

/** Narrowest stall in which people can still open a door and get out, in: 8 ft 6 in (common practice). */
export const NARROWEST_STALL_IN = 102;
/** Minimum height of a barrier that stops a car where the floor beyond drops by more than a foot, in (IBC 2021 406.4.2). */
export const BARRIER_IN = 33;
/** Falls of a parked floor that drain and on which accessible stalls may lie, in per ft (common practice; ADA 2010 Standards 502.4). */
export const LEAST_DRAIN_IN_PER_FT = 1 / 8;
export const MOST_DRAIN_IN_PER_FT = 1 / 4;

/** What mends a height, by what hangs there. */
const MENDS: Readonly<Record<Exclude<Overhead, "box">, string>> = {
  "deck": "raise the story",
  "ceiling": "raise the story",
  "edge beam": "a shallower ledge, stalls set back past it, or a higher story",
  "girder": "a shallower girder, or a higher story",
  "pipes": "keep less height for the pipes, or raise the story",
  "pipes past the box": "keep less height for the pipes, or raise the story",
  "ducts": "a flatter duct, or a higher story",
  "signs": "signs that hang less low, or a higher story",
};

/** What mends it there; a box that is stated has a drop of its own. */
function mends({over}: ClearPlace, {air}: Pick<Design, "air">): string {
  if (over !== "box") return MENDS[over];
  return `${air.casing === "stated" ? `a shallower ${air.run === "strip" ? "strip" : "box"}` : "a flatter duct"}, or a higher story`;
}

type Computed = Omit<ParkingResult, "checks">;

/** Checks of parking: heights, module, stalls, accessible stalls, ramp, drainage and barrier. */
export function parkingChecks(design: Design, result: Computed): Check[] {
  return [...heightChecks(design, result), ...planChecks(design, result), ...accessibleChecks(design, result), ...rampChecks(design, result), ...floorChecks(design)];
}

function heightChecks(design: Design, {heights, accessible}: Computed): Check[] {
  const {parking} = design;
  if (!heights) return [];
  const {least, vanIn} = heights;
  const vansInside = parking.vans === "inside" && accessible.vans > 0;
  // A van's height is that of the lowest place on its way, or of one over its stall, to the last digit.
  const lowOnVans: ClearPlace = heights.leastOnWay.clearIn === vanIn ? heights.leastOnWay
    : heights.places.find(({onTheWay, overNone, clearIn}) => !onTheWay && !overNone && clearIn === vanIn) ?? heights.leastOnWay;
  return [
    atLeast({
      id: "parking height", label: `Clear height over cars, under ${least.words}`, unit: "in", clause: parking.clearIn > 84 ? "stated; IBC 2021 406.2.2 at the least" : "IBC 2021 406.2.2", meetingIsEnough: true,
      holds: "Cars, and those who walk to them, pass everywhere.",
      fails: `Under ${least.words} ${feetAndInches(Math.floor(4 * least.clearIn + 1e-6) / 4, 4, true)} is left where ${feetAndInches(parking.clearIn)} is wanted: ${mends(least, design)}.`,
    }, least.clearIn, parking.clearIn),
    ...(vansInside ? [atLeast({
      id: "van height", label: `Clear height for accessible vans, under ${lowOnVans.words}`, unit: "in", clause: "ADA 2010 Standards 502.5", meetingIsEnough: true,
      holds: "A van with a raised roof reaches its stall.",
      fails: `Under ${lowOnVans.words} a van lacks ${pairText(VAN_CLEAR_IN - vanIn, 0, 1).asked} in on its way or over its stall: a higher story, or park the vans outside.`,
    }, vanIn, VAN_CLEAR_IN)] : []),
  ];
}

function planChecks({parking, bay}: Design, {level, perLevel}: Computed): Check[] {
  const along = parking.rows === "along";
  const farther = along ? "a longer span" : "columns farther apart";
  const bays = along ? bay.baysAcross : bay.baysAlong;
  if (level.modules.length === 0) {
    return [atLeast({
      id: "parking bays", label: "Bays across the rows for one module", unit: "", clause: "geometry",
      holds: "", fails: "A module is said to take more bays than the building has: fewer bays to a module.",
    }, bays, parking.baysPerModule)];
  }
  // Stryker disable next-line EqualityOperator: of two as narrow one is told
  const narrowest = level.modules.reduce((least, one) => (one.clearIn < least.clearIn ? one : least));
  const lackIn = narrowest.neededIn - narrowest.clearIn;
  // Both rows moved to the line of their heads: less set back mends only what this makes up for.
  const backIn = 2 * parking.setbackIn;
  const aisles = level.modules.filter(({rows}) => rows.length > 0).map(({clearAisleIn}) => clearAisleIn);
  return [
    atLeast({
      id: "parking module", label: "Clear width of the module: two rows and their aisle", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "Two rows of stalls stand along each aisle.",
      fails: `Two rows and their aisle lack ${feetAndInches(Math.max(0.125, lackIn), 8)}: ${farther}${backIn >= lackIn ? ", stalls set back less" : ""}, or a narrower aisle.`,
    }, narrowest.clearIn, narrowest.neededIn),
    ...(aisles.length > 0 ? [atLeast({
      id: "parking aisle", label: "Aisle clear of columns", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "No column narrows the aisle.",
      fails: `Columns stand in the aisle: ${parking.baysPerModule > 1 ? "one bay to a module" : `${farther}, or a narrower aisle`}.`,
    }, Math.min(...aisles), parking.aisleIn)] : []),
    atLeast({
      id: "usual aisle", label: "Aisle against what cars need to turn in", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "A car turns into its stall in one move.",
      fails: "Most cars need more than one move to turn into their stalls: a wider aisle.",
    }, parking.aisleIn, USUAL_AISLE_IN[parking.angle]),
    atLeast({
      id: "stall width", label: "Width of a stall", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "Doors open between two cars.",
      fails: "Doors of neighbors hit: wider stalls.",
    }, parking.stallWidthIn, NARROWEST_STALL_IN),
    atLeast({
      id: "parking stalls", label: "Stalls of a level", unit: "", clause: "geometry", meetingIsEnough: true,
      holds: "There is room for cars.",
      fails: aisles.length === 0 ? `Not even one row fits beside its aisle: ${farther}, or a narrower aisle.`
        : `No stall fits between the columns: ${along ? "columns farther apart" : "a longer span"}, ${parking.endFt > 0 ? "narrower stalls, or less kept free at the ends" : "or narrower stalls"}.`,
    }, perLevel, 1),
  ];
}

function accessibleChecks({parking}: Design, {accessible, perLevel}: Computed): Check[] {
  if (perLevel === 0) return [];
  return [atLeast({
    id: "accessible stalls", label: "Accessible stalls on the lowest level", unit: "", clause: "ADA 2010 Standards 208.2", meetingIsEnough: true,
    holds: "As many accessible stalls as the building's stalls need stand on the lowest level, with their access aisles.",
    fails: `The accessible stalls with their access aisles find too little ${parking.ramp === "parked" ? "level floor: a ramp for driving alone" : "room between the columns: columns farther apart"}.`,
  }, accessible.placed, accessible.inside)];
}

function rampChecks({parking}: Design, {ramp}: Computed): Check[] {
  if (!ramp) return [];
  const parked = parking.ramp === "parked";
  return [
    atMost({
      id: "ramp slope", label: "Slope of the ramp", unit: "%", clause: parked ? "IBC 2021 406.4.3" : "common practice", meetingIsEnough: true,
      holds: parked ? "Cars may park on it." : "Cars climb it in any weather but ice.",
      fails: parked ? "Cars may not park on a ramp this steep: a gentler slope." : "A ramp this steep frightens drivers: a gentler slope.",
    }, ramp.slopePercent, parked ? PARKED_SLOPE_PERCENT : DRIVEN_SLOPE_PERCENT),
    atMost({
      id: "ramp break", label: "Change of slope at the ramp's ends", unit: "%", clause: "common practice", meetingIsEnough: true,
      holds: "Cars do not scrape at top and bottom.",
      fails: `Cars scrape at top and bottom: ${parking.rampBlendFt > 0 ? "a gentler slope" : "a blend at each end, or a gentler slope"}.`,
    }, ramp.breakPercent, BREAK_PERCENT),
    atMost({
      id: "ramp length", label: "Length of the ramp's run", unit: "in", clause: "geometry", meetingIsEnough: true,
      holds: "The ramp reaches the next level within the building's length.",
      fails: `The ramp is ${feetAndInches(Math.max(1, ramp.lengthIn - ramp.roomIn), 1, true)} too long: ${parking.rampRuns === 1 ? "two runs to a story, " : ""}a steeper slope, or a longer building.`,
    }, ramp.lengthIn, ramp.roomIn),
  ];
}

function floorChecks({parking, edgeBeam}: Design): Check[] {
  const upstandIn = edgeBeam.kind === "below" ? 0 : edgeBeam.upstandIn;
  return [
    atLeast({
      id: "parking drainage", label: "Slope of the parked floor to its drains", unit: "in/ft", clause: "common practice; IBC 2021 406.2.4", meetingIsEnough: true,
      holds: "Water that cars bring in runs off.",
      fails: "Puddles and ice stay on the floor: more slope to the drains.",
    }, parking.drainInPerFt, LEAST_DRAIN_IN_PER_FT),
    atMost({
      id: "accessible slope", label: "Slope under accessible stalls", unit: "in/ft", clause: "ADA 2010 Standards 502.4", meetingIsEnough: true,
      holds: "A wheelchair stays where it is put.",
      fails: "A wheelchair rolls off: less slope to the drains.",
    }, parking.drainInPerFt, MOST_DRAIN_IN_PER_FT),
    ...(parking.place === "below" ? [] : [atLeast({
      id: "vehicle barrier", label: "Barrier at the edge of the parked floor", unit: "in", clause: "IBC 2021 406.4.2", meetingIsEnough: true,
      holds: "The edge beam's upstand is high enough to hold a car; its strength for the car's push is a check of its own, which is not made here.",
      fails: `Nothing as high as a bumper holds a car at the edge: ${edgeBeam.kind === "below" ? "a beam beside the deck, with an upstand" : "a higher upstand"}.`,
    }, upstandIn, BARRIER_IN)]),
  ];
}
