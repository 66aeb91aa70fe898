import {readJson} from "../check.js";
import type {Design} from "../design/design.js";
import {isPlain} from "../design/plain.js";
import {validateDesign} from "../design/validate.js";
import {InputError, under} from "../errors.js";
import {PlainReader} from "../report/plainReader.js";
import {PIN_LETTERS} from "./pinLetters.js";

/** Marks a comparison's file. */
export const COMPARISON_FORMAT = "plank-and-tee-comparison";
/** The version of the file that is written and read. */
const COMPARISON_VERSION = 1;
/** Most designs of one comparison. */
const MOST_DESIGNS = 100;

/** A design that is compared, with what the reader says of it. */
export interface ComparedInFile {
  readonly name: string;
  readonly note: string;
  /** Where it came from, in words. */
  readonly from: string;
  readonly design: Design;
}

/** What a comparison's file holds: the design that was open, and those that were pinned beside it, in their order. */
export interface ComparisonFile {
  readonly open: Design;
  readonly pins: readonly ComparedInFile[];
}

/** Whether a file's text is a comparison's, and no design's: what marks it is there, whatever else may be wrong. */
export function isComparison(fileText: string): boolean {
  try {
    const content = readJson(fileText, "file");
    return isPlain(content) && content["format"] === COMPARISON_FORMAT;
  } catch (problem) {
    // Stryker disable next-line ConditionalExpression: nothing else can go wrong with a text
    if (problem instanceof InputError) return false;
    throw problem;
  }
}

/** The text of a comparison's file. */
export function comparisonText({open, pins}: ComparisonFile): string {
  const content = {format: COMPARISON_FORMAT, version: COMPARISON_VERSION, open, pins: pins.map(({name, note, from, design}) => ({name, note, from, design}))};
  return `${JSON.stringify(content, null, 2)}\n`;
}

/**
 * Reads a comparison's file; its designs are checked field by field as those of design files are, older ones brought up.
 *
 * @throws InputError naming the design and its first field that is wrong, its value and what is allowed
 */
export function readComparison(fileText: string): ComparisonFile {
  const file = new PlainReader(readJson(fileText, "comparison file"), "", "comparison file");
  file.choice("format", "format", [COMPARISON_FORMAT]);
  file.same("version", "version of the comparison file", COMPARISON_VERSION, "This kit reads that version alone");
  const {open, pins} = file.rest(["open", "pins"]);
  file.finish();
  if (!Array.isArray(pins) || pins.length > MOST_DESIGNS) {
    throw new InputError({path: "pins", label: "pinned designs", value: Array.isArray(pins) ? pins.length : pins, allowed: `a list of up to ${MOST_DESIGNS} designs`});
  }
  return {open: designAt("open", "the open design", open), pins: pins.map((pin: unknown, i) => readPin(pin, i))};
}

function readPin(content: unknown, index: number): ComparedInFile {
  const path = `pins.${index}`;
  const reader = new PlainReader(content, path, `pinned design ${index + 1}`);
  const words = (key: keyof typeof PIN_LETTERS, otherwise?: string) => {
    const text = reader.text(key, otherwise);
    if (text.length <= PIN_LETTERS[key]) return text;
    throw new InputError({path: reader.at(key), label: `pinned design ${index + 1}, ${key}`, value: text, allowed: `text of at most ${PIN_LETTERS[key]} characters`});
  };
  const [name, note, from] = [words("name"), words("note", ""), words("from", "")];
  const {design} = reader.rest(["design"]);
  reader.finish();
  return {name, note, from, design: designAt(`${path}.design`, `pinned design ${index + 1}, \u201c${name}\u201d`, design)};
}

/** A design of the file, its errors named by whose they are and where they stand. */
function designAt(path: string, whose: string, content: unknown): Design {
  return under(path, () => {
    try {
      return validateDesign(content);
    } catch (problem) {
      throw problem instanceof InputError ? problem.of(whose) : problem;
    }
  });
}
