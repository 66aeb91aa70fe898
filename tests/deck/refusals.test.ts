import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {candidates, evaluate} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");
const TEE = {"deck.member": "10DT24", "deck.pattern": "68-S"};
const PLANK = {"deck.member": "4HC8", "deck.pattern": "76-S"};
const tee = (dimensions: Record<string, number>, pattern = "68-S") => ({...TEE, "deck.pattern": pattern, "deck.dimensions": dimensions});
const plank = (dimensions: Record<string, number>) => ({...PLANK, "deck.dimensions": dimensions});

// Everything a reader can do to a deck that cannot be cast or computed, with the sentence that answers it. First what a
// field refuses by itself, then what only shows when the parts meet.
const REFUSED: readonly (readonly [changes: Record<string, unknown>, path: string, message: string])[] = [
  [{"bay.spanFt": -3}, "bay.spanFt", "span: -3 ft is not possible (10 to 150 ft)"],
  [{"bay.spanFt": 9.9}, "bay.spanFt", "span: 9.9 ft is not possible (10 to 150 ft)"],
  [{"bay.spanFt": 150.5}, "bay.spanFt", "span: 150.5 ft is not possible (10 to 150 ft)"],
  [{"deck.strengthPsi": 2900}, "deck.strengthPsi", "concrete strength: 2900 psi is not possible (3000 to 12000 psi)"],
  [{"deck.strengthPsi": 12500}, "deck.strengthPsi", "concrete strength: 12500 psi is not possible (3000 to 12000 psi)"],
  [{"deck.releaseStrengthPsi": 2000}, "deck.releaseStrengthPsi", "release strength: 2000 psi is not possible (2500 to 10000 psi)"],
  [{"deck.strengthPsi": 4000, "deck.releaseStrengthPsi": 4300}, "deck.releaseStrengthPsi", "release strength: 4300 psi is not possible (2500 to 4000 psi)"],
  [{"deck.toppingIn": -1}, "deck.toppingIn", "topping thickness: -1 in is not possible (0 to 6 in)"],
  [{"deck.toppingIn": 7}, "deck.toppingIn", "topping thickness: 7 in is not possible (0 to 6 in)"],
  [{"deck.toppingStrengthPsi": 9000}, "deck.toppingStrengthPsi", "topping strength: 9000 psi is not possible (2500 to 8000 psi)"],
  [{"criteria.humidityPercent": 20}, "criteria.humidityPercent", "relative humidity: 20 % is not possible (30 to 100 %)"],
  [{"criteria.humidityPercent": 101}, "criteria.humidityPercent", "relative humidity: 101 % is not possible (30 to 100 %)"],
  [{"deck.pattern": "10/8"}, "deck.pattern",
    `strand pattern: "10/8" is not possible (strands 1 to 99, diameter 6 to 10 sixteenths, then -S, -D1 or -D2; for example 108-S or 128-D1)`],
  [{...TEE, "deck.pattern": "78-S"}, "deck.pattern", `strand pattern: "78-S" is not possible (a multiple of 2 strands, the same in each stem)`],
  [{...TEE, "deck.pattern": "248-S"}, "deck.pattern", `strand pattern: "248-S" is not possible (at most 22 strands of this profile fit a 10DT24)`],
  [{...TEE, "deck.pattern": "228-D1"}, "deck.pattern", `strand pattern: "228-D1" is not possible (at most 20 strands of this profile fit a 10DT24)`],
  [tee({stemBottomIn: 2.5}, "610-S"), "deck.pattern",
    `strand pattern: "610-S" is not possible (a 0.6 in strand needs a stem 2.85 in wide, with 1.125 in of concrete on either side; this one has 2.8 in at its lowest strand)`],
  [{...TEE, "deck.strandHeightCenterIn": 23.5}, "deck.strandHeightCenterIn",
    "strand height at midspan: 23.5 in is not possible (1.5 to 22.5 in with 3 strands in each stem of a 24 in member)"],
  [{...PLANK, "deck.pattern": "156-S"}, "deck.pattern", `strand pattern: "156-S" is not possible (at most 14 strands of this profile fit a 4HC8)`],
  [{...PLANK, "deck.pattern": "88-D1"}, "deck.pattern", `strand pattern: "88-D1" is not possible (straight strands (S) in a hollow core)`],
  [{...PLANK, "deck.strandHeightEndIn": 4}, "deck.strandHeightEndIn",
    "strand height at the ends: 4 in is not possible (1 to 2.9 in: higher up 7 strands of a 4HC8 would stand in its voids)"],
  [{...PLANK, "deck.strandHeightEndIn": 8}, "deck.strandHeightEndIn", "strand height at the ends: 8 in is not possible (1 to 7 in in an 8 in member)"],
  [tee({flangeIn: 30}), "deck.dimensions.flangeIn", "flange: 30 in is not possible (1.5 to 8 in)"],
  [tee({depthIn: 4}), "deck.dimensions.depthIn", "depth: 4 in is not possible (10 to 60 in)"],
  [tee({stemBottomIn: 7}), "deck.dimensions.stemTopIn", "stem width at the flange: 5.75 in is not possible (7 to 30 in)"],
  [tee({stemSpacingIn: 118}), "deck.dimensions.stemSpacingIn", "stem spacing: 118 in is not possible (5.75 to 114.25 in)"],
  [plank({voidDiameterIn: 9}), "deck.dimensions.voidDiameterIn", "void diameter: 9 in is not possible (above 0 to 7.25 in)"],
  [plank({voidCount: 12}), "deck.dimensions.voidDiameterIn", "void diameter: 6 in is not possible (above 0 to 3.25 in)"],
  [{"deck.member": "9DT9"}, "deck.member", `deck member: "9DT9" is not possible (${catalog.deckMembers.map((row) => row.designation).join(", ")})`],
];

