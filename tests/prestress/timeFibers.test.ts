import {describe, expect, it} from "vitest";
import {STRAND_MODULUS_KSI} from "../../lib/materials/strand.js";
import {JACKING_STRESS_KSI} from "../../lib/prestress/losses.js";
import {USUAL_SCHEDULE} from "../../lib/prestress/schedule.js";
import {makeClock, type TimeClock} from "../../lib/prestress/timeClock.js";
import {relaxationKsi, stepThroughTime, type TimeSection} from "../../lib/prestress/timeStep.js";
import {timeModels} from "../../lib/member/timeLosses.js";
import {memberWith} from "../support/members.js";

/** A layer of concrete: its area, its height below the member's centroid, its modulus, and the strains that stress gave it, by source. */
interface Fiber {
  readonly areaIn2: number;
  readonly belowIn: number;
  readonly cast: boolean;
  readonly strains: Float64Array;
}

const MEMBER = {widthIn: 20, depthIn: 24, layers: 12};
const TOPPING = {widthIn: 80, depthIn: 3, layers: 4};
/** What the strands lose before they are cut, ksi. */
const BEFORE_KSI = 2;

function layersOf({widthIn, depthIn, layers}: typeof MEMBER, middleIn: number, cast: boolean, sources: number): Fiber[] {
  const thickIn = depthIn / layers;
  return Array.from({length: layers}, (_, i) => ({
    areaIn2: widthIn * thickIn, belowIn: middleIn - depthIn / 2 + (i + 0.5) * thickIn, cast, strains: new Float64Array(sources),
  }));
}

const sum = (fibers: readonly Fiber[], of: (fiber: Fiber) => number) => fibers.reduce((total, fiber) => total + of(fiber), 0);

/** A rectangle under a wide topping, with the second moments of its own layers, so that layers and section are one thing. */
function sample(sources: number) {
  const aboveIn = (MEMBER.depthIn + TOPPING.depthIn) / 2;
  const member = layersOf(MEMBER, 0, false, sources);
  const cast = layersOf(TOPPING, -aboveIn, true, sources);
  const section: TimeSection = {
    areaIn2: sum(member, ({areaIn2}) => areaIn2), inertiaIn4: sum(member, ({areaIn2, belowIn}) => areaIn2 * belowIn ** 2),
    releaseModulusKsi: 3600, modulusKsi: 4300, strandAreaIn2: 1.836, eccentricityIn: 8,
    selfKipIn: 900, toppingKipIn: 450, superimposedKipIn: 700,
    topping: {
      areaIn2: sum(cast, ({areaIn2}) => areaIn2), inertiaIn4: sum(cast, ({areaIn2, belowIn}) => areaIn2 * (belowIn + aboveIn) ** 2),
      aboveIn, modulusKsi: 3300,
    },
  };
  return {section, member, cast};
}

/**
 * The same section layer by layer: each layer would creep and shrink freely, plane sections and equilibrium tell what it
 * does instead, and the difference is stress in it. Two equations for shortening and curvature are set up from the layers
 * and solved by Cramer's rule; nothing is taken about centroids or second moments.
 */
