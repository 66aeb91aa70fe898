import {describe, expect, test} from "vitest";
import {withValue, withValues} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import {inPart, isOfDesign} from "../../lib/design/refusal.js";
import {InputError} from "../../lib/errors.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");

describe("a refused design names the field that the reader can change,", () => {
  test("where a thin slab on a thin ledge without upstand leaves no beam", () => {
    const slab = {"deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "edgeBeam.ledgeDepthIn": 4, "edgeBeam.upstandIn": 0};
    refused(() => evaluate(withValues(LIBRARY, slab), catalog), {
      path: "edgeBeam.ledgeDepthIn", value: 4, message: "ledge depth: 4 in is not possible (more: it makes the depth 8 in, where 10 to 144 in are possible)",
    });
    expect(() => evaluate(withValues(LIBRARY, {...slab, "edgeBeam.ledgeDepthIn": 6}), catalog)).not.toThrow();
  });

  test("where the cover leaves the bars too high in the beam", () => {
    const shallow = {"deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "edgeBeam.ledgeDepthIn": 4, "edgeBeam.upstandIn": 2, "edgeBeam.coverIn": 4};
    refused(() => evaluate(withValues(LIBRARY, shallow), catalog), {path: "edgeBeam.coverIn", value: 4, message: /^clear cover: 4 in is not possible \(less: it makes the effective depth 4\.\d+ in, where 5 to 10 in are possible\)$/});
    expect(() => evaluate(withValues(LIBRARY, {...shallow, "edgeBeam.coverIn": 3}), catalog)).not.toThrow();
  });

  test("and of two heights of the strands the one that was given", () => {
    refused(() => evaluate(withValue(LIBRARY, "deck.strandHeightCenterIn", 53), catalog), {path: "deck.strandHeightCenterIn", value: 53, message: /^strand height at midspan: 53 in/});
    refused(() => evaluate(withValue(LIBRARY, "deck.strandHeightEndIn", 53), catalog), {path: "deck.strandHeightEndIn", value: 53, message: /^strand height at the ends: 53 in/});
  });
});

describe("inPart", () => {
  const about = (path: string) => () => inPart(LIBRARY, "edge beam", () => {
    throw new InputError({path, label: "load of the deck", value: 107150.7720992558, unit: "plf", allowed: "0 to 100000 plf"});
  });

  test("tells what follows from a field as a refusal of that field", () => {
    refused(about("deckPlf"), {path: "bay.beamSpanFt", value: 30, message: "beam span: 30 ft is not possible (less: it makes the load of the deck 107200 plf, where 0 to 100000 plf are possible)"});
  });

  test.each([
    ["loads", "influenceFt2", "bay.spanFt", "less"], ["deck", "layers", "deck.strandHeightCenterIn", "less"], ["deck", "fiberKsi", "bay.spanFt", "less"],
    ["topping", "thicknessIn", "bay.spanFt", "less"],
    ["edge beam", "effectiveDepthIn", "edgeBeam.coverIn", "less"], ["edge beam", "hangerInsetIn", "edgeBeam.coverIn", "less"], ["edge beam", "jointGapIn", "edgeBeam.jointGapIn", "less"],
    ["edge beam", "depthIn", "edgeBeam.ledgeDepthIn", "more"], ["edge beam", "ledgeDepthIn", "edgeBeam.ledgeDepthIn", "more"], ["edge beam", "deckPlf", "bay.beamSpanFt", "less"],
    ["girder", "strands.count", "girder.strands", "less"], ["girder", "layers", "girder.strands", "less"], ["girder", "depthIn", "girder.ledgeDepthIn", "more"], ["girder", "deckPlf", "bay.beamSpanFt", "less"],
    ["girder", "effectiveDepthIn", "girder.strands", "less"],
    ["roof", "thicknessIn", "bay.spanFt", "less"], ["daylight", "beams.0.awayIn", "bay.spanFt", "less"],
    ["diaphragm", "lengthFt", "bay.baysAlong", "less"], ["story", "plenumIn", "story.floorToFloorFt", "more"], ["services", "flowCfm", "services.servedFt2", "less"], ["daylight", "ceilingIn", "story.floorToFloorFt", "more"],
  ] as const)("tells of the %s, by its %s, that %s should be %s", (part, what, path, wanted) => {
    const work = () => inPart(LIBRARY, part, () => {
      throw new InputError({path: what, label: "size", value: 1, unit: "in", allowed: "2 to 3 in"});
    });
    refused(work, {path, value: valueAt(LIBRARY, path), allowed: `${wanted}: it makes the size 1 in, where 2 to 3 in are possible`});
  });

  test("returns what the part works out", () => {
    expect(inPart(LIBRARY, "deck", () => 7)).toBe(7);
    expect(isOfDesign("bay.spanFt")).toBe(true);
    expect(isOfDesign("deck.dimensions.depthIn")).toBe(true);
    expect(isOfDesign("effectiveDepthIn")).toBe(false);
  });

  test("leaves a refusal that names a field of the design, and any other error, as it is", () => {
    refused(about("bay.spanFt"), {path: "bay.spanFt", value: 107150.7720992558});
    refused(about("deck.dimensions.depthIn"), {path: "deck.dimensions.depthIn"});
    const fault = new TypeError("fault");
    expect(() => inPart(LIBRARY, "deck", () => {
      throw fault;
    })).toThrow(fault);
  });
});
