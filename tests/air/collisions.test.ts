import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {collisions} from "./collide.js";
import {airParts, structureParts} from "../../lib/air/parts.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {FIELDS} from "../../lib/design/fields.js";
import {seeds} from "../support/designs.js";
import {catalog} from "../support/designs.js";
import {SEED, valueOf} from "../properties/arbitrary.js";
import {airOf, library} from "./model.js";

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

describe("no two parts share a place", () => {
  test("unless a check or an opening says so, in 2,000 random designs", () => {
    const met = new Map<string, number>();
    const silent: string[] = [];
    for (const drawn of fc.sample(design, {numRuns: 2000, seed: SEED})) {
      const model = airOf(drawn);
      if (!model) continue;
      for (const {one: a, other: b, saidBy} of collisions(airParts(model), structureParts(model), model.checks)) {
        if (saidBy) met.set(saidBy, (met.get(saidBy) ?? 0) + 1);
        else silent.push(`${a.id} and ${b.id}, ${drawn.deck.member} ${JSON.stringify([drawn.air, drawn.bay, drawn.services, a, b])}`);
      }
    }
    expect(silent.slice(0, 3)).toEqual([]);
    // The designs are odd enough that ducts meet stems, beams and one another, and a check says it.
    expect([...met.keys()]).toEqual(expect.arrayContaining(["opening", "trunk room", "branch duct width", "branch duct depth", "riser room"]));
  });

  test("and a duct that is put into a stem, a column or another duct is found", () => {
    const model = library();
    const [ducts, structure] = [airParts(model), structureParts(model)];
    const feeder = ducts.find(({kind}) => kind === "feeder");
    if (!feeder) throw new Error("no feeder");
    const moved = (dx: number, dy: number, dz: number) => ({...feeder, x0In: feeder.x0In + dx, x1In: feeder.x1In + dx, y0In: feeder.y0In + dy, y1In: feeder.y1In + dy, z0In: feeder.z0In + dz, z1In: feeder.z1In + dz});
    const meets = (dx: number, dy: number, dz: number) => collisions([moved(dx, dy, dz)], structure, []).map(({other}) => other.kind);
    expect(meets(0, 0, 0)).toEqual([]);
    // Half the clear width and the feeder's own half move it into the stem beside it; 24 in up is the flange, 10 in down is free.
    expect(new Set(meets(24, 0, 0))).toEqual(new Set(["stem"]));
    expect(meets(0, 0, 24)).toEqual(["flange"]);
    expect(meets(0, 0, -13)).toEqual([]);
    expect(meets(0, -40, -10)).toContain("ledge");
    expect(collisions([feeder, moved(1, 0, 0)], [], [])).toHaveLength(1);
    // Parts that touch share no place.
    expect(collisions([feeder, moved(feeder.x1In - feeder.x0In, 0, 0)], [], [])).toHaveLength(0);
  });
});
