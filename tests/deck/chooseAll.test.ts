import {expect, test} from "vitest";
import {changesForMember} from "../../lib/deck/choose.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalog, seeds} from "../support/designs.js";

test("any member of the catalog put into any starter makes a design that can be evaluated", () => {
  for (const {design} of seeds) for (const {designation} of catalog.deckMembers) {
    const changed = withValues(design, changesForMember(design, catalog, designation));
    expect(() => evaluate(changed, catalog), designation).not.toThrow();
  }
});
