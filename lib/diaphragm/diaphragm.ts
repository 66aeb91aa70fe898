import {requireChoice, requireNumber} from "../check.js";
import {atLeast, atMost, outOfRange, type Check} from "../checks.js";
import {InputError} from "../errors.js";
import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {SHEAR_PHI} from "../member/shear.js";
import {IN_PER_FT, LB_PER_KIP} from "../units.js";

/** Said wherever a result of this module is shown. */
export const DIAPHRAGM_NOTE =
  "The lateral system is not designed. The lateral load is entered by the reader; walls, their connections, collectors, "
  + "openings and the forces of an earthquake are left to a licensed engineer.";

/** How a floor passes shear across the joints of its deck. */
export type DiaphragmKind = "topped" | "pretopped";

/** A floor as a beam that lies flat between two walls. */
export interface DiaphragmInput {
  readonly kind: DiaphragmKind;
  /** Distance between the walls that hold the floor, and the floor's depth in the direction of the load, ft. */
  readonly wallSpanFt: number;
  readonly depthFt: number;
  /** Factored lateral load along the span, lb per foot. */
  readonly lateralPlf: number;
  /** For a topped floor: thickness and strength of the topping, and its mesh across the joints, in2 per foot. */
  readonly toppingIn?: number;
  readonly toppingStrengthPsi?: number;
  readonly meshIn2PerFt?: number;
  /** For a pretopped floor: spacing of the flange connectors, ft, and the producer's design strength of one, kip, if known. */
  readonly connectorSpacingFt?: number;
  readonly connectorKip?: number;
}

/** First check of a floor diaphragm. */
export interface DiaphragmResult {
  readonly momentKipFt: number;
  /** Force in the chord along each long edge, kip, and Grade 60 steel for it, in2. */
  readonly chordKip: number;
  readonly chordSteelIn2: number;
  /** Shear at a wall, kip, and per foot of depth. */
  readonly endShearKip: number;
  readonly shearKipPerFt: number;
  /** Design strength per foot, kip; undefined for connectors of unknown strength. */
  readonly strengthKipPerFt: number | undefined;
  /** For a pretopped floor: what one connector at the wall must carry, and connectors along one joint. */
  readonly neededConnectorKip: number | undefined;
  readonly connectors: number | undefined;
  readonly note: string;
  readonly checks: readonly Check[];
}

/** Strength reduction factor of a chord in tension (ACI 318-19 Table 21.2.2). */
const CHORD_PHI = 0.9;
/** Distance between the chords over the floor's depth (common practice). */
const CHORD_DISTANCE = 0.9;
/** Minimum topping that acts as a diaphragm, in (ACI 318-19 18.12.6.1, composite topping; from memory). */
export const LEAST_DIAPHRAGM_TOPPING_IN = 2;
/** Span over depth up to which a concrete floor may be taken as rigid in its plane by its shape alone (ASCE 7-16 12.3.1.2). */
export const RIGID_SPAN_OVER_DEPTH = 3;

/**
 * First check of a floor diaphragm as a simple beam between two walls: chord force w L^2 / (8 x 0.9 depth), shear w L / 2.
 *
 * A topping carries (2 sqrt(f'c) + rho fy) per area, 8 sqrt(f'c) at most, and no more than its mesh can clamp across the
 * joints below it by shear friction with mu of 1.0 (ACI 318-19 12.5.3.3 to 12.5.3.5, 18.12.9.3; from memory). The joints
 * of pretopped members carry what their connectors do, which only the producer knows.
 *
 * @throws InputError for lengths and loads that cannot be, and a topped floor without topping
 */
export function diaphragm(input: DiaphragmInput): DiaphragmResult {
  const kind = requireChoice(input.kind, {path: "kind", label: "kind of floor", choices: ["topped", "pretopped"]});
  const wallSpanFt = requireNumber(input.wallSpanFt, {path: "wallSpanFt", label: "distance between walls", unit: "ft", min: 5, max: 1000});
  const depthFt = requireNumber(input.depthFt, {path: "depthFt", label: "depth of the floor", unit: "ft", min: 5, max: 1000});
  const lateralPlf = requireNumber(input.lateralPlf, {path: "lateralPlf", label: "lateral load", unit: "plf", min: 0, max: 50000});
  const momentKipFt = (lateralPlf * wallSpanFt ** 2) / (8 * LB_PER_KIP);
  const chordKip = momentKipFt / (CHORD_DISTANCE * depthFt);
  const endShearKip = (lateralPlf * wallSpanFt) / (2 * LB_PER_KIP);
  const shearKipPerFt = endShearKip / depthFt;
  const joint = kind === "topped" ? topped(input, shearKipPerFt) : pretopped(input, shearKipPerFt, depthFt);
  return {
    momentKipFt, chordKip, chordSteelIn2: chordKip / (CHORD_PHI * BAR_YIELD_KSI), endShearKip, shearKipPerFt,
    strengthKipPerFt: joint.strengthKipPerFt, neededConnectorKip: joint.neededConnectorKip, connectors: joint.connectors,
    note: DIAPHRAGM_NOTE,
    checks: [
      proportions(wallSpanFt / depthFt),
      ...joint.checks,
    ],
  };
}

