import {describe, expect, test} from "vitest";
import {cellOf, prestressAt, strengthAt} from "../../lib/deck/cell.js";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {deckService} from "../../lib/deck/deckService.js";
import {gateUse} from "../../lib/deck/gates.js";
import {GATES, HANDBOOK_LIMITS, LIMITS, LOAD_LIMITS, USUAL_LIMITS, WORKING_GATES, limitNamed, type LimitName} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import type {SagLimit} from "../../lib/design/design.js";
import {camber} from "../../lib/member/camber.js";
import {partlyDevelopedStrength} from "../../lib/member/development.js";
import {crackingMomentKipIn} from "../../lib/member/minimumStrength.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberStrength} from "../../lib/member/strength.js";
import type {Member} from "../../lib/member/member.js";
import {LASTING_MULTIPLIER, creepSagIn} from "../../lib/member/sagLimit.js";
import {handled} from "../../lib/member/stripping.js";
import {vibration} from "../../lib/member/vibration.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const FIRE = {hours: 1, tables: catalog.fire, aggregate: "siliceous", restrained: false} as const;

function limitOf(name: LimitName, member: Member, spanFt: number, other: Partial<Criteria> = {}): number | undefined {
  return safeLoad(member, spanFt, {...handbookCriteria(member.topping !== undefined), limits: [name], ...other}).limitsPsf[name];
}

/** The member's behavior under a superimposed load of which the criteria's part is dead. */
function under(member: Member, spanFt: number, loadPsf: number, criteria: Criteria) {
  const deadPsf = criteria.superimposedDeadPsf;
  const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;
  const loads = {livePsf: loadPsf - deadPsf, factoredPsf: 1.2 * (ownPsf + deadPsf) + 1.6 * (loadPsf - deadPsf)};
  return deckService(cellOf(member, spanFt, criteria), loads, camber(member, spanFt, deadPsf * member.widthFt));
}

const TEE = memberWith("10DT24", "88-S");
const TOPPED = memberWith("10DT24", "88-S", {toppingIn: 2});
const PLANK = memberWith("4HC8", "66-S");

