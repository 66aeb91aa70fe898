import type {LimitName} from "../../lib/deck/limits.js";

/** How a limit looks in every chart and table: a letter and a dash as well as a color. */
export interface LimitLook {
  readonly letter: string;
  /** The line in a word, for a key, and its dashes; undefined is solid. */
  readonly line: string;
  readonly dash: string | undefined;
  readonly color: string;
}

/** The looks of the limits. Steel's color stands for tension and concrete's for compression, as in the drawings. */
export const LIMIT_LOOKS: Readonly<Record<LimitName, LimitLook>> = {
  "strength": {letter: "S", line: "solid", dash: undefined, color: "var(--ink)"},
  "development": {letter: "D", line: "long and short dashes", dash: "9 2.5 3 2.5", color: "var(--ink)"},
  "minimum strength": {letter: "M", line: "wide dots", dash: "1.5 5", color: "var(--ink)"},
  "shear": {letter: "V", line: "short dashes", dash: "3 2.5", color: "var(--load)"},
  "horizontal shear": {letter: "H", line: "dash and two dots", dash: "7 2.5 1.5 2.5 1.5 2.5", color: "var(--load)"},
  "service tension": {letter: "T", line: "dashed", dash: "7 3", color: "var(--steel)"},
  "crack control": {letter: "K", line: "wide dashes", dash: "10 5", color: "var(--steel)"},
  "sustained compression": {letter: "L", line: "dotted", dash: "1.5 3", color: "var(--concrete-plant-edge)"},
  "total compression": {letter: "C", line: "dash and dot", dash: "8 3 1.5 3", color: "var(--concrete-plant-edge)"},
  "deflection": {letter: "F", line: "dashes far apart", dash: "5 6", color: "var(--accent)"},
  "camber": {letter: "A", line: "dots far apart", dash: "2 6", color: "var(--accent)"},
  "bearing": {letter: "B", line: "short dashes far apart", dash: "3 5", color: "var(--load)"},
  "transfer": {letter: "R", line: "none", dash: undefined, color: "var(--edge)"},
  "soffit compression": {letter: "E", line: "none", dash: undefined, color: "var(--edge)"},
  "vibration": {letter: "W", line: "none", dash: undefined, color: "var(--edge)"},
  "fire": {letter: "I", line: "none", dash: undefined, color: "var(--edge)"},
  "stripping": {letter: "P", line: "none", dash: undefined, color: "var(--edge)"},
  "hauling": {letter: "Q", line: "none", dash: undefined, color: "var(--edge)"},
};
