import {requireNumber} from "../check.js";
import {InputError} from "../errors.js";
import type {Concrete} from "../materials/concrete.js";

/** A concentrated load on a beam's ledge, and the ledge beneath it. Lengths in inches. */
export interface Ledge {
  readonly concrete: Concrete;
  readonly webWidthIn: number;
  /** Whole depth of the beam. */
  readonly depthIn: number;
  readonly ledgeProjectionIn: number;
  readonly ledgeDepthIn: number;
  /** Clear cover of the ledge's steel, and diameter of its bars. */
  readonly coverIn: number;
  readonly barDiameterIn: number;
  /** Loaded area: along the beam (the width of stem or pad, whichever is less), and along the stem. */
  readonly bearingWidthIn: number;
  readonly bearingLengthIn: number;
  /** Face of the web to the load (a): where it presses unevenly, nearer to the ledge's edge than the bearing's middle. */
  readonly shearSpanIn: number;
  /** Load to the next load along the beam, center to center. */
  readonly spacingIn: number;
  /** Load to the beam's end, where it is near one. */
  readonly endDistanceIn?: number;
}

/**
 * The ledge as it was given, once its parts are known to fit.
 *
 * @throws InputError if a dimension is out of its range, the ledge is thinner than two layers of bars with their cover
 * need, or the load does not stand on the ledge
 */
export function checkedLedge(ledge: Ledge): Ledge {
  const at = (name: Exclude<keyof Ledge, "concrete">, label: string, min: number, max: number) => {
    const value = ledge[name];
    // Only one that is refused needs its words.
    if (value === undefined || !(value >= min && value <= max)) requireNumber(value, {path: name, label, unit: "in", min, max});
  };
  at("webWidthIn", "web width", 4, 60);
  at("depthIn", "depth", 10, 144);
  at("coverIn", "cover of the ledge's bars", 0.5, 4);
  at("barDiameterIn", "diameter of the ledge's bars", 0.25, 1.5);
  at("ledgeProjectionIn", "ledge projection", 2, 36);
  at("ledgeDepthIn", "ledge depth", 2, ledge.depthIn);
  const layersIn = 2 * (ledge.coverIn + ledge.barDiameterIn);
  if (ledge.ledgeDepthIn < layersIn) {
    throw new InputError({
      path: "ledgeDepthIn", label: "ledge depth", value: ledge.ledgeDepthIn, unit: "in", allowed: `${layersIn} in or more`,
      advice: "Bars at its top and bottom need their cover",
    });
  }
  at("bearingWidthIn", "width of the bearing along the beam", 1, 48);
  at("bearingLengthIn", "length of the bearing along the stem", 1, ledge.ledgeProjectionIn);
  at("shearSpanIn", "face of the web to the load", 0.5, ledge.ledgeProjectionIn);
  at("spacingIn", "spacing of the loads", ledge.bearingWidthIn, 600);
  if (ledge.endDistanceIn !== undefined) at("endDistanceIn", "load to the beam's end", ledge.bearingWidthIn / 2, 2000);
  return ledge;
}

/** Bottom of the ledge to its top bars (d), in. */
export function ledgeEffectiveDepthIn(ledge: Ledge): number {
  return ledge.ledgeDepthIn - ledge.coverIn - ledge.barDiameterIn / 2;
}

/**
 * Length of ledge that works with one load, in, when the load spreads by the given length beyond each side of its
 * bearing: not past half-way to the next load, nor past the end of the beam.
 */
export function lengthWithLoadIn(ledge: Ledge, beyondIn: number): number {
  const halfIn = halfWithLoadIn(ledge, beyondIn);
  return halfIn + Math.min(halfIn, ledge.endDistanceIn ?? Infinity);
}

/** The half of that length on the side of the load where no end of the beam cuts it off, in. */
export function halfWithLoadIn(ledge: Ledge, beyondIn: number): number {
  return Math.min(ledge.bearingWidthIn / 2 + beyondIn, ledge.spacingIn / 2);
}