describe("at the load that a limit allows", () => {
  test.each([["tee", TEE, 44], ["topped tee", TOPPED, 44], ["plank", PLANK, 24], ["short plank", PLANK, 12], ["depressed", memberWith("12DT32", "128-D1"), 60]] as const)(
    "partly developed strands of a %s are used up", (_, member, spanFt) => {
      const criteria = handbookCriteria(member.topping !== undefined);
      const {development} = under(member, spanFt, limitOf("development", member, spanFt) as number, criteria);
      expect(development.factoredMomentKipIn / development.strength.designMomentKipIn).toBeCloseTo(1, 6);
    });

  test("nowhere near the ends is more asked than the strands can develop there", () => {
    for (const [member, spanFt] of [[TEE, 44], [TOPPED, 44], [PLANK, 24], [PLANK, 12], [memberWith("12DT32", "128-D1"), 60]] as const) {
      const criteria = handbookCriteria(member.topping !== undefined);
      const cell = cellOf(member, spanFt, criteria);
      const {development: {factoredMomentKipIn, share: at, strength}} = under(member, spanFt, limitOf("development", member, spanFt) as number, criteria);
      const factoredPlf = factoredMomentKipIn / uniformMomentKipIn(1, spanFt, at);
      const developed = strengthAt(cell, 0.5);
      const {effectiveStressKsi} = cell.midspan.losses;
      const transferIn = (effectiveStressKsi / 3) * member.layout.strand.diameterIn;
      let most = 0;
      // From the end of the transfer length to the full stress, in hundredths of the way; what lies between three places is a little more.
      for (let part = 0; part <= 1; part += 0.01) {
        const share = Math.min(0.5, (transferIn + part * (developed.compressionKip / member.layout.areaIn2 - effectiveStressKsi) * member.layout.strand.diameterIn) / (12 * spanFt));
        most = Math.max(most, uniformMomentKipIn(factoredPlf, spanFt, share) / partlyDevelopedStrength(member, spanFt, prestressAt(cell, share), developed).designMomentKipIn);
      }
      expect(most, `${spanFt} ft`).toBeLessThan(1.02);
      expect(strength.designMomentKipIn).toBeCloseTo(factoredMomentKipIn, 6);
    }
  });

  test("the contact with the topping is used up, and a bare member has none", () => {
    const {contact} = under(TOPPED, 44, limitOf("horizontal shear", TOPPED, 44) as number, handbookCriteria(true));
    expect((contact?.factoredKip ?? 0) / (contact?.designKip ?? 1)).toBeCloseTo(1, 9);
    expect(limitOf("horizontal shear", TEE, 44)).toBeUndefined();
  });

  test("the ends' bearing is used up, and grows with the seat", () => {
    const {bearing} = under(TEE, 44, limitOf("bearing", TEE, 44) as number, handbookCriteria(false));
    expect(bearing.factoredKip / bearing.designKip).toBeCloseTo(1, 9);
    expect(limitOf("bearing", TEE, 44, {seatIn: 4}) as number).toBeLessThan(limitOf("bearing", TEE, 44) as number);
  });

  test.each([["L/360", 0], ["L/360", 0.5], ["L/480", 0.3], ["L/240", 0.3]] as const)("the movement is what %s allows", (sagLimit: SagLimit, sustainedLiveShare: number) => {
    for (const [member, spanFt] of [[TEE, 50], [TOPPED, 40], [PLANK, 28]] as const) {
      const criteria: Criteria = {...handbookCriteria(member.topping !== undefined), sagLimit, sustainedLiveShare};
      const {movementIn, allowedMovementIn} = under(member, spanFt, limitOf("deflection", member, spanFt, {sagLimit, sustainedLiveShare}) as number, criteria);
      expect(movementIn / allowedMovementIn).toBeCloseTo(1, 9);
    }
  });

  test("no camber is left, as long as the lasting load does not crack the soffit", () => {
    const criteria: Criteria = {...handbookCriteria(false), sustainedLiveShare: 0.5};
    const {lastingCamberIn, liveDeflection} = under(TEE, 50, limitOf("camber", TEE, 50, {sustainedLiveShare: 0.5}) as number, criteria);
    expect(liveDeflection.uncrackedShare).toBeGreaterThan(0.5);
    expect(lastingCamberIn).toBeCloseTo(0, 9);
  });

  test("a class C section stretches its strands by 36 ksi", () => {
    const criteria: Criteria = {...handbookCriteria(false), tensionClass: "C"};
    const limitPsf = limitOf("crack control", TEE, 50, {tensionClass: "C"}) as number;
    const {serviceMomentKipIn, crackControlKipIn} = under(TEE, 50, limitPsf, criteria);
    expect(serviceMomentKipIn / crackControlKipIn).toBeCloseTo(1, 9);
    expect(limitOf("service tension", TEE, 50, {tensionClass: "C"})).toBeUndefined();
    expect(limitPsf).toBeGreaterThan(limitOf("service tension", TEE, 50) as number);
    expect(limitOf("crack control", TEE, 50)).toBeUndefined();
  });

  test("a lightly strung member may take half its strength where it would break as it cracks", () => {
    const light = memberWith("12DT32", "48-S");
    const state = prestressState(light, 40, 0.5, 120);
    const {designMomentKipIn} = memberStrength(light, 0.5, state.losses.effectiveStressKsi);
    expect(designMomentKipIn).toBeLessThan(1.2 * crackingMomentKipIn(light, 40, state));
    const limitPsf = limitOf("minimum strength", light, 40) as number;
    const ownPsf = light.selfWeightPlf / 12;
    const factoredPsf = limitPsf >= 10 ? 1.2 * (ownPsf + 10) + 1.6 * (limitPsf - 10) : 1.2 * (ownPsf + limitPsf);
    expect(2 * uniformMomentKipIn(factoredPsf * 12, 40, 0.5)).toBeCloseTo(designMomentKipIn, 6);
    expect(limitOf("minimum strength", TEE, 50)).toBeUndefined();
  });
});

