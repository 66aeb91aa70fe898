import {beating, leastIn, type Frontier, type FrontierDeck} from "../../lib/deck/frontier.js";
import {MEASURES, type DeckMeasures, type MeasureName} from "../../lib/deck/measures.js";
import {decimals} from "../../lib/units.js";
import {live} from "../../components/live.js";
import {MEASURE_LOOKS, concreteWords, deckName, measureText} from "./tradeOffLooks.js";
import type {TradeOffState} from "./tradeOffSearch.js";

/** The finding of all charts together. */
export function tradeOffFinding(found: Frontier | undefined, names: readonly MeasureName[]): string {
  if (!found) return "Where this design stands";
  if (found.decks.length === 0) return "No deck that was tried carries this floor";
  const few = leastIn(found.decks, names).length;
  const among = `Of ${decimals(found.worked)} deck${found.worked === 1 ? "" : "s"} that work${found.worked === 1 ? "s" : ""}`;
  const where = names.length === MEASURES.length ? "" : ` in ${list(names.map((name) => MEASURE_LOOKS[name].name))}`;
  return `${among}, ${few === 1 ? "one is" : `${few} are`} beaten by none${where}`;
}

/** What a chart of a pair of measures shows: what the least of the one costs in the other. */
export function pairFinding(decks: readonly FrontierDeck[], x: MeasureName, y: MeasureName): string {
  const stair = leastIn(decks, [x, y]);
  const [first, last] = [stair[0], stair.at(-1)];
  const [lookX, lookY] = [MEASURE_LOOKS[x], MEASURE_LOOKS[y]];
  if (!first || !last) return `${capital(lookX.name)} against ${lookY.name}`;
  if (first === last) return `The ${lookX.best} deck is also the ${lookY.best}`;
  return `The ${lookX.best} takes ${measureText(y, first.measures[y])} ${lookY.of}, the ${lookY.best} ${measureText(y, last.measures[y])}`;
}

/** What the search found, in a paragraph's worth of words and live numbers. */
export function foundWords({found, stale}: TradeOffState, own: DeckMeasures, fails: boolean): (string | Node)[] {
  if (!found) return ["The search has not ended yet."];
  const {tried, worked, decks} = found;
  if (worked === 0) return ["The search tried ", live(decimals(tried)), " decks, and none of them carries this floor. ", standing(found, own, fails), ...(stale ? [" This was so before the last change."] : [])];
  return [
    "The search tried ", live(decimals(tried)), " decks, of which ", live(decimals(worked)), ` carr${worked === 1 ? "ies" : "y"} this floor and `,
    live(decimals(decks.length)), ` ${decks.length === 1 ? "is" : "are"} beaten by none. `, standing(found, own, fails),
    ...(decks.length > 0 ? [` ${depressedWords(decks)}`] : []), ...(stale ? [" This was so before the last change."] : []),
  ];
}

/** How this design stands among the decks found, in a sentence or two. */
export function standing(found: Frontier, own: DeckMeasures, fails: boolean): string {
  if (found.decks.length === 0) return "A shorter span, a lighter load or more release strength would let some in.";
  const same = found.decks.some(({measures}) => MEASURES.every((name) => measures[name] === own[name]));
  if (fails) return "The deck in this design is not one of them: it does not carry the floor, or it fails at release, under walking or in a fire.";
  if (same) return "The deck in this design is one of them: choosing any other gives something up.";
  const better = beating(found.decks, own);
  const most = better.map((deck) => ({deck, share: MEASURES.reduce((sum, name) => sum + 1 - deck.measures[name] / own[name], 0)})).sort((a, b) => b.share - a.share)[0]?.deck;
  if (!most) return "None of them beats the deck in this design in everything.";
  const gains = MEASURES.flatMap((name) => {
    const gain = own[name] - most.measures[name];
    return measureText(name, gain) === measureText(name, 0) ? [] : [`${measureText(name, gain)} ${MEASURE_LOOKS[name].of}`];
  });
  const count = better.length === 1 ? "One of them beats" : `${capital(decimals(better.length))} of them beat`;
  return `${count} the deck in this design: ${deckName(most)} of ${concreteWords(most)} is at least as good in everything and saves ${list(gains)} per square foot${most.profile === "straight" ? "" : ", if depressed strand can be had"}.`;
}

/** What the charts do not measure. */
export function depressedWords(decks: readonly FrontierDeck[]): string {
  const depressed = decks.filter(({profile}) => profile !== "straight").length;
  if (depressed === 0) return "All of them have straight strand.";
  return `${depressed === decks.length ? "All of them have" : depressed === 1 ? "One of them has" : `${depressed} of them have`} depressed strand, which costs more to make; that is not counted here.`;
}

/** Words in a row: "a, b and c". */
export function list(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
