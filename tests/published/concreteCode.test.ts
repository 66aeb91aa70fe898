// ACI 318-19: 16.4 contact shear, 19.2 concrete, 21.2 strength reduction, 22.2.2.4 stress block, 22.5.6 shear, 24.2 sag,
// 24.5 stress limits, 25.4.8.1 transfer and development length. The limits of 24.5 were seen in metric units, most other
// coefficients as ACI 318-11 had them; each row says so.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.aci);

describe("limits and coefficients by ACI 318", () => {
  it("has all its rows", () => expect(rows).toHaveLength(32));
  assertRows(rows);
});
