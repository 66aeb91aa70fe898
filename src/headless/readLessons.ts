import {readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {InputError} from "../../lib/errors.js";
import {minutesOf, type Lesson} from "../../lib/lessons/lesson.js";
import {readLesson} from "../../lib/lessons/readLesson.js";
import {ROOT} from "./root.js";

/** The lesson paths of `data/lessons`, the shortest first; throws {@link InputError} that names the file of the first that cannot be read. */
export function readLessons(folder = join(ROOT, "data", "lessons")): Lesson[] {
  const files = readdirSync(folder).filter((file) => file.endsWith(".json")).sort();
  const lessons = files.map((file) => {
    try {
      return readLesson(readFileSync(join(folder, file), "utf8"), file.replace(/\.json$/, ""));
    } catch (problem) {
      throw problem instanceof InputError ? problem.of(`data/lessons/${file}`) : problem;
    }
  });
  return lessons.sort((a, b) => minutesOf(a) - minutesOf(b));
}
