import type {Catalog} from "../catalog.js";
import {InputError} from "../errors.js";
import {requireNumber} from "../check.js";
import {SEED_RANGE, dealt} from "./draw.js";
import type {Item, Kind} from "./item.js";
import {BAY_KINDS} from "./kinds/bay.js";
import {BEAMS_KINDS} from "./kinds/beams.js";
import {CAMBER_KINDS} from "./kinds/camber.js";
import {CHOICES_KINDS} from "./kinds/choices.js";
import {COLUMNS_KINDS} from "./kinds/columns.js";
import {DECK_TABLE_KINDS} from "./kinds/deckTables.js";
import {LEDGES_KINDS} from "./kinds/ledges.js";
import {LOADS_KINDS} from "./kinds/loads.js";
import {MEMBER_KINDS} from "./kinds/member.js";
import {NAMES_KINDS} from "./kinds/names.js";
import {OUTSIDE_KINDS} from "./kinds/outside.js";
import {RECORD_KINDS} from "./kinds/record.js";
import {REDUCTION_KINDS} from "./kinds/reduction.js";
import {SERVICE_KINDS} from "./kinds/service.js";
import {SNOW_KINDS} from "./kinds/snow.js";
import {STORY_KINDS} from "./kinds/story.js";

/** Every kind of exercise, in the order of the pages. */
export const KINDS: readonly Kind[] = [...LOADS_KINDS, ...REDUCTION_KINDS, ...NAMES_KINDS, ...DECK_TABLE_KINDS, ...MEMBER_KINDS, ...SERVICE_KINDS, ...CAMBER_KINDS, ...CHOICES_KINDS, ...BEAMS_KINDS, ...LEDGES_KINDS, ...SNOW_KINDS, ...COLUMNS_KINDS, ...OUTSIDE_KINDS, ...STORY_KINDS, ...BAY_KINDS, ...RECORD_KINDS];

/** Most exercises in one set. */
const MOST_ITEMS = 500;

/** Word that stands for every kind. */
const ALL = "all";

/**
 * Kinds by name: `all`, ids and topics, with commas between; each kind once, in the order of the list.
 *
 * @throws InputError for a word that is neither
 */
export function kindsNamed(text: string): Kind[] {
  const words = text.split(",").map((word) => word.trim());
  for (const word of words) {
    if (word === ALL || KINDS.some(({id, topic}) => id === word || topic === word)) continue;
    const topics = [...new Set(KINDS.map(({topic}) => topic))];
    throw new InputError({path: "kinds", label: "kinds", value: word, reads: word, allowed: `${ALL}; topics ${topics.join(", ")}; or ${KINDS.map(({id}) => id).join(", ")}`});
  }
  return KINDS.filter(({id, topic}) => words.some((word) => word === ALL || word === id || word === topic));
}

/** The kind with an id; throws {@link InputError} if there is none. */
export function practiceKind(id: string): Kind {
  const found = KINDS.find((kind) => kind.id === id);
  if (found) return found;
  throw new InputError({path: "kind", label: "kind", value: id, allowed: KINDS.map((kind) => kind.id).join(", ")});
}

/**
 * One exercise: the same for the same kind, seed and turn.
 *
 * @param kind - id of its kind
 * @param seed - whole number, 0 to 2^32 - 1
 * @param turn - which exercise of its kind within its set, from 1
 * @param number - its place within its set
 * @throws InputError where one of them cannot be
 */
export function itemOf(kind: string, seed: number, catalog: Catalog, turn = 1, number = 1): Item {
  requireNumber(seed, {path: "seed", label: "seed", unit: "", ...SEED_RANGE, integer: true});
  requireNumber(turn, {path: "turn", label: "turn", unit: "", min: 1, max: MOST_ITEMS, integer: true});
  const {topic, level, title, make} = practiceKind(kind);
  return {kind, topic, level, title, seed, turn, number, ...make(dealt(kind, seed, turn), catalog)};
}

/**
 * A set: as many exercises as wanted, the kinds in their order and over again, each time with other numbers.
 *
 * @throws InputError where no kind is given, or the count or the seed cannot be
 */
export function itemsOf(kinds: readonly Kind[], count: number, seed: number, catalog: Catalog): Item[] {
  requireNumber(count, {path: "count", label: "count", unit: "", min: 1, max: MOST_ITEMS, integer: true});
  if (kinds.length === 0) throw new InputError({path: "kinds", label: "kinds", value: undefined, allowed: "at least one"});
  return Array.from({length: count}, (_, i) => itemOf((kinds[i % kinds.length] as Kind).id, seed, catalog, Math.floor(i / kinds.length) + 1, i + 1));
}
