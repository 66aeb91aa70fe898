import fc from "fast-check";
import {collisions} from "./collide.js";
import {airParts, structureParts} from "../../lib/air/parts.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {FIELDS} from "../../lib/design/fields.js";
import {catalog, seeds} from "../support/designs.js";
import {SEED, valueOf} from "../properties/arbitrary.js";
import {airOf} from "./model.js";

/** Fields that decide where ducts and structure lie. */
const PATHS = [
  ...Object.keys(FIELDS).filter((path) => path.startsWith("air.")), "bay.spanFt", "bay.beamSpanFt", "bay.baysAlong", "bay.baysAcross",
  "edgeBeam.kind", "edgeBeam.webWidthIn", "edgeBeam.ledgeProjectionIn", "edgeBeam.ledgeDepthIn", "girder.kind", "girder.webWidthIn", "girder.ledgeProjectionIn", "girder.ledgeDepthIn", "girder.depthIn",
  "column.sideIn", "story.floorToFloorFt", "story.ceiling", "story.ceilingDropIn", "services.servedFt2", "services.mainWidthIn", "services.mainDepthIn", "services.branchWidthIn", "services.branchDepthIn",
] as const;
const ROOM_FOR_PARTS = {"bay.baysAlong": [1, 8], "bay.baysAcross": [1, 5], "services.servedFt2": [200, 12_000], "air.acrossFt": [1, 200]} as const;

const one = (path: string): fc.Arbitrary<unknown> => {
  const range = ROOM_FOR_PARTS[path as keyof typeof ROOM_FOR_PARTS];
  return range ? fc.integer({min: range[0], max: range[1]}) : valueOf(FIELDS[path] as (typeof FIELDS)[string]);
};

/** A starter with many of those fields at random values, and any deck. */
const design: fc.Arbitrary<Design> = fc.tuple(fc.constantFrom(...seeds), fc.subarray([...PATHS], {minLength: 3}), fc.constantFrom(...catalog.deckMembers.map(({designation}) => designation)))
  .chain(([{design: from}, paths, member]) => fc.tuple(...paths.map((path) => one(path).map((value) => [path, value] as const)))
    .map((changes) => withValues(from, {"services.airCfmPerFt2": 1, "deck.member": member, ...Object.fromEntries(changes), "air.place": from.air.place === "fit" ? "ledge" : from.air.place, ...Object.fromEntries(changes.filter(([path, value]) => path === "air.place" && value !== "fit"))})));

/** Collisions in so many random designs: those that nothing says, in words, and what says the others. */
export function collisionsIn(count: number): {readonly silent: readonly string[]; readonly saidBy: readonly string[]} {
  const met = new Set<string>();
  const silent: string[] = [];
  for (const drawn of fc.sample(design, {numRuns: count, seed: SEED})) {
    const model = airOf(drawn);
    if (!model) continue;
    for (const {one: a, other: b, saidBy} of collisions(airParts(model), structureParts(model), model.checks)) {
      if (saidBy) met.add(saidBy);
      else silent.push(`${a.id} and ${b.id}, ${drawn.deck.member} ${JSON.stringify([drawn.air, drawn.bay, drawn.services, a, b])}`);
    }
  }
  return {silent, saidBy: [...met]};
}
