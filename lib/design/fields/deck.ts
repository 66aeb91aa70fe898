import type {Aggregate, ConcreteKind} from "../../materials/concrete.js";
import {choice, group, lengths, number, optional, since, text} from "../entries.js";

/** The member that spans, its strands and its topping. */
export const deckFields = group("Deck", {
  member: text("deck member", 20, "Designation of the member: width in feet, family, depth in inches, such as 10DT24 or 4HC8."),
  /** Changed dimensions of the member's cross-section by name, in. */
  dimensions: optional(lengths("changed dimensions", 0, 240)),
  pattern: text("strand pattern", 12, "Strands, diameter in sixteenths of an inch, S straight or D depressed and the number of depression points: 108-S, 128-D1."),
  strandHeightEndIn: optional(number("strand height at the ends", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at the ends of the member.")),
  strandHeightCenterIn: optional(number("strand height at midspan", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at midspan.")),
  concrete: choice("concrete", {"normalweight": "normalweight", "sand-lightweight": "sand-lightweight"} satisfies Record<ConcreteKind, string>, "Normalweight weighs 150 lb per cubic foot, sand-lightweight 115 lb per cubic foot."),
  aggregate: since(2, "siliceous", choice("aggregate", {"siliceous": "siliceous", "carbonate": "carbonate"} satisfies Record<Aggregate, string>, "Aggregate in normalweight concrete: siliceous (quartz, granite) holds back less heat in a fire than carbonate (limestone).")),
  strengthPsi: number("concrete strength", "psi", 3000, 12000, 500, "Specified compressive strength of the member at 28 days."),
  releaseStrengthPsi: number("release strength", "psi", 2500, 10000, 100, "Compressive strength of the member when the strands are released."),
  toppingIn: number("topping thickness", "in", 0, 6, 0.25, "Minimum thickness of the concrete cast on the deck in place; 0 means none."),
  toppingStrengthPsi: number("topping strength", "psi", 2500, 8000, 500, "Specified compressive strength of the topping at 28 days."),
});
