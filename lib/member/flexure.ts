import {InputError} from "../errors.js";
import {CONCRETE_CRUSHING_STRAIN} from "../materials/concrete.js";
import {compressionKip, compressionMomentKipIn, type CompressionZone} from "./compressionZone.js";

/** Steel at one depth. */
export interface SteelLayer {
  readonly areaIn2: number;
  /** Below the compressed face, in. */
  readonly depthIn: number;
  /** Strain already in the steel when the concrete beside it has none: fse/Eps plus decompression for strand, 0 for bars. */
  readonly strainBefore: number;
  /** The material's curve: stress in ksi at a strain. */
  readonly stressKsi: (strain: number) => number;
}

/** The ultimate state of a section in bending. */
export interface FlexuralStrength {
  /** Neutral axis below the compressed face c, in. */
  readonly neutralAxisIn: number;
  /** Compression in the concrete, kip; equal to the steel's tension. */
  readonly compressionKip: number;
  readonly nominalMomentKipIn: number;
  /** Strength reduction factor by the net tensile strain. */
  readonly phi: number;
  readonly designMomentKipIn: number;
  /** Net tensile strain in the layer farthest from the compressed face: without prestress strain. */
  readonly tensileStrain: number;
}

/** Net tensile strain at and below which a section is compression-controlled: prestressed, or Grade 60 (ACI 318-19 21.2.2.1). */
export const COMPRESSION_CONTROLLED_STRAIN = 0.002;
/** Net tensile strain from which a section is tension-controlled (ACI 318-19 Table 21.2.2, prestressed). */
export const TENSION_CONTROLLED_STRAIN = 0.005;

/** Strength reduction factor of a tied or flexural member: 0.65 to 0.90 by net tensile strain (ACI 318-19 Table 21.2.2). */
export function strengthReduction(tensileStrain: number): number {
  const share = (tensileStrain - COMPRESSION_CONTROLLED_STRAIN) / (TENSION_CONTROLLED_STRAIN - COMPRESSION_CONTROLLED_STRAIN);
  return 0.65 + 0.25 * Math.max(0, Math.min(1, share));
}

/**
 * Strength in bending by strain compatibility: plane sections, 0.003 at the compressed face, the equivalent stress
 * block, and each layer's own curve (ACI 318-19 22.2, 22.3).
 *
 * @throws InputError if there is no steel, or none of it can be in tension
 */
export function flexuralStrength(zone: CompressionZone, layers: readonly SteelLayer[]): FlexuralStrength {
  const neutralAxisIn = findNeutralAxis(zone, layers);
  const forceKip = compressionKip(zone, neutralAxisIn);
  // On a level stretch or a jump of a curve the tension is set by equilibrium, so the moment is taken about the steel's
  // resultant in proportion to the force that the concrete really balances.
  let tensionKip = 0;
  let tensionMomentKipIn = 0;
  let deepestIn = 0;
  for (const layer of layers) {
    const layerKip = layer.areaIn2 * layer.stressKsi(strainAt(layer, neutralAxisIn));
    tensionKip += layerKip;
    tensionMomentKipIn += layerKip * layer.depthIn;
    deepestIn = Math.max(deepestIn, layer.depthIn);
  }
  const nominalMomentKipIn = tensionMomentKipIn * (forceKip / tensionKip) - compressionMomentKipIn(zone, neutralAxisIn);
  const tensileStrain = (CONCRETE_CRUSHING_STRAIN * (deepestIn - neutralAxisIn)) / neutralAxisIn;
  const phi = strengthReduction(tensileStrain);
  return {neutralAxisIn, compressionKip: forceKip, nominalMomentKipIn, phi, designMomentKipIn: phi * nominalMomentKipIn, tensileStrain};
}

/** Total strain of a layer at the ultimate state. */
export function strainAt(layer: SteelLayer, neutralAxisIn: number): number {
  return layer.strainBefore + (CONCRETE_CRUSHING_STRAIN * (layer.depthIn - neutralAxisIn)) / neutralAxisIn;
}

