import {leastProjectionIn} from "../beams/seat.js";
import {onStems} from "../beams/stemRow.js";
import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import {girderAlone, girderUnderStems, type GirderResult} from "../girder/girder.js";
import {LEAST_GIRDER_LEDGE_IN} from "../girder/girderChecks.js";
import {GirderTrial} from "../girder/trial.js";
import {serviceMomentKipIn} from "../girder/unchecked.js";
import {lazy} from "../kept.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {CRACKING_MARGIN} from "../member/minimumStrength.js";
import {girderEndChecks, type StripEnd} from "../walls/endStrip.js";
import {NOTHING_MADE, deeperIn, halfInchUp, ifMade, ladder, leastOf, once, placeOf, worstFailing} from "./least.js";

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
/** A girder by rule. */
export interface SizedGirder {
  readonly input: Design["girder"];
  readonly girder: GirderResult;
  /** What stops a shallower one; undefined where none less is tried, or nothing holds. */
  readonly depthStops: () => string | undefined;
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
  const {girder: own, bay, edgeBeam: {jointGapIn}} = design;
  if (bay.baysAcross < 2) return undefined;
  const carried: Carried = {design, catalog, laid, loads, strip};
  const tee = own.kind === "inverted tee";
  // The girder's pads are cut to the room that the seat leaves.
  const neededIn = leastProjectionIn({jointGapIn, spanFt: bay.spanFt, beamSpanFt: bay.beamSpanFt, stemmed: onStems(laid)});
  const seated = {...own, ledgeProjectionIn: Math.min(fieldOf("girder.ledgeProjectionIn").max, halfInchUp(Math.max(LEAST_GIRDER_LEDGE_IN, neededIn)))};
  const depths = tee ? LEDGES_IN : DEPTHS_IN;
  let last: Omit<SizedGirder, "depthStops"> & {readonly stops: Stops} | undefined;
  const concretes = [own, ...CONCRETES.filter(({strengthPsi, releaseStrengthPsi}) => strengthPsi >= own.strengthPsi && releaseStrengthPsi > own.releaseStrengthPsi)];
  for (const [webWidthIn, {strengthPsi, releaseStrengthPsi}] of concretes.flatMap((concrete) => (tee ? WEBS_IN : WIDTHS_IN).map((webIn) => [webIn, concrete] as const))) {
    const input = {...seated, strengthPsi, releaseStrengthPsi, webWidthIn};
    const at = once((depthIn: number) => ofDepth(carried, input, depthIn));
    // Ledges are sized before strands, of which they ask nothing.
    const ledgeOf = once((depthIn) => {
      const checks = ifMade(() => at(depthIn)(FIRST_STRANDS)?.ledge());
      return checks ? worstFailing([...checks, ...(strip ? girderEndChecks({checks}, strip) : [])], (id) => OF_LEDGE.has(id)) : NOTHING_MADE;
    });
    const [leastIn] = depths as [number];
    const ledge = leastOf(depths, ledgeOf, (lacks) => lacks, placeOf(depths, deeperIn(leastIn, ledgeOf(leastIn)?.utilization ?? 0)));
    const near = ledge && nearDepth(depths, depths.indexOf(ledge.value), at);
    const found = near === undefined ? undefined : leastOf(depths, (depthIn) => fewestStrands(at(depthIn)), (one) => failing(one, strip), near);
    const depthIn = found?.value ?? (depths.at(-1) as number);
    const one = found?.found ?? fewestStrands(at(depthIn));
    const girder = one?.girder();
    if (!one || !girder) continue;
    last = {girder, input: {...input, [depthField(input)]: depthIn, strands: one.strands()}, stops: found?.stops ? {input, depthIn: depths[depths.indexOf(depthIn) - 1] as number} : ledge?.stops};
    if (found) break;
  }
  const {input, girder, stops} = last ?? {input: own, girder: girderAlone(design, catalog, laid, loads) as GirderResult, stops: undefined};
  return {input, girder: girderUnderStems(girder, stems), depthStops: lazy(() => stopsOf(carried, stops)?.label)};
}

