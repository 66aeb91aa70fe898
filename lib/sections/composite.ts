import type {Concrete} from "../materials/concrete.js";
import {elasticModulusKsi} from "../materials/concrete.js";
import {fromMoments, type SectionProperties} from "./shape.js";

/** Concrete cast on the member in place. */
export interface Topping {
  readonly thicknessIn: number;
  /** Width over which it acts with the member, in. */
  readonly widthIn: number;
  readonly concrete: Concrete;
}

/** A member and its topping as one elastic section, in terms of the member's concrete. */
export interface CompositeSection extends SectionProperties {
  /** Modulus of the topping's concrete over the member's. */
  readonly modularRatio: number;
  /** Top of the precast member above the composite centroid, in; negative where the centroid lies in the topping. */
  readonly interfaceAboveCentroidIn: number;
}

/**
 * The composite section: the topping's width is multiplied by the modular ratio (elastic theory).
 *
 * `depthIn`, `ytIn` and `stIn3` belong to the top of the topping; stress there, from `stIn3`, is in the member's
 * concrete and is multiplied by the modular ratio to be the topping's own.
 */
export function compositeSection(precast: SectionProperties, precastConcrete: Concrete, topping: Topping): CompositeSection {
  const modularRatio =
    elasticModulusKsi(topping.concrete.unitWeightPcf, topping.concrete.strengthPsi) /
    elasticModulusKsi(precastConcrete.unitWeightPcf, precastConcrete.strengthPsi);
  const widthIn = modularRatio * topping.widthIn;
  const areaT = widthIn * topping.thicknessIn;
  const yT = precast.depthIn + topping.thicknessIn / 2;
  const areaIn2 = precast.areaIn2 + areaT;
  const ybIn = (precast.areaIn2 * precast.ybIn + areaT * yT) / areaIn2;
  const inertiaIn4 =
    precast.inertiaIn4 + precast.areaIn2 * (ybIn - precast.ybIn) ** 2 +
    (widthIn * topping.thicknessIn ** 3) / 12 + areaT * (yT - ybIn) ** 2;
  return {
    ...fromMoments(areaIn2, ybIn, inertiaIn4, precast.depthIn + topping.thicknessIn),
    modularRatio,
    interfaceAboveCentroidIn: precast.depthIn - ybIn,
  };
}
