import {requireNumber} from "../check.js";
import {atMost, type Check} from "../checks.js";

/** The end of a beam that its ledge tries to roll over. */
export interface EndRotationInput {
  /** Factored torsion about the web's center line at the end, kip-in, positive where the ledge is pressed down. */
  readonly torsionKipIn: number;
  /** Factored reaction of the beam at that end, kip, 0 or more. */
  readonly reactionKip: number;
  /** From the web's center line to the line of the beam's own bearing, in, positive toward the ledge. */
  readonly bearingOffsetIn: number;
  /** Height between the two connections that hold the end upright, in. */
  readonly leverIn: number;
  /** Design strength of one connection, kip, where it is known. */
  readonly connectionKip?: number;
}

/** The couple that holds an end upright. */
export interface EndRotation {
  /** Overturning that is left after the bearing's own lever, kip-in; negative where the beam would roll away from the floor. */
  readonly overturningKipIn: number;
  /** Horizontal force of the upper connection on the beam, kip: positive away from the floor, as it is if the ledge pulls the top inward. */
  readonly topKip: number;
  /** The same of the lower connection: as much, toward the floor. */
  readonly bottomKip: number;
  readonly checks: readonly Check[];
}

/**
 * Forces of the two connections that keep the end of a beam from rolling: the torsion, less what the reaction gives by
 * its own lever about the bearing, over the height between them (statics of the end; common practice, PCI Design Handbook
 * on edge beams). Friction under the beam is not counted.
 *
 * @throws InputError if a value is out of its range
 */
export function endRotation(input: EndRotationInput): EndRotation {
  const {torsionKipIn, reactionKip, bearingOffsetIn, leverIn, connectionKip} = checked(input);
  const overturningKipIn = torsionKipIn - reactionKip * bearingOffsetIn;
  const topKip = overturningKipIn / leverIn;
  const checks = connectionKip === undefined ? [] : [atMost({
    id: "end rotation", label: "Connection against rolling", unit: "kip", clause: "statics",
    holds: "Both connections hold the beam's end upright.",
    fails: "The connections are too weak to keep the beam from rolling: set them farther apart in height or make them stronger.",
  }, Math.abs(topKip), connectionKip)];
  return {overturningKipIn, topKip, bottomKip: overturningKipIn === 0 ? 0 : -topKip, checks};
}

function checked(input: EndRotationInput): EndRotationInput {
  const at = (name: keyof EndRotationInput, label: string, unit: string, min: number, max: number) =>
    requireNumber(input[name], {path: name, label, unit, min, max});
  at("torsionKipIn", "torsion at the end", "kip-in", -1e6, 1e6);
  at("reactionKip", "reaction", "kip", 0, 1e5);
  at("bearingOffsetIn", "bearing to the web's center line", "in", -48, 48);
  at("leverIn", "height between the connections", "in", 6, 144);
  if (input.connectionKip !== undefined) at("connectionKip", "strength of a connection", "kip", 0, 1e4);
  return input;
}
