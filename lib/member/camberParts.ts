import type {Camber} from "./camber.js";

/** Moments in a member's life at which its camber is reported. */
export type CamberStage = "release" | "erection" | "topped" | "long term";
/** What moves the member. */
export type CamberCause = "strands" | "own weight" | "topping" | "superimposed dead load";

/** The share that one cause has in the camber of one stage, in; up is positive. */
export interface CamberPart {
  readonly stage: CamberStage;
  readonly cause: CamberCause;
  readonly movementIn: number;
}

/** The camber of each stage by cause; the parts of a stage add up to it. Parts of nothing are left out. */
export function camberParts(camber: Camber): CamberPart[] {
  const {multipliers: m, prestressIn, selfIn, toppingIn, superimposedIn} = camber;
  const stage = (name: CamberStage, parts: readonly (readonly [CamberCause, number])[]) =>
    parts.filter(([, movementIn]) => movementIn !== 0).map(([cause, movementIn]): CamberPart => ({stage: name, cause, movementIn}));
  const erection = [["strands", m.erectionPrestress * prestressIn], ["own weight", m.erectionSelf * selfIn]] as const;
  return [
    ...stage("release", [["strands", prestressIn], ["own weight", selfIn]]),
    ...stage("erection", erection),
    ...(toppingIn === 0 ? [] : stage("topped", [...erection, ["topping", toppingIn]])),
    ...stage("long term", [
      ["strands", m.finalPrestress * prestressIn], ["own weight", m.finalSelf * selfIn],
      ["topping", m.finalTopping * toppingIn], ["superimposed dead load", m.finalSuperimposed * superimposedIn],
    ]),
  ];
}

/** How much the camber at erection changes if the strands lift by a share more than computed, in. */
export function erectionChangeIn({multipliers, prestressIn}: Camber, share: number): number {
  return share * multipliers.erectionPrestress * prestressIn;
}
