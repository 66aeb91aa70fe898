import {decimals, feetAndInches, percent} from "../units.js";
import {leadsOf} from "./lead.js";
import {failsOf, groups, holds, isDepressed, isMade, valueOf, widthFt, type SchemeRow} from "./schemeRow.js";

/** What the words need to know besides the rows. */
export interface WidthFacts {
  /** Whether both long sides have windows. */
  readonly sides: "one" | "two";
  /** Whether people work here: cars and stores need no daylight. */
  readonly lightWanted: boolean;
  readonly stallLengthIn: number;
  readonly aisleIn: number;
}

/** What the schemes of all widths show, each finding a sentence or two under its topic. */
export interface WidthFinding {
  readonly topic: string;
  readonly words: string;
}

/** The width that is argued for, ft. */
export const ARGUED_FT = 60;
/** Of what a wider building saves in walls over all widths, the share after which more width gains little. */
const MOST_SAVED = 0.75;
/** Carbon above the least that still counts as low, as a share of it. */
const LITTLE_MORE = 0.1;
/** Share of a floor with daylight to work by that counts as much, %. */
const HALF_PERCENT = 50;

/** How far good daylight reaches into the floor from each wall that has windows, ft. */
export function goodReachFt(row: SchemeRow, {sides}: Pick<WidthFacts, "sides">): number {
  return reachFt(row, "goodDaylightPercent", sides);
}

/** How far light to work by reaches, good and partial together, ft. */
export function litReachFt(row: SchemeRow, {sides}: Pick<WidthFacts, "sides">): number {
  return reachFt(row, "daylitPercent", sides);
}

function reachFt(row: SchemeRow, key: "goodDaylightPercent" | "daylitPercent", sides: WidthFacts["sides"]): number {
  return ((valueOf(row, key) ?? 0) / 100) * widthFt(row) / (sides === "two" ? 2 : 1);
}

/** All that the rows show, in the order in which one would argue; nothing where no scheme could be made. */
export function widthFindings(rows: readonly SchemeRow[], facts: WidthFacts): WidthFinding[] {
  const leads = leadsOf(rows);
  if (leads.length === 0) return rows.length === 0 ? [] : [{topic: "Reach", words: `No deck of these kinds carries this floor over any of these spans. ${rows[0]?.fails ?? ""}`}];
  return [
    {topic: "Reach", words: reachWords(rows)}, {topic: "Checks", words: checkWords(leads)}, {topic: "Strands", words: strandWords(leads)},
    {topic: "Light", words: lightWords(leads, facts)}, {topic: "Walls", words: wallWords(leads)}, {topic: "Cars", words: parkingWords(leads, facts)},
    {topic: "Height", words: heightWords(leads)}, {topic: "Carbon", words: carbonWords(leads)},
  ].filter(({words}) => words !== "");
}

/** How far each kind of deck reaches, and why it ends. */
function reachWords(rows: readonly SchemeRow[]): string {
  const kinds = groups(rows, ({kind}) => kind);
  return [...kinds].map(([kind, list]) => {
    const ordered = [...list].sort((a, b) => a.span_ft - b.span_ft);
    const last = ordered.findLastIndex(isMade);
    const beyond = ordered[last + 1];
    const name = capital(kind);
    if (last < 0) return `${name} carry this floor over none of these spans (at ${feetOf(ordered[0]?.span_ft)}: ${lower(beyond?.fails ?? "")})`;
    return beyond ? `${name} end at ${feetOf(ordered[last]?.span_ft)} (at ${feetOf(beyond.span_ft)}: ${lower(beyond.fails)})` : `${name} reach all of them`;
  }).map((words) => `${words.replace(/\.\)$/, ")")}.`).join(" ");
}

/** Over which spans all checks hold, and what fails most elsewhere. */
function checkWords(leads: readonly SchemeRow[]): string {
  const good = leads.filter(holds);
  const counts = new Map<string, number>();
  for (const row of leads) for (const id of failsOf(row)) counts.set(id, (counts.get(id) ?? 0) + 1);
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  if (!most) return "All checks hold wherever a deck reaches.";
  const stops = `what fails most is \u201c${most[0]}\u201d, at ${most[1]} of ${leads.length} spans`;
  return good.length === 0 ? `At no span do all checks hold: ${stops}.` : `All checks hold at ${runsOf(good.map(({span_ft}) => span_ft))}; elsewhere ${stops}.`;
}

function strandWords(leads: readonly SchemeRow[]): string {
  const first = leads.find(isDepressed);
  const straight = leads.filter((row) => !isDepressed(row)).at(-1);
  if (!first) return `Straight strand does for all of them, up to ${feetOf(leads.at(-1)?.span_ft)}.`;
  if (!straight || straight.span_ft < first.span_ft) return `${straight ? `Straight strand ends at ${feetOf(straight.span_ft)}: from` : "From"} ${feetOf(first.span_ft)} on the strands are depressed at midspan, which costs more to make.`;
  return `From ${feetOf(first.span_ft)} on some decks have strands depressed at midspan, which costs more to make; the last with straight strand spans ${feetOf(straight.span_ft)}.`;
}

