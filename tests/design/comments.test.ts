import {describe, expect, test} from "vitest";
import {commentsOn, commentsSentence} from "../../lib/design/comments.js";
import type {Comment, Design} from "../../lib/design/design.js";
import {differingInputs} from "../../lib/compare/inputs.js";
import {withValues} from "../../lib/design/edit.js";
import {parseDesign, validateDesign} from "../../lib/design/validate.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {compared} from "../../lib/record/compared.js";
import {designRecord} from "../../lib/record/record.js";
import {catalog, seed, seeds} from "../support/designs.js";

const said = (words: string, on: Comment["on"] = "deck", by = "Ms. Oduya"): Comment => ({words, on, by});
const withComments = (...comments: Comment[]): Design => validateDesign({...seed("branch-library"), comments});

describe("comments in a design's file", () => {
  test("are none in an older file, whose results are as they were", () => {
    for (const {design} of seeds) {
      const {comments: _, ...older} = design;
      expect(validateDesign({...older, version: 8})).toEqual({...design, comments: []});
    }
  });

  test("change nothing that is computed, and are no input that differs", () => {
    const [plain, commented] = [seed("branch-library"), withComments(said("Why not a shallower tee?"))];
    expect(differingInputs([plain, commented])).toEqual([]);
    expect(evaluate(commented, catalog).checks).toEqual(evaluate(plain, catalog).checks);
  });

  test("come back from the file as they were written", () => {
    const design = withComments(said("Why not a shallower tee?"), said("Well argued.\nOne line more.", "whole"));
    expect(parseDesign(JSON.stringify(design)).comments).toEqual(design.comments);
  });

  test("are found by what they are about; blank ones are none", () => {
    const design = withComments(said("One."), said("  "), said("Two.", "whole"), said("Three."));
    expect(commentsOn(design, "deck").map(({words}) => words)).toEqual(["One.", "Three."]);
    expect(commentsOn(design, "whole").map(({words}) => words)).toEqual(["Two."]);
    expect(commentsOn(design, "story")).toEqual([]);
  });

  test("are told to whoever opens the file, with who wrote them", () => {
    expect(commentsSentence(withComments())).toBe("");
    expect(commentsSentence(withComments(said(" ")))).toBe("");
    expect(commentsSentence(withComments(said("One.")))).toBe("A comment by Ms. Oduya is in it: see the page \u201cWhy this floor?\u201d.");
    expect(commentsSentence(withComments(said("One.", "deck", " "), said("Two.", "deck", "")))).toMatch(/^2 comments are in it/);
    expect(commentsSentence(withComments(said("One."), said("Two."), said("Three.", "roof", "Mr. Bell")))).toMatch(/^3 comments by Ms\. Oduya and Mr\. Bell are/);
  });
});

test("the record has each comment once, on its decision, or on the whole where it has no such decision", () => {
  // With a roof that is two loads its record has no section on the roof.
  const comments = [said("Deck.", "deck"), said("Roof.", "roof"), said("Whole.", "whole"), said(" ", "story")];
  const design = withValues(seed("branch-library"), {comments, "roof.given": "loads"});
  const evaluation = evaluate(design, catalog);
  const record = designRecord(evaluation, compared(design, catalog), "", columnsOf(evaluation, catalog));
  expect(record.sections.some(({id}) => id === "roof")).toBe(false);
  expect(record.comments.deck).toEqual([said("Deck.", "deck")]);
  expect(record.comments.whole.map(({words}) => words)).toEqual(["Roof.", "Whole."]);
  expect(Object.values(record.comments).flat()).toHaveLength(3);
});
