import {STRAND_MODULUS_KSI, STRAND_YIELD_KSI} from "../materials/strand.js";
import {JACKING_STRESS_KSI} from "./losses.js";
import type {TimeMoment} from "./schedule.js";
import type {TimeClock} from "./timeClock.js";

/** A quantity by what brought it about: release and loads at once, creep, shrinkage, relaxation of the steel. */
export interface ByCause {
  readonly elastic: number;
  readonly creep: number;
  readonly shrinkage: number;
  readonly relaxation: number;
}

/** One cross-section and what comes upon it, for {@link stepThroughTime}. */
export interface TimeSection {
  readonly strandAreaIn2: number;
  /** Strands' centroid below the member's, in. */
  readonly eccentricityIn: number;
  readonly areaIn2: number;
  readonly inertiaIn4: number;
  readonly modulusKsi: number;
  readonly releaseModulusKsi: number;
  readonly topping: TimeTopping | undefined;
  /** Moments of own weight and topping, on the member alone, and of the superimposed dead load, on both, kip-in. */
  readonly selfKipIn: number;
  readonly toppingKipIn: number;
  readonly superimposedKipIn: number;
}

/** The topping as a part of a section. */
export interface TimeTopping {
  readonly areaIn2: number;
  readonly inertiaIn4: number;
  /** Its centroid above the member's, in. */
  readonly aboveIn: number;
  readonly modulusKsi: number;
}

/** A section at one time. On the day of a moment there are two: before it without its name, and after it. */
export interface SectionAtTime {
  readonly day: number;
  /** The moment of the schedule that this row comes right after. */
  readonly moment: TimeMoment | undefined;
  /** Stress in the strands, ksi. */
  readonly stressKsi: number;
  /** Lost since the jacks let go, ksi; dead load added later counts as a gain within elastic. */
  readonly lostKsi: ByCause;
  /** Curvature of the member, 1/in; positive arches it up. */
  readonly curvaturePerIn: ByCause;
}

/**
 * A cross-section step by step through time: one computation of strand stress and curvature.
 *
 * In each step the concretes would creep, each under every change of its own force and moment so far, from the age at
 * which that came, and shrink, and the steel would relax. They are bonded, so the section stays plane: two equations
 * of equilibrium give its shortening and curvature, and with them what force passes between member, topping and
 * strands. Nothing cracks; the strands act at their centroid; the moduli are those at release and at 28 days.
 *
 * Source: superposition of creep, plane sections and equilibrium (the general method).
 *
 * @param lostBeforeKsi - what the strands lose between jacking and release
 */
export function stepThroughTime(section: TimeSection, clock: TimeClock, lostBeforeKsi: number): SectionAtTime[] {
  const {strandAreaIn2: strands, eccentricityIn: e, topping} = section;
  const above = topping?.aboveIn ?? 0;
  const history: SectionAtTime[] = [];
  const lost = {elastic: 0, creep: 0, shrinkage: 0, relaxation: lostBeforeKsi};
  const bent = {elastic: 0, creep: 0, shrinkage: 0, relaxation: 0};
  let stressKsi = JACKING_STRESS_KSI - lostBeforeKsi;
  const member = new Strains(clock.sources);
  const cast = topping && new Strains(clock.sources);

  const note = (day: number, moment?: TimeMoment) => history.push({day, moment, stressKsi, lostKsi: {...lost}, curvaturePerIn: {...bent}});
  const move = (cause: keyof ByCause, {strain, curvature}: Movement, slackKsi = 0) => {
    const lossKsi = STRAND_MODULUS_KSI * (strain + curvature * e) + slackKsi;
    lost[cause] += lossKsi;
    bent[cause] += curvature;
    stressKsi -= lossKsi;
  };
  const load = (on: Stiffness, forceKip: number, momentKipIn: number, source: number) => {
    const now = on.under(forceKip, momentKipIn);
    move("elastic", now);
    member.add(source, now.strain, now.curvature);
    if (on.joined) cast?.add(source, now.strain - above * now.curvature, now.curvature);
  };

  // At release the strands' pull acts on concrete and strands together, so force and shortening come out at once.
  load(new Stiffness(section, section.releaseModulusKsi), strands * stressKsi, strands * stressKsi * e - section.selfKipIn, 0);
  note(clock.releaseDay, "release");
  const alone = new Stiffness(section, section.modulusKsi);
  const whole = topping ? new Stiffness(section, section.modulusKsi, topping) : alone;
  let on = alone;
  for (const step of clock.steps) {
    const creep = member.under(step.creep);
    const toppingCreep = cast && on.joined && step.toppingCreep ? cast.under(step.toppingCreep) : AT_REST;
    const slackKsi = Math.min(stressKsi, clock.relaxationShare * relaxationKsi(stressKsi, 24 * step.fromDay, 24 * step.day));
    const toppingShrinkage = on.joined ? step.toppingShrinkage : 0;
    const crept = on.held(creep, toppingCreep);
    const shrunk = on.held({strain: step.shrinkage, curvature: 0}, {strain: toppingShrinkage, curvature: 0});
    const relaxed = on.under(-strands * slackKsi, -strands * slackKsi * e);
    move("creep", crept);
    move("shrinkage", shrunk);
    move("relaxation", relaxed, slackKsi);
    // What the bond keeps a concrete from doing freely is stress in it, and creeps in its turn.
    const strain = crept.strain + shrunk.strain + relaxed.strain;
    const curvature = crept.curvature + shrunk.curvature + relaxed.curvature;
    member.add(step.midSource, strain - creep.strain - step.shrinkage, curvature - creep.curvature);
    if (on.joined) cast?.add(step.midSource, strain - above * curvature - toppingCreep.strain - toppingShrinkage, curvature - toppingCreep.curvature);
    note(step.day);
    for (const moment of step.moments) {
      if (moment === "topping") {
        load(alone, 0, -section.toppingKipIn, step.endSource);
        on = whole;
      }
      if (moment === "loading") load(on, 0, -section.superimposedKipIn, step.endSource);
      note(step.day, moment);
    }
  }
  return history;
}

