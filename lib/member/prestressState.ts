import {centroidAt} from "../prestress/layout.js";
import {losses, type Losses} from "../prestress/losses.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";

/** The prestress at one place of a member on a span: losses, forces, eccentricity. */
export interface PrestressState {
  /** Place along the span, 0 to 1. */
  readonly share: number;
  /** Strands' centroid below the precast section's, in. */
  readonly eccentricityIn: number;
  readonly losses: Losses;
  /** Right after transfer, kip. */
  readonly initialForceKip: number;
  /** After all losses, kip. */
  readonly effectiveForceKip: number;
}

/**
 * Prestress at a place along the span, from the losses there.
 *
 * @param superimposedDeadPlf - dead load after the topping, per foot of member; it acts on the full section
 */
export function prestressState(member: Member, spanFt: number, share: number, superimposedDeadPlf: number): PrestressState {
  const {section, full, layout} = member;
  const strandHeightIn = centroidAt(layout, share);
  const eccentricityIn = section.ybIn - strandHeightIn;
  const unitMomentKipIn = uniformMomentKipIn(1, spanFt, share);
  const loss = losses({
    strandAreaIn2: layout.areaIn2,
    areaIn2: section.areaIn2,
    inertiaIn4: section.inertiaIn4,
    eccentricityIn,
    volumeToSurfaceIn: member.volumeToSurfaceIn,
    concreteKind: member.concrete.kind,
    modulusKsi: member.modulusKsi,
    releaseModulusKsi: member.releaseModulusKsi,
    selfMomentKipIn: member.selfWeightPlf * unitMomentKipIn,
    laterDeadStressKsi:
      (member.toppingWeightPlf * unitMomentKipIn * eccentricityIn) / section.inertiaIn4 +
      (superimposedDeadPlf * unitMomentKipIn * (full.ybIn - strandHeightIn)) / full.inertiaIn4,
    humidityPercent: member.humidityPercent,
  });
  return {
    share,
    eccentricityIn,
    losses: loss,
    initialForceKip: layout.areaIn2 * loss.initialStressKsi,
    effectiveForceKip: layout.areaIn2 * loss.effectiveStressKsi,
  };
}
