import type {DeckLoadComparison} from "./deckLoads.js";

/** Differences that the count of agreement goes by, psf. */
export const AGREEMENT_PSF = [1, 2, 5] as const;

/** How many cells of one handbook row come back. */
export interface Agreement {
  readonly page: string;
  readonly cells: number;
  /** Cells that strength limits, and shear; the latter are compared but not asserted. */
  readonly strengthCells: number;
  readonly shearCells: number;
  /** Strength cells within each of {@link AGREEMENT_PSF}. */
  readonly within: readonly number[];
  /** Strength cells that round to the printed number. */
  readonly toTheDigit: number;
  /** Largest difference among strength cells, psf, and among cambers, in; both without sign. */
  readonly worstLoadPsf: number;
  readonly worstErectionIn: number;
  readonly worstLongTimeIn: number;
}

/** Counts of agreement, one for each printed row of safe loads. */
export function agreement(cells: readonly DeckLoadComparison[]): Agreement[] {
  const pages = [...new Set(cells.map((cell) => cell.page))];
  return pages.map((page): Agreement => {
    const own = cells.filter((cell) => cell.page === page);
    const strength = own.filter((cell) => cell.row.limit === "strength");
    const off = strength.map((cell) => Math.abs(cell.safeLoad.difference));
    return {
      page, cells: own.length, strengthCells: strength.length, shearCells: own.length - strength.length,
      within: AGREEMENT_PSF.map((limitPsf) => off.filter((psf) => psf <= limitPsf).length),
      toTheDigit: strength.filter((cell) => Math.round(cell.safeLoad.ours) === cell.safeLoad.published).length,
      worstLoadPsf: Math.max(0, ...off),
      worstErectionIn: Math.max(...own.map((cell) => Math.abs(cell.erectionCamber.difference))),
      worstLongTimeIn: Math.max(...own.map((cell) => Math.abs(cell.longTimeCamber.difference))),
    };
  });
}
