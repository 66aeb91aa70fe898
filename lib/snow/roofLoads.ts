import {occupancyOf, type Catalog, type Occupancy} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {lazy} from "../kept.js";
import type {RoomLoad} from "../loads/floorLoads.js";
import {reduceLiveLoad, type LoadRule, type Reduction} from "../loads/reduction.js";
import {loadAreas, type LoadArea} from "../loads/tributary.js";
import {LIVE_FACTOR} from "../loads/combinations.js";
import {balancedSnow, type BalancedSnow} from "./balanced.js";
import {snowPlaces, type SnowPlace} from "./elementSnow.js";
import {exposureFactor, SNOW_IMPORTANCE, THERMAL_FACTOR} from "./factors.js";
import {rainLoadPsf} from "./rain.js";
import {combinedOfRoof, factoredOfRoof, greatestOfRoof, serviceOfRoof, type RoofCombined, type RoofLoadsPsf} from "./roofCombinations.js";
import {roofDrifts, roofSizes, wallsAboveFt, type WallsAbove} from "./roofDrifts.js";
import {roofLive, type RoofLive} from "./roofLive.js";
import {snowChecks} from "./snowChecks.js";
import {snowSurface, type SideDrift, type SnowSurface} from "./surface.js";

/** What roof loads depend on besides the fields of the design. */
export interface RoofShape {
  /** Width of one member of the roof's deck, ft. */
  readonly memberWidthFt: number;
  /** Dead load of the roof, psf; the value that the columns use if omitted. */
  readonly deadPsf?: number;
  /** Slope of the finished roof, in/ft; the design's fall, or none where camber makes it, if omitted. */
  readonly riseInPerFt?: number;
  /** From the low edge or the drain to the high line, ft; half of the roof's width if omitted. */
  readonly eaveToRidgeFt?: number;
  /** Height of what rises above the roof's surface along each side, ft; by the walls' fields alone if omitted. */
  readonly wallsFt?: WallsAbove;
  /** Rooms of an open top level, whose live load stands on it in place of a roof's: of several the heaviest. */
  readonly rooms?: readonly RoomLoad[];
}

/** The cases of snow of which an element takes the greatest; drift comes with the balanced snow. */
export type SnowCase = "none" | "balanced" | "rain on snow" | "minimum" | "drift";

/** Snow on one kind of element, where it is greatest. */
export interface SnowOnElement {
  readonly case: SnowCase;
  /** Uniform load of the same effect, psf: the same bending, and the same reaction at its more loaded support. */
  readonly psf: number;
  readonly momentPsf: number;
  readonly shearPsf: number;
  /** Of the places of the roof that were compared under balanced snow with drift, the one where that does most. */
  readonly worst: SnowPlace;
}

/** All loads on one kind of element of the roof, and which combination governs. */
export interface RoofElementLoad {
  readonly area: LoadArea;
  readonly loads: RoofLoadsPsf;
  /** Roof live load; undefined where the roof is occupied. */
  readonly roofLive: RoofLive | undefined;
  /** Live load of the roof's use before its reduction, psf, and that; undefined where nobody uses it. */
  readonly usePsf: number | undefined;
  readonly reduction: Reduction | undefined;
  readonly snow: SnowOnElement;
  readonly factored: readonly RoofCombined[];
  readonly governing: RoofCombined;
  readonly service: readonly RoofCombined[];
  readonly governingService: RoofCombined;
  /** The live load that makes 1.2D + 1.6L as great as the governing combination of what comes and goes, and D + L likewise, psf. */
  readonly asLivePsf: number;
  readonly asServiceLivePsf: number;
}

/** A use of the roof with its live load and the rule of its reduction. */
interface Used {
  readonly occupancy: Occupancy;
  readonly livePsf: number;
  readonly rule: LoadRule;
}

const asUsed = (occupancy: Occupancy): Used => ({occupancy, livePsf: occupancy.livePsf, rule: occupancy.reduction});