/** A longer floor is no failure: it may not be idealized as rigid, and how it gives in its plane has to be computed. */
function proportions(spanOverDepth: number): Check {
  const text = {id: "diaphragm proportions", label: "Floor between walls, span over depth", unit: "", clause: "ASCE 7-16 12.3.1.2"};
  if (spanOverDepth <= RIGID_SPAN_OVER_DEPTH) {
    return atMost({...text, meetingIsEnough: true, holds: "The floor may be taken as rigid in its own plane.", fails: ""}, spanOverDepth, RIGID_SPAN_OVER_DEPTH);
  }
  return outOfRange({
    ...text, message: "A floor this long may not be assumed rigid from its shape alone: how far it bends between its walls must be computed, which this first look does not do. Walls closer together shorten it.",
  }, spanOverDepth, RIGID_SPAN_OVER_DEPTH);
}

interface Joint {
  readonly strengthKipPerFt?: number;
  readonly neededConnectorKip?: number;
  readonly connectors?: number;
  readonly checks: readonly Check[];
}

function topped(input: DiaphragmInput, shearKipPerFt: number): Joint {
  const toppingIn = requireNumber(input.toppingIn, {path: "toppingIn", label: "topping", unit: "in", min: 1, max: 12});
  const strengthPsi = requireNumber(input.toppingStrengthPsi, {path: "toppingStrengthPsi", label: "topping strength", unit: "psi", min: 2500, max: 10000});
  const meshIn2PerFt = requireNumber(input.meshIn2PerFt, {path: "meshIn2PerFt", label: "mesh across the joints", unit: "in2/ft", min: 0, max: 2});
  const rootKipPerFt = (Math.sqrt(strengthPsi) * toppingIn * IN_PER_FT) / LB_PER_KIP;
  const clampedKipPerFt = meshIn2PerFt * BAR_YIELD_KSI;
  // Stryker disable next-line ArithmeticOperator: with the clamp by the mesh alone beside it the first sum never decides
  const slabKipPerFt = Math.min(2 * rootKipPerFt + clampedKipPerFt, 8 * rootKipPerFt);
  const strengthKipPerFt = SHEAR_PHI * Math.min(slabKipPerFt, clampedKipPerFt);
  return {strengthKipPerFt, checks: [
    atLeast({
      id: "diaphragm topping", label: "Topping as a diaphragm", unit: "in", clause: "ACI 318-19 18.12.6.1", meetingIsEnough: true,
      holds: "The topping is thick enough to tie the floor together.",
      fails: `The topping is too thin to tie the floor together: make it ${LEAST_DIAPHRAGM_TOPPING_IN} in thick.`,
    }, toppingIn, LEAST_DIAPHRAGM_TOPPING_IN),
    atMost({
      id: "diaphragm shear", label: "Shear of the floor at a wall, per foot", unit: "kip/ft", clause: "ACI 318-19 12.5.3.3 to 12.5.3.5",
      holds: "The topping and its mesh transfer the stated lateral load to the walls.",
      fails: "The topping and its mesh do not transfer the stated lateral load to the walls: more mesh, or walls closer together.",
    }, shearKipPerFt, strengthKipPerFt),
  ]};
}

function pretopped(input: DiaphragmInput, shearKipPerFt: number, depthFt: number): Joint {
  const spacingFt = requireNumber(input.connectorSpacingFt, {path: "connectorSpacingFt", label: "spacing of connectors", unit: "ft", min: 1, max: 20});
  if (spacingFt > depthFt) {
    throw new InputError({path: "connectorSpacingFt", label: "spacing of connectors", value: spacingFt, unit: "ft", allowed: `up to the floor's ${depthFt} ft`});
  }
  const neededConnectorKip = shearKipPerFt * spacingFt;
  const connectors = Math.floor(depthFt / spacingFt + 1e-9);
  const text = {id: "diaphragm shear", label: "Shear of the floor at a wall, per foot", unit: "kip/ft", clause: "producer's connector tests"};
  if (input.connectorKip === undefined) {
    const message = "Only the producer knows what a flange connector carries: ask for one that carries what is needed, or enter its strength.";
    return {neededConnectorKip, connectors, checks: [outOfRange({...text, message}, shearKipPerFt, 0)]};
  }
  const connectorKip = requireNumber(input.connectorKip, {path: "connectorKip", label: "strength of a connector", unit: "kip", min: 0.1, max: 200});
  const strengthKipPerFt = connectorKip / spacingFt;
  return {strengthKipPerFt, neededConnectorKip, connectors, checks: [atMost({
    ...text,
    holds: "Connectors of the stated strength transfer the stated lateral load to the walls.",
    fails: "Connectors of the stated strength do not transfer the stated lateral load to the walls: set them closer, or use stronger ones.",
  }, shearKipPerFt, strengthKipPerFt)]};
}
