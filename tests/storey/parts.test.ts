import {describe, expect, it} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {storeyParts} from "../../lib/storey/parts.js";
import {catalogue, seeds} from "../support/designs.js";

const ceilings = ["flush", "below", "head", "none"] as const;

describe.each(seeds)("the storey of $id", ({design}) => {
  it.each(ceilings)("adds up to the floor-to-floor height with a ceiling that is %s", (ceiling) => {
    const varied = withValues(design, {"storey.ceiling": ceiling});
    const {storey} = evaluate(varied, catalogue);
    const sum = storeyParts(varied, storey).reduce((total, part) => total + part.heightIn, 0);
    expect(sum).toBeCloseTo(storey.floorToFloorIn, 9);
  });
});
