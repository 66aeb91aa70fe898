import type {Check} from "../checks.js";

/** A check's own numbers. */
function told({id, demand, capacity, verdict}: Check): string {
  return `${id} ${demand} ${capacity} ${verdict}`;
}

/** Checks that give other numbers than those of the floors do: what a level shares with them is not said twice. */
export function otherThan(checks: readonly Check[], floors: readonly Check[]): Check[] {
  const known = new Set(floors.map(told));
  return checks.filter((check) => !known.has(told(check)));
}

/** Checks of a floor as those of one level: under its name, and with its load in place of a live load. */
export function ofLevel(checks: readonly Check[], level: "roof" | "top level", load: string): Check[] {
  const name = `${level.charAt(0).toUpperCase()}${level.slice(1)}`;
  return checks.map((check) => ({
    ...check, id: `${level}: ${check.id}`, label: `${name}: ${check.label.charAt(0).toLowerCase()}${check.label.slice(1)}`.replace(/live load/g, load),
    message: check.message.replace(/\bthis floor\b/g, `this ${level}`).replace(/\bthe floor\b/g, `the ${level}`).replace(/\bThe floor\b/g, `The ${level}`),
  }));
}
