import {LIMITS, limitNamed, type LimitName} from "../../lib/deck/limits.js";
import type {LimitLook} from "../../lib/deck/limit.js";

/** How the limits look in every chart and table, the color as a style sheet takes it. */
export const LIMIT_LOOKS = Object.fromEntries(LIMITS.map((name) => {
  const {look} = limitNamed(name);
  return [name, {...look, color: `var(--${look.color})`}];
})) as Readonly<Record<LimitName, LimitLook>>;
