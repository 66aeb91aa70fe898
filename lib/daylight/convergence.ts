import {daylightPoints} from "./daylight.js";
import {gaussLegendre} from "./gauss.js";
import type {DaylightInput} from "./input.js";
import {floorShares} from "./shares.js";
import type {SkyGrid} from "./skyComponent.js";

/** How much the daylight of a room changes when the computation is made finer. */
export interface Convergence {
  /** Largest change of a daylight factor, as a share of it, with twice as many directions of the sky. */
  readonly skyShare: number;
  /** Change of the well and partly lit share of the floor with ten times as many strips, in hundredths of the depth. */
  readonly floorPercent: number;
}

const FINER_GRID: SkyGrid = {azimuths: gaussLegendre(48), altitudes: gaussLegendre(16)};

/** Computes a room again with a finer sky, and with finer strips, and compares. */
export function convergence(input: DaylightInput): Convergence {
  const usual = daylightPoints(input).map((point) => point.factorPercent);
  const finer = daylightPoints(input, {grid: FINER_GRID}).map((point) => point.factorPercent);
  const lit = (factors: readonly number[]) => {
    const {good, partial} = floorShares(factors);
    return 100 * (good + partial);
  };
  const many = daylightPoints(input, {strips: 400}).map((point) => point.factorPercent);
  return {
    skyShare: Math.max(...usual.map((factor, i) => Math.abs(factor / (finer[i] as number) - 1))),
    floorPercent: Math.abs(lit(usual) - lit(many)),
  };
}
