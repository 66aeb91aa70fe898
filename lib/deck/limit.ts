import type {Check} from "../checks.js";
import type {Member} from "../member/member.js";
import type {Step} from "../step.js";
import type {Cell} from "./cell.js";
import type {LimitCase} from "./limitSteps.js";
import type {LoadedDeck} from "./loadedDeck.js";
import type {Rules} from "./rules.js";

/** How a limit looks in every chart and table: a letter and a dash as well as a color. */
export interface LimitLook {
  readonly letter: string;
  /** The line in a word, for a key, and its dashes; undefined is solid. */
  readonly line: string;
  readonly dash: string | undefined;
  /** The name of a color of the style sheet. */
  readonly color: string;
}

/** Steel's color stands for tension and concrete's for compression, as in the drawings; gates draw no line. */
export const GATE_LOOK = {line: "none", dash: undefined, color: "edge"} as const;

interface AnyLimit<Name extends string> {
  /** In the words that tables print. */
  readonly name: Name;
  /** Standard and clause, or "common practice". */
  readonly clause: string;
  /** What it asks, as a reader would. */
  readonly asks: string;
  readonly look: LimitLook;
  /** Whether such a member by such rules can meet it at any span; without this, any can. */
  applies?(member: Member, rules: Rules): boolean;
  /** What the deck's checks say of it under the floor's load; none where another limit's checks say it. */
  checks(cell: Cell, deck: LoadedDeck): readonly Check[];
}

/** The superimposed load at which a limit is reached, and where. */
export interface Reached {
  /** Negative where dead load alone exceeds the limit. */
  readonly psf: number;
  /** Place along the span, 0 to 0.5. */
  readonly share: number;
}

/** A limit that bounds the load. */
export interface LoadLimit<Name extends string = string, At extends Reached = Reached> extends AnyLimit<Name> {
  readonly kind: "load";
  /** Whether the trade handbook's load tables are made by it. */
  readonly handbook?: boolean;
  /** Whether it counts only where a floor requires it. */
  readonly onRequest?: boolean;
  /** Where along the span it is reached first, and under what load; undefined where no load reaches it. */
  reached(cell: Cell): At | undefined;
  /** How that load is computed at that place, down to {@link LimitCase.psf}. */
  steps(limit: LimitCase, at: At): readonly Step[];
}

/** A limit that a member passes or not, whatever the load. */
export interface Gate<Name extends string = string> extends AnyLimit<Name> {
  readonly kind: "gate";
  /** The setting without which it asks nothing. */
  readonly setting?: "walking" | "fire";
  /** How much of it is used, 1 being the limit; undefined where it asks nothing. */
  use(cell: Cell): number | undefined;
  /** How that use is computed. */
  measure(cell: Cell, use: number): Step;
  /** Why a deck that does not pass loses a search, in a sentence; without it a search lets the deck pass, as steel in the top or a permit cures it. */
  loses?(cell: Cell): string;
}

export type Limit = LoadLimit | Gate;
