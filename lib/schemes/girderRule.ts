import {leastProjectionIn} from "../beams/seat.js";
import {onStems} from "../beams/stemRow.js";
import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import {InputError} from "../errors.js";
import {girderAlone, girderBent, girderUnderStems, type GirderResult} from "../girder/girder.js";
import {LEAST_GIRDER_LEDGE_IN, bendingFails} from "../girder/girderChecks.js";
import {girderBending, type GirderBending} from "../girder/unchecked.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {CRACKING_MARGIN} from "../member/minimumStrength.js";
import {girderEndChecks, type StripEnd} from "../walls/endStrip.js";
import {NOTHING_MADE, halfInchUp, ladder, leastOf, worstFailing} from "./least.js";

/** Depths that are tried, in: of an inverted tee's ledges, and of a rectangle. */
const LEDGES_IN = ladder(LEAST_GIRDER_LEDGE_IN, fieldOf("girder.ledgeDepthIn").max);
const DEPTHS_IN = ladder(fieldOf("girder.depthIn").min, fieldOf("girder.depthIn").max, 2);
/** Webs in the order in which they are tried, in: the usual one, and wider ones where it does not do. */
const WEBS_IN = [16, 20, 24, 30, 36] as const;
/** Concretes that are tried beyond the design's own where no size does with that: at 28 days and at release, psi. */
const CONCRETES = [{strengthPsi: 7000, releaseStrengthPsi: 5000}, {strengthPsi: 8000, releaseStrengthPsi: 6000}] as const;
/** A rectangle carries both decks on its top, so it begins wider, in. */
const WIDTHS_IN = [20, 24, 30, 36] as const;
/** Checks of its ledges, which a deeper ledge mends. */
const OF_LEDGE: ReadonlySet<string> = new Set(["girder ledge depth", "girder ledge line", "girder ledge shear", "girder ledge punching", "girder ledge bars", "end strip: girder ledge punching"]);
/** Checks that more strands mend. */
const MORE: ReadonlySet<string> = new Set([
  "girder load", "girder strength", "girder minimum strength", "girder tension", "girder crack control", "girder sag", "girder development",
]);

/** A girder by rule. */
export interface SizedGirder {
  readonly input: Design["girder"];
  readonly girder: GirderResult;
  /** What stops a shallower one; undefined where none less is tried, or nothing holds. */
  readonly depthStops: string | undefined;
}

/**
 * The girder by rule: with the usual web the least depth (an inverted tee's ledge by the inch, a rectangle by 2 in) that
 * some number of strands lets hold, with the fewest that do; a wider web where no depth does. Where nothing holds, the
 * last that was tried is kept and its checks tell.
 *
 * @param stems - checks of the row of stems on the girder
 * @param strip - what the floor beyond the end column lines brings to the girder's end, where it decides
 */
