import type {Evaluation} from "../../lib/evaluate.js";
import {NO_PARTITION_LIVE_PSF, PARTITION_PSF} from "../../lib/loads/floorLoads.js";
import {decimals} from "../../lib/units.js";

/** What movable walls add in the governing room, or why they add nothing. */
export function partitionSentence({design, deck}: Evaluation): string {
  const {room} = deck.load.governing;
  if (!design.loads.partitions) return "Walls stay where they are, so no load is added for movable partitions.";
  if (room.partitionPsf > 0) return `It includes ${PARTITION_PSF} psf for movable partitions.`;
  return room.livePsf >= NO_PARTITION_LIVE_PSF
    ? `Movable partitions add nothing: at ${NO_PARTITION_LIVE_PSF} psf and above, the live load covers them.`
    : "No partitions get moved in a room like this, so nothing is added for them.";
}

/** The concentrated loads of the design's rooms, in words. */
export function concentratedLoads({loads}: Evaluation): string {
  const found = new Map<string, number>();
  for (const {name, occupancy} of loads.rooms) if (occupancy.concentratedLb !== undefined) found.set(name, occupancy.concentratedLb);
  if (found.size === 0) return "The table gives none for the rooms of this design.";
  const list = [...found].map(([name, loadLb]) => `${decimals(loadLb)} lb in ${name}`);
  return `For this design the table gives ${join(list)}.`;
}

function join(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
