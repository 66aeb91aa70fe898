import {requireNumber} from "../check.js";
import {atLeast, atMost, type Check} from "../checks.js";
import {concreteBearingKip} from "../materials/bearing.js";

/** Minimum set-back of a bearing from an edge without armor, in (ACI 318-19 16.2.6.2(b)). */
export const LEAST_SET_BACK_IN = 0.5;
/** Pads are cut in steps of this, in (common practice). */
const PAD_STEP_IN = 0.5;
/** Shortest pad under a stem, in (common practice: pads of 4 by 4 to 6 by 6 in). */
const LEAST_PAD_IN = 4;

/** A pad between a stem and a ledge. */
export interface Pad {
  /** Across the stem, which is along the beam, in. */
  readonly widthIn: number;
  /** Along the stem, in. */
  readonly lengthIn: number;
  readonly thicknessIn: number;
}

/**
 * Concrete around a loaded area: from each of its sides to the support's edge, in, and how deep the support is, in. Sides
 * that meet no edge may have any large number.
 */
export interface Surround {
  readonly alongBeamIn: number;
  readonly acrossBeamIn: number;
  readonly depthIn: number;
}

/**
 * The larger area of the support (A2), in2: of the loaded area's own proportions and center, as far as the nearest edge
 * and as a slope of 1 down to 2 out within the support's depth allow (ACI 318-19 22.8.3.2).
 */
export function supportAreaIn2(pad: Pick<Pad, "widthIn" | "lengthIn">, around: Surround): number {
  const side = (name: keyof Surround, label: string) => requireNumber(around[name], {path: name, label, unit: "in", min: 0, max: 1e4});
  const alongIn = Math.min(side("alongBeamIn", "bearing to the support's edge along the beam"), 2 * side("depthIn", "depth of the support"));
  const acrossIn = Math.min(side("acrossBeamIn", "bearing to the support's edge across the beam"), 2 * around.depthIn);
  const scale = Math.min(1 + (2 * alongIn) / pad.widthIn, 1 + (2 * acrossIn) / pad.lengthIn);
  return pad.widthIn * pad.lengthIn * scale ** 2;
}

/** Shape factor of a plain pad: loaded area over the area that is free to bulge, w l / (2 t (w + l)). */
export function padShapeFactor(pad: Pad): number {
  const {widthIn, lengthIn, thicknessIn} = checkedPad(pad);
  return (widthIn * lengthIn) / (2 * thicknessIn * (widthIn + lengthIn));
}

/**
 * Service stress that a pad with random fibers may carry, psi: 1,000 + 100 times its shape factor, 1,500 at most (PCI
 * Design Handbook, 7th ed., ch. 6; from memory).
 */
export function padStressPsi(pad: Pad): number {
  return shapedStressPsi(padShapeFactor(pad));
}

/** The same by the shape factor itself. */
export function shapedStressPsi(shapeFactor: number): number {
  return Math.min(1500, 1000 + 100 * shapeFactor);
}

/** What a pad has to carry, and the room that it has. */
export interface PadInput {
  /** Load of one stem in service, unfactored, kip. */
  readonly serviceKip: number;
  readonly stemWidthIn: number;
  readonly thicknessIn: number;
  /** Room for the pad along the stem, in. */
  readonly roomIn: number;
}

/**
 * The pad for a stem: as wide as the stem, and as short as {@link padStressPsi} allows, in steps of 1/2 in from 4 in on.
 * Where the room does not suffice it fills the room, and {@link padChecks} fails.
 */
export function padFor(input: PadInput): Pad {
  const {serviceKip, stemWidthIn, thicknessIn, roomIn} = input;
  requireNumber(serviceKip, {path: "serviceKip", label: "service load of a stem", unit: "kip", min: 0, max: 500});
  requireNumber(stemWidthIn, {path: "stemWidthIn", label: "stem width", unit: "in", min: 2, max: 24});
  requireNumber(roomIn, {path: "roomIn", label: "room for the pad", unit: "in", min: 1, max: 48});
  const widthIn = Math.ceil(stemWidthIn / PAD_STEP_IN - 1e-9) * PAD_STEP_IN;
  for (let lengthIn = LEAST_PAD_IN; lengthIn <= roomIn; lengthIn += PAD_STEP_IN) {
    const loaded = {widthIn: stemWidthIn, lengthIn, thicknessIn};
    // Stryker disable next-line EqualityOperator: no pad meets its stress to the last digit
    if ((1000 * serviceKip) / (stemWidthIn * lengthIn) <= padStressPsi(loaded)) return {...loaded, widthIn};
  }
  return checkedPad({widthIn, lengthIn: roomIn, thicknessIn});
}

/** The checks of a stem on its pad and of the pad on the ledge. */
export function padChecks(input: {
  readonly pad: Pad; readonly stemWidthIn: number; readonly serviceKip: number; readonly factoredKip: number;
  readonly strengthPsi: number; readonly around: Surround;
  /** What mends a pad that is too small for its stress, and concrete that would crush. */
  readonly mends: {readonly stress: string; readonly bearing: string};
}): Check[] {
  const {pad, stemWidthIn} = input;
  const loaded = {widthIn: Math.min(checkedPad(pad).widthIn, stemWidthIn), lengthIn: pad.lengthIn};
  const loadedIn2 = loaded.widthIn * loaded.lengthIn;
  return [
    atLeast({
      id: "pad width", label: "Pad, across the stem", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The pad is as wide as the stem.",
      fails: "The stem is wider than its pad: its corners would bear on concrete and spall: a wider pad.",
    }, pad.widthIn, stemWidthIn),
    atMost({
      id: "pad stress", label: "Pad under service load", unit: "psi", clause: "PCI Design Handbook, 7th ed., ch. 6 (from memory)",
      holds: "The pad carries the stem.",
      fails: `The pad is too small for the stem's load: ${input.mends.stress}.`,
    }, (1000 * input.serviceKip) / loadedIn2, padStressPsi({...loaded, thicknessIn: pad.thicknessIn})),
    atMost({
      id: "ledge bearing", label: "Stem bearing on the beam", unit: "kip", clause: "ACI 318-19 22.8.3.2",
      holds: "The beam's concrete carries the stem.",
      fails: `The beam's concrete would crush under the stem: ${input.mends.bearing}, or stronger concrete.`,
    }, input.factoredKip, concreteBearingKip(input.strengthPsi, loadedIn2, supportAreaIn2(loaded, input.around))),
  ];
}

function checkedPad(pad: Pad): Pad {
  const at = (name: keyof Pad, label: string, min: number, max: number) =>
    requireNumber(pad[name], {path: `pad.${name}`, label, unit: "in", min, max});
  at("widthIn", "width of the pad", 1, 48);
  at("lengthIn", "length of the pad", 1, 48);
  at("thicknessIn", "thickness of the pad", 0.125, 2);
  return pad;
}
