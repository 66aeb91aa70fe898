import {deckMember} from "../../lib/deck/deckMember.js";
import {usualPatterns} from "../../lib/deck/table.js";
import {withValue, withValues} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import {FIELDS, fieldAt} from "../../lib/design/fields.js";
import type {Design} from "../../lib/design/design.js";
import {InputError} from "../../lib/errors.js";
import type {DeckMemberRow} from "../../lib/catalog.js";
import {catalog} from "../support/designs.js";

/**
 * A way to change a design, further and further; what a field does not allow is left out.
 *
 * @param said - the words of the message that name it, with what its pattern found in them
 */
export type Move = (design: Design, said: RegExpExecArray) => Design[];

const STEPS = 5;
/** Other members, and other patterns of one member, that are tried at most. */
const MEMBERS = 3;
const PATTERNS = 8;

/** What can be made of a design with some values; undefined where they cannot be. */
function made(design: Design, values: Readonly<Record<string, unknown>>): Design[] {
  try {
    return [withValues(design, values)];
  } catch (problem) {
    if (problem instanceof InputError) return [];
    throw problem;
  }
}

function toward(path: string, end: "min" | "max"): Move {
  return (design) => {
    const field = fieldAt(path);
    if (field?.kind !== "number") throw new Error(`${path} is not a number`);
    const from = valueAt(design, path);
    if (typeof from !== "number") return [];
    return Array.from({length: STEPS}, (_, i) => {
      const value = from + (((i + 1) / STEPS) ** 2) * (field[end] - from);
      return field.integer ? Math.round(value) : value;
    }).flatMap((value) => made(design, {[path]: value}));
  };
}

/** A number made larger, to the end of its range. */
export const more = (path: string): Move => toward(path, "max");
/** A number made smaller, to the end of its range. */
export const less = (path: string): Move => toward(path, "min");
/** A value set. */
export const set = (path: string, value: unknown): Move => (design) => made(design, {[path]: value});
/** Any of the values of a choice. */
export const other = (path: string): Move => (design) => {
  const field = FIELDS[path];
  if (field?.kind !== "choice") throw new Error(`${path} is not a choice`);
  return Object.keys(field.choices).filter((choice) => choice !== valueAt(design, path)).flatMap((choice) => made(design, {[path]: choice}));
};
/** Several moves at once, each as far as the others. */
export const together = (...moves: readonly Move[]): Move => (design, said) => combined(design, moves.map((move) => (changed) => move(changed, said)));
/** Several ways to change a design, gone at once and each as far as the others. */
export function combined(design: Design, ways: readonly ((design: Design) => Design[])[]): Design[] {
  const most = Math.max(0, ...ways.map((way) => way(design).length));
  return Array.from({length: most}, (_, i) => ways.reduce((changed, way) => {
    const steps = way(changed);
    return steps[Math.min(i, steps.length - 1)] ?? changed;
  }, design));
}
/** One move or another. */
export const either = (...moves: readonly Move[]): Move => (design, said) => moves.flatMap((move) => move(design, said));
/** A number set to one of those that the message tells. */
export const told = (path: string): Move => (design, said) => (said[1] ?? "").split(" or ").flatMap((value) => made(design, {[path]: Number(value)}));

function row(design: Design) {
  return catalog.deckMembers.find(({designation}) => designation === design.deck.member);
}

/** Without strand heights of its own or changed dimensions, which belong to one member and pattern. */
function usual(design: Design): Design {
  const {strandHeightEndIn: _end, strandHeightCenterIn: _middle, dimensions: _changed, ...deck} = design.deck;
  return {...design, deck};
}

function fits(design: Design): boolean {
  try {
    deckMember(design, catalog);
    return true;
  } catch (problem) {
    if (problem instanceof InputError) return false;
    throw problem;
  }
}

/** Members of the catalog that are asked for, shallow ones first, each with strands few and many. */
function members(wanted: (row: DeckMemberRow, own: DeckMemberRow) => boolean): Move {
  return (design) => {
    const own = row(design);
    if (!own) return [];
    const found = catalog.deckMembers.filter((one) => wanted(one, own)).sort((a, b) => depthIn(a) - depthIn(b));
    const some = found.filter((_, i) => i % Math.ceil(found.length / MEMBERS) === (found.length - 1) % Math.ceil(found.length / MEMBERS));
    return some.flatMap((deeper) => {
      const patterns = usualPatterns(deeper);
      return [0.3, 0.6, 0.999].map((share) => patterns[Math.floor(share * patterns.length)] as string)
        .map((pattern) => withValues(usual(design), {"deck.member": deeper.designation, "deck.pattern": pattern}));
    }).filter(fits);
  };
}

