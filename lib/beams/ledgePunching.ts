import {requireNumber} from "../check.js";
import {atMost, type Check} from "../checks.js";
import type {Concrete} from "../materials/concrete.js";
import {SHEAR_PHI} from "../member/shear.js";
import {checkedLedge, halfWithLoadIn, ledgeEffectiveDepthIn, lengthWithLoadIn, type Ledge} from "./ledge.js";
import {shearRootPsi} from "../materials/shearRoot.js";

/** The state of the beam at the load: its own bending, shear and prestress change what its ledge can carry. */
export interface BeamStress {
  /** Factored moment over design moment or factored shear over design shear at the load, whichever is more; 0 or more. */
  readonly use: number;
  /** Compression at the centroid from prestress that may be counted on at the load, ksi; 0 if it is not given. */
  readonly centroidStressKsi?: number;
}

/** Strength against a load punching out of the ledge, as one source sees it. */
export interface PunchingView {
  readonly id: "handbook" | "caution" | "two-way";
  readonly label: string;
  readonly source: string;
  /** How far the equation can be relied on to be the source's own. */
  readonly confidence: string;
  /** Design strength, phi Vn, kip. */
  readonly designKip: number;
  /** Whether the beam's end is what limits it. */
  readonly atEnd: boolean;
}

/** Strength of a ledge against punching by every view, and the least of them. */
export interface LedgePunching {
  readonly views: readonly PunchingView[];
  /** The view with the least strength, which is used. */
  readonly governing: PunchingView;
  readonly designKip: number;
  /** Factor for the stress of the beam that the kit's own caution took, 0.5 to 1. */
  readonly globalStressFactor: number;
}

/**
 * Design strength of a ledge against a concentrated load punching out of it, kip, by three views that do not agree:
 * the trade handbook's equations, which later tests found to promise too much, at times even where the beam is stressed
 * little; the kit's own caution, which takes the trends of those tests into account; and the code's two-way shear. The
 * least is used. A load that stands further out punches more easily as well (the same tests): the first and the last
 * view know nothing of that, and the caution neither.
 *
 * @throws InputError if the ledge or the stress of the beam cannot be
 */
export function ledgePunching(ledge: Ledge, beam: BeamStress): LedgePunching {
  checkedLedge(ledge);
  requireNumber(beam.use, {path: "use", label: "use of the beam's strength", unit: "", min: 0, max: 100});
  requireNumber(beam.centroidStressKsi ?? 0, {path: "centroidStressKsi", label: "stress at the centroid", unit: "ksi", min: 0, max: 6});
  const views = [handbookView(ledge), cautionView(ledge, beam), twoWayView(ledge)];
  const governing = views.reduce((least, view) => (view.designKip < least.designKip ? view : least));
  return {views, governing, designKip: governing.designKip, globalStressFactor: globalStressFactor(beam.use)};
}

/**
 * The trade handbook's equations (PCI Design Handbook 7th ed. 5.5.1; 6th ed. 4.5.1). Loads further apart than bt + hl
 * stand alone: the lesser of 3 lambda sqrt(f'c) hl [2 lp + bt + hl], and at an end lambda sqrt(f'c) hl [2 lp + bt + hl +
 * 2 de]. Closer loads share: 1.5 lambda sqrt(f'c) hl [2 lp + bt + hl + s], and lambda sqrt(f'c) hl [lp + (bt + hl)/2 +
 * de + s]; the printed equations jump down where the one case meets the other. lp is the ledge's projection.
 *
 * All four are from memory.
 */
function handbookView(ledge: Ledge): PunchingView {
  const {ledgeProjectionIn: lp, bearingWidthIn: bt, ledgeDepthIn: hl, spacingIn: s, endDistanceIn: de} = ledge;
  const alone = s > bt + hl;
  const innerIn = alone ? 3 * (2 * lp + bt + hl) : 1.5 * (2 * lp + bt + hl + s);
  const endIn = de === undefined ? Infinity : alone ? 2 * lp + bt + hl + 2 * de : lp + (bt + hl) / 2 + de + s;
  return {
    id: "handbook", label: "Trade handbook",
    source: "PCI Design Handbook, 7th ed., 5.5.1",
    confidence: "from memory",
    designKip: (SHEAR_PHI * shearRootPsi(ledge.concrete) * hl * Math.min(innerIn, endIn)) / 1000,
    // Stryker disable next-line EqualityOperator: of two alike either may be reported
    atEnd: endIn < innerIn,
  };
}

