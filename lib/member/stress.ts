import type {Member} from "./member.js";
import type {PrestressState} from "./prestressState.js";

/** Stresses at one place and moment in a member's life, ksi; compression is positive. */
export interface FiberStresses {
  readonly bottomKsi: number;
  /** Top of the precast member. */
  readonly topKsi: number;
  /** Top of the topping, in the topping's own concrete; undefined without one. */
  readonly toppingTopKsi: number | undefined;
  /** Bottom of the topping, in the topping's own concrete; undefined without one. */
  readonly toppingBottomKsi: number | undefined;
}

/** Moments on the two sections that carry them, kip-in. */
export interface StageMoments {
  /** On the precast section: self weight, and the wet topping. */
  readonly precastKipIn: number;
  /** On the full section: what comes after. */
  readonly fullKipIn: number;
}

/**
 * Stress at the faces by elastic theory: P/A, P e y/I and M y/I of each section, added up.
 *
 * @param forceKip - prestress acting at this moment: the initial or the effective force, or part of it near the ends
 */
export function fiberStresses(
  member: Pick<Member, "section" | "full" | "composite">, state: Pick<PrestressState, "eccentricityIn">, forceKip: number, moments: StageMoments,
): FiberStresses {
  const {section, full, composite} = member;
  const bending = forceKip * state.eccentricityIn - moments.precastKipIn;
  const axial = forceKip / section.areaIn2;
  const perKsi = moments.fullKipIn / full.inertiaIn4;
  const interfaceIn = composite ? composite.interfaceAboveCentroidIn : full.ytIn;
  return {
    bottomKsi: axial + bending / section.sbIn3 - moments.fullKipIn / full.sbIn3,
    topKsi: axial - bending / section.stIn3 + perKsi * interfaceIn,
    toppingTopKsi: composite && composite.modularRatio * perKsi * composite.ytIn,
    toppingBottomKsi: composite && composite.modularRatio * perKsi * interfaceIn,
  };
}
