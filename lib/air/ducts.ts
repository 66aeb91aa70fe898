import {requireNumber} from "../check.js";
import {atMost, type Check} from "../checks.js";
import {Kept} from "../kept.js";
import type {Shape} from "../sections/shape.js";
import {IN2_PER_FT2} from "../units.js";
import {DUCT_PLACES, USUAL_CLEARANCE, ductRoom, ductWidthIn, type DuctClearance, type DuctPlace} from "./ductRoom.js";

/** The inside of a duct. */
export type DuctSize = {readonly kind: "round"; readonly diameterIn: number} | {readonly kind: "rectangular"; readonly widthIn: number; readonly depthIn: number};

/** What a duct is for: the main gathers, branches run out to the rooms. */
export type DuctUse = "main" | "branch";

/**
 * Greatest velocities that keep quiet in public buildings, ft/min: 1,300 in mains and 900 in branches of low-velocity
 * systems (common practice; from memory). Libraries and bedrooms want less, garages tolerate more.
 */
export const GREATEST_VELOCITY_FPM: Readonly<Record<DuctUse, number>> = {main: 1300, branch: 900};

/** Greatest width over depth, beyond which friction and rumble grow: 4 to 1 (common practice). */
export const GREATEST_ASPECT = 4;

/** Steps in which ducts are made, in. */
export const STEP_IN = 2;

/** Area of a duct's inside, ft2. */
export function ductAreaFt2(size: DuctSize): number {
  return (size.kind === "round" ? (Math.PI * size.diameterIn ** 2) / 4 : size.widthIn * size.depthIn) / IN2_PER_FT2;
}

/**
 * Velocity of the air in a duct, ft/min: flow over area.
 *
 * @param flowCfm - ft3/min, 1 to 20,000,000
 * @throws InputError if the flow or the size is out of range
 */
export function ductVelocityFpm(flowCfm: number, size: DuctSize): number {
  requireNumber(flowCfm, {path: "flowCfm", label: "air flow", unit: "cfm", min: 1, max: 20_000_000});
  return flowCfm / ductAreaFt2(checkedSize(size));
}

/** A duct and where it would run. */
export interface FittedDuct {
  readonly place: DuctPlace;
  readonly size: DuctSize;
  readonly velocityFpm: number;
}

/**
 * The smallest duct that carries a flow quietly between stems: of the rectangular ducts in steps of 2 in, up to 4 to 1,
 * the one with the least area, of several the flattest; undefined where none fits.
 */
export function smallestDuct(
  shape: Shape, place: DuctPlace, flowCfm: number, use: DuctUse, clearance: DuctClearance = USUAL_CLEARANCE, bottomIn = 0,
): FittedDuct | undefined {
  requireNumber(flowCfm, {path: "flowCfm", label: "air flow", unit: "cfm", min: 1, max: 20_000_000});
  const leastIn2 = (flowCfm / GREATEST_VELOCITY_FPM[use]) * IN2_PER_FT2;
  const {greatestDepthIn} = ductRoom(shape, place, clearance, bottomIn);
  let best: {widthIn: number; depthIn: number} | undefined;
  for (let depthIn = 2 * STEP_IN; depthIn <= inSteps(greatestDepthIn); depthIn += STEP_IN) {
    const widthIn = Math.max(2 * STEP_IN, Math.ceil(leastIn2 / depthIn / STEP_IN - 1e-9) * STEP_IN);
    const shaped = Math.max(widthIn, depthIn) <= GREATEST_ASPECT * Math.min(widthIn, depthIn);
    if (!shaped || widthIn > inSteps(ductWidthIn(shape, place, depthIn, clearance, bottomIn))) continue;
    if (!best || widthIn * depthIn < best.widthIn * best.depthIn) best = {widthIn, depthIn};
  }
  if (!best) return undefined;
  const size: DuctSize = {kind: "rectangular", ...best};
  return {place, size, velocityFpm: ductVelocityFpm(flowCfm, size)};
}

/** The smallest quiet branch in each place along a deck of double tees where one fits. */
export function quietBranches(shape: Shape, flowCfm: number, clearance: DuctClearance = USUAL_CLEARANCE): readonly FittedDuct[] {
  const find = () => DUCT_PLACES.flatMap((place) => smallestDuct(shape, place, flowCfm, "branch", clearance) ?? []);
  if (clearance !== USUAL_CLEARANCE) return find();
  let known = BRANCHES.get(shape);
  if (!known) BRANCHES.set(shape, known = new Kept(MOST_BRANCHES));
  return known.get(flowCfm, find);
}

/** Branches that were looked for last, by their air: a tee's is the same over all floors of its span. */
const BRANCHES = new WeakMap<Shape, Kept<readonly FittedDuct[], number>>();
const MOST_BRANCHES = 10;

/** The largest flow that goes quietly through the room between stems, cfm; 0 where no duct fits. */
export function greatestFlowCfm(shape: Shape, place: DuctPlace, use: DuctUse, clearance: DuctClearance = USUAL_CLEARANCE, bottomIn = 0): number {
  const {greatestDepthIn} = ductRoom(shape, place, clearance, bottomIn);
  let greatestIn2 = 0;
  for (let depthIn = 2 * STEP_IN; depthIn <= inSteps(greatestDepthIn); depthIn += STEP_IN) {
    const widthIn = Math.min(inSteps(ductWidthIn(shape, place, depthIn, clearance, bottomIn)), GREATEST_ASPECT * depthIn);
    if (widthIn * GREATEST_ASPECT >= depthIn) greatestIn2 = Math.max(greatestIn2, widthIn * depthIn);
  }
  return (greatestIn2 / IN2_PER_FT2) * GREATEST_VELOCITY_FPM[use];
}