export function sizedGirder(design: Design, catalog: Catalog, laid: Member, loads: FloorLoads, stems: readonly Check[], strip?: StripEnd): SizedGirder | undefined {
  const checksOf = (one: GirderResult) => [...one.checks, ...(strip ? girderEndChecks(one, strip) : [])];
  const {girder: own, bay, edgeBeam: {jointGapIn}} = design;
  if (bay.baysAcross < 2) return undefined;
  const tee = own.kind === "inverted tee";
  // The girder's pads are cut to the room that the seat leaves.
  const neededIn = leastProjectionIn({jointGapIn, spanFt: bay.spanFt, beamSpanFt: bay.beamSpanFt, stemmed: onStems(laid)});
  const seated = {...own, ledgeProjectionIn: Math.min(fieldOf("girder.ledgeProjectionIn").max, halfInchUp(Math.max(LEAST_GIRDER_LEDGE_IN, neededIn)))};
  const depths = tee ? LEDGES_IN : DEPTHS_IN;
  let last: Stranded & {readonly input: Design["girder"]; readonly depthStops: string | undefined} | undefined;
  const concretes = [own, ...CONCRETES.filter(({strengthPsi, releaseStrengthPsi}) => strengthPsi >= own.strengthPsi && releaseStrengthPsi > own.releaseStrengthPsi)];
  for (const [webWidthIn, {strengthPsi, releaseStrengthPsi}] of concretes.flatMap((concrete) => (tee ? WEBS_IN : WIDTHS_IN).map((webIn) => [webIn, concrete] as const))) {
    const input = {...seated, strengthPsi, releaseStrengthPsi, webWidthIn};
    const at = (depthIn: number) => (strands: number): Tried | undefined => {
      const of = {...design, girder: {...input, [tee ? "ledgeDepthIn" : "depthIn"]: depthIn, strands}};
      return ifMade(() => {
        const bending = girderBending(of, catalog, laid, loads);
        return {bending, lacks: () => bendingFails(of, bending, (id) => MORE.has(id)), whole: () => ifMade(() => girderBent(of, laid, loads, bending))};
      });
    };
    // Ledges are sized before strands, of which they ask nothing.
    const ledge = leastOf(depths, (depthIn) => at(depthIn)(FIRST_STRANDS)?.whole(), (one) => (one ? worstFailing(checksOf(one), (id) => OF_LEDGE.has(id)) : NOTHING_MADE));
    const found = ledge && leastOf(depths, (depthIn) => fewestStrands(at(depthIn)), (one) => (one ? worstFailing(checksOf(one.girder)) : NOTHING_MADE), depths.indexOf(ledge.value));
    const depthIn = found?.value ?? (depths.at(-1) as number);
    const one = found?.found ?? fewestStrands(at(depthIn));
    if (!one) continue;
    last = {...one, input: {...input, [tee ? "ledgeDepthIn" : "depthIn"]: depthIn, strands: one.strands}, depthStops: (found?.stops ?? ledge?.stops)?.label};
    if (found) break;
  }
  const made = last ?? {input: own, girder: girderAlone(design, catalog, laid, loads) as GirderResult, depthStops: undefined};
  return {input: made.input, girder: girderUnderStems(made.girder, stems), depthStops: made.depthStops};
}

/** A girder with some number of strands, of which the bending is known and all else on request. */
interface Tried {
  readonly bending: GirderBending;
  /** Whether anything fails that more strands would mend. */
  readonly lacks: () => boolean;
  readonly whole: () => GirderResult | undefined;
}

interface Stranded {
  readonly strands: number;
  readonly girder: GirderResult;
}

/** What is made of sizes; undefined where they make no girder. */
function ifMade<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/**
 * The fewest strands with which nothing fails that more of them would mend; as many as fit where none do. What then fails
 * otherwise is a matter of the girder's size. The search begins at the number that the stresses of a first girder ask for.
 */
function fewestStrands(at: (strands: number) => Tried | undefined): Stranded | undefined {
  const {min, max} = fieldOf("girder.strands");
  const known = new Map<number, Tried | undefined>();
  const triedAt = (strands: number) => {
    if (!known.has(strands)) known.set(strands, at(strands));
    return known.get(strands);
  };
  const first = triedAt(FIRST_STRANDS);
  if (!first) return undefined;
  const most = Math.max(min, Math.min(max, first.bending.strandsMost));
  const clamp = (strands: number) => Math.min(most, Math.max(min, strands));
  const lacks = (strands: number) => triedAt(strands)?.lacks() ?? true;
  let strands = clamp(strandsFor(first.bending));
  const guess = triedAt(strands);
  if (guess) strands = clamp(strandsFor(guess.bending));
  while (strands < most && lacks(strands)) strands += 1;
  while (strands > min && !lacks(strands - 1)) strands -= 1;
  const girder = triedAt(strands)?.whole();
  return girder && {strands, girder};
}

/** With how many strands a girder's ledges are sized, and its strands first guessed. */
const FIRST_STRANDS = 12;

/** About the strands that would just do, by what the stresses and strengths of a girder with some number of them lack. */
function strandsFor({member, midspan, totalStresses, strength, momentKipIn, crackingMomentKipIn}: GirderBending): number {
  const {layout: {count}, section, concrete} = member;
  const tensionKsi = 0.012 * Math.sqrt(concrete.strengthPsi);
  const perStrandKsi = (midspan.effectiveForceKip / count) * (1 / section.areaIn2 + midspan.eccentricityIn / section.sbIn3);
  const lacksKsi = -totalStresses.bottomKsi - tensionKsi;
  const byStress = count + lacksKsi / perStrandKsi;
  const byStrength = count * Math.max(momentKipIn, Math.min(CRACKING_MARGIN * crackingMomentKipIn, 2 * momentKipIn)) / strength.designMomentKipIn;
  return Math.ceil(Math.max(byStress, byStrength));
}
