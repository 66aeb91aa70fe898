import {isMade, type SchemeRow} from "./schemeRow.js";

/** What stops the schemes of a brief, most often first. */
export interface Stop {
  /** Id of a check, or `no deck` where none of a kind carries the span. */
  readonly id: string;
  readonly schemes: number;
  /** Schemes that it stops alone: those that would hold without it. Of one without a deck nothing else is known. */
  readonly alone: number;
}

/** What no deck at all is counted under. */
const NO_DECK = "no deck";

/** How often each check fails over the schemes, and how often it is the only one. */
export function stopsOf(rows: readonly SchemeRow[]): Stop[] {
  const found = new Map<string, {schemes: number; alone: number}>();
  for (const row of rows) {
    const ids = isMade(row) ? [...new Set(row.fails === "" ? [] : row.fails.split("; "))] : [NO_DECK];
    for (const id of ids) {
      const stop = found.get(id) ?? {schemes: 0, alone: 0};
      found.set(id, {schemes: stop.schemes + 1, alone: stop.alone + Number(isMade(row) && ids.length === 1)});
    }
  }
  return [...found].map(([id, stop]) => ({id, ...stop})).sort((a, b) => b.schemes - a.schemes || (a.id < b.id ? -1 : 1));
}

/** What gives where nothing holds: in the words of the brief. */
const WHAT_GIVES: Readonly<Record<string, string>> = {
  [NO_DECK]: "shorter deck spans, a lighter load or another kind of deck",
  "brief: floor to floor": "a higher story, or a lower ceiling",
  "brief: building height": "a higher building, a lower ceiling or fewer stories",
  "stems on beam": "beam spans that are whole widths of the tees",
  "girder stems on beam": "beam spans that are whole widths of the tees",
  "girder ceiling": "shorter beam spans, or girders beside the deck",
  "room depth": "narrower buildings, or higher windows",
  "sky seen": "narrower buildings, or higher windows",
  "average daylight": "more glass, or narrower buildings",
  "deck walking": "deeper or heavier decks: more topping, or shorter spans",
  "pocket stems": "another edge: planks have no stems for pockets",
  "deck edge": "a thicker topping, or beam spans and a length that whole pieces cover",
  "last piece": "beam spans and a length that whole pieces cover",
  "end strip: deck load": "spandrels between the columns at the short sides, or shorter deck spans",
  "end strip: ledge punching end": "spandrels between the columns at the short sides, or shorter spans",
  "top level: deck load": "shorter deck spans, or a roof over the top level",
  "top level: deck sag": "shorter deck spans, or a roof over the top level",
  "wet topping": "pretopped tees, a thinner topping or shorter deck spans",
  "topping load": "a thinner topping, or shorter deck spans",
  "riser room": "tees with stems farther apart, or less air",
  "parking module": "deck spans of about 60 ft for each module, or stalls at an angle with a narrower aisle",
  "parking stalls": "a building wide enough for a row and its aisle, and long enough for turning at its ends",
  "accessible stalls": "columns farther apart",
  "parking aisle": "columns that stand between the stalls: one bay to a module",
  "vehicle barrier": "edge beams beside the deck, with an upstand",
  "parking height": "a greater clear height",
  "van height": "a greater clear height, or vans parked outside",
};

/** Where no scheme of a brief holds, a sentence that says what stops the most and what would have to give; undefined where one does. */
export function nothingHolds(rows: readonly SchemeRow[]): string | undefined {
  if (rows.some((row) => isMade(row) && row.fails === "")) return undefined;
  const [first, ...rest] = stopsOf(rows);
  if (!first) return undefined;
  const named = ({id}: Stop) => (id === NO_DECK ? "no deck of the kind carries the span" : `"${id}" fails`);
  const gives = WHAT_GIVES[first.id];
  const nearest = rest.concat(first).filter(({alone}) => alone > 0).sort((a, b) => b.alone - a.alone)[0];
  return `None of the ${rows.length} schemes holds: in ${first.schemes} of them ${named(first)}${gives ? `; what would have to give: ${gives}` : ""}.`
    + (nearest ? ` ${nearest.alone} would hold but for that ${named(nearest)}.` : "");
}
