import {expect, test} from "vitest";
import {ALL_BAYS, bayAround, bayCloser, bayFitting, bayWindow, fitsMap, finer, isAllBays, spansIn, type BayWindow} from "../../lib/schemes/bayWindow.js";
import {refused} from "../support/errors.js";

const window = (over: Partial<BayWindow> = {}): BayWindow => ({...ALL_BAYS, ...over});

test("all bays are tried every 4 ft: 21 deck spans by 11 beam spans", () => {
  const {spansFt, beamSpansFt} = spansIn(bayWindow(ALL_BAYS));
  expect([spansFt.length, spansFt[0], spansFt.at(-1), beamSpansFt.length, beamSpansFt[0], beamSpansFt.at(-1)]).toEqual([21, 20, 100, 11, 20, 60]);
  expect(isAllBays(ALL_BAYS)).toBe(true);
  expect(isAllBays(window({byFt: 2}))).toBe(false);
  expect(isAllBays(window({beamFt: {fromFt: 20, toFt: 56}}))).toBe(false);
});

test("the last span may fall short of the range's end by less than a step", () => {
  expect(spansIn(window({deckFt: {fromFt: 30, toFt: 39}, beamFt: {fromFt: 24, toFt: 24}})).spansFt).toEqual([30, 34, 38]);
  expect(spansIn(window({beamFt: {fromFt: 24, toFt: 24}})).beamSpansFt).toEqual([24]);
});

test("a range is refused where it is no range, leaves the bays, or has more spans than a map shows", () => {
  refused(() => bayWindow(window({deckFt: {fromFt: 19, toFt: 40}})), {path: "deckFt.fromFt", message: "shortest deck span: 19 ft is not possible (whole number, 20 to 100 ft)"});
  refused(() => bayWindow(window({deckFt: {fromFt: 20, toFt: 101}})), {path: "deckFt.toFt"});
  refused(() => bayWindow(window({beamFt: {fromFt: 20.5, toFt: 40}})), {path: "beamFt.fromFt"});
  refused(() => bayWindow(window({beamFt: {fromFt: 20, toFt: 61}})), {path: "beamFt.toFt", allowed: "whole number, 20 to 60 ft"});
  refused(() => bayWindow(window({beamFt: {fromFt: 40, toFt: 39}})), {path: "beamFt.toFt", value: 39, allowed: /40 ft and more/});
  refused(() => bayWindow(window({byFt: 3 as 2})), {path: "byFt"});
  // 41 spans by 1 ft reach 40 ft on, by 2 ft all the way.
  expect(bayWindow(window({deckFt: {fromFt: 40, toFt: 80}, byFt: 1}))).toMatchObject({byFt: 1});
  refused(() => bayWindow(window({deckFt: {fromFt: 40, toFt: 81}, byFt: 1})), {path: "deckFt.toFt", allowed: "40 to 80 ft where a span is tried every 1 ft"});
  expect(bayWindow(window({byFt: 2}))).toMatchObject({byFt: 2});
});

test("a closer look has the place itself among its spans, and ends where bays end", () => {
  const near = spansIn(bayAround(37, 24, 2));
  expect(near.spansFt).toEqual([29, 31, 33, 35, 37, 39, 41, 43, 45]);
  // Below 24 ft two steps of 2 ft are left.
  expect(near.beamSpansFt).toEqual([20, 22, 24, 26, 28, 30, 32]);
  expect(spansIn(bayAround(100, 20, 1))).toEqual({spansFt: [96, 97, 98, 99, 100], beamSpansFt: [20, 21, 22, 23, 24]});
  // An open design may lie beyond all bays, and between two feet.
  expect(spansIn(bayAround(120, 24.5, 1)).spansFt).toEqual([96, 97, 98, 99, 100]);
  for (const [deck, beam] of [[20, 60], [61, 33], [100, 20]] as const) for (const by of [1, 2, 4] as const) expect(() => bayWindow(bayAround(deck, beam, by))).not.toThrow();
});

test("what is marked out is looked at by the next finer step that can show all of it", () => {
  expect([finer(4), finer(2), finer(1)]).toEqual([2, 1, undefined]);
  const part = {fromFt: 28, toFt: 44};
  expect(bayCloser(ALL_BAYS, part, part)).toEqual({deckFt: part, beamFt: part, byFt: 2});
  expect(bayCloser(window({byFt: 2}), part, part).byFt).toBe(1);
  expect(bayCloser(window({byFt: 1}), part, part).byFt).toBe(1);
  // 80 ft by 1 ft would be 81 spans.
  expect(bayCloser(window({byFt: 2}), ALL_BAYS.deckFt, part).byFt).toBe(2);
});

test("a range that is too long for its step takes the next coarser one, and one that is no range is refused", () => {
  expect([1, 2, 4].map((byFt) => fitsMap(window({byFt: byFt as 1 | 2 | 4})))).toEqual([false, true, true]);
  expect(bayFitting(window({byFt: 1})).byFt).toBe(2);
  expect(bayFitting(window({byFt: 4})).byFt).toBe(4);
  expect(bayFitting(window({deckFt: {fromFt: 20, toFt: 60}, byFt: 1})).byFt).toBe(1);
  expect(bayFitting(window({deckFt: {fromFt: 20, toFt: 61}, byFt: 1})).byFt).toBe(2);
  refused(() => bayFitting(window({deckFt: {fromFt: 50, toFt: 40}})), {path: "deckFt.toFt"});
});