describe("a limit", () => {
  test("stands for itself: where it alone counts, no other is reported", () => {
    for (const name of LIMITS) {
      const criteria: Criteria = {...handbookCriteria(true), limits: [name], sustainedLiveShare: 0.5, tensionClass: name === "crack control" ? "C" : "T", walking: "quiet", fire: FIRE};
      for (const member of [TEE, TOPPED]) expect([[name], []]).toContainEqual(Object.keys(safeLoad(member, 44, criteria).limitsPsf));
    }
  });

  test("on compression is the topping's alone where the neutral axis lies in it", () => {
    const member = memberWith("4FS4", "48-S", {toppingIn: 6});
    const composite = member.composite!;
    expect(composite.interfaceAboveCentroidIn).toBeLessThan(0);
    const momentKipIn = (0.6 * 3 * composite.stIn3) / composite.modularRatio;
    expect(limitOf("total compression", member, 20)).toBeCloseTo(momentKipIn / (uniformMomentKipIn(1, 20, 0.5) * 4), 9);
  });

  test("on sag asks for less dead load where its creep alone uses the limit up", () => {
    const deadPsf = 60;
    const creepIn = creepSagIn(camber(TEE, 66, deadPsf * 10));
    const allowedIn = (66 * 12) / 480;
    expect(creepIn).toBeGreaterThan(allowedIn);
    // 5 w L^4 / 384 E I for one psf on ten feet; creep adds twice the sag at once.
    const perPsfIn = (5 * (10 / 12000) * (66 * 12) ** 4) / (384 * TEE.modulusKsi * TEE.full.inertiaIn4);
    expect(limitOf("deflection", TEE, 66, {superimposedDeadPsf: deadPsf, sagLimit: "L/480"})).toBeCloseTo(deadPsf - (creepIn - allowedIn) / ((LASTING_MULTIPLIER - 1) * perPsfIn), 6);
  });
});

describe("at the load that shear allows", () => {
  test.each([["tee", TEE, 20], ["depressed", memberWith("10DT24", "128-D1"), 40], ["plank", PLANK, 14]] as const)("the webs of a %s are used up", (_, member, spanFt) => {
    const criteria: Criteria = {...handbookCriteria(false), superimposedDeadPsf: 10};
    const {shear} = deckState(member, spanFt, criteria, (limitOf("shear", member, spanFt) as number) - 10);
    expect(shear.factoredKip / shear.designKip).toBeCloseTo(1, 9);
  });
});

describe("the use of a gate", () => {
  const quiet: Criteria = {...handbookCriteria(true), superimposedDeadPsf: 40, walking: "quiet"};

  test("of walking is by shaking or by frequency, whichever is nearer to its limit, with the dead load that swings along", () => {
    const uses = ([[TOPPED, 44], [memberWith("4FS4", "66-S"), 30]] as const).map(([member, spanFt]) => {
      const {frequencyHz, acceleration, allowedAcceleration} = vibration(member, spanFt, 40 * member.widthFt, "quiet");
      const [byFrequency, byShaking] = [3 / frequencyHz, acceleration / allowedAcceleration];
      expect(gateUse("vibration", member, spanFt, quiet)).toBeCloseTo(Math.max(byFrequency, byShaking), 12);
      return byFrequency > byShaking ? "frequency" : "shaking";
    });
    expect(uses).toContain("shaking");
    expect(gateUse("vibration", TOPPED, 44, {...quiet, walking: undefined})).toBeUndefined();
  });

  test("of lifting is the worst of form and road, in tension and in compression", () => {
    for (const [member, spanFt] of [[TEE, 50], [TEE, 20], [PLANK, 30], [memberWith("10DT24", "168-S"), 30]] as const) {
      const [form, road] = [handled(member, spanFt, "stripping"), handled(member, spanFt, "hauling")];
      const ratios = [form, road].flatMap((state) => [state.tensionKsi / state.allowedTensionKsi, state.compressionKsi / state.allowedCompressionKsi]);
      expect(gateUse("stripping", member, spanFt, quiet)).toBe(Math.max(...ratios));
    }
  });

  test("of a fire that no table covers is far beyond its limit, and a number", () => {
    const use = gateUse("fire", memberWith("10DT24", "88-S"), 40, {...quiet, fire: {...FIRE, hours: 4}}) as number;
    expect(use).toBeGreaterThan(1);
    expect(use).toBeLessThan(100);
  });
});

