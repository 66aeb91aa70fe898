import type {GuessName} from "../exercises/guesses.js";

/** What a reader says before the page answers. */
export type Prediction =
  /** A number, by the question that the page itself asks. */
  | {readonly kind: "guess"; readonly guess: GuessName}
  /** One of two to five answers to a question of the path's own; what the page shows decides, and it is not graded. */
  | {readonly kind: "choice"; readonly question: string; readonly choices: readonly string[]};

/** A change of the open design that a stop proposes. */
export interface LessonTrial {
  /** What its button says: "Make the span 60 ft". */
  readonly say: string;
  /** Values by the paths of the design's fields. */
  readonly set: Readonly<Record<string, unknown>>;
}

/** A place of the notebook where a path halts. */
export interface LessonStop {
  /** Name of the page's folder; the first page is `index`. */
  readonly page: string;
  /** The heading below which it lies, as the page has it; without one the opening of the page, above its first heading, or with no picture named the whole page. */
  readonly heading: string | undefined;
  /** Which picture below that heading, counted from 1; without one all that stands there, one thing after the other. */
  readonly figure: number | undefined;
  /** Time for it, minutes. */
  readonly minutes: number;
  /** What to ask the class. */
  readonly ask: string;
  readonly predict: Prediction | undefined;
  /** What to look at once everybody has said something: the answer, in words that hold for any design unless the path opens a starter. */
  readonly look: string;
  /** Where to stop: what is enough here. */
  readonly enough: string;
  /** A word to the teacher alone; shown on the page of paths, never while the path is followed. */
  readonly note: string | undefined;
  readonly trials: readonly LessonTrial[];
}

/** Stops that are gone through in one sitting. */
export interface LessonPart {
  readonly title: string;
  readonly stops: readonly LessonStop[];
}

/** A reading order of the notebook for a class. */
export interface Lesson {
  /** Name of its file. */
  readonly id: string;
  readonly title: string;
  /** Whom it is for, in a sentence. */
  readonly readers: string;
  /** The starter design that it is written for, by the name of its file; without one every reader has a design of their own. */
  readonly starter: string | undefined;
  /** What to have ready before. */
  readonly before: readonly string[];
  /** What to give the class to do afterward. */
  readonly after: readonly string[];
  readonly parts: readonly LessonPart[];
}

/** A stop with its place on the path. */
export interface PlacedStop {
  readonly stop: LessonStop;
  readonly part: LessonPart;
  /** Its place among all stops of the path, from 0. */
  readonly index: number;
  /** Minutes of its part that are over when it begins. */
  readonly fromMinute: number;
}

/** All stops of a path in order. */
export function lessonStops({parts}: Lesson): PlacedStop[] {
  const placed: PlacedStop[] = [];
  for (const part of parts) {
    let fromMinute = 0;
    for (const stop of part.stops) {
      placed.push({stop, part, index: placed.length, fromMinute});
      fromMinute += stop.minutes;
    }
  }
  return placed;
}

/** Time of a path or of one of its parts, minutes. */
export function minutesOf(of: Lesson | LessonPart): number {
  const parts = "parts" in of ? of.parts : [of];
  return parts.reduce((sum, {stops}) => sum + stops.reduce((own, {minutes}) => own + minutes, 0), 0);
}

/** Minutes as a class has them: "50 minutes", "4 h 10 min". */
export function timeText(minutes: number): string {
  if (minutes < 90) return `${minutes} minute${minutes === 1 ? "" : "s"}`;
  const rest = minutes % 60;
  return `${Math.floor(minutes / 60)} h${rest > 0 ? ` ${rest} min` : ""}`;
}
