import type {Catalog} from "../catalog.js";
import type {Shape} from "../sections/shape.js";
import type {Step, Working} from "../step.js";
import type {Draw} from "./draw.js";
import type {Prose} from "./prose.js";

/** What exercises are about: the page that teaches it, by the name of its folder. */
export const TOPICS = [
  "loads", "reduction", "deck", "tables", "trade-offs", "member", "limits", "camber", "topping", "edge-beam", "girder", "snow", "roof", "columns", "walls", "story", "air",
  "parking", "daylight", "width", "bay", "record",
] as const;
export type Topic = (typeof TOPICS)[number];

/** How hard an exercise is: 1 reads or uses one rule, 2 joins two or three, 3 sizes something. */
export type Level = 1 | 2 | 3;

/** A kind of exercise. */
export interface Kind {
  /** Its name in commands, links and files, such as `tributary-line-load`; never changed once it is published. */
  readonly id: string;
  readonly topic: Topic;
  readonly level: Level;
  /** What it is about, in a few words. */
  readonly title: string;
  /** An exercise of this kind. Draw first what the question states, so that other seeds state other numbers. */
  readonly make: (draw: Draw, catalog: Catalog) => Content;
}

/** What an exercise asks and holds, before it is known whose it is. */
export interface Content {
  /** The question, a sentence each. */
  readonly question: readonly Prose[];
  /** What is given, once more as a list. */
  readonly givens: readonly Given[];
  /** A table to read from. */
  readonly table?: PracticeTable;
  /** What a page may draw beside the question. */
  readonly picture?: Picture;
  /** At least one. */
  readonly parts: readonly ExercisePart[];
}

/** An exercise: its content, and the three words from which it can be made again. */
export interface Item extends Content {
  /** Id of its {@link Kind}. */
  readonly kind: string;
  readonly topic: Topic;
  readonly level: Level;
  readonly title: string;
  readonly seed: number;
  /** Which exercise of its kind within its set, from 1. */
  readonly turn: number;
  /** Its place within its set, from 1. */
  readonly number: number;
}

/** A thing that the question gives. */
export interface Given {
  readonly name: string;
  /** A number in `unit`, or a word such as a designation. */
  readonly value: number | string;
  readonly unit: string;
}

/** A small table, as a code or a handbook prints it. */
export interface PracticeTable {
  readonly title: string;
  readonly columns: readonly {readonly name: string; readonly unit: string}[];
  readonly rows: readonly (readonly (string | number)[])[];
  readonly source: string;
}

/** A section to draw: a shape of the catalog with its strands and topping. */
export interface SectionPicture {
  readonly kind: "section";
  readonly shape: Shape;
  readonly toppingIn: number;
  /** Strands, in from the left edge and above the soffit. */
  readonly strands: readonly {readonly xIn: number; readonly yIn: number}[];
  /** Whether its dimensions are written; not where they would tell the answer. */
  readonly dimensions: boolean;
}

/** A simple beam under loads. */
export interface BeamPicture {
  readonly kind: "beam";
  readonly spanFt: number;
  readonly uniform: readonly {readonly name: string; readonly plf: number}[];
  readonly points: readonly {readonly name: string; readonly kip: number; readonly atFt: number}[];
}

/** A plan of column lines with one area marked, ft from the southwest corner. */
export interface PlanPicture {
  readonly kind: "plan";
  readonly spanFt: number;
  readonly beamSpanFt: number;
  readonly baysAcross: number;
  readonly baysAlong: number;
  readonly marked: {readonly name: string; readonly xFt: number; readonly yFt: number; readonly widthFt: number; readonly heightFt: number};
}

/** Things stacked in height, bottom first, in inches: a story, a beam, a roof. */
export interface StackPicture {
  readonly kind: "stack";
  readonly layers: readonly {readonly name: string; readonly heightIn: number; readonly asked?: boolean}[];
}

/** What a page may draw beside a question. */
export type Picture = SectionPicture | BeamPicture | PlanPicture | StackPicture;

/** An answer: a number in the part's unit, or the ids of what was chosen (several, in order, joined by commas). */
export type Answer = number | string;

/**
 * The answers before a part, in the order of the parts: the reader's own where there are any, the key's elsewhere. What a
 * later part asks may follow from them, so that one slip is not marked twice.
 */
export type Earlier = readonly Answer[];

/** A usual mistake with the answer that it gives. */
export interface Slip {
  /** A few words, such as "forgot the load factor". */
  readonly name: string;
  readonly value: number;
  /** What to say to the reader who made it. */
  readonly says: string;
}

/** How far off still counts as right: a share of the answer, or a number in its unit (0: exactly). */
export type Tolerance = {readonly percent: number} | {readonly within: number};

interface PartBase {
  readonly ask: Prose;
  readonly points: number;
  /** The worked steps to its key; where an answer is read rather than computed, without steps. */
  readonly working: (earlier: Earlier) => Working;
  /** Why the key is right, where steps alone do not say it. */
  readonly because?: Prose;
}

/** Asks for one number. */
export interface NumberPart extends PartBase {
  readonly type: "number";
  /** The quantity in two or three words. */
  readonly label: string;
  readonly unit: string;
  readonly tolerance: Tolerance;
  readonly key: (earlier: Earlier) => number;
  readonly slips: (earlier: Earlier) => readonly Slip[];
}

/** Something to choose or to put in order. */
export interface Option {
  readonly id: string;
  readonly text: Prose;
  readonly picture?: Picture;
  /** The usual mistake behind choosing it. */
  readonly slip?: {readonly name: string; readonly says: string};
}

/** Asks for one of several: a section, what governs, yes or no. */
export interface ChoicePart extends PartBase {
  readonly type: "choice";
  readonly options: readonly Option[];
  /** Id of the right one. */
  readonly key: (earlier: Earlier) => string;
}

/** Asks for an order. */
export interface OrderPart extends PartBase {
  readonly type: "order";
  /** What the order goes by: "from the least to the most". */
  readonly by: string;
  /** As they are shown first. */
  readonly options: readonly Option[];
  /** Ids in the right order, joined by commas. */
  readonly key: (earlier: Earlier) => string;
  /** Usual wrong orders. */
  readonly slips: readonly {readonly name: string; readonly order: string; readonly says: string}[];
}

/** Shows a calculation as somebody wrote it, with one mistake in it, and asks for the line. */
export interface MistakePart extends PartBase {
  readonly type: "mistake";
  /** The lines as they were written: each adds up by itself, and what follows from a wrong one goes on with its number. */
  readonly lines: readonly Step[];
  /** Number of the wrong line, from 1, as text. */
  readonly key: (earlier: Earlier) => string;
  /** What to say to who picks another line, by its number: why that line is right as it follows from those above. */
  readonly says: Readonly<Record<string, string>>;
}

export type ExercisePart = NumberPart | ChoicePart | OrderPart | MistakePart;
