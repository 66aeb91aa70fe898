import {describe, expect, test} from "vitest";
import type {Check} from "../../lib/checks.js";
import {cellOf} from "../../lib/deck/cell.js";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {failedGates, gateUse, losesBy} from "../../lib/deck/gates.js";
import {LIMITS, LOAD_LIMITS, limitNamed, type LimitName} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import type {Member} from "../../lib/member/member.js";
import {limitWorking} from "../../lib/steps/cell.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {once} from "../support/once.js";

const TEE = once(() => memberWith("10DT24", "88-S"));
const TOPPED = once(() => memberWith("10DT24", "88-S", {toppingIn: 2}));
const PLANK = once(() => memberWith("4HC8", "66-S"));
/** A slab under so thick a topping that the neutral axis lies in it, and its concrete is compressed too hard first. */
const THICK = once(() => memberWith("4FS4", "48-S", {toppingIn: 6}));
const LIGHT = once(() => memberWith("12DT32", "48-S"));
const FIRE = {tables: catalog.fire, aggregate: "siliceous", restrained: false} as const;

const floor = (changes: Partial<Criteria> = {}): Criteria =>
  ({...handbookCriteria(false), superimposedDeadPsf: 10, deadOnlyFactor: 1.4, sustainedLiveShare: 0.4, limits: LOAD_LIMITS, ...changes});

const checkOf = (member: Member, spanFt: number, criteria: Criteria, loadPsf: number, id: string): Check => {
  const found = deckState(member, spanFt, criteria, loadPsf - criteria.superimposedDeadPsf).checks.filter((check) => check.id === id);
  expect(found, id).toHaveLength(1);
  return found[0] as Check;
};

describe("a limit and its check say the same: at the load that the limit allows the check is just met, and a pound more fails it", () => {
  test.each([
    ["strength", "deck strength", TEE, 50, {}],
    ["strength", "deck strength", TOPPED, 40, {}],
    ["development", "deck development", TEE, 44, {}],
    ["development", "deck development", PLANK, 14, {}],
    ["minimum strength", "minimum strength", LIGHT, 30, {}],
    ["shear", "deck shear", TEE, 20, {}],
    ["shear", "deck shear", PLANK, 14, {}],
    ["horizontal shear", "deck contact", TOPPED, 44, {}],
    ["service tension", "deck tension", TEE, 50, {}],
    ["service tension", "deck tension", TOPPED, 40, {tensionClass: "U"}],
    ["crack control", "deck crack control", TEE, 50, {tensionClass: "C"}],
    ["sustained compression", "deck sustained compression", TEE, 50, {}],
    ["sustained compression", "topping sustained compression", THICK, 20, {}],
    ["total compression", "deck total compression", TEE, 50, {}],
    ["total compression", "topping compression", THICK, 20, {}],
    ["deflection", "deck sag", TEE, 50, {}],
    ["deflection", "deck sag", TOPPED, 44, {sagLimit: "L/480"}],
    ["camber", "deck camber", TEE, 50, {sustainedLiveShare: 0.5}],
    ["bearing", "deck bearing", TEE, 44, {seatIn: 4}],
    ["bearing", "deck bearing", PLANK, 24, {seatIn: 2}],
  ] as const)("%s, by the check %s", (name, id, member, spanFt, changes) => {
    const criteria = floor(changes);
    const psf = safeLoad(member(), spanFt, criteria).limitsPsf[name] as number;
    const at = (loadPsf: number) => checkOf(member(), spanFt, criteria, loadPsf, id);
    if (name === "camber") expect(at(psf).capacity).toBeCloseTo(0, 9);
    else expect(at(psf).utilization).toBeCloseTo(1, 6);
    expect(at(psf - 1).verdict).not.toBe("fails");
    expect(at(psf + 1).verdict).toBe("fails");
  });
});

