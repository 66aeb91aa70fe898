import type {Evaluation} from "../../lib/evaluate.js";
import {envelope, governingStretches, limitCurves, type LimitCurves} from "../../lib/deck/limitCurves.js";
import {LOAD_LIMITS, type LimitName} from "../../lib/deck/limits.js";
import {reachOf} from "../../lib/deck/reach.js";
import {SPAN_RANGE_FT} from "../../lib/deck/safeLoad.js";
import {decimals} from "../../lib/units.js";
import type {LimitPicture} from "./limitCurves.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import type {FigureTable} from "../../components/figure.js";

/** Spans between which the curves are drawn straight, ft. */
const STEP_FT = 2;
/** Highest load of the picture over what the floor requires. */
const HIGHEST = 3;
/** A load of which the picture shows no more, psf, and the share of the floor's load below which the title says nothing. */
const HARDLY_ANY_PSF = 10;
const LEAST_SHARE = 0.15;

/**
 * The curves of a design's member. They do not hang on its span, so that pulling the span draws the same ones: they are
 * computed again only when something else of them changes.
 */
export function limitCurvesOf(): (result: Evaluation) => LimitCurves {
  let known: {key: string; curves: LimitCurves} | undefined;
  return ({design, member, deck}) => {
    const {criteria} = deck;
    const key = JSON.stringify([design.deck, design.criteria, criteria.seatIn, criteria.superimposedDeadPsf]);
    if (known?.key !== key) {
      const far = reachOf(member, {...criteria, limits: ["strength"]}, HARDLY_ANY_PSF)?.longestFt ?? SPAN_RANGE_FT.min;
      const toFt = Math.min(SPAN_RANGE_FT.max, Math.max(40, Math.ceil((far + 1) / 4) * 4));
      known = {key, curves: limitCurves(member, criteria, spans(SPAN_RANGE_FT.min, toFt))};
    }
    return known.curves;
  };
}

function spans(fromFt: number, toFt: number): number[] {
  return Array.from({length: Math.floor((toFt - fromFt) / STEP_FT) + 1}, (_, i) => fromFt + i * STEP_FT);
}

/** What the chart of limits shows for a design with some limits switched on. */
export function limitPicture({design, deck}: Evaluation, curves: LimitCurves, chosen: readonly LimitName[]): LimitPicture {
  const {spanFt} = design.bay;
  const {demandPsf} = deck;
  const mostPsf = Math.max(100, Math.ceil((HIGHEST * demandPsf) / 50) * 50);
  const least = envelope(curves.cells, LOAD_LIMITS);
  // What lies above the picture at its left edge need not be seen.
  const high = least[least.findIndex(({safeLoadPsf}) => safeLoadPsf <= mostPsf) - 1]?.spanFt ?? SPAN_RANGE_FT.min;
  const fromFt = Math.min(Math.floor(high / 10) * 10, Math.max(SPAN_RANGE_FT.min, Math.floor((spanFt - 2) / 10) * 10));
  const toFt = Math.max(curves.cells.at(-1)?.spanFt ?? SPAN_RANGE_FT.max, Math.ceil((spanFt + 2) / 4) * 4);
  return {
    curves, chosen, spanFt, demandPsf, mostPsf, envelope: envelope(curves.cells, chosen),
    spansFt: [fromFt, Math.min(SPAN_RANGE_FT.max, toFt)],
  };
}

/** What the chart shows, as its title: which limit takes over from which, and where. */
export function limitFinding({envelope: points, spansFt, mostPsf, demandPsf}: LimitPicture): string {
  const seen = points.filter(({spanFt, safeLoadPsf}) => spanFt >= spansFt[0] && safeLoadPsf < mostPsf && safeLoadPsf > LEAST_SHARE * demandPsf);
  const stretches = governingStretches(seen);
  const [first, ...rest] = stretches;
  if (!first) return points.length === 0 ? "No limit is switched on, so nothing stops it" : "Its limits leave it almost no load at any span";
  const last = rest.at(-1);
  if (!last) return `${capital(first.governs)} stops it at every span`;
  if (rest.length === 1) return `${capital(first.governs)} stops it up to ${decimals(first.toFt)} ft, ${last.governs} beyond`;
  const between = rest.slice(0, -1).map(({governs}) => `, then ${governs}`).join("");
  return `${capital(first.governs)} stops it up to ${decimals(first.toFt)} ft${between}, past ${decimals(last.fromFt)} ft ${last.governs}`;
}

/** The limits that the floor has and the picture does not: those that allow more than its highest load wherever it looks. */
export function limitsAbove({curves, chosen, spansFt, mostPsf}: LimitPicture): string {
  const above = LOAD_LIMITS.filter((name) => {
    const found = curves.cells.flatMap(({spanFt, limitsPsf}) => (spanFt >= spansFt[0] && limitsPsf[name] !== undefined ? [limitsPsf[name]] : []));
    return chosen.includes(name) && found.length > 0 && Math.min(...found) >= mostPsf;
  });
  return above.length === 0 ? "" : ` Above the picture at every span: ${above.map((name) => `${name} (${LIMIT_LOOKS[name].letter})`).join(", ")}.`;
}

/** The chart's numbers every ten feet. */
export function limitTable({curves, chosen, spansFt: [from, to]}: LimitPicture): FigureTable {
  const names = LOAD_LIMITS.filter((name) => chosen.includes(name) && curves.cells.some(({limitsPsf}) => limitsPsf[name] !== undefined));
  return {
    columns: ["Span, ft", ...names.map((name) => `${LIMIT_LOOKS[name].letter} ${name}, psf`)],
    rows: curves.cells.filter(({spanFt}) => spanFt % 10 === 0 && spanFt >= from && spanFt <= to).map(({spanFt, limitsPsf}) => [String(spanFt), ...names.map((name) => {
      const psf = limitsPsf[name];
      return psf === undefined ? "\u2013" : decimals(Math.max(0, psf));
    })]),
  };
}

export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
