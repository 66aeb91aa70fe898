import type {Evaluation} from "../../lib/evaluate.js";
import {governingRuns, longestSpanFt} from "../../lib/deck/reach.js";
import {LIMITS} from "../../lib/deck/limits.js";
import {SPAN_RANGE_FT} from "../../lib/deck/safeLoad.js";
import type {Candidate} from "../../lib/deck/search.js";
import {capacityCurve} from "../../lib/deck/table.js";
import type {Member} from "../../lib/member/member.js";
import {decimals} from "../../lib/units.js";
import type {SpanCurve, SpanLoadData} from "../charts/spanLoad.js";
import {LIMIT_LOOKS} from "../charts/limits.js";
import type {FigureTable} from "../figure.js";
import type {DeckSearch} from "./deckSearch.js";

/** Rivals that the chart shows beside the design's own deck. */
const MOST_RIVALS = 3;
/** A load that is as good as none, psf: where a curve is taken to end. */
const HARDLY_ANY_PSF = 0.5;

/** Share of the floor's load below which the title says nothing of the curve. */
const LEAST_SHARE = 0.15;

/** The name of the design's own deck, as candidates are named. */
export function deckId({design, member}: Pick<Evaluation, "design" | "member">): string {
  const {toppingIn, pattern, dimensions} = design.deck;
  const topping = toppingIn > 0 ? `+${toppingIn}` : "";
  return `${member.shape.designation}${topping}${dimensions ? "*" : ""} ${pattern}`;
}

/** The design's own curve and those of the best candidates, over the spans where they are of interest. */
export function spanLoadData(search: DeckSearch): SpanLoadData {
  const {result} = search;
  const {design, member, deck} = result;
  const {spanFt} = design.bay;
  const ownId = deckId(result);
  const rivals = rivalsOf(search);
  const mostPsf = Math.max(100, Math.ceil((2.4 * deck.demandPsf) / 50) * 50);
  const reach = (one: Member, psf: number) => longestSpanFt(one, deck.criteria, psf);
  const members = [member, ...rivals.map((rival) => rival.member)];
  const from = Math.max(SPAN_RANGE_FT.min, Math.min(...members.map((one) => Math.floor((reach(one, mostPsf) ?? SPAN_RANGE_FT.min) / 10) * 10), Math.floor(spanFt / 10) * 10));
  const to = Math.min(SPAN_RANGE_FT.max, Math.max(...members.map((one) => Math.ceil((reach(one, HARDLY_ANY_PSF) ?? SPAN_RANGE_FT.min) / 10) * 10), Math.ceil((spanFt + 4) / 10) * 10));
  const curve = (id: string, one: Member, own: boolean, stepFt: number): SpanCurve => {
    const spansFt = Array.from({length: Math.floor((to - from) / stepFt) + 1}, (_, i) => from + i * stepFt);
    const cells = capacityCurve(one, spansFt, deck.criteria);
    // Where a member cannot carry itself its curve has ended.
    const end = cells.findIndex((cell) => cell.safeLoadPsf <= 0);
    return {id, own, cells: end < 0 ? cells : cells.slice(0, end + 1), reachFt: reach(one, deck.demandPsf)};
  };
  return {
    curves: [...rivals.map((rival) => curve(rival.id, rival.member, false, 2)), curve(ownId, member, true, 1)],
    spanFt, demandPsf: deck.demandPsf, safePsf: deck.safe.safeLoadPsf, spansFt: [from, to], mostPsf,
  };
}

/**
 * The best candidates that work, one for each other member (two patterns of one member have nearly one curve), and the
 * one that falls short of the load by least, which shows where the others would stop.
 */
function rivalsOf({result, found, askedPsf}: DeckSearch): Candidate[] {
  const others = found.filter((candidate) => candidate.designation !== result.design.deck.member);
  const rivals = new Map<string, Candidate>();
  for (const candidate of others) {
    if (candidate.works && !rivals.has(candidate.designation)) rivals.set(candidate.designation, candidate);
  }
  const short = others.find((candidate) => candidate.safe.safeLoadPsf < askedPsf(candidate) && !rivals.has(candidate.designation));
  return [...[...rivals.values()].slice(0, MOST_RIVALS), ...(short ? [short] : [])];
}

/** What the chart shows, as its title. */
export function spanLoadFinding({curves, mostPsf, demandPsf, spanFt}: SpanLoadData): string {
  const own = curves.find((curve) => curve.own);
  if (!own || own.reachFt === undefined) return "This deck carries the floor's load on no span at all";
  // What governs where hardly anything can be carried is of no account.
  const runs = governingRuns(own.cells.filter((cell) => cell.safeLoadPsf < mostPsf && cell.safeLoadPsf > demandPsf * LEAST_SHARE));
  const [first, second] = [runs.at(-2), runs.at(-1)];
  const turn = first && second ? `past ${decimals(second.cells[1]?.spanFt ?? 0)} ft ${second.governs} governs, not ${first.governs}` : `${second?.governs ?? "strength"} governs at every span`;
  const far = own.reachFt < spanFt ? `This load stops it at ${decimals(own.reachFt)} ft, short of the span` : `Under this load it could reach ${decimals(own.reachFt)} ft`;
  return `${far}; ${turn}`;
}

/** The key of the letters that occur. */
export function limitKey({curves}: SpanLoadData): string {
  const occurring = new Set(curves.flatMap((curve) => curve.cells.map((cell) => cell.governs)));
  return LIMITS.filter((limit) => occurring.has(limit)).map((limit) => `${LIMIT_LOOKS[limit].letter}, ${LIMIT_LOOKS[limit].line}: ${limit}`).join("; ");
}

/** The chart's numbers every five feet. */
export function spanLoadTable({curves, spansFt: [from, to]}: SpanLoadData): FigureTable {
  const spans = Array.from({length: Math.floor((to - from) / 10) + 1}, (_, i) => from + i * 10);
  return {
    columns: ["Span, ft", ...[...curves].reverse().map((curve) => `${curve.id}, psf`)],
    rows: spans.map((spanFt) => [String(spanFt), ...[...curves].reverse().map((curve) => {
      const cell = curve.cells.find((one) => one.spanFt === spanFt);
      return cell && cell.safeLoadPsf > 0 ? `${decimals(cell.safeLoadPsf)} ${LIMIT_LOOKS[cell.governs].letter}` : "0";
    })]),
  };
}
