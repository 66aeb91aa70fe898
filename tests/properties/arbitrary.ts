import fc from "fast-check";
import type {Design} from "../../lib/design/design.js";
import {DESIGN_FORMAT} from "../../lib/design/design.js";
import {withValue} from "../../lib/design/edit.js";
import {validateDesign} from "../../lib/design/validate.js";
import type {Field} from "../../lib/design/entries.js";
import {DESIGN_VERSION, FIELDS, LISTS, isOptional} from "../../lib/design/fields.js";
import {strandOf} from "../../lib/deck/deckMember.js";
import {usualPatterns} from "../../lib/deck/table.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {centroidRangeIn} from "../../lib/prestress/room.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog, seed} from "../support/designs.js";

/** The same cases in every run, unless `SEED` in the environment names others; a failure prints the seed and path that repeat it. */
export const SEED = Number(process.env["SEED"] ?? 20260502);
/** How many times as many cases as usual a law is held to: what every run tries is a share of what is worth trying once. */
const TIMES = Number(process.env["TIMES"] ?? 1);

/** Runs a law over a number of cases, the same in every run; see {@link SEED} and `TIMES` for others and more. */
export function hold<T>(cases: number, law: fc.IProperty<T>): void {
  fc.assert(law, {seed: SEED, numRuns: cases * TIMES});
}

/** Steps into which a range is parted. */
const STEPS = 2 ** 20;

/**
 * A number within a range, evenly spread over it, and now and then one of those that a computer's numbers are most of: nine
 * tenths of the doubles from 0 to 1 lie below a millionth, so that laws drawn from them alone are tried next to nothing only.
 */
export const within = (min: number, max: number): fc.Arbitrary<number> => fc.oneof(
  {weight: 7, arbitrary: fc.integer({min: 0, max: STEPS}).map((step) => Math.min(max, min + (step * (max - min)) / STEPS))},
  {weight: 1, arbitrary: fc.double({min, max, noNaN: true, noDefaultInfinity: true})},
);

/** Any value that a field allows. */
export function valueOf(field: Field): fc.Arbitrary<unknown> {
  switch (field.kind) {
    case "number":
      return field.integer ? fc.integer({min: field.min, max: field.max})
        : fc.oneof(within(field.min, field.max), fc.integer({min: 0, max: 20}).map((i) => field.min + (i * (field.max - field.min)) / 20));
    case "choice":
      return fc.constantFrom(...Object.keys(field.choices));
    case "text":
      return fc.string({maxLength: Math.min(20, field.maxLength)});
    case "switch":
      return fc.boolean();
  }
}

/** Any value that a field does not allow: out of its range, or of another type. */
export function wrongValueOf(field: Field): fc.Arbitrary<unknown> {
  const anything = fc.oneof(
    fc.constantFrom<unknown>(null, NaN, Infinity, -Infinity, [], {}, "", true, false, -1, 0, 1),
    fc.double(), fc.string(), fc.array(fc.integer(), {maxLength: 2}), fc.object({maxDepth: 1}),
    fc.string({minLength: 1201, maxLength: 1300}),
  );
  return anything.filter((value) => !allows(field, value));
}

function allows(field: Field, value: unknown): boolean {
  switch (field.kind) {
    case "number":
      return typeof value === "number" && value >= field.min && value <= field.max && (!field.integer || Number.isInteger(value));
    case "choice":
      return typeof value === "string" && Object.keys(field.choices).includes(value);
    case "text":
      return typeof value === "string" && value.length <= field.maxLength;
    case "switch":
      return typeof value === "boolean";
  }
}

/** Names that the catalog knows, in place of the free text that the field itself allows. */
const KNOWN: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  "deck.member": fc.constantFrom(...catalog.deckMembers.map((row) => row.designation)),
  "roof.member": fc.constantFrom(...catalog.deckMembers.map((row) => row.designation)),
  "loads.rooms.*.occupancy": fc.constantFrom(...catalog.occupancies.map((row) => row.id)),
  "snow.occupancy": fc.constantFrom(...catalog.occupancies.map((row) => row.id)),
  "deck.pattern": fc.tuple(fc.integer({min: 1, max: 30}), fc.constantFrom(6, 7, 8, 9, 10), fc.constantFrom("S", "S", "D1", "D2"))
    .map(([count, size, profile]) => `${count}${size}-${profile}`),
};

