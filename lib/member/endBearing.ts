import {concreteBearingKip} from "../materials/bearing.js";
import type {Member} from "./member.js";

/** Width of a member's end that bears on its seat, in: stems at the soffit, or the whole of a slab. */
export function bearingWidthIn({shape}: Pick<Member, "shape">): number {
  return shape.family === "double tee" ? shape.webCentersIn.length * (shape.dimensions["stemBottomIn"] as number) : shape.widthIn;
}

/**
 * Factored reaction that the concrete of one end can take, kip: phi 0.85 f'c A1, without help from concrete around it
 * (ACI 318-19 22.8.3.2).
 *
 * @param seatIn - length of bearing along the span, in
 */
export function bearingStrengthKip(member: Member, seatIn: number): number {
  return concreteBearingKip(member.concrete.strengthPsi, bearingWidthIn(member) * seatIn);
}
