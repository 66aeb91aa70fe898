import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {columnLineToBeamEndIn} from "../../lib/beams/beamEnds.js";
import {nearestStem, stemToEndIn, stemsOfBays, teeRow, type TeeRow} from "../../lib/beams/stemRow.js";
import {stemRowChecks, stemRowRemedies} from "../../lib/beams/stemRowCheck.js";
import type {Check} from "../../lib/checks.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {edgeBeamOf, girderOf} from "../support/madeBeams.js";

/** Tees of 10 ft with stems 5 ft apart: at 2.5, 7.5, 12.5 ft and so on from the corner. */
const TENS: TeeRow = {spanFt: 24, baysAlong: 5, teeWidthFt: 10, stemSpacingFt: 5, startFt: 0};
const rounded = (places: readonly number[]) => places.map((atFt) => Number(atFt.toFixed(6)));

describe("stems on a row of bays", () => {
  test("run on past the column lines: 24 ft bays of 10 ft tees repeat after five", () => {
    // Bay 3 begins at 48 ft: the stems at 52.5, 57.5, 62.5 and 67.5 ft. Bay 4 at 72: 72.5 to 92.5. Bay 5 at 96: 97.5 to 117.5.
    expect(stemsOfBays(TENS).map(({bay, placesFt}) => [bay, ...rounded(placesFt)])).toEqual([
      [1, 2.5, 7.5, 12.5, 17.5, 22.5], [2, 3.5, 8.5, 13.5, 18.5, 23.5], [3, 4.5, 9.5, 14.5, 19.5],
      [4, 0.5, 5.5, 10.5, 15.5, 20.5], [5, 1.5, 6.5, 11.5, 16.5, 21.5],
    ]);
    // Bay 6 is as bay 1, and is not named again.
    expect(stemsOfBays({...TENS, baysAlong: 10})).toHaveLength(5);
    expect(stemsOfBays({...TENS, spanFt: 30}).map(({bay}) => bay)).toEqual([1]);
  });

  test("stand on the beams of both bays where they stand over the line between them", () => {
    // 12 ft tees on 57 ft bays: the tenth stem is 57 ft from the corner.
    const [first, second] = stemsOfBays({spanFt: 57, baysAlong: 2, teeWidthFt: 12, stemSpacingFt: 6, startFt: 0});
    expect(first?.placesFt.at(-1)).toBe(57);
    expect(second?.placesFt[0]).toBe(0);
    // Places are sums that round in their last digits; over the line they are the line's own.
    for (let stem = 1; stem <= 12; stem++) {
      const spanFt = 2.525 + 5.05 * stem;
      const [before, after] = [0, 1].map((bay) => stemsOfBays({spanFt, baysAlong: 1, teeWidthFt: 10.1, stemSpacingFt: 5.05, startFt: -bay * spanFt})[0]?.placesFt ?? []);
      expect(before?.at(-1), `stem ${stem}`).toBe(spanFt);
      expect(after?.[0], `stem ${stem}`).toBe(0);
    }
  });

  test("are as many as the building's length holds, each on one bay, wherever the row begins", () => {
    fc.assert(fc.property(fc.integer({min: 8, max: 60}), fc.integer({min: 1, max: 12}), fc.constantFrom(8, 10, 12, 15), fc.integer({min: -20, max: 20}), (spanFt, baysAlong, teeWidthFt, quarters) => {
      // A sixteenth of an inch off any line, so that no stem stands over one.
      const row = {spanFt: spanFt + 0.005, baysAlong, teeWidthFt, stemSpacingFt: teeWidthFt / 2, startFt: quarters / 4 + 0.00171};
      const all = Array.from({length: baysAlong}, (_, i) => stemsOfBays({...row, baysAlong: 1, startFt: row.startFt - i * row.spanFt})[0]?.placesFt.length ?? 0).reduce((sum, count) => sum + count, 0);
      let counted = 0;
      for (let stemFt = row.startFt - 20 * teeWidthFt + teeWidthFt / 4; stemFt <= row.spanFt * baysAlong; stemFt += teeWidthFt / 2) if (stemFt >= 0) counted++;
      expect(all).toBe(counted);
    }), {numRuns: 200});
  });

  test("have the nearest one to a line among them, and one that is too near where that is sought alone", () => {
    const rows = fc.record({
      spanFt: fc.double({min: 4, max: 60, noNaN: true}), baysAlong: fc.integer({min: 1, max: 12}), teeWidthFt: fc.constantFrom(8, 10, 12, 15), startFt: fc.double({min: -20, max: 20, noNaN: true}),
    }).map((row): TeeRow => ({...row, stemSpacingFt: row.teeWidthFt / 2}));
    fc.assert(fc.property(rows, fc.double({min: 0, max: 40, noNaN: true}), (row, leastIn) => {
      const fromLinesIn = stemsOfBays(row).flatMap(({placesFt}) => placesFt.map((atFt) => 12 * Math.min(atFt, row.spanFt - atFt)));
      expect(nearestStem(row)?.fromLineIn ?? Infinity).toBeCloseTo(Math.min(...fromLinesIn), 4);
      const found = nearestStem(row, (fromLineIn) => fromLineIn < leastIn);
      expect(found === undefined || found.fromLineIn >= leastIn).toBe(fromLinesIn.every((fromIn) => fromIn >= leastIn));
    }), {numRuns: 300});
  });

  test("are measured from the nearer line of any bay, and from there to the beam's end", () => {
    // Bay 4 has a stem 6 in inside its left line, bay 2 one as near to its right line, and is named first.
    expect(nearestStem(TENS)).toMatchObject({bay: 2, atFt: expect.closeTo(23.5, 9), fromLineIn: expect.closeTo(6, 9)});
    expect(nearestStem({...TENS, spanFt: 30})?.fromLineIn).toBeCloseTo(30, 9);
    // Beams cut for 22 in columns end 12 in off the line.
    const design = withValues(seed("parking-structure"), {"bay.beamSpanFt": 24, "column.sideIn": 22});
    expect(columnLineToBeamEndIn(design)).toBe(12);
    expect(stemToEndIn(design, 23.5)).toBeCloseTo(-6, 9);
    expect(stemToEndIn(design, 2.5)).toBeCloseTo(18, 9);
    expect(teeRow(seed("classroom-wing"), deckMember(seed("classroom-wing"), catalog))).toBeUndefined();
  });
});