/** A group of fields below a path, list entries and all. */
function group(prefix: string): fc.Arbitrary<unknown> {
  const keys = [...new Set(Object.keys(FIELDS).filter((path) => path.startsWith(prefix)).map((path) => path.slice(prefix.length).split(".")[0] as string))];
  const required = keys.filter((key) => !isOptional(prefix + key));
  return fc.record(Object.fromEntries(keys.map((key) => [key, node(prefix + key)])), {requiredKeys: required});
}

function node(path: string): fc.Arbitrary<unknown> {
  const field = FIELDS[path];
  if (field) return KNOWN[path] ?? valueOf(field);
  const list = LISTS[path];
  return list ? fc.array(group(`${path}.*.`), {minLength: list.min, maxLength: Math.min(3, list.max)}) : group(`${path}.`);
}

/** Any design that its fields allow: parts need not fit each other. */
export const anyDesign: fc.Arbitrary<Design> = group("").map((fields) => validateDesign({format: DESIGN_FORMAT, version: DESIGN_VERSION, ...(fields as object)}));

/** Every member of the catalog with each number of strands, profile and size that its usual layout holds. */
const PATTERNS: readonly (readonly [string, string])[] = catalog.deckMembers.flatMap((row) =>
  [6, 8, 10].flatMap((size) => usualPatterns(row, size).map((text) => [row.designation, text] as const)));
export const anyPattern: fc.Arbitrary<readonly [string, string]> = fc.constantFrom(...PATTERNS)
  .chain(([member, text]) => fc.constantFrom([member, text] as const, [member, text.replace("D1", "D2")] as const));

/** A height of the strands' centroid that their member has room for; undefined for the usual layout, half of the time. */
const heightShare = fc.option(within(0, 1), {freq: 2, nil: undefined});
function heightIn(share: number, member: string, text: string): number {
  const pattern = parsePattern(text);
  const {min, max} = centroidRangeIn(shapeOf(catalog, member), pattern, strandOf(catalog, pattern));
  return min + share * (max - min);
}

/** A design whose deck and roof fit together, half of them with strands at a height of their own; everything else is what the fields allow, the absurd included. */
export const fittingDesign: fc.Arbitrary<Design> = fc.record({design: anyDesign, deckStrands: anyPattern, deckShare: heightShare, roofStrands: anyPattern, roofShare: heightShare})
  .map(({design, deckStrands: [member, text], deckShare, roofStrands: [roofMember, roofText], roofShare}) => {
    const {strandHeightEndIn: _roofEnd, strandHeightCenterIn: _roofCenter, ...roof} = design.roof;
    const {strandHeightEndIn: _end, strandHeightCenterIn: _center, ...deck} = design.deck;
    const releaseStrengthPsi = Math.min(deck.strengthPsi, deck.releaseStrengthPsi);
    const roofRelease = roof.releaseStrengthPsi === undefined ? {} : {releaseStrengthPsi: Math.min(roof.strengthPsi ?? deck.strengthPsi, roof.releaseStrengthPsi)};
    const girder = {...design.girder, releaseStrengthPsi: Math.min(design.girder.strengthPsi, design.girder.releaseStrengthPsi)};
    return {
      ...design, girder,
      deck: {...deck, member, pattern: text, releaseStrengthPsi, ...(deckShare === undefined ? {} : {strandHeightCenterIn: heightIn(deckShare, member, text)})},
      roof: {...roof, ...roofRelease, member: roofMember, pattern: roofText, ...(roofShare === undefined ? {} : {strandHeightCenterIn: heightIn(roofShare, roofMember, roofText)})},
    };
  });

export const anyConcrete = fc.record({
  concreteKind: fc.constantFrom("normalweight" as const, "sand-lightweight" as const),
  strengthPsi: within(4000, 10000),
  releaseStrengthPsi: within(3000, 4000),
  toppingIn: fc.constantFrom(0, 2, 3.5),
  toppingStrengthPsi: within(3000, 6000),
  humidityPercent: within(40, 100),
});

/** A starter design as ground for changes, with each part that a design may leave out of a room, and a comment. */
export const LIBRARY = withValue(
  withValue(seed("branch-library"), "loads.rooms.0.own", {livePsf: 160, reducible: false, reason: "Compact shelving"}),
  "comments", [{words: "Why so deep a tee?", on: "deck", by: "A reviewer"}],
);