describe("a deck that cannot be", () => {
  test.each(REFUSED)("%o is refused at %s", (changes, path, message) => {
    refused(() => evaluate(withValues(LIBRARY, changes), catalog), {path, message});
  });

  test("is refused by the search as by the pipeline", () => {
    for (const changes of [{"deck.pattern": "78-S"}, {"deck.member": "9DT9"}, tee({flangeIn: 30})]) {
      const design = withValues(LIBRARY, changes);
      const {message} = refused(() => evaluate(design, catalog));
      refused(() => candidates(design, catalog), {message});
    }
  });

  test("is refused even where no table of fields was asked: members and safe loads guard themselves", () => {
    const unchecked = (changes: Partial<Design["deck"]>): Design => ({...LIBRARY, deck: {...LIBRARY.deck, ...changes}});
    refused(() => deckMember(unchecked({strengthPsi: NaN}), catalog), {path: "deck.strengthPsi", value: NaN});
    refused(() => deckMember(unchecked({toppingIn: Infinity}), catalog), {path: "deck.toppingIn"});
    refused(() => deckMember({...LIBRARY, criteria: {...LIBRARY.criteria, humidityPercent: -5}}, catalog), {message: /^relative humidity: -5 % is not possible \(30 to 100 %\)/});
    for (const spanFt of [9.9, 150.1, -3, NaN]) {
      refused(() => safeLoad(memberWith("10DT24", "68-S"), spanFt, handbookCriteria(false)), {path: "spanFt", message: `span: ${spanFt} ft is not possible (10 to 150 ft)`});
    }
  });

  test("is one step away from a deck that can be", () => {
    for (const changes of [{"bay.spanFt": 10}, {"bay.spanFt": 150}, {...TEE, "deck.pattern": "228-S"}, {...TEE, "deck.pattern": "208-D1"}, tee({stemBottomIn: 2.6}, "610-S"),
      {...TEE, "deck.strandHeightCenterIn": 22.5}, {...PLANK, "deck.strandHeightEndIn": 2.9}, plank({voidDiameterIn: 7.25}), tee({flangeIn: 8})]) {
      expect(() => evaluate(withValues(LIBRARY, changes), catalog), JSON.stringify(changes)).not.toThrow();
    }
  });
});
