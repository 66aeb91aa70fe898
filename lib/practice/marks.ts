import type {Answer, ChoicePart, Item, MistakePart, NumberPart, OrderPart, ExercisePart, Slip} from "./item.js";
import {keysOf, slipsOf, toleranceOf} from "./keys.js";
import {unitText} from "../units.js";
import {measureText} from "./prose.js";
import type {UnitSystem} from "../reader/system.js";
import {readAnswer} from "./typedAnswer.js";
import {converted, unitOf, unitsLike} from "./units.js";

/**
 * How an answer fares: `right`; `right from there`, as it follows from an earlier answer that was wrong; a usual `slip`;
 * `unit`, right but for its unit; `wrong`; `unreadable`; `missing`.
 */
export type Outcome = "right" | "right from there" | "slip" | "unit" | "wrong" | "unreadable" | "missing";

/** How one part was answered. */
export interface PartMark {
  readonly verdict: Outcome;
  /** What to say to the reader; never the answer itself. */
  readonly says: string;
  /** Name of the usual mistake, where it was one. */
  readonly slip?: string;
  /** What the answer was read as, in the part's unit. */
  readonly read?: Answer;
  readonly points: number;
  readonly of: number;
}

/** How an exercise was answered. */
export interface Marks {
  readonly parts: readonly PartMark[];
  readonly points: number;
  readonly of: number;
}

/** An answer as it was typed or chosen, one for each part: a text with or without a unit, an option's id, ids in order joined by commas, a line's number. */
export type TypedAnswers = readonly (string | undefined)[];

/**
 * Marks what a reader answered. Each part counts as right by the key, or by what follows from the reader's own earlier
 * answers; usual slips are told by name.
 *
 * @param system - in which units a number without a unit is meant
 */
export function check(item: Item, answers: TypedAnswers, system: UnitSystem = "US"): Marks {
  const key = keysOf(item);
  const own: Answer[] = [];
  const parts = item.parts.map((part, i): PartMark => {
    const typed = (answers[i] ?? "").trim();
    const mark = markOf(part, typed, {key, own, index: i, system});
    own.push(mark.read ?? (key[i] as Answer));
    return mark;
  });
  return {parts, points: sum(parts.map(({points}) => points)), of: sum(parts.map(({of}) => of))};
}

interface Place {
  readonly key: readonly Answer[];
  readonly own: readonly Answer[];
  readonly index: number;
  readonly system: UnitSystem;
}

type Found = Omit<PartMark, "points" | "of">;

function markOf(part: ExercisePart, typed: string, place: Place): PartMark {
  const found = typed === "" ? {verdict: "missing", says: "Not answered."} as const : part.type === "number" ? numberMark(part, typed, place) : chosenMark(part, typed, place);
  const right = found.verdict === "right" || found.verdict === "right from there";
  return {...found, points: right ? part.points : 0, of: part.points};
}

function numberMark(part: NumberPart, typed: string, {key, own, index, system}: Place): Found {
  const read = readAnswer(typed, part.unit, system);
  if (read.state === "missing") return {verdict: "missing", says: "Not answered."};
  if (read.state === "unreadable") return {verdict: "unreadable", says: read.says};
  if (read.state === "other dimension") return {verdict: "unit", says: read.says, slip: "wrong kind of unit"};
  const {value} = read;
  const answer = key[index] as number;
  const isNear = (other: number) => Math.abs(value - other) <= toleranceOf(part, other) + 1e-9 * Math.abs(other);
  if (isNear(answer)) return {verdict: "right", says: "Right.", read: value};
  const followed = part.key(own);
  if (isNear(followed)) return {verdict: "right from there", says: "It follows from your answer above.", read: value};
  for (const [earlier, from] of [[own, followed], [key.slice(0, index), answer]] as const) {
    const slip = nearest(slipsOf(part, earlier), value, (one) => slipReach(part, one.value, from));
    if (slip) return {verdict: "slip", says: slip.says, slip: slip.name, read: value};
  }
  for (const right of [answer, followed]) {
    const unit = read.stated ? undefined : unitMeant(part, value, right);
    if (unit !== undefined) return {verdict: "unit", says: `The number would be right in ${unitText(unit)}; the question asks for ${unitText(part.unit) || "a pure number"}.`, slip: `${unit} for ${part.unit || "a number"}`, read: value};
    if (right !== 0 && isNear(-right)) return {verdict: "slip", says: "The number is right, its sign is not.", slip: "wrong sign", read: value};
  }
  return {verdict: "wrong", says: `${value > answer ? "Too much" : "Too little"}: you answered ${measureText({value, unit: part.unit}, system)}.`, read: value};
}

