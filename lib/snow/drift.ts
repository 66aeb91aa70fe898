import {requireNumber} from "../check.js";
import type {BalancedSnow} from "./balanced.js";

/** Shortest fetch that the curve of drift heights knows, ft (ASCE 7-16 Figure 7.6-1; 25 ft in older editions). */
export const SHORTEST_FETCH_FT = 20;
/** Share of the figure's height for drifts on the windward side and at parapets (ASCE 7-16 7.7.1, 7.8). */
export const WINDWARD_SHARE = 0.75;
/** A clear height below this part of the balanced snow's needs no drift (ASCE 7-16 7.7.1). */
export const LEAST_CLEAR_RATIO = 0.2;
/** A leeward drift need not be higher than this part of the lower roof's length (ASCE 7-16 7.7.1). */
export const LEEWARD_LENGTH_SHARE = 0.6;
/** From this gap on a higher building brings no drift, ft (ASCE 7-16 7.7.2). */
export const FAR_FT = 20;
/** How far a higher building's lee reaches, as a multiple of its height above the roof (ASCE 7-16 7.7.2). */
export const LEE_REACH = 6;

/** Height of a drift by the figure of the code. */
export interface FigureHeight {
  /** As it is, ft; the curve takes at least {@link SHORTEST_FETCH_FT}. */
  readonly fetchFt: number;
  /** hd, ft. */
  readonly heightFt: number;
  /** What the snow of a short fetch can fill, ft; undefined where the fetch is not short. */
  readonly sourceFt: number | undefined;
}

/**
 * Height hd of a drift that the wind fills from a fetch (ASCE 7-16 Figure 7.6-1): sqrt(Is) (0.43 lu^(1/3) (pg + 10)^(1/4) - 1.5),
 * lu at least 20 ft; below 20 ft hd need not exceed sqrt(Is pg lu / (4 gamma)), which is a drift of half of the snow of
 * the fetch. The root of Is came with the 2016 edition.
 *
 * @param fetchFt - length of the roof from which snow blows, lu
 */
export function figureHeight({site, densityPcf}: Pick<BalancedSnow, "site" | "densityPcf">, fetchFt: number): FigureHeight {
  requireNumber(fetchFt, {path: "fetchFt", label: "length of the roof upwind", unit: "ft", min: 1, max: 3000});
  const {groundPsf, importance} = site;
  if (groundPsf === 0) return {fetchFt, heightFt: 0, sourceFt: undefined};
  const curveFt = Math.sqrt(importance) * (0.43 * Math.cbrt(Math.max(SHORTEST_FETCH_FT, fetchFt)) * (groundPsf + 10) ** 0.25 - 1.5);
  if (fetchFt >= SHORTEST_FETCH_FT) return {fetchFt, heightFt: curveFt, sourceFt: undefined};
  const sourceFt = Math.sqrt((importance * groundPsf * fetchFt) / (4 * densityPcf));
  return {fetchFt, heightFt: Math.min(curveFt, sourceFt), sourceFt};
}

export type DriftKind = "leeward" | "windward" | "parapet";
/** Whether a drift counts, or why it does not. */
export type DriftState = "counts" | "snow to the top" | "too little height" | "too far" | "no snow";

/** A drift of snow along one side of the roof: a triangle in section, greatest at the side. */
export interface Drift {
  readonly kind: DriftKind;
  readonly state: DriftState;
  readonly figure: FigureHeight;
  /** Height before the clear height limits it: hd, or three quarters of it, ft. */
  readonly wantsFt: number;
  /** Height h of what it leans on above the roof, and hc above the balanced snow, ft. */
  readonly wallFt: number;
  readonly clearFt: number;
  /** Gap between the roof's edge and what the drift leans on, ft. */
  readonly gapFt: number;
  /** Height and width of the whole drift, ft; across a gap a part of a windward one lies in the gap. */
  readonly heightFt: number;
  readonly wholeWidthFt: number;
  /** Greatest load, at the roof's edge, psf, and the width on the roof over which it falls to nothing, ft; 0 where it does not count. */
  readonly peakPsf: number;
  readonly widthFt: number;
}

/** What a drift leans on, and where its snow comes from. */
export interface DriftInput {
  readonly kind: DriftKind;
  /** Length of the roof that the wind sweeps: the higher one for a leeward drift, this one for the others, ft. */
  readonly fetchFt: number;
  /** Height of the higher part or of the parapet above this roof, ft. */
  readonly wallFt: number;
  /** Length of this roof away from it, ft. */
  readonly roofFt: number;
  /** 0 if omitted. */
  readonly gapFt?: number;
}

/**
 * A drift against a higher part or a parapet (ASCE 7-16 7.7.1, 7.7.2, 7.8): as high as its fetch makes it, no higher than
 * the clear height hc; 4 hd wide, or 4 hd^2/hc and no more than 8 hc where hc cuts it off. Across a gap a leeward drift
 * spreads to 6 hd within the lee of the higher building, and a windward one begins in the gap.
 *
 * Where the roof ends before the drift does, the drift is cut off there.
 */
export function drift(snow: BalancedSnow, {kind, fetchFt, wallFt, roofFt, gapFt = 0}: DriftInput): Drift {
  const figure = figureHeight(snow, fetchFt);
  const wantsFt = kind === "leeward" ? Math.min(figure.heightFt, LEEWARD_LENGTH_SHARE * roofFt) : WINDWARD_SHARE * figure.heightFt;
  const clearFt = wallFt - snow.depthFt;
  const common = {kind, figure, wantsFt, wallFt, clearFt, gapFt};
  const none = (state: DriftState): Drift => ({...common, state, heightFt: 0, wholeWidthFt: 0, peakPsf: 0, widthFt: 0});
  if (snow.site.groundPsf === 0) return none("no snow");
  if (clearFt <= 0) return none("snow to the top");
  if (clearFt / snow.depthFt < LEAST_CLEAR_RATIO) return none("too little height");
  const leeFt = LEE_REACH * wallFt - gapFt;
  // Stryker disable next-line EqualityOperator: a lee that just ends at the roof's edge leaves a drift of no width there
  if (gapFt >= FAR_FT || leeFt <= 0) return none("too far");
  const of = (heightFt: number, wholeWidthFt: number, inGapFt: number): Drift => {
    const widthFt = wholeWidthFt - inGapFt;
    // Stryker disable next-line EqualityOperator: no drift ends at the roof's edge to the last digit
    if (widthFt <= 0) return none("too far");
    return {...common, state: "counts", heightFt, wholeWidthFt, peakPsf: (snow.densityPcf * heightFt * widthFt) / wholeWidthFt, widthFt};
  };
  if (gapFt > 0 && kind === "leeward") return of(Math.min(wantsFt, leeFt / LEE_REACH, clearFt), Math.min(LEE_REACH * wantsFt, leeFt), 0);
  // Stryker disable next-line EqualityOperator: both widths are equal where they meet
  if (wantsFt <= clearFt) return of(wantsFt, 4 * wantsFt, gapFt);
  return of(clearFt, Math.min((4 * wantsFt * wantsFt) / clearFt, 8 * clearFt), gapFt);
}