/** What a girder carries, and of what it is chosen. */
interface Carried {
  readonly design: Design;
  readonly catalog: Catalog;
  readonly laid: Member;
  readonly loads: FloorLoads;
  readonly strip: StripEnd | undefined;
}

/** What stops a shallower girder: a check of its ledges, or what fails of the depth before. */
type Stops = Check | {readonly input: Design["girder"]; readonly depthIn: number} | undefined;

/** What stops a shallower girder, of which one is tried anew: what is kept would hold every girder that was tried. */
function stopsOf(carried: Carried, stops: Stops): Check | undefined {
  return stops && "depthIn" in stops ? failing(fewestStrands(ofDepth(carried, stops.input, stops.depthIn)), carried.strip)?.() : stops;
}

function depthField({kind}: Design["girder"]): "ledgeDepthIn" | "depthIn" {
  return kind === "inverted tee" ? "ledgeDepthIn" : "depthIn";
}

/** Girders of one depth by their strands. */
function ofDepth({design, catalog, laid, loads}: Carried, input: Design["girder"], depthIn: number): ByStrands {
  let like: GirderTrial | undefined;
  return once((strands: number): GirderTrial | undefined => ifMade(() =>
    (like = new GirderTrial({...design, girder: {...input, [depthField(input)]: depthIn, strands}}, catalog, laid, loads, like))));
}

/** What fails of a girder, which is told in full only where it is asked; that something lacks is known sooner. */
function failing(one: Stranded | undefined, strip: StripEnd | undefined): (() => Check) | undefined {
  const worst = () => {
    const girder = one?.girder();
    return girder ? worstFailing([...girder.checks, ...(strip ? girderEndChecks(girder, strip) : [])]) : NOTHING_MADE;
  };
  if (!one || one.fails()) return () => worst() ?? NOTHING_MADE;
  const fails = worst();
  return fails && (() => fails);
}

/** A girder of one size by its number of strands; undefined where that makes none. */
type ByStrands = (strands: number) => GirderTrial | undefined;

/** The place in a row of depths where the search for the least begins, from a first place on: by about the strands that each would need, whether they fit and how they press its young concrete. */
function nearDepth(depths: readonly number[], from: number, at: (depthIn: number) => ByStrands): number {
  const seemsToFail = (of: ByStrands) => {
    const guess = guessedStrands(of);
    return !guess || guess.wanted > guess.most || (of(guess.strands)?.crushes() ?? true) ? true : undefined;
  };
  const within = depths.slice(from);
  const first = at(within[0] as number)(FIRST_STRANDS);
  const deeperIn = first ? deeperByIn(first.at) : 0;
  const seems = leastOf(within, at, seemsToFail, within.filter((depthIn) => depthIn < (within[0] as number) + deeperIn).length);
  return from + (seems ? within.indexOf(seems.value) : within.length - 1);
}

/** By how much deeper a girder would about do, in: where its strands just fit and press its young concrete as far as they may, all load bends it by some three quarters of that concrete's strength. */
function deeperByIn(at: GirderTrial["at"]): number {
  const {depthIn, member: {section, releaseStrengthPsi}} = at;
  const bentPsi = (1000 * serviceMomentKipIn(at)) / section.sbIn3;
  return depthIn * (Math.sqrt(bentPsi / (0.75 * releaseStrengthPsi)) - 1);
}

/** A girder with the strands that it needs. */
interface Stranded {
  readonly strands: () => number;
  /** Whether anything fails that can be told before the girder is whole: something that more strands would mend, but no more fit; its young concrete; its ledges. */
  readonly fails: () => boolean;
  /** Undefined where its sizes make none. */
  readonly girder: () => GirderResult | undefined;
}

/**
 * The fewest strands with which nothing fails that more of them would mend; as many as fit where none do. What then fails
 * otherwise is a matter of the girder's size. The search begins at the number that stresses and strength at midspan ask for.
 */
