import {describe, expect, test} from "vitest";
import {collisions} from "./collide.js";
import {collisionsIn} from "./drawnDesigns.js";
import {airParts, structureParts} from "../../lib/air/parts.js";
import {library} from "./model.js";

describe("no two parts share a place", () => {
  test("unless a check or an opening says so, in 60 random designs", () => {
    const {silent, saidBy} = collisionsIn(60);
    expect(silent.slice(0, 3)).toEqual([]);
    expect(saidBy).toEqual(expect.arrayContaining(["opening", "riser room", "branch duct width", "branch duct depth"]));
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
