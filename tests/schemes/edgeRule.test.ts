import {expect, test} from "vitest";
import {stemRowChecks} from "../../lib/beams/stemRowCheck.js";
import {onStems} from "../../lib/beams/stemRow.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {columnsOfEdge, seatedEdge, sizedEdge} from "../../lib/schemes/edgeRule.js";
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
          expect(sized(other).edge).toEqual(edge);
          kept[onStems(member) ? "stems" : "planks"] += 1;
        }
      }
    }
  }
  expect(Math.min(kept.stems, kept.planks), JSON.stringify(kept)).toBeGreaterThan(3);
});
