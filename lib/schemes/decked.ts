import {stemRowChecks} from "../beams/stemRowCheck.js";
import type {Catalog} from "../catalog.js";
import {exceeds, type Check} from "../checks.js";
import {seatIn} from "../deck/criteria.js";
import {deckResult, type DeckResult} from "../deck/deckResult.js";
import type {Design} from "../design/design.js";
import {inPart} from "../design/refusal.js";
import {hasOpenTop, hasRoof} from "../design/used.js";
import {floorDiaphragm, type FloorDiaphragm} from "../diaphragm/floorDiaphragm.js";
import type {EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import {openTopShape} from "../evaluate.js";
import type {GirderResult} from "../girder/girder.js";
import {Kept, lazy} from "../kept.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import {ownPsf, withExtraTopping, type Member} from "../member/member.js";
import {asOpenTop} from "../roof/openTop.js";
import {roofLoads, type RoofLoads} from "../snow/roofLoads.js";
import type {SettledTopping} from "../topping/fixedPoint.js";
import {carriedExtraPsf, type UnderTrueWeight} from "../topping/floorTopping.js";
import type {Neighbors} from "../topping/neighbors.js";
import {stripLoads, type StripLoads} from "../walls/endStrip.js";
import {guessedSideIn} from "./columnRule.js";
import {DeckRule, NOTHING_BESIDE, madeOf, withDeck, type Beside, type ChosenDeck, type NoDeck} from "./decks.js";
import type {SizedEdge} from "./edgeRule.js";
import type {SizedGirder} from "./girderRule.js";
import type {Choices} from "./grid.js";
import type {Housed} from "./housed.js";
import {rowFaults} from "./rowFaults.js";
import {ruledDeckEdge, type RuledWalls} from "./wallRule.js";

/** Decks that are tried beyond the first. */
export const MOST_DECKS = 2;
/** Parts of one deck that are kept, and plans of which what lies on the roof is: more would be copied about by the collector of garbage for longer than they save. */
const SHARED = 40;
/** Decks whose parts are kept: schemes of one deck in one bay stand next to each other. */
const DECKS_AT_HAND = 2;

/** What the schemes of one deck in one bay share, by whatever else it depends on. */
class OfDeck {
  readonly laid = new Kept<Laid, number>(SHARED);
  /** Beams as the floors have them, and as the open top level has the same. */
  readonly edges = new Kept<SizedEdge & {readonly onTop?: EdgeBeamResult}>(SHARED);
  readonly girders = new Kept<SizedGirder & {readonly onTop?: GirderResult} | undefined>(SHARED);
  readonly onSeats = new Kept<DeckOnSeat>(SHARED);
  readonly rows = new Kept<readonly Check[], number>(SHARED);
  readonly strips = new Kept<StripLoads | undefined, number>(SHARED);
  joint: Neighbors | undefined;
}

/** What a deck comes to on a seat under the loads of a plan. */
interface DeckOnSeat {
  readonly deck: DeckResult;
  /** Beside the true weight of the topping that levels it; undefined without one. */
  readonly heavy: () => UnderTrueWeight | undefined;
}

/** A deck with the topping that levels it, and as the diaphragm that it makes of its plan. */
interface Laid {
  readonly settled: SettledTopping | undefined;
  readonly laid: Member;
  readonly diaphragm: () => FloorDiaphragm;
}

/** A floor with its deck, before it has beams. */
export interface Decked extends Laid {
  readonly deck: ChosenDeck;
  /** What was asked of the deck beyond the floor's own load. */
  readonly asked: Beside;
  readonly design: Design;
  readonly member: Member;
  readonly loads: FloorLoads;
  /** The open top level as a floor: its design and its loads; undefined where a roof is over it, or no snow is given. */
  readonly top: ReturnType<typeof asOpenTop> | undefined;
  /** Side of the columns as it is guessed first, in. */
  readonly sideIn: number;
  readonly shared: OfDeck;
}

/** A floor with its first deck, and the one in whose place it was taken because that does not carry all that comes to it. */
export interface FirstDeck extends Decked {
  /** With how many checks fail there at least: its load, and those of how its row lies. */
  readonly instead?: {readonly of: FirstDeck; readonly fails: number};
}

/** Floors with their decks. What floors share is kept by all that it depends on. */
export class DeckedFloors {
  readonly decks: DeckRule;
  readonly #ofDecks = new Kept<OfDeck>(DECKS_AT_HAND);
  readonly #roofs = new Kept<RoofLoads>(SHARED);
  /** Stories and walls hang on a deck's shape, which decks of other concrete or strands have as well. */
  readonly housed = new Kept<Housed>(SHARED);
  readonly walls = new Kept<RuledWalls>(SHARED);

  constructor(private readonly catalog: Catalog) {
    this.decks = new DeckRule(catalog);
  }

  /**
   * A floor with the deck that its choices ask for, one that carries what its outermost piece or its open top brings beyond
   * the floor's own load where any does.
   *
   * @param bare - the design with its choices, its deck not chosen
   */
  first(bare: Design, choices: Choices): FirstDeck | NoDeck {
    const own = this.with(bare, choices, NOTHING_BESIDE);
    if ("none" in own) return own;
    let found: FirstDeck = own;
    for (let tries = 0; tries < MOST_DECKS; tries++) {
      const psf = Math.max(found.asked.psf, this.#lacksPsf(found));
      if (psf === found.asked.psf) break;
      const {design, member, sideIn} = found;
      const faults = rowFaults(design, member, sideIn);
      const next = this.with(bare, choices, {psf, sideIn: faults > 0 ? sideIn : found.asked.sideIn});
      if ("none" in next || next.member === member) break;
      // Stems that miss one beam miss the girder as well.
      const onGirder = design.bay.baysAcross > 1 && this.stems(found, withColumns(design, sideIn)).some(({verdict}) => verdict === "fails") ? 1 : 0;
      found = {...next, instead: {of: found, fails: 1 + faults + onGirder}};
    }
    return found;
  }

  /** A floor with a deck of which more is asked. */
  with(bare: Design, choices: Choices, asked: Beside): Decked | NoDeck {
    const deck = this.decks.choose(bare, choices, asked);
    if ("none" in deck) return deck;
    const {member} = deck;
    const design = withDeck(bare, deck);
    const {bay} = design;
    const loads = this.decks.loads(design, member.widthFt);
    const shared = this.#ofDecks.get(`${bay.spanFt} ${bay.beamSpanFt} ${bay.baysAlong} ${madeOf(design)}`, () => new OfDeck());
    const {settled, laid, diaphragm} = shared.laid.get(bay.baysAcross, (): Laid => {
      const found = this.decks.topping(design, member, this.decks.result(design, member, loads));
      return {settled: found, laid: withExtraTopping(member, carriedExtraPsf(found)), diaphragm: lazy(() => inPart(design, "diaphragm", () => floorDiaphragm(design, member)))};
    });
    const floor = {deck, asked, design, member, loads, shared, settled, laid, diaphragm, sideIn: guessedSideIn(design, laid, loads)};
    return {...floor, top: hasOpenTop(design) ? asOpenTop(design, this.onRoof(floor, design.column.roofLivePsf), loads) : undefined};
  }

  /** What a floor's deck comes to on the seat of a design. */
  onSeat({shared, member, loads, settled}: Pick<Decked, "shared" | "member" | "loads" | "settled">, design: Design): DeckOnSeat {
    return shared.onSeats.get(`${design.bay.baysAcross} ${seatIn(design)}`, () => {
      const deck = this.decks.result(design, member, loads);
      return {deck, heavy: lazy(() => settled && this.decks.underTrueWeight(design, member, deck, settled))};
    });
  }

  /** What lies on roof or open top: it follows from the plan and what stands around it, and of the deck from its width and, where it is open, its weight. */
  onRoof({design, member, laid, loads}: Omit<Decked, "top">, roofLivePsf: number): RoofLoads {
    const {spanFt, baysAcross, beamSpanFt, baysAlong} = design.bay;
    const key = `${spanFt} ${baysAcross} ${beamSpanFt} ${baysAlong} ${member.widthFt} ${hasRoof(design) ? "" : ownPsf(laid)} ${roofLivePsf}`;
    return this.#roofs.get(key, () => roofLoads({...design, column: {...design.column, roofLivePsf}}, this.catalog, {memberWidthFt: member.widthFt, ...(hasRoof(design) ? {} : openTopShape(laid, loads))}));
  }

  /** The strip of floor beyond the end column lines, which hangs on the columns alone. */
  strip({shared, member, laid, loads}: Decked, design: Design): StripLoads | undefined {
    return shared.strips.get(design.column.sideIn, () => stripLoads(design, {member: laid, edge: ruledDeckEdge(design, member), loads}));
  }

  /** Checks of the row of stems on their beams, for columns of a design's side. */
  stems({shared, member}: Decked, design: Design): readonly Check[] {
    return shared.rows.get(design.column.sideIn, () => stemRowChecks(design, this.catalog, member));
  }

  /** What a deck does not carry of the strip beyond it or of its open top, beyond the floor's own load, psf; 0 where it carries all. */
  #lacksPsf(floor: Decked): number {
    const {design, member, top, sideIn} = floor;
    const {deck} = this.onSeat(floor, design);
    const strip = this.strip(floor, withColumns(design, sideIn));
    const asks = (of: DeckResult, demandPsf: number) => (exceeds(demandPsf, of.safe.safeLoadPsf) ? demandPsf - deck.demandPsf : 0);
    const onTop = top && deckResult(top.top, this.catalog, member, top.loads);
    return Math.max(strip ? asks(deck, deck.demandPsf + strip.onPiecePsf) : 0, onTop ? asks(onTop, onTop.demandPsf) : 0);
  }
}

/** A design with columns of a side. */
function withColumns(design: Design, sideIn: number): Design {
  return {...design, column: {...design.column, sideIn}};
}
