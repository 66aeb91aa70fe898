import {beamCapacity} from "../beams/beamCapacity.js";
import {HANDBOOK_EFFECTIVE_STRESS_KSI, HANDBOOK_STEP_PLF, handbookBeamCriteria} from "../beams/beamCriteria.js";
import {prestressedBeam} from "../beams/prestressedBeam.js";
import type {Catalog} from "../catalog.js";
import {STRAND_MODULUS_KSI, strandStressKsi, strandTailKsi} from "../materials/strand.js";
import {flexuralStrength} from "../member/flexure.js";
import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {decompressionStrain, strandLayers} from "../member/strength.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {kipFt} from "../units.js";
import {handbookBeam} from "./beamLoads.js";
import type {PublishedBeamLoad} from "./tables.js";

/** What a guess at the handbook's unprinted assumptions does to its loads of beams. */
export interface BeamTrial {
  readonly words: string;
  /** Cells that ours, rounded down as printed, meets to the digit. */
  readonly toTheDigit: number;
  /** Ours less printed before rounding, plf; from 0 up to the step is what rounding down leaves. */
  readonly leastPlf: number;
  readonly meanPlf: number;
  readonly mostPlf: number;
}

/** One guess: the effective prestress, and how the strength is found from it. */
interface Guess {
  readonly words: string;
  /** Undefined for losses by the component method. */
  readonly stressKsi: number | undefined;
  readonly decompression?: false;
  /** Strands in their usual rows instead of all at the printed height. */
  readonly inRows?: true;
  readonly earlierCurve?: true;
}

/** 22 % lost: a round guess of older practice (from memory). */
const FIFTH_LOST_KSI = 0.78 * JACKING_STRESS_KSI;
const FLAT_KSI = HANDBOOK_EFFECTIVE_STRESS_KSI;

const GUESSES: readonly Guess[] = [
  {words: "losses by the component method", stressKsi: undefined},
  {words: `${FLAT_KSI} ksi`, stressKsi: FLAT_KSI},
  {words: `${FLAT_KSI} ksi, decompression left out`, stressKsi: FLAT_KSI, decompression: false},
  {words: `${FLAT_KSI} ksi, strands in their rows`, stressKsi: FLAT_KSI, inRows: true},
  {words: `${FLAT_KSI} ksi, the sixth edition's strand curve`, stressKsi: FLAT_KSI, earlierCurve: true},
  {words: "160 ksi", stressKsi: 160},
  {words: "22 % lost", stressKsi: FIFTH_LOST_KSI},
  {words: "22 % lost, decompression left out", stressKsi: FIFTH_LOST_KSI, decompression: false},
];

/** The handbook's loads of beams by several guesses at what it does not print. */
export function beamTrials(catalog: Catalog, rows: readonly PublishedBeamLoad[]): BeamTrial[] {
  return GUESSES.map((guess) => {
    const ours = rows.map((row) => loadBy(catalog, row, guess));
    const off = ours.map((plf, i) => plf - (rows[i] as PublishedBeamLoad).safeLoadPlf);
    return {
      words: guess.words,
      toTheDigit: off.filter((plf) => plf >= 0 && plf < HANDBOOK_STEP_PLF).length,
      leastPlf: Math.min(...off), mostPlf: Math.max(...off), meanPlf: off.reduce((sum, plf) => sum + plf, 0) / off.length,
    };
  });
}

function loadBy(catalog: Catalog, row: PublishedBeamLoad, guess: Guess): number {
  const criteria = handbookBeamCriteria();
  if (guess.stressKsi === undefined) {
    return beamCapacity(handbookBeam(catalog, row), row.spanFt, {...criteria, assumedEffectiveStressKsi: undefined}).safeLoadPlf;
  }
  const member = guess.inRows ? prestressedBeam(catalog, {designation: row.member, strands: row.strands}) : handbookBeam(catalog, row);
  const factoredPlf = designMomentKipIn(member, guess.stressKsi, guess) / uniformMomentKipIn(1, row.spanFt, 0.5);
  return (factoredPlf - criteria.deadFactor * member.selfWeightPlf) / mixedFactor();
}

function designMomentKipIn(member: Member, stressKsi: number, guess: Guess): number {
  const before = stressKsi / (guess.earlierCurve ? EARLIER_MODULUS_KSI : STRAND_MODULUS_KSI);
  const strainBefore = before + (guess.decompression === false ? 0 : decompressionStrain(member, 0.5, stressKsi));
  const layers = strandLayers(member, 0.5, stressKsi);
  return flexuralStrength(member.compression, layers.map((layer) => (
    {...layer, strainBefore, stressKsi: guess.earlierCurve ? earlierStressKsi : strandStressKsi}
  ))).designMomentKipIn;
}

/** The sixth edition's curve: 28,500 strain up to 0.0086, the same tail (PCI Design Handbook, 6th ed., design aid 11.2.5; from memory). */
const EARLIER_MODULUS_KSI = 28500;
// Stryker disable next-line EqualityOperator: the pieces are next to equal where they meet.
const earlierStressKsi = (strain: number): number => (strain <= 0.0086 ? EARLIER_MODULUS_KSI * strain : strandTailKsi(strain));

/** Factor on a load that is half dead and half live. */
function mixedFactor(): number {
  const {deadShare, deadFactor, liveFactor} = handbookBeamCriteria();
  return deadFactor * deadShare + liveFactor * (1 - deadShare);
}

/** The design strengths that the cells of one row allow if they were rounded in one way, kip-ft; they agree if least <= most. */
export interface StrengthWindow {
  readonly page: string;
  readonly leastKipFt: number;
  readonly mostKipFt: number;
}

/**
 * What the cells alone say about the strength behind them, whatever theory made it: each was rounded from a load for
 * which 1.2 times own weight and the load's own factor just reach the one strength of the beam.
 *
 * @param rounded - to the nearest step, or down to it
 */
export function strengthWindows(catalog: Catalog, rows: readonly PublishedBeamLoad[], rounded: "to the nearest" | "down"): StrengthWindow[] {
  const belowPlf = rounded === "down" ? 0 : HANDBOOK_STEP_PLF / 2;
  const {deadFactor} = handbookBeamCriteria();
  return [...new Set(rows.map((row) => row.member))].map((member) => {
    const cells = rows.filter((row) => row.member === member);
    const ownPlf = handbookBeam(catalog, cells[0] as PublishedBeamLoad).selfWeightPlf;
    const strength = (row: PublishedBeamLoad, plf: number) => kipFt(uniformMomentKipIn(deadFactor * ownPlf + mixedFactor() * plf, row.spanFt, 0.5));
    return {
      page: member,
      leastKipFt: Math.max(...cells.map((row) => strength(row, row.safeLoadPlf - belowPlf))),
      mostKipFt: Math.min(...cells.map((row) => strength(row, row.safeLoadPlf - belowPlf + HANDBOOK_STEP_PLF))),
    };
  });
}
