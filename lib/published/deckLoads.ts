import type {Catalog} from "../catalog.js";
import {HANDBOOK_HUMIDITY_PERCENT, HANDBOOK_STRENGTHS_PSI, handbookCriteria} from "../deck/criteria.js";
import {strandOf} from "../deck/deckMember.js";
import {safeLoad} from "../deck/safeLoad.js";
import {camber} from "../member/camber.js";
import {makeMember, type Member} from "../member/member.js";
import {centroidLayout} from "../prestress/layout.js";
import {parsePattern} from "../prestress/pattern.js";
import {shapeOf} from "../sections/designation.js";
import {compare, type Citation, type Comparison} from "./compare.js";
import type {PublishedDeckLoad} from "./tables.js";

/** The three numbers of one printed cell beside ours. */
export interface DeckLoadComparison {
  readonly row: PublishedDeckLoad;
  /** Handbook page and row: "10DT24, 68-S". */
  readonly page: string;
  readonly safeLoad: Comparison;
  readonly erectionCamber: Comparison;
  readonly longTimeCamber: Comparison;
}

/** The member that a printed row is about, by the handbook's criteria and 70 % humidity. */
export function handbookMember(catalog: Catalog, row: PublishedDeckLoad): Member {
  const shape = shapeOf(catalog, row.member);
  const pattern = parsePattern(row.pattern);
  return makeMember({
    shape,
    layout: centroidLayout(shape, pattern, strandOf(catalog, pattern), row.strandHeightIn, row.strandHeightIn),
    concreteKind: "normalweight",
    strengthPsi: HANDBOOK_STRENGTHS_PSI.member,
    releaseStrengthPsi: HANDBOOK_STRENGTHS_PSI.release,
    toppingIn: row.toppingIn,
    toppingStrengthPsi: HANDBOOK_STRENGTHS_PSI.topping,
    humidityPercent: HANDBOOK_HUMIDITY_PERCENT,
  });
}

/** Printed safe loads and cambers beside ours, cell by cell. */
export function compareDeckLoads(catalog: Catalog, rows: readonly PublishedDeckLoad[]): DeckLoadComparison[] {
  return rows.map((row) => {
    const member = handbookMember(catalog, row);
    const criteria = handbookCriteria(row.toppingIn > 0);
    const arch = camber(member, row.spanFt, criteria.superimposedDeadPsf * member.widthFt);
    const page = `${row.member}, ${row.pattern}`;
    const cell = (quantity: string, unit: string, published: number, ours: number, citation: Pick<Citation, "tolerance" | "asserted" | "note">) =>
      compare({group: page, quantity: `${quantity} at ${row.spanFt} ft`, unit, published}, ours, {...row, ...citation});
    const camberCitation = {tolerance: row.camberToleranceIn, asserted: true, note: ""};
    return {
      row, page,
      safeLoad: cell("safe load", "psf", row.safeLoadPsf, safeLoad(member, row.spanFt, criteria).safeLoadPsf,
        {tolerance: row.safeLoadTolerancePsf, asserted: row.safeLoadAsserted, note: row.note}),
      erectionCamber: cell("camber at erection", "in", row.erectionCamberIn, arch.erectionIn, camberCitation),
      longTimeCamber: cell("camber in the long term", "in", row.longTimeCamberIn, arch.longTermIn, camberCitation),
    };
  });
}