describe("a stem that has no beam under it", () => {
  /** The store on 24 ft bays, which its 10 ft tees do not fit: one stem stands 6 in from a column line. */
  const store = withValues(seed("records-store"), {"bay.beamSpanFt": 24, "bay.baysAlong": 5, "column.sideIn": 18});
  const tee = deckMember(store, catalog);
  const checkOf = (design: typeof store): Check | undefined => stemRowChecks(design, catalog, deckMember(design, catalog))[0];

  test("fails a check of edge beam and girder, in no starter design", () => {
    const failed = [...edgeBeamOf(store).checks, ...girderOf(store).checks].filter(({id, verdict}) => id.endsWith("stems on beam") && verdict === "fails");
    expect(failed.map(({id}) => id)).toEqual(["stems on beam", "girder stems on beam"]);
    // Half of an 18 in column, an inch of joint, and half of the 3.75 in stem.
    expect(failed[0]).toMatchObject({demand: 9 + 1 + 1.875, capacity: expect.closeTo(6, 6), message: expect.stringContaining("within the column")});
    for (const {design} of seeds) expect([...edgeBeamOf(design).checks, ...girderOf(design).checks].filter(({id, verdict}) => id.endsWith("stems on beam") && verdict !== "ok")).toEqual([]);
    expect(checkOf(seed("classroom-wing"))).toBeUndefined();
  });

  test("is one whose half width does not lie on the beam: narrower columns let the same stem stand", () => {
    // 30 in from the line: columns of 54 in would fail, of 48 in (24 + 1 + 2.375 = 27.375 in) do not.
    expect(checkOf(withValues(seed("branch-library"), {"column.sideIn": 48}))).toMatchObject({verdict: "ok", demand: 27.375, capacity: expect.closeTo(30, 9)});
    // A bay of 25 ft and a tee whose stems stand 4 ft apart, 36 in off its edges: 24 in from the column line in bay 2.
    const near = withValues(store, {"bay.beamSpanFt": 25, "deck.dimensions": {stemSpacingIn: 48}});
    expect(checkOf(near)).toMatchObject({verdict: "ok", capacity: expect.closeTo(24, 6)});
    expect(checkOf(withValues(near, {"column.sideIn": 42}))).toMatchObject({verdict: "ok", demand: 23.875});
    expect(checkOf(withValues(near, {"column.sideIn": 44}))).toMatchObject({verdict: "fails", demand: 24.875, message: expect.stringContaining("partly off its beam")});
  });

  test("is reported bays, widths of tee and a shift that mend it", () => {
    const remedies = stemRowRemedies(store, catalog, tee, teeRow(store, tee) as TeeRow);
    expect(remedies.baysFt).toEqual([20, 30]);
    expect(remedies.teeWidthsFt).toEqual([8, 12]);
    for (const beamSpanFt of remedies.baysFt) expect(checkOf(withValues(store, {"bay.beamSpanFt": beamSpanFt}))?.verdict).toBe("ok");
    const ofWidth: Record<number, [string, string]> = {8: ["8DT24", "68-S"], 12: ["12DT28", "108-S"]};
    for (const widthFt of remedies.teeWidthsFt) {
      const [member, pattern] = ofWidth[widthFt] as [string, string];
      expect(checkOf(withValues(store, {"deck.member": member, "deck.pattern": pattern}))?.verdict).toBe("ok");
      expect(checkOf(store)?.message).toContain(`${widthFt}`);
    }
    // Five bays that repeat every foot leave no place for the row: some stem is always within 6 in of a line.
    expect(remedies.shiftIn).toBeUndefined();
    // Two bays of 22 ft: bay 2 has a stem 6 in inside its left line (22.5 ft). The whole row a little farther on clears both.
    const short = withValues(store, {"bay.beamSpanFt": 22, "bay.baysAlong": 2});
    const row = teeRow(short, tee) as TeeRow;
    const {shiftIn} = stemRowRemedies(short, catalog, tee, row);
    // 6 in to the line, 11.875 in needed: 5.875 in, in whole inches 6.
    expect(shiftIn).toBe(6);
    expect(nearestStem({...row, startFt: 0.5})?.fromLineIn).toBeCloseTo(12, 6);
    expect(checkOf(short)?.message).toContain('begin the row of tees 6" beyond the corner');
  });

  test("is not mended by a width of tee whose thickest stems stand too near, nor by the width that it has", () => {
    const widths = (design: typeof store) => {
      const member = deckMember(design, catalog);
      return stemRowRemedies(design, catalog, member, teeRow(design, member) as TeeRow).teeWidthsFt;
    };
    // Tees of 8 ft stand 24 in off the lines of 24 ft bays. Stems of 4.75 in need 20.5 + 1 + 2.375 = 23.875 in beside columns of 41 in, and half an inch more
    // beside those of 42, where the 3.75 in of most such tees would do.
    expect(widths(withValues(store, {"column.sideIn": 41}))).toEqual([8, 12]);
    expect(widths(withValues(store, {"column.sideIn": 42}))).toEqual([12]);
    // With their stems 5 ft apart, not 4, the tees of 10 ft would do on 25 ft bays; they are tees of 10 ft still.
    expect(widths(withValues(store, {"bay.beamSpanFt": 25, "deck.dimensions": {stemSpacingIn: 48}, "column.sideIn": 44}))).toEqual([]);
  });

  test("is mended by widths of tee from the narrowest up, however the catalog lists them", () => {
    const reversed = {...catalog, deckMembers: [...catalog.deckMembers].reverse()};
    expect(stemRowRemedies(store, reversed, tee, teeRow(store, tee) as TeeRow).teeWidthsFt).toEqual([8, 12]);
  });

  test("is reported where it stands: over the line, or how far from it", () => {
    const over = withValues(store, {"deck.member": "12DT28", "deck.pattern": "108-S", "bay.beamSpanFt": 57, "bay.baysAlong": 2});
    expect(checkOf(over)?.message).toMatch(/^A stem of bay 1 falls on the column line, within the column; the beam ends 10" from it\./);
    expect(checkOf(store)?.message).toMatch(/^A stem of bay 2 is 6" from the column line, within the column; the beam ends 10" from it\./);
    // Its middle 24 in off the line and its side 22.125 in: within a column of 46 in by that.
    const side = withValues(store, {"bay.beamSpanFt": 25, "deck.dimensions": {stemSpacingIn: 48}, "column.sideIn": 46});
    expect(checkOf(side)?.message).toMatch(/is 2'-0" from the column line, within the column/);
    expect(checkOf(withValues(seed("branch-library"), {"column.sideIn": 18}))?.message).toMatch(/clear of the columns/);
  });

  test("is mended in words: by bays, tees, a shift before or beyond the corner, or by smaller columns where none of these does", () => {
    expect(checkOf(store)?.message).toMatch(/To clear the columns, set the columns 20 or 30 ft apart, or take tees 8 or 12 ft wide\.$/);
    // Tees of 8 ft 6 in: bays of two and three of them.
    const broad = withValues(store, {"deck.dimensions": {widthIn: 102}, "bay.beamSpanFt": 24});
    expect(checkOf(broad)).toMatchObject({verdict: "fails", message: expect.stringContaining("set the columns 17 or 25.5 ft apart")});
    // One bay of 23 ft: the last stem stands at 22.5 ft, so half a foot back is a foot off the line, where 11.875 in suffice.
    expect(checkOf(withValues(store, {"bay.beamSpanFt": 23, "bay.baysAlong": 1}))?.message).toMatch(
      /ft apart, or take tees 12 or 15 ft wide, or begin the row of tees 6" before the corner's column line, with a first tee cut to suit\.$/);
    // Columns of 4 ft, and stems a foot off their joints: over or near a line in every bay, of whatever tees.
    const crowded = withValues(store, {"bay.beamSpanFt": 9, "column.sideIn": 48, "deck.dimensions": {stemSpacingIn: 96}});
    const wide = deckMember(crowded, catalog);
    expect(stemRowRemedies(crowded, catalog, wide, teeRow(crowded, wide) as TeeRow)).toEqual({baysFt: [], teeWidthsFt: [], shiftIn: undefined});
    expect(checkOf(crowded)?.message).toMatch(/To clear the columns, use narrower columns or tees, or another bay\.$/);
  });

  test("is none where a bay is too short for any stem", () => {
    const short = {...store, bay: {...store.bay, beamSpanFt: 2, baysAlong: 1}};
    expect(stemsOfBays(teeRow(short, tee) as TeeRow)).toEqual([{bay: 1, placesFt: []}]);
    expect(checkOf(short)).toBeUndefined();
  });

  test("carries its ledge as one just inside the beam's end, and never more than that", () => {
    const beam = edgeBeamOf(store);
    expect(beam.demand.endDistanceIn).toBeCloseTo(-4, 6);
    expect(beam.ledge?.punching.find(({place}) => place === "end")?.ledge.endDistanceIn).toBeCloseTo(1.875, 9);
  });
});
