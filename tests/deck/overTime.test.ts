import {describe, expect, it} from "vitest";
import {camberOverTime, deckLossMethods, stressOverTime} from "../../lib/deck/overTime.js";
import {evaluate} from "../../lib/evaluate.js";
import {timeCamber} from "../../lib/member/timeCamber.js";
import {timeModels} from "../../lib/member/timeLosses.js";
import {USUAL_SCHEDULE} from "../../lib/prestress/schedule.js";
import {withValues} from "../../lib/design/edit.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";
import {once} from "../support/once.js";

describe.each(seeds)("the deck of $id through time", ({design}) => {
  const evaluated = once(() => evaluate(design, catalog));

  it("begins with the cut and ends as both methods' comparison says", () => {
    const result = evaluated();
    const {history, moments, halfDay} = stressOverTime(result, USUAL_SCHEDULE);
    expect(moments.map(({moment}) => moment)).toEqual(["release", "erection", ...(result.member.topping ? ["topping"] : []), "loading", "end"]);
    expect(history.at(-1)?.stressKsi).toBe(deckLossMethods(result, USUAL_SCHEDULE).ownKsi);
    expect(halfDay).toBeGreaterThan(USUAL_SCHEDULE.releaseDay);
    expect(halfDay).toBeLessThan(365);
  });

  // Two methods that share nothing but the elastic movements: growth fitted to measured members, and growth by ACI 209.
  it("has a camber near the multiplier method's when set", () => {
    const result = evaluated();
    const {history, moments, highest, end} = camberOverTime(result, USUAL_SCHEDULE);
    expect(moments.map(({moment}) => moment)).toEqual(["release", "erection", ...(result.member.topping ? ["topping"] : []), "loading", "end"]);
    expect(highest.camberIn).toBe(Math.max(...history.map((row) => row.camberIn)));
    const set = history.find((row) => row.moment === "erection");
    expect(Math.abs((set?.camberIn ?? NaN) - result.deck.camber.erectionIn)).toBeLessThan(0.15);
    expect(highest.camberIn).toBeGreaterThanOrEqual(end.camberIn);
    const wet = camberOverTime(result, USUAL_SCHEDULE, false).end.camberIn;
    if (result.member.topping) expect(wet).toBeGreaterThan(end.camberIn);
    else expect(wet).toBe(end.camberIn);
  });

  it("sags at once by the floor's dead load as it comes on: 5 w L^4 / 384 E I, its concrete as stiff as at that age", () => {
    const result = evaluated();
    const {history} = camberOverTime(result, USUAL_SCHEDULE);
    const i = history.findIndex((row) => row.moment === "loading");
    const dropIn = (history[i - 1]?.elasticIn ?? NaN) - (history[i]?.elasticIn ?? NaN);
    const {member, deck} = result;
    const plf = deck.superimposedDeadPsf * member.widthFt;
    const sagIn = (5 * (plf / 12000) * (12 * design.bay.spanFt) ** 4) / (384 * member.modulusKsi * member.full.inertiaIn4);
    expect(sagIn).toBeGreaterThan(0);
    expect(dropIn / sagIn).toBeGreaterThan(0.85);
    expect(dropIn / sagIn).toBeLessThan(1.15);
  });

  it("refuses a schedule that cannot be", () => {
    const result = evaluated();
    refused(() => camberOverTime(result, {...USUAL_SCHEDULE, loadingDay: 20}), {path: "loadingDay"});
    refused(() => stressOverTime(result, {...USUAL_SCHEDULE, releaseDay: 0}), {path: "releaseDay"});
  });
});

describe("a topping that fills the camber", () => {
  const design = withValues(seed("classroom-wing"), {"deck.member": "10DT24", "deck.pattern": "48-S", "deck.toppingIn": 3, "bay.spanFt": 60});
  const evaluated = once(() => evaluate(design, catalog));

  it("is in the floor's camber by multipliers, where the deck's own counts the least thickness all along", () => {
    const result = evaluated();
    expect(result.topping?.settled).toBe(true);
    expect(result.camber.longTermIn).toBe(result.topping?.camber.longTermIn);
    expect(result.camber.longTermIn).toBeLessThan(result.deck.camber.longTermIn - 0.1);
  });

  it("is in its camber by time steps as well: it sags the bare member by as much more at once", () => {
    const result = evaluated();
    const light = camberOverTime({...result, camber: result.deck.camber}, USUAL_SCHEDULE).history;
    const full = camberOverTime(result, USUAL_SCHEDULE).history;
    const dropIn = (rows: typeof full) => {
      const i = rows.findIndex((row) => row.moment === "topping");
      return (rows[i - 1]?.elasticIn ?? NaN) - (rows[i]?.elasticIn ?? NaN);
    };
    const share = result.camber.toppingIn / result.deck.camber.toppingIn;
    expect(dropIn(full) / dropIn(light)).toBeCloseTo(share, 2);
    // As light as the deck counts it, it is the member's own topping.
    const own = timeCamber(result.member, design.bay.spanFt, result.deck.superimposedDeadPsf * result.member.widthFt, {schedule: USUAL_SCHEDULE, models: timeModels(result.member)});
    expect(light.map(({camberIn}) => camberIn)).toEqual(own.map(({camberIn}) => expect.closeTo(camberIn, 9) as number));
    // Twice the sag, twice the weight.
    const twice = camberOverTime({...result, camber: {...result.deck.camber, toppingIn: 2 * result.deck.camber.toppingIn}}, USUAL_SCHEDULE).history;
    expect(dropIn(twice) / dropIn(light)).toBeCloseTo(2, 6);
  });
});
