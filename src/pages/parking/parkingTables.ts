import type {Evaluation} from "../../lib/evaluate.js";
import {VAN_CLEAR_IN} from "../../lib/parking/accessible.js";
import type {Heights, Overhead} from "../../lib/parking/heights.js";
import {levelPlan} from "../../lib/parking/level.js";
import type {ParkingResult} from "../../lib/parking/result.js";
import {baysThatSuit, spansThatSuit} from "../../lib/parking/suit.js";
import {OVER_VEHICLE_IN, VEHICLES, vehiclesUnder} from "../../lib/parking/vehicles.js";
import {decimals, feetAndInches, feetText} from "../../lib/units.js";
import {dataTable} from "../../components/figure.js";
import {figureOf} from "../../components/quantity.js";
import {said} from "../../components/shared/said.js";

const written = (lengthIn: number): string => feetAndInches(lengthIn, 4, true);
const many = (count: number, one: string, more = `${one}s`): string => `${decimals(count)} ${count === 1 ? one : more}`;

/** What the module takes and has, in a sentence. */
export function moduleSentence({design}: Evaluation, {level}: ParkingResult): string {
  const [module] = level.modules;
  const {neededIn} = spansThatSuit(design);
  if (!module) return "The building has too few bays across the rows for one module.";
  const rows = module.rows.length === 2 ? "so two rows stand along the aisle" : module.rows.length === 1 ? "so only one row stands along the aisle" : "so not even one row fits beside the aisle";
  return `Two rows of stalls and their aisle take ${written(neededIn)}; the first module has ${written(module.clearIn)}, ${rows}.${level.baysLeft > 0 ? ` ${many(level.baysLeft, "bay is", "bays are")} left over, without stalls.` : ""}`;
}

/** Whether cars would fit where none are planned, in a sentence. */
export function wouldFitSentence({design}: Evaluation): string {
  const {modules} = levelPlan(design);
  const widest = Math.max(0, ...modules.map(({clearIn}) => clearIn));
  const {neededIn} = spansThatSuit(design);
  const count = modules.reduce((most, {rows}) => Math.max(most, rows.length), 0);
  const found = `Two rows of stalls and their aisle would take ${written(neededIn)}, and ${design.parking.baysPerModule === 1 ? "the widest bay" : `the widest ${design.parking.baysPerModule} bays`} of this building would leave them ${written(widest)}`;
  return `${found}: ${count === 2 ? "they would fit" : count === 1 ? "only one row would fit" : "cars would not fit between its columns"}.`;
}

/** Stalls between two columns, in a sentence. */
export function bayStallsSentence({design}: Evaluation, {bay, perLevel, level}: ParkingResult): string {
  if (level.modules.every(({rows}) => rows.length === 0)) return "";
  const across = design.parking.rows === "across";
  if (!bay) return `No column stands in a row${design.parking.setbackIn > 0 ? ", as heads are set back past it" : ""}: the row runs on, ${many(perLevel, "stall")} on a level.`;
  return `Between two columns ${feetText(across ? design.bay.spanFt : design.bay.beamSpanFt)} apart ${bay.stalls === 0 ? "no stall fits" : `${bay.stalls === 1 ? "stands one stall" : `stand ${bay.stalls} stalls`}`} of ${written(design.parking.stallWidthIn)} in a row${bay.stalls === 0 ? "" : `, and ${written(bay.leftIn)} is left over`}.`;
}

/** All stalls of the building, in a sentence whose numbers carry their names. */
export function stallsSentence(_: Evaluation, {stalls, levels, perLevel, ft2PerStall, accessible}: ParkingResult): HTMLElement {
  if (stalls === 0 || ft2PerStall === undefined) return said`No car parks here.`;
  const {needed, vans, inside, placed} = accessible;
  const outside = needed - inside;
  return said`${levels === 1 ? "The level has" : `The ${levels} levels have`} ${figureOf("stalls", `${many(stalls, "stall")}`)}${levels === 1 ? "" : `, ${decimals(perLevel)} on each but for the lowest, which has the accessible ones`}: ${figureOf("floor per stall, ft2", `${decimals(ft2PerStall)} ft\u00b2`)} of floor for each car. ${many(needed, "stall must be", "stalls must be")} accessible, ${vans === 1 ? "one of them for a van" : `${vans} of them for vans`}${outside > 0 ? `, which ${outside === 1 ? "parks" : "park"} outside` : ""}${placed < inside ? `; only ${placed} ${placed === 1 ? "finds" : "find"} room` : ""}.`;
}

/** Clear height in each place, and which vehicles pass. */
export function heightTable({places}: Heights): HTMLElement {
  return dataTable({columns: ["Under", "Clear height", "Passes"], rows: places.map(({words, clearIn}) => [words, clearIn > 0 ? written(clearIn) : "none", passes(clearIn)])});
}

