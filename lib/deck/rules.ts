import type {SagLimit, TensionClass, WalkingUse} from "../design/design.js";
import type {FireSetting} from "../member/fire.js";

/** What a floor requires of its deck member, whichever limits count: what each limit is computed by. */
export interface Rules {
  /** Part of the superimposed load that is dead, psf; the rest is live. */
  readonly superimposedDeadPsf: number;
  /** Part of the live load that stays for years, 0 to 1. */
  readonly sustainedLiveShare: number;
  readonly tensionClass: TensionClass;
  readonly deadFactor: number;
  readonly liveFactor: number;
  /** Factor of the combination without live load; no less than that of dead load beside live load. */
  readonly deadOnlyFactor: number;
  readonly sagLimit: SagLimit;
  /** Length over which the member's ends bear, in. */
  readonly seatIn: number;
  /** Who walks on the floor; undefined where nobody minds. */
  readonly walking: WalkingUse | undefined;
  /** Rating required, with what it is judged by; undefined where none is required. */
  readonly fire: (FireSetting & {readonly hours: number}) | undefined;
}