function lightWords(leads: readonly SchemeRow[], facts: WidthFacts): string {
  if (!facts.lightWanted) return "Nobody works here, so nothing is required of the daylight.";
  const lit = leads.filter((row) => litPercent(row) > 0);
  const widest = lit.at(-1);
  if (!widest) return "No desk has daylight to work by: there is no glass, or too little.";
  const near = atWidth(lit, ARGUED_FT) ?? nearest(lit, ARGUED_FT);
  const wall = facts.sides === "two" ? "each window wall" : "the window wall";
  const below = lit.find((row) => litPercent(row) < HALF_PERCENT);
  return `${feetOf(widthFt(near))} wide, good daylight reaches ${decimals(goodReachFt(near, facts))} ft in from ${wall}, ${shareOf(near)} of the floor, and light to work by ${decimals(litReachFt(near, facts))} ft, ${litShareOf(near)}. ${below
    ? `Light to work by covers less than half of the floor from ${feetOf(widthFt(below))} of width on${below === lit[0] ? ", the least that was tried" : ""}; at ${feetOf(widthFt(widest))} it is ${litShareOf(widest)}.`
    : `Even at ${feetOf(widthFt(widest))} light to work by covers ${litShareOf(widest)}.`}`;
}

/** The span from which the walls have saved most of what width can save, and how much they have by a scheme. */
export function savedAt(leads: readonly SchemeRow[]): {readonly row: SchemeRow | undefined; readonly saved: (row: SchemeRow) => number} {
  const wall = (row: SchemeRow) => valueOf(row, "wallFt2PerFt2") ?? 0;
  const [first, last] = [leads[0], leads.at(-1)];
  const all = first && last ? wall(first) - wall(last) : 0;
  const saved = (row: SchemeRow) => (first && all > 0 ? (wall(first) - wall(row)) / all : 0);
  return {row: all > 0 ? leads.find((row) => saved(row) >= MOST_SAVED - 1e-9) : undefined, saved};
}

function wallWords(leads: readonly SchemeRow[]): string {
  const [first, last] = [leads[0] as SchemeRow, leads.at(-1) as SchemeRow];
  const each = (row: SchemeRow) => decimals(valueOf(row, "wallFt2PerFt2") ?? 0, 2);
  const {row} = savedAt(leads);
  const ends = `A square foot of floor takes ${each(first)} ft\u00b2 of wall at ${feetOf(widthFt(first))} of width and ${each(last)} at ${feetOf(widthFt(last))}`;
  return row ? `${ends}; three quarters of that saving are had at ${feetOf(widthFt(row))}, and the curve flattens.` : `${ends}: width saves no walls here.`;
}

function parkingWords(leads: readonly SchemeRow[], {stallLengthIn, aisleIn}: WidthFacts): string {
  const modules = (row: SchemeRow) => valueOf(row, "parkingModules") ?? 0;
  const fits = leads.filter((row) => modules(row) > 0);
  const [first] = fits;
  const what = `two rows of ${feetAndInches(stallLengthIn)} stalls and a ${feetAndInches(aisleIn)} aisle`;
  if (!first) return `Nowhere among these do ${what} fit between the columns.`;
  const some = leads.find((row) => (valueOf(row, "parkingStalls") ?? 0) > 0);
  const least = fits.reduce((best, row) => ((valueOf(row, "parkingFt2PerStall") ?? Infinity) < (valueOf(best, "parkingFt2PerStall") ?? Infinity) ? row : best));
  const floor = valueOf(least, "parkingFt2PerStall");
  return `Cars park below with ${what} from ${feetOf(first.span_ft)} of span on${some && some.span_ft < first.span_ft ? ` (one row alone from ${feetOf(some.span_ft)})` : ""}${floor === undefined ? "" : `; the least floor per stall, ${decimals(floor)} ft\u00b2, is at ${feetOf(least.span_ft)}`}.`;
}

function heightWords(leads: readonly SchemeRow[]): string {
  const [first, last] = [leads[0] as SchemeRow, leads.at(-1) as SchemeRow];
  const deep = (row: SchemeRow) => feetAndInches(valueOf(row, "deckDepthIn") ?? 0);
  const high = (row: SchemeRow) => feetAndInches(12 * (valueOf(row, "floorToFloorFt") ?? 0));
  return `For the same ceiling the story grows from ${high(first)} under a deck of ${deep(first)} at ${feetOf(first.span_ft)} to ${high(last)} under ${deep(last)} at ${feetOf(last.span_ft)}.`;
}

const carbonOf = (row: SchemeRow) => valueOf(row, "carbonKgPerFt2") ?? valueOf(row, "carbonWithoutColumnsKgPerFt2");

function leastCarbon(leads: readonly SchemeRow[]): SchemeRow | undefined {
  return leads.filter((row) => carbonOf(row) !== undefined).sort((a, b) => (carbonOf(a) as number) - (carbonOf(b) as number))[0];
}

