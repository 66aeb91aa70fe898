import {sameDesign} from "../../lib/design/same.js";
import {GUESSES, type Guess} from "../../lib/exercises/guesses.js";
import {minutesOf, lessonStops, timeText, type Lesson, type PlacedStop, type Prediction} from "../../lib/lessons/lesson.js";
import {button} from "../../components/controls.js";
import {bulletList, element, uniqueId} from "../../components/dom.js";
import {followed} from "../../components/followed.js";
import {placeText, stopHref} from "../../components/lessons/places.js";
import type {Seed} from "../../components/notebook.js";
import type {DesignStore} from "../../components/store.js";

/** The paths, each with what it takes, how to begin, and its stops. */
export function lessonList(lessons: readonly Lesson[], store: DesignStore, seeds: readonly Seed[]): HTMLElement {
  const unfolded = lessons.find(({id}) => id === followed()?.lesson || `#${id}` === location.hash) ?? lessons[0];
  return element("div", {}, ...lessons.map((lesson) => lessonPart(lesson, store, seeds, lesson === unfolded)));
}

function lessonPart(lesson: Lesson, store: DesignStore, seeds: readonly Seed[], unfolded: boolean): HTMLElement {
  const stops = lessonStops(lesson);
  const starter = seeds.find(({id}) => id === lesson.starter);
  const lock = element("input", {type: "checkbox", id: uniqueId("lock")});
  lock.checked = followed()?.lesson === lesson.id && followed()?.locked === true;
  const links: {readonly node: HTMLAnchorElement; readonly index: number}[] = [];
  const placed = stops.map((stop) => stopItem(stop, links));
  const address = () => {
    for (const {node, index} of links) node.href = stopHref(lesson, index, lock.checked);
  };
  lock.addEventListener("change", address);
  address();
  const node = element("section", {class: "lesson", "aria-labelledby": lesson.id},
    element("h2", {id: lesson.id}, lesson.title),
    element("p", {}, lesson.readers),
    element("p", {class: "lesson-facts"}, [
      timeText(minutesOf(lesson)), lesson.parts.length > 1 ? `${lesson.parts.length} parts` : "", `${stops.length} stops on ${new Set(stops.map(({stop}) => stop.page)).size} pages`,
      `${stops.filter(({stop}) => stop.predict).length} predictions`, starter ? `written for the ${starter.design.name}` : "with designs of your own",
    ].filter(Boolean).join(" \u00b7 ")),
    begin(lesson, store, starter, lock),
    element("details", {class: "lesson-stops", open: unfolded}, element("summary", {}, "Stop by stop: what is asked, predicted and looked at"),
      ...(lesson.before.length > 0 ? [element("h3", {}, "Before"), bulletList(lesson.before)] : []),
      ...lesson.parts.flatMap((part) => [
        element("h3", {}, lesson.parts.length > 1 ? `${part.title}, ${timeText(minutesOf(part))}` : "The stops"),
        element("ol", {class: "stops", start: stops.findIndex((one) => one.part === part) + 1}, ...stops.flatMap((one, i) => (one.part === part ? [placed[i] as HTMLElement] : []))),
      ]),
      ...(lesson.after.length > 0 ? [element("h3", {}, "After"), bulletList(lesson.after)] : [])),
  );
  return node;
}

/** How to begin, go on, hand out and print. */
function begin(lesson: Lesson, store: DesignStore, starter: Seed | undefined, lock: HTMLInputElement): HTMLElement {
  const at = followed();
  const told = element("span", {class: "control-help", "aria-live": "polite"});
  const start = (index: number) => (location.href = stopHref(lesson, index, lock.checked));
  const copy = async () => {
    const link = stopHref(lesson, 0, lock.checked);
    try {
      await navigator.clipboard.writeText(link);
      told.textContent = `Copied. Whoever opens the link follows this path from its first stop${lock.checked ? ", answers locked" : ""}.`;
    } catch {
      told.textContent = link;
    }
  };
  return element("div", {class: "lesson-begin no-print"},
    element("div", {class: "row"},
      at?.lesson === lesson.id ? button(`Go on at stop ${at.stop + 1}`, () => start(at.stop)) : null,
      starter ? button(`Start with the ${starter.design.name}`, () => {
        // What gives way is kept among the moments, and undo brings it back.
        if (!sameDesign(store.get(), starter.design)) store.replace(starter.design);
        store.flush();
        start(0);
      }) : null,
      button(starter ? "Start with the open design" : "Start", () => start(0), {quiet: starter !== undefined}),
    ),
    element("div", {class: "row"},
      element("label", {for: lock.id, class: "lesson-lock"}, lock, " Lock answers and worked steps until guessed"),
      button("Copy a link for the class", () => void copy(), {quiet: true}),
      button("Print this path", () => printAlone(lesson.id), {quiet: true}),
    ),
    told,
  );
}

/** Prints one path without the others and the page's own words. */
function printAlone(id: string): void {
  const {documentElement: root} = document;
  const section = document.getElementById(id)?.closest(".lesson");
  section?.setAttribute("data-printed", "");
  root.dataset["printsPath"] = "";
  window.addEventListener("afterprint", () => {
    section?.removeAttribute("data-printed");
    delete root.dataset["printsPath"];
  }, {once: true});
  window.print();
}

function stopItem({stop, index, fromMinute}: PlacedStop, links: {node: HTMLAnchorElement; index: number}[]): HTMLElement {
  const place = element("a", {}, placeText(stop));
  links.push({node: place, index});
  return element("li", {class: "stop"},
    element("p", {class: "stop-time"}, element("strong", {}, `${stop.minutes} min`), ` from ${fromMinute}`),
    element("div", {class: "stop-ask"}, element("p", {class: "stop-place"}, place, stop.figure === undefined ? "" : `, picture ${stop.figure}`), element("p", {}, element("strong", {}, stop.ask)), predictLine(stop.predict)),
    element("div", {class: "stop-look"},
      element("p", {}, element("strong", {}, "Look: "), stop.look),
      element("p", {}, element("strong", {}, "Enough when: "), stop.enough),
      stop.trials.length > 0 ? element("p", {}, element("strong", {}, "Try: "), stop.trials.map(({say}) => say).join("; "), ".") : null,
      stop.note ? element("p", {class: "stop-note"}, element("strong", {}, "To the teacher: "), stop.note) : null,
    ),
  );
}

function predictLine(predict: Prediction | undefined): HTMLElement | null {
  if (!predict) return null;
  if (predict.kind === "choice") return element("p", {}, "Predict: ", predict.question, " ", element("span", {class: "stop-choices"}, predict.choices.join(" / ")));
  const {question, unit} = GUESSES[predict.guess] as Guess;
  return element("p", {}, `Predict: ${question} (${unit})`);
}
