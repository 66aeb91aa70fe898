import {requireNumber} from "../check.js";
import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {SHEAR_PHI} from "../member/shear.js";
import {checkedLedge, lengthWithLoadIn, type Ledge} from "./ledge.js";

/** A load on the ledge, for the steel that hangs it up in the web. */
export interface HangerInput {
  readonly ledge: Ledge;
  /** Factored load of one stem, kip. */
  readonly loadKip: number;
  /** Face of the web to the center of the hanger's leg, in. */
  readonly hangerInsetIn: number;
  /** Whether closed ties in the ledge let it carry its share of the torsion; without them none is counted. */
  readonly tiesInLedge?: boolean;
}

/** Steel on the ledge's side of the web that hangs one load up. */
export interface Hanger {
  /** Steel if the load stood straight below the hanger, Vu / (phi fy), in2. */
  readonly straightIn2: number;
  /** The handbook's factor for the load's eccentricity (m), and the steel by it, in2. */
  readonly leverFactor: number;
  readonly handbookIn2: number;
  /** An upper bound by a strut across the web, which no shear or torsion in the ledge relieves: factor and steel, in2. */
  readonly strutFactor: number;
  readonly strutIn2: number;
  /** Steel to provide: by the handbook's factor, not taken below 1, in2; not in addition to stirrups for shear and torsion. */
  readonly hangerIn2: number;
  /** Length of beam over which it is spread, in, and the same steel per foot. */
  readonly spreadIn: number;
  readonly hangerIn2PerFt: number;
  /** Greatest spacing of its legs, in: the ledge's depth, 18 in at most. */
  readonly greatestSpacingIn: number;
}

/**
 * Hanger steel of Grade 60 for one load on a ledge: m Vu / (phi fy) (PCI Design Handbook 6th ed. 4.5.4, 7th ed. 5.5.4,
 * after Klein 1986; from memory, its lever arm derived again here).
 *
 * Moments about the web's outer face: the load has the lever d + a from it. The beam's own shear in the ledge's part of
 * the section, the share (3 - 2 hl/h) (hl/h)^2 of a parabola, acts at half the beam's width and helps; so does the
 * ledge's share of the torsion, x^2 y of the ledge over that of the whole, if it has closed ties. The hanger at d carries
 * the rest. The steel is spread by 45 degrees from the bearing's sides through the ledge's depth (Varney, Garber,
 * Fernandez Gomez and Bayrak, ACI Structural Journal 2017), not past half-way to the next load nor past the beam's end.
 *
 * @throws InputError if the ledge, load or place of the hanger cannot be
 */
export function hanger(input: HangerInput): Hanger {
  const {ledge, loadKip, hangerInsetIn} = checked(input);
  const {webWidthIn, depthIn, ledgeDepthIn, ledgeProjectionIn} = ledge;
  const d = webWidthIn - hangerInsetIn;
  const beyondIn = ledge.shearSpanIn + hangerInsetIn;
  const depthRatio = ledgeDepthIn / depthIn;
  const byShearIn = ((3 - 2 * depthRatio) * depthRatio ** 2 * (webWidthIn + ledgeProjectionIn)) / 2;
  const byTwistIn = input.tiesInLedge ? (webWidthIn / 2 + ledge.shearSpanIn) * ledgeTwistShare(ledge) : 0;
  const leverFactor = Math.max(0, d + beyondIn - byShearIn - byTwistIn) / d;
  // Between the hanger's leg and the leg on the web's other face.
  const strutFactor = 1 + beyondIn / (webWidthIn - 2 * hangerInsetIn);
  const straightIn2 = loadKip / (SHEAR_PHI * BAR_YIELD_KSI);
  const spreadIn = lengthWithLoadIn(ledge, ledgeDepthIn);
  const hangerIn2 = Math.max(1, leverFactor) * straightIn2;
  return {
    straightIn2, leverFactor, handbookIn2: leverFactor * straightIn2, strutFactor, strutIn2: strutFactor * straightIn2,
    hangerIn2, spreadIn, hangerIn2PerFt: (12 * hangerIn2) / spreadIn,
    greatestSpacingIn: Math.min(ledgeDepthIn, 18),
  };
}

/** The ledge's share of a twist, 0 to 1: x^2 y of its rectangle (x the shorter side) over the sum with the web's. */
function ledgeTwistShare(ledge: Ledge): number {
  const stiffness = (one: number, other: number) => Math.min(one, other) ** 2 * Math.max(one, other);
  const ledgeIn3 = stiffness(ledge.ledgeProjectionIn, ledge.ledgeDepthIn);
  return ledgeIn3 / (ledgeIn3 + stiffness(ledge.webWidthIn, ledge.depthIn));
}

function checked(input: HangerInput): HangerInput {
  checkedLedge(input.ledge);
  requireNumber(input.loadKip, {path: "loadKip", label: "load", unit: "kip", min: 0, max: 1e4});
  requireNumber(input.hangerInsetIn, {path: "hangerInsetIn", label: "face of the web to the hanger", unit: "in", min: 0.5, max: input.ledge.webWidthIn / 3});
  return input;
}
