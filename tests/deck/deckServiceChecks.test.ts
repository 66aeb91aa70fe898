import {describe, expect, test} from "vitest";
import type {Check} from "../../lib/checks.js";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {cellOf} from "../../lib/deck/cell.js";
import {deckChecks} from "../../lib/deck/deckChecks.js";
import {deckState} from "../../lib/deck/deckResult.js";
import type {DeckService} from "../../lib/deck/deckService.js";
import {LOAD_LIMITS} from "../../lib/deck/limits.js";
import {fireNeeds, fireRating} from "../../lib/member/fire.js";
import {handledChecks} from "../../lib/member/handledChecks.js";
import type {Member} from "../../lib/member/member.js";
import type {Handled} from "../../lib/member/stripping.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {once} from "../support/once.js";

const FLOOR = once((): Criteria => ({...handbookCriteria(true), superimposedDeadPsf: 10, sustainedLiveShare: 0.3, limits: LOAD_LIMITS}));
const TEE = once(() => memberWith("10DT24", "88-S"));
const TOPPED = once(() => memberWith("10DT24", "88-S", {toppingIn: 2}));

const checksOf = (member: Member, spanFt: number, livePsf: number, changes: Partial<Criteria> = {}): Map<string, Check> =>
  new Map(deckState(member, spanFt, {...FLOOR(), ...changes}, livePsf).checks.map((check) => [check.id, check]));

/** The service checks of a tee on 44 ft with some of what it does exchanged. */
const withService = (changes: (service: DeckService) => Partial<DeckService>, criteria: Partial<Criteria> = {}): Map<string, Check> => {
  const rules = {...FLOOR(), ...criteria};
  const state = deckState(TEE(), 44, rules, 50);
  const service = {...state.service, ...changes(state.service)};
  return new Map(deckChecks(cellOf(TEE(), 44, rules), rules.limits, {...state, service}, state.safe).map((check) => [check.id, check]));
};

describe("checks of the deck beside its strength", () => {
  test("ask of the contact with a topping only where there is one", () => {
    expect(checksOf(TOPPED(), 40, 50).has("deck contact")).toBe(true);
    expect(checksOf(TEE(), 40, 50).has("deck contact")).toBe(false);
  });

  test("weigh member, topping and all load at midspan against the moment that crack control allows", () => {
    const {service} = deckState(TOPPED(), 40, FLOOR(), 50);
    const psf = (TOPPED().selfWeightPlf + TOPPED().toppingWeightPlf) / 10 + 10 + 50;
    expect(service.serviceMomentKipIn).toBeCloseTo((psf * 10 * 40 ** 2 * 12) / 8000, 6);
    expect([deckState(TEE(), 40, FLOOR(), 50).service.contact, service.vibration, service.fire]).toEqual([undefined, undefined, undefined]);
  });

  test("hold tension in the soffit against its class, and cracks of class C against the stretch of their strands", () => {
    const classT = checksOf(TEE(), 44, 50);
    expect(classT.has("deck tension")).toBe(true);
    expect(classT.has("deck crack control")).toBe(false);
    const classC = checksOf(TEE(), 44, 50, {tensionClass: "C"});
    expect(classC.has("deck tension")).toBe(false);
    expect(classC.get("deck crack control")?.verdict).toBe("ok");
    expect(checksOf(TEE(), 64, 60, {tensionClass: "C"}).get("deck crack control")?.verdict).toBe("fails");
  });

  test("ask for no tension where the soffit stays pressed", () => {
    expect(checksOf(memberWith("10DT24", "148-S"), 24, 20).get("deck tension")?.demand).toBe(0);
    const {soffit, checks} = deckState(TEE(), 50, FLOOR(), 50);
    expect(checks.find(({id}) => id === "deck tension")?.demand).toBe(-soffit.bottomKsi);
    expect(soffit.bottomKsi).toBeLessThan(0);
  });

  test("call the sag by what it may disturb, and say whether the soffit cracks on the way", () => {
    const live = checksOf(TEE(), 40, 30, {sagLimit: "L/360"}).get("deck sag");
    expect(live?.label).toBe("Deflection under live load, L/360");
    expect(live?.message).toBe("It stays uncracked and deflects little enough.");
    expect(checksOf(TEE(), 40, 30, {sagLimit: "L/480"}).get("deck sag")?.label).toBe("Movement after partitions are in, L/480");
    expect(checksOf(TEE(), 46, 70, {sagLimit: "L/360"}).get("deck sag")?.message).toBe("It cracks under part of the load and still deflects little enough.");
  });

  test("are content with a level floor after years, where its camber counts", () => {
    expect(withService(() => ({lastingCamberIn: 0})).get("deck camber")?.verdict).toBe("ok");
    expect(withService(() => ({lastingCamberIn: -0.01})).get("deck camber")?.verdict).toBe("fails");
    expect(checksOf(TEE(), 44, 50, {limits: LOAD_LIMITS.filter((name) => name !== "camber")}).has("deck camber")).toBe(false);
  });

  test("tell shaking in percent of gravity, and a frequency of 3 Hz as the least", () => {
    const {service, checks} = deckState(TEE(), 44, {...FLOOR(), walking: "quiet"}, 50);
    const check = (id: string) => checks.find((entry) => entry.id === id);
    expect(check("deck walking")).toMatchObject({demand: 100 * service.vibration!.acceleration, capacity: 0.5});
    expect(check("deck frequency")).toMatchObject({demand: 3, capacity: service.vibration!.frequencyHz, sense: "at least"});
    expect(checksOf(TEE(), 44, 50).has("deck walking")).toBe(false);
  });
});

