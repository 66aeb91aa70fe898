import {requireNumber, type NumberRule} from "../check.js";
import {fieldOf} from "../design/fields.js";
import {concrete, elasticModulusKsi, type Concrete, type ConcreteKind} from "../materials/concrete.js";
import type {StrandLayout} from "../prestress/layout.js";
import {compositeSection, type CompositeSection, type Topping} from "../sections/composite.js";
import type {SectionProperties, Shape} from "../sections/shape.js";
import {IN2_PER_FT2, feet} from "../units.js";
import {compressionZone, type CompressionZone} from "./compressionZone.js";

/** What it takes to make a {@link Member}. */
export interface MemberInput {
  readonly shape: Shape;
  readonly layout: StrandLayout;
  readonly concreteKind: ConcreteKind;
  readonly strengthPsi: number;
  readonly releaseStrengthPsi: number;
  /** 0 for none. */
  readonly toppingIn: number;
  readonly toppingStrengthPsi: number;
  /** Yearly average relative humidity, %; the handbook's examples use 70. */
  readonly humidityPercent: number;
}

/** A pretensioned deck member, ready for every question about it: nothing here depends on the span or the loads. */
export interface Member {
  readonly shape: Shape;
  readonly layout: StrandLayout;
  readonly concrete: Concrete;
  readonly releaseStrengthPsi: number;
  readonly modulusKsi: number;
  readonly releaseModulusKsi: number;
  /** The precast section alone; it carries its own weight and the wet topping (unshored). */
  readonly section: SectionProperties;
  readonly topping: Topping | undefined;
  readonly composite: CompositeSection | undefined;
  /** The section that carries what comes after the topping: composite, or the precast section where there is none. */
  readonly full: SectionProperties;
  readonly volumeToSurfaceIn: number;
  readonly humidityPercent: number;
  readonly widthFt: number;
  readonly selfWeightPlf: number;
  readonly toppingWeightPlf: number;
  readonly compression: CompressionZone;
}

/** What a member may be made of: what a design's deck may be made of. */
const RULES = {
  strengthPsi: {...fieldOf("deck.strengthPsi"), path: "strengthPsi"},
  releaseStrengthPsi: {...fieldOf("deck.releaseStrengthPsi"), path: "releaseStrengthPsi"},
  toppingIn: {...fieldOf("deck.toppingIn"), path: "toppingIn"},
  toppingStrengthPsi: {...fieldOf("deck.toppingStrengthPsi"), path: "toppingStrengthPsi"},
  humidityPercent: {...fieldOf("criteria.humidityPercent"), path: "humidityPercent"},
} satisfies Record<string, NumberRule>;

/**
 * Makes a member from its shape, strands and concretes.
 *
 * @throws InputError if a strength, thickness or humidity is out of range
 */
export function makeMember(input: MemberInput): Member {
  const {shape, layout} = input;
  requireNumber(input.strengthPsi, RULES.strengthPsi);
  requireNumber(input.releaseStrengthPsi, {...RULES.releaseStrengthPsi, max: input.strengthPsi});
  requireNumber(input.toppingIn, RULES.toppingIn);
  requireNumber(input.toppingStrengthPsi, RULES.toppingStrengthPsi);
  requireNumber(input.humidityPercent, RULES.humidityPercent);
  const memberConcrete = concrete(input.concreteKind, input.strengthPsi);
  const {section} = shape;
  const topping: Topping | undefined = input.toppingIn > 0
    ? {thicknessIn: input.toppingIn, widthIn: shape.widthIn, concrete: concrete("normalweight", input.toppingStrengthPsi)}
    : undefined;
  const composite = topping && compositeSection(section, memberConcrete, topping);
  return {
    shape, layout,
    concrete: memberConcrete,
    releaseStrengthPsi: input.releaseStrengthPsi,
    modulusKsi: elasticModulusKsi(memberConcrete.unitWeightPcf, input.strengthPsi),
    releaseModulusKsi: elasticModulusKsi(memberConcrete.unitWeightPcf, input.releaseStrengthPsi),
    section, topping, composite,
    full: composite ?? section,
    volumeToSurfaceIn: shape.volumeToSurfaceIn,
    humidityPercent: input.humidityPercent,
    widthFt: feet(shape.widthIn),
    selfWeightPlf: (section.areaIn2 * memberConcrete.unitWeightPcf) / IN2_PER_FT2,
    toppingWeightPlf: topping ? (topping.thicknessIn * topping.widthIn * topping.concrete.unitWeightPcf) / IN2_PER_FT2 : 0,
    compression: compressionZone(shape, memberConcrete, topping),
  };
}

/** Weight of the member with its topping, psf of floor. */
export function ownPsf(member: Pick<Member, "selfWeightPlf" | "toppingWeightPlf" | "widthFt">): number {
  return (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;
}

/**
 * The member with a topping that weighs more than its minimum thickness does, because it fills what the camber leaves:
 * what the supports feel. The section and its strength are still those of the minimum thickness.
 *
 * @param extraPsf - mean over the span
 */
export function withExtraTopping(member: Member, extraPsf: number): Member {
  return {...member, toppingWeightPlf: member.toppingWeightPlf + extraPsf * member.widthFt};
}
