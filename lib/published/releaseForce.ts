import type {Catalog} from "../catalog.js";
import {handbookCriteria} from "../deck/criteria.js";
import {camber} from "../member/camber.js";
import {prestressState} from "../member/prestressState.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {handbookMember} from "./deckLoads.js";
import type {PublishedDeckLoad} from "./tables.js";

/** What an allowance for the force at release does to the handbook's cambers; differences are ours less printed, in. */
export interface AllowanceTrial {
  /** Share of the jacking stress that is taken as gone at release beside elastic shortening. */
  readonly allowance: number;
  readonly erection: CamberSpread;
  readonly longTime: CamberSpread;
}

/** Differences over all cells, in. */
export interface CamberSpread {
  readonly meanIn: number;
  /** Half of the cells differ by less than this, sign left out. */
  readonly medianIn: number;
  readonly worstIn: number;
}

/** The handbook's cambers with several allowances at release; the kit's own is CAMBER_FORCE_ALLOWANCE. */
export function allowanceTrials(catalog: Catalog, rows: readonly PublishedDeckLoad[], allowances: readonly number[]): AllowanceTrial[] {
  return allowances.map((allowance) => {
    const cells = rows.map((row) => camberWith(catalog, row, allowance));
    return {
      allowance,
      erection: spread(cells.map((cell, i) => cell.erectionIn - (rows[i] as PublishedDeckLoad).erectionCamberIn)),
      longTime: spread(cells.map((cell, i) => cell.longTimeIn - (rows[i] as PublishedDeckLoad).longTimeCamberIn)),
    };
  });
}

/** The lift of the strands goes with their force, so another allowance scales it; all other parts stay. */
function camberWith(catalog: Catalog, row: PublishedDeckLoad, allowance: number): {erectionIn: number; longTimeIn: number} {
  const member = handbookMember(catalog, row);
  const deadPlf = handbookCriteria(row.toppingIn > 0).superimposedDeadPsf * member.widthFt;
  const own = camber(member, row.spanFt, deadPlf);
  const {camberStressKsi, elasticKsi} = prestressState(member, row.spanFt, 0.5, deadPlf).losses;
  const moreIn = own.prestressIn * ((JACKING_STRESS_KSI * (1 - allowance) - elasticKsi) / camberStressKsi - 1);
  return {
    erectionIn: own.erectionIn + own.multipliers.erectionPrestress * moreIn,
    longTimeIn: own.longTermIn + own.multipliers.finalPrestress * moreIn,
  };
}

function spread(differencesIn: readonly number[]): CamberSpread {
  const sizes = differencesIn.map(Math.abs).sort((a, b) => a - b);
  const middle = sizes.length / 2;
  return {
    meanIn: differencesIn.reduce((sum, d) => sum + d, 0) / differencesIn.length,
    medianIn: ((sizes[Math.floor(middle - 0.5)] as number) + (sizes[Math.floor(middle)] as number)) / 2,
    worstIn: sizes.at(-1) as number,
  };
}
