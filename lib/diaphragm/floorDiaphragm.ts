import {outOfRange, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {diaphragm, type DiaphragmInput, type DiaphragmResult} from "./diaphragm.js";

/** The floor of a design as a diaphragm. */
export interface FloorDiaphragm {
  /** Length between the end walls and depth in the direction of the load, ft. */
  readonly lengthFt: number;
  readonly depthFt: number;
  readonly kind: "topped" | "pretopped" | "grouted planks";
  /** Mesh in the topping, in2 per foot; undefined without one. */
  readonly meshIn2PerFt: number | undefined;
  /** Undefined where the floor is longer than the method covers. */
  readonly result: DiaphragmResult | undefined;
  readonly checks: readonly Check[];
}

/** Mesh that a topping is taken to have, in2 per foot each way: W4 wires 6 in apart (common practice). */
export const USUAL_MESH_IN2_PER_FT = 0.08;
/** Spacing of flange connectors of pretopped tees, ft (common practice). */
export const CONNECTOR_SPACING_FT = 5;
/** Longest floor, and thinnest topping, that the method covers, ft and in. */
const MOST_LENGTH_FT = 1000;
const LEAST_TOPPING_IN = 1;

/** Mesh that a topping of a thickness is taken to have, in2 per foot each way; undefined where it is too thin for any. */
export function meshIn2PerFtOf(toppingIn: number): number | undefined {
  return toppingIn >= LEAST_TOPPING_IN ? USUAL_MESH_IN2_PER_FT : undefined;
}

/** First check of a design's floor as a beam that lies flat between walls at its two ends; the walls are not designed. */
export function floorDiaphragm({bay, deck, diaphragm: {lateralPlf}}: Design, member: Member): FloorDiaphragm {
  const lengthFt = bay.baysAlong * bay.beamSpanFt;
  const depthFt = bay.baysAcross * bay.spanFt;
  const topped = deck.toppingIn >= LEAST_TOPPING_IN;
  const kind = topped ? "topped" : member.shape.family === "double tee" ? "pretopped" : "grouted planks";
  const common = {lengthFt, depthFt, kind, meshIn2PerFt: meshIn2PerFtOf(deck.toppingIn)} as const;
  if (lengthFt > MOST_LENGTH_FT || depthFt > MOST_LENGTH_FT) {
    return {...common, result: undefined, checks: [outOfRange({
      id: "diaphragm proportions", label: "Length of the floor", unit: "ft", clause: "common practice",
      message: "A floor this long is divided by expansion joints into several, each with its own walls.",
    }, Math.max(lengthFt, depthFt), MOST_LENGTH_FT)]};
  }
  const input: DiaphragmInput = {
    kind: topped ? "topped" : "pretopped", wallSpanFt: lengthFt, depthFt, lateralPlf,
    ...(topped
      ? {toppingIn: deck.toppingIn, toppingStrengthPsi: deck.toppingStrengthPsi, meshIn2PerFt: USUAL_MESH_IN2_PER_FT}
      : {connectorSpacingFt: CONNECTOR_SPACING_FT}),
  };
  const result = diaphragm(input);
  return {...common, result, checks: kind === "grouted planks" ? result.checks.map(grouted) : result.checks};
}

/** Planks without topping have no connectors: their grouted joints pass the shear. */
function grouted(check: Check): Check {
  if (check.id !== "diaphragm shear") return check;
  return {...check, clause: "ACI 318-19 12.5.3", message: "Shear passes from plank to plank through grouted keys, which this first look does not check; many codes require a topping or ties."};
}
