import {readJson} from "../check.js";
import {entryAt} from "../design/fields.js";
import {isPlain} from "../design/plain.js";
import {checkEntry} from "../design/validate.js";
import {InputError} from "../errors.js";
import {GUESSES, type Guess, type GuessName} from "../exercises/guesses.js";
import {PlainReader} from "../report/plainReader.js";
import {minutesOf, type Lesson, type LessonPart, type Prediction, type LessonStop, type LessonTrial} from "./lesson.js";

/** Marks a path's file. */
export const LESSON_FORMAT = "plank-and-tee-path";
/** The version of the file that is read. */
export const LESSON_VERSION = 1;

/** Most minutes of a stop and of a part. */
const MOST_MINUTES = {stop: 60, part: 240};
/** Answers that a prediction offers. */
const CHOICES = {least: 2, most: 5};

/**
 * Reads the file of a path.
 *
 * @param id - name of the file without its ending
 * @throws InputError naming the first field that is missing, unknown or out of range: a guess that its page does not ask, a
 *   value that the design's field does not take, minutes that do not add up
 */
export function readLesson(fileText: string, id: string): Lesson {
  return lessonFrom(readJson(fileText, "path"), id);
}

/** {@link readLesson} of content that is read already. */
export function lessonFrom(content: unknown, id: string): Lesson {
  const file = new PlainReader(content, "", "path");
  file.choice("format", "format", [LESSON_FORMAT]);
  file.same("version", "version of the path", LESSON_VERSION, "This kit reads that version alone");
  const lesson: Lesson = {
    id, title: words(file, "title"), readers: words(file, "readers"), starter: file.has("starter") ? words(file, "starter") : undefined,
    before: file.texts("before") ?? [], after: file.texts("after") ?? [], parts: file.list("parts").map(readPart),
  };
  file.finish();
  return lesson;
}

function readPart(reader: PlainReader): LessonPart {
  const minutes = reader.number("minutes", "minutes of the part", "min", 1, MOST_MINUTES.part);
  const part: LessonPart = {title: words(reader, "title"), stops: reader.list("stops").map(readStop)};
  reader.finish();
  const sum = minutesOf(part);
  if (sum !== minutes) throw new InputError({path: reader.at("minutes"), label: `minutes of "${part.title}"`, value: minutes, unit: "min", allowed: `${sum} min, the sum of its stops`});
  return part;
}

function readStop(reader: PlainReader): LessonStop {
  const page = words(reader, "page");
  const stop: LessonStop = {
    page, heading: reader.has("heading") ? words(reader, "heading") : undefined,
    figure: reader.has("figure") ? whole(reader, "figure", "picture below the heading", "", 1, 9) : undefined,
    minutes: whole(reader, "minutes", "minutes of the stop", "min", 1, MOST_MINUTES.stop),
    ask: words(reader, "ask"), predict: reader.has("predict") ? readPrediction(reader.branch("predict"), page) : undefined,
    look: words(reader, "look"), enough: words(reader, "enough"), note: reader.has("note") ? words(reader, "note") : undefined,
    trials: reader.has("try") ? reader.list("try").map(readTrial) : [],
  };
  reader.finish();
  return stop;
}

function readPrediction(reader: PlainReader, page: string): Prediction {
  if (!reader.has("guess")) {
    const question = words(reader, "question");
    const choices = reader.texts("choices") ?? [];
    reader.finish();
    if (choices.length < CHOICES.least || choices.length > CHOICES.most || new Set(choices).size < choices.length) {
      throw new InputError({path: reader.at("choices"), label: "choices of the prediction", value: choices, allowed: `${CHOICES.least} to ${CHOICES.most} different texts`});
    }
    return {kind: "choice", question, choices};
  }
  const here = (Object.keys(GUESSES) as GuessName[]).filter((name) => (GUESSES[name] as Guess).page === page);
  const name = words(reader, "guess");
  const guess = here.find((one) => one === name);
  reader.finish();
  if (guess === undefined) {
    throw new InputError({path: reader.at("guess"), label: "guess", value: name, allowed: here.length > 0 ? `what page ${page} asks: ${here.join(", ")}` : `none: page ${page} asks for no guess`});
  }
  return {kind: "guess", guess};
}

function readTrial(reader: PlainReader): LessonTrial {
  const say = words(reader, "say");
  const {set} = reader.rest(["set"]);
  if (!isPlain(set) || Object.keys(set).length === 0) throw new InputError({path: reader.at("set"), label: "set", value: set, allowed: "fields of the design with their values"});
  for (const [path, value] of Object.entries(set)) {
    const entry = entryAt(path);
    if (!entry) throw new InputError({path: reader.at(`set.${path}`), label: path, value, allowed: "the path of a field of a design"});
    checkEntry(entry, path, value);
  }
  reader.finish();
  return {say, set};
}

function whole(reader: PlainReader, key: string, label: string, unit: string, min: number, max: number): number {
  const value = reader.number(key, label, unit, min, max);
  if (!Number.isInteger(value)) throw new InputError({path: reader.at(key), label, value, unit, allowed: "a whole number"});
  return value;
}

/** A text that says something. */
function words(reader: PlainReader, key: string): string {
  const text = reader.text(key).trim();
  if (text === "") throw new InputError({path: reader.at(key), label: key, value: text, allowed: "text"});
  return text;
}
