import {group, number, since} from "../entries.js";

/** The sizes of ducts, pipes and lights, and the air that they bring. */
export const servicesFields = group("Services", {
  airCfmPerFt2: since(3, 1, number("air flow", "cfm/ft2", 0, 4, 0.1, "Supply air per square foot of floor: about 1 in offices and libraries.")),
  /** Floor whose air comes through the main duct, ft2. */
  servedFt2: since(4, bayFt2, number("floor that the main serves", "ft2", 50, 200_000, 100, "Floor area whose air comes through the main duct: all of it, a wing, or one main's share. It stays as it is when columns move.")),
  mainWidthIn: since(3, 30, number("main duct width", "in", 6, 96, 2, "Outside width of the main duct, insulation included.")),
  mainDepthIn: since(3, 14, number("main duct depth", "in", 4, 48, 1, "Outside depth of the main duct, insulation included.")),
  branchWidthIn: since(3, 14, number("branch duct width", "in", 4, 72, 2, "Outside width of a branch between the stems.")),
  branchDepthIn: since(3, 10, number("branch duct depth", "in", 4, 36, 1, "Outside depth of a branch between the stems.")),
  sprinklerIn: since(3, 4, number("sprinkler zone", "in", 0, 12, 1, "Height kept for sprinkler pipes under ducts or stems.")),
  lightIn: since(3, 4, number("light fittings", "in", 0, 12, 1, "Height of the lights above the ceiling.")),
});

/** Floor of one bay, whose air alone the main duct carried before it had a floor of its own, ft2; of a bay that is none validation names the bay, which comes first. */
function bayFt2(content: Readonly<Record<string, unknown>>): number {
  const {spanFt, beamSpanFt} = (content["bay"] ?? {}) as Readonly<Record<string, unknown>>;
  return Number(spanFt) * Number(beamSpanFt);
}
