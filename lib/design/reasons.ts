import type {Design, ReasonName, WrittenFor} from "./design.js";
import {ENTRIES, isOptional, type EntryPath, type GroupName} from "./fields.js";
import {fieldLabel, fieldWords} from "./fieldWords.js";
import {fieldUsed} from "./used.js";
import {isPlain, valueAt} from "./plain.js";

/**
 * What each reason explains: the fields of its decision, and those of others that it cannot do without. A name that ends
 * in a dot stands for a whole group of fields.
 */
export const EXPLAINS: Readonly<Record<ReasonName, readonly (EntryPath | `${GroupName}.`)[]>> = {
  loads: ["loads.", "criteria.sustainedLiveShare"],
  reduction: ["loads.rooms", "bay.", "deck.member"],
  deck: ["bay.spanFt", "bay.beamSpanFt", "deck.", "criteria."],
  topping: ["bay.spanFt", "deck.member", "deck.pattern", "deck.toppingIn", "deck.toppingStrengthPsi", "topping."],
  edgeBeam: ["bay.beamSpanFt", "deck.member", "edgeBeam."],
  frame: ["bay.", "deck.member", "girder.", "column.", "ground.", "diaphragm.", "parking."],
  story: ["deck.member", "deck.toppingIn", "edgeBeam.kind", "edgeBeam.ledgeDepthIn", "story.", "services.", "walls.", "air."],
  roof: ["bay.spanFt", "bay.beamSpanFt", "roof.", "snow."],
  light: ["bay.spanFt", "bay.baysAcross", "edgeBeam.kind", "edgeBeam.upstandIn", "story.", "daylight."],
};

export const REASON_NAMES = Object.keys(EXPLAINS) as readonly ReasonName[];

/** Every path that a choice is made of: each field, each list as one, and the changed dimensions. */
const PATHS: readonly string[] = [...ENTRIES].filter(([path, {kind}]) => kind !== "group" && !path.includes("*")).map(([path]) => path);

/** Stands in a choice for a field that the design leaves out. */
export const LEFT_OUT = "none";

/** Paths of the fields that each reason explains. */
const EXPLAINED = new Map(REASON_NAMES.map((name) =>
  [name, PATHS.filter((path) => EXPLAINS[name].some((entry) => (entry.endsWith(".") ? path.startsWith(entry) : path === entry)))]));

/** Paths of the fields that a reason explains; lists count as one. */
export function explainedPaths(name: ReasonName): readonly string[] {
  return EXPLAINED.get(name) ?? [];
}

/** The values of what a reason explains, by path, as the design has them; {@link LEFT_OUT} for a field that it leaves out. */
export function choiceOf(design: Design, name: ReasonName): Readonly<Record<string, unknown>> {
  return Object.fromEntries(explainedPaths(name).map((path) => [path, valueAt(design, path) ?? LEFT_OUT]));
}

/** What a reader who writes or affirms a reason writes it for: the design as it stands. */
export function writtenNow(design: Design, name: ReasonName): WrittenFor {
  return {by: "reader", choice: choiceOf(design, name)};
}

/** One field that has changed since a reason was written for it, in words. */
export interface ChoiceChange {
  readonly label: string;
  readonly then: string;
  readonly now: string;
}

/** A reason and how it stands to the design. */
export interface ReasonState {
  readonly text: string;
  /** It counts only while it "stands": nothing that it explains has changed. */
  readonly standing: "none" | "stands" | "earlier choice";
  /** Undefined where there is no reason. */
  readonly by: WrittenFor["by"] | undefined;
  readonly changes: readonly ChoiceChange[];
}

/** How a reason of a design stands, and what has changed since it was written; a field that the design does not use changes nothing. */
export function reasonState(design: Design, name: ReasonName): ReasonState {
  const text = design.reasons[name].trim();
  const written = design.writtenFor[name];
  if (!text || !written) return {text, standing: text ? "stands" : "none", by: text ? "reader" : undefined, changes: []};
  const changes = Object.entries(written.choice)
    .filter(([path]) => fieldUsed(design, path))
    .flatMap(([path, then]) => changeOf(path, then, valueAt(design, path)));
  return {text, standing: changes.length > 0 ? "earlier choice" : "stands", by: written.by, changes};
}

/** How many of a design's reasons stand, by whose hand, how many belong to an earlier choice, and how many are missing. */
export interface ReasonCount {
  readonly all: number;
  readonly reader: number;
  readonly starter: number;
  /** In the words of a rule that sized the design. */
  readonly rule: number;
  readonly earlier: number;
  readonly none: number;
}

export function countReasons(states: readonly ReasonState[]): ReasonCount {
  const count = (which: (state: ReasonState) => boolean) => states.filter(which).length;
  return {
    all: states.length,
    reader: count(({standing, by}) => standing === "stands" && by === "reader"),
    starter: count(({standing, by}) => standing === "stands" && by === "starter"),
    rule: count(({standing, by}) => standing === "stands" && by === "rule"),
    earlier: count(({standing}) => standing === "earlier choice"),
    none: count(({standing}) => standing === "none"),
  };
}

/**
 * The design with each reason whose words have changed since `before` written for it as it now stands, by the reader.
 * A reason that is gone is written for nothing.
 */
export function stamped(before: Design, after: Design): Design {
  const changed = REASON_NAMES.filter((name) => before.reasons[name].trim() !== after.reasons[name].trim());
  if (changed.length === 0) return after;
  const kept = Object.fromEntries(Object.entries(after.writtenFor).filter(([name]) => !changed.includes(name as ReasonName)));
  const fresh = changed.filter((name) => after.reasons[name].trim()).map((name) => [name, writtenNow(after, name)]);
  return {...after, writtenFor: {...kept, ...Object.fromEntries(fresh) as Design["writtenFor"]}};
}

/** Nothing where both values are the same; of lists only the entries that differ, in whatever order they stand. */
function changeOf(path: string, then: unknown, now: unknown): ChoiceChange[] {
  const change = (one: unknown, other: unknown) => [{label: fieldLabel(path), then: fieldWords(path, one), now: fieldWords(path, other)}];
  if (Array.isArray(then)) {
    const [gone, come] = [without(then, now as unknown[]), without(now as unknown[], then)];
    return gone.length + come.length === 0 ? [] : change(gone, come);
  }
  const was = then === LEFT_OUT && isOptional(path) ? undefined : then;
  // No changed dimensions are none, whether the file has an empty group for them or leaves it out.
  return same(was, now) || (isOptional(path) && fieldWords(path, was) === fieldWords(path, now)) ? [] : change(was, now);
}

/** Entries of a list that the other has not, each as often as it has it more. */
function without(list: readonly unknown[], other: readonly unknown[]): unknown[] {
  const left = [...other];
  return list.filter((entry) => {
    const at = left.findIndex((candidate) => same(entry, candidate));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/** Whether two values of a design file are the same, whatever the order of their keys. */
function same(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (!isPlain(one) || !isPlain(other)) return false;
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => same(one[key], other[key]));
}
