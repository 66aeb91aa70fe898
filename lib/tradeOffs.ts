import type {Catalog} from "./catalog.js";
import {EVERY_KIND, frontier, type Frontier, type FrontierProgress} from "./deck/frontier.js";
import type {Design} from "./design/design.js";
import {demandOf} from "./evaluate.js";
import {deckMember} from "./deck/deckMember.js";
import {floorLoads} from "./loads/floorLoads.js";
import {withOwnFactors} from "./materials/carbon.js";

/** What a search for trade-offs is made for. */
export interface TradeOffInput {
  readonly design: Design;
  /** The reader's own carbon factors by id, in place of the table's. */
  readonly ownFactors: Readonly<Record<string, number>>;
  /** Whether every kind of deck is tried, or those alone that the design considers. */
  readonly everyKind: boolean;
}

/** The decks for a design's floor that no other beats; yields how far it is. Inputs and results are plain data. */
export function* tradeOffs(catalog: Catalog, {design, ownFactors, everyKind}: TradeOffInput): Generator<FrontierProgress, Frontier> {
  const {widthFt} = deckMember(design, catalog);
  const demand = demandOf(design, catalog, floorLoads(design, catalog, widthFt));
  return yield* frontier(catalog, everyKind ? {...demand, consider: EVERY_KIND} : demand, withOwnFactors(catalog.carbonFactors, ownFactors));
}
