import {sag, strandLiftIn} from "../member/camber.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {fiberStresses} from "../member/stress.js";
import {concreteShear} from "../member/shear.js";
import {leastStirrupsIn2PerFt} from "../member/stirrups.js";
import {reduceLiveLoad} from "../loads/reduction.js";
import {fromMoments} from "../sections/shape.js";
import {inches} from "../units.js";

/**
 * The double-tee roof beam of a worked example (Hicks, Handbook of Civil Engineering Calculations, 2nd ed., sec. 2,
 * p. 2.69-2.71): known by its properties, not by its outline.
 */
const ROOF_TEE = {
  section: fromMoments(316, 10.98, 7240, 16), spanFt: 40, deadPlf: 401, livePlf: 240,
  /** First force and its eccentricity as the example finds them, and the share left after losses. */
  forceKip: 181.4, eccentricityIn: 6.07, remaining: 0.85,
  /** Modulus with creep in it: a third of the concrete's own. */
  creepModulusKsi: 1215,
} as const;

/** The example's section as a member without topping; stress asks no more of it. */
const ROOF_TEE_SECTIONS = {section: ROOF_TEE.section, full: ROOF_TEE.section, composite: undefined};

/** Stresses of the roof tee, psi, compression positive, by the names of the published rows. */
export function roofTeeStresses(): Readonly<Record<string, number>> {
  const {section, spanFt, deadPlf, livePlf, forceKip, eccentricityIn, remaining} = ROOF_TEE;
  const fullKipIn = uniformMomentKipIn(deadPlf + livePlf, spanFt, 0.5);
  const stresses = (kip: number, eIn: number, loadKipIn: number) =>
    fiberStresses(ROOF_TEE_SECTIONS, {eccentricityIn: eIn}, kip, {precastKipIn: loadKipIn, fullKipIn: 0});
  const load = stresses(0, eccentricityIn, fullKipIn);
  const first = stresses(forceKip, eccentricityIn, 0);
  return {
    "load bottom": 1000 * load.bottomKsi,
    "load top": 1000 * load.topKsi,
    "prestress bottom": 1000 * first.bottomKsi,
    "prestress top": 1000 * first.topKsi,
    "prestress mean": 1000 * stresses(forceKip, 0, 0).bottomKsi,
    "prestress gradient": (1000 * (first.bottomKsi - first.topKsi)) / section.depthIn,
    "final bottom": 1000 * stresses(remaining * forceKip, eccentricityIn, fullKipIn).bottomKsi,
  };
}

/** Movements of the roof tee at midspan, in, up positive. */
export function roofTeeCamber(): {sagIn: number; liftIn: number} {
  const {section, spanFt, deadPlf, forceKip, eccentricityIn, remaining, creepModulusKsi: modulusKsi} = ROOF_TEE;
  return {
    sagIn: -sag(deadPlf, inches(spanFt), modulusKsi, section.inertiaIn4),
    liftIn: strandLiftIn({
      forceKip: remaining * forceKip, spanFt, modulusKsi, inertiaIn4: section.inertiaIn4,
      endEccentricityIn: eccentricityIn, dropIn: 0, holdDownShare: 0.5,
    }),
  };
}

/** Strands, stirrup steel and web of the roof tee: its minimum stirrups, in2 per foot (the same example, p. 2.71). */
export function roofTeeLeastStirrups(): number {
  return leastStirrupsIn2PerFt({strengthPsi: 5000, webWidthIn: 12.74, depthIn: 11.09, strandAreaIn2: 1.089, strandStrengthKsi: 248, yieldKsi: 40, highlyPrestressed: true});
}

/**
 * Shear of a 12 x 24 in beam 4 ft from its support (McCormac, Design of Reinforced Concrete, ch. 19, example 19.5), lb:
 * the section's cracking moment is computed, the rest is given by the example.
 */
export function websOfBeam(): Readonly<Record<string, number>> {
  const rootPsi = Math.sqrt(4000);
  const {sbIn3} = fromMoments(288, 12, 13824, 24);
  const crackingMomentKipIn = sbIn3 * ((6 * rootPsi) / 1000 + 2.17 - 0.4);
  const given = {
    // The floor is the one that the example takes, by its edition of the code.
    rootPsi, floor: 1.7, webWidthIn: 12, depthIn: 0.8 * 24, deadShearKip: 7.2, addedShearKip: 26.64, addedMomentKipIn: inches(142.08),
    crackingMomentKipIn, centroidStressKsi: 0.868, verticalPrestressKip: 31.009,
  };
  const shear = concreteShear(given);
  // Where the soffit has cracked already, only the floor is left.
  const floorKip = concreteShear({...given, crackingMomentKipIn: 0}).flexureShearKip;
  return {
    "cracking moment": 1000 * crackingMomentKipIn, "flexure-shear": 1000 * shear.flexureShearKip,
    "web-shear": 1000 * shear.webShearKip, "concrete": 1000 * shear.concreteKip, "flexure-shear floor": 1000 * floorKip,
  };
}

/**
 * A basement column under three floors of 50 psf (Quimby, A Beginner's Guide to ASCE 7-10, ch. 5, example 5.1): influence
 * and tributary area of all floors together, ft2.
 */
const COLUMN = {livePsf: 50, influenceFt2: 4680, tributaryFt2: 1260, floors: 3} as const;

/** Factor, reduced load in psf and force in kip of the example's column. */
export function columnReduction(): Readonly<Record<string, number>> {
  const {factor, reducedPsf} = reduceLiveLoad({...COLUMN, rule: "yes"});
  return {factor, load: reducedPsf, force: (reducedPsf * COLUMN.tributaryFt2) / 1000};
}