function passes(clearIn: number): string {
  const under = vehiclesUnder(clearIn);
  const over = VEHICLES.filter((one) => !under.includes(one));
  return over.length === 0 ? "all of the vehicles below" : under.length === 0 ? "no car" : `up to ${withArticle((under.at(-1) as (typeof VEHICLES)[number]).name)}`;
}

/** A kind of vehicle with its article. */
const withArticle = (name: string): string => `${/^[aeiou]/.test(name) ? "an" : "a"} ${name}`;

/** What hangs there in the plural. */
const MANY: readonly Overhead[] = ["pipes", "pipes past the box", "ducts", "signs"];

/** The lowest place, in a sentence. */
export function heightSentence({design}: Evaluation, {least, leastOnWay, vanIn}: Heights): HTMLElement {
  const lacks = design.parking.clearIn - least.clearIn;
  const van = vanIn >= VAN_CLEAR_IN ? "A van with a raised roof reaches its stall." : `For a van with a raised roof, ${written(VAN_CLEAR_IN)} on all of its way, ${feetAndInches(VAN_CLEAR_IN - vanIn)} is lacking${design.parking.vans === "outside" ? ": vans park outside" : ""}.`;
  return said`Lowest ${MANY.includes(least.over) ? "hang" : "hangs"} ${least.words}: ${figureOf("clear over cars, in", least.clearIn > 0 ? written(least.clearIn) : "nothing")} is left, ${lacks > 0 ? `${feetAndInches(lacks)} less than` : lacks === 0 ? "just" : `${feetAndInches(-lacks)} more than`} the ${written(design.parking.clearIn)} that is wanted.${leastOnWay === least ? "" : ` On every car's way it is ${leastOnWay.words}, at ${written(leastOnWay.clearIn)}.`} ${van}`;
}

/** The vehicles that the heights are held against. */
export function vehicleTable(): HTMLElement {
  return dataTable({
    columns: ["Vehicle", "Height", "Needs"],
    rows: VEHICLES.map(({name, heightIn}) => [name, written(heightIn), written(heightIn + OVER_VEHICLE_IN)]),
  });
}

/** Of whole feet the least bay for each number of stalls, the design's own among them. */
export function suitTable({design}: Evaluation, {bay}: ParkingResult): HTMLElement | string {
  const own = design.parking.rows === "along" ? design.bay.beamSpanFt : design.bay.spanFt;
  const found = baysThatSuit(design);
  if (found.length === 0) return bay ? "No bay of up to 60 ft holds a whole stall with two rows and their aisle." : "Columns do not stand in the rows, so that any bay suits.";
  const rows = [...found.map((one) => ({...one, own: one.bayFt === own})), ...(bay && bay.stalls > 0 && !found.some(({bayFt}) => bayFt === own) ? [{...bay, bayFt: own, ft2PerStall: undefined, own: true}] : [])]
    .sort((a, b) => a.bayFt - b.bayFt);
  return dataTable({
    columns: ["Columns along the row", "Stalls of a row between them", "Left over", "Floor for each stall of an inside bay"],
    rows: rows.map(({bayFt, stalls, leftIn, ft2PerStall, own: here}) => [`${feetText(bayFt)}${here ? " (this design)" : ""}`, decimals(stalls), written(leftIn), ft2PerStall === undefined ? "" : `${decimals(ft2PerStall)} ft\u00b2`]),
  });
}

/** Spans across the rows that suit, in a sentence. */
export function suitSentence({design}: Evaluation): string {
  const {insideFt, edgeFt, neededIn} = spansThatSuit(design);
  const {rows, baysPerModule} = design.parking;
  const what = rows === "along" ? "a span" : "a beam span";
  const bays = baysPerModule === 1 ? "" : `, ${baysPerModule} of them to a module`;
  return `For two rows and an aisle, ${written(neededIn)}, take ${what} of ${insideFt} ft${bays}${edgeFt === insideFt ? "" : `; beside a wall ${edgeFt} ft do`}.`;
}

/** The ramp, in a sentence. */
export function rampSentence({design}: Evaluation, {ramp}: ParkingResult): string {
  if (!ramp) return "There is no ramp: cars drive in level.";
  const {parking} = design;
  const fits = ramp.lengthIn <= ramp.roomIn + 1e-6;
  const climbs = ramp.runs === 1 ? "The ramp climbs a story of" : `Each of the ${ramp.runs} runs to a story climbs`;
  const room = parking.ramp === "beside" ? `the building is ${written(ramp.roomIn)} long` : `the rows have ${written(ramp.roomIn)} between their turns`;
  return `${climbs} ${written(ramp.riseIn)} in ${written(ramp.lengthIn)}${ramp.blendIn > 0 ? `, blends of ${written(ramp.blendIn)} included` : ""}; ${room}, so it ${fits ? "fits" : "does not fit"}.`;
}