describe("a gate's use is the greatest of its checks'", () => {
  const greatest = (member: Member, spanFt: number, criteria: Criteria, ids: RegExp) =>
    Math.max(...deckState(member, spanFt, criteria, 50).checks.filter(({id}) => ids.test(id)).map(({utilization}) => utilization));

  test.each([
    ["transfer", /^transfer compression/, {}],
    ["vibration", /^deck (walking|frequency)$/, {walking: "quiet"}],
    ["fire", /^deck fire/, {fire: {...FIRE, hours: 2}}],
    ["stripping", /^(stripping|hauling) (tension|compression)/, {}],
    ["hauling", /^deck hauling$/, {}],
  ] as const)("%s", (name, ids, changes) => {
    for (const [member, spanFt] of [[TEE(), 44], [TOPPED(), 30], [PLANK(), 24], [memberWith("10DT24", "128-D1"), 50], [memberWith("15DT34", "188-S"), 70]] as const) {
      const use = gateUse(name, member, spanFt, floor(changes)) as number;
      expect(use).toBeGreaterThan(0);
      expect(greatest(member, spanFt, floor(changes), ids)).toBeCloseTo(Math.min(99, use), 9);
    }
  });

  test("soffit compression, where the soffit near the ends is what lasting load compresses most", () => {
    const member = memberWith("12DT32", "228-S", {releaseStrengthPsi: 5000});
    const check = checkOf(member, 30, floor(), 20, "deck sustained compression");
    expect(check.utilization).toBeCloseTo(gateUse("soffit compression", member, 30, floor()) as number, 9);
    expect(check.verdict).toBe("fails");
  });
});

describe("a limit that no load reaches gives none", () => {
  const reached = (name: LimitName, member: Member, changes: Partial<Criteria> = {}) => {
    const limit = limitNamed(name);
    return limit.kind === "load" ? limit.reached(cellOf(member, 40, floor(changes))) : undefined;
  };

  test("camber and sustained compression, where none of the live load lasts", () => {
    for (const name of ["camber", "sustained compression"] as const) {
      expect(reached(name, TEE(), {sustainedLiveShare: 0})).toBeUndefined();
      expect(reached(name, TEE(), {sustainedLiveShare: 0.01})).toBeDefined();
    }
  });

  test("tension in class C and cracks in the others, the contact of a bare member, minimum strength of one with many strands", () => {
    for (const [tensionClass, tension, cracks] of [["U", true, false], ["T", true, false], ["C", false, true]] as const) {
      expect(reached("service tension", TEE(), {tensionClass}) !== undefined).toBe(tension);
      expect(reached("crack control", TEE(), {tensionClass}) !== undefined).toBe(cracks);
    }
    expect([reached("horizontal shear", TEE()), reached("minimum strength", TEE())]).toEqual([undefined, undefined]);
    expect(reached("minimum strength", LIGHT())).toBeDefined();
  });
});

test("a bare deck is not asked for a topping's compression, nor for its contact", () => {
  const ids = (member: Member) => deckState(member, 40, floor(), 50).checks.map(({id}) => id).filter((id) => /topping|contact/.test(id));
  expect(ids(TEE())).toEqual([]);
  expect(ids(TOPPED())).toEqual(["deck contact", "topping sustained compression", "topping compression"]);
});

test("a deck that a gate of the search does not pass loses by what it is found to do, not by the question", () => {
  const hard = memberWith("12DT32", "228-S", {releaseStrengthPsi: 5000});
  expect(losesBy("soffit compression", hard, 30, floor())).toMatch(/strands compress the soffit of an empty floor more than the code allows/);
  expect(losesBy("vibration", memberWith("4FS4", "66-S"), 30, floor({walking: "quiet"}))).toMatch(/people would feel others walk\.$/);
  expect(losesBy("fire", TEE(), 44, floor({fire: {...FIRE, hours: 2}}))).toMatch(/does not reach the required fire rating/);
  // 14 strands at 44 ft ask for more than the 3,500 psi of the handbook's tables.
  expect(losesBy("transfer", memberWith("10DT24", "148-S"), 44, floor())).toMatch(/^Needs [4-9],\d{3} psi at release; 3,500 psi is specified\.$/);
});

