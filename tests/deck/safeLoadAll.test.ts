import {test} from "vitest";
import {catalog} from "../support/designs.js";
import {expectLeastLoads} from "./wholeSpan.js";

test.each(catalog.deckMembers.filter(({family}) => family === "double tee").map((row) => [row.designation, row] as const))(
  "the places that a limit is looked at find the least load of a depressed %s along its whole span", (designation, row) => {
    expectLeastLoads(designation, row, [30, 60, 90]);
  });
