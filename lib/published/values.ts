import {LEAST_LEDGE_IN} from "../edgeBeam/edgeBeamChecks.js";
import {barOf, occupancyOf, type Catalog, type ReductionRule} from "../catalog.js";
import {HANDBOOK_STRENGTHS_PSI, handbookCriteria} from "../deck/criteria.js";
import {strandOf} from "../deck/deckMember.js";
import {HORIZONTAL_ILLUMINANCE, overcastLuminance} from "../daylight/sky.js";
import type {SagLimit} from "../design/design.js";
import {InputError} from "../errors.js";
import {factoredLoad} from "../loads/combinations.js";
import {ELEMENT_FACTOR, type LoadElement} from "../loads/elements.js";
import {partitionPsf} from "../loads/floorLoads.js";
import {reduceLiveLoad} from "../loads/reduction.js";
import {ONE_WAY_WIDTH} from "../loads/tributary.js";
import {concrete, elasticModulusKsi, ruptureModulusKsi, stressBlockFactor, type ConcreteKind} from "../materials/concrete.js";
import {shearRootPsi} from "../materials/shearRoot.js";
import {STRAND_MODULUS_KSI, STRAND_STRENGTH_KSI, STRAND_YIELD_KSI, strandStressKsi, strandStressPowerKsi, type Strand} from "../materials/strand.js";
import {TENSION_COEFFICIENT} from "../member/allowables.js";
import {CAMBER_MULTIPLIERS, type CamberMultipliers} from "../member/camber.js";
import {TRANSFER_PHI, developmentOf} from "../member/development.js";
import {strengthReduction} from "../member/flexure.js";
import {CONTACT_STRENGTH_PSI} from "../member/horizontalShear.js";
import {CRACKING_MARGIN} from "../member/minimumStrength.js";
import {SAG_LIMITS} from "../member/sagLimit.js";
import {SHEAR_PHI, concreteShear, flexureShearFloor} from "../member/shear.js";
import {TOP_STEEL_STRESS_KSI} from "../member/topSteel.js";
import {transferLengthIn} from "../member/transfer.js";
import {LOSS_CONSTANTS} from "../prestress/losses.js";
import {parsePattern} from "../prestress/pattern.js";
import {allowedStressPsi} from "./allowedStress.js";
import {compare, type Comparison} from "./compare.js";
import {columnReduction, roofTeeCamber, roofTeeLeastStirrups, roofTeeStresses, websOfBeam} from "./examples.js";
import {DUCT_KINDS} from "./ducts.js";
import {fireTableIn, restrainedHours, ribShare} from "./fire.js";
import {ROOF_KINDS} from "./roof.js";
import type {PublishedValue} from "./tables.js";

type Ours = (key: string, catalog: Catalog) => number;