/** Closest of the slips that an answer comes near enough to. */
function nearest(slips: readonly Slip[], value: number, reach: (slip: Slip) => number): Slip | undefined {
  const near = slips.filter((slip) => Math.abs(value - slip.value) <= reach(slip));
  return near.sort((a, b) => Math.abs(value - a.value) - Math.abs(value - b.value))[0];
}

/** How near an answer comes to a slip that it is taken for: as near as to the key, and never half of the way toward the key. */
function slipReach(part: NumberPart, slip: number, key: number): number {
  return Math.min(Math.max(toleranceOf(part, slip), 1e-6 * Math.abs(slip)), 0.45 * Math.abs(slip - key));
}

/** The unit in which a number without one would be right: another of its dimension, or a share for its percentage. */
function unitMeant(part: NumberPart, value: number, right: number): string | undefined {
  const asked = unitOf(part.unit);
  const others = asked.id === "%" ? [unitOf("")] : unitsLike(asked).filter(({id}) => id !== asked.id);
  return others.map((other) => ({id: other.id, off: Math.abs(converted(value, other, asked) - right)}))
    .find(({off}) => right !== 0 && off <= toleranceOf(part, right))?.id.replace(/^$/, "a share of 1");
}

function chosenMark(part: ChoicePart | OrderPart | MistakePart, typed: string, {key, own, index}: Place): Found {
  const chosen = typed.split(/\s*,\s*/).join(",");
  const problem = notOffered(part, chosen);
  if (problem) return {verdict: "unreadable", says: problem};
  if (chosen === key[index]) return {verdict: "right", says: "Right.", read: chosen};
  if (chosen === part.key(own)) return {verdict: "right from there", says: "It follows from your answer above.", read: chosen};
  if (part.type === "mistake") return {verdict: "wrong", says: part.says[chosen] ?? "That line is right as it follows from those above it.", read: chosen};
  const slip = part.type === "choice" ? part.options.find(({id}) => id === chosen)?.slip : part.slips.find(({order}) => order === chosen);
  if (slip) return {verdict: "slip", says: slip.says, slip: slip.name, read: chosen};
  return {verdict: "wrong", says: part.type === "order" ? `${placesRight(chosen, String(key[index]))} of ${part.options.length} stand in their place.` : "Not this one.", read: chosen};
}

function notOffered(part: ChoicePart | OrderPart | MistakePart, chosen: string): string | undefined {
  if (part.type === "mistake") return Number.isInteger(Number(chosen)) && Number(chosen) >= 1 && Number(chosen) <= part.lines.length ? undefined : `There are lines 1 to ${part.lines.length}.`;
  const ids = part.options.map(({id}) => id);
  const words = chosen.split(",");
  if (part.type === "choice") return ids.includes(chosen) ? undefined : `That is none of ${ids.join(", ")}.`;
  const all = words.length === ids.length && new Set(words).size === ids.length && words.every((word) => ids.includes(word));
  return all ? undefined : `Name each of ${ids.join(", ")} once, with commas between.`;
}

function placesRight(chosen: string, key: string): number {
  const right = key.split(",");
  return chosen.split(",").filter((id, i) => id === right[i]).length;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, each) => total + each, 0);
}
