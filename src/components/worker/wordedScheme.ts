import type {Catalog} from "../../lib/catalog.js";
import type {PlainScheme} from "../../lib/schemes/rows.js";
import {designWithReasons} from "../../lib/schemes/ruleWords.js";
import {schemesFor, type SchemeAsked} from "./keptSchemes.js";

/** The design of one scheme with its rules' words as reasons, to be opened. */
export function* wordedScheme(catalog: Catalog, input: SchemeAsked): Generator<never, PlainScheme> {
  const {index} = input;
  const scheme = schemesFor(catalog, input).at(index);
  return "none" in scheme ? {index, none: scheme.none} : {index, design: designWithReasons(scheme)};
}
