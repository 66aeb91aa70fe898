import {expect, test} from "vitest";
import {stemRowChecks} from "../../lib/beams/stemRowCheck.js";
import {onStems} from "../../lib/beams/stemRow.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {edgeBeamAlone} from "../../lib/edgeBeam/edgeBeam.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {columnsOfEdge, seatedEdge, sizedEdge, type SizedEdge} from "../../lib/schemes/edgeRule.js";
import {ifMade, worstFailing} from "../../lib/schemes/least.js";
import {catalog, seeds} from "../support/designs.js";

/** A design whose columns note which of their fields are read. */
function noting(design: Design, read: Set<string>): Design {
  return {...design, column: new Proxy(design.column, {get: (column, field) => {
    read.add(String(field));
    return Reflect.get(column, field) as unknown;
  }})};
}

function sized(design: Design, read = new Set<string>()) {
  const own = noting(design, read);
  const member = deckMember(own, catalog);
  const loads = floorLoads(own, catalog, member.widthFt);
  const cut = {...own, edgeBeam: seatedEdge(own, member, loads)};
  return {member, edge: sizedEdge(cut, catalog, member, loads, stemRowChecks(cut, catalog, member), {endKip: 3, onStemKip: 1})};
}

/** An edge beam by rule with what it tells only where it is asked. */
function told({stops, ...edge}: SizedEdge) {
  return {...edge, stops: stops()};
}

test("an edge beam by rule hangs on no more of the columns than its key says", () => {
  const kept = {stems: 0, planks: 0};
  for (const {design} of seeds) {
    for (const kind of ["ledge", "pockets", "below"] as const) {
      for (const beamSpanFt of [24, 40]) {
        const first = withValues(design, {"edgeBeam.kind": kind, "bay.beamSpanFt": beamSpanFt, "column.sideIn": 18, "column.seatIn": 4});
        const read = new Set<string>();
        const {member, edge} = sized(first, read);
        expect([...read]).toEqual(onStems(member) ? ["sideIn"] : []);
        for (const sideIn of [18, 26]) {
          const other = withValues(first, {"column.sideIn": sideIn, "column.seatIn": 7});
          if (columnsOfEdge(other, member) !== columnsOfEdge(first, member)) continue;
          expect(told(sized(other).edge)).toEqual(told(edge));
          kept[onStems(member) ? "stems" : "planks"] += 1;
        }
      }
    }
  }
  expect(Math.min(kept.stems, kept.planks), JSON.stringify(kept)).toBeGreaterThan(3);
});

test("an edge beam by rule has the narrowest web that holds, of all that are made one by one", () => {
  const webs = new Set<number>();
  let none = 0;
  const decks = [
    {}, {"deck.member": "10DT26", "deck.pattern": "68-S", "deck.toppingIn": 0, "bay.spanFt": 32}, {"deck.member": "12DT28", "deck.pattern": "88-S", "deck.toppingIn": 2, "bay.spanFt": 38},
  ];
  for (const [{id, design}, deck] of seeds.flatMap((seed) => decks.map((deck) => [seed, deck] as const))) {
    for (const kind of ["ledge", "pockets"] as const) {
      for (let beamSpanFt = 20; beamSpanFt <= 60; beamSpanFt += 4) {
        const own = withValues(design, {...deck, "edgeBeam.kind": kind, "bay.beamSpanFt": beamSpanFt});
        const member = deckMember(own, catalog);
        const loads = floorLoads(own, catalog, member.widthFt);
        const cut = {...own, edgeBeam: seatedEdge(own, member, loads)};
        const {input} = sizedEdge(cut, catalog, member, loads, []);
        const failing = (webWidthIn: number) => {
          const made = ifMade(() => edgeBeamAlone({...cut, edgeBeam: {...input, webWidthIn}}, catalog, member, loads));
          // What the design itself fixes no web mends.
          return made ? worstFailing(made.checks, (check) => check !== "upstand" && check !== "pocket stems")?.id : "size";
        };
        const seen = `${id}, ${own.deck.member}, ${kind}, ${beamSpanFt} ft: ${input.webWidthIn} in`;
        if (failing(input.webWidthIn) !== undefined) {
          none += 1;
          continue;
        }
        webs.add(input.webWidthIn);
        const narrower = Array.from({length: (input.webWidthIn - 8) / 2}, (_, i) => failing(8 + 2 * i));
        expect(narrower.filter((check) => check === undefined), seen).toEqual([]);
      }
    }
  }
  expect(webs.size).toBeGreaterThan(3);
  expect(none).toBeLessThan(20);
});
