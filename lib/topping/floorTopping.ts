import {atLeast, atMost, exceeds, type Check} from "../checks.js";
import type {DeckResult} from "../deck/deckResult.js";
import {safeLoad, type SafeLoad} from "../deck/safeLoad.js";
import type {Design} from "../design/design.js";
import {withExtraTopping, type Member} from "../member/member.js";
import type {StoryStack} from "../story/stack.js";
import type {ToppingPoint} from "./profile.js";
import {settleTopping, type SettledTopping} from "./fixedPoint.js";

/** The settled topping of a design, held against what deck and story have counted on. */
export interface FloorTopping extends SettledTopping {
  /** What the deck carries beyond its own weight and the topping's true weight, psf. */
  readonly safe: SafeLoad;
  /** Concrete of one bay in a layer of the minimum thickness, and beyond it, yd3. */
  readonly layerYd3: number;
  readonly fillYd3: number;
  /** How far the floor at the supports stands above a topping of the minimum thickness, in. */
  readonly buildUpIn: number;
  /** Ceiling height at the supports with the topping as thick as it is there, in. */
  readonly ceilingHeightIn: number;
}

/** What a deck carries beyond its own weight and the topping's true weight, and that held against what is required of it. */
export interface UnderTrueWeight {
  readonly safe: SafeLoad;
  readonly check: Check;
}

/** The topping of a design, settled on the camber at the design's age, with the finish that the design asks for; undefined without topping. */
export function settledTopping(design: Design, member: Member, deck: Pick<DeckResult, "camber">): SettledTopping | undefined {
  return settleTopping(member, deck.camber, design.bay, {followShare: design.topping.followShare});
}

/** What the topping brings to beams and columns beyond its minimum thickness, psf on the mean; 0 without topping. See {@link SettledTopping.carriedPsf}. */
export function carriedExtraPsf(topping: Pick<SettledTopping, "carriedPsf"> | undefined): number {
  return topping?.carriedPsf ?? 0;
}

/**
 * Most weight of topping beyond its minimum thickness that the deck's strength counts as topping, psf: 10 in of concrete.
 * Under more, a member that sags by feet leaves the range of the methods; it is asked of it as load.
 */
const MOST_EXTRA_PSF = 120;

/**
 * A settled topping held against the design's deck and story. The deck's own checks count the minimum thickness all
 * along; here the true weight stands against them, as a uniform load that bends midspan as much. Story heights count the minimum thickness as well; what the ends have more of raises the
 * floor over its supports, or lowers the deck under it. Beams and columns count it in full.
 */
export function floorTopping(
  design: Design, member: Member, deck: DeckResult, story: StoryStack, settled: SettledTopping, {safe, check} = underTrueWeight(design.bay.spanFt, member, deck, settled),
): FloorTopping {
  const layerYd3 = (settled.bayYd3 * settled.leastIn) / settled.averageIn;
  const buildUpIn = Math.max(0, (settled.points[0] as ToppingPoint).thicknessIn - settled.leastIn);
  const ceilingHeightIn = story.ceilingHeightIn - buildUpIn;
  const checks: Check[] = [
    ...settled.checks, check,
    atLeast({
      id: "topping ceiling", label: "Ceiling height under the thickest topping", unit: "in", clause: "IBC 2021 1208.2; geometry",
      holds: "The room stays high enough where the topping is thickest.",
      fails: `Where the topping is thickest the deck hangs so much lower that the room is too low: raise the story${story.ceilingHeightIn < story.least.leastIn ? "" : ", or let the surface follow the camber"}.`,
    }, ceilingHeightIn, story.least.leastIn),
  ];
  return {...settled, safe, layerYd3, fillYd3: settled.bayYd3 - layerYd3, buildUpIn, ceilingHeightIn, checks};
}

/** What a deck carries of load beside its topping's true weight. */
export function underTrueWeight(spanFt: number, member: Member, deck: Pick<DeckResult, "criteria" | "demandPsf" | "safe">, settled: Pick<SettledTopping, "extra">): UnderTrueWeight {
  // What is more than a topping is asked of the deck as load.
  const countedPsf = Math.min(MOST_EXTRA_PSF, settled.extra.momentPsf);
  const safe = safeLoad(withExtraTopping(member, countedPsf), spanFt, deck.criteria);
  // A topping of one thickness mends only what its fill has spoiled.
  const bareHolds = !exceeds(deck.demandPsf, deck.safe.safeLoadPsf);
  return {safe, check: atMost({
    id: "topping load", label: "Load under the topping's true weight", unit: "psf", clause: "the deck's own limits",
    holds: "The deck carries the load and all the topping that levels it.",
    fails: `With the topping that levels it the deck cannot carry the load: ${bareHolds ? "let the surface follow the camber, or take " : ""}a deeper member or a shorter span.`,
  }, deck.demandPsf + settled.extra.momentPsf - countedPsf, safe.safeLoadPsf)};
}