/** Tension of all layers for a neutral axis at the given depth, kip. */
function steelKip(layers: readonly SteelLayer[], neutralAxisIn: number): number {
  const curvature = CONCRETE_CRUSHING_STRAIN / neutralAxisIn;
  let forceKip = 0;
  for (let i = 0; i < layers.length; i++) {
    const layer = layers[i] as SteelLayer;
    forceKip += layer.areaIn2 * layer.stressKsi(layer.strainBefore + curvature * (layer.depthIn - neutralAxisIn));
  }
  return forceKip;
}

/** Accuracy of the balance, as a share of the force that balances. */
const BALANCE = 1e-11;
/** By how much a bracket is widened at first; each further step takes the fourth power. */
const WIDENING = 1.005;

/**
 * The depth at which compression and tension balance: the concrete's force grows and the steel's falls with depth, so
 * there is one root. Regula falsi with the stagnant end halved (Illinois), which never leaves its bracket.
 */
function findNeutralAxis(zone: CompressionZone, layers: readonly SteelLayer[]): number {
  // Stryker disable all: where the search starts changes how soon it ends and not where
  // If the section kept the width of its compressed face, the concrete's force would be this much for each inch.
  const kipPerIn = (zone.stressKsi[0] as number) * (zone.widthIn[0] as number) * (zone.blockFactor[0] as number);
  const guessIn = depthWithin(zone, steelKip(layers, zone.depthIn / 16) / kipPerIn);
  const fGuess = excessKip(zone, layers, guessIn);
  // A step by the concrete alone goes too far, because the steel yields a little on the way: the root lies between.
  const beyondIn = depthWithin(zone, guessIn - fGuess / kipPerIn);
  const fBeyond = excessKip(zone, layers, beyondIn);
  const shallower = beyondIn < guessIn;
  let low = shallower ? beyondIn : guessIn;
  let fLow = shallower ? fBeyond : fGuess;
  let high = shallower ? guessIn : beyondIn;
  let fHigh = shallower ? fGuess : fBeyond;
  // Stryker restore all
  // Where the width changes under way it may not, and the bracket is widened until it does.
  let factor = WIDENING;
  while (fLow >= 0 && low > 1e-6) {
    [high, fHigh] = [low, fLow];
    fLow = excessKip(zone, layers, (low /= factor));
    factor **= 4;
  }
  while (fHigh < 0 && high < 8 * zone.depthIn) {
    [low, fLow] = [high, fHigh];
    fHigh = excessKip(zone, layers, (high *= factor));
    factor **= 4;
  }
  if (!(fLow < 0 && fHigh >= 0)) {
    throw new InputError({path: "layers", label: "steel", value: layers.length, allowed: "layers whose tension the concrete can balance"});
  }
  // Stryker disable next-line ArithmeticOperator: this and the next are about the last digits
  const toleranceKip = BALANCE * compressionKip(zone, high);
  let side = 0;
  // Stryker disable next-line EqualityOperator,UpdateOperator: it ends long before
  for (let i = 0; i < 100; i++) {
    const c = high - (fHigh * (high - low)) / (fHigh - fLow);
    const f = excessKip(zone, layers, c);
    // Stryker disable next-line EqualityOperator,ArithmeticOperator: the last digits
    if (Math.abs(f) <= toleranceKip || high - low <= 1e-13 * high) return c;
    if (f < 0) {
      low = c;
      fLow = f;
      // Stryker disable next-line all: how soon it ends
      if (side === -1) fHigh /= 2;
      side = -1;
    } else {
      high = c;
      fHigh = f;
      // Stryker disable next-line all: how soon it ends
      if (side === 1) fLow /= 2;
      side = 1;
    }
  }
  return (low + high) / 2;
}

function depthWithin(zone: CompressionZone, depthIn: number): number {
  return Math.max(1e-3, Math.min(depthIn, zone.depthIn));
}

/** Compression less tension for a neutral axis at the given depth, kip. */
function excessKip(zone: CompressionZone, layers: readonly SteelLayer[], neutralAxisIn: number): number {
  return compressionKip(zone, neutralAxisIn) - steelKip(layers, neutralAxisIn);
}
