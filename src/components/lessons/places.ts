import {lessonStops, type Lesson, type PlacedStop, type LessonStop} from "../../lib/lessons/lesson.js";
import {pathFragment} from "../followed.js";
import {hrefOf} from "../shared/pageList.js";

/** The page that is open, by the name of its folder. */
export const pageHere = (): string => /\/pages\/([^/]+)\//.exec(location.pathname)?.[1] ?? "index";

/** The address of a stop; whoever opens it follows the path from there. */
export function stopHref(lesson: Lesson, index: number, locked: boolean): string {
  const page = lessonStops(lesson)[index]?.stop.page ?? "lessons";
  return `${hrefOf(page)}${pathFragment({lesson: lesson.id, stop: index, locked})}`;
}

/** The title of a page, as the list of pages has it. */
export function pageTitle(page: string): string {
  const href = hrefOf(page);
  return [...document.querySelectorAll<HTMLAnchorElement>("#pages li a")].find((link) => link.href === href)?.textContent?.trim() ?? page;
}

/** A stop's place in words: the page, and the heading where it has one. */
export const placeText = ({page, heading}: LessonStop): string => (heading === undefined ? pageTitle(page) : `${pageTitle(page)} \u203a ${heading}`);

/** The stop before or after another, if there is one. */
export const stopBeside = (lesson: Lesson, index: number, by: 1 | -1): PlacedStop | undefined => lessonStops(lesson)[index + by];
