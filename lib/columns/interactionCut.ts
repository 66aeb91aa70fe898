import {axialCapKip, pureTensionKip, squashLoadKip} from "./axialLimits.js";
import {biaxialState, resultantKipIn, type BiaxialLoad, type BiaxialState} from "./biaxial.js";
import {fullyPressedIn} from "./inclinedForces.js";
import {fallsThroughZero} from "./root.js";
import type {ColumnSection} from "./section.js";

/** Axial load, compression positive, and moment about the middle. */
export interface AxialMoment {
  readonly axialKip: number;
  readonly momentKipIn: number;
}

/**
 * The surface of axial load and two moments, cut through its axis at the angle at which the moments of a load stand to
 * each other. Moments are both as one, in that direction.
 */
export interface InteractionCut {
  /** From pure tension to the squash load. */
  readonly nominal: readonly AxialMoment[];
  /** The same times phi, cut off level by the cap on axial load; it ends on the axis. */
  readonly design: readonly AxialMoment[];
  readonly squashKip: number;
  readonly capKip: number;
  /** Nominal strength in pure tension, kip, positive. */
  readonly tensionKip: number;
  /** Where the cap on axial load meets the design curve. */
  readonly cap: AxialMoment;
}

/**
 * The interaction of a column at the angle of a load's moments (ACI 318-19 22.2, 22.4, 21.2.2); a load without moments is
 * taken to bend the depth.
 *
 * @param places - points between pure tension and squash load
 */
export function interactionCut(section: ColumnSection, load: BiaxialLoad, places = 60): InteractionCut {
  const resultant = resultantKipIn(load);
  const [depth, width] = resultant > 0 ? [Math.abs(load.depthMomentKipIn) / resultant, Math.abs(load.widthMomentKipIn) / resultant] : [1, 0];
  const at = (share: number): BiaxialState => {
    const state = (angleRad: number) => biaxialState(section, share * fullyPressedIn(section, angleRad), angleRad);
    if (width === 0) return state(0);
    if (depth === 0) return state(Math.PI / 2);
    return state(fallsThroughZero((angleRad) => {
      const {depthMomentKipIn, widthMomentKipIn} = state(angleRad);
      return depthMomentKipIn * width - widthMomentKipIn * depth;
    }, 0, Math.PI / 2));
  };
  const along = (of: BiaxialLoad): AxialMoment => ({axialKip: of.axialKip, momentKipIn: of.depthMomentKipIn * depth + of.widthMomentKipIn * width});
  const [squashKip, capKip, tensionKip] = [squashLoadKip(section), axialCapKip(section), pureTensionKip(section)];
  const capShare = fallsThroughZero((share) => capKip - at(share).design.axialKip, 0, 1, 1e-9);
  // Closer together where the axis is shallow: there a small change turns the curve most.
  const shares = Array.from({length: places - 1}, (_, i) => ((i + 1) / places) ** 1.6);
  const between = shares.map((share) => ({share, state: at(share)}));
  const cap = {axialKip: capKip, momentKipIn: along(at(capShare).design).momentKipIn};
  return {
    nominal: [{axialKip: -tensionKip, momentKipIn: 0}, ...between.map(({state}) => along(state)), {axialKip: squashKip, momentKipIn: 0}],
    design: [
      {axialKip: -0.9 * tensionKip, momentKipIn: 0}, ...between.filter(({share}) => share < capShare).map(({state}) => along(state.design)),
      cap, {axialKip: capKip, momentKipIn: 0},
    ],
    squashKip, capKip, tensionKip, cap,
  };
}
