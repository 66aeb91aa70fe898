import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {loadOn, type ElementLoad, type FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {cellOf} from "./cell.js";
import {designCriteria, type Criteria} from "./criteria.js";
import {deckChecks} from "./deckChecks.js";
import {loadedDeck, type LoadedDeck} from "./loadedDeck.js";
import {safeLoad, type SafeLoad} from "./safeLoad.js";

/** All that is known of a deck member on a span under its loads. */
export interface DeckState extends LoadedDeck {
  readonly criteria: Criteria;
  readonly safe: SafeLoad;
  readonly checks: readonly Check[];
}

/** The deck member of a design: its state, and where its live load comes from. */
export interface DeckResult extends DeckState {
  readonly load: ElementLoad;
}

/**
 * Computes the deck member of a design under the floor's loads.
 *
 * @param stateOf - {@link deckState}, or what keeps what it has come to
 */
export function deckResult(design: Design, catalog: Catalog, member: Member, loads: FloorLoads, stateOf = deckState): DeckResult {
  const load = loadOn(loads, "deck member");
  const criteria = designCriteria(design, catalog, loads.superimposedDeadPsf);
  return {load, ...stateOf(member, design.bay.spanFt, criteria, load.governing.totalPsf, design.topping.ageDays)};
}

/**
 * Computes a deck member on a span, under the criteria's dead load and a live load.
 *
 * @param livePsf - live load after reduction, with partitions, psf
 * @param ageDays - age when set; without it the usual one
 */
export function deckState(member: Member, spanFt: number, criteria: Criteria, livePsf: number, ageDays?: number): DeckState {
  const safe = safeLoad(member, spanFt, criteria);
  const cell = cellOf(member, spanFt, criteria);
  const loaded = loadedDeck(cell, livePsf, ageDays);
  return {criteria, safe, ...loaded, checks: deckChecks(cell, criteria.limits, loaded, safe)};
}
