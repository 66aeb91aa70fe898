/** How a reader has fared so far: answers that were checked for the first time, by kind, and the usual slips. */
export interface Tally {
  readonly kinds: Readonly<Record<string, {readonly asked: number; readonly right: number}>>;
  readonly slips: Readonly<Record<string, number>>;
}

/** Nothing answered yet. */
export const NO_TALLY: Tally = {kinds: {}, slips: {}};

/** The tally with one more answer. */
export function tallied({kinds, slips}: Tally, kind: string, right: boolean, slip?: string): Tally {
  const {asked = 0, right: before = 0} = kinds[kind] ?? {};
  return {
    kinds: {...kinds, [kind]: {asked: asked + 1, right: before + (right ? 1 : 0)}},
    slips: slip === undefined ? slips : {...slips, [slip]: (slips[slip] ?? 0) + 1},
  };
}

/** A tally out of plain data; what cannot be is left out. */
export function tallyOf(content: unknown): Tally {
  const entries = (value: unknown) => (typeof value === "object" && value !== null ? Object.entries(value) : []);
  const counts = (value: unknown): value is number => Number.isInteger(value) && (value as number) >= 0;
  const {kinds, slips} = (typeof content === "object" && content !== null ? content : {}) as Record<string, unknown>;
  return {
    kinds: Object.fromEntries(entries(kinds).filter(([, each]) => counts(each?.asked) && counts(each?.right) && each.right <= each.asked).map(([kind, {asked, right}]) => [kind, {asked, right}])),
    slips: Object.fromEntries(entries(slips).filter(([, each]) => counts(each))),
  };
}

/** The tally in a sentence or two; undefined where nothing was answered. */
export function tallyWords({kinds, slips}: Tally): string | undefined {
  const all = Object.values(kinds);
  const [asked, right] = [all.reduce((sum, each) => sum + each.asked, 0), all.reduce((sum, each) => sum + each.right, 0)];
  if (asked === 0) return undefined;
  const [most] = Object.entries(slips).sort(([a, m], [b, n]) => n - m || a.localeCompare(b, "en"));
  const often = most && most[1] > 1 ? ` The slip you make most: ${most[0]}, ${most[1]} times.` : "";
  return `${asked === 1 ? "One answer" : `${asked} answers`} so far, of ${all.length === 1 ? "one kind" : `${all.length} kinds`}; ${right} right at the first try.${often}`;
}

/**
 * The kind to practice next: one of those that were asked least, but not the one just met where there is another.
 *
 * @param draw - a number from 0 up to but not 1 that decides among equals
 */
export function nextKind(ids: readonly string[], {kinds}: Tally, last: string | undefined, draw: number): string | undefined {
  const others = ids.length > 1 ? ids.filter((id) => id !== last) : ids;
  const askedOf = (id: string) => kinds[id]?.asked ?? 0;
  const least = Math.min(...others.map(askedOf));
  const equal = others.filter((id) => askedOf(id) === least);
  return equal[Math.floor(draw * equal.length)];
}