describe("gates", () => {
  test("let a member pass, or allow nothing", () => {
    expect(limitOf("transfer", memberWith("10DT24", "68-S", {releaseStrengthPsi: 4500}), 44)).toBeUndefined();
    expect(limitOf("transfer", memberWith("10DT24", "148-S"), 44)).toBe(0);
    expect(limitOf("fire", TOPPED, 44, {fire: FIRE})).toBeUndefined();
    expect(limitOf("fire", TEE, 44, {fire: FIRE})).toBe(0);
    expect(limitOf("vibration", TOPPED, 36, {walking: "quiet"})).toBeUndefined();
    expect(limitOf("vibration", memberWith("4FS4", "66-S"), 30, {walking: "quiet"})).toBe(0);
    expect(limitOf("hauling", TEE, 44)).toBeUndefined();
    expect(limitOf("hauling", memberWith("15DT34", "188-S"), 70)).toBe(0);
    expect(limitOf("stripping", memberWith("10DT24", "48-S"), 40)).toBeUndefined();
    expect(limitOf("stripping", memberWith("10DT24", "148-S"), 30)).toBe(0);
  });

  test("ask nothing where nothing is asked", () => {
    expect(limitOf("fire", TEE, 44)).toBeUndefined();
    expect(limitOf("vibration", memberWith("4FS4", "66-S"), 30)).toBeUndefined();
  });

  test("govern with nothing left once they fail", () => {
    const {safeLoadPsf, governs} = safeLoad(TEE, 40, {...handbookCriteria(false), limits: [...LOAD_LIMITS, "fire"], fire: FIRE});
    expect([safeLoadPsf, governs]).toEqual([0, "fire"]);
  });
});

describe("the list of limits", () => {
  test("has loads and gates, each once", () => {
    expect([...LOAD_LIMITS, ...GATES]).toEqual(LIMITS);
    expect(GATES).toEqual(["transfer", "soffit compression", "vibration", "fire", "stripping", "hauling"]);
  });

  test("tells those of the handbook's tables, those of every floor, and the gates that a search minds", () => {
    expect(HANDBOOK_LIMITS).toEqual(["strength", "development", "shear", "service tension", "sustained compression", "total compression", "bearing"]);
    // Camber counts where a floor asks for it; steel in the top cures stripping, and a permit a heavy piece.
    expect(USUAL_LIMITS).toEqual(LOAD_LIMITS.filter((name) => name !== "camber"));
    expect(WORKING_GATES).toEqual(GATES.filter((name) => name !== "stripping" && name !== "hauling"));
  });

  test("gives each a letter and a color, and each that bounds the load a line of its own; gates draw none", () => {
    const looks = LIMITS.map((name) => limitNamed(name).look);
    expect(new Set(looks.map(({letter}) => letter)).size).toBe(LIMITS.length);
    for (const {letter, color} of looks) expect(`${letter} ${color}`).toMatch(/^[A-Z] [a-z-]+$/);
    const lines = LOAD_LIMITS.map((name) => limitNamed(name).look);
    expect(new Set(lines.map(({line}) => line)).size).toBe(LOAD_LIMITS.length);
    expect(new Set(lines.map(({dash}) => dash)).size).toBe(LOAD_LIMITS.length);
    for (const name of GATES) expect(limitNamed(name).look).toMatchObject({line: "none", dash: undefined, color: "edge"});
  });

  test("knows whom a limit cannot bound: a bare member has no contact, class C no limit in tension, other classes no cracks to control", () => {
    const met = (name: LimitName, member: Member, tensionClass: Criteria["tensionClass"]) => limitNamed(name).applies?.(member, {...handbookCriteria(true), tensionClass}) ?? true;
    expect([met("horizontal shear", TEE, "T"), met("horizontal shear", TOPPED, "T")]).toEqual([false, true]);
    expect(["U", "T", "C"].map((one) => met("service tension", TEE, one as "T"))).toEqual([true, true, false]);
    expect(["U", "T", "C"].map((one) => met("crack control", TEE, one as "T"))).toEqual([false, false, true]);
    expect(LIMITS.filter((name) => limitNamed(name).applies)).toEqual(["horizontal shear", "service tension", "crack control"]);
  });
});