/** The loads on the roof of a design. */
export interface RoofLoads {
  readonly deadPsf: number;
  readonly riseInPerFt: number;
  readonly eaveToRidgeFt: number;
  /** Whether the code's table has a value for the exposure of the roof. */
  readonly exposureInTable: boolean;
  readonly snow: BalancedSnow;
  /** Height of what rises above the roof's surface along each side, ft. */
  readonly wallsFt: WallsAbove;
  /** Every possible drift, those that do not count with the reason. */
  readonly drifts: readonly SideDrift[];
  readonly surface: SnowSurface;
  /** R, psf. */
  readonly rainPsf: number;
  /** What the roof is used for; undefined where nobody uses it. */
  readonly occupancy: Occupancy | undefined;
  readonly elements: readonly RoofElementLoad[];
  readonly checks: readonly Check[];
}

/**
 * Roof live load, snow and rain on the deck, beams and columns of a design's roof, by ASCE 7-16 chapters 2, 4, 7 and 8:
 * for each the greatest that it meets anywhere on the roof, as a uniform load, and the combination that governs.
 *
 * Not counted: snow that slides off a higher roof (7.9; it is assumed flat), partial loading of continuous members
 * (7.5; all spans here are simple), unbalanced snow of steeper roofs (7.6; a check says so), equipment on the roof.
 *
 * @throws InputError if the occupancy of an occupied roof is not in the table
 */
export function roofLoads(design: Design, catalog: Catalog, shape: RoofShape): RoofLoads {
  const {snow: field, bay, roof} = design;
  const sizes = roofSizes(design);
  const deadPsf = shape.deadPsf ?? design.column.roofDeadPsf;
  const riseInPerFt = shape.riseInPerFt ?? (roof.drainage === "camber" ? 0 : roof.slopeInPerFt);
  const eaveToRidgeFt = shape.eaveToRidgeFt ?? sizes.widthFt / 2;
  const exposure = exposureFactor(field);
  const snow = balancedSnow({
    groundPsf: field.groundPsf, exposureFactor: exposure.factor, thermalFactor: THERMAL_FACTOR[field.thermal], importance: SNOW_IMPORTANCE[field.risk],
  }, riseInPerFt, eaveToRidgeFt);
  const wallsFt = shape.wallsFt ?? wallsAboveFt(design);
  const drifts = roofDrifts(design, snow, wallsFt);
  const surface = snowSurface(snow.flatPsf, drifts, sizes);
  const rainPsf = rainLoadPsf(field.rainStaticIn, field.rainHydraulicIn);
  const used = shape.rooms?.map(({occupancy, livePsf, rule}): Used => ({occupancy, livePsf, rule}))
    ?? (field.use === "occupied" ? [asUsed(occupancyOf(catalog, field.occupancy, "snow.occupancy"))] : []);
  // A roof of two loads is asked what its elements carry only where snow is given: its one check then compares them.
  const onElements = lazy(() => elementLoads(bay, shape.memberWidthFt, {deadPsf, riseInPerFt, rainPsf, snow, surface, used}));
  const columnsPsf = () => onElements().elements.reduce((most, {area, asServiceLivePsf}) => (area.element.endsWith("column") ? Math.max(most, asServiceLivePsf) : most), 0);
  return {
    deadPsf, riseInPerFt, eaveToRidgeFt, exposureInTable: exposure.inTable, snow, wallsFt, drifts, surface, rainPsf,
    get occupancy() { return onElements().occupancy; },
    get elements() { return onElements().elements; },
    checks: snowChecks(design, {snow, exposureInTable: exposure.inTable, riseInPerFt, wallsFt, columnsPsf}),
  };
}

/** What loads the elements of a roof. */
type OnRoof = Pick<RoofLoads, "deadPsf" | "riseInPerFt" | "rainPsf" | "snow" | "surface"> & {readonly used: readonly Used[]};