/** How a part of the section moves: shortening at the part's centroid, and curvature, 1/in, positive arching up. */
interface Movement {
  readonly strain: number;
  readonly curvature: number;
}

const AT_REST: Movement = {strain: 0, curvature: 0};

/** The strains that stress changes brought to one concrete, each the stress over the modulus of its day, by source. */
class Strains {
  readonly #strain: Float64Array;
  readonly #curvature: Float64Array;

  constructor(sources: number) {
    this.#strain = new Float64Array(sources);
    this.#curvature = new Float64Array(sources);
  }

  add(source: number, strain: number, curvature: number): void {
    this.#strain[source]! += strain;
    this.#curvature[source]! += curvature;
  }

  /** What they all creep where each one's creep coefficient grows by so much. */
  under(coefficients: Float64Array): Movement {
    let strain = 0;
    let curvature = 0;
    for (let s = 0; s < coefficients.length; s++) {
      strain += (coefficients[s] as number) * (this.#strain[s] as number);
      curvature += (coefficients[s] as number) * (this.#curvature[s] as number);
    }
    return {strain, curvature};
  }
}

/** The stiffness of member, strands and, once it has joined, topping, about the member's centroid. */
class Stiffness {
  readonly joined: boolean;
  readonly #member: {axial: number; bending: number};
  readonly #topping: {axial: number; bending: number; aboveIn: number};
  readonly #axial: number;
  readonly #mixed: number;
  readonly #bending: number;

  constructor(section: TimeSection, modulusKsi: number, topping?: TimeTopping) {
    const {strandAreaIn2, eccentricityIn: e} = section;
    const strands = STRAND_MODULUS_KSI * strandAreaIn2;
    const cast = topping
      ? {axial: topping.modulusKsi * topping.areaIn2, bending: topping.modulusKsi * topping.inertiaIn4, aboveIn: topping.aboveIn}
      : {axial: 0, bending: 0, aboveIn: 0};
    this.joined = topping !== undefined;
    this.#member = {axial: modulusKsi * section.areaIn2, bending: modulusKsi * section.inertiaIn4};
    this.#topping = cast;
    this.#axial = this.#member.axial + strands + cast.axial;
    this.#mixed = strands * e - cast.axial * cast.aboveIn;
    this.#bending = this.#member.bending + strands * e * e + cast.bending + cast.axial * cast.aboveIn ** 2;
  }

  /** The movement under a force at the member's centroid, compression positive, and a moment that arches it up. */
  under(forceKip: number, momentKipIn: number): Movement {
    const determinant = this.#axial * this.#bending - this.#mixed ** 2;
    return {
      strain: (this.#bending * forceKip - this.#mixed * momentKipIn) / determinant,
      curvature: (this.#axial * momentKipIn - this.#mixed * forceKip) / determinant,
    };
  }

  /** The movement of the whole where member and topping would move so freely, but are bonded to each other and the strands. */
  held(member: Movement, topping: Movement): Movement {
    const pushKip = this.#topping.axial * topping.strain;
    return this.under(
      this.#member.axial * member.strain + pushKip,
      this.#member.bending * member.curvature + this.#topping.bending * topping.curvature - pushKip * this.#topping.aboveIn,
    );
  }
}

/**
 * Relaxation of low-relaxation strand held at a strain between two times in hours after it was pulled, ksi (Magura,
 * Sozen and Siess, PCI Journal, April 1964; from memory). None below 0.55 of the yield stress.
 */
export function relaxationKsi(stressKsi: number, fromHour: number, toHour: number): number {
  const level = stressKsi / STRAND_YIELD_KSI - 0.55;
  return level <= 0 ? 0 : (stressKsi * level * (Math.log10(Math.max(1, toHour)) - Math.log10(Math.max(1, fromHour)))) / 45;
}
