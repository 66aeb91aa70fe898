import {expect, test} from "vitest";
import {changesForMember} from "../../lib/deck/choose.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalogue, seeds} from "../support/designs.js";

test("any member of the catalogue put into any starter makes a design that can be evaluated", () => {
  for (const {design} of seeds) for (const {designation} of catalogue.deckMembers) {
    const changed = withValues(design, changesForMember(design, catalogue, designation));
    expect(() => evaluate(changed, catalogue), designation).not.toThrow();
  }
});
