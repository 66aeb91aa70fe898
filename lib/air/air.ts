import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import type {LeastHeight, StoryStack} from "../story/stack.js";
import {IN_PER_FT} from "../units.js";
import {airChecks} from "./airChecks.js";
import {USUAL_CLEARANCE} from "./ductRoom.js";
import type {DuctUse} from "./ducts.js";
import {ductFriction} from "./friction.js";
import {mainCover, noiseClass} from "./noise.js";
import {sizingRateIn, type AirPlan} from "./plan.js";
import type {ServiceDucts, ServicesResult} from "./services.js";
import type {AirResult, DrawnDuct} from "./result.js";
import {sizedDuct, type SizedDuct} from "./sizing.js";
import {wayBack} from "./wayBack.js";

/**
 * Sizes, friction, noise and the way back of a main; undefined where no air comes through ducts.
 *
 * @param headroom - minimum height under what hangs from the ceiling; the room's own minimum height is the story's
 */
export function airResult(design: Design, shape: Shape, stack: StoryStack, {ducts, sprinklerIn, lightIn}: ServicesResult, headroom: LeastHeight): AirResult | undefined {
  if (!ducts) return undefined;
  const {plan} = ducts;
  const {services} = design;
  const rateIn = sizingRateIn(design);
  // Stryker disable next-line ArithmeticOperator: twice an inch of insulation is as much as two over it
  const insideIn = (outsideIn: number) => outsideIn - 2 * USUAL_CLEARANCE.insulationIn;
  const drawn = (flowCfm: number, widthIn: number, depthIn: number, use: DuctUse): DrawnDuct => {
    const velocityFpm = flowCfm / ((widthIn * depthIn) / IN_PER_FT ** 2);
    const cover = use === "branch" && design.story.ceiling === "none" ? "nothing" : use === "branch" ? "ceiling" : mainCover(design);
    return {flowCfm, widthIn, depthIn, velocityFpm, friction: ductFriction(Math.max(1, flowCfm), {kind: "rectangular", widthIn, depthIn}), noise: noiseClass(velocityFpm, use, cover)};
  };
  const main = drawn(ducts.peakCfm, insideIn(services.mainWidthIn), insideIn(services.mainDepthIn), "main");
  const feeder = drawn(ducts.branchFlowCfm, insideIn(services.branchWidthIn), insideIn(services.branchDepthIn), "branch");
  const {returnMain} = plan;
  const backFlowCfm = plan.returns.length > 0 && design.air.way === "trunk" ? (plan.returnCfm / plan.returns.length) * busiestShare(plan) : 0;
  const backFeeder = backFlowCfm >= 1 ? sizedDuct(backFlowCfm, feeder.depthIn, rateIn, "branch") : undefined;
  const back = wayBack(design, shape, stack, plan, ducts.hungIn);
  return {
    plan, ducts, rateIn, main, feeder,
    back: returnMain && drawn(plan.returnPeakCfm, returnMain.size.widthIn, returnMain.size.depthIn, "main"),
    backFeeder, wayBack: back,
    leastPlenumIn: leastPlenumIn(stack, ducts, sprinklerIn + lightIn),
    checks: airChecks(design, shape, stack, {plan, ducts, main, feeder, backFeeder, wayBack: back}, headroom),
  };
}

/** Share of a space's air on the busier side of the main. */
function busiestShare({sides, supply, flowCfm}: AirPlan): number {
  return (Math.max(...sides.map((side) => side.flowCfm)) * supply.length) / flowCfm;
}

/** What would do in the main's place for the rate, as deep as it is. */
export function mainForRate({ducts, rateIn, main}: AirResult): SizedDuct {
  return sizedDuct(ducts.peakCfm, main.depthIn, rateIn, "main");
}

/** What would do in the busiest feeder's place for the rate, as deep as it is. */
export function feederForRate({ducts, rateIn, feeder}: AirResult): SizedDuct {
  return sizedDuct(ducts.branchFlowCfm, feeder.depthIn, rateIn, "branch");
}

/** Loss along the straight main and its longest feeder, fittings neglected, in of water: from a riser to the far end of a main of one size with less and less air. */
export function straightLossIn({plan: {sections, sides, risers}, main, feeder}: Pick<AirResult, "plan" | "main" | "feeder">): number {
  const size = {kind: "rectangular", widthIn: main.widthIn, depthIn: main.depthIn} as const;
  const from = risers[0]?.space.centerIn ?? 0;
  const legs = [sections.filter(({x1In}) => x1In <= from), sections.filter(({x0In}) => x0In >= from)];
  const along = legs.map((leg) => leg.reduce((sum, {flowCfm, x0In, x1In}) =>
    (flowCfm >= 1 ? sum + (ductFriction(flowCfm, size).inPer100Ft * (x1In - x0In)) / (100 * IN_PER_FT) : sum), 0));
  const out = Math.max(...sides.map(({lengthIn}) => lengthIn));
  return Math.max(...along) + (feeder.friction.inPer100Ft * out) / (100 * IN_PER_FT);
}

/**
 * Shallowest plenum that holds the main, in: along the ledge its own depth with hangers, for pipes and lights keep out of that
 * strip; elsewhere the lights and pipes under it too. Never less than pipes and lights take, nor than the ledge, which a
 * ceiling does not rise above.
 */
export function leastPlenumIn(stack: Pick<StoryStack, "ledgeDepthIn">, {mainPlace, hungIn, stackedIn}: Pick<ServiceDucts, "mainPlace" | "hungIn" | "stackedIn">, zonesIn: number): number {
  return Math.max(stack.ledgeDepthIn, zonesIn, mainPlace === "along the ledge" ? hungIn : stackedIn);
}
