import {mkdtempSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {describe, expect, test} from "vitest";
import {minutesOf, lessonStops, timeText} from "../../lib/lessons/lesson.js";
import {lessonFrom, readLesson} from "../../lib/lessons/readLesson.js";
import {readLessons} from "../../src/headless/readLessons.js";

const STOP = {page: "loads", heading: "One square foot of floor", figure: 1, minutes: 7, ask: "How much?", predict: {guess: "demand"}, look: "This much.", enough: "It is on the board."};
const PATH = {
  format: "plank-and-tee-path", version: 1, title: "A path", readers: "For two.", starter: "branch-library",
  parts: [{title: "First", minutes: 12, stops: [STOP, {...STOP, minutes: 5, predict: {question: "Which?", choices: ["this", "that"]}, try: [{say: "Longer", set: {"bay.spanFt": 50}}]}]}, {title: "Second", minutes: 7, stops: [STOP]}],
};
/** The path with its first stop, its first part or the whole changed. */
const withStop = (changes: object) => ({...PATH, parts: [{...PATH.parts[0], stops: [{...STOP, ...changes}, PATH.parts[0]?.stops[1]]}]});
const withPart = (changes: object) => ({...PATH, parts: [{...PATH.parts[0], ...changes}]});

describe("a path's file", () => {
  test("is read with its stops in order, each with the minutes of its part that have gone by", () => {
    const lesson = lessonFrom(PATH, "two");
    expect([lesson.id, lesson.starter, lesson.before]).toEqual(["two", "branch-library", []]);
    expect(lessonStops(lesson).map(({index, fromMinute, part}) => [index, fromMinute, part.title])).toEqual([[0, 0, "First"], [1, 7, "First"], [2, 0, "Second"]]);
    expect(minutesOf(lesson)).toBe(19);
    expect(lessonStops(lesson).map(({stop}) => stop.predict?.kind)).toEqual(["guess", "choice", "guess"]);
    expect(lessonStops(lesson)[1]?.stop.trials).toEqual([{say: "Longer", set: {"bay.spanFt": 50}}]);
  });

  test.each([
    ["that is no JSON", "{", /^path: "\{" is not possible \(JSON text\)/],
    ["of another format", {...PATH, format: "a-path"}, /^format: "a-path" is not possible \(plank-and-tee-path\)/],
    ["of a later version", {...PATH, version: 2}, /^version of the path: 2 is not possible \(1\)/],
    ["without a title", {...PATH, title: " "}, /^title: "" is not possible \(text\)/],
    ["with a field that it does not know", {...PATH, audience: "all"}, /^audience: "all" is not possible \(no field of this name/],
    ["without parts", {...PATH, parts: []}, /^parts: \[\] is not possible/],
    ["whose minutes do not add up", withPart({minutes: 50}), /^minutes of "First": 50 min is not possible \(12 min, the sum of its stops\)/],
    ["with half a minute", withStop({minutes: 6.5}), /^minutes of the stop: 6.5 min is not possible \(a whole number\)/],
    ["with a stop of no time", withStop({minutes: 0}), /^minutes of the stop: 0 min is not possible \(1 to 60 min\)/],
    ["with a guess that its page does not ask", withStop({predict: {guess: "beamDepth"}}), /^guess: "beamDepth" is not possible \(what page loads asks: demand\)/],
    ["with a guess on a page that asks for none", withStop({page: "record"}), /^guess: "demand" is not possible \(none: page record asks for no guess\)/],
    ["with one choice", withStop({predict: {question: "Which?", choices: ["this"]}}), /^choices of the prediction: \["this"\] is not possible \(2 to 5 different texts\)/],
    ["with the same choice twice", withStop({predict: {question: "Which?", choices: ["this", "this"]}}), /2 to 5 different texts/],
    ["with six choices", withStop({predict: {question: "Which?", choices: ["a", "b", "c", "d", "e", "f"]}}), /2 to 5 different texts/],
    ["with a field of the design that there is not", withStop({try: [{say: "x", set: {"bay.spanM": 50}}]}), /^bay.spanM: 50 is not possible \(the path of a field of a design\)/],
    ["with a value that the design does not take", withStop({try: [{say: "x", set: {"bay.spanFt": 500}}]}), /500 ft is not possible \(10 to 150 ft\)/],
    ["with a trial that changes nothing", withStop({try: [{say: "x", set: {}}]}), /^set: \{\} is not possible/],
    ["with a misspelled field of a stop", withStop({hint: "x"}), /^parts\.0\.stops\.0\.hint: "x" is not possible/],
  ])("%s is refused with its place", (_, content, message) => {
    expect(() => (typeof content === "string" ? readLesson(content, "x") : lessonFrom(content, "x"))).toThrow(message);
  });

  test("is named where it is one of several", () => {
    const folder = mkdtempSync(join(tmpdir(), "paths-"));
    writeFileSync(join(folder, "good.json"), JSON.stringify(PATH));
    expect(readLessons(folder)).toHaveLength(1);
    writeFileSync(join(folder, "late.json"), JSON.stringify({...PATH, version: 7}));
    expect(() => readLessons(folder)).toThrow(/^data\/lessons\/late\.json, version of the path: 7/);
  });
});

test("time reads as a class has it", () => {
  expect([1, 50, 89, 90, 120, 250].map(timeText)).toEqual(["1 minute", "50 minutes", "89 minutes", "1 h 30 min", "2 h", "4 h 10 min"]);
});
