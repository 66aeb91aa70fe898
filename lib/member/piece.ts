import {LB_PER_KIP} from "../units.js";
import type {Member} from "./member.js";

/** How many times a piece's own weight its strands pull with right after transfer. */
export function pullOverWeight(initialForceKip: number, member: Member, spanFt: number): number {
  return (initialForceKip * LB_PER_KIP) / (member.selfWeightPlf * spanFt);
}