/** How much of a length a duct can use, in. */
function inSteps(lengthIn: number): number {
  return Math.floor(lengthIn / STEP_IN + 1e-9) * STEP_IN;
}

/** A main duct below the stems and the branches that leave it between them. */
export interface DuctPlan {
  /** Air through the main where it has the most, cfm. */
  readonly flowCfm: number;
  /** Air of all the floor, of which two risers bring half each to the main; the main's own if omitted, cfm. */
  readonly servedCfm?: number;
  /** The main runs across the tees, below their stems. */
  readonly main: DuctSize;
  /** Air through one branch, cfm: at most that of all the floor. */
  readonly branchFlowCfm: number;
  readonly branch: DuctSize;
  readonly branchPlace: DuctPlace;
  readonly clearance?: DuctClearance;
}

/** The result of a duct plan. */
export interface DuctResult {
  readonly mainVelocityFpm: number;
  readonly branchVelocityFpm: number;
  /** Smallest quiet branch in each place where one fits. */
  readonly fits: readonly FittedDuct[];
  readonly checks: readonly Check[];
}

/**
 * Checks a main below the stems and branches between them: velocities, shape, and whether the branches fit. A deck of
 * planks has no stems: its branches run below it, beside the main.
 *
 * @throws InputError if a size, a flow or a clearance is out of range
 */
export function ductPlan(shape: Shape, plan: DuctPlan): DuctResult {
  const clearance = plan.clearance ?? USUAL_CLEARANCE;
  const mainVelocityFpm = ductVelocityFpm(plan.flowCfm, plan.main);
  const branchFlowCfm = requireNumber(plan.branchFlowCfm, {path: "branchFlowCfm", label: "air flow of a branch", unit: "cfm", min: 1, max: plan.servedCfm ?? plan.flowCfm});
  const branchVelocityFpm = ductVelocityFpm(branchFlowCfm, plan.branch);
  const tee = shape.family === "double tee";
  const fits = tee ? quietBranches(shape, branchFlowCfm, clearance) : [];
  return {
    mainVelocityFpm, branchVelocityFpm, fits,
    checks: [
      velocityCheck("main", mainVelocityFpm),
      velocityCheck("branch", branchVelocityFpm),
      shapeCheck("main", plan.main),
      shapeCheck("branch", plan.branch),
      ...(tee ? branchChecks(shape, plan, clearance) : []),
    ],
  };
}

function branchChecks(shape: Shape, plan: DuctPlan, clearance: DuctClearance): Check[] {
  const depthIn = outerDepthIn(plan.branch);
  const room = ductRoom(shape, plan.branchPlace, clearance);
  return [
    atMost({
      id: "branch duct depth", label: `Depth of the branch ${plan.branchPlace}`, unit: "in", clause: "geometry",
      holds: "The branch stays above the soffit of the stems.",
      fails: "The branch hangs below the stems: flatten it.",
      meetingIsEnough: true,
    }, depthIn, room.greatestDepthIn),
    atMost({
      id: "branch duct width", label: `Width of the branch ${plan.branchPlace}`, unit: "in", clause: "geometry",
      holds: "The branch fits between the stems with its insulation.",
      fails: "The stems, wider toward the flange, leave too little width at the branch's top: narrow it, or make it flatter and hang it lower.",
      meetingIsEnough: true,
    }, outerWidthIn(plan.branch), ductWidthIn(shape, plan.branchPlace, Math.min(depthIn, room.greatestDepthIn), clearance)),
  ];
}

function velocityCheck(use: DuctUse, velocityFpm: number): Check {
  return atMost({
    id: `${use} duct velocity`, label: `Velocity in the ${use}`, unit: "ft/min", clause: "common practice (from memory)",
    holds: "The air passes quietly.",
    fails: use === "main"
      ? "The air rushes and is heard: a larger duct, or several mains that share the floor."
      : "The air rushes and is heard: a larger duct.",
  }, velocityFpm, GREATEST_VELOCITY_FPM[use]);
}

function shapeCheck(use: DuctUse, size: DuctSize): Check {
  const [a, b] = [outerWidthIn(size), outerDepthIn(size)];
  // Stryker disable next-line EqualityOperator: a square one never fails
  const flat = a > b;
  return atMost({
    id: `${use} duct shape`, label: `Longer over shorter side of the ${use}`, unit: "", clause: "common practice",
    holds: "The duct is no flatter than is good for it.",
    fails: `A duct this flat takes a lot of sheet metal and rumbles: make it ${flat ? "deeper or narrower" : "wider or shallower"}.`,
    meetingIsEnough: true,
  }, Math.max(a, b) / Math.min(a, b), GREATEST_ASPECT);
}

const outerDepthIn = (size: DuctSize): number => (size.kind === "round" ? size.diameterIn : size.depthIn);
const outerWidthIn = (size: DuctSize): number => (size.kind === "round" ? size.diameterIn : size.widthIn);

function checkedSize(size: DuctSize): DuctSize {
  const side = (value: number, path: string, label: string) => requireNumber(value, {path, label, unit: "in", min: 2, max: 120});
  if (size.kind === "round") side(size.diameterIn, "diameterIn", "diameter of the duct");
  else {
    side(size.widthIn, "widthIn", "width of the duct");
    side(size.depthIn, "depthIn", "depth of the duct");
  }
  return size;
}