function carbonWords(leads: readonly SchemeRow[]): string {
  const least = leastCarbon(leads);
  const last = leads.at(-1);
  if (!least || !last) return "";
  const kg = (row: SchemeRow) => `${decimals(carbonOf(row) ?? 0, 1)} kg`;
  return `The least embodied carbon, ${kg(least)} per square foot, is at ${feetOf(least.span_ft)} of span${least === last ? ", the longest" : `; at ${feetOf(last.span_ft)} it is ${kg(last)}`}.`;
}

/** The case for and against a building of some width. */
export interface WidthCase {
  readonly widthFt: number;
  readonly row: SchemeRow | undefined;
  readonly speaksFor: readonly string[];
  readonly speaksAgainst: readonly string[];
}

/** What speaks for a width, and what against it, out of the rows alone. */
export function caseFor(rows: readonly SchemeRow[], facts: WidthFacts, wantedFt: number = ARGUED_FT): WidthCase {
  const leads = leadsOf(rows);
  const row = atWidth(leads, wantedFt);
  if (!row) {
    const none = rows.find((one) => widthFt(one) === wantedFt);
    return {widthFt: wantedFt, row, speaksFor: [], speaksAgainst: none ? [`no deck of these kinds spans ${feetOf(none.span_ft)} (${lower(none.fails).replace(/\.$/, "")})`] : []};
  }
  const speaksFor: string[] = [];
  const speaksAgainst: string[] = [];
  const say = (good: boolean, words: string, otherwise: string) => (good ? speaksFor.push(words) : speaksAgainst.push(otherwise));
  const wall = facts.sides === "two" ? "each long side" : "the one side with windows";
  const light = `${litShareOf(row)} of the floor has daylight to work by, ${decimals(litReachFt(row, facts))} ft in from ${wall}, and ${shareOf(row)} good light, ${decimals(goodReachFt(row, facts))} ft`;
  if (facts.lightWanted) say(litPercent(row) >= HALF_PERCENT, light, `only ${light}`);
  const modules = valueOf(row, "parkingModules") ?? 0;
  const firstFit = leads.find((one) => (valueOf(one, "parkingModules") ?? 0) > 0);
  say(modules > 0, `${modules === 1 ? "a module of parking fits" : `${decimals(modules)} modules of parking fit`} below${firstFit === row ? ", and no narrower building has room for one" : firstFit ? ` (the first at ${feetOf(widthFt(firstFit))})` : ""}`,
    `no module of parking fits below${firstFit ? ` (the first at ${feetOf(widthFt(firstFit))})` : ""}`);
  const {saved} = savedAt(leads);
  say(saved(row) >= MOST_SAVED - 1e-9, `${percent(saved(row))} of what width saves in walls is saved`, `only ${percent(Math.max(0, saved(row)))} of what width saves in walls is saved yet`);
  say(!isDepressed(row), `${row.deck} spans it with straight strand`, `${row.deck} needs depressed strand`);
  const least = leastCarbon(leads);
  const [own, low] = [carbonOf(row), least && carbonOf(least)];
  if (own !== undefined && low !== undefined && least) {
    say(own <= low * (1 + LITTLE_MORE) + 1e-9, own === low ? "no other width has less embodied carbon" : `its embodied carbon is within ${percent(own / low - 1)} of the least, at ${feetOf(widthFt(least))}`,
      `its embodied carbon is ${percent(own / low - 1)} above the least, at ${feetOf(widthFt(least))}`);
  }
  const failed = failsOf(row);
  say(failed.length === 0, "all checks hold", `${failed.length === 1 ? "a check fails" : `${failed.length} checks fail`}: ${failed.join(", ")}`);
  return {widthFt: wantedFt, row, speaksFor, speaksAgainst};
}

function atWidth(rows: readonly SchemeRow[], wantedFt: number): SchemeRow | undefined {
  return rows.find((row) => Math.abs(widthFt(row) - wantedFt) < 1e-9);
}

function nearest(rows: readonly SchemeRow[], wantedFt: number): SchemeRow {
  return rows.reduce((best, row) => (Math.abs(widthFt(row) - wantedFt) < Math.abs(widthFt(best) - wantedFt) ? row : best));
}

function litPercent(row: SchemeRow): number {
  return valueOf(row, "daylitPercent") ?? 0;
}

function litShareOf(row: SchemeRow): string {
  return percent(litPercent(row) / 100);
}

function shareOf(row: SchemeRow): string {
  return percent((valueOf(row, "goodDaylightPercent") ?? 0) / 100);
}

/** Spans in a row as runs: "20 to 44 and 46 ft". A span is next to another where it is a foot farther. */
export function runsOf(spansFt: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const span of spansFt) {
    const last = runs.at(-1);
    if (last && span - last[1] <= 1 + 1e-9) last[1] = span;
    else runs.push([span, span]);
  }
  const words = runs.map(([from, to]) => (from === to ? decimals(from) : `${decimals(from)} to ${decimals(to)}`));
  return `${words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`} ft`;
}

function feetOf(ft: number | undefined): string {
  return ft === undefined ? "" : `${decimals(ft, Number.isInteger(ft) ? 0 : 1)} ft`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A reason within a sentence: a designation stays as it is. */
function lower(words: string): string {
  return /^[A-Z][a-z]/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;
}
