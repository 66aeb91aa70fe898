// PCI Design Handbook, MNL-120, chapter 3: how many cells of each printed row of safe loads come back, seen in text.
import {describe, expect, it} from "vitest";
import {agreement} from "../../lib/published/agreement.js";
import {comparisons} from "./support.js";

const pages = agreement(comparisons.deckLoads);

describe("agreement with the handbook's load tables, page by page", () => {
  it("covers three printed rows", () => expect(pages.map((page) => page.page)).toEqual(["10DT24, 68-S", "10DT24, 88-S", "4HC8, 66-S"]));

  for (const [index, cells, toTheDigit] of [[0, 14, 14], [1, 16, 15], [2, 17, 16]] as const) {
    const page = pages[index]!;
    it(`${page.page}: all ${cells} strength cells within 1, 2 and 5 psf, ${toTheDigit} to the printed digit (seen in text)`, () => {
      expect(page.strengthCells).toBe(cells);
      expect(page.within).toEqual([cells, cells, cells]);
      expect(page.toTheDigit).toBeGreaterThanOrEqual(toTheDigit);
    });
  }

  it("counts the cells that shear limits apart; ours, by the code's plain rules, are up to a fifth higher there", () => {
    expect(pages.map((page) => page.shearCells)).toEqual([0, 0, 7]);
    for (const {row, safeLoad} of comparisons.deckLoads) if (row.limit === "shear") {
      expect(safeLoad.difference).toBeGreaterThan(0);
      expect(safeLoad.difference / row.safeLoadPsf).toBeLessThan(0.2);
    }
  });
});
