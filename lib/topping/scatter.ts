import type {NumberRule} from "../check.js";

/**
 * How much pieces of one design differ: coefficients of variation (standard deviation over mean), each member's own
 * unless `likeness` ties neighbors together.
 */
export interface Scatter {
  /** Modulus of elasticity of concrete of a given strength, 0 to 0.25. */
  readonly stiffness: number;
  /** Strength when the strands are cut, 0 to 0.3; the modulus then goes with its root. */
  readonly releaseStrength: number;
  /** Force that bends the member up: jacking and early losses, 0 to 0.2. */
  readonly force: number;
  /** Age at which the piece is set, 0 to 1. */
  readonly age: number;
  /** Weight of the bare piece, 0 to 0.2. */
  readonly weight: number;
  /** Standard deviation of the length, in, 0 to 3. */
  readonly lengthIn: number;
  /** Correlation of neighbors, 0 to 0.95: pieces of one bed and one week are alike. 0 counts no likeness, the safe side. */
  readonly likeness: number;
}

/**
 * Usual scatter: concrete's modulus strays by a tenth from its formula, its strength by a tenth; jacking is held to 5 %
 * (ACI 318-19 26.10.2), two standard deviations, and early losses add a little; pieces are set when the site is ready;
 * length keeps 1 in (PCI MNL-135-00), two standard deviations (common practice; from memory).
 */
export const SCATTER: Scatter = {stiffness: 0.1, releaseStrength: 0.1, force: 0.03, age: 0.35, weight: 0.02, lengthIn: 0.5, likeness: 0};

/** Range and label of each scatter. */
export const SCATTER_RULES: Readonly<Record<keyof Scatter, Omit<NumberRule, "path">>> = {
  stiffness: {label: "scatter of stiffness", unit: "", min: 0, max: 0.25},
  releaseStrength: {label: "scatter of release strength", unit: "", min: 0, max: 0.3},
  force: {label: "scatter of the force", unit: "", min: 0, max: 0.2},
  age: {label: "scatter of the age", unit: "", min: 0, max: 1},
  weight: {label: "scatter of the weight", unit: "", min: 0, max: 0.2},
  lengthIn: {label: "scatter of the length", unit: "in", min: 0, max: 3},
  likeness: {label: "likeness of neighbors", unit: "", min: 0, max: 0.95},
};
