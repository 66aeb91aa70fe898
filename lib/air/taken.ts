import type {Design} from "../design/design.js";
import {Kept} from "../kept.js";
import type {Shape} from "../sections/shape.js";
import {girdersBetween} from "./crossings.js";
import {mainSections, type MainSection} from "./flows.js";
import type {FramePlan} from "./framePlan.js";
import {stemSpaces, type StemSpace} from "./spaces.js";
import type {AirZone} from "./zone.js";

/** What a main with its feeders, risers and return takes along the building, wherever it lies across it. */
export interface TakenSpaces {
  readonly risers: readonly StemSpace[];
  readonly supply: readonly StemSpace[];
  /** Whether feeders have spaces of their own; else one runs where no duct belongs, beside the riser, a column or the end wall. */
  readonly spaced: boolean;
  /** Spaces with a return feeder, or open for the return. */
  readonly returns: readonly StemSpace[];
  /** Air in the main, and in the return duct beside it, section by section. */
  readonly sections: readonly MainSection[];
  readonly returnSections: readonly MainSection[];
}

/** A main's floor and its air; of the return what a duct beside the main brings back, cfm, undefined where there is none. */
interface Served {
  readonly frame: Pick<FramePlan, "columnsAlongIn" | "columnHalfIn" | "girders">;
  readonly zone: AirZone;
  readonly flowCfm: number;
  readonly ductedBackCfm: number | undefined;
}

/** Spaces that mains took last: floors that differ in their edge beams and girders have the same along the building. */
const KNOWN = new WeakMap<Shape, Kept<TakenSpaces>>();
/** Of each shape of deck member as many are kept. */
const MOST_KNOWN = 30;

/**
 * The spaces that a main takes. Its feeders take every n-th space between stems over its part of the floor, each with the
 * same share of its air; a riser takes a space for itself, at best one that no feeder wants.
 */
export function takenSpaces(design: Pick<Design, "air" | "bay" | "services">, shape: Shape, served: Served): TakenSpaces {
  const {air: {supplyEvery, returnEvery, riser}, bay, services} = design;
  const {frame, zone, flowCfm, ductedBackCfm} = served;
  // Where feeders pass a line of interior columns, a space with a column in it is closed to them.
  const columnHalfIn = girdersBetween(frame, zone).length > 0 ? frame.columnHalfIn : undefined;
  let known = KNOWN.get(shape);
  if (!known) KNOWN.set(shape, known = new Kept(MOST_KNOWN));
  const key = `${bay.beamSpanFt} ${bay.baysAlong} ${columnHalfIn} ${zone.lengthIn} ${supplyEvery} ${returnEvery} ${riser} ${services.branchWidthIn} ${flowCfm} ${ductedBackCfm}`;
  return known.get(key, () => newlyTaken(design, shape, served, columnHalfIn));
}

function newlyTaken(design: Pick<Design, "air" | "bay" | "services">, shape: Shape, {frame, zone, flowCfm, ductedBackCfm}: Served, columnHalfIn: number | undefined): TakenSpaces {
  const {air, services} = design;
  const tee = shape.family === "double tee";
  const all = stemSpaces(design, shape);
  const closed = ({centerIn}: StemSpace, widthIn: number) => columnHalfIn !== undefined && frame.columnsAlongIn.some((at) => Math.abs(at - centerIn) < columnHalfIn + widthIn / 2 + 1);
  const inside = all.filter((space) => space.place !== "end of the building" && space.centerIn < zone.lengthIn && !closed(space, services.branchWidthIn));
  const wanted = inside.filter(({index}) => index % (tee ? air.supplyEvery : 2) === 0);
  const risers = riserSpaces(all, wanted, air.riser, zone.lengthIn);
  const left = wanted.filter((space) => !risers.includes(space));
  const spaced = left.length > 0;
  const supply = spaced ? left : fallback(all, risers, zone.lengthIn);
  const free = inside.filter((space) => !supply.includes(space) && !risers.includes(space) && !closed(space, space.topIn));
  // Stryker disable next-line EqualityOperator: of every nothingth space there is none
  const returns = tee && ductedBackCfm !== undefined && ductedBackCfm >= 1 && air.returnEvery > 0 ? free.filter((_, i) => i % air.returnEvery === 0) : [];
  const risersIn = risers.map(({centerIn}) => centerIn);
  const gathers = returns.length > 0 ? returns : supply;
  return {
    risers, supply, spaced, returns,
    sections: mainSections(flowCfm, risersIn, supply.map(({centerIn}) => centerIn)),
    returnSections: ductedBackCfm === undefined ? [] : mainSections(ductedBackCfm, risersIn, gathers.map(({centerIn}) => centerIn)),
  };
}

/** The spaces that risers take, nearest to where they are wanted, and of two as near one that no feeder wants. */
function riserSpaces(all: readonly StemSpace[], wanted: readonly StemSpace[], riser: Design["air"]["riser"], lengthIn: number): StemSpace[] {
  const places = riser === "end" ? [0] : riser === "middle" ? [lengthIn / 2] : [0, lengthIn];
  const found: StemSpace[] = [];
  for (const place of places) {
    const free = all.filter((space) => !found.includes(space) && space.centerIn <= lengthIn + space.topIn);
    const nearest = nearestTo(free, place);
    const unwanted = nearestTo(free.filter((space) => !wanted.includes(space)), place);
    if (!nearest) continue;
    const near = unwanted && away(unwanted, place) <= away(nearest, place) + 2 * nearest.topIn;
    found.push(near ? unwanted : nearest);
  }
  return found;
}

const away = ({centerIn}: StemSpace, placeIn: number): number => Math.abs(centerIn - placeIn);

function nearestTo(spaces: readonly StemSpace[], placeIn: number): StemSpace | undefined {
  return spaces.reduce<StemSpace | undefined>((best, one) => (best && away(best, placeIn) <= away(one, placeIn) ? best : one), undefined);
}

/** A floor too short for a feeder's own space gives it the one next to the riser. */
function fallback(all: readonly StemSpace[], taken: readonly StemSpace[], lengthIn: number): StemSpace[] {
  const nearest = nearestTo(all.filter((space) => !taken.includes(space)), lengthIn / 2);
  return nearest ? [nearest] : [...taken];
}
