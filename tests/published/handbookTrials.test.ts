import {expect, test} from "vitest";
import {handbookTrials} from "../../lib/published/handbookTrials.js";
import {readPublished} from "../../lib/published/tables.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {catalog} from "../support/designs.js";

const published = () => readPublished(readRawTables());

test("what the page of methods tells of the handbook's tables is plain, whole, and says what its sentences say", () => {
  const trials = handbookTrials(catalog, published());
  // It goes to the page as text.
  expect(JSON.parse(JSON.stringify(trials))).toEqual(trials);
  expect(trials.allowances.map(({allowance}) => allowance)).toEqual([0.02, 0.03, 0.04]);
  expect([trials.deckCells, trials.beamCells].every((cells) => cells > 10)).toBe(true);
  // The true outline has less surface than upright stems would, so more volume over it.
  expect(trials.surface.ours).not.toBe(trials.surface.published);
  expect(trials.plank.difference).toBeLessThan(0);
  // To the nearest, one span would require more than another allows; rounded down, all agree.
  expect(trials.nearest.leastKipFt).toBeGreaterThan(trials.nearest.mostKipFt);
  expect(trials.down.leastKipFt).toBeLessThanOrEqual(trials.down.mostKipFt);
});

test("a published table that lacks what is told of is no table to build from", () => {
  expect(() => handbookTrials(catalog, {...published(), sections: []})).toThrow(/volume to surface of 10DT24/);
});
