import {describe, expect, it} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {gateUse} from "../../lib/deck/gates.js";
import {LIMITS, limitNamed} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {limitWorking} from "../../lib/steps/cell.js";
import {WORKINGS} from "../../lib/steps/workings.js";
import {catalog, seeds} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

const NAMES = ["development", "sag", "walking", "topSteel", "holdDown"] as const;
const CHANGES = {
  "cracked, with partitions": {"deck.member": "10DT24", "deck.pattern": "48-S", "deck.toppingIn": 0, "criteria.sagLimit": "L/480", "criteria.walking": "busy"},
  "many straight strands": {"deck.member": "10DT24", "deck.pattern": "148-S", "deck.toppingIn": 0, "criteria.walking": "outdoor"},
  "one hold-down": {"deck.member": "12DT32", "deck.pattern": "148-D1", "deck.toppingIn": 3, "criteria.walking": "none"},
  "two hold-downs": {"deck.member": "12DT32", "deck.pattern": "148-D2", "deck.toppingIn": 3, "criteria.walking": "quiet"},
  "a short plank": {"deck.member": "4HC8", "deck.pattern": "76-S", "bay.spanFt": 14, "criteria.sagLimit": "L/240"},
} as const;

describe.each(seeds)("$id", ({design}) => {
  it.each(Object.entries(CHANGES))("%s: ends, sag, walking and hold-down are worked out to the code's number", (_, changes) => {
    const results = evaluate(withValues(design, changes), catalog);
    for (const name of NAMES) checkWorking(WORKINGS[name](results));
    const {service, transfer} = results.deck;
    const last = (name: (typeof NAMES)[number]) => WORKINGS[name](results).steps.at(-1)?.result;
    expect(last("sag")).toBe(service.allowedMovementIn);
    expect(last("walking")).toBe(service.vibration?.acceleration);
    expect(last("holdDown")).toBe(service.holdDown?.forcePerStemKip);
    expect(last("topSteel") ?? 0).toBe(Math.max(...transfer.places.map(({topSteelIn2}) => topSteelIn2)));
    expect(WORKINGS.sag(results).steps.find(({symbol}) => symbol === "I_cr") !== undefined).toBe(service.liveDeflection.uncrackedShare < 1);
    // What counts is the last movement before the limit.
    expect(WORKINGS.sag(results).steps.at(-2)?.result).toBe(service.movementIn);
  });

  it("each limit alone is worked out, and asks nothing where it does not apply", () => {
    const {member, deck, design: {bay: {spanFt}}} = evaluate(design, catalog);
    for (const name of LIMITS) {
      const working = limitWorking(member, spanFt, deck.criteria, name);
      checkWorking(working);
      expect(working.title).toBe(`${name.charAt(0).toUpperCase()}${name.slice(1)}`);
      expect(working.title).toMatch(/^[A-Z]/);
      const psf = safeLoad(member, spanFt, {...deck.criteria, limits: [name]}).limitsPsf[name];
      if (limitNamed(name).kind === "load") expect(working.steps.at(-1)?.result).toBe(psf);
      else expect(working.steps.length > 0).toBe(gateUse(name, member, spanFt, deck.criteria) !== undefined);
    }
  });
});

it("takes every branch: whole and cracked, pressed and pulled tops, straight and depressed strands", () => {
  const all = seeds.flatMap(({design}) => Object.values(CHANGES).map((changes) => evaluate(withValues(design, changes), catalog)));
  for (const name of ["topSteel", "holdDown", "walking"] as const) {
    expect(new Set(all.map((results) => WORKINGS[name](results).steps.length > 0))).toEqual(new Set([true, false]));
  }
  expect(new Set(all.map((results) => results.deck.service.liveDeflection.uncrackedShare < 1))).toEqual(new Set([true, false]));
});
