import {test} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {catalog} from "../support/designs.js";
import {expectLeastLoads} from "./wholeSpan.js";

test.each([["10DT24", 50], ["12DT32", 70]] as const)("the places that a limit is looked at find the least load of a depressed %s along its whole %i ft", (designation, spanFt) => {
  expectLeastLoads(designation, deckRow(catalog, designation), [spanFt]);
});
