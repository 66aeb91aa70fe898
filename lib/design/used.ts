import type {Design} from "./design.js";
import type {FieldPath, GroupName} from "./fields.js";

/**
 * Fields that a design uses only sometimes, by their path or the path of their group, each with when it does. Their
 * values are kept meanwhile, for the day when the design has that part again.
 */
const USED_WHILE: Readonly<Partial<Record<FieldPath | GroupName, (design: Design) => boolean>>> = {
  "girder": hasGirder,
  "girder.ledgeProjectionIn": ({girder}) => girder.kind === "inverted tee",
  "girder.ledgeDepthIn": ({girder}) => girder.kind === "inverted tee",
  "girder.depthIn": ({girder}) => girder.kind === "rectangle",
  "edgeBeam.ledgeProjectionIn": ({edgeBeam}) => edgeBeam.kind !== "below",
  "edgeBeam.ledgeDepthIn": ({edgeBeam}) => edgeBeam.kind !== "below",
  "edgeBeam.strands": ({edgeBeam}) => edgeBeam.steel === "strands",
  "deck.toppingStrengthPsi": hasTopping,
  "topping.followShare": hasTopping,
  "story.ceilingDropIn": ({story}) => story.ceiling === "below",
  "services.servedFt2": hasDucts,
  "services.mainWidthIn": hasDucts,
  "services.mainDepthIn": hasDucts,
  "services.branchWidthIn": hasDucts,
  "services.branchDepthIn": hasDucts,
};

/** Whether the floor has a girder: two bays across or more meet over one. */
export function hasGirder({bay}: Design): boolean {
  return bay.baysAcross > 1;
}

/** Whether a topping is cast on the deck. */
export function hasTopping({deck}: Design): boolean {
  return deck.toppingIn > 0;
}

/** Whether air comes through ducts. */
export function hasDucts({services}: Design): boolean {
  return services.airCfmPerFt2 > 0;
}

/** Whether a design uses the field at a path; a group that it has not, such as the girder of one bay, has none that it uses. */
export function fieldUsed(design: Design, path: string): boolean {
  const [group = path] = path.split(".");
  return [group, path].every((of) => USED_WHILE[of as FieldPath]?.(design) ?? true);
}
