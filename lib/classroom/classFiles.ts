import {isComparison} from "../compare/comparisonFile.js";
import type {Design} from "../design/design.js";
import {sameDesign} from "../design/same.js";
import {parseDesign} from "../design/validate.js";
import {InputError} from "../errors.js";

/** Most design files of one class. */
export const MOST_FILES = 200;
/** Most letters of one file: a design has a tenth of it, however long its reasons. */
export const MOST_LETTERS = 500_000;

/** A file as it was handed in. */
export interface ClassFile {
  readonly fileName: string;
  readonly text: string;
}

/** One design of a class. */
export interface ClassDesign {
  /** No two designs of a class have one name: where files are named alike, a number is added. */
  readonly fileName: string;
  readonly design: Design;
}

/** A file that is no design of the class, and why. */
export interface NotTaken {
  readonly fileName: string;
  readonly problem: string;
}

/** What a drop of files came to. */
export interface ClassRead {
  readonly designs: readonly ClassDesign[];
  readonly refused: readonly NotTaken[];
}

/**
 * Reads files of a class, those after what is there already. Each file stands for itself: one that is broken, no design,
 * of a newer version or there already is named with its reason, and stops none of the others.
 *
 * @param have - the designs that the class has; a file that is there already, comments aside, is not taken twice
 */
export function readClassFiles(have: readonly ClassDesign[], files: readonly ClassFile[]): ClassRead {
  const designs: ClassDesign[] = [];
  const refused: NotTaken[] = [];
  for (const {fileName, text} of files) {
    const all = [...have, ...designs];
    const found = readFile(text, all.length);
    if ("problem" in found) refused.push({fileName, problem: found.problem});
    else if (all.some((one) => ownName(one.fileName) === ownName(fileName) && sameDesign(uncommented(one.design), uncommented(found.design)))) refused.push({fileName, problem: "It is in the list already."});
    else designs.push({fileName: freeName(fileName, all), design: found.design});
  }
  return {designs, refused};
}

function readFile(text: string, taken: number): {readonly design: Design} | {readonly problem: string} {
  if (taken >= MOST_FILES) return {problem: `A class has at most ${MOST_FILES} designs; this one was left out.`};
  if (text.length > MOST_LETTERS) return {problem: `It is far too long for a design: ${text.length.toLocaleString("en-US")} characters (${MOST_LETTERS.toLocaleString("en-US")} at most).`};
  try {
    if (isComparison(text)) return {problem: "It is a saved comparison; the page that compares designs opens it."};
    return {design: parseDesign(text)};
  } catch (problem) {
    if (problem instanceof InputError) return {problem: problem.message};
    // What nests deeper than the reader of JSON can follow is no design either.
    if (problem instanceof RangeError) return {problem: "It cannot be read: its parts lie too deep in each other."};
    throw problem;
  }
}

/** Comments that were made since are no other design. */
const bare = new WeakMap<Design, Design>();
function uncommented(design: Design): Design {
  if (design.comments.length === 0) return design;
  const known = bare.get(design) ?? {...design, comments: []};
  bare.set(design, known);
  return known;
}

/** A file's name without the number that tells it from another. */
function ownName(fileName: string): string {
  return fileName.replace(/ \(\d+\)(?=(\.[^.]*)?$)/, "");
}

function freeName(fileName: string, all: readonly ClassDesign[]): string {
  const taken = new Set(all.map((one) => one.fileName));
  if (!taken.has(fileName)) return fileName;
  const [stem, ending] = /^(.*?)(\.[^.]*)?$/s.exec(fileName)?.slice(1) ?? [fileName];
  for (let i = 2; ; i++) {
    const tried = `${stem} (${i})${ending ?? ""}`;
    if (!taken.has(tried)) return tried;
  }
}
