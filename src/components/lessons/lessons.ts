import {FileAttachment} from "observablehq:stdlib";
import type {Lesson} from "../../lib/lessons/lesson.js";

/** The paths, as the site was built with them; read and checked then. */
export const lessons = (await FileAttachment("../../data/lessons.json").json()) as readonly Lesson[];

/** A path by the name of its file. */
export const lessonOf = (id: string): Lesson | undefined => lessons.find((lesson) => lesson.id === id);
