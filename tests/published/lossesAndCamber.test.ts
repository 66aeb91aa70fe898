// P. Zia, H. K. Preston, N. L. Scott and E. B. Workman, Estimating prestress losses, Concrete International, June 1979, and
// L. D. Martin, PCI Journal, January 1977. The factors of elastic shortening and creep were seen in text;
// the other constants are from memory.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.lossesAndCamber);

describe("constants of losses and camber", () => {
  it("has all its rows", () => expect(rows).toHaveLength(13));
  assertRows(rows);
});
