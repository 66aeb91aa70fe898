import {existsSync, readFileSync} from "node:fs";
import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {evaluate} from "../../lib/evaluate.js";
import {GUESSES} from "../../lib/exercises/guesses.js";
import {minutesOf, lessonStops} from "../../lib/lessons/lesson.js";
import {sourceOf} from "../../src/headless/pages.js";
import {readLessons} from "../../src/headless/readLessons.js";
import {catalog, seed, seeds} from "../support/designs.js";

const LESSONS = readLessons();

/** The sources of a page by heading; the opening, above the first one, has none. */
function sections(page: string): Map<string | undefined, string> {
  const [opening = "", ...rest] = readFileSync(sourceOf(page), "utf8").split(/^(?=#{2,3} |<h2\b)/m);
  return new Map([[undefined, opening], ...rest.map((text) => {
    const [first = "", ...lines] = text.split("\n");
    return [first.replace(/<[^>]*>/g, "").replace(/^#+ /, "").trim(), lines.join("\n")] as const;
  })]);
}

/** What in a page's source draws a picture: a figure made there, or by a function that its module names so, or panels that hold some. */
const DRAWS = /\b(?:figure|\w*Figure)\(|display\((?:panel|explorer)\.charts?\)/g;

describe("the paths", () => {
  test("are a class of 50 minutes, a review of 90 and a week of five meetings", () => {
    expect(LESSONS.map((lesson) => [lesson.id, minutesOf(lesson), lesson.parts.map(minutesOf)])).toEqual([
      ["first-class", 50, [50]], ["studio-review", 90, [30, 36, 24]], ["structures-week", 250, [50, 50, 50, 50, 50]],
    ]);
  });

  describe.each(LESSONS.map((lesson) => [lesson.id, lesson] as const))("%s", (_, lesson) => {
    test("halts where there is a page, a heading and a picture", () => {
      const lost = lessonStops(lesson).flatMap(({stop: {page, heading, figure}}) => {
        if (!existsSync(sourceOf(page))) return [`no page ${page}`];
        const section = sections(page).get(heading);
        if (section === undefined) return [`${page} has no heading "${heading}"`];
        const drawn = section.match(DRAWS)?.length ?? 0;
        return figure !== undefined && drawn < figure ? [`${page}, ${heading}: ${drawn} pictures, not ${figure}`] : [];
      });
      expect(lost).toEqual([]);
    });

    test("asks and predicts: most stops have something to say first", () => {
      const stops = lessonStops(lesson);
      expect(stops.filter(({stop}) => stop.ask.endsWith("?") || stop.ask.endsWith("."))).toHaveLength(stops.length);
      expect(stops.filter(({stop}) => stop.predict).length).toBeGreaterThan(0.6 * stops.length);
    });

    test("asks for guesses that its starter has an answer to, and proposes changes that can be computed", () => {
      const starters = lesson.starter === undefined ? seeds.map(({design}) => design) : [seed(lesson.starter)];
      for (const starter of starters) {
        let design = starter;
        for (const {stop} of lessonStops(lesson)) {
          const asked = stop.predict?.kind === "guess" ? stop.predict.guess : undefined;
          if (lesson.starter !== undefined && asked) expect(GUESSES[asked].answer(evaluate(design, catalog)), asked).not.toBe(0);
          for (const {set} of stop.trials) {
            const next = withValues(design, set);
            expect(next).not.toEqual(design);
            evaluate(next, catalog);
            design = next;
          }
        }
        // A class that follows all proposals leaves the design as it found it.
        expect(evaluate(design, catalog).edgeBeam.depthIn).toBe(evaluate(starter, catalog).edgeBeam.depthIn);
        expect(design.bay).toEqual(starter.bay);
      }
    });
  });
});

describe("what a path says of its starter is so", () => {
  const library = seed("branch-library");
  const at = (changes: Readonly<Record<string, unknown>>) => evaluate(withValues(library, changes), catalog);
  const now = at({});

  test("at 50 ft the tee carries about half, and it is no longer strength that governs", () => {
    const longer = at({"bay.spanFt": 50});
    expect(longer.deck.safe.safeLoadPsf / now.deck.safe.safeLoadPsf).toBeGreaterThan(0.45);
    expect(longer.deck.safe.safeLoadPsf / now.deck.safe.safeLoadPsf).toBeLessThan(0.55);
    expect([now.deck.safe.governs, longer.deck.safe.governs === "strength"]).toEqual(["strength", false]);
  });

  test("its tee is stopped by bearing at 14 ft, by strength at half its span, and at twice its span by the camber that must last", () => {
    expect([14, 20, 40, 80].map((spanFt) => safeLoad(now.member, spanFt, now.deck.criteria).governs)).toEqual(["bearing", "strength", "strength", "camber"]);
  });

  test("with the beam below the deck, ceiling and glass lose the same, more than a foot, and nothing twists it", () => {
    const below = at({"edgeBeam.kind": "below"});
    const lostIn = now.story.ceilingHeightIn - below.story.ceilingHeightIn;
    expect(lostIn).toBeGreaterThan(12);
    expect(now.story.glassIn - below.story.glassIn).toBeCloseTo(lostIn, 9);
    expect(below.edgeBeam.torsionKipIn).toBe(0);
  });

  test("under full load the underside is close to zero, a little in tension; about a sixth of the jacking stress is lost", () => {
    expect(now.deck.totalStresses.bottomKsi).toBeLessThan(0);
    expect(now.deck.totalStresses.bottomKsi).toBeGreaterThan(-0.15);
    expect(GUESSES.lossShare.answer(now)).toBeCloseTo(100 / 6, 0);
  });

  test("the seat after tolerances is 4 to 6 in; the column is less than two feet wide; the block is no deeper than topping and flange", () => {
    expect(now.edgeBeam.seat.afterToleranceIn).toBeGreaterThan(4);
    expect(now.edgeBeam.seat.afterToleranceIn).toBeLessThan(6);
    expect(library.column.sideIn).toBeLessThan(24);
    expect(now.deck.strength.neutralAxisIn).toBeLessThan(library.deck.toppingIn + 2);
  });
});
