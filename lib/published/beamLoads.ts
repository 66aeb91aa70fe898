import {beamCapacity} from "../beams/beamCapacity.js";
import {handbookBeamCriteria} from "../beams/beamCriteria.js";
import {prestressedBeam} from "../beams/prestressedBeam.js";
import type {Catalog} from "../catalog.js";
import {camber} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {compare, type Comparison} from "./compare.js";
import type {PublishedBeamLoad} from "./tables.js";

/** The numbers of one printed cell of a beam beside ours. */
export interface BeamLoadComparison {
  readonly row: PublishedBeamLoad;
  /** Handbook page and row: "28IT20, 9 strands". */
  readonly page: string;
  /** Ours as computed, before it is rounded down. */
  readonly safeLoad: Comparison;
  /** Ours as a table prints it, plf. */
  readonly tabulatedPlf: number;
  /** Camber at erection, and in the long term where that is known. */
  readonly cambers: readonly Comparison[];
}

/** The beam that a printed row is about, all its strands at the printed height. */
export function handbookBeam(catalog: Catalog, row: PublishedBeamLoad): Member {
  return prestressedBeam(catalog, {designation: row.member, strands: row.strands, strandHeightIn: row.strandHeightIn});
}

/** Printed safe loads and cambers of beams beside ours, cell by cell; the dead half of the load is on for the camber. */
export function compareBeamLoads(catalog: Catalog, rows: readonly PublishedBeamLoad[]): BeamLoadComparison[] {
  const criteria = handbookBeamCriteria();
  return rows.map((row) => {
    const member = handbookBeam(catalog, row);
    const {safeLoadPlf, tabulatedPlf} = beamCapacity(member, row.spanFt, criteria);
    const arch = camber(member, row.spanFt, criteria.deadShare * safeLoadPlf);
    const page = `${row.member}, ${row.strands} strands`;
    const what = (quantity: string, unit: string, published: number) => ({group: page, quantity: `${quantity} at ${row.spanFt} ft`, unit, published});
    const camberCitation = {...row, tolerance: row.camberToleranceIn, asserted: true, note: ""};
    return {
      row, page, tabulatedPlf,
      safeLoad: compare(what("safe load", "plf", row.safeLoadPlf), safeLoadPlf,
        {...row, tolerance: row.safeLoadTolerancePlf, asserted: row.safeLoadAsserted}),
      cambers: [
        compare(what("camber at erection", "in", row.erectionCamberIn), arch.erectionIn, camberCitation),
        ...(row.longTimeCamberIn === undefined ? [] : [compare(what("camber in the long term", "in", row.longTimeCamberIn), arch.longTermIn, camberCitation)]),
      ],
    };
  });
}
