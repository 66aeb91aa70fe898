import {describe, expect, test} from "vitest";
import {changesForCandidate, changesForMember, changesForRoof} from "../../lib/deck/choose.js";
import {withValues} from "../../lib/design/edit.js";
import {catalog, seed} from "../support/designs.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");

describe("changesForCandidate", () => {
  test("puts member, pattern and topping into the design and drops what belonged to the old member", () => {
    const given = withValues(LIBRARY, {"deck.strandHeightCenterIn": 5, "deck.dimensions": {depthIn: 33}});
    const changed = withValues(given, changesForCandidate({designation: "10DT34", pattern: "128-S", toppingIn: 0}));
    expect(changed.deck).toEqual({...LIBRARY.deck, member: "10DT34", pattern: "128-S", toppingIn: 0});
  });

  test("takes a candidate's own concrete along where it has one", () => {
    const own = {concreteKind: "sand-lightweight", strengthPsi: 7000, releaseStrengthPsi: 5000} as const;
    const changed = withValues(LIBRARY, changesForCandidate({designation: "10DT34", pattern: "128-S", toppingIn: 0, ...own}));
    expect(changed.deck).toMatchObject({member: "10DT34", concrete: "sand-lightweight", strengthPsi: 7000, releaseStrengthPsi: 5000});
    expect(changed.deck.toppingStrengthPsi).toBe(LIBRARY.deck.toppingStrengthPsi);
  });
});

describe("changesForRoof", () => {
  test("puts member, pattern and topping on the roof, drops its strands' own heights, and leaves the floor's deck", () => {
    const given = withValues(LIBRARY, {"roof.strandHeightEndIn": 9, "roof.strandHeightCenterIn": 5});
    const changed = withValues(given, changesForRoof({designation: "10DT24", pattern: "68-S", toppingIn: 0}));
    expect(changed.roof).toEqual({...LIBRARY.roof, member: "10DT24", pattern: "68-S", toppingIn: 0});
    expect(changed.deck).toEqual(LIBRARY.deck);
  });
});

describe("changesForMember", () => {
  test("keeps a pattern that the new member can hold", () => {
    expect(changesForMember(LIBRARY, catalog, "10DT24")).toMatchObject({"deck.member": "10DT24", "deck.pattern": "108-S", "deck.toppingIn": 2});
  });

  test("takes the nearest pattern where it cannot", () => {
    const many = withValues(LIBRARY, {"deck.pattern": "228-S"});
    expect(changesForMember(many, catalog, "10DT24")["deck.pattern"]).toBe("168-S");
    expect(changesForMember(withValues(LIBRARY, {"deck.pattern": "108-D1"}), catalog, "4HC8")["deck.pattern"]).toMatch(/^7\d-S$/);
  });

  test("keeps strands depressed and as thick as they were, and takes the fewer of two numbers that are as near", () => {
    const from = (pattern: string) => changesForMember(withValues(LIBRARY, {"deck.pattern": pattern}), catalog, "10DT24")["deck.pattern"];
    expect(from("228-D1")).toBe("168-D1");
    expect(from("2210-S")).toBe("1610-S");
    expect(from("78-S")).toBe("68-S");
  });

  test("leaves a plank bare that was bare", () => {
    expect(changesForMember(withValues(LIBRARY, {"deck.toppingIn": 0}), catalog, "4HC8")["deck.toppingIn"]).toBe(0);
  });

  test("gives a bare tee its topping and takes it from a pretopped one", () => {
    expect(changesForMember(LIBRARY, catalog, "10DT34")["deck.toppingIn"]).toBe(0);
    expect(changesForMember(withValues(LIBRARY, {"deck.toppingIn": 0}), catalog, "10DT24")["deck.toppingIn"]).toBe(2);
    expect(changesForMember(withValues(LIBRARY, {"deck.toppingIn": 3}), catalog, "4HC8")["deck.toppingIn"]).toBe(3);
  });

  test("refuses a member that is not in the catalog", () => {
    refused(() => changesForMember(LIBRARY, catalog, "9DT9"), {path: "deck.member"});
  });
});
