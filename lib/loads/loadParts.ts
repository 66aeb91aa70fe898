import type {Design} from "../design/design.js";
import type {ElementLoad} from "./floorLoads.js";
import {liveName} from "./liveWords.js";
import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "./combinations.js";

/** One part of what stands on a square foot of floor. */
export interface LoadPart {
  readonly name: string;
  readonly kind: "member" | "topping" | "layer" | "partitions" | "live";
  readonly loadPsf: number;
}

/** The load per square foot of floor, part by part. */
export interface FloorLoadParts {
  /** The structure's own weight: the deck member, then its topping if it has one. */
  readonly own: readonly LoadPart[];
  /** What the structure carries besides itself, from what stays to what comes and goes. */
  readonly carried: readonly LoadPart[];
  readonly ownPsf: number;
  readonly carriedPsf: number;
}

/** A deck on its floor: what its own weight and its loads are computed from. */
export interface LoadedFloor {
  readonly design: Pick<Design, "loads">;
  readonly member: {readonly selfWeightPlf: number; readonly toppingWeightPlf: number; readonly widthFt: number};
  readonly deck: {readonly load: ElementLoad; readonly superimposedDeadPsf: number; readonly livePsf: number};
}

/**
 * The load per square foot of the deck in its parts, which add up to the structure's own weight and to the demand on
 * the deck member. Parts that weigh nothing are omitted.
 */
export function loadParts({design, member, deck}: LoadedFloor): FloorLoadParts {
  const {room, reduction} = deck.load.governing;
  const own: LoadPart[] = [
    {name: "deck member", kind: "member", loadPsf: member.selfWeightPlf / member.widthFt},
    {name: "topping", kind: "topping", loadPsf: member.toppingWeightPlf / member.widthFt},
  ];
  const carried: LoadPart[] = [
    ...design.loads.layers.map((layer): LoadPart => ({name: layer.name, kind: "layer", loadPsf: layer.loadPsf})),
    {name: "movable partitions", kind: "partitions", loadPsf: room.partitionPsf},
    {name: `${liveName(deck.load.governing)}, ${room.name}`, kind: "live", loadPsf: reduction.reducedPsf},
  ];
  const sum = (parts: readonly LoadPart[]) => parts.reduce((total, part) => total + part.loadPsf, 0);
  const there = (parts: readonly LoadPart[]) => parts.filter((part) => part.loadPsf > 0);
  return {own: there(own), carried: there(carried), ownPsf: sum(own), carriedPsf: sum(carried)};
}

/** The two combinations of dead and live load on the deck, psf of floor, and the greater of them. */
export interface DeckCombinations {
  /** Structure and superimposed dead load. */
  readonly deadPsf: number;
  readonly livePsf: number;
  /** 1.4D. */
  readonly deadOnlyPsf: number;
  /** 1.2D + 1.6L. */
  readonly deadAndLivePsf: number;
  readonly governs: "1.4D" | "1.2D + 1.6L";
}

/**
 * Factored loads on the deck by both combinations (ASCE 7-16 2.3.1, combinations 1 and 2).
 *
 * @param ownPsf - the deck with its topping: at its lightest, as its own checks count it, if omitted
 */
export function deckCombinations(floor: LoadedFloor, ownPsf = loadParts(floor).ownPsf): DeckCombinations {
  const deadPsf = ownPsf + floor.deck.superimposedDeadPsf;
  const {livePsf} = floor.deck;
  const deadOnlyPsf = DEAD_ONLY_FACTOR * deadPsf;
  const deadAndLivePsf = DEAD_FACTOR * deadPsf + LIVE_FACTOR * livePsf;
  return {deadPsf, livePsf, deadOnlyPsf, deadAndLivePsf, governs: deadOnlyPsf > deadAndLivePsf ? "1.4D" : "1.2D + 1.6L"};
}
