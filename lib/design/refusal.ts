import {InputError} from "../errors.js";
import type {Design} from "./design.js";
import {fieldAt, fieldOf, type NumberPath} from "./fields.js";
import {valueAt} from "./plain.js";

/** A part of the pipeline that works with what it makes of the design's fields. */
export type Part = "loads" | "deck" | "topping" | "edge beam" | "girder" | "roof" | "diaphragm" | "story" | "services" | "daylight";

/** The field behind what a part works with, and whether more or less of it would do. */
type Behind = readonly [path: NumberPath, wanted: "more" | "less"];

/**
 * The field that a reader can change, by what a part of the pipeline cannot work with; the first that fits. What stands
 * last answers for all else: every part follows the span of the deck or its beam.
 */
const FIELDS_BEHIND: Readonly<Record<Part, readonly (readonly [what: RegExp, ...Behind])[]>> = {
  "loads": [[/./, "bay.spanFt", "less"]],
  "deck": [[/layers/, "deck.strandHeightCenterIn", "less"], [/./, "bay.spanFt", "less"]],
  "topping": [[/./, "bay.spanFt", "less"]],
  "edge beam": [
    [/effectiveDepthIn|coverIn|hangerInsetIn|barDiameterIn|layers/, "edgeBeam.coverIn", "less"],
    [/jointGapIn/, "edgeBeam.jointGapIn", "less"],
    [/depthIn/i, "edgeBeam.ledgeDepthIn", "more"],
    [/./, "bay.beamSpanFt", "less"],
  ],
  "girder": [
    [/strands|effectiveDepthIn|coverIn|layers/, "girder.strands", "less"],
    [/depthIn/i, "girder.ledgeDepthIn", "more"],
    [/./, "bay.beamSpanFt", "less"],
  ],
  "roof": [[/./, "bay.spanFt", "less"]],
  "diaphragm": [[/./, "bay.baysAlong", "less"]],
  "story": [[/./, "story.floorToFloorFt", "more"]],
  "services": [[/./, "services.servedFt2", "less"]],
  "daylight": [[/awayIn/, "bay.spanFt", "less"], [/./, "story.floorToFloorFt", "more"]],
};

/**
 * Runs a part of the pipeline, so that what it refuses is reported at a field of the design: one that names none is reported as
 * what follows from the field behind it.
 */
export function inPart<T>(design: Design, part: Part, work: () => T): T {
  try {
    return work();
  } catch (problem) {
    throw problem instanceof InputError && !isOfDesign(problem.path) ? ofField(design, part, problem) : problem;
  }
}

/** Whether a path is that of a field, or of a dimension of the deck member, which the page shows by its name. */
export function isOfDesign(path: string): boolean {
  return fieldAt(path) !== undefined || path.startsWith("deck.dimensions.");
}

function ofField(design: Design, part: Part, problem: InputError): InputError {
  const found = FIELDS_BEHIND[part].find(([what]) => what.test(problem.path));
  const [, path, wanted] = found as NonNullable<typeof found>;
  const {label, unit} = fieldOf(path);
  return problem.behind({path, label, value: valueAt(design, path), unit}, wanted);
}