describe("gates", () => {
  test("are passed by what just meets them: a piece of 48 kip is a legal load, a foot more of it is not", () => {
    const spanFt = 48000 / TEE().selfWeightPlf;
    expect(gateUse("hauling", TEE(), spanFt, floor())).toBeCloseTo(1, 12);
    expect(failedGates(TEE(), spanFt, floor({limits: ["hauling"]}))).toEqual([]);
    expect(failedGates(TEE(), spanFt + 1, floor({limits: ["hauling"]}))).toEqual(["hauling"]);
  });

  test("are told from limits on the load, which have no use and are never shut", () => {
    expect(gateUse("strength", TEE(), 44, floor())).toBeUndefined();
    expect(failedGates(TEE(), 110, floor({limits: LIMITS, superimposedDeadPsf: 200}))).not.toContain("strength");
    expect(safeLoad(TEE(), 110, floor({superimposedDeadPsf: 200})).limitsPsf.strength as number).toBeLessThan(0);
    // Steel in the top cures what lifting cracks, so no search is lost by it, and the question is all that is said.
    expect(losesBy("stripping", TEE(), 44, floor())).toBe(limitNamed("stripping").asks);
  });
});

describe("the working of a limit in compression", () => {
  test("works out the stress of the member's top, that of a limit in tension the soffit's, each step from the one before", () => {
    const steps = (name: LimitName) => limitWorking(TEE(), 44, floor(), name).steps;
    for (const [name, face, modulus] of [["total compression", /top/, "S_t"], ["service tension", /soffit/, "S_b"]] as const) {
      const own = steps(name).find(({symbol}) => symbol === "f_o");
      expect(own?.label).toMatch(face);
      expect(own?.values).toHaveProperty(modulus);
      expect(steps(name).at(-1)?.values["f_o"]?.value).toBe(own?.result);
      for (const symbol of ["P", "M_o"]) expect(own?.values[symbol]?.value).toBe(steps(name).find((step) => step.symbol === symbol)?.result);
    }
  });
});

describe("by hand", () => {
  test("bearing: a 10 ft tee's two stems of 3.75 in on a 6 in seat take 0.65 x 0.85 x 5 ksi x 45 in2 = 124.3 kip at an end", () => {
    const member = memberWith("10DT24", "88-S");
    const {capacity, demand} = checkOf(member, 40, floor(), 60, "deck bearing");
    expect(capacity).toBeCloseTo(124.3, 1);
    // 1.2 x (own + 10) + 1.6 x 50 psf on 10 ft by half of 40 ft.
    expect(demand).toBeCloseTo(((1.2 * (member.selfWeightPlf / 10 + 10) + 1.6 * 50) * 10 * 20) / 1000, 9);
  });

  test("contact: 80 psi on 120 in by the depth to the strands, no less than 0.8 h, times 0.75", () => {
    // 26 in deep with its topping; the strands' centroid lies above 0.2 x 26 = 5.2 in, so 20.8 in count.
    const high = memberWith("10DT24", "88-S", {toppingIn: 2, endIn: 7, centerIn: 7});
    expect(checkOf(high, 40, floor(), 60, "deck contact").capacity).toBeCloseTo((0.75 * 80 * 120 * 20.8) / 1000, 9);
    const low = memberWith("10DT24", "88-S", {toppingIn: 2, endIn: 4, centerIn: 4});
    expect(checkOf(low, 40, floor(), 60, "deck contact").capacity).toBeCloseTo((0.75 * 80 * 120 * 22) / 1000, 9);
  });

  test("hauling: a legal truck's 48 kip", () => {
    expect(gateUse("hauling", TEE(), 48, floor())).toBeCloseTo((TEE().selfWeightPlf * 48) / 48000, 12);
  });

  test("sag: span over 360 under live load, 1.67 in on 50 ft; over 480 with what creep still brings, 1.25 in", () => {
    expect(checkOf(TEE(), 50, floor(), 40, "deck sag").capacity).toBeCloseTo(600 / 360, 12);
    expect(checkOf(TEE(), 50, floor({sagLimit: "L/480"}), 40, "deck sag").capacity).toBeCloseTo(600 / 480, 12);
  });
});