const depthIn = ({dimensions}: DeckMemberRow): number => dimensions["depthIn"] as number;

/** A member of the same use that is deeper; it may take other strands. */
export const deeperMember: Move = members((one, own) => one.use === own.use && depthIn(one) > depthIn(own));
/** A member of the same use that is shallower. */
export const shallowerMember: Move = members((one, own) => one.use === own.use && depthIn(one) < depthIn(own));
/** A double tee. */
export const tees: Move = members((one) => one.family === "double tee");
/** Tees of the widths that the message tells, in feet. */
export const teesWide: Move = (design, said) => {
  const widthsIn = (said[1] ?? "").split(" or ").map((widthFt) => 12 * Number(widthFt));
  return members((one) => one.family === "double tee" && widthsIn.includes(one.dimensions["widthIn"] as number))(design, said);
};

/** The same member with other numbers of strands of the same size, by a rule on the number and the profile. */
function otherStrands(keep: (count: number, now: number, profile: string, own: string) => boolean): Move {
  return (design) => {
    const own = row(design);
    const [, count, size, profile] = /^(\d+?)(6|7|8|9|10)-(\w+)$/.exec(design.deck.pattern) ?? [];
    if (!own || !count) return [];
    return Array.from({length: 40}, (_, i) => i + 1).flatMap((n) => ["S", "D1", "D2"].map((shape) => [n, shape] as const))
      .filter(([n, shape]) => keep(n, Number(count), shape, profile as string))
      .sort((a, b) => Math.abs(a[0] - Number(count)) - Math.abs(b[0] - Number(count)))
      .map(([n, shape]) => withValue(usual(design), "deck.pattern", `${n}${size}-${shape}`)).filter(fits).slice(0, PATTERNS);
  };
}

export const moreStrands: Move = otherStrands((n, now, shape, own) => n > now && shape === own);
export const fewerStrands: Move = otherStrands((n, now, shape, own) => n < now && shape === own);
export const depressedStrands: Move = otherStrands((n, now, shape, own) => n === now && own === "S" && shape !== "S");
/** Strands that are held down at two points instead of one. */
export const twoPoints: Move = otherStrands((n, now, shape, own) => n === now && own === "D1" && shape === "D2");
/** Strands that are held down less far. */
export const flatterCourse: Move = (design) => [4, 6, 8, 10, 12].flatMap((heightIn) => made(design, {"deck.strandHeightCenterIn": heightIn})).filter(fits);
export const thinnerStrands: Move = (design) => {
  const [, count, size, profile] = /^(\d+?)(6|7|8|9|10)-(\w+)$/.exec(design.deck.pattern) ?? [];
  return ["6", "7", "8"].filter((other) => Number(other) < Number(size))
    .flatMap((other) => [1, 1.4, 1.8].map((times) => withValue(usual(design), "deck.pattern", `${Math.round(Number(count) * times)}${other}-${profile}`))).filter(fits);
};
/** The strands lifted, from 2 in above the soffit on, in stems as high as they go. */
export const higherStrands: Move = (design) => [3, 4, 6, 8, 10].flatMap((heightIn) =>
  made(design, {"deck.strandHeightEndIn": heightIn, "deck.strandHeightCenterIn": heightIn})).filter(fits);

/** A move on the floor's deck and beams made on the roof's: its deck's fields are the roof's, its beams are the same but for the upstand. */
export const onRoof = (move: Move): Move => (design, said) => {
  const {roof, deck, edgeBeam} = design;
  const given = (values: Readonly<Record<string, unknown>>) => Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
  const {dimensions: _, strandHeightEndIn: _end, strandHeightCenterIn: _center, ...floor} = deck;
  const {member, pattern, toppingIn, concrete, strengthPsi, releaseStrengthPsi, strandHeightEndIn, strandHeightCenterIn} = roof;
  const own = given({member, pattern, toppingIn, concrete, strengthPsi, releaseStrengthPsi, strandHeightEndIn, strandHeightCenterIn});
  const asFloor = {...design, deck: {...floor, ...own} as Design["deck"], edgeBeam: {...edgeBeam, upstandIn: roof.upstandIn}};
  return move(asFloor, said).map((changed) => {
    const {aggregate, toppingStrengthPsi, ...rest} = changed.deck;
    const {strandHeightEndIn: _oldEnd, strandHeightCenterIn: _oldCenter, ...kept} = changed.roof;
    return {
      ...changed, deck: {...deck, aggregate, toppingStrengthPsi}, roof: {...kept, ...rest, upstandIn: changed.edgeBeam.upstandIn} as Design["roof"],
      edgeBeam: {...changed.edgeBeam, upstandIn: edgeBeam.upstandIn},
    };
  });
};