/**
 * The kit's own caution. What the abstracts of later tests say (106 tests of L-beams' ledges: Nafadi, Lucier, Rizkalla,
 * Zia and Klein, PCI Journal 2017 and 2018; ends of beams: Hassan 2007): the handbook can promise too much, failure
 * planes are flatter than its 45 degrees, stress of the beam in bending and shear lowers the strength, a load further
 * out lowers it as well, prestress raises it. Here: 2 beta gamma lambda sqrt(f'c) on the ledge's depth times a length
 * that spreads by 2 hl to each side of the bearing, cut off at the beam's end and half-way to the next load; gamma is
 * sqrt(1 + 10 fpc/f'c), and beta is {@link globalStressFactor}. The load's place across the ledge is not in it.
 *
 * The form is ours, in part from memory and unconfirmed; it is not the authors' equation.
 */
function cautionView(ledge: Ledge, beam: BeamStress): PunchingView {
  const {ledgeDepthIn: hl, concrete} = ledge;
  const lengthIn = lengthWithLoadIn(ledge, 2 * hl);
  const prestressFactor = Math.sqrt(1 + (10_000 * (beam.centroidStressKsi ?? 0)) / concrete.strengthPsi);
  return {
    id: "caution", label: "Our caution",
    source: "our own caution, after published tests",
    confidence: "trends seen in abstracts; form and factors from memory, unconfirmed",
    designKip: (SHEAR_PHI * 2 * globalStressFactor(beam.use) * prestressFactor * shearRootPsi(concrete) * hl * lengthIn) / 1000,
    atEnd: lengthIn < 2 * halfWithLoadIn(ledge, 2 * hl),
  };
}

/** The least that is left, however hard the beam is stressed. */
export const LEAST_GLOBAL_STRESS_FACTOR = 0.5;

/**
 * What is left of a ledge's punching strength in a stressed beam: 1 up to a fifth of the beam's strength, then falling
 * evenly to 0.5 at three fifths of it and beyond. That stress lowers the strength is published (Nafadi and others); the
 * two places of the line are from memory and not confirmed, and the lower of the readings that we know.
 *
 * @param use - moment over design moment, or shear over design shear, whichever is more
 */
export function globalStressFactor(use: number): number {
  return Math.min(1, Math.max(LEAST_GLOBAL_STRESS_FACTOR, 1 - (0.5 * (use - 0.2)) / 0.4));
}

/**
 * Two-way shear of the code on three sides of the bearing, half the effective depth away from it, and on two at the
 * beam's end (ACI 318-19 22.6.5.2, size factor 22.5.5.1.3; alpha_s 30 and 20). The concrete outside the bearing, toward
 * the ledge's edge, is not counted; loads whose perimeters meet share the length between them.
 */
function twoWayView(ledge: Ledge): PunchingView {
  const {bearingWidthIn: bt, bearingLengthIn: length, spacingIn: s, endDistanceIn: de} = ledge;
  const d = ledgeEffectiveDepthIn(ledge);
  const sideIn = length + d / 2;
  const innerIn = bt + d < s ? bt + d + 2 * sideIn : s;
  const endIn = de === undefined ? Infinity : Math.min(bt + d, s) / 2 + de + (bt + d < s ? sideIn : 0);
  const perimeterIn = Math.min(innerIn, endIn);
  // Stryker disable next-line EqualityOperator: of two alike either may be reported
  const atEnd = endIn < innerIn;
  const ratio = Math.max(bt, length) / Math.min(bt, length);
  const sizeFactor = Math.min(1, Math.sqrt(2 / (1 + d / 10)));
  const coefficient = Math.min(4, 2 + 4 / ratio, 2 + ((atEnd ? 20 : 30) * d) / perimeterIn);
  return {
    id: "two-way", label: "Two-way shear",
    source: "ACI 318-19 22.6.5.2",
    confidence: "from memory",
    designKip: (SHEAR_PHI * coefficient * sizeFactor * shearRootPsi(ledge.concrete) * perimeterIn * d) / 1000,
    atEnd,
  };
}

/**
 * Design strength of a ledge under an even load along it, plf: phi 2 lambda sqrt(f'c) hl over a foot (PCI Design
 * Handbook 6th ed. 4.5.1, there phi 24 hl lambda sqrt f'c; from memory).
 */
export function ledgeLineStrengthPlf(material: Concrete, ledgeDepthIn: number): number {
  requireNumber(ledgeDepthIn, {path: "ledgeDepthIn", label: "ledge depth", unit: "in", min: 2, max: 144});
  return SHEAR_PHI * 24 * shearRootPsi(material) * ledgeDepthIn;
}

/** The check that one factored load does not punch out of the ledge. */
export function ledgePunchingCheck(loadKip: number, punching: LedgePunching): Check {
  const {governing} = punching;
  return atMost({
    id: "ledge punching", label: governing.atEnd ? "Stem punching through the ledge, at the beam's end" : "Stem punching through the ledge",
    unit: "kip", clause: governing.source,
    holds: "The ledge is deep enough under the stem.",
    fails: "The stem could punch through the ledge: deepen the ledge, or make its concrete stronger.",
  }, loadKip, punching.designKip);
}
