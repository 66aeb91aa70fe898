import type {Check} from "../../lib/checks.js";
import type {AirPart} from "../../lib/air/parts.js";

/** Two parts in one place, and what says so. */
export interface Collision {
  readonly one: AirPart;
  readonly other: AirPart;
  /** The check that fails for it, or "opening" where a part passes another by an opening; undefined where nothing does. */
  readonly saidBy: string | undefined;
}

/** Overlaps smaller than this are parts that touch, in. */
const TOUCH_IN = 1e-6;

/** Checks that fail where parts of these kinds meet. */
const SAID_BY: readonly (readonly [kinds: RegExp, checks: readonly string[]])[] = [
  [/feeder.*(stem|flange)|(stem|flange).*feeder/, ["branch duct depth", "branch duct width", "return feeder width", "feeder spaces"]],
  [/riser.*stem|stem.*riser/, ["riser room", "feeder spaces"]],
  [/riser|main/, ["trunk room", "riser room", "feeder spaces"]],
  [/feeder|collar|return space/, ["trunk room", "riser room", "feeders under the girder", "branch duct width", "branch duct depth", "return feeder width", "feeder spaces"]],
];

/** Whether two boxes share a place. */
export function overlap(a: AirPart, b: AirPart): boolean {
  return Math.min(a.x1In, b.x1In) - Math.max(a.x0In, b.x0In) > TOUCH_IN
    && Math.min(a.y1In, b.y1In) - Math.max(a.y0In, b.y0In) > TOUCH_IN
    && Math.min(a.z1In, b.z1In) - Math.max(a.z0In, b.z0In) > TOUCH_IN;
}

/**
 * Every two parts that share a place: ducts with each other and with the structure, each pair with what says so.
 *
 * @param checks - the design's checks of services and air
 */
export function collisions(ducts: readonly AirPart[], structure: readonly AirPart[], checks: readonly Check[]): Collision[] {
  const failing = new Set(checks.filter(({verdict}) => verdict === "fails").map(({id}) => id));
  const found: Collision[] = [];
  ducts.forEach((one, i) => {
    for (const other of [...ducts.slice(i + 1), ...structure]) if (overlap(one, other)) found.push({one, other, saidBy: saidBy(one, other, failing)});
  });
  return found;
}

function saidBy(one: AirPart, other: AirPart, failing: ReadonlySet<string>): string | undefined {
  if (one.opening && other.kind === "girder") return "opening";
  // A riser passes the deck by an opening in its flange, or through planks.
  if (/riser/.test(one.kind) && other.kind === "flange") return "opening";
  const pair = `${one.kind} ${other.kind}`;
  const ids = SAID_BY.filter(([kinds]) => kinds.test(pair)).flatMap(([, checks]) => checks);
  return ids.find((id) => failing.has(id));
}
