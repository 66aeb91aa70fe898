import {toppedName} from "../../lib/deck/deckName.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {governingRuns, reachOf, reaches, spanScan} from "../../lib/deck/reach.js";
import {LIMITS} from "../../lib/deck/limits.js";
import {SPAN_RANGE_FT} from "../../lib/deck/safeLoad.js";
import type {Candidate} from "../../lib/deck/search.js";
import {exceeds} from "../../lib/checks.js";
import {decimals} from "../../lib/units.js";
import type {SpanCurve, SpanLoadData} from "./spanLoad.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {gapWords, reachWords} from "../../components/charts/reachWords.js";
import type {FigureTable} from "../../components/figure.js";
import type {DeckSearch} from "../../components/shared/deckSearch.js";

/** Rivals that the chart shows beside the design's own deck. */
const MOST_RIVALS = 3;
/** A load that is as good as none, psf: where a curve is taken to end. */
const HARDLY_ANY_PSF = 0.5;

/** Share of the floor's load below which the title says nothing of the curve. */
const LEAST_SHARE = 0.15;

/** The name of the design's own deck, as candidates are named. */
export function deckId({design, member}: Pick<Evaluation, "design" | "member">): string {
  const {toppingIn, pattern, dimensions} = design.deck;
  return `${toppedName(member.shape.designation, toppingIn)}${dimensions ? "*" : ""} ${pattern}`;
}

/** The design's own curve and those of the best candidates, over the spans where they are of interest. */
export function spanLoadData(search: DeckSearch): SpanLoadData {
  const {result} = search;
  const {design, member, deck} = result;
  const {spanFt} = design.bay;
  const ownId = deckId(result);
  const rivals = rivalsOf(search);
  const mostPsf = Math.max(100, Math.ceil((2.4 * deck.demandPsf) / 50) * 50);
  const scanned = [
    ...rivals.map((rival) => ({id: rival.id, own: false, member: rival.member, askedPsf: search.askedPsf(rival), scan: spanScan(rival.member, deck.criteria)})),
    {id: ownId, own: true, member, askedPsf: deck.demandPsf, scan: spanScan(member, deck.criteria, 1)},
  ];
  // Where a curve first comes down into the picture, and where the last of it is left.
  const starts = scanned.map(({scan}) => scan[scan.findIndex((cell) => cell.safeLoadPsf <= mostPsf) - 1]?.spanFt ?? SPAN_RANGE_FT.min);
  const ends = scanned.map(({scan}) => scan.findLast((cell) => cell.safeLoadPsf >= HARDLY_ANY_PSF)?.spanFt ?? SPAN_RANGE_FT.min);
  const from = Math.max(SPAN_RANGE_FT.min, Math.floor(Math.min(...starts, spanFt) / 10) * 10);
  const to = Math.min(SPAN_RANGE_FT.max, Math.ceil(Math.max(...ends, spanFt + 4) / 10) * 10);
  return {
    curves: scanned.map(({id, own, member: one, askedPsf, scan}): SpanCurve => {
      // Beyond the last span over which a member carries itself its curve has ended.
      const end = scan.findLastIndex((cell) => cell.safeLoadPsf > 0) + 1;
      return {
        id, own, askedPsf, cells: scan.slice(0, end + 1).filter((cell) => cell.spanFt >= from && cell.spanFt <= to),
        reach: reachOf(one, deck.criteria, askedPsf, scan),
      };
    }),
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
  const short = others.find((candidate) => exceeds(askedPsf(candidate), candidate.safe.safeLoadPsf) && !rivals.has(candidate.designation));
  return [...[...rivals.values()].slice(0, MOST_RIVALS), ...(short ? [short] : [])];
}

/** What the chart shows, as its title. */
export function spanLoadFinding({curves, mostPsf, demandPsf, spanFt}: SpanLoadData): string {
  const own = curves.find((curve) => curve.own);
  if (!own?.reach) return "This deck cannot carry the floor's load at any span";
  // What governs where hardly anything can be carried is of no account.
  const runs = governingRuns(own.cells.filter((cell) => cell.safeLoadPsf < mostPsf && cell.safeLoadPsf > demandPsf * LEAST_SHARE));
  const [first, second] = [runs.at(-2), runs.at(-1)];
  const turn = first && second ? `past ${decimals(second.cells[1]?.spanFt ?? 0)} ft ${second.governs} governs, not ${first.governs}` : `${second?.governs ?? "strength"} governs at every span`;
  const {longestFt, gaps} = own.reach;
  const here = gaps.find(({fromFt, toFt}) => spanFt > fromFt && spanFt < toFt);
  const far = here
    ? `From ${decimals(here.fromFt, 1)} to ${decimals(here.toFt, 1)} ft ${here.governs} governs and it fails; it carries this load again up to ${reachWords(longestFt)} ft`
    : reaches(own.reach, spanFt) ? `Under this load it could reach ${reachWords(longestFt)} ft${gapWords(own.reach)}` : spanFt < own.reach.shortestFt ? `It carries this load from ${decimals(own.reach.shortestFt, 1)} to ${reachWords(longestFt)} ft, but not over a shorter span` : `Under this load it reaches only ${reachWords(longestFt)} ft, short of the span`;
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