function layerByLayer(clock: TimeClock): {stressKsi: number; curvaturePerIn: number}[] {
  const {section, member, cast} = sample(clock.sources);
  const {strandAreaIn2: strands, eccentricityIn: e} = section;
  let stressKsi = JACKING_STRESS_KSI - BEFORE_KSI;
  let curvaturePerIn = 0;
  const rows: {stressKsi: number; curvaturePerIn: number}[] = [];

  /** Moves the section so that it balances: `free` strains of the layers, slack of the strands, and outside force and moment. */
  const balance = (on: readonly Fiber[], modulus: (fiber: Fiber) => number, free: (fiber: Fiber) => number, slackKsi: number, forceKip: number, momentKipIn: number, source: number) => {
    const stiff = STRAND_MODULUS_KSI * strands;
    const a = sum(on, (f) => modulus(f) * f.areaIn2) + stiff;
    const b = sum(on, (f) => modulus(f) * f.areaIn2 * f.belowIn) + stiff * e;
    const c = sum(on, (f) => modulus(f) * f.areaIn2 * f.belowIn ** 2) + stiff * e * e;
    const push = forceKip + sum(on, (f) => modulus(f) * f.areaIn2 * free(f)) - strands * slackKsi;
    const turn = momentKipIn + sum(on, (f) => modulus(f) * f.areaIn2 * f.belowIn * free(f)) - strands * slackKsi * e;
    const strain = (push * c - b * turn) / (a * c - b * b);
    const curvature = (a * turn - b * push) / (a * c - b * b);
    for (const fiber of on) fiber.strains[source]! += strain + curvature * fiber.belowIn - free(fiber);
    stressKsi -= STRAND_MODULUS_KSI * (strain + curvature * e) + slackKsi;
    curvaturePerIn += curvature;
  };

  const later = (fiber: Fiber) => (fiber.cast ? section.topping!.modulusKsi : section.modulusKsi);
  const still = () => 0;
  balance(member, () => section.releaseModulusKsi, still, 0, strands * stressKsi, strands * stressKsi * e - section.selfKipIn, 0);
  rows.push({stressKsi, curvaturePerIn});
  let on = member;
  for (const step of clock.steps) {
    const creep = (coefficients: Float64Array | undefined, {strains}: Fiber) => [...coefficients ?? []].reduce((total, growth, s) => total + growth * (strains[s] as number), 0);
    const free = new Map(on.map((fiber) => [fiber, fiber.cast
      ? creep(step.toppingCreep, fiber) + step.toppingShrinkage : creep(step.creep, fiber) + step.shrinkage]));
    const slackKsi = clock.relaxationShare * relaxationKsi(stressKsi, 24 * step.fromDay, 24 * step.day);
    balance(on, later, (fiber) => free.get(fiber) as number, slackKsi, 0, 0, step.midSource);
    for (const moment of step.moments) {
      if (moment === "topping") {
        balance(member, later, still, 0, 0, -section.toppingKipIn, step.endSource);
        on = [...member, ...cast];
      }
      if (moment === "loading") balance(on, later, still, 0, 0, -section.superimposedKipIn, step.endSource);
    }
    rows.push({stressKsi, curvaturePerIn});
  }
  return rows;
}

describe("a topped section step by step through time", () => {
  const clockOf = () => makeClock(USUAL_SCHEDULE, timeModels(memberWith("10DT24", "88-S", {toppingIn: 2})), 6);

  it("loses and arches as sixteen layers of concrete and its strands do, each for itself but plane", () => {
    const clock = clockOf();
    const layers = layerByLayer(clock);
    const history = stepThroughTime(sample(clock.sources).section, clock, BEFORE_KSI);
    // Rows of one day after the first hold what came on that day; the last of each day is the layers' row.
    const byDay = [...new Map(history.map((row) => [row.day, row])).values()];
    expect(byDay).toHaveLength(layers.length);
    byDay.forEach(({stressKsi, curvaturePerIn}, i) => {
      const {elastic, creep, shrinkage, relaxation} = curvaturePerIn;
      expect(stressKsi).toBeCloseTo(layers[i]?.stressKsi as number, 9);
      expect(elastic + creep + shrinkage + relaxation).toBeCloseTo(layers[i]?.curvaturePerIn as number, 13);
    });
    expect(Math.abs(layers.at(-1)!.curvaturePerIn - layers[0]!.curvaturePerIn)).toBeGreaterThan(1e-6);
  });

  it("is fed by no more sources than release, the middle of each step, and the two loads", () => {
    const clock = clockOf();
    expect(clock.steps).toHaveLength(24);
    expect(clock.sources).toBe(1 + 24 + 2);
    expect(clock.steps.filter(({endSource, midSource}) => endSource > midSource).map(({moments}) => moments)).toEqual([["topping"], ["loading"]]);
  });
});

describe("relaxation of strand", () => {
  it("is none at 0.55 of yield and below, at any time", () => {
    expect(relaxationKsi(0.55 * 243, 24, 1000)).toBe(0);
    expect(relaxationKsi(100, 24, 1000)).toBe(0);
    expect(relaxationKsi(0.56 * 243, 24, 1000)).toBeGreaterThan(0);
  });

  it("grows by a forty-fifth of stress times its excess with each tenfold of the hours", () => {
    // 189 ksi: 189 / 243 - 0.55 = 0.22778; 189 x 0.22778 / 45 = 0.95667 ksi.
    expect(relaxationKsi(189, 10, 100)).toBeCloseTo(0.95667, 4);
    expect(relaxationKsi(189, 0.2, 10)).toBeCloseTo(0.95667, 4);
  });
});
