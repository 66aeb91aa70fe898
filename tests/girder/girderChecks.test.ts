import {describe, expect, test} from "vitest";
import type {Check} from "../../lib/checks.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import type {GirderResult} from "../../lib/girder/girder.js";
import {girderChecks} from "../../lib/girder/girderChecks.js";
import {seed} from "../support/designs.js";
import {girderOf} from "../support/madeBeams.js";
import {once} from "../support/once.js";

/** A girder that holds, one thing of which at a time is brought to its limit, and beyond it. */
const library = once(() => withValues(seed("branch-library"), {"criteria.tensionClass": "T"}));
const found = once(() => girderOf(library()));
const checkOf = (id: string, changes: Partial<GirderResult>, design: Design = library()): Check => {
  const check = girderChecks(design, {...found(), ...changes}).find((one) => one.id === id);
  if (!check) throw new Error(`no check ${id}`);
  return check;
};
type AtShare = (share: number, of: GirderResult) => Partial<GirderResult>;
const shape = (of: GirderResult, bottomKsi: number, topKsi: number) => ({...of.totalStresses, bottomKsi, topKsi});

describe("a check of the girder", () => {
  /** What is asked at a share of what there is. Concrete of 6,000 psi: class T cracks at 12 sqrt(f'c) = 0.9295 ksi. */
  const AT: Readonly<Record<string, AtShare>> = {
    "girder load": (share, {capacity}) => ({demandPlf: share * capacity.safeLoadPlf}),
    "girder strength": (share, {strength}) => ({momentKipIn: share * strength.designMomentKipIn}),
    "girder development": (share, {development}) => ({development: {...development, factoredMomentKipIn: share * development.strength.designMomentKipIn}}),
    "girder shear": (share, {shear}) => ({shear: {...shear, factoredKip: share * shear.designKip}}),
    "girder tension": (share, of) => ({totalStresses: shape(of, -share * 0.012 * Math.sqrt(6000), 1)}),
    // 0.45 f'c in either face under what stays, 0.60 f'c in the top under all.
    "girder sustained compression": (share, of) => ({soffitNearEndKsi: 0, sustainedStresses: shape(of, 0.1, share * 2.7)}),
    "girder total compression": (share, of) => ({totalStresses: shape(of, 0, share * 3.6)}),
    "girder sag": (share, {allowedMovementIn}) => ({movementIn: share * allowedMovementIn}),
  };

  test.each(Object.keys(AT))("holds at its limit and fails a hundredth beyond: %s", (id) => {
    const at = AT[id] as AtShare;
    expect(library().girder.strengthPsi).toBe(6000);
    expect(checkOf(id, at(0.9, found())).verdict).toBe("ok");
    expect(checkOf(id, at(1, found()))).toMatchObject({verdict: "near", utilization: expect.closeTo(1, 9)});
    const beyond = checkOf(id, at(1.01, found()));
    expect(beyond.verdict).toBe("fails");
    // What mends it is said, save of the load, whose governing limit tells it.
    expect(beyond.message).toMatch(/:/);
  });

  test("names the face that is squeezed most, by what stays and by all of the load, and what mends that one", () => {
    const stays = {soffitNearEndKsi: 0, sustainedStresses: shape(found(), 2.71, 0.1)};
    expect(checkOf("girder sustained compression", stays)).toMatchObject({verdict: "fails", message: expect.stringMatching(/^The soffit .* strands at midspan: fewer strands, or stronger concrete\.$/)});
    expect(checkOf("girder sustained compression", {...stays, soffitNearEndKsi: 2.72})).toMatchObject({demand: 2.72, message: expect.stringContaining("near the ends")});
    // Of all of the load, too: its limit is 0.60 f'c.
    expect(checkOf("girder total compression", {totalStresses: shape(found(), 3.61, 0.1)})).toMatchObject({verdict: "fails", label: "Girder: compression in the soffit under total load"});
    expect(checkOf("girder total compression", {totalStresses: shape(found(), 0, 3.61)}).message).toMatch(/^The top .*wider or deeper girder/);
    expect(checkOf("girder tension", {totalStresses: shape(found(), 0.5, 1)})).toMatchObject({demand: 0, verdict: "ok"});
  });

  test("lets a girder of class C crack, and holds the stretch of its strands instead", () => {
    const cracking = withValues(library(), {"criteria.tensionClass": "C"});
    const {crackControlKipIn} = found();
    expect(checkOf("girder crack control", {serviceMomentKipIn: crackControlKipIn}, cracking).verdict).toBe("near");
    expect(checkOf("girder crack control", {serviceMomentKipIn: 1.01 * crackControlKipIn}, cracking).verdict).toBe("fails");
    const ids = (design: Design) => girderChecks(design, found()).map(({id}) => id);
    expect(ids(cracking)).not.toContain("girder tension");
    expect(ids(library())).not.toContain("girder crack control");
  });

  test("asks a ledge for 8 in, out and down, and rows for as many strands: meeting them is enough", () => {
    for (const [path, id] of [["girder.ledgeProjectionIn", "girder ledge projection"], ["girder.ledgeDepthIn", "girder ledge depth"]] as const) {
      expect(checkOf(id, {}, withValues(library(), {[path]: 8})).verdict).toBe("ok");
      expect(checkOf(id, {}, withValues(library(), {[path]: 7.9})).verdict).toBe("fails");
    }
    expect(checkOf("girder strands", {strandsAsked: 20, strandsMost: 20}).verdict).toBe("ok");
    expect(checkOf("girder strands", {strandsAsked: 21, strandsMost: 20})).toMatchObject({verdict: "fails", message: expect.stringContaining("Only 20 strands")});
  });

  test("of least strength sends a section that is pulled little to stronger concrete, another to more strands", () => {
    const weak = (tensileStrain: number) => checkOf("girder minimum strength", {crackingMomentKipIn: found().strength.designMomentKipIn, momentKipIn: 1e6, strength: {...found().strength, tensileStrain}});
    expect(weak(0.0049)).toMatchObject({verdict: "fails", message: expect.stringContaining("stronger concrete, or fewer strands")});
    // 0.005 is where a section begins to be governed by its steel (ACI 318-19 21.2.2, for strands).
    expect(weak(0.005)).toMatchObject({verdict: "fails", message: expect.stringContaining("more strands, or a narrower web")});
  });

  test("of shear tells whether the concrete, the least stirrups or more carry it, and where", () => {
    const words = (forShearIn2PerFt: number) => {
      const {shear} = found();
      return checkOf("girder shear", {spanFt: 30, shear: {...shear, stirrups: {...shear.stirrups, share: 0.2, forShearIn2PerFt, leastIn2PerFt: 0.2}}}).message;
    };
    expect(words(0)).toBe("The concrete carries the shear; minimum stirrups are enough.");
    expect(words(0.2)).toBe("Minimum stirrups carry what the concrete does not: 0.20 in² per foot where the most is needed, 6.0 ft from the ends.");
    expect(words(0.21)).toMatch(/^Stirrups can carry what the concrete does not: 0\.21 in² per foot/);
  });

  test("of twist tells a twist that may be left out from one that asks for closed stirrups and from one that is too much", () => {
    const words = (verdict: Check["verdict"], negligible: boolean) => {
      const {twist} = found();
      const checks = twist.design.checks.map((check) => ({...check, verdict}));
      return girderChecks(library(), {...found(), twist: {...twist, design: {...twist.design, negligible, checks}}}).find(({message}) => message.startsWith("With live load on one bay only"))?.message;
    };
    expect(words("ok", true)).toContain("small enough to neglect");
    expect(words("ok", false)).toContain("closed stirrups");
    expect(words("fails", false)).toContain("widen or deepen");
  });

  test("of its own parts bears the girder's name: how it is cut free, lifted and hauled", () => {
    const ids = girderChecks(library(), found()).map(({id}) => id);
    for (const id of ["transfer compression end", "transfer tension midspan", "stripping compression", "hauling tension top", "ledge punching", "seat tolerance"]) expect(ids).toContain(`girder ${id}`);
    expect(checkOf("girder transfer tension midspan", {}).label).toBe("Girder: tension at midspan when the strands are cut");
    // A girder's strands are straight.
    const {transfer} = found();
    const pressed = {...transfer, places: transfer.places.map((place) => ({...place, stresses: {...place.stresses, bottomKsi: 9}}))};
    expect(checkOf("girder transfer compression end", {transfer: pressed}).message).toMatch(/more release strength or fewer strands/);
    const pulled = {...transfer, places: transfer.places.map((place) => ({...place, topSteelIn2: 0, stresses: {...place.stresses, bottomKsi: -9}}))};
    expect(checkOf("girder transfer tension midspan", {transfer: pulled}).message).toMatch(/columns closer together/);
  });

  test("of a ledge under planks holds their even load, per foot, to a line's strength; stems have none", () => {
    const wing = seed("classroom-wing");
    const of = girderOf(wing);
    const {ledge} = of.seat;
    if (ledge?.linePlf === undefined) throw new Error("planks lie on a line");
    const line = (factoredKip: number) => girderChecks(wing, {...of, seat: {...of.seat, factoredKip}}).find(({id}) => id === "girder ledge line");
    expect(line(ledge.linePlf / 1000)?.verdict).toBe("near");
    expect(line((1.01 * ledge.linePlf) / 1000)?.verdict).toBe("fails");
    expect(girderChecks(library(), found()).some(({id}) => id === "girder ledge line")).toBe(false);
  });
});
