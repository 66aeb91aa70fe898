import type {ColumnResult, ColumnsResult} from "../columns/columnsResult.js";
import type {Design} from "../design/design.js";
import {reasonState} from "../design/reasons.js";
import {levelWords} from "../columns/levels.js";
import type {Evaluation} from "../evaluate.js";
import {pairText} from "../pair.js";
import type {ParkingResult} from "../parking/result.js";
import {shown, sentence, type Sentence} from "../sentence.js";
import {decimals, feetAndInches, kipFt} from "../units.js";
import {checksBeside, checksOf} from "./checkGroups.js";
import {NO_TABLES, type Fact, type RecordSection} from "./parts.js";

/** The record's section on what carries the middle, the columns and their footings, and the floor as a diaphragm. */
export function frameSection({design, girder, diaphragm, parking}: Evaluation, {columns, unsized, checks}: ColumnsResult): RecordSection {
  const fact = (label: string, value: Sentence): Fact => ({label, value});
  const [most] = columns;
  const load = girder && pairText(girder.demandPlf, girder.capacity.safeLoadPlf);
  const middle = girder
    ? sentence`${girder.kind === "inverted tee" ? "An inverted tee" : "A rectangular girder"} ${shown("girder depth, in", feetAndInches(girder.depthIn))} deep, ${shown("girder below deck, in", feetAndInches(girder.belowDeckIn))} of it below the deck, with ${girder.member.layout.count} strands, spans ${decimals(girder.spanFt)} ft between two bays.`
    : "The floor has one bay across, and no girder.";
  return {
    id: "frame", title: girder ? "Girder and columns" : "Columns",
    decision: sentence`${middle}${most ? sentence` The ${most.position} is ${shown(`${most.position}, in`, `${decimals(most.column.sideIn)} in`)} square.` : ""}`,
    facts: [
      ...(girder && load ? [
        fact("Girder", `${decimals(design.girder.webWidthIn)} in web, ${decimals(design.girder.strengthPsi)} psi; ${load.asked} plf required, ${load.given} plf safe, ${girder.capacity.governs} governs`),
        fact("Factored moment and reaction", sentence`${shown("girder moment, kip-ft", `${decimals(kipFt(girder.momentKipIn))} kip-ft`)}, ${shown("girder reaction, kip", `${decimals(girder.reactionKip)} kip`)}`),
        fact("Torsion with one bay loaded", sentence`${shown("girder twist, kip-ft", `${decimals(kipFt(girder.twist.torsionKipIn))} kip-ft`)}${girder.twist.design.negligible ? ", left out" : ""}`),
      ] : []),
      ...columns.map((column) => fact(column.position, columnFact(column))),
      ...unsized.map(({position, reason}) => fact(position, `not sized. ${reason}`)),
      ...(parking ? [fact("Parking", parkingFact(design, parking))] : []),
      ...(diaphragm.result ? [fact("Floor as a diaphragm", `${decimals(diaphragm.result.chordKip, 1)} kip in its chord under a stated ${decimals(design.diaphragm.lateralPlf)} plf. ${diaphragm.result.note}`)] : []),
    ],
    ...NO_TABLES, reason: reasonState(design, "frame"),
    checks: [
      ...checksOf("Girder", girder?.checks ?? []),
      ...checksBeside("Columns, corbels and footings", columns.map((column) => ({name: column.position, checks: column.checks}))),
      ...checksOf("Columns that are not sized", checks.filter((check) => !columns.some((column) => column.checks.includes(check)))),
      ...checksOf("Floor as a diaphragm", diaphragm.checks),
      ...checksOf("Parking", parking?.checks ?? []),
    ],
  };
}

/** Stalls, height and ramp in a line. */
function parkingFact({parking: input}: Design, {stalls, levels, ft2PerStall, bay, accessible, heights, ramp}: ParkingResult): Sentence {
  const each = `${feetAndInches(input.stallWidthIn)} by ${feetAndInches(input.stallLengthIn)}, aisle ${feetAndInches(input.aisleIn)}`;
  return sentence`${shown("stalls", `${decimals(stalls)} ${stalls === 1 ? "stall" : "stalls"}`)} of ${each}, on ${levels === 1 ? "one level" : `${levels} levels`}${bay ? `, ${bay.stalls} of a row between two columns` : ""}${ft2PerStall === undefined ? "" : sentence`; ${shown("floor per stall, ft2", `${decimals(ft2PerStall)} ft\u00b2`)} of floor each`}; ${accessible.needed} accessible, ${accessible.vans} of them for vans${heights ? sentence`; ${shown("clear over cars, in", feetAndInches(heights.least.clearIn, 4, true))} clear under ${heights.least.words}` : ""}${ramp ? `; ramp of ${decimals(ramp.slopePercent, 1)} %, ${feetAndInches(ramp.lengthIn, 1)} a run` : ""}`;
}

function columnFact({position, column, foot, corbel, footing}: ColumnResult): Sentence {
  const {section, worst} = column;
  const rest = [
    `bent most under ${levelWords(worst.load.level)}, by ${decimals(kipFt(worst.along.momentKipIn), 1)} kip-ft along its beams and ${decimals(kipFt(worst.across.momentKipIn), 1)} kip-ft across them`,
    corbel ? `corbel ${feetAndInches(corbel.input.depthIn)} deep` : "no corbel covers its beam",
    footing ? `footing ${feetAndInches(footing.sideIn)} square, ${feetAndInches(footing.thicknessIn)} thick` : "no single footing",
  ].join("; ");
  return sentence`${shown(`${position}, in`, `${decimals(column.sideIn)} in`)} square, ${section.count} ${section.bar.size}; ${shown(`${position} foot, kip`, `${decimals(foot.governing.kip)} kip`)} factored and ${decimals(foot.governingService.kip)} kip unfactored at its foot; ${rest}`;
}
