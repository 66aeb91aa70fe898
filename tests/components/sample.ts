import type {Design} from "../../lib/design/design.js";
import {validateDesign} from "../../lib/design/validate.js";
import {readSeeds} from "../../src/headless/readSeeds.js";

/** A design for tests that are about the handling of designs, not about floors; what they look at is fixed here. */
export function sampleDesign(): Design {
  const design = readSeeds()[0]?.design;
  if (!design) throw new Error("there is no starter design");
  return validateDesign({
    ...design,
    name: "Branch library, Alder Street",
    bay: {...design.bay, spanFt: 52, beamSpanFt: 30},
    deck: {...design.deck, toppingIn: 2},
  });
}