/** Our value by kind of row. A key of several parts has slashes between them. */
const KINDS: Readonly<Record<string, Ours>> = {
  "double-tee stress": (key) => named(roofTeeStresses(), key),
  "double-tee sag": () => roofTeeCamber().sagIn,
  "double-tee lift": () => roofTeeCamber().liftIn,
  "double-tee camber": () => roofTeeCamber().liftIn + roofTeeCamber().sagIn,
  "double-tee stirrups": () => roofTeeLeastStirrups(),
  "beam web": (key) => named(websOfBeam(), key),
  "column example": (key) => named(columnReduction(), key),
  "reduction": (key) => {
    const [rule, ...numbers] = key.split("/");
    const [livePsf = NaN, influenceFt2 = NaN, floors = NaN] = numbers.map(Number);
    return reduceLiveLoad({livePsf, rule: rule as ReductionRule, influenceFt2, floors}).factor;
  },
  "one-way width": () => ONE_WAY_WIDTH,
  "element factor": (key) => ELEMENT_FACTOR[key as LoadElement],
  "partition load": (key) => partitionPsf({livePsf: Number(key), partitions: true}, true),
  "live load": (key, catalog) => occupancyOf(catalog, key).livePsf,
  "concentrated load": (key, catalog) => occupancyOf(catalog, key).concentratedLb ?? 0,
  "combination": (key) => factoredLoad(...(key.split("/").map(Number) as [number, number])),
  "strand area": (key, catalog) => strandBySize(catalog, key).areaIn2,
  "strand weight": (key, catalog) => strandBySize(catalog, key).weightPlf,
  "strand breaking force": (key, catalog) => strandBySize(catalog, key).areaIn2 * STRAND_STRENGTH_KSI,
  "strand yield force": (key, catalog) => strandBySize(catalog, key).areaIn2 * STRAND_YIELD_KSI,
  "strand stress": (key) => strandStressKsi(Number(key)),
  "strand modulus": () => STRAND_MODULUS_KSI,
  "strand power stress": (key) => strandStressPowerKsi(Number(key)),
  "strand power modulus": () => strandStressPowerKsi(SMALL_STRAIN) / SMALL_STRAIN,
  "bar area": (key, catalog) => barOf(catalog, key).areaIn2,
  "bar diameter": (key, catalog) => barOf(catalog, key).diameterIn,
  "modulus": (key) => elasticModulusKsi(...(key.split("/").map(Number) as [number, number])),
  "rupture": (key) => {
    const [kind, strengthPsi] = key.split("/");
    return 1000 * ruptureModulusKsi(concrete(kind as ConcreteKind, Number(strengthPsi)));
  },
  "stress block": (key) => stressBlockFactor(Number(key)),
  "lambda": (key) => concrete(key as ConcreteKind, 5000).lambda,
  "phi": (key) => strengthReduction(Number(key)),
  "transfer length": (key) => transferLengthIn(...(key.split("/").map(Number) as [number, number])),
  "shear and minimum": () => CRACKING_MARGIN,
  "allowed stress": (key, catalog) => {
    const [limit = "", strengthPsi] = key.split("/");
    return allowedStressPsi(catalog, limit, Number(strengthPsi));
  },
  "loss constant": (key) => named({
    ...LOSS_CONSTANTS, "creep normalweight": LOSS_CONSTANTS.creep.normalweight,
    "creep sand-lightweight": LOSS_CONSTANTS.creep["sand-lightweight"], "relaxation": LOSS_CONSTANTS.relaxationKsi,
  }, key),
  "camber multiplier": (key) => CAMBER_MULTIPLIERS.untopped[key as keyof CamberMultipliers],
  "criterion": (key) => named({
    "dead untopped": handbookCriteria(false).superimposedDeadPsf, "dead topped": handbookCriteria(true).superimposedDeadPsf,
    "release strength": HANDBOOK_STRENGTHS_PSI.release, "topping strength": HANDBOOK_STRENGTHS_PSI.topping,
    // Stryker disable next-line BooleanLiteral: the class is the same with a topping and without.
    "tension coefficient": TENSION_COEFFICIENT[handbookCriteria(false).tensionClass],
  }, key),
  "pattern count": (key) => parsePattern(key).count,
  "pattern sixteenths": (key) => parsePattern(key).sixteenths,
  "constant": () => LEAST_LEDGE_IN,
  "bonded steel": () => TOP_STEEL_STRESS_KSI,
  "shear phi": () => SHEAR_PHI,
  "shear floor": (key) => {
    const [strengthPsi, effectiveStressKsi] = key.split("/").map(Number) as [number, number];
    return concreteShear({...BARE_WEB, rootPsi: shearRootPsi(concrete("normalweight", strengthPsi)), floor: flexureShearFloor(effectiveStressKsi)}).flexureShearKip;
  },
  "contact strength": () => CONTACT_STRENGTH_PSI,
  "development length": (key) => developmentOf(...(key.split("/").map(Number) as [number, number, number])).developmentIn,
  "transfer phi": () => TRANSFER_PHI,
  "sag limit": (key) => SAG_LIMITS[key as SagLimit].spanOver,
  "fire thickness": (key, catalog) => fireTableIn(catalog, "thicknessIn", key),
  "fire cover": (key, catalog) => fireTableIn(catalog, "coverIn", key),
  "fire restrained cover": (key, catalog) => restrainedHours(catalog, Number(key)),
  "ribbed soffit": (key, catalog) => ribShare(catalog, Number(key)),
  ...ROOF_KINDS,
  ...DUCT_KINDS,
  "sky luminance": (key) => overcastLuminance(Number(key)),
  "sky level light": () => HORIZONTAL_ILLUMINANCE.overcast,
};

/** A web 10 in wide and 20 in deep that carries nothing yet. */
const BARE_WEB = {
  webWidthIn: 10, depthIn: 20, deadShearKip: 0, addedShearKip: 0, addedMomentKipIn: 1, crackingMomentKipIn: 0, centroidStressKsi: 0, verticalPrestressKip: 0,
} as const;

/** Strain at which the power formula's first slope is read: small, yet far from the noise of subtraction. */
const SMALL_STRAIN = 1e-6;

/**
 * Published values of all other kinds beside ours.
 *
 * @throws InputError if a row's kind or key is not known
 */
export function compareValues(catalog: Catalog, rows: readonly PublishedValue[]): Comparison[] {
  return rows.map((row) => {
    const ours = KINDS[row.kind];
    if (!ours) throw new InputError({path: "kind", label: "kind of published value", value: row.kind, allowed: Object.keys(KINDS).join(", ")});
    const value = ours(row.key, catalog);
    if (!Number.isFinite(value)) throw new InputError({path: "key", label: row.kind, value: row.key, allowed: "a key that leads to a number"});
    return compare({group: row.group, quantity: row.quantity, unit: row.unit, published: row.value}, value, row);
  });
}

function strandBySize(catalog: Catalog, sixteenths: string): Strand {
  return strandOf(catalog, {text: sixteenths, count: 1, sixteenths: Number(sixteenths), profile: "straight"});
}

function named(values: Readonly<Record<string, unknown>>, key: string): number {
  return values[key] as number;
}
