import type {LimitName} from "../../lib/deck/safeLoad.js";

/** How a limit looks in every chart and table: a letter and a dash as well as a colour. */
export interface LimitLook {
  readonly letter: string;
  /** The line in a word, for a key, and its dashes; undefined is solid. */
  readonly line: string;
  readonly dash: string | undefined;
  readonly colour: string;
}

/** The looks of the limits. Steel's colour stands for tension and concrete's for compression, as in the drawings. */
export const LIMIT_LOOKS: Readonly<Record<LimitName, LimitLook>> = {
  "strength": {letter: "S", line: "solid", dash: undefined, colour: "var(--ink)"},
  "shear": {letter: "V", line: "short dashes", dash: "3 2.5", colour: "var(--load)"},
  "service tension": {letter: "T", line: "dashed", dash: "7 3", colour: "var(--steel)"},
  "sustained compression": {letter: "L", line: "dotted", dash: "1.5 3", colour: "var(--concrete-plant-edge)"},
  "total compression": {letter: "C", line: "dash and dot", dash: "8 3 1.5 3", colour: "var(--concrete-plant-edge)"},
};
