import {differingInputs, inputWords, type DifferingInput} from "../compare/inputs.js";
import type {Design} from "../design/design.js";

/** Most inputs in which two designs differ that are taken to come from one another. Starters differ in far more. */
export const FEW_INPUTS = 12;

/** A design by the name of its file, or of the starter that it is. */
export interface NamedDesign {
  readonly name: string;
  readonly design: Design;
}

/** Where a design seems to come from, and what was changed since. */
export interface Kinship {
  /** The starter, or else the design in the midst of its family, that it is told apart from; undefined where nothing is like it. */
  readonly from: {readonly name: string; readonly kind: "starter" | "file"} | undefined;
  /** Inputs that differ from it, in the order of the file. */
  readonly differs: readonly DifferingInput[];
  /** Names of other files with the very same decisions, whatever their words. */
  readonly same: readonly string[];
  /** Number of its family, from 1, in the order of the files; undefined where nothing is like it. */
  readonly family: number | undefined;
}

/**
 * Tells designs of one ancestor apart by what was changed. Designs that differ in few inputs are of one family, and so are
 * those that such steps link, starters included. Each is held against the starter that is nearest to it, or, in a family
 * without one, against the member that differs least from all others. What words a file has decides nothing.
 *
 * The families do not depend on the order of the files; their numbers do.
 */
export function kinships(files: readonly NamedDesign[], starters: readonly NamedDesign[]): Kinship[] {
  const all = [...files, ...starters];
  const words = all.map(({design}) => inputWords(design));
  const apart = all.map((_, i) => all.map((_, j) => (i <= j ? 0 : countDiffering(words[i] as string[], words[j] as string[]))));
  const distance = (i: number, j: number) => (i > j ? apart[i]?.[j] : apart[j]?.[i]) as number;
  const familyOf = linked(all.length, (i, j) => distance(i, j) <= FEW_INPUTS);
  const members = (i: number) => all.flatMap((_, j) => (familyOf[j] === familyOf[i] ? [j] : []));
  const numbers = new Map<number, number>();
  const middles = new Map<number, number>();
  return files.map(({design}, i): Kinship => {
    const kin = members(i);
    const same = files.flatMap(({name}, j) => (j !== i && distance(i, j) === 0 ? [name] : []));
    if (kin.length === 1) return {from: undefined, differs: [], same, family: undefined};
    const root = familyOf[i] as number;
    if (!numbers.has(root)) numbers.set(root, numbers.size + 1);
    const ancestors = kin.filter((j) => j >= files.length);
    if (!middles.has(root)) middles.set(root, leastOf(kin, (j) => kin.reduce((sum, k) => sum + distance(j, k), 0), all));
    const base = ancestors.length > 0 ? leastOf(ancestors, (j) => distance(i, j), all) : middles.get(root) as number;
    const {name, design: from} = all[base] as NamedDesign;
    const family = numbers.get(root);
    if (base === i) return {from: undefined, differs: [], same, family};
    return {from: {name, kind: base >= files.length ? "starter" : "file"}, differs: differingInputs([from, design]), same, family};
  });
}

function countDiffering(one: readonly string[], other: readonly string[]): number {
  let count = 0;
  for (let i = 0; i < one.length; i++) if (one[i] !== other[i]) count += 1;
  return count;
}

/** For each of some things the first of those that it is linked with, over any number of steps. */
function linked(count: number, near: (i: number, j: number) => boolean): number[] {
  const root = Array.from({length: count}, (_, i) => i);
  const find = (i: number): number => (root[i] === i ? i : find(root[i] as number));
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < i; j++) {
      if (!near(i, j)) continue;
      const [a, b] = [find(i), find(j)];
      root[Math.max(a, b)] = Math.min(a, b);
    }
  }
  return root.map((_, i) => find(i));
}

/** The one of least cost; of several the first by name, so that the order of files decides nothing. */
function leastOf(among: readonly number[], cost: (index: number) => number, all: readonly NamedDesign[]): number {
  const nameOf = (index: number) => all[index]?.name ?? "";
  return among.map((index) => ({index, cost: cost(index)}))
    .sort((a, b) => a.cost - b.cost || (nameOf(a.index) < nameOf(b.index) ? -1 : 1))[0]?.index as number;
}

/** Changed inputs that are named before the rest is counted. */
const NAMED = 4;

/** Where a design comes from and what tells it apart, in a sentence: "As Branch library, but for span, topping." */
export function kinshipWords({from, differs, same, family}: Kinship): string {
  const labels = differs.map(({label}) => label);
  const rest = labels.length - NAMED;
  const changed = rest > 0 ? `${labels.slice(0, NAMED).join(", ")} and ${rest} more` : labels.join(", ");
  const origin = !from ? (family === undefined ? "Like none of the others." : "In the midst of its family.")
    : `${labels.length === 0 ? "As" : "Differs from"} ${from.kind === "starter" ? `the starter \u201c${from.name}\u201d` : from.name}${labels.length === 0 ? ", unchanged" : ` in ${changed}`}.`;
  return same.length === 0 ? origin : `${origin} The same decisions as ${new Intl.ListFormat("en-US").format(same)}.`;
}
