import {describe, expect, test} from "vitest";
import {reaches} from "../../lib/deck/reach.js";
import type {SafeLoad} from "../../lib/deck/safeLoad.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {gapWords, reachWords} from "../../src/components/charts/reachWords.js";
import {spanLoadData, spanLoadFinding} from "../../src/pages/deck/deckCurves.js";
import {deckSearch} from "../../src/components/shared/deckSearch.js";
import {catalog, seed, seeds} from "../support/designs.js";

const EVERY_KIND = {"consider.fieldToppedTees": true, "consider.pretoppedTees": true, "consider.planks": true};
const searchOf = (design: (typeof seeds)[number]["design"]) => deckSearch(evaluate(design, catalog), catalog);

/** Offices, whose live load may be reduced by the area that a piece carries. */
const OFFICE = withValues(seed("branch-library"), {"loads.rooms": [{name: "Offices", occupancy: "office"}]});

describe.each([...seeds, {id: "an office", design: OFFICE}])("the spans that decks reach for $id", ({design}) => {
  // A wide piece carries more area than a narrow one, so its live load may be reduced by more.
  test.each([20, 40, 60])("take in %d ft where the list says that a deck carries its load there, and only there", (spanFt) => {
    const search = searchOf(withValues(design, {...EVERY_KIND, "bay.spanFt": spanFt}));
    const {curves, demandPsf} = spanLoadData(search);
    expect(curves.find(({own}) => own)?.askedPsf).toBe(demandPsf);
    for (const {id, own, reach} of curves) {
      const candidate = search.found.find((one) => one.id === id);
      if (!candidate) {
        expect(own).toBe(true);
        continue;
      }
      expect(reach !== undefined && reaches(reach, spanFt), id).toBe(candidate.safe.safeLoadPsf >= search.askedPsf(candidate));
    }
  });
});

test("decks of other widths are asked for other loads, and the chart's reach goes by each one's own", () => {
  const {curves, demandPsf} = spanLoadData(searchOf(withValues(OFFICE, {...EVERY_KIND, "bay.spanFt": 60})));
  expect(new Set(curves.map(({askedPsf}) => askedPsf.toFixed(2))).size).toBeGreaterThan(1);
  expect(curves.some(({askedPsf}) => askedPsf < demandPsf)).toBe(true);
});

test("a curve goes on past spans over which the deck carries nothing", () => {
  const slab = withValues(seed("classroom-wing"), {"deck.member": "4FS8", "deck.pattern": "46-S", "deck.toppingIn": 2, "bay.spanFt": 20, "criteria.keepCamber": false});
  const search = searchOf(slab);
  const {curves} = spanLoadData(search);
  const own = curves.find((curve) => curve.own);
  const cells = own?.cells as readonly SafeLoad[];
  expect(cells.slice(0, -1).every(({safeLoadPsf}, i) => safeLoadPsf > 0 || cells.slice(i).some((later) => later.safeLoadPsf > 0))).toBe(true);
  const rises = cells.some((cell, i) => i > 0 && cell.safeLoadPsf > (cells[i - 1] as SafeLoad).safeLoadPsf + 1);
  expect(rises).toBe(true);
});

describe("words", () => {
  test("never round a reach up, and tell what is left out", () => {
    expect([34.96, 35, 34.999999].map(reachWords)).toEqual(["34.9", "35", "35"]);
    expect(gapWords({shortestFt: 10, gaps: []})).toBe("");
    expect(gapWords({shortestFt: 12.5, gaps: [{fromFt: 18.32, toFt: 19.03, governs: "minimum strength"}]})).toBe(", but not below 12.5 ft nor from 18.3 to 19.0 ft");
  });

  test("of the chart's title say whether the design's span is reached, or lies in a gap", () => {
    const {spanFt, ...data} = spanLoadData(searchOf(seed("branch-library")));
    const at = (longestFt: number, gaps: readonly {fromFt: number; toFt: number; governs: "minimum strength"}[], shortestFt = 10) => spanLoadFinding({
      ...data, spanFt, curves: data.curves.map((curve) => ({...curve, reach: {shortestFt, longestFt, stops: "strength" as const, gaps}})),
    });
    const gap = {fromFt: spanFt - 2, toFt: spanFt + 2, governs: "minimum strength"} as const;
    expect(at(spanFt + 9, [])).toContain(`Under this load it could reach ${spanFt + 9} ft`);
    expect(at(spanFt + 9, [gap])).toContain("minimum strength governs and it fails; it carries this load again up to");
    expect(at(spanFt - 3, [])).toContain("short of the span");
    expect(at(spanFt + 9, [], spanFt + 1)).toContain("but not over a shorter span");
    expect(spanLoadFinding({...data, spanFt, curves: data.curves.map((curve) => ({...curve, reach: undefined}))})).toContain("at any span");
  });
});
