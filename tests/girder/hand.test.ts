import {describe, expect, test} from "vitest";
import {girderCurves} from "../../lib/girder/curve.js";
import {seed, catalog} from "../support/designs.js";
import {floorOf, girderOf} from "../support/madeBeams.js";

const library = () => seed("branch-library");
const checkOf = (of: ReturnType<typeof girderOf>, id: string) => of.checks.find((check) => check.id === id);

describe("the girder in service, by hand", () => {
  test("is squeezed by P/A + P e y / I and bent by M y / I under all load, and under what stays of it", () => {
    const found = girderOf(library(), {"bay.beamSpanFt": 24});
    const {member, midspan, loads, spanFt} = found;
    const {areaIn2, inertiaIn4, ybIn, ytIn} = member.section;
    const forceKip = midspan.effectiveForceKip;
    const moment = (plf: number) => (plf * spanFt ** 2 * 12) / 8000;
    const factor = loads.stems.momentFactor;
    expect(factor).toBeGreaterThan(1);
    const all = moment(loads.selfPlf + factor * (loads.deckDeadPlf + loads.livePlf));
    const stays = moment(loads.selfPlf + factor * (loads.deckDeadPlf + library().criteria.sustainedLiveShare * loads.livePlf));
    expect(found.serviceMomentKipIn).toBeCloseTo(all, 6);
    for (const [stresses, momentKipIn] of [[found.totalStresses, all], [found.sustainedStresses, stays]] as const) {
      const upKipIn = forceKip * (ybIn - member.layout.centroidCenterIn) - momentKipIn;
      expect(stresses.bottomKsi).toBeCloseTo(forceKip / areaIn2 + (upKipIn * ybIn) / inertiaIn4, 6);
      expect(stresses.topKsi).toBeCloseTo(forceKip / areaIn2 - (upKipIn * ytIn) / inertiaIn4, 6);
    }
  });

  test("needs 1.2 times its cracking moment, or twice what its load asks where that is less", () => {
    for (const strands of [6, 16]) {
      const found = girderOf(library(), {"girder.strands": strands});
      expect(checkOf(found, "girder minimum strength")?.capacity).toBeCloseTo(found.strength.designMomentKipIn, 9);
      expect(checkOf(found, "girder minimum strength")?.demand).toBeCloseTo(Math.min(1.2 * found.crackingMomentKipIn, 2 * found.momentKipIn), 6);
    }
  });

  test("says of each check that it is the girder's, and has those of ledges only where it has ledges", () => {
    for (const kind of ["inverted tee", "rectangle"] as const) {
      const {checks} = girderOf(library(), {"girder.kind": kind, "girder.depthIn": 44});
      for (const {id, label} of checks) {
        expect(id).toMatch(/^girder /);
        expect(label).toMatch(/^Girder: [a-z#]/);
      }
      expect(checks.some(({id}) => /ledge (depth|projection|punching|shear)/.test(id))).toBe(kind === "inverted tee");
    }
  });

  test("reaches, between two of the spans that are looked at, where its safe load falls to what is asked", () => {
    const found = girderOf(library());
    const [own] = girderCurves(library(), catalog, floorOf(library()).deck, found, [5, 20, 30, 40, 50]);
    const cells = own?.cells ?? [];
    expect(cells.map(({spanFt}) => spanFt)).toEqual([20, 30, 40, 50]);
    const last = cells.findLastIndex(({safeLoadPlf}) => safeLoadPlf >= found.demandPlf);
    const [at, next] = [cells[last], cells[last + 1]];
    if (!at || !next) throw new Error("the curve passes the load between two spans");
    const share = (at.safeLoadPlf - found.demandPlf) / (at.safeLoadPlf - next.safeLoadPlf);
    expect(own?.reachFt).toBeCloseTo(at.spanFt + 10 * share, 9);
  });
});