describe("checks of a fire", () => {
  const fire = {tables: catalog.fire, aggregate: "siliceous", restrained: false} as const;
  const rated = (byThicknessHours: number, byCoverHours: number | undefined, restrained = false) =>
    withService((service) => ({fire: {...service.fire!, byThicknessHours, byCoverHours}}), {fire: {...fire, restrained, hours: 2}});

  test("are content with the very hours asked, in thickness and in cover", () => {
    const met = rated(2, 2);
    expect([met.get("deck fire thickness")?.verdict, met.get("deck fire cover")?.verdict]).toEqual(["ok", "ok"]);
    const missed = rated(1.9, 1.9);
    expect([missed.get("deck fire thickness")?.verdict, missed.get("deck fire cover")?.verdict]).toEqual(["fails", "fails"]);
  });

  test("say that stems smaller than the table's are beyond it", () => {
    expect(rated(3, undefined).get("deck fire cover")).toMatchObject({verdict: "out of range", demand: 2});
  });

  test("name what would keep the strands cooler: a frame that restrains the floor only where none does", () => {
    expect(rated(3, 1).get("deck fire cover")?.message).toContain("a frame that restrains the floor");
    expect(rated(3, 1, true).get("deck fire cover")?.message).not.toContain("restrains");
  });

  test("name wider stems or a coating where no height of strands does, and a frame only where it would be enough", () => {
    // Stems of an 18 in tee, 3.75 in at the foot: for 4 h the table gives them no cover, with or without a frame; for 2 h it does.
    const member = memberWith("8DT18", "28-S");
    const cover = (hours: number, restrained: boolean) => checksOf(member, 20, 20, {fire: {...fire, restrained, hours}}).get("deck fire cover");
    for (const restrained of [true, false]) {
      expect(fireNeeds(member, {...fire, restrained}, 4).coverIn).toBeUndefined();
      expect(cover(4, restrained)).toMatchObject({verdict: "fails", message: expect.stringContaining("wider stems or a coating")});
      expect(cover(4, restrained)?.message).not.toMatch(/frame|higher/);
    }
    expect(fireRating(member, {...fire, restrained: true}).byCoverHours).toBeGreaterThanOrEqual(2);
    expect(cover(2, false)?.message).toContain("a frame that restrains the floor");
    expect(cover(2, true)?.verdict).toBe("ok");
  });

  test("are none where no hours are asked", () => {
    expect(checksOf(TEE(), 44, 50).has("deck fire thickness")).toBe(false);
    expect(checksOf(TEE(), 44, 50, {fire: {...fire, hours: 1}}).has("deck fire thickness")).toBe(true);
  });
});