function fewestStrands(at: ByStrands): Stranded | undefined {
  const guess = guessedStrands(at);
  if (!guess) return undefined;
  const {min, most} = guess;
  const near = lazy(() => nearStrands(at, guess) as number);
  const fewest = (lacks: (strands: number) => boolean) => {
    let strands = near();
    while (strands < most && lacks(strands)) strands += 1;
    while (strands > min && !lacks(strands - 1)) strands -= 1;
    return strands;
  };
  const lacks = once((strands: number) => ifMade(() => at(strands)?.lacks()) ?? true);
  const strands = lazy(() => fewest(lacks));
  const fails = (): boolean => {
    if (nearStrands(at, guess, (some) => at(some)?.crushes() ?? true) === undefined) return true;
    // What lacks something at midspan lacks it, so that no fewer will be needed than there; and each strand more presses the young concrete more.
    if (at(fewest((some) => ifMade(() => at(some)?.lacksAtMidspan()) ?? true))?.crushes()) return true;
    const trial = at(strands());
    return !trial || lacks(strands()) || trial.crushes() || trial.ledge().some(({verdict}) => verdict === "fails");
  };
  return {strands, fails: () => ifMade(fails) ?? true, girder: lazy(() => ifMade(() => at(strands())?.whole()))};
}

/**
 * Where the search for the fewest strands begins: as long as a number lacks stress or strength, more are needed than it
 * has, for strength grows less than strands do.
 *
 * @param crushes - asked now and then on the way, whether so many press the young concrete too hard: undefined is returned where as many as are needed do
 */
function nearStrands(at: ByStrands, {strands, most}: {readonly strands: number; readonly most: number}, crushes: (strands: number) => boolean = () => false): number | undefined {
  let asked = strands;
  for (let near = strands; ;) {
    const trial = at(near);
    const wanted = (trial && ifMade(() => strandsFor(trial))) ?? near;
    if (near >= most || wanted <= near) return near;
    near = Math.min(most, wanted);
    if (near < ASKED_AGAIN * asked) continue;
    if (crushes(near)) return undefined;
    asked = near;
  }
}

/** After how many times as many strands it is asked again whether they press the young concrete too hard. */
const ASKED_AGAIN = 1.2;

/** About the strands that a girder of a size needs, told by two numbers of them; undefined where its sizes make none. */
function guessedStrands(at: ByStrands): {readonly min: number; readonly most: number; readonly wanted: number; readonly strands: number} | undefined {
  const {min, max} = fieldOf("girder.strands");
  const first = at(FIRST_STRANDS);
  const firstFor = first && ifMade(() => strandsFor(first));
  if (!first || firstFor === undefined) return undefined;
  const most = Math.max(min, Math.min(max, first.at.strandsMost));
  const clamp = (strands: number) => Math.min(most, Math.max(min, strands));
  const guess = at(clamp(firstFor));
  const wanted = (guess && ifMade(() => strandsFor(guess))) ?? clamp(firstFor);
  return {min, most, wanted, strands: clamp(wanted)};
}

/** With how many strands a girder's ledges are sized, and its strands first guessed. */
const FIRST_STRANDS = 12;

/** About the strands that would just do, by what the stresses and strengths of a girder with some number of them lack. */
function strandsFor(trial: GirderTrial): number {
  const {member, midspan, totalStresses, momentKipIn} = trial.at;
  const {strength, crackingMomentKipIn} = trial.strength();
  const {layout: {count}, section, concrete} = member;
  const tensionKsi = 0.012 * Math.sqrt(concrete.strengthPsi);
  const perStrandKsi = (midspan.effectiveForceKip / count) * (1 / section.areaIn2 + midspan.eccentricityIn / section.sbIn3);
  const lacksKsi = -totalStresses.bottomKsi - tensionKsi;
  const byStress = count + lacksKsi / perStrandKsi;
  const byStrength = count * Math.max(momentKipIn, Math.min(CRACKING_MARGIN * crackingMomentKipIn, 2 * momentKipIn)) / strength.designMomentKipIn;
  return Math.ceil(Math.max(byStress, byStrength));
}