/** The loads of each element of a roof, and the use that loads the deck's members most. */
function elementLoads(bay: Design["bay"], memberWidthFt: number, {deadPsf, riseInPerFt, rainPsf, snow, surface, used}: OnRoof): Pick<RoofLoads, "occupancy" | "elements"> {
  const placesOn = snowPlaces(bay, memberWidthFt, surface);
  let occupancy = used[0]?.occupancy;
  const elements = loadAreas(bay, memberWidthFt).map((area): RoofElementLoad => {
    const live = used.length > 0 ? undefined : roofLive(area.tributaryFt2, riseInPerFt);
    const uses = used.map((use) => ({use, reduction: reduceLiveLoad({livePsf: use.livePsf, rule: use.rule, influenceFt2: Math.max(1, area.influenceFt2), floors: 1})}));
    const heaviest = uses.length > 0 ? uses.reduce((most, one) => (one.reduction.reducedPsf > most.reduction.reducedPsf ? one : most)) : undefined;
    const reduction = heaviest?.reduction;
    if (area.element === "deck member") occupancy = heaviest?.use.occupancy;
    const onElement = snowOnElement(snow, placesOn(area.element));
    const loads: RoofLoadsPsf = {D: deadPsf, L: reduction?.reducedPsf ?? 0, Lr: live?.psf ?? 0, S: onElement.psf, R: rainPsf};
    return {area, roofLive: live, usePsf: heaviest?.use.livePsf, reduction, snow: onElement, ...combinedLoads(loads)};
  });
  return {occupancy, elements};
}

/** The load of one element of the roof; every roof has a deck member, an edge beam and a corner column. */
export function roofLoadOn({elements}: Pick<RoofLoads, "elements">, element: LoadArea["element"]): RoofElementLoad {
  const found = elements.find(({area}) => area.element === element);
  if (!found) throw new RangeError(`the roof has no ${element}`);
  return found;
}

function snowOnElement(snow: BalancedSnow, places: readonly SnowPlace[]): SnowOnElement {
  // Stryker disable next-line EqualityOperator: the two part in the tenth digit
  const worst = places.reduce((most, place) => (place.psf > most.psf + 1e-9 ? place : most));
  const evenPsf = snow.flatPsf + snow.rainOnSnowPsf;
  const common = {worst};
  if (snow.site.groundPsf === 0) return {...common, case: "none", psf: 0, momentPsf: 0, shearPsf: 0};
  const even = Math.max(evenPsf, snow.minimumPsf);
  // Only a drift brings more than the even snow. Where none reaches, the two part in the last digit.
  // Stryker disable next-line EqualityOperator: the two part in the tenth digit
  if (worst.psf > even + 1e-9) return {...common, case: "drift", psf: worst.psf, momentPsf: worst.momentPsf, shearPsf: worst.shearPsf};
  // Stryker disable next-line EqualityOperator: of two that come to the same either may be named
  return {...common, case: snow.minimumPsf > evenPsf ? "minimum" : snow.rainOnSnowPsf > 0 ? "rain on snow" : "balanced", psf: even, momentPsf: even, shearPsf: even};
}

function combinedLoads(loads: RoofLoadsPsf): Pick<RoofElementLoad, "loads" | "factored" | "governing" | "service" | "governingService" | "asLivePsf" | "asServiceLivePsf"> {
  const occupied = loads.L > 0;
  const factored = combinedOfRoof(loads, factoredOfRoof(occupied));
  const service = combinedOfRoof(loads, serviceOfRoof(occupied));
  const without = (combined: readonly RoofCombined[]) => combined.reduce((most, {combination, psf}) => Math.max(most, psf - combination.dead * loads.D), 0);
  return {
    loads, factored, service, governing: greatestOfRoof(factored), governingService: greatestOfRoof(service),
    asLivePsf: without(factored) / LIVE_FACTOR, asServiceLivePsf: without(service),
  };
}