describe("checks of a piece on its way", () => {
  const hauled = (handling: Partial<DeckService["handling"]>) => withService((service) => ({handling: {...service.handling, notes: [], ...handling}})).get("deck hauling");

  test("tell how many pieces a truck takes, up to its payload of 48 kip, and ask for a permit beyond", () => {
    expect(hauled({weightKip: 24, piecesPerTruck: 2})).toMatchObject({verdict: "ok", message: "A truck takes 2 of them as a legal load."});
    expect(hauled({weightKip: 48, piecesPerTruck: 1})?.word).toBeUndefined();
    expect(hauled({weightKip: 48.1, notes: ["Heavy."]})).toMatchObject({word: "needs a permit", message: "Heavy."});
    expect(hauled({weightKip: 48, notes: ["Wide."]})?.word).toBe("see the note");
    expect(hauled({weightKip: 20, notes: ["Wide.", "Long."]})).toMatchObject({word: "see the note", message: "Wide. Long."});
  });

  test("look at a hold-down only where strands are depressed", () => {
    expect(checksOf(TEE(), 44, 50).has("deck hold-down")).toBe(false);
    expect(checksOf(memberWith("10DT24", "128-D1"), 44, 50).get("deck hold-down")).toBeDefined();
  });

  const state: Handled = {
    ...({} as Handled), moment: "stripping", topTensionKsi: 0.3, soffitTensionKsi: 0.3, compressionKsi: 2, allowedTensionKsi: 0.3, allowedCompressionKsi: 2, topSteelIn2: 0.456,
  };
  const verdicts = (changes: Partial<Handled>) => handledChecks({...state, ...changes}).map(({verdict}) => verdict);

  test("ask for bars where the top is pulled beyond its limit, and fail where the soffit is, or the squeeze is too hard", () => {
    expect(verdicts({})).not.toContain("fails");
    expect(verdicts({soffitTensionKsi: 0.31})[1]).toBe("fails");
    expect(verdicts({compressionKsi: 2.01})[2]).toBe("fails");
    const [top] = handledChecks({...state, topTensionKsi: 0.31});
    expect(top).toMatchObject({word: "needs top steel", id: "stripping tension top"});
    expect(top?.message).toContain("0.46 in² of bonded bars");
    expect(handledChecks(state)[0]?.word).toBeUndefined();
  });

  test("are reported for the form and for the road", () => {
    const ids = [...checksOf(TEE(), 44, 50).keys()];
    expect(ids).toEqual(expect.arrayContaining(["stripping tension top", "stripping tension soffit", "stripping compression", "hauling tension top", "hauling tension soffit", "hauling compression"]));
  });
});

describe("checks of the deck's strength", () => {
  test("name what mends too much shear: stems by their depth, the webs of a plank by stems instead", () => {
    const message = (member: Member, spanFt: number) => checksOf(member, spanFt, 2000).get("deck shear")?.message;
    expect(message(TEE(), 40)).toContain("The stems are too thin");
    expect(message(memberWith("4HC8", "66-S"), 20)).toContain("tees, whose stems take stirrups");
  });

  test("name the place that is squeezed most, and what mends it there", () => {
    const soffit = checksOf(memberWith("12DT32", "228-S", {toppingIn: 2, releaseStrengthPsi: 5000}), 30, 50).get("deck sustained compression");
    expect(soffit?.message).toContain("fewer strands");
    const top = checksOf(memberWith("10DT24", "148-S"), 60, 900);
    expect(top.get("deck total compression")?.message).toContain("The top, at midspan, is compressed too hard");
    expect(top.get("deck sustained compression")?.message).toMatch(/^The top, at midspan, stays compressed .*: stronger concrete/);
  });

  test("tell their unit and clause, each of them, whatever the member and its class", () => {
    for (const member of [TEE(), TOPPED(), memberWith("4HC8", "66-S")]) for (const tensionClass of ["C", "T"] as const) {
      for (const check of deckState(member, 26, {...FLOOR(), tensionClass}, 50).checks) {
        for (const text of [check.id, check.label, check.unit, check.clause]) expect(text, check.id).toMatch(/\w|%/);
      }
    }
  });

  test("hold the topping against its own strength: 0.45 of 3 ksi for what lasts, 0.6 for all", () => {
    const checks = checksOf(TOPPED(), 40, 50);
    expect(checks.get("topping sustained compression")?.capacity).toBeCloseTo(1.35, 12);
    expect(checks.get("topping compression")?.capacity).toBeCloseTo(1.8, 12);
    expect(checks.get("topping compression")!.demand).toBeGreaterThan(checks.get("topping sustained compression")!.demand);
    expect(checksOf(TEE(), 40, 50).has("topping compression")).toBe(false);
  });
});
